// Reads the number at the start of a measure exactly as people write it: whole, with a decimal point, as a fraction or mixed.
import { addRational, compareRational, oneRational, rational, rationalFromDecimal } from "./rational.ts";
import type { Rational } from "./rational.ts";

/** A number and the offset behind it, or why there is none; offsets count in the whole text that was given. */
export type NumberReading = { readonly ok: true; readonly value: Rational; readonly start: number; readonly end: number } | NumberProblem;

/** What is wrong with a number, in the words of a problem, and where. */
export interface NumberProblem {
  readonly ok: false;
  readonly message: string;
  readonly hint: string;
  readonly start: number;
  readonly end: number;
}

/** A text as shown in a message: trimmed, cut when it is long, in quotation marks. */
export function quoted(text: string): string {
  const shown = text.trim();
  return shown.length > 40 ? `"${shown.slice(0, 39)}…"` : `"${shown}"`;
}

const vulgarFractions: Readonly<Record<string, readonly [number, number]>> = {
  "¼": [1, 4], "½": [1, 2], "¾": [3, 4], "⅐": [1, 7], "⅑": [1, 9], "⅒": [1, 10], "⅓": [1, 3], "⅔": [2, 3], "⅕": [1, 5], "⅖": [2, 5], "⅗": [3, 5],
  "⅘": [4, 5], "⅙": [1, 6], "⅚": [5, 6], "⅛": [1, 8], "⅜": [3, 8], "⅝": [5, 8], "⅞": [7, 8], "↉": [0, 3],
};

// The slashes are the plain one, the fraction slash and the division slash; hyphens join a whole number to its fraction.
const fraction =
  `(?:(?<top>\\d+)\\s*[/⁄∕]\\s*(?<bottom>\\d+)|(?<vulgar>[${Object.keys(vulgarFractions).join("")}])|⅟(?<part>\\d+)|(?<above>[⁰¹²³⁴-⁹]+)[/⁄∕](?<below>[₀-₉]+))`;
const mixedNumber = new RegExp(`^(?<whole>\\d+)(?:\\s*|[-‐‑–])(?=\\D|(?<=\\D)\\d)${fraction}`, "u");
const fractionAlone = new RegExp(`^${fraction}`, "u");
const decimalNumber = /^(?:\d*\.\d+|\d+)/u;
const negativeSign = /^[-−–]\s*/u;

/**
 * Reads one number from `start` on, blanks skipped, and stops behind it; what follows is for the caller.
 * Refused, each with its own hint: decimal commas, thousands separators, exponents, hexadecimals, `NaN`, `Infinity`, division by zero.
 */
export function readNumber(text: string, start: number, end: number): NumberReading {
  const part = text.slice(start, end);
  const from = start + part.length - part.trimStart().length;
  const sign = negativeSign.exec(text.slice(from, end))?.[0] ?? "";
  const at = from + sign.length;
  const rest = text.slice(at, end);
  const misspelled = findMisspelling(rest, at);
  if (misspelled) return misspelled;
  const match = mixedNumber.exec(rest) ?? fractionAlone.exec(rest) ?? decimalNumber.exec(rest);
  if (!match) {
    return {
      ok: false, start: Math.min(from, end), end,
      message: part.trim() === "" ? "no number is written" : `${quoted(part)} does not start with a number`,
      hint: "start with a number such as 247, 24.7, 3/4 or 9 3/4",
    };
  }
  const span = { start: from, end: at + match[0].length };
  const size = sizeOf(match);
  if (!size) return { ok: false, ...span, message: `${quoted(match[0])} divides by zero`, hint: "write a denominator of 1 or more" };
  if (match.groups?.["whole"] !== undefined && compareRational(size.fraction, oneRational) >= 0) {
    return { ok: false, ...span, message: `${quoted(match[0])} has a fraction of one or more behind a whole number`, hint: "write the fraction below 1, such as 9 3/4" };
  }
  const value = addRational(size.whole, size.fraction);
  return { ok: true, ...span, value: sign === "" ? value : rational(-value.n, value.d) };
}

