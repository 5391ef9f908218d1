// Measures labels without a browser: width from the face's table, height from its capitals and descenders.
import { faceAdvances } from "./text-advances.ts";
import type { FaceAdvances } from "./text-advances.ts";

/** The weights in which the label font is shipped. */
export type FontWeight = 400 | 600;

/** Points to millimetres: 1 pt = 1/72 in. */
export const millimetresPerPoint = 25.4 / 72;

/**
 * Tallest and deepest ink of a label in parts of the type size: `d` and `l` reach 0.712, `g` and `(` go down 0.224;
 * figures and fractions reach from 0.668 down to 0.012.
 */
export function inkOf(text: string): { readonly above: number; readonly below: number } {
  return /^[0-9\u2044.\u2212\u00a0 A-PR-Z]*$/.test(text) ? { above: 0.69, below: 0.03 } : { above: 0.74, below: 0.23 };
}

/**
 * How much nearer a fraction stands to its whole number than a blank would put it, in parts of the type size. The text keeps its blank, so that
 * a reader of screen or PDF says "18 3/4"; `.frac` of `booklet.css` does the same to the pages.
 */
export const fractionPull = 0.08;

/** A run of text that is set in one way: a fraction, with the blank behind its whole number (`3⁄4`), or plain text. */
export interface TextRun {
  readonly text: string;
  readonly fraction: boolean;
}

/** Cuts a label into plain text and fractions (digits, U+2044, digits; before them the blank behind a whole number). */
export function textRuns(text: string): readonly TextRun[] {
  return text.split(/((?:(?<=\d)\u00a0)?\d+\u2044\d+)/).flatMap((piece) => (piece === "" ? [] : [{ text: piece, fraction: piece.includes("\u2044") }]));
}

/** Width in millimetres of a label set at `size` millimetres, kerning left out (it changes labels by less than 2 %). */
export function measureText(text: string, size: number, weight: FontWeight = 400): number {
  if (!text.includes("\u2044")) return (plainWidth(weight, text) * size) / 1000;
  const face = faceAdvances[weight];
  const widths = textRuns(text).map((run) => (run.fraction ? fractionWidth(face, run.text) : plainWidth(weight, run.text)));
  return (widths.reduce((sum, width) => sum + width, 0) * size) / 1000;
}

const tables: Readonly<Record<FontWeight, ReadonlyMap<string, number>>> = { 400: tableOf(faceAdvances[400]), 600: tableOf(faceAdvances[600]) };

function tableOf(face: FaceAdvances): ReadonlyMap<string, number> {
  return new Map([...face.characters].map((character, index) => [character, face.advances[index]!]));
}

function plainWidth(weight: FontWeight, text: string): number {
  // A character outside the face comes from some other font: taken as wide as the widest letter, so that it cannot collide.
  const table = tables[weight];
  let sum = 0;
  for (const character of text) sum += table.get(character) ?? 850;
  return sum;
}

function fractionWidth(face: FaceAdvances, text: string): number {
  const [above, below] = text.trimStart().split("\u2044") as [string, string];
  const blank = text === text.trimStart() ? 0 : face.advances[[...face.characters].indexOf("\u00a0")]! - fractionPull * 1000;
  const digits = (figures: string, widths: readonly number[]): number => [...figures].reduce((sum, digit) => sum + widths[Number(digit)]!, 0);
  return blank + digits(above, face.numerators) + face.advances[[...face.characters].indexOf("\u2044")]! + digits(below, face.denominators);
}
