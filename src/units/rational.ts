// Exact fractions of whole numbers: the arithmetic under every length, ratio and formula.

/** An exact fraction in lowest terms; `d` is always positive. */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

/**
 * Makes a fraction in lowest terms from two whole numbers.
 * @throws RangeError when the denominator is zero (a mistake of ours, never of the author's).
 */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let top = BigInt(n);
  let bottom = BigInt(d);
  if (bottom === 0n) throw new RangeError("internal error: division by zero");
  if (bottom < 0n) [top, bottom] = [-top, -bottom];
  const divisor = greatestCommonDivisor(top < 0n ? -top : top, bottom);
  return { n: top / divisor, d: bottom / divisor };
}

/** The fraction 0. */
export const zeroRational: Rational = { n: 0n, d: 1n };

/** The fraction 1. */
export const oneRational: Rational = { n: 1n, d: 1n };

/** The exact sum. */
export function addRational(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d + b.n * a.d, a.d * b.d);
}

/** The exact difference, first less second. */
export function subtractRational(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d - b.n * a.d, a.d * b.d);
}

/** The exact product. */
export function multiplyRational(a: Rational, b: Rational): Rational {
  return rational(a.n * b.n, a.d * b.d);
}

/**
 * The exact quotient.
 * @throws RangeError when the divisor is zero.
 */
export function divideRational(a: Rational, b: Rational): Rational {
  return rational(a.n * b.d, a.d * b.n);
}

/** −1, 0 or 1 as `a` is less than, equal to or greater than `b`. */
export function compareRational(a: Rational, b: Rational): -1 | 0 | 1 {
  const difference = a.n * b.d - b.n * a.d;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** The largest whole number not above the fraction. */
export function floorRational(a: Rational): bigint {
  const quotient = a.n / a.d;
  return a.n < 0n && quotient * a.d !== a.n ? quotient - 1n : quotient;
}

/** The smallest whole number not below the fraction. */
export function ceilRational(a: Rational): bigint {
  return -floorRational({ n: -a.n, d: a.d });
}

/** The nearest whole number; exact halves go away from zero, as a person marking up a ruler expects. */
export function nearestWhole(a: Rational): bigint {
  const half = rational(1n, 2n);
  return a.n < 0n ? -floorRational(addRational({ n: -a.n, d: a.d }, half)) : floorRational(addRational(a, half));
}

/** The float nearest to the fraction: for drawing and printing only. */
export function rationalToNumber(a: Rational): number {
  const top = Number(a.n);
  const bottom = Number(a.d);
  // One division of two exact floats is rounded correctly; larger terms are first cut to 64 bits with a sticky last bit.
  if (Number.isSafeInteger(top) && Number.isSafeInteger(bottom)) return top / bottom;
  const size = a.n < 0n ? -a.n : a.n;
  const shift = 64 + bitLength(a.d) - bitLength(size);
  const scaledTop = shift > 0 ? size << BigInt(shift) : size;
  const scaledBottom = shift > 0 ? a.d : a.d << BigInt(-shift);
  const quotient = scaledTop / scaledBottom;
  const sticky = quotient * scaledBottom === scaledTop ? 0n : 1n;
  const value = Number(quotient * 2n + sticky) * 2 ** -(shift + 1);
  return a.n < 0n ? -value : value;
}

/** Reads a plain decimal such as `12`, `0.5`, `.25`, `-3`; null when the text is not one. */
export function rationalFromDecimal(text: string): Rational | null {
  const match = /^(-?)(\d*)(?:\.(\d+))?$/.exec(text);
  if (!match || (match[2] === "" && match[3] === undefined)) return null;
  const fraction = match[3] ?? "";
  const n = BigInt((match[2] || "0") + fraction);
  return rational(match[1] === "-" ? -n : n, 10n ** BigInt(fraction.length));
}

/** What roots and arcs are rounded to: one part in this many. */
export const millionth = 1_000_000n;

/**
 * The square root: exact where it is a fraction, else the nearest millionth (of a millimetre, for a root of an area).
 * @throws RangeError on a negative value (a mistake of ours).
 */
export function rootOfRational(value: Rational): Rational {
  if (value.n < 0n) throw new RangeError("internal error: the root of a negative value");
  const top = wholeRoot(value.n);
  const bottom = wholeRoot(value.d);
  if (top * top === value.n && bottom * bottom === value.d) return rational(top, bottom);
  const scaled = value.n * millionth * millionth;
  const below = wholeRoot(scaled / value.d);
  const nearestIsAbove = (2n * below + 1n) * (2n * below + 1n) * value.d <= 4n * scaled;
  return rational(nearestIsAbove ? below + 1n : below, millionth);
}

/** The largest whole number whose square is not above the value, by Newton's rule. */
function wholeRoot(value: bigint): bigint {
  if (value < 2n) return value;
  let guess = 1n << BigInt((value.toString(2).length + 1) >> 1);
  for (let better = (guess + value / guess) >> 1n; better < guess; better = (guess + value / guess) >> 1n) guess = better;
  return guess;
}

function bitLength(a: bigint): number {
  return a.toString(2).length;
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  while (b !== 0n) [a, b] = [b, a % b];
  return a === 0n ? 1n : a;
}
