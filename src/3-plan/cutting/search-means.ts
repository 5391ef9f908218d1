// What the search for a plan needs to know of the goods: how to price them, how to fill one of them, how to lay a first plan.
import type { CutTree } from "./cut-tree.ts";
import { searchLayout, searchSheet } from "./layout-search.ts";
import { exactTable, lyingOn } from "./price-sheet.ts";
import { stripTable } from "./price-strips.ts";
import type { WantedPiece } from "./layout-beginnings.ts";
import type { SheetProblem } from "./sheet-problem.ts";
import type { WorkMeter } from "./work-meter.ts";

/** Prices one sheet: the greatest value found, and a layout that has it. */
export interface Pricer {
  price(values: ArrayLike<number>): { readonly value: number; readonly tree: CutTree };
}

/** The pricers of one size of sheet; the exact one is missing where its table would be too large. */
export interface SheetPricers {
  readonly exact: Pricer | null;
  readonly quick: readonly Pricer[];
}

/** The ways of searching, for sheets or for bars. */
export interface SearchMeans {
  readonly pricers: readonly SheetPricers[];
  /** Valuable layouts of one sheet in which no piece is used more often than wanted; a larger `keep` searches harder. */
  fill(sheet: number, wanted: readonly WantedPiece[], keep: number): readonly CutTree[];
  /** Layouts of all pieces on one size of sheet, one attempt after the other; `null` for an attempt above `mostSheets`. */
  readonly attempts: readonly ((sheet: number, wanted: readonly WantedPiece[], keep: number, mostSheets: number) => readonly CutTree[] | null)[];
}

/** A look into a table is so much quicker than a look at a place for a piece. */
const tableLooks = 1 / 60;

function metered(table: Pricer & { readonly effort: number }, meter: WorkMeter): Pricer {
  return { price: (values) => { meter.spent += table.effort * tableLooks; return table.price(values); } };
}

/** The means for sheets; exact tables only where pricing one sheet stays within an effort. */
export function meansForSheets(problem: SheetProblem, mostTable: number, meter: WorkMeter): SearchMeans {
  const pricers = problem.sheets.map(({ width, height }): SheetPricers => {
    const lying = lyingOn(problem.pieces, width, height);
    const table = exactTable(width, height, lying, mostTable);
    const strips = [stripTable(width, height, lying, "x"), stripTable(width, height, lying, "y")].filter((each) => each !== null);
    return { exact: table && metered(table, meter), quick: strips.map((each) => metered(each, meter)) };
  });
  const both = ["x", "y"] as const;
  return {
    pricers,
    fill: (sheet, wanted, keep) => (["waste", "large-first"] as const).flatMap((guide) => both.map((first) => searchSheet(wanted, { ...problem.sheets[sheet]!, keep, guide, mostSheets: 1, firstCuts: [first], meter }).tree)),
    attempts: (["large-first", "larger-first", "largest-first"] as const).flatMap((guide) => both.map((first) =>
      (sheet: number, wanted: readonly WantedPiece[], keep: number, mostSheets: number) => searchLayout(wanted, { ...problem.sheets[sheet]!, keep, guide, mostSheets, firstCuts: [first], meter }))),
  };
}
