// Lengths: exact fractions of a millimetre, in which every inch fraction is exact too (1 in = 25.4 mm by definition).
import {
  addRational, ceilRational, compareRational, divideRational, floorRational, multiplyRational, nearestWhole,
  rational, rationalFromDecimal, rationalToNumber, rootOfRational, subtractRational, zeroRational,
} from "./rational.ts";
import type { Rational } from "./rational.ts";

declare const lengthBrand: unique symbol;

/** An exact length in millimetres. Branded, so that no bare fraction or float passes for one. */
export type Length = Rational & { readonly [lengthBrand]: true };

/** The units in which sizes are written and printed. */
export type Unit = "mm" | "in";

/** International inch, exact: 127/5 mm. Source: the 1959 international yard and pound agreement. */
export const millimetresPerInch: Rational = { n: 127n, d: 5n };

/** The length 0. */
export const noLength = zeroRational as Length;

/** A length from an exact fraction of millimetres. */
export function lengthOf(millimetres: Rational): Length {
  return millimetres as Length;
}

/** Millimetres from a whole number or a decimal written as text (`mm(3)`, `mm("0.45")`). Floats are refused. */
export function mm(value: number | string): Length {
  return lengthOf(exactNumber(value));
}

/** Inches from whole numbers or a decimal written as text: `inches(3, 8)` is 3/8 in, `inches("9.75")`. */
export function inches(value: number | string, denominator = 1): Length {
  return lengthOf(multiplyRational(divideRational(exactNumber(value), rational(denominator)), millimetresPerInch));
}

/** The exact sum; of nothing, no length. */
export function addLengths(...lengths: readonly Length[]): Length {
  return lengthOf(lengths.reduce<Rational>(addRational, zeroRational));
}

/** The exact difference, first less second; negative when the second is longer. */
export function subtractLength(a: Length, b: Length): Length {
  return lengthOf(subtractRational(a, b));
}

/** So many times the length; a factor that is not whole is given as a fraction. */
export function multiplyLength(length: Length, factor: number | Rational): Length {
  return lengthOf(multiplyRational(length, typeof factor === "number" ? rational(factor) : factor));
}

/**
 * The length in so many equal parts, exactly.
 * @throws RangeError when the divisor is zero.
 */
export function divideLength(length: Length, divisor: number | Rational): Length {
  return lengthOf(divideRational(length, typeof divisor === "number" ? rational(divisor) : divisor));
}

/** The distance between two points that lie so far apart along and across: exact where it can be, else to a millionth of a millimetre. */
export function hypotenuse(along: Length, across: Length): Length {
  return lengthOf(rootOfRational(addRational(multiplyRational(along, along), multiplyRational(across, across))));
}

/** How often `b` goes into `a`, exactly. */
export function ratioOf(a: Length, b: Length): Rational {
  return divideRational(a, b);
}

/** −1, 0 or 1 as `a` is shorter than, equal to or longer than `b`. */
export function compareLengths(a: Length, b: Length): -1 | 0 | 1 {
  return compareRational(a, b);
}

/** Whether `a` is shorter than `b`. */
export function isLess(a: Length, b: Length): boolean {
  return compareRational(a, b) < 0;
}

/** Whether two lengths are exactly equal. */
export function sameLength(a: Length, b: Length): boolean {
  return compareRational(a, b) === 0;
}

/** The longest of one or more lengths. */
export function longest(first: Length, ...rest: readonly Length[]): Length {
  return rest.reduce((best, next) => (isLess(best, next) ? next : best), first);
}

/** The shortest of one or more lengths. */
export function shortest(first: Length, ...rest: readonly Length[]): Length {
  return rest.reduce((best, next) => (isLess(next, best) ? next : best), first);
}

/** Millimetres as a float: for drawing, never for further sizes. */
export function toMillimetres(length: Length): number {
  return rationalToNumber(length);
}

/** To the nearest mark of a ruler divided in `step`; an exact half goes away from zero. */
export function roundToMark(length: Length, step: Length): Length {
  return multiplyLength(step, rational(nearestWhole(ratioOf(length, step))));
}

/** To the next mark up: for parts that must not come out too small (a spine strip, a post, a thread). */
export function roundUpToMark(length: Length, step: Length): Length {
  return multiplyLength(step, rational(ceilRational(ratioOf(length, step))));
}

/** To the next mark down: for parts that must not stick out (a page, a lining, a margin that shares a fixed width). */
export function roundDownToMark(length: Length, step: Length): Length {
  return multiplyLength(step, rational(floorRational(ratioOf(length, step))));
}

/** Whether a length falls on a mark of a ruler divided in `step`. */
export function isOnMark(length: Length, step: Length): boolean {
  return ratioOf(length, step).d === 1n;
}

function exactNumber(value: number | string): Rational {
  if (typeof value === "number") {
    if (!Number.isSafeInteger(value)) throw new RangeError(`internal error: write ${value} as text, so that it stays exact`);
    return rational(value);
  }
  const parsed = rationalFromDecimal(value);
  if (!parsed) throw new RangeError(`internal error: not a decimal: ${value}`);
  return parsed;
}
