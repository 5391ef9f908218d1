// The geometry only a link stitch has: what its steps, figures and templates need besides parts and holes.
import type { Length } from "../../units/length.ts";
import type { TextBlock } from "../text-block/block.ts";
import type { Station } from "../text-block/stations.ts";

/** All lengths exact. */
export interface LinkStitchGeometry {
  readonly text: TextBlock;
  /** One section in the sewn spine: its leaves and what its thread adds. */
  readonly sectionPitch: Length;
  readonly stations: readonly Station[];
  /** From head and tail of the pages to the end stations. */
  readonly stationEnds: { readonly head: Length; readonly tail: Length };
  readonly needles: 1 | 2;

  readonly covered: boolean;
  readonly square: Length;
  readonly boardHeight: Length;
  readonly boardWidth: Length;
  readonly boardThickness: Length;
  /** A board with its covering and lining. */
  readonly coverThickness: Length;
  /** From the head of the finished board, station by station. */
  readonly holesAlong: readonly Length[];
  /** From the spine edge of the finished board. */
  readonly holeDistance: Length;
  readonly holeDiameter: Length;
  readonly turnIn: Length;
  /** From a board's corner to the 45° cut, square to it. */
  readonly cornerDistance: Length;
  readonly covering: { readonly height: Length; readonly width: Length; readonly thickness: Length } | null;
  readonly lining: { readonly height: Length; readonly width: Length; readonly inset: Length } | null;
}
