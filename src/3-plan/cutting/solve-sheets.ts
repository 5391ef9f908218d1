// The whole search for a plan: bounds, quick layouts, fractional plans, whole choices, dives and repairs, until the bound is met.
import { addPattern, chooseWhole, openPool } from "./column-pool.ts";
import type { ColumnPool } from "./column-pool.ts";
import { patternOf } from "./cut-tree.ts";
import { dive } from "./dive.ts";
import { exactUses } from "./exact-uses.ts";
import { generateColumns, openPricedPool } from "./generate-columns.ts";
import type { FractionalPlan } from "./generate-columns.ts";
import { improveLayouts } from "./improve-layouts.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { leastCostBound } from "./plain-bounds.ts";
import { meansForSheets } from "./search-means.ts";
import type { SearchMeans } from "./search-means.ts";
import { drawFrom } from "./seeded.ts";
import { costOf, missingAfter, nextSum } from "./sheet-problem.ts";
import type { PatternUse, SheetProblem, WholeSheet } from "./sheet-problem.ts";
import { supplyPatterns, trimmed } from "./supply-patterns.ts";
import { isSpent, meterFor } from "./work-meter.ts";
import type { WorkMeter } from "./work-meter.ts";

/** How much work may go into a plan, in counts, so that the plan is the same on every computer. */
export interface SearchEffort {
  /** Looks at a place for a piece, in all; about ten million are done in a second. */
  readonly work: number;
  /** Looks into the pricing table for one sheet; larger tables are not made. */
  readonly table: number;
  /** Rounds of column generation. */
  readonly rounds: number;
  /** Beginnings kept while pieces are laid one by one. */
  readonly keep: number;
  /** Nodes and simplex iterations of one choice in whole numbers. */
  readonly nodes: number;
  readonly iterations: number;
  readonly dives: number;
  readonly repairs: number;
}

/** What a workshop waits for: about a second for an everyday plan. */
export const usualEffort: SearchEffort = { work: 3e7, table: 2e9, rounds: 400, keep: 10, nodes: 100, iterations: 10_000, dives: 4, repairs: 60 };

/** A plan in whole numbers. */
export interface WholePlan {
  readonly uses: readonly PatternUse[];
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
}

/** The state of one search: the best plan so far and the best bound. */
interface Search {
  readonly problem: SheetProblem;
  readonly solver: LinearSolver;
  readonly effort: SearchEffort;
  readonly meter: WorkMeter;
  readonly means: SearchMeans;
  readonly wanted: readonly number[];
  best: readonly PatternUse[] | null;
  bound: number;
}

/** Plans of more pieces than this are not laid piece by piece. */
const mostPiecesLaid = 600;

/** Sheets are few when there are no more than this: then wide searches piece by piece do better than choices among patterns. */
const fewSheets = 4;

/** A plan for all pieces; `null` when the sheets that are there do not suffice, or no plan was found on them. */
export function solveSheets(problem: SheetProblem, solver: LinearSolver, effort: SearchEffort, meter: WorkMeter = meterFor(effort.work), means: SearchMeans = meansForSheets(problem, effort.table, meter)): WholePlan | null {
  const search: Search = { problem, solver, effort, meter, means, wanted: problem.pieces.map((piece) => piece.count), best: null, bound: 0 };
  raiseBound(search, leastCostBound(problem));
  lay(search, effort.keep);
  if (!isDone(search) || problem.sheets.length > 1) solveByPatterns(search);
  return search.best ? { uses: search.best, cost: costOf(problem, search.best), bound: search.bound } : null;
}

function raiseBound(search: Search, bound: number): void {
  search.bound = Math.max(search.bound, nextSum(bound, search.problem.sheets.map((sheet) => sheet.cost)));
}

function isDone(search: Search): boolean {
  return search.best !== null && costOf(search.problem, search.best) <= search.bound;
}

function bestCost({ problem, best }: Search): number {
  return best ? costOf(problem, best) : Infinity;
}

function keepIfBetter(search: Search, uses: readonly PatternUse[] | null): void {
  if (uses && costOf(search.problem, uses) < bestCost(search)) search.best = exactUses(search.wanted, uses);
}

/** Sizes of sheet of which there are enough for all pieces; none when the pieces are too many to be laid one by one. */
function amplySupplied({ problem, wanted }: Search): readonly { readonly sheet: WholeSheet; readonly index: number }[] {
  const pieces = wanted.reduce((sum, count) => sum + count, 0);
  return pieces > mostPiecesLaid ? [] : problem.sheets.flatMap((sheet, index) => (sheet.available >= pieces ? [{ sheet, index }] : []));
}

/** Lays the pieces one by one on sheets of one size. */
function lay(search: Search, keep: number): void {
  const { problem, means } = search;
  const wanted = problem.pieces.map((piece, index) => ({ ...piece, piece: index }));
  for (const { sheet, index } of amplySupplied(search)) {
    for (const attempt of means.attempts) {
      if (isDone(search) || isSpent(search.meter)) return;
      const trees = attempt(index, wanted, keep, Math.min(1e6, Math.floor((bestCost(search) - 1) / sheet.cost)));
      keepIfBetter(search, trees?.map((tree) => ({ pattern: patternOf(index, tree, wanted.length), times: 1 })) ?? null);
    }
  }
}

