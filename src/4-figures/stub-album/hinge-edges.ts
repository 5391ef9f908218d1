// Where the hinge's parts lie on its cloth, in millimetres of paper: every plan view of the hinge starts from these edges.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { toMillimetres } from "../../units/length.ts";

/** From one edge to another, across the page. */
export interface Extent {
  readonly left: number;
  readonly right: number;
}

/** Origin at the head left corner of the flat cloth, wrong side up; y runs from head to tail. */
export interface HingeEdges {
  readonly cloth: { readonly width: number; readonly height: number };
  readonly leftStrip: Extent;
  readonly spineStrip: Extent;
  readonly rightStrip: Extent;
  readonly head: number;
  readonly tail: number;
  /** Cloth on the inside of a strip once turned in: the turn-in less what goes round the strip's edge. */
  readonly turnedIn: number;
}

/** The edges at a factor of millimetres on paper for one of cloth. */
export function hingeEdges(geometry: StubAlbumGeometry, factor: number): HingeEdges {
  const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
  const [turnIn, side, gap, spine] = [geometry.turnIn, geometry.sideStripWidth, geometry.jointGap, geometry.spineStripWidth].map(paper) as [number, number, number, number];
  const spineLeft = turnIn + side + gap;
  const rightLeft = spineLeft + spine + gap;
  return {
    cloth: { width: paper(geometry.clothWidth), height: paper(geometry.clothHeight) },
    leftStrip: { left: turnIn, right: turnIn + side },
    spineStrip: { left: spineLeft, right: spineLeft + spine },
    rightStrip: { left: rightLeft, right: rightLeft + side },
    head: turnIn,
    tail: turnIn + paper(geometry.stripHeight),
    turnedIn: Math.max(0, turnIn - paper(geometry.stripThickness)),
  };
}

/** The outline of one strip, or of anything else that runs from head to tail. */
export function fromHeadToTail({ left, right }: Extent, edges: HingeEdges): Path {
  return rectangle(left, edges.head, right - left, edges.tail - edges.head);
}

/** The place halfway between two edges. */
export function middleOf({ left, right }: Extent): number {
  return (left + right) / 2;
}
