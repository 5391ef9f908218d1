// Puts lengths into print: inches as fractions, millimetres to a step, and anything that had to be rounded says "about".
import {
  inches, isLess, isOnMark, lengthOf, millimetresPerInch, mm, noLength, roundToMark, sameLength, subtractLength,
} from "./length.ts";
import type { Length, Unit } from "./length.ts";
import { divideRational, floorRational, rational, subtractRational } from "./rational.ts";
import type { Rational } from "./rational.ts";

/** How a project's lengths are printed: its unit, the marks of its ruler, and whether the other unit stands behind. */
export interface LengthStyle {
  readonly governing: Unit;
  /** Distance between the marks that lengths are printed to. */
  readonly step: Length;
  readonly dual: boolean;
}

/** Keeps a number and its unit on one line. */
const noBreakSpace = "\u00a0";
const fractionSlash = "\u2044";
const minusSign = "−";

/** The other unit behind a size is printed to these marks. Common practice, no source. */
const secondaryMarks: Readonly<Record<Unit, Length>> = { mm: mm("0.5"), in: inches(1, 16) };

/** A length that falls on one of these was written in that unit, or might as well have been. 0.05 mm holds both the 0.1 and the 0.25 mm ruler. */
const usualMarks: Readonly<Record<Unit, Length>> = { mm: mm("0.05"), in: inches(1, 64) };

/** What a caliper shows: for layers thinner than a ruler can measure. */
const caliperMarks: Readonly<Record<Unit, Length>> = { mm: mm("0.01"), in: inches("0.001") };

/** One way of putting a length: its unit, the number alone, and whether the number was rounded. */
interface PutLength {
  readonly unit: Unit;
  readonly number: string;
  readonly rounded: boolean;
}

/**
 * A size as printed: `9 3⁄4 in`, `247.5 mm`; `about 247.5 mm` when it is off the ruler's marks. A length that is off the project's marks
 * but on the usual marks of the other unit was meant in that unit, which stands behind it exactly: `about 1⁄8 in (3 mm)`.
 * One that is shorter than a mark cannot be measured with the ruler and is printed as a thickness.
 */
export function printLength(length: Length, style: LengthStyle): string {
  return join(waysOfPutting(length, style));
}

/** Height along the spine × width across, with one unit when both are put the same way: `9 3⁄4 × 8 1⁄2 in`. */
export function printSizes(height: Length, width: Length, style: LengthStyle): string {
  const first = waysOfPutting(height, style);
  const second = waysOfPutting(width, style);
  const putAlike = first.length === second.length
    // What stands behind only explains: there one "about" does for both.
    && first.every((way, index) => way.unit === second[index]!.unit && (index > 0 || way.rounded === second[index]!.rounded));
  if (!putAlike) return `${join(first)} ×${noBreakSpace}${join(second)}`;
  return join(first.map((way, index) => ({ ...way, number: `${way.number} ×${noBreakSpace}${second[index]!.number}`, rounded: way.rounded || second[index]!.rounded })));
}

/** A thickness as printed: to 0.01 mm, or in an inch project as a fraction where it falls on a mark or on 1/64 in, and to 0.001 in where not. */
export function printThickness(length: Length, style: LengthStyle): string {
  return join(waysOfPuttingThickness(length, style));
}

/** The number alone, rounded to the project's marks: for dimension figures, whose unit is stated once on the drawing. */
export function printNumberOnly(length: Length, style: LengthStyle): string {
  return isShorterThan(length, style.step) ? thicknessNumber(length, style) : rulerNumber(length, style.governing, style.step);
}

/**
 * The exact value in plain ASCII, as in `plan.json`: inch fractions down to 1/64 when inches govern, else decimal millimetres,
 * else a fraction of a millimetre (`40/3 mm`). `readLength` gives back the same length.
 */
export function printExact(length: Length, governing: Unit): string {
  if (governing === "in" && isOnMark(length, inches(1, 64))) return `${mixedNumber(inInches(length), " ", "/", "-")} in`;
  const decimal = exactDecimal(length);
  if (decimal !== null) return `${decimal} mm`;
  return `${length.n}/${length.d} mm`;
}

