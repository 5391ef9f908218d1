// Planned rounding: sizes that must add up still add up on the ruler, and no row of marks gathers error.
import { addLengths, ratioOf, roundDownToMark, roundToMark, sameLength, subtractLength } from "./length.ts";
import type { Length } from "./length.ts";
import { compareRational } from "./rational.ts";

/**
 * Positions along an edge as they are marked off, each rounded once from the same datum and never from its neighbour.
 * Laws: every result is on a mark; none is further from its exact place than half a step, the last no more than the first;
 * the order of the positions is kept.
 */
export function runningMarks(exact: readonly Length[], step: Length): readonly Length[] {
  return exact.map((position) => roundToMark(position, step));
}

/**
 * Rounds parts that make up a whole so that they still do: the marks left over after rounding every part down go to the parts
 * with the largest remainders, the earlier one first where two are equal.
 * Laws: every result is on a mark; they add up to `total` rounded to a mark; each is less than one step from its exact length;
 * a part that was on a mark stays.
 * @throws Error when the exact parts do not add up to the exact total, which is a mistake of ours.
 */
export function shareOut(total: Length, parts: readonly Length[], step: Length): readonly Length[] {
  if (!sameLength(addLengths(...parts), total)) throw new Error("internal error: parts that do not add up to their total are shared out");
  const roundedDown = parts.map((part) => roundDownToMark(part, step));
  const left = ratioOf(subtractLength(roundToMark(total, step), addLengths(...roundedDown)), step).n;
  const remainders = parts.map((part, index) => subtractLength(part, roundedDown[index]!));
  const byRemainder = parts.map((_, index) => index).sort((a, b) => compareRational(remainders[b]!, remainders[a]!) || a - b);
  const roundedUp = new Set(byRemainder.slice(0, Number(left)));
  return roundedDown.map((part, index) => (roundedUp.has(index) ? addLengths(part, step) : part));
}
