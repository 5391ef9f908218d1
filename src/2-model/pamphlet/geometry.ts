// What a pamphlet's figures and steps need besides parts, scores, holes and thread.
import type { Length } from "../../units/length.ts";

/** A pamphlet as geometry. Lengths along the fold are from the head of a page. */
export interface PamphletGeometry {
  readonly sheets: number;
  readonly pageHeight: Length;
  /** Half of a sheet. */
  readonly pageWidth: Length;
  readonly isTrimmed: boolean;
  /** From the back of the fold to the fore-edge, trimmed or not. */
  readonly textWidth: Length;
  readonly paperThickness: Length;
  readonly coverThickness: Length;
  /** How far the innermost leaf would stand out beyond the outermost, round fold. */
  readonly creep: Length;
  readonly leastCreep: Length;
  readonly sectionThickness: Length;
  readonly square: Length;
  readonly coverHeight: Length;
  readonly coverWidth: Length;
  readonly coverFold: Length;
  /** Holes from the head of a page. */
  readonly stations: readonly Length[];
  readonly endDistance: Length;
  readonly holeDiameter: Length;
  /** What a needle goes through at the fold: every sheet once, and the cover. */
  readonly foldThickness: Length;
  readonly tiedInside: boolean;
}