function solveByPatterns(search: Search): void {
  const { problem, solver, effort, wanted, means, meter } = search;
  const priced = openPricedPool(problem, solver);
  try {
    const plan = generateColumns(priced, means.pricers, wanted, { rounds: effort.rounds, meter }, search.bound);
    if (!plan) return;
    raiseBound(search, plan.bound);
    if (!isDone(search) && bestCost(search) <= fewSheets * Math.max(...problem.sheets.map((sheet) => sheet.cost))) lay(search, effort.keep * 16);
    if (!isDone(search)) choose(search, priced);
    if (!isDone(search)) solveRest(search, priced, plan);
    if (problem.sheets.length > 1) saveSecond(search, priced);
  } finally {
    priced.program.close();
  }
}

function choose(search: Search, pool: ColumnPool): void {
  const { problem, solver, effort, wanted } = search;
  const most = Math.min(1e9, bestCost(search) - 1);
  if (most < search.bound) return;
  keepIfBetter(search, chooseWhole(problem, pool.patterns, wanted, { bound: search.bound, most, least: "cost" }, solver, effort));
}

/** Among plans that cost no more than the best one, takes the one that saves most of what counts second. */
function saveSecond(search: Search, pool: ColumnPool): void {
  const { problem, solver, effort, wanted, best } = search;
  if (!best || problem.sheets.every((sheet) => sheet.second === problem.sheets[0]!.second)) return;
  for (const { pattern } of best) addPattern(pool, pattern);
  const found = chooseWhole(problem, pool.patterns, wanted, { bound: search.bound, most: bestCost(search), least: "second" }, solver, effort);
  const secondOf = (uses: readonly PatternUse[]): number => uses.reduce((sum, { pattern, times }) => sum + problem.sheets[pattern.sheet]!.second * times, 0);
  if (found && secondOf(found) < secondOf(best)) search.best = exactUses(wanted, found);
}

/** Cuts what the fractional plan uses in whole numbers, and searches the rest among patterns that use no piece too often. */
function solveRest(search: Search, priced: ColumnPool, plan: FractionalPlan): void {
  const { problem, solver, effort, wanted, means, meter } = search;
  const isLarge = plan.value > 30 * Math.max(...problem.sheets.map((sheet) => sheet.cost));
  const fixed = priced.patterns.flatMap((pattern, index) => {
    const times = Math.floor(plan.uses[index]! + 1e-6);
    return isLarge && times > 0 && pattern.counts.every((count, piece) => count * times <= wanted[piece]!) ? [{ pattern, times }] : [];
  });
  const left = missingAfter(wanted, fixed);
  const sheets = problem.sheets.map((sheet, index) => ({ ...sheet, available: sheet.available - fixed.reduce((sum, use) => sum + (use.pattern.sheet === index ? use.times : 0), 0) }));
  const supply = openPool({ sheets, pieces: problem.pieces.map((piece, index) => ({ ...piece, count: left[index]! })) }, solver);
  try {
    for (const pattern of priced.patterns) addPattern(supply, trimmed(pattern, left));
    if (search.best && fixed.length === 0) for (const { pattern } of search.best) addPattern(supply, pattern);
    const orders = { rounds: effort.rounds, keep: effort.keep, mostKeep: effort.keep * 8, meter, share: 0.7 };
    if (!supplyPatterns(supply, means, left, orders)) return;
    const draw = drawFrom(problem.pieces.length);
    for (let number = 0; number < effort.dives && !isDone(search) && !isSpent(meter); number++) {
      const mostCost = bestCost(search) - 1 - costOf(problem, fixed);
      const found = dive(supply, means, left, { mostCost, supply: { ...orders, rounds: 12, mostKeep: effort.keep * 2, share: 1 }, draw: number === 0 ? null : draw });
      if (found) keepIfBetter(search, [...fixed, ...found]);
    }
    repair(search, supply);
  } finally {
    supply.program.close();
  }
}

/** Takes sheets apart and lays them anew, then chooses once more among all patterns seen. */
function repair(search: Search, supply: ColumnPool): void {
  const [only] = amplySupplied(search);
  if (isDone(search) || !only || search.problem.sheets.length > 1 || !search.best) return;
  const { problem, effort, meter } = search;
  const start = search.best.flatMap(({ pattern, times }) => Array.from({ length: times }, () => pattern.tree));
  const trees = improveLayouts(start, { ...only.sheet, pieces: problem.pieces, bound: search.bound / only.sheet.cost, rounds: effort.repairs, meter, keep: effort.keep, onSheet: (tree) => { addPattern(supply, patternOf(0, tree, problem.pieces.length)); } });
  keepIfBetter(search, trees.map((tree) => ({ pattern: patternOf(0, tree, problem.pieces.length), times: 1 })));
  if (!isDone(search)) choose(search, supply);
}
