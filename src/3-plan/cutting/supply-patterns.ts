// Patterns that use no piece more often than it is still wanted: what whole-numbered plans are made of.
import { addPattern, gainOf } from "./column-pool.ts";
import type { ColumnPool } from "./column-pool.ts";
import { patternOf, withoutSurplus } from "./cut-tree.ts";
import type { Pattern } from "./cut-tree.ts";
import type { FractionalAnswer } from "./linear-solver.ts";
import type { SearchMeans } from "./search-means.ts";
import { isSpent } from "./work-meter.ts";
import type { WorkMeter } from "./work-meter.ts";

/** How hard new patterns are searched for. */
export interface SupplyOrders {
  readonly rounds: number;
  /** Beginnings kept in each search: as a start, and at most, after searches that found nothing. */
  readonly keep: number;
  readonly mostKeep: number;
  readonly meter: WorkMeter;
  /** The share of the whole work after which no more patterns are searched. */
  readonly share: number;
}

/** A pattern cut down to what is wanted. */
export function trimmed(pattern: Pattern, wanted: readonly number[]): Pattern {
  return pattern.counts.every((count, piece) => count <= wanted[piece]!) ? pattern : patternOf(pattern.sheet, withoutSurplus(pattern.tree, [...wanted]), pattern.counts.length);
}

/**
 * Searches patterns for the wanted pieces until none is found that improves the fractional plan, and gives that plan.
 * Its value is no lower bound, since the search for patterns is not complete.
 */
export function supplyPatterns(pool: ColumnPool, means: SearchMeans, wanted: readonly number[], { rounds, keep, mostKeep, meter, share }: SupplyOrders): FractionalAnswer | null {
  const { problem, program } = pool;
  wanted.forEach((count, piece) => program.setRowLimits(piece, count, Infinity));
  let width = keep;
  for (let round = 0; ; round++) {
    const answer = program.solveFractional();
    if (!answer || round >= rounds || isSpent(meter, share)) return answer;
    const pieces = problem.pieces.map((piece, index) => ({ ...piece, piece: index, count: wanted[index]!, value: answer.duals[index]! }));
    let isBetter = false;
    problem.sheets.forEach((sheet, index) => {
      for (const tree of means.fill(index, pieces, width)) {
        const pattern = patternOf(index, tree, pieces.length);
        if (gainOf(pool, pattern, answer.duals) > 1e-6 * sheet.cost && addPattern(pool, pattern)) isBetter = true;
      }
    });
    if (isBetter) continue;
    if (width >= mostKeep) return answer;
    width = Math.min(mostKeep, width * 2);
  }
}
