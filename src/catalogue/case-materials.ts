// What the materials of a hard case and of the linings of its spine are when the author does not say. None of it is published; all may be overridden.
import { mm } from "../units/length.ts";
import { usualMaterials } from "./materials.ts";
import type { UsualMaterial } from "./materials.ts";

const source = "common practice, no source";

/** Usual materials of a hard case by role, as roles are written in a definition. */
export const caseMaterials = {
  tape: { name: "linen tape", thickness: mm("0.3"), grain: "none", source },
  endpaper: { name: "endpaper, about 120 g/m²", thickness: mm("0.15"), grain: "unknown", source },
  mull: { name: "mull", thickness: mm("0.15"), grain: "unknown", source },
  "spine lining": { name: "strong wrapping paper, about 90 g/m²", thickness: mm("0.12"), grain: "unknown", source },
  endband: { name: "woven endband", thickness: mm("1"), grain: "none", source },
  ribbon: usualMaterials.ribbon,
  boards: { name: "grey board", thickness: null, grain: "unknown", source },
  "spine strip": { name: "thin board for the spine", thickness: mm("0.8"), grain: "unknown", source },
  cloth: usualMaterials.cloth,
  "side paper": { name: "covering paper, about 120 g/m²", thickness: mm("0.15"), grain: "unknown", source },
} as const satisfies Readonly<Record<string, UsualMaterial>>;
