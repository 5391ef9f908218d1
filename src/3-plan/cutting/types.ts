// Cut plans as other rooms ask for them and get them: exact lengths, cuts in order, offcuts, and how good the plan is.
import type { Length } from "../../units/length.ts";

/** A piece that is wanted so many times. */
export interface SheetPiece {
  readonly id: string;
  readonly width: Length;
  readonly height: Length;
  readonly count: number;
  /** Whether it may be turned by a quarter; false where the grain must run along the height. */
  readonly mayTurn: boolean;
}

/** A size of sheet that can be had. */
export interface StockSheet {
  readonly id: string;
  readonly width: Length;
  readonly height: Length;
  /** In whole units of the smallest coin; 0 where cost does not matter. */
  readonly cost: number;
  /** How many there are; `null` for as many as needed. */
  readonly available: number | null;
}

/** What is to be cut from what. */
export interface SheetCutRequest {
  readonly pieces: readonly SheetPiece[];
  readonly sheets: readonly StockSheet[];
  /** Width that each cut loses; left out for a knife. */
  readonly kerf?: Length;
  /** Width that is cut off each edge of a sheet first; left out when its edges are straight and clean. */
  readonly trim?: Length;
  /** What counts first; the other one decides among equals. */
  readonly aim: "fewest-sheets" | "lowest-cost";
}

/** A piece on its sheet: x from the left edge, y from the lower edge, sizes as it lies. */
export interface PlacedPiece {
  readonly piece: string;
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
  readonly turned: boolean;
}

/** A rectangle that is left over, and the wanted pieces that could still be cut from it, each on its own. */
export interface Offcut {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
  readonly holds: readonly string[];
}

/** What a part becomes: a finished piece, a part that a later step cuts, or an offcut. */
export type PartUse = { readonly kind: "piece"; readonly piece: string } | { readonly kind: "part"; readonly part: string } | { readonly kind: "offcut" };

/** One part that a step cuts off, from `from` to `to`, measured along the step's direction from the part's straight edge. */
export interface PartCutOff {
  readonly from: Length;
  readonly to: Length;
  readonly use: PartUse;
}

/**
 * One step: a part is cut from edge to edge, once or more, all cuts parallel.
 * Every mark is measured from the same straight edge, the left one for cuts that run upwards, the lower one for cuts that run across.
 */
export interface CutStep {
  readonly number: number;
  /** The part that is cut: "sheet", or the name that an earlier step gave it. */
  readonly part: string;
  readonly measured: "from-left" | "from-below";
  /** Where the knife goes; with a kerf, the saw takes its width beyond the mark. */
  readonly marks: readonly Length[];
  readonly parts: readonly PartCutOff[];
}

/** One way of cutting a sheet, and how many sheets are cut so. */
export interface SheetLayout {
  readonly sheet: string;
  readonly times: number;
  readonly pieces: readonly PlacedPiece[];
  readonly cuts: readonly CutStep[];
  /** Largest first. */
  readonly offcuts: readonly Offcut[];
}

/** How good a plan is: no plan has less than `atLeast` of what the aim counts. */
export interface PlanBound {
  readonly counts: "sheets" | "cost";
  readonly atLeast: number;
  /** 0 for a proven minimum; else the plan may be this much above the minimum, and no more. */
  readonly mostAbove: number;
}

/** A cut plan. */
export interface SheetCutPlan {
  readonly layouts: readonly SheetLayout[];
  readonly sheets: number;
  readonly cost: number;
  readonly bound: PlanBound;
}

/** A plan, or why there is none: a piece fits no sheet, or no plan was found on the sheets that there are. */
export type SheetCutResult =
  | { readonly kind: "plan"; readonly plan: SheetCutPlan }
  | { readonly kind: "too-large"; readonly pieces: readonly string[] }
  | { readonly kind: "too-few-sheets" };

/** A length that is wanted so many times. */
export interface BarPiece {
  readonly id: string;
  readonly length: Length;
  readonly count: number;
}

/** A length that can be had: a spool, a roll, a strip. */
export interface StockBar {
  readonly id: string;
  readonly length: Length;
  readonly cost: number;
  readonly available: number | null;
}

/** What lengths are to be cut from what. */
export interface BarCutRequest {
  readonly pieces: readonly BarPiece[];
  readonly bars: readonly StockBar[];
  readonly kerf?: Length;
  readonly aim: "fewest-bars" | "lowest-cost";
}

/** One way of cutting a bar: the pieces in order from its straight end, and what is left. */
export interface BarLayout {
  readonly bar: string;
  readonly times: number;
  readonly pieces: readonly { readonly piece: string; readonly from: Length; readonly to: Length }[];
  readonly rest: Length;
}

/** A plan for bars. */
export interface BarCutPlan {
  readonly layouts: readonly BarLayout[];
  readonly bars: number;
  readonly cost: number;
  readonly bound: { readonly counts: "bars" | "cost"; readonly atLeast: number; readonly mostAbove: number };
}

/** A plan for bars, or why there is none. */
export type BarCutResult =
  | { readonly kind: "plan"; readonly plan: BarCutPlan }
  | { readonly kind: "too-long"; readonly pieces: readonly string[] }
  | { readonly kind: "too-few-bars" };
