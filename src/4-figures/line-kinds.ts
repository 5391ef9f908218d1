// What each kind of line looks like in print and in words: the one table behind figures, templates and legends.
import type { LineKind } from "./types.ts";

/**
 * The pair of widths a figure is drawn with, wide : narrow = 2 : 1, from the row 0.25, 0.35, 0.5, 0.7 mm.
 * Source: *Manual of Engineering Drawing* (BS/ISO), types of line. `large` for figures across the column, `small` for the rest.
 */
export type Pen = "large" | "small";

/** Line widths in millimetres for large drawings and for small ones. */
export const penWidths: Readonly<Record<Pen, { readonly wide: number; readonly narrow: number }>> = {
  large: { wide: 0.7, narrow: 0.35 },
  small: { wide: 0.5, narrow: 0.25 },
};

/** How a line kind looks in print, without colour. */
export interface LineLook {
  /** Wide and narrow are the pen's; the others are steps of the same row of widths. */
  readonly width: "wide" | "narrow" | "extra wide" | "heavy" | "middle";
  /** Dashes and gaps in millimetres for the small pen; null for a continuous line. */
  readonly dashes: readonly number[] | null;
  /** Black or a grey that still prints at 70 % size on a poor printer. */
  readonly colour: string;
  /** Words of the legend. */
  readonly meaning: string;
}

/**
 * Folding and drafting conventions collide: dash-dot is a mountain fold and a centre line, dashes are a valley fold and a hidden edge.
 * Resolved by weight: folds are wide, drafting lines narrow; the mountain fold has two dots, the hidden edge very short dashes;
 * and a legend is printed with every figure that uses either.
 * Sources: continuous wide outlines and continuous narrow dimension lines, double-dashed narrow chain for a part before forming:
 * *Manual of Engineering Drawing*; valley dashed, mountain dash-dot: stored articles on the Yoshizawa-Randlett system;
 * dash-dot-dot: from memory.
 */
export const lineLooks: Readonly<Record<LineKind, LineLook>> = {
  outline: { width: "wide", dashes: null, colour: "#000", meaning: "outline of a part" },
  edge: { width: "narrow", dashes: null, colour: "#000", meaning: "edge" },
  mountain: { width: "wide", dashes: [5, 1.2, 0.6, 1.2, 0.6, 1.2], colour: "#000", meaning: "mountain fold: ridge towards you" },
  valley: { width: "wide", dashes: [2.6, 1.4], colour: "#000", meaning: "valley fold: ridge away from you" },
  hidden: { width: "narrow", dashes: [1, 0.7], colour: "#000", meaning: "hidden edge" },
  centre: { width: "narrow", dashes: [7, 1.2, 1.4, 1.2], colour: "#000", meaning: "centre line" },
  dimension: { width: "narrow", dashes: null, colour: "#333", meaning: "size or pointer" },
  placement: { width: "narrow", dashes: [4, 1], colour: "#000", meaning: "where another part will lie" },
  cut: { width: "extra wide", dashes: null, colour: "#000", meaning: "cut along this line" },
  thread: { width: "heavy", dashes: null, colour: "#000", meaning: "thread of this pass" },
  "thread-hidden": { width: "heavy", dashes: [2.2, 1.4], colour: "#000", meaning: "thread of this pass, on the far side" },
  "thread-before": { width: "middle", dashes: null, colour: "#000", meaning: "thread sewn before" },
  "thread-before-hidden": { width: "middle", dashes: [1.7, 1.1], colour: "#000", meaning: "thread sewn before, on the far side" },
  formed: { width: "narrow", dashes: [5, 1, 1.6, 1, 1.6, 1], colour: "#000", meaning: "outline before folding" },
};

/** Multiples of the wide line, one step of the row each: 0.5 to 0.7 to 1.0 mm, and down to 0.35 mm. */
const widthSteps = { wide: 1, "extra wide": 1.4, heavy: 2, middle: 0.7 } as const;

/** Width in millimetres of a line kind drawn with a pen. */
export function lineWidth(kind: LineKind, pen: Pen): number {
  const { width } = lineLooks[kind];
  return width === "narrow" ? penWidths[pen].narrow : penWidths[pen].wide * widthSteps[width];
}

/** Dash pattern in millimetres for a pen; null when continuous. The large pen stretches dashes, so that gaps stay open. */
export function lineDashes(kind: LineKind, pen: Pen): readonly number[] | null {
  const { dashes } = lineLooks[kind];
  return dashes && dashes.map((size) => size * (pen === "large" ? 1.25 : 1));
}
