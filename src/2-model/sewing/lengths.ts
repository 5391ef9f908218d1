// Lengths of thread along, through and around things: middle lines of taut thread, with the thickness of what they pass.
import { addLengths, hypotenuse, multiplyLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Place } from "./types.ts";

/** The straight distance on one side from place to place, both directions of the face counted; depth is not. */
export function straightBetween(a: Place, b: Place): Length {
  return hypotenuse(subtractLength(a.along, b.along), subtractLength(a.across, b.across));
}

/** Out of a hole on one face, around an edge `away` from it, and back to the same hole on the other face: twice the way and the thickness. */
export function aroundEdge(away: Length, thickness: Length): Length {
  return addLengths(multiplyLength(away, 2), thickness);
}

/** From hole to hole over a tape between them: taut from its edge up, over it and down again, so its thickness twice more. */
export function overTape(a: Place, b: Place, tapeThickness: Length): Length {
  return addLengths(straightBetween(a, b), multiplyLength(tapeThickness, 2));
}

/** Under an earlier stitch that lies `away` and back to where it came from, once around that stitch's thread on the way. */
export function linkUnder(away: Length, threadThickness: Length): Length {
  return addLengths(multiplyLength(away, 2), multiplyLength(threadThickness, 2));
}

/**
 * From the end hole of one section, down under the stitch that lies `down` below it, and up to the next section `up` above it:
 * there and back, on to the next section, and once around the thread it catches.
 */
export function kettleClimb(down: Length, up: Length, threadThickness: Length): Length {
  return addLengths(multiplyLength(down, 2), up, multiplyLength(threadThickness, 2));
}

/** A knot winds twice round the thread it is tied to: four thread thicknesses round, about three of them each. Common practice, no source. */
export function knotLength(thread: Length): Length {
  return multiplyLength(thread, 12);
}
