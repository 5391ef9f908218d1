// The geometry only a concertina has: strips, joins, folds and covers beyond parts and scores.
import type { Length } from "../../units/length.ts";
import type { Fold } from "../types.ts";

/** Kinds of strip by part id: one piece, or a first, middle and last one that are joined. */
export type StripId = "strip" | "first-strip" | "middle-strip" | "last-strip";

/** One strip of paper, left to right as seen from the front. */
export interface Strip {
  /** 1 is the leftmost. */
  readonly n: number;
  readonly part: StripId;
  readonly panels: number;
  /** Number of its first panel in the book, from 1. */
  readonly firstPanel: number;
  /** Whether a tab at its right end is glued behind the next strip. */
  readonly hasTab: boolean;
}

/** One fold made by halving: two places are brought together and the crease falls midway. */
export interface HalvingFold {
  /** Which of the folds it is, from the left. */
  readonly fold: number;
  /** All folds of one round are made before the next round begins; from 1. */
  readonly round: number;
  /** Fold numbers on both sides of it; 0 is the left edge, the number of panels the right edge. */
  readonly from: number;
  readonly onto: number;
  readonly direction: Fold;
}

/** The sheet that the strips are planned for. */
export interface ParentSheet {
  /** Side along the grain, and with it along the height of the panels. */
  readonly along: Length;
  /** Side across the grain: no strip is longer. */
  readonly across: Length;
  /** The author named no sheet. */
  readonly sizeAssumed: boolean;
  /** The author named no grain. */
  readonly grainAssumed: boolean;
  readonly stripsFromEach: number;
  readonly count: number;
}

/** One ribbon, glued across the inside of the back board. */
export interface RibbonClosure {
  readonly kind: "ribbon";
  readonly width: Length;
  readonly length: Length;
  /** Free beyond the spine edge: once over the spine side and the front, and to tie. */
  readonly longEnd: Length;
  /** Free beyond the fore-edge: up over the thickness, and to tie. */
  readonly shortEnd: Length;
}

/** A ring of covering material that slips over the shut book. */
export interface BandClosure {
  readonly kind: "band";
  readonly height: Length;
  readonly length: Length;
  readonly lap: Length;
  readonly ease: Length;
  /** Its four folds from the left edge, on ruler marks. */
  readonly folds: readonly Length[];
}

/** All lengths exact. Left and right as seen from the front, the side that is read. */
export interface ConcertinaGeometry {
  readonly panels: number;
  readonly panelHeight: Length;
  readonly panelWidth: Length;
  readonly paperThickness: Length;
  readonly folding: "halving" | "scores";
  /** The order of halving, where the panels are a power of two in one piece; else empty. */
  readonly halving: readonly HalvingFold[];
  /** How far the outermost layer would be off if the last halving went through all layers at once; null where there is no halving. */
  readonly stackedTakeUp: Length | null;
  readonly sheet: ParentSheet;
  readonly strips: readonly Strip[];
  readonly tab: Length;
  readonly setBack: Length;
  readonly leastSetBack: Length;
  /** What the tabs add to the stack at its spine side. */
  readonly tabSwell: Length;
  /** Fold to fold over the outer faces, once folded. */
  readonly foldedWidth: Length;
  readonly foldedStack: Length;
  /** The last panel goes with its back, or with its front, to the back board. */
  readonly lastPanelGlued: "back" | "front";

  readonly square: Length;
  readonly boardHeight: Length;
  readonly boardWidth: Length;
  readonly boardThickness: Length;
  readonly covering: "cover paper" | "cloth";
  readonly coverThickness: Length;
  readonly coverHeight: Length;
  readonly coverWidth: Length;
  readonly turnIn: Length;
  /** From a board's corner, square to the 45° cut. */
  readonly cornerDistance: Length;
  /** Board with covering and turn-in. */
  readonly coverStack: Length;
  /** The shut book at its spine side, not rounded. */
  readonly shutThickness: Length;
  readonly endAdhesiveThickness: Length;
  readonly closure: RibbonClosure | BandClosure | null;
}