function waysOfPutting(length: Length, style: LengthStyle): readonly PutLength[] {
  const { governing, step } = style;
  if (isShorterThan(length, step)) return waysOfPuttingThickness(length, style);
  const other = otherUnit(governing);
  const inGoverning = { unit: governing, number: rulerNumber(length, governing, step), rounded: !isOnMark(length, step) };
  if (inGoverning.rounded && isOnMark(length, usualMarks[other])) {
    return [inGoverning, { unit: other, number: exactNumber(length, other), rounded: false }];
  }
  if (!style.dual || sameLength(length, noLength)) return [inGoverning];
  const mark = secondaryMarks[other];
  return [inGoverning, { unit: other, number: rulerNumber(length, other, mark), rounded: !isOnMark(length, mark) }];
}

function waysOfPuttingThickness(length: Length, style: LengthStyle): readonly PutLength[] {
  const { governing } = style;
  const other = otherUnit(governing);
  const inGoverning = { unit: governing, number: thicknessNumber(length, style), rounded: !isCaliperExact(length, style) };
  if (inGoverning.rounded && isOnMark(length, governing === "in" ? caliperMarks.mm : usualMarks.in)) {
    return [inGoverning, { unit: other, number: exactNumber(length, other), rounded: false }];
  }
  if (!style.dual || sameLength(length, noLength)) return [inGoverning];
  const mark = caliperMarks[other];
  return [inGoverning, { unit: other, number: decimalNumber(roundToMark(length, mark), other), rounded: !isOnMark(length, mark) }];
}

function isCaliperExact(length: Length, style: LengthStyle): boolean {
  return isOnMark(length, caliperMarks[style.governing]) || isInchFraction(length, style);
}

function isInchFraction(length: Length, { governing, step }: LengthStyle): boolean {
  return governing === "in" && (isOnMark(length, step) || isOnMark(length, usualMarks.in));
}

function thicknessNumber(length: Length, style: LengthStyle): string {
  if (isInchFraction(length, style)) return exactNumber(length, "in");
  return decimalNumber(roundToMark(length, caliperMarks[style.governing]), style.governing);
}

function rulerNumber(length: Length, unit: Unit, step: Length): string {
  return exactNumber(roundToMark(length, step), unit);
}

function exactNumber(length: Length, unit: Unit): string {
  return unit === "mm" ? decimalNumber(length, "mm") : mixedNumber(inInches(length), noBreakSpace, fractionSlash, minusSign);
}

function decimalNumber(length: Length, unit: Unit): string {
  const value = unit === "mm" ? length : inInches(length);
  // Marks are finite decimals, so the fallback is only met by a step that no ruler has.
  return (exactDecimal(value) ?? exactDecimal(roundToMark(lengthOf(value), mm("0.001")))!).replace("-", minusSign);
}

function join(ways: readonly PutLength[]): string {
  const texts = ways.map(({ unit, number, rounded }) => `${rounded ? `about${noBreakSpace}` : ""}${number}${noBreakSpace}${unit}`);
  return texts.length === 1 ? texts[0]! : `${texts[0]} (${texts[1]})`;
}

/** Whole and fraction in lowest terms: `9 3/4`, `3/4`, `9`. */
function mixedNumber(value: Rational, space: string, slash: string, minus: string): string {
  const size = value.n < 0n ? rational(-value.n, value.d) : value;
  const whole = floorRational(size);
  const rest = subtractRational(size, rational(whole));
  const fraction = rest.n === 0n ? "" : `${rest.n}${slash}${rest.d}`;
  const text = whole === 0n && fraction !== "" ? fraction : fraction === "" ? `${whole}` : `${whole}${space}${fraction}`;
  return value.n < 0n ? minus + text : text;
}

/** The decimal that equals the value, without trailing zeros; null when it has none of at most nine places. */
function exactDecimal(value: Rational): string | null {
  let places = 0;
  let scale = 1n;
  while (scale % value.d !== 0n) {
    if (places === 9) return null;
    places += 1;
    scale *= 10n;
  }
  const digits = (value.n < 0n ? -value.n : value.n) * (scale / value.d);
  const text = digits.toString().padStart(places + 1, "0");
  const decimal = places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
  return value.n < 0n ? `-${decimal}` : decimal;
}

function inInches(length: Length): Rational {
  return divideRational(length, millimetresPerInch);
}

function otherUnit(unit: Unit): Unit {
  return unit === "mm" ? "in" : "mm";
}

function isShorterThan(length: Length, step: Length): boolean {
  const size = length.n < 0n ? subtractLength(noLength, length) : length;
  return isLess(size, step) && length.n !== 0n;
}
