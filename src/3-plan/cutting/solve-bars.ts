// Plans for goods that are cut along one direction only: thread, tape, ribbon, strips, lengths from a roll.
import { rowOf } from "./cut-tree.ts";
import type { CutTree } from "./cut-tree.ts";
import type { WantedPiece } from "./layout-beginnings.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { bestOnBar } from "./price-bar.ts";
import type { SearchMeans } from "./search-means.ts";
import type { SheetProblem } from "./sheet-problem.ts";
import { solveSheets, usualEffort } from "./solve-sheets.ts";
import type { SearchEffort, WholePlan } from "./solve-sheets.ts";
import { meterFor } from "./work-meter.ts";
import type { WorkMeter } from "./work-meter.ts";

/** A plan for bars; they are sheets of height 1, and so are their pieces. */
export function solveBars(problem: SheetProblem, solver: LinearSolver, effort: SearchEffort): WholePlan | null {
  const meter = meterFor(effort.work);
  return solveSheets(problem, solver, { ...effort, dives: effort.dives * 8 }, meter, meansForBars(problem, meter));
}

/** A bar with so many of each piece, the longest first. */
export function barOf(wanted: readonly WantedPiece[], counts: readonly number[], length: number): CutTree {
  const parts = wanted.flatMap(({ piece, width }, index) => Array.from({ length: counts[index]! }, () => ({ size: width, tree: { kind: "piece", piece, turned: false } satisfies CutTree })));
  return rowOf(parts.sort((a, b) => b.size - a.size), "x", length);
}

function meansForBars({ pieces, sheets }: SheetProblem, meter: WorkMeter): SearchMeans {
  const whole = pieces.map((piece, index) => ({ ...piece, piece: index }));
  const best = (sheet: number, values: ArrayLike<number>, wanted: readonly WantedPiece[], isQuick: boolean): { readonly value: number; readonly tree: CutTree; readonly isBest: boolean } => {
    const { value, counts, isBest } = bestOnBar(wanted.map((each, index) => ({ size: each.width, count: each.count, value: values[index]! })), sheets[sheet]!.width, meter, isQuick);
    return { value, tree: barOf(wanted, counts, sheets[sheet]!.width), isBest };
  };
  return {
    // A price that is not proved best must not enter a bound: then the most that the length could be worth stands in for it.
    pricers: sheets.map(({ width }, sheet) => ({
      exact: { price: (values) => { const found = best(sheet, values, whole, false); return found.isBest ? found : { ...found, value: mostWorth(whole, values, width) }; } },
      quick: [{ price: (values) => best(sheet, values, whole, true) }],
    })),
    fill: (sheet, wanted, keep) => [best(sheet, wanted.map((each) => Math.max(0, Math.round((each.value ?? 0) * (2 ** 34 / sheets[sheet]!.cost)))), wanted, keep <= usualEffort.keep).tree],
    attempts: [
      (sheet, wanted, _, mostSheets) => bestFit(wanted, sheets[sheet]!.width, mostSheets),
      (sheet, wanted, _, mostSheets) => fullestFirst(wanted, sheets[sheet]!.width, mostSheets, meter),
    ],
  };
}

function mostWorth(wanted: readonly WantedPiece[], values: ArrayLike<number>, length: number): number {
  return Math.ceil(Math.max(...wanted.map((each, index) => (values[index]! / each.width) * length)) + 1);
}

/** The longest pieces first, each into the fullest bar that still takes it. */
function bestFit(wanted: readonly WantedPiece[], length: number, mostSheets: number): readonly CutTree[] | null {
  const bars: { left: number; readonly counts: number[] }[] = [];
  for (const index of [...wanted.keys()].sort((a, b) => wanted[b]!.width - wanted[a]!.width)) {
    for (let copy = 0; copy < wanted[index]!.count; copy++) {
      const fitting = bars.filter((bar) => bar.left >= wanted[index]!.width);
      const bar = fitting.length > 0 ? fitting.reduce((a, b) => (b.left < a.left ? b : a)) : { left: length, counts: new Array<number>(wanted.length).fill(0) };
      if (fitting.length === 0) bars.push(bar);
      bar.left -= wanted[index]!.width;
      bar.counts[index]!++;
    }
  }
  return bars.length <= mostSheets ? bars.map((bar) => barOf(wanted, bar.counts, length)) : null;
}

/** One bar after the other, each as full as it can be made: the longest piece that is left, and what fills the bar best beside it. */
function fullestFirst(wanted: readonly WantedPiece[], length: number, mostSheets: number, meter: WorkMeter): readonly CutTree[] | null {
  const left = wanted.map((each) => each.count);
  const bars: CutTree[] = [];
  const order = [...wanted.keys()].sort((a, b) => wanted[b]!.width - wanted[a]!.width);
  for (let first = order.find((index) => left[index]! > 0); first !== undefined; first = order.find((index) => left[index]! > 0)) {
    if (bars.length >= mostSheets) return null;
    left[first]!--;
    const { counts } = bestOnBar(wanted.map((each, index) => ({ size: each.width, count: left[index]!, value: each.width })), length - wanted[first]!.width, meter);
    counts.forEach((count, index) => { left[index]! -= count; });
    bars.push(barOf(wanted, counts.map((count, index) => count + (index === first ? 1 : 0)), length));
  }
  return bars;
}
