// The geometry only a post album has: what its steps, figures and templates need besides parts, scores and holes.
import type { Length } from "../../units/length.ts";
import type { PostChoice, PostPlaces } from "../posts.ts";

/**
 * All lengths exact. Across the book everything is measured from the spine edge, on which leaves, guards and hinge strips lie flush;
 * along it from the head of the leaves, or of the covers where that is said.
 */
export interface PostAlbumGeometry {
  readonly leaves: number;
  readonly leafHeight: Length;
  readonly leafWidth: Length;
  readonly leafThickness: Length;
  /** From the last score to the fore-edge: what turns, and can be seen whole. */
  readonly pageWidth: Length;
  /** Running from the spine edge. */
  readonly scores: readonly Length[];
  readonly scoreSpacing: Length;

  /** Between two leaves. */
  readonly inserts: Length;
  readonly guardLayers: number;
  readonly guardCardThickness: Length;
  /** All layers of one guard. */
  readonly guardThickness: Length;
  /** Strips in all. */
  readonly guardStrips: number;
  /** Full: how much thicker the leaves are at the fore-edge than at the hinge; negative when they are thinner. */
  readonly wedge: Length;

  /** Width of hinge strip and guards. */
  readonly hingeWidth: Length;
  readonly jointGap: Length;
  readonly leastJointGap: Length;
  /** The joint, folded right back round the post heads, needs this much of the gap. */
  readonly foldGap: Length;
  readonly jointLayers: Length;
  readonly boardWidth: Length;
  readonly boardThickness: Length;
  /** Height of boards and hinge strips. */
  readonly coverHeight: Length;
  readonly square: Length;
  readonly turnIn: Length;
  /** From a board's corner, square to the 45° cut. */
  readonly cornerDistance: Length;
  readonly clothThickness: Length;
  /** The cloth of one cover, or of its hinge where paper covers the rest. */
  readonly clothHeight: Length;
  readonly clothWidth: Length;
  readonly clothLap: Length;
  /** Null when cloth covers the whole cover. `lap` is how far the paper lies over the cloth. */
  readonly paper: { readonly height: Length; readonly width: Length; readonly thickness: Length; readonly lap: Length } | null;
  /** Lining papers and hinge linings stop this far short of the cover's edges. */
  readonly inset: Length;
  readonly hingeLining: { readonly height: Length; readonly width: Length };
  readonly lining: { readonly height: Length; readonly width: Length } | null;

  /** One cover where the posts go through. */
  readonly coverAtHinge: Length;
  /** Whether the turn-in of the spine edge reaches to the posts. */
  readonly turnInAtPost: boolean;
  /** All leaves and guards. */
  readonly leafStack: Length;
  readonly posts: PostPlaces & {
    readonly count: number;
    readonly barrel: Length;
    readonly head: Length;
    readonly holeDiameter: Length;
    readonly stack: Length;
    /** Null when nothing in the lists is long enough. */
    readonly choice: PostChoice | null;
    /** How far below the cover's head the leaf's head lies. */
    readonly coverShift: Length;
  };
  /** How many leaves and how many guard strips are pierced in one go. */
  readonly lots: { readonly leaves: number; readonly guards: number; readonly thickness: Length };
}
