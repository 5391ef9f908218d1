// Column generation over all edge-to-edge layouts: the best fractional plan, and a lower bound that no plan beats.
import { addPattern, gainOf, openPool } from "./column-pool.ts";
import type { ColumnPool } from "./column-pool.ts";
import { patternOf, rowOf } from "./cut-tree.ts";
import type { CutTree } from "./cut-tree.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { lyingOn } from "./price-sheet.ts";
import { provenBound } from "./proven-bound.ts";
import type { SheetPricers } from "./search-means.ts";
import type { SheetProblem } from "./sheet-problem.ts";
import { isSpent } from "./work-meter.ts";
import type { WorkMeter } from "./work-meter.ts";

/** What column generation ends with. */
export interface FractionalPlan {
  readonly value: number;
  /** How often each pattern of the pool is cut, in fractions. */
  readonly uses: Float64Array;
  /** No plan for these counts costs less; the known bound when no better one could be proved. */
  readonly bound: number;
}

/** The share of the whole work that may go into the fractional plan and its bound. */
const bestShare = 0.5;

/** Values of pieces are multiplied by this over the cost of a sheet and rounded, so that tables add whole numbers. */
const valueScale = 2 ** 34;

/** Opens a pool that starts with one pattern for each piece on each sheet it fits: a grid of it, as large as the sheet takes. */
export function openPricedPool(problem: SheetProblem, solver: LinearSolver): ColumnPool {
  const pool = openPool(problem, solver);
  problem.sheets.forEach(({ width, height }, sheet) => {
    for (const way of lyingOn(problem.pieces, width, height)) {
      const leaf: CutTree = { kind: "piece", piece: way.piece, turned: way.turned };
      const column = rowOf(Array.from({ length: Math.floor(height / way.height) }, () => ({ size: way.height, tree: leaf })), "y", height);
      addPattern(pool, patternOf(sheet, rowOf(Array.from({ length: Math.floor(width / way.width) }, () => ({ size: way.width, tree: column })), "x", width), problem.pieces.length));
    }
  });
  return pool;
}

/**
 * Adds patterns until no better fractional plan exists, until the bound cannot change any more, or for so many rounds.
 * `known` is a bound that is proved already. `null` when the sheets that are there do not suffice.
 */
export function generateColumns(pool: ColumnPool, pricers: readonly SheetPricers[], wanted: readonly number[], stop: { readonly rounds: number; readonly meter: WorkMeter }, known: number): FractionalPlan | null {
  const { problem, program } = pool;
  const scale = valueScale / Math.max(...problem.sheets.map((sheet) => sheet.cost));
  const isExactPossible = pricers.every(({ exact }) => exact);
  let bound = known;
  let center: { readonly duals: Float64Array; readonly quality: number } | null = null;
  let exactly = false;
  for (let round = 0; ; round++) {
    const answer = program.solveFractional();
    if (!answer) return null;
    const plan = (): FractionalPlan => ({ value: answer.value, uses: answer.columns, bound });
    if (round >= stop.rounds || isSpent(stop.meter, bestShare) || bound >= Math.ceil(answer.value - 1e-6)) return plan();
    const duals = answer.duals.subarray(0, problem.pieces.length);
    const first = pool.patterns.length;
    const isBetter = (): boolean => pool.patterns.slice(first).some((pattern) => gainOf(pool, pattern, answer.duals) > 1e-7 * problem.sheets[pattern.sheet]!.cost);
    const price = (at: Float64Array): void => {
      const priced = priceAll(pool, pricers, Array.from(at, (dual) => Math.max(0, Math.round(dual * scale))), exactly, wanted);
      bound = Math.max(bound, priced.bound);
      if (exactly && (!center || priced.quality > center.quality)) center = { duals: at, quality: priced.quality };
    };
    // Prices halfway to the best duals so far keep the search from swinging to and fro; where they find nothing, the duals themselves decide.
    const middle: Float64Array = center ? duals.map((dual, piece) => (dual + center!.duals[piece]!) / 2) : duals;
    price(middle);
    if (isBetter()) continue;
    if (middle !== duals) price(duals);
    if (isBetter()) continue;
    if (exactly || !isExactPossible) return plan();
    exactly = true;
  }
}

function priceAll(pool: ColumnPool, pricers: readonly SheetPricers[], values: readonly number[], exactly: boolean, wanted: readonly number[]): { readonly bound: number; readonly quality: number } {
  const { problem } = pool;
  const best = pricers.map(({ exact, quick }, sheet) => Math.max(0, ...(exactly ? [exact!] : quick).map((each) => {
    const { value, tree } = each.price(values);
    addPattern(pool, patternOf(sheet, tree, problem.pieces.length));
    return value;
  })));
  const worth = wanted.reduce((sum, count, piece) => sum + count * values[piece]!, 0);
  return {
    bound: exactly ? provenBound(problem.sheets, wanted, values, best) : 0,
    quality: worth / Math.max(...best.map((value, sheet) => value / problem.sheets[sheet]!.cost)),
  };
}
