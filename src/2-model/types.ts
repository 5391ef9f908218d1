// The product of phase 2: the book as geometry, every part, mark and hole by name.
import type { BindingId } from "../catalogue/bindings.ts";
import type { Length } from "../units/length.ts";
import type { Thread } from "./sewing/types.ts";
import type { Formula, Quantity } from "../units/formula.ts";

/** Each binding adds the type of its own geometry here, from its own file, by declaration merging. */
export interface BindingGeometries {}

/** The geometry that only one binding has: what its figures need besides parts, scores and holes. */
export type GeometryOf<B extends BindingId> = B extends keyof BindingGeometries ? BindingGeometries[B] : never;

/** One book as geometry. `finished` is the book shut and full; sizes are height along the spine, width across. */
export interface Model<B extends BindingId = BindingId> {
  readonly binding: B;
  readonly finished: { readonly height: Length; readonly width: Length; readonly thickness: Length };
  /** Every named value in the order computed: what the appendix prints and prose refers to. */
  readonly values: ReadonlyMap<string, Value>;
  readonly parts: readonly Part[];
  readonly scores: readonly Score[];
  readonly holes: readonly Hole[];
  /** The way and the length of the sewing thread; absent or null for a book that is not sewn. */
  readonly thread?: Thread | null;
  readonly geometry: GeometryOf<B>;
  readonly findings: readonly Finding[];
}

/** Where a value comes from: the author, our default, a measurement, the material in hand, or a computation. */
export type ValueOrigin = "given" | "default" | "measured" | "material" | "computed";

/** A named value: `name` is plain words (`card width`); prose may write `{card width}` or `{card.width}`. */
export interface Value {
  readonly name: string;
  /** What it means, as a short phrase for the appendix. */
  readonly meaning: string;
  readonly quantity: Quantity;
  /** Null for a value that was not computed by a formula. */
  readonly formula: Formula | null;
  /** How a value without a formula was chosen ("the shortest post to be had that is not shorter than the stack"); else empty. */
  readonly choice: string;
  /** For a chosen value: the names of the values that decided. */
  readonly dependsOn?: readonly string[];
  readonly origin: ValueOrigin;
  /** What the formula gives where a measured value governs instead; else null. */
  readonly calculated: Quantity | null;
  /** Lengths that are thinner than a ruler can show are printed to 0.01 mm. */
  readonly shownAs: "size" | "thickness" | "number";
  /** Where the rule comes from: a reference or "common practice, no source" or "geometry". */
  readonly source: string;
  /** Whether the handout prints a box "measure yours" beside it: what a binder would measure off the real object. */
  readonly measureYours: boolean;
}

/** Which way a part's grain must run when the book is made. Always along the height (the spine) unless the material has none. */
export type PartGrain = "height" | "width" | "none";

/** A part as it is bought or cut, with what is marked on it. */
export interface Part {
  /** Stable id, kebab-case: `card`, `spine-strip`, `side-strip`. */
  readonly id: string;
  /** As printed in cut list and steps: "spine strip". */
  readonly name: string;
  /** Role of its material in the definition. */
  readonly material: string;
  readonly count: number;
  /** Along the spine. */
  readonly height: Length;
  /** Across the spine. */
  readonly width: Length;
  readonly thickness: Length;
  readonly grain: PartGrain;
  /** Bought ready-made: not cut, only checked. */
  readonly readyMade: boolean;
  /** One line for the cut list: "3 for each book, cut corners after covering". Empty when there is nothing to say. */
  readonly note: string;
  readonly features: readonly Feature[];
}

/** A cut-off corner at 45°: `distance` from the strip's or board's corner to the cut, measured square to the cut. */
export interface CornerCut {
  readonly kind: "corner cut";
  readonly corner: "head-left" | "head-right" | "tail-left" | "tail-right";
  readonly distance: Length;
}

/** A line where another part will lie: from the part's left edge (vertical) or its head edge (horizontal). */
export interface PlacementLine {
  readonly kind: "placement line";
  readonly name: string;
  readonly direction: "vertical" | "horizontal";
  readonly at: Length;
}

/** A slit cut along a line across the part: from the part's head edge to the line, and from its left edge to both ends. */
export interface SlitCut {
  readonly kind: "slit";
  readonly name: string;
  readonly at: Length;
  readonly from: Length;
  readonly to: Length;
}

/** What is marked or cut on a part besides scores and holes. */
export type Feature = CornerCut | PlacementLine | SlitCut;

/** Which way a score is folded, as seen from the inside of the book: a mountain rises towards the reader. */
export type Fold = "mountain" | "valley";

/** A score line across the full height of a part; folds are named as seen from the inside of the book. */
export interface Score {
  /** "stub 3 crest". */
  readonly name: string;
  readonly part: string;
  /** Running dimension from the part's left edge, as seen from the inside of the book: on a ruler mark. */
  readonly at: Length;
  /** The same position before rounding. */
  readonly exactAt: Length;
  /** Signed distance from the centre line (left negative), on a ruler mark or half of one. */
  readonly fromCentre: Length;
  readonly fold: Fold;
}

/** A round hole in a part, its middle given from the part's head and spine-side edges. */
export interface Hole {
  /** Named by where it is: `front-head`, `back-tail`. */
  readonly id: string;
  readonly part: string;
  /** From the part's head edge. */
  readonly along: Length;
  /** From the part's spine-side edge. */
  readonly across: Length;
  readonly diameter: Length;
}

/** How bad a finding is: the book cannot be made, something will go wrong, or something is worth knowing. */
export type FindingSeverity = "stop" | "warn" | "note";

/** Something wrong, risky or worth knowing about a design that was read without problems. */
export interface Finding {
  /** Kebab-case: `post-too-short`. */
  readonly code: string;
  readonly severity: FindingSeverity;
  /** Part or place, in words. */
  readonly where: string;
  /** What is so, with the numbers. */
  readonly message: string;
  /** What will go wrong. */
  readonly consequence: string;
  /** What to change. */
  readonly remedy: string;
  /** Path in the definition to point at (`book/posts/length`), if one is to blame. */
  readonly path: string | null;
}
