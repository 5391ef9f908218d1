// Reads the lengths people write (`9 3/4 in`, `9¾"`, `24.7cm`) into exact lengths, or says precisely why it cannot.
import { lengthOf, millimetresPerInch } from "./length.ts";
import type { Length, Unit } from "./length.ts";
import { multiplyRational, rational } from "./rational.ts";
import type { Rational } from "./rational.ts";
import { quoted, readNumber } from "./read-number.ts";

/** Why a text is no length: the wording of a problem and the half-open span of offsets in the text that was read. */
export interface LengthProblem {
  readonly ok: false;
  readonly code: "length-syntax" | "length-unit";
  readonly message: string;
  readonly hint: string;
  readonly start: number;
  readonly end: number;
}

/** A length that was read, or the problem with it. Centimetres and metres count as written in `mm`. */
export type LengthReading = { readonly ok: true; readonly length: Length; readonly writtenUnit: Unit } | LengthProblem;

/** Two sizes in the order written, height along the spine × width, or the problem with them. */
export type SizesReading =
  | { readonly ok: true; readonly height: Length; readonly width: Length; readonly writtenUnit: Unit }
  | LengthProblem;

/** Longest text that is tried: no honest length is longer, and nothing read from it can grow without bound. */
export const longestLengthText = 80;

interface UnitWord {
  readonly unit: Unit;
  readonly millimetres: Rational;
}

const millimetre: UnitWord = { unit: "mm", millimetres: rational(1n) };
const centimetre: UnitWord = { unit: "mm", millimetres: rational(10n) };
const metre: UnitWord = { unit: "mm", millimetres: rational(1000n) };
const inch: UnitWord = { unit: "in", millimetres: millimetresPerInch };

const unitWords: ReadonlyMap<string, UnitWord> = new Map([
  ["mm", millimetre], ["millimetre", millimetre], ["millimetres", millimetre], ["millimeter", millimetre], ["millimeters", millimetre],
  ["cm", centimetre], ["centimetre", centimetre], ["centimetres", centimetre], ["centimeter", centimetre], ["centimeters", centimetre],
  ["m", metre], ["metre", metre], ["metres", metre], ["meter", metre], ["meters", metre],
  ["in", inch], ["in.", inch], ["inch", inch], ["inches", inch], ['"', inch], ["″", inch], ["”", inch],
]);

/**
 * Reads one length: a whole number, a decimal with a point, a fraction or a whole number with a fraction, then a unit:
 * `mm`, `cm`, `m`, `in`, their words, `"` or `″`. Signs are kept: whether a negative length makes sense is for the caller to say.
 * @param bareUnit the unit of a number written without one; null makes that a `length-unit` problem.
 */
export function readLength(text: string, bareUnit: Unit | null): LengthReading {
  const tooLong = refuseLongText(text);
  if (tooLong) return tooLong;
  const reading = readMeasure(text, 0, text.length);
  if (!reading.ok) return reading;
  const word = reading.word ?? (bareUnit === null ? null : bareUnit === "mm" ? millimetre : inch);
  if (!word) return unitMissing(reading);
  return { ok: true, length: inUnit(reading.number, word), writtenUnit: word.unit };
}

/**
 * Reads two sizes joined by `x`, `×` or `by`: `500 mm x 700 mm`, `500 x 700 mm`, `9 × 12 in`.
 * One unit at the end serves both; a unit behind the first size only is refused, because the second could then be anything.
 */
export function readSizes(text: string, bareUnit: Unit | null): SizesReading {
  const tooLong = refuseLongText(text);
  if (tooLong) return tooLong;
  const signs = [...text.matchAll(/[x×]|\bby\b/giu)];
  const sign = signs[0];
  if (!sign || signs.length > 1) {
    return {
      ok: false, code: "length-syntax", start: signs[1]?.index ?? 0, end: text.length,
      message: `${quoted(text)} is not two sizes`,
      hint: "write the height along the spine, ×, the width, for example 500 × 700 mm",
    };
  }
  const second = readMeasure(text, sign.index + sign[0].length, text.length);
  if (!second.ok) return second;
  const first = readMeasure(text, 0, sign.index);
  if (!first.ok) return first;
  if (first.word && !second.word) return { ...unitMissing(second), hint: "write the unit behind the second size too, or only there" };
  const bare = bareUnit === null ? null : bareUnit === "mm" ? millimetre : inch;
  const secondWord = second.word ?? bare;
  if (!secondWord) return unitMissing(second);
  const firstWord = first.word ?? secondWord;
  return { ok: true, height: inUnit(first.number, firstWord), width: inUnit(second.number, secondWord), writtenUnit: firstWord.unit };
}

interface Measure {
  readonly ok: true;
  readonly number: Rational;
  readonly word: UnitWord | null;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

function readMeasure(text: string, from: number, to: number): Measure | LengthProblem {
  const reading = readNumber(text, from, to);
  if (!reading.ok) return { ...reading, code: "length-syntax" };
  const rest = text.slice(reading.end, to);
  const written = rest.trim();
  const start = reading.end + rest.indexOf(written);
  const measure = { ok: true, number: reading.value, start: reading.start, end: reading.end, text: text.slice(reading.start, reading.end) } as const;
  if (written === "") return { ...measure, word: null };
  const word = unitWords.get(written.toLowerCase());
  return word ? { ...measure, word } : unitUnreadable(written, start);
}

function inUnit(number: Rational, word: UnitWord): Length {
  return lengthOf(multiplyRational(number, word.millimetres));
}

function refuseLongText(text: string): LengthProblem | null {
  if (text.length <= longestLengthText) return null;
  return {
    ok: false, code: "length-syntax", start: 0, end: text.length,
    message: `${quoted(text)} is too long for a length (${text.length} characters)`, hint: "write one number and one unit, for example 247 mm or 9 3/4 in",
  };
}

function unitMissing(measure: Measure): LengthProblem {
  return {
    ok: false, code: "length-unit", start: measure.start, end: measure.end,
    message: `${quoted(measure.text)} has no unit`, hint: `write ${measure.text} mm or ${measure.text} in`,
  };
}

/** Why the text behind a number is no unit; the kinds people really write get a hint of their own. */
function unitUnreadable(written: string, start: number): LengthProblem {
  const problem = (code: LengthProblem["code"], message: string, hint: string, from = 0): LengthProblem =>
    ({ ok: false, code, start: start + from, end: start + written.length, message, hint });
  if (/^(?:''|′′|’’|“)$/u.test(written)) return problem("length-unit", `${quoted(written)} is not read as inches`, 'write in or "');
  if (/^(?:['′’]|ft\b|foot\b|feet\b)/iu.test(written)) return problem("length-unit", "feet are not read", "write the length in inches: 1 foot is 12 in");
  if (/^(?:pts?|points?)\.?$/iu.test(written)) return problem("length-unit", "points are not read", "write the caliper in inches, one point being 0.001 in: 12 points are 0.012 in");
  const known = /^(?:[a-z]+\.?|["″”])/iu.exec(written)?.[0] ?? "";
  if (unitWords.has(known.toLowerCase())) {
    const behind = written.slice(known.length).trimStart();
    return problem("length-syntax", `${quoted(behind)} follows the length`, "write one length in one unit only; the other unit is worked out", written.length - behind.length);
  }
  if (/^\p{L}[\p{L}.]*$/u.test(written)) return problem("length-unit", `${quoted(written)} is not a unit that is known here`, "use mm, cm, m or in");
  return problem("length-syntax", `${quoted(written)} cannot be read behind the number`, "write one number and one unit, for example 247 mm or 9 3/4 in");
}
