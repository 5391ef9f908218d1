// What each material role is when the author does not say: a name, a thickness and a grain. None of it is published; all may be overridden.
import { mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";

/** The stand-in for a material that the author left out. */
export interface UsualMaterial {
  /** As printed in the material list. */
  readonly name: string;
  /** One layer; null where the book's own sizes give it (boards) or where it does not enter the geometry (posts). */
  readonly thickness: Length | null;
  /** Grain relative to the sheet as sold; `none` for what has no grain, `unknown` where it must be found out. */
  readonly grain: "long" | "short" | "none" | "unknown";
  readonly source: string;
}

const source = "common practice, no source";

/** Usual materials by role, as roles are written in a definition. */
export const usualMaterials = {
  card: { name: "heavy card, about 300 g/m²", thickness: mm("0.4"), grain: "unknown", source },
  "strip board": { name: "grey board for strips", thickness: mm(2), grain: "unknown", source },
  boards: { name: "ready-made boards", thickness: null, grain: "unknown", source },
  cloth: { name: "book cloth, paper-backed", thickness: mm("0.3"), grain: "unknown", source },
  "page paper": { name: "page paper, about 160 g/m²", thickness: mm("0.2"), grain: "unknown", source },
  "text paper": { name: "text paper, about 100 g/m²", thickness: mm("0.125"), grain: "unknown", source },
  "cover paper": { name: "cover paper, about 240 g/m²", thickness: mm("0.3"), grain: "unknown", source },
  "lining paper": { name: "lining paper, about 90 g/m²", thickness: mm("0.12"), grain: "unknown", source },
  "hinge tape": { name: "self-adhesive cloth tape", thickness: mm("0.15"), grain: "none", source },
  ribbon: { name: "ribbon", thickness: mm("0.2"), grain: "none", source },
  // D. W. Jones, *Bookbinding: A Tutorial*, 1995, has a thicker thread: about 1 mm, about 1/2 mm once it is compressed.
  thread: { name: "waxed linen thread", thickness: mm("0.5"), grain: "none", source },
  posts: { name: "screw posts", thickness: null, grain: "none", source },
} as const satisfies Readonly<Record<string, UsualMaterial>>;

/** The roles in the order of the material list. */
export const materialRoles = Object.keys(usualMaterials) as readonly (keyof typeof usualMaterials)[];
