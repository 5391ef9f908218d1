// Findings about a covering that is turned over edges: corners cut off too far out, turn-ins that meet.
import { isLess, multiplyLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { printLength, printThickness } from "../units/print-length.ts";
import type { LengthStyle } from "../units/print-length.ts";
import type { Finding } from "./types.ts";

/** The corner of a covering, in lengths and in the words of the binding. */
export interface CoveringCorner {
  readonly turnIn: Length;
  /** From the corner of what is covered to the 45° cut, square to it. */
  readonly cornerDistance: Length;
  /** The covering, as the finding names it: "cover cloth". */
  readonly where: string;
  /** What is covered: "board", "strip". */
  readonly over: string;
  /** What to take in place of it: "thinner boards". */
  readonly thinner: string;
}

/** A cut farther out than the turn-in is deep passes outside the covering: nothing is cut off. */
export function findCornerFaults({ turnIn, cornerDistance, where, over, thinner }: CoveringCorner, units: LengthStyle): readonly Finding[] {
  if (isLess(cornerDistance, turnIn)) return [];
  return [{
    code: "corner-cut-too-far", severity: "warn", where, path: "book/turn in",
    message: `the corner is cut ${printThickness(cornerDistance, units)} from the ${over}, the turn-in is only ${printLength(turnIn, units)}`,
    consequence: "the corners will be bulky",
    remedy: `make the turn-in deeper or take ${thinner}`,
  }];
}

/** Turn-ins from two opposite edges, named by `from`, that meet in the middle of `length`. */
export function findMeetingTurnIns({ turnIn, from, over, length }: { readonly turnIn: Length; readonly from: string; readonly over: string; readonly length: Length }, units: LengthStyle): readonly Finding[] {
  if (isLess(multiplyLength(turnIn, 2), length)) return [];
  return [{
    code: "turn-in-too-deep", severity: "stop", where: "turn-in", path: "book/turn in",
    message: `the turn-ins from ${from}, ${printLength(turnIn, units)} each, meet on a ${over} of ${printLength(length, units)}`,
    consequence: "they would lie on top of each other",
    remedy: "make the turn-in smaller",
  }];
}
