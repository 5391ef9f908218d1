// What the materials of bindings sewn from sections are when the author does not say. None of it is published; all may be overridden.
import { mm } from "../units/length.ts";
import type { UsualMaterial } from "./materials.ts";

const source = "common practice, no source";

/** Usual materials of a text block by role, as roles are written in a definition. */
export const sewnMaterials = {
  "text paper": { name: "text paper, about 100 g/m²", thickness: mm("0.125"), grain: "unknown", source },
  // Computed from the yards in a pound of linen (Roberts & Etherington, "sewing thread"), 18/3 is 0.48 mm as solid flax and 0.62 mm at 60 % packing.
  thread: { name: "waxed linen thread, 18/3", thickness: mm("0.5"), grain: "none", source },
} as const satisfies Readonly<Record<string, UsualMaterial>>;
