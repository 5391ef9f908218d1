// How lengths and times are put into words for one project.
import type { Units } from "../1-definition/types.ts";
import { printDuration } from "../units/duration.ts";
import type { Length } from "../units/length.ts";
import { printLength, printNumberOnly, printSizes, printThickness } from "../units/print-length.ts";

/** Puts a project's lengths and times into words: the only way in which a plan prints a number with a unit. */
export interface Wording {
  size(length: Length): string;
  thickness(length: Length): string;
  /** A size or thickness that the hand can only come near: "about" stands before it once. */
  about(printed: string): string;
  /** What was computed finer than the ruler's marks, and where it comes on them: "about 84.39 mm, on the ruler about 84.5 mm". */
  onRuler(length: Length): string;
  /** Height × width. */
  sizes(height: Length, width: Length): string;
  /** The number alone, for tables whose caption names the unit. */
  number(length: Length): string;
  duration(minutes: number): string;
  readonly unitName: string;
}

/** The wording of a project: its unit, its ruler's marks, and the other unit behind where that is asked for. */
export function wordingFor(units: Units): Wording {
  const about = (printed: string): string => (printed.startsWith("about") ? printed : `about ${printed}`);
  return {
    size: (length) => printLength(length, units),
    about,
    onRuler: (length) => {
      const [fine, onMarks] = [about(printThickness(length, units)), about(printLength(length, units))];
      return fine === onMarks ? fine : `${fine}, on the ruler ${onMarks}`;
    },
    thickness: (length) => printThickness(length, units),
    sizes: (height, width) => printSizes(height, width, units),
    number: (length) => printNumberOnly(length, units),
    duration: printDuration,
    unitName: units.governing === "in" ? "inches" : "millimetres",
  };
}

/** A text with a capital first, as at the beginning of a sentence. */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** A text with a small letter first, as in the middle of a sentence. */
export function uncapital(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}

/** "a", "a and b", "a, b and c". */
export function listInWords(items: readonly string[]): string {
  return items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}
