// Type and room of a bench card: the numbers from which cards are laid out, and the same numbers for the style sheet.
import { measureText, millimetresPerPoint } from "../../4-figures/text-metrics.ts";
import type { FontWeight } from "../../4-figures/text-metrics.ts";
import type { PaperId } from "../../1-definition/types.ts";
import { foldedFrom, papers } from "../../catalogue/papers.ts";
import { toMillimetres } from "../../units/length.ts";

/** A kind of type on a card: its size in points and the height of its lines in millimetres. */
export interface CardType {
  readonly points: number;
  readonly line: number;
}

/**
 * What is read with the hands at work is never below 18 pt. At a metre that is an angle of 11 minutes for a small letter (x-height 0.486 of the size),
 * twice what an eye of ordinary sharpness needs (5 minutes: from memory).
 */
export const cardTypes = {
  number: { points: 40, line: 14 },
  title: { points: 23, line: 9 },
  action: { points: 18, line: 7.6 },
  caution: { points: 14, line: 5.9 },
  table: { points: 14, line: 5.9 },
  small: { points: 12, line: 5 },
  caption: { points: 9.5, line: 4 },
} as const satisfies Readonly<Record<string, CardType>>;

/** A card and the room on it, all in millimetres. */
export interface CardSize {
  readonly width: number;
  readonly height: number;
  /** How many stand above each other on a sheet. */
  readonly perSheet: 1 | 2;
}

/** Distances on a card, in millimetres. */
export const cardGaps = { side: 11, top: 7, foot: 11, head: 2.5, block: 2.2, marker: 9, number: 17, counter: 19, column: 6, box: 1.6 } as const;

/** A card lies on its side: half of a large sheet, or a whole small one. */
export function cardSize(paper: PaperId): CardSize {
  const [width, height] = [toMillimetres(papers[paper].width), toMillimetres(papers[paper].height)];
  return foldedFrom[paper] === null ? { width: height, height: width, perSheet: 1 } : { width, height: height / 2, perSheet: 2 };
}

/** Browsers kern, we do not; a line that only just fits might break. */
const careful = 0.975;

/** How many lines a text takes in a room of this width; words are broken at blanks only. */
export function countLines(text: string, width: number, type: CardType, weight: FontWeight = 400): number {
  return lineCounter(text, type, weight)(width);
}

/** The same for a text that is tried at many widths: its words are measured once. */
export function lineCounter(text: string, type: CardType, weight: FontWeight = 400): (width: number) => number {
  const size = type.points * millimetresPerPoint;
  const blank = measureText(" ", size, weight);
  const words = text.split(/[ \n]+/).filter((each) => each !== "").map((word) => measureText(word, size, weight));
  return (width) => countWords(words, blank, width * careful);
}

function countWords(words: readonly number[], blank: number, room: number): number {
  let lines = 1;
  let used = 0;
  for (const wide of words) {
    if (used > 0 && used + blank + wide > room) {
      lines += 1;
      used = 0;
    }
    used += (used > 0 ? blank : 0) + wide;
    // A word that is wider than the room is broken within.
    if (used > room) {
      lines += Math.ceil(used / room) - 1;
      used %= room;
    }
  }
  return lines;
}

/** Width of a text on one line, in millimetres, with the same care. */
export function lineWidthOf(text: string, type: CardType, weight: FontWeight = 400): number {
  return measureText(text, type.points * millimetresPerPoint, weight) / careful;
}

/** The same numbers as custom properties for the style sheet of the cards. */
export function cardProperties({ width, height, perSheet }: CardSize): string {
  const types = Object.entries(cardTypes).flatMap(([name, { points, line }]) => [`--${name}-size: ${points}pt`, `--${name}-line: ${line}mm`]);
  const gaps = Object.entries(cardGaps).map(([name, gap]) => `--gap-${name}: ${gap}mm`);
  return [`--card-width: ${width}mm`, `--card-height: ${height}mm`, `--sheet-height: ${height * perSheet}mm`, ...types, ...gaps].join("; ");
}
