// The geometry only a case binding has: what its steps, figures and templates need besides parts and holes.
import type { Length } from "../../units/length.ts";
import type { TextBlock } from "../text-block/block.ts";
import type { Station, TapePlace } from "../text-block/stations.ts";

/** How the cloth and the paper of the cover are laid. */
export interface CoveringGeometry {
  readonly kind: "full" | "quarter" | "half";
  /** The cloth of the case (full) or of the spine alone. */
  readonly clothHeight: Length;
  readonly clothWidth: Length;
  readonly turnIn: Length;
  /** From a board's corner to the 45° cut, square to it. */
  readonly cornerDistance: Length;
  /** Spine cloth on each board; null when cloth covers all. */
  readonly clothOnBoards: Length | null;
  readonly sides: { readonly height: Length; readonly width: Length; readonly lap: Length } | null;
  /** `reach` along the board's edges; `square` the side of the square that gives two corners; `paperCut` along the paper's edges from its corner. */
  readonly corners: { readonly reach: Length; readonly square: Length; readonly paperCut: Length } | null;
}

/** All lengths exact. */
export interface CaseBindingGeometry {
  readonly block: TextBlock;
  /** What is cut off at the head of a folio: positions on the folio lie this much further from its head than on the page. */
  readonly headTrim: Length;
  /** Null for a glued block of single leaves. */
  readonly sewing: {
    readonly stations: readonly Station[];
    readonly tapes: readonly TapePlace[];
    readonly tapeWidth: Length;
    readonly tapeLength: Length;
    readonly tapeOnBoards: Length;
  } | null;

  readonly endpaperThickness: Length;
  readonly endpaperHeight: Length;
  readonly endpaperWidth: Length;
  readonly endpaperTip: Length;
  /** Straight across the back, endpapers included. */
  readonly backThickness: Length;
  readonly round: { readonly rise: Length; readonly radius: Length; readonly arc: Length } | null;
  /** Along the back's surface: its thickness when flat, its arc when rounded. */
  readonly backWidth: Length;

  readonly mull: { readonly height: Length; readonly width: Length; readonly onBoards: Length; readonly short: Length; readonly thickness: Length };
  readonly lining: { readonly height: Length; readonly width: Length; readonly thickness: Length } | null;
  /** Length of one endband; null when there is none. */
  readonly endband: Length | null;
  readonly ribbon: { readonly length: Length; readonly width: Length } | null;

  readonly boardHeight: Length;
  readonly boardWidth: Length;
  readonly boardThickness: Length;
  readonly square: Length;
  readonly groove: Length;
  readonly joint: Length;
  readonly tightestJoint: Length;
  readonly loosestJoint: Length;
  readonly stripWidth: Length;
  readonly stripThickness: Length;
  readonly stripCovers: "block and boards" | "block";
  /** Diameter of the rod pressed into each joint. */
  readonly rod: Length;
  readonly clothThickness: Length;
  readonly covering: CoveringGeometry;
}
