// Screw posts to be had: lengths, barrel and the play of the hole around it.
import { inches, mm } from "../units/length.ts";
import type { Length, Unit } from "../units/length.ts";

/** What a shop for screw posts stocks in one system of units. */
export interface PostRange {
  /** Lengths of the barrel between the heads, shortest first. */
  readonly lengths: readonly Length[];
  /** Extensions that screw into a post to make it longer, shortest first. */
  readonly extensions: readonly Length[];
  /** Thickness of a head or a cap. */
  readonly head: Length;
  /** Diameter of the barrel. */
  readonly barrel: Length;
  /** How much wider the hole is than the barrel. */
  readonly clearance: Length;
  readonly source: string;
}

/** Usual posts by governing unit; a definition may list its own. No published post-to-hole clearance was found. */
export const usualPosts: Readonly<Record<Unit, PostRange>> = {
  mm: {
    lengths: [3, 4, 5, 6, 8, 10, 12, 15, 20, 25].map((length) => mm(length)),
    extensions: [5, 10, 15, 20, 25, 50].map((length) => mm(length)),
    head: mm(1), barrel: mm(5), clearance: mm("0.5"), source: "common practice, no source",
  },
  in: {
    lengths: [inches(1, 8), inches(3, 16), inches(1, 4), inches(5, 16), inches(3, 8), inches(1, 2), inches(5, 8), inches(3, 4), inches(1)],
    extensions: [inches(1, 4), inches(1, 2), inches(3, 4), inches(1), inches(2)],
    head: inches(1, 32), barrel: inches(3, 16), clearance: mm("0.5"), source: "common practice, no source",
  },
};

/** Between the sizes in which drill bits and hollow punches are sold. Common practice, no source. */
export const holeSteps: Readonly<Record<Unit, Length>> = { mm: mm("0.5"), in: inches(1, 64) };
