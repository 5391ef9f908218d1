// Makes a fractional plan whole: fixes the patterns it uses most, looks for better ones for the rest, and so on to the end.
import type { ColumnPool } from "./column-pool.ts";
import { patternOf } from "./cut-tree.ts";
import type { SearchMeans } from "./search-means.ts";
import type { Draw } from "./seeded.ts";
import { costOf, isAvailable, missingAfter } from "./sheet-problem.ts";
import type { PatternUse } from "./sheet-problem.ts";
import { supplyPatterns, trimmed } from "./supply-patterns.ts";
import type { SupplyOrders } from "./supply-patterns.ts";

/** Beginnings kept when the rest is laid. */
const lastKeep = 40;

/** How a dive goes about it. */
export interface DiveOrders {
  /** Plans that cost more than this are not wanted. */
  readonly mostCost: number;
  readonly supply: SupplyOrders;
  /** Chooses among patterns that are used about as much; the first dive follows the plan strictly. */
  readonly draw: Draw | null;
}

/** The rest of a plan is laid piece by piece when it needs no more sheets than this. */
const lastSheets = 4;

/** A plan for the wanted pieces that costs at most `mostCost`; `null` when the dive ended above it. */
export function dive(pool: ColumnPool, means: SearchMeans, wanted: readonly number[], orders: DiveOrders): readonly PatternUse[] | null {
  const { problem } = pool;
  const fixed: PatternUse[] = [];
  let left: readonly number[] = wanted;
  while (left.some((count) => count > 0)) {
    problem.sheets.forEach((sheet, index) => {
      if (sheet.available !== Infinity) pool.program.setRowLimits(problem.pieces.length + index, -Infinity, sheet.available - fixed.reduce((sum, use) => sum + (use.pattern.sheet === index ? use.times : 0), 0));
    });
    const answer = supplyPatterns(pool, means, left, orders.supply);
    const budget = orders.mostCost - costOf(problem, fixed);
    if (!answer || Math.ceil(answer.value - 1e-6) > budget) return null;
    const end = layRest(pool, means, left, answer.value, budget);
    if (end) return [...fixed, ...end];
    const taken = takenFrom(pool, answer.columns, left, orders.draw);
    if (!taken) return null;
    fixed.push(taken);
    left = missingAfter(left, [taken]);
  }
  return costOf(problem, fixed) <= orders.mostCost && isAvailable(problem, fixed) ? fixed : null;
}

function takenFrom(pool: ColumnPool, uses: Float64Array, left: readonly number[], draw: Draw | null): PatternUse | null {
  const most = uses.reduce((best, use) => Math.max(best, use), 0);
  if (most < 1e-6) return null;
  const close = [...uses.keys()].filter((index) => uses[index]! >= (draw ? 0.6 : 0.999) * most);
  const index = close[draw ? draw(close.length) : 0]!;
  const pattern = trimmed(pool.patterns[index]!, left);
  const fits = Math.min(...pattern.counts.flatMap((count, piece) => (count > 0 ? [Math.floor(left[piece]! / count)] : [])));
  if (!Number.isFinite(fits)) return null;
  return { pattern, times: Math.max(1, Math.min(fits, Math.floor(uses[index]! + 1e-6))) };
}

function layRest(pool: ColumnPool, means: SearchMeans, left: readonly number[], value: number, budget: number): readonly PatternUse[] | null {
  const { problem } = pool;
  const [sheet] = problem.sheets;
  if (problem.sheets.length > 1 || !sheet || sheet.available !== Infinity || value > lastSheets * sheet.cost) return null;
  const wanted = problem.pieces.map((piece, index) => ({ ...piece, piece: index, count: left[index]! }));
  for (const attempt of means.attempts) {
    const trees = attempt(0, wanted, lastKeep, Math.floor(budget / sheet.cost));
    if (trees) return trees.map((tree) => ({ pattern: patternOf(0, tree, problem.pieces.length), times: 1 }));
  }
  return null;
}
