// Reads and prints durations at the bench: whole minutes, hours and days.
import { addRational, multiplyRational, rational, zeroRational } from "./rational.ts";
import type { Rational } from "./rational.ts";
import { quoted, readNumber } from "./read-number.ts";

/** A duration in whole minutes, or why the text is none, with the half-open span of offsets in it. */
export type DurationReading =
  | { readonly ok: true; readonly minutes: number }
  | { readonly ok: false; readonly code: "duration-syntax"; readonly message: string; readonly hint: string; readonly start: number; readonly end: number };

type DurationProblem = Extract<DurationReading, { ok: false }>;

const minutesPerHour = 60;
const minutesPerDay = 24 * minutesPerHour;

/** What "overnight" stands for, in minutes: from an evening class to the next morning. Common practice, no source. */
export const overnightMinutes = 12 * minutesPerHour;

const unitMinutes: ReadonlyMap<string, number> = new Map([
  ...["min", "mins", "minute", "minutes"].map((word) => [word, 1] as const),
  ...["h", "hr", "hrs", "hour", "hours"].map((word) => [word, minutesPerHour] as const),
  ...["d", "day", "days"].map((word) => [word, minutesPerDay] as const),
]);

const forms = "write it as 45 min, 1 h 30 min, 12 h, overnight or 2 days";
const longestDurationText = 60;

/** No wait at the bench is longer than a year; more is a slip of the pen. */
const longestMinutes = BigInt(365 * minutesPerDay);

/**
 * Reads `45 min`, `1 h 30 min`, `1.5 h`, `1 1/2 hours`, `2 days`, `overnight` (12 h); a bare number counts minutes.
 * The result is a whole number of minutes from 0 to a year; parts of a minute and negative durations are refused.
 */
export function readDuration(text: string): DurationReading {
  const problem = (message: string, hint: string, start: number, end: number): DurationProblem =>
    ({ ok: false, code: "duration-syntax", message, hint, start, end });
  if (text.length > longestDurationText) return problem(`${quoted(text)} is too long for a duration (${text.length} characters)`, forms, 0, text.length);
  if (/^overnight$/iu.test(text.trim())) return { ok: true, minutes: overnightMinutes };
  const textEnd = text.trimEnd().length;
  const textStart = Math.min(text.length - text.trimStart().length, textEnd);
  let total: Rational = zeroRational;
  let smallestSoFar = Infinity;
  let at = textStart;
  do {
    const number = readNumber(text, at, textEnd);
    if (!number.ok) return problem(number.message, number.hint.startsWith("start with") ? forms : number.hint, number.start, number.end);
    if (number.value.n < 0n) return problem(`${quoted(text)} is negative`, "write a duration of 0 min or more", number.start, number.end);
    const rest = text.slice(number.end, textEnd);
    const unit = /^\s*(\p{L}+)\.?/u.exec(rest);
    if (!unit && rest.trim() === "" && smallestSoFar === Infinity) {
      total = number.value;
      break;
    }
    const unitStart = number.end + rest.length - rest.trimStart().length;
    if (!unit) {
      return rest.trim() === ""
        ? problem(`${quoted(text.slice(number.start, textEnd))} has no unit`, forms, number.start, number.end)
        : problem(`${quoted(rest)} cannot be read behind the number`, forms, unitStart, textEnd);
    }
    const unitEnd = number.end + unit[0].length;
    const minutes = unitMinutes.get(unit[1]!.toLowerCase());
    if (minutes === undefined) return problem(`${quoted(unit[1]!)} is not a unit of time that is known here`, "use min, h or days", unitStart, unitEnd);
    if (minutes >= smallestSoFar) return problem(`${quoted(text)} does not go from the larger unit to the smaller`, forms, number.start, unitEnd);
    smallestSoFar = minutes;
    total = addRational(total, multiplyRational(number.value, rational(minutes)));
    at = unitEnd;
  } while (at < textEnd);
  if (total.d !== 1n) return problem(`${quoted(text)} is not a whole number of minutes`, "give whole minutes", textStart, textEnd);
  if (total.n > longestMinutes) return problem(`${quoted(text)} is longer than a year`, "write the time that one step takes or waits", textStart, textEnd);
  return { ok: true, minutes: Number(total.n) };
}

/** A duration as printed: `45 min`, `1 h 30 min`, `24 h`, from two days on `2 days 6 h`. Parts of a minute go up. */
export function printDuration(minutes: number): string {
  const whole = Math.ceil(minutes);
  const days = whole >= 2 * minutesPerDay ? Math.floor(whole / minutesPerDay) : 0;
  const hours = Math.floor((whole - days * minutesPerDay) / minutesPerHour);
  const rest = whole - days * minutesPerDay - hours * minutesPerHour;
  const parts = [
    ...(days > 0 ? [`${days}\u00a0days`] : []),
    ...(hours > 0 ? [`${hours}\u00a0h`] : []),
    ...(rest > 0 || whole === 0 ? [`${rest}\u00a0min`] : []),
  ];
  return parts.join("\u00a0");
}

/** A time of day as printed, `18:05`, from minutes after midnight; past midnight the clock begins again. */
export function printClock(minutesAfterMidnight: number): string {
  const minutes = ((minutesAfterMidnight % minutesPerDay) + minutesPerDay) % minutesPerDay;
  return `${String(Math.floor(minutes / minutesPerHour)).padStart(2, "0")}:${String(minutes % minutesPerHour).padStart(2, "0")}`;
}
