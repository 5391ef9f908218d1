// Exact lengths as whole numbers of one unit that fits all of them, and back again.
import { lengthOf } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { rational } from "../../units/rational.ts";

/** A unit in which all the lengths of a problem are whole. */
export interface WholeUnit {
  toWhole(length: Length): number;
  toLength(whole: number): Length;
}

function greatestCommon(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommon(b, a % b);
}

/**
 * The largest unit of which every length is a whole multiple.
 * @throws RangeError when the multiples are too large to count exactly; that takes lengths in fractions no ruler has.
 */
export function unitFor(lengths: readonly Length[]): WholeUnit {
  const used = lengths.filter((length) => length.n !== 0n);
  const denominator = used.reduce((common, { d }) => (common / greatestCommon(common, d)) * d, 1n);
  const numerator = used.reduce((common, { n, d }) => greatestCommon(common, (n < 0n ? -n : n) * (denominator / d)), 0n) || 1n;
  return {
    toWhole: (length) => {
      const whole = Number((length.n * (denominator / length.d)) / numerator);
      if (!Number.isSafeInteger(whole)) throw new RangeError("internal error: lengths in so fine a fraction cannot be counted");
      return whole;
    },
    toLength: (whole) => lengthOf(rational(BigInt(whole) * numerator, denominator)),
  };
}
