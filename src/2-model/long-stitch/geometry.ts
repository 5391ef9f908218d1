// The geometry only a long-stitch binding has: what its steps, figures and templates need besides parts and holes.
import type { Length } from "../../units/length.ts";
import type { TextBlock } from "../text-block/block.ts";
import type { Station } from "../text-block/stations.ts";

/** The flap that wraps round the fore-edge: its wall at the fore-edge, and what lies on the front. */
export interface Flap {
  readonly wall: Length;
  readonly width: Length;
}

/** A fold line of the cover; all are valleys, seen from the inside. */
export interface CoverFold {
  readonly name: "front spine fold" | "back spine fold" | "fore-edge fold" | "flap fold";
  /** From the left edge of the cover, inside up. */
  readonly at: Length;
}

/** A slit across the spine, cut between the holes of the first and the last section. */
export interface Slit {
  readonly station: number;
  readonly along: Length;
  readonly from: Length;
  readonly to: Length;
}

/** All lengths exact. Across the cover is from its left edge, inside up: front cover, spine, back cover, flap. */
export interface LongStitchGeometry {
  readonly text: TextBlock;
  /** One section in the sewn spine: its leaves and what its thread adds. */
  readonly sectionPitch: Length;
  readonly stations: readonly Station[];
  /** From head and tail of the pages to the end stations. */
  readonly stationEnds: { readonly head: Length; readonly tail: Length };
  readonly longStitches: number;
  readonly longStitch: Length;
  readonly insideStitch: Length;

  readonly square: Length;
  readonly ease: Length;
  readonly coverThickness: Length;
  readonly coverHeight: Length;
  readonly coverWidth: Length;
  /** Front cover, from its edge to the fold. */
  readonly frontWidth: Length;
  /** Between the two folds of the spine. */
  readonly spineWidth: Length;
  /** Back cover, from the fold of the spine to its edge, or to the fold at the fore-edge. */
  readonly backWidth: Length;
  readonly flap: Flap | null;
  readonly folds: readonly CoverFold[];
  /** The reinforcement inside the spine, as high as the cover; `inset` is from the front spine fold to its edge. */
  readonly strip: { readonly width: Length; readonly thickness: Length; readonly inset: Length } | null;

  readonly openings: "holes" | "slits";
  /** Rows of openings from the head of the cover, station by station. */
  readonly rows: readonly Length[];
  /** Columns of openings, section by section, not on marks of the ruler: the template shows them. */
  readonly columns: readonly Length[];
  readonly holeDiameter: Length;
  readonly slits: readonly Slit[];
  /** What the needle goes through at a station: half a section, reinforcement and cover. */
  readonly throughSpine: Length;
}