function sizeOf(match: RegExpExecArray): { whole: Rational; fraction: Rational } | null {
  const groups = match.groups ?? {};
  const named = (name: string): string | undefined => groups[name];
  const whole = rational(BigInt(named("whole") ?? 0));
  const vulgar = named("vulgar");
  if (vulgar !== undefined) return { whole, fraction: rational(...vulgarFractions[vulgar]!) };
  const top = named("top") ?? (named("part") === undefined ? plainDigits(named("above")) : "1");
  const bottom = named("bottom") ?? named("part") ?? plainDigits(named("below"));
  if (top === undefined || bottom === undefined) return { whole: rationalFromDecimal(match[0])!, fraction: rational(0) };
  return BigInt(bottom) === 0n ? null : { whole, fraction: rational(BigInt(top), BigInt(bottom)) };
}

function plainDigits(small: string | undefined): string | undefined {
  return small?.replace(/./gu, (digit) => String(Math.max("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(digit), "₀₁₂₃₄₅₆₇₈₉".indexOf(digit))));
}

/** The ways of writing that would be misread or could mean two things; each is refused by name. */
function findMisspelling(rest: string, at: number): NumberProblem | null {
  const problem = (found: RegExpExecArray, message: string, hint: string): NumberProblem =>
    ({ ok: false, start: at, end: at + found[0].length, message: `${quoted(found[0])} ${message}`, hint });
  let found = /^\d{1,3}(?:,\d{3})+\.\d+|^\d{1,3}(?:,\d{3}){2,}(?!\d)/u.exec(rest);
  if (found) return problem(found, "has its thousands set apart", `write ${found[0].replaceAll(",", "")}`);
  found = /^\d{1,3},\d{3}(?!\d)/u.exec(rest);
  if (found) return problem(found, "could be a decimal or thousands", `write ${found[0].replace(",", ".")} or ${found[0].replace(",", "")}: only a point is read, before decimals`);
  found = /^\d+,\d+/u.exec(rest);
  if (found) return problem(found, "has a decimal comma", `write a decimal point: ${found[0].replace(",", ".")}`);
  found = /^\d{1,3}(?:\s\d{3})+(?![\d⁄/∕]|\s*[⁄/∕])/u.exec(rest) ?? /^\d+(?:[_’']\d{3})+/u.exec(rest);
  if (found) return problem(found, "has its thousands set apart", `write ${found[0].replace(/[^\d]/gu, "")}`);
  found = /^\d+(?:\.\d+)+(?:\.\d+)/u.exec(rest);
  if (found) return problem(found, "has more than one point", "write one decimal point only, and nothing between thousands");
  found = /^\d*\.?\d+e[-+]?\d+/iu.exec(rest);
  if (found) return problem(found, "is written with an exponent", "write the number out in full");
  found = /^0[xob][0-9a-f]+/iu.exec(rest);
  if (found) return problem(found, "is not a decimal number", "write the number with the digits 0 to 9");
  found = /^\.?(?:nan|inf(?:inity)?)\b/iu.exec(rest) ?? /^∞/u.exec(rest);
  if (found) return problem(found, "is not a number that can be measured", "write a number such as 247 or 9 3/4");
  found = /^\d+\.(?!\d)/u.exec(rest);
  if (found) return problem(found, "ends in a point", `write ${found[0].slice(0, -1)} or add the decimals`);
  found = /^\+/u.exec(rest);
  if (found) return problem(found, "is not needed before a number", "leave the plus sign out");
  found = /^\d+(?:\.\d+)?\s+\d+(?:\.\d+)?(?!\d|\s*[⁄/∕])/u.exec(rest);
  if (found) return problem(found, "is two numbers", "write one number, or a whole number and a fraction such as 9 3/4");
  found = /^\d*\.\d+(?:\s|-)*(?:\d+\s*[/⁄∕]\s*\d+|[¼-¾⅐-⅟↉])/u.exec(rest);
  if (found) return problem(found, "mixes decimals and a fraction", "write either decimals or a fraction");
  return null;
}
