// The geometry only a stub album has: what its steps, figures and templates need besides parts, scores and holes.
import type { Length } from "../../units/length.ts";

/**
 * All lengths exact. Axes of the closed spine: `x` runs across the spine strip from its front end, `y` from the spine strip's
 * outer face towards the fore-edge.
 */
export interface StubAlbumGeometry {
  readonly stubs: number;
  /** Base score to crest score, flat. */
  readonly stubDepth: Length;
  /** Height of a stub above the floor once folded: the crest's bend takes a little. */
  readonly closedStubDepth: Length;
  readonly floorGap: Length;
  readonly margin: Length;
  readonly cardThickness: Length;
  readonly cardWidth: Length;
  /** What each closed stub adds to the folded floor: its two base scores stand this far apart. */
  readonly stubGrowth: Length;
  readonly foldedFloor: Length;
  /** Middle of stub 0 to middle of stub 1 on the folded floor. */
  readonly pitch: Length;
  /** Middle of each closed stub from the front edge of the folded floor. */
  readonly stubCentres: readonly Length[];
  readonly spineIsGiven: boolean;
  /** Free width of the floor between two closed stubs. */
  readonly clearGap: Length;

  readonly stripHeight: Length;
  readonly spineStripWidth: Length;
  readonly sideStripWidth: Length;
  readonly stripThickness: Length;
  readonly jointGap: Length;
  readonly turnIn: Length;
  readonly clothThickness: Length;
  readonly clothHeight: Length;
  readonly clothWidth: Length;
  readonly hingeTapeWidth: Length;
  /** From a strip's corner, square to the 45° cut. */
  readonly cornerDistance: Length;
  /** Board edge to strip edge at head and at tail. */
  readonly stripInset: Length;

  readonly boardHeight: Length;
  readonly boardWidth: Length;
  readonly boardThickness: Length;
  /** Strip, adhesive and board: how thick a cover is at the hinge, cloth left out. */
  readonly hingeStack: Length;
  /** Shut and full: how far the boards' spine edges stand beyond the spine strip's outer face, towards the fore-edge. */
  readonly closedRise: Length;
  /** Spine strip's outer face to the inside of the folded floor. */
  readonly floorHeight: Length;
  readonly lining: { readonly height: Length; readonly width: Length; readonly inset: Length } | null;

  readonly pages: {
    readonly backToBack: boolean;
    readonly papers: number;
    readonly height: Length;
    readonly width: Length;
    readonly paperThickness: Length;
    /** Depth of the adhesive on a stub. */
    readonly adhesiveZone: Length;
    readonly adhesiveClearance: Length;
    readonly square: Length;
    readonly roomPerOpening: Length;
    readonly roomAtEachEnd: Length;
    readonly roomInAll: Length;
    readonly decoration: Length | null;
  };

  readonly posts: {
    readonly count: number;
    readonly barrel: Length;
    readonly holeDiameter: Length;
    readonly stack: Length;
    /** Null when no post in the list is long enough. */
    readonly length: Length | null;
    /** How much longer than the layers the post is; null without a post. */
    readonly slack: Length | null;
    /** Washers of card that fit into the slack under each cap. */
    readonly washers: number;
    readonly endDistance: Length;
    /** From the strip's head edge, each rounded once. */
    readonly along: readonly Length[];
    /** From the strip's and the board's spine-side edge. */
    readonly across: Length;
  };

  /** Nought without bookmark and closure. */
  readonly ribbonWidth: Length;
  readonly bookmarkLength: Length | null;
  readonly closureLength: Length | null;
  /** How much of a closure ribbon is glued to the inside of the board; nought without a closure. */
  readonly closureGlued: Length;
}
