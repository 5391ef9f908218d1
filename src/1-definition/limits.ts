// Limits of a length put into the unit an author writes in, rounded so that the printed limit itself is accepted.
import { divideRational, multiplyRational, rational, rationalToNumber, ceilRational, floorRational } from "../units/rational.ts";
import { millimetresPerInch } from "../units/length.ts";
import type { Length, Unit } from "../units/length.ts";

/** A limit as printed: millimetres as they are, inches to the next hundredth within the limit (`up` for a lower limit, `down` for an upper). */
export function printLimit(limit: Length, unit: Unit, rounding: "up" | "down"): string {
  if (unit === "mm") return `${rationalToNumber(limit)} mm`;
  const hundredths = multiplyRational(divideRational(limit, millimetresPerInch), rational(100));
  const whole = rounding === "up" ? ceilRational(hundredths) : floorRational(hundredths);
  return `${rationalToNumber(rational(whole, 100n))} in`;
}

/** A length as the author wrote it; a bare number gets the unit it was read in. */
export function lengthWithUnit(text: string, unit: Unit): string {
  const written = text.trim().replace(/\s+/gu, " ");
  const shown = written.length > 40 ? `${written.slice(0, 39)}…` : written;
  return /[a-z"″”]/iu.test(shown) ? shown : `${shown} ${unit}`;
}
