// Which pages stand on which side of which sheet, so that folded sheets laid into each other read in order; pure, no PDF in sight.
import { pagesOnSheets } from "../../catalogue/nested-sheets.ts";
import { addLengths, divideLength, longest, mm, multiplyLength, shortest, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";

/** One side of a sheet: the page left and right of the fold, counted from 1; null for an empty one. */
export interface SheetSide {
  readonly left: number | null;
  readonly right: number | null;
}

/** One sheet of a section. */
export interface FoldedSheet {
  /** Counted from 1 in the booklet. */
  readonly section: number;
  /** Counted from 1, from the outside of its section. */
  readonly place: number;
  readonly isInnermost: boolean;
  /** The side that is outside when the sheet is folded, then the one inside. */
  readonly outer: SheetSide;
  readonly inner: SheetSide;
  /** How far its pages are moved towards the fold. */
  readonly shift: Length;
}

/** Up to this many sheets are folded into one section: common practice, no source. */
export const mostSheetsAlone = 8;
/** Several sections are no thicker than this many sheets each: common practice, no source. */
const mostSheetsEach = 5;

/**
 * Sheets of each section: one section while the booklet is thin, else as few as keep each below five sheets, as even as can be, the thicker ones first.
 */
export function sheetsOfSections(pages: number): readonly number[] {
  const sheets = Math.max(1, Math.ceil(pages / 4));
  const sections = sheets <= mostSheetsAlone ? 1 : Math.ceil(sheets / mostSheetsEach);
  const [least, over] = [Math.floor(sheets / sections), sheets % sections];
  return Array.from({ length: sections }, (_, index) => least + (index < over ? 1 : 0));
}

/**
 * The sheets of a booklet of so many pages, in the order of printing; within a section from the outside inwards. Empty pages come at the end.
 *
 * Creep: sheet i lies inside i others, whose thickness pushes its leaves out at the fore-edge by i · thickness when the folds are pressed sharp; the
 * innermost by (n/4 − 1) · thickness: stored pre-press help page. Its pages are moved towards the fold by as much, so that after the fore-edge is
 * trimmed, or read untrimmed, all outer margins look alike.
 */
export function foldSheets(pages: number, thickness: Length): readonly FoldedSheet[] {
  let before = 0;
  return sheetsOfSections(pages).flatMap((sheets, section) => {
    const start = before;
    before += 4 * sheets;
    const page = (number: number): number | null => (start + number <= pages ? start + number : null);
    const side = ([left, right]: readonly [number, number]): SheetSide => ({ left: page(left), right: page(right) });
    return pagesOnSheets(sheets).map(({ outer, inner }, i): FoldedSheet => ({
      section: section + 1, place: i + 1, isInnermost: i === sheets - 1, outer: side(outer), inner: side(inner), shift: multiplyLength(thickness, i),
    }));
  });
}

/**
 * Sewing stations along a fold of this height, from its head. One section: three holes, the outer ones a seventh of the height from its ends, but
 * between 13 and 38 mm: Bean & Brodhead 1918, Problem I, 1/2 to 1 1/2 in from each end; the seventh is common practice, no source. Several: four at
 * equal distances between the same ends, an even number, so that a thread that goes in at one end comes out at the other: common practice, no source.
 */
export function foldStations(height: Length, sections: number): readonly Length[] {
  const end = longest(mm(13), shortest(mm(38), divideLength(height, 7)));
  const gaps = sections === 1 ? 2 : 3;
  const gap = divideLength(subtractLength(height, addLengths(end, end)), gaps);
  return Array.from({ length: gaps + 1 }, (_, index) => addLengths(end, multiplyLength(gap, index)));
}
