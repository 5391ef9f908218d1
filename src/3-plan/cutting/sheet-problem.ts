// A cutting problem in whole numbers, the saw's width and the trimmed edges already counted into the sizes.
import type { Pattern } from "./cut-tree.ts";

/** A piece to be cut so many times. */
export interface WholePiece {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/** A size of sheet to cut from; `available` is Infinity where one may take as many as needed. */
export interface WholeSheet {
  readonly width: number;
  readonly height: number;
  /** A whole number that is counted towards the total; 1 for each where the number of sheets counts. */
  readonly cost: number;
  /** What decides among plans of equal cost. */
  readonly second: number;
  readonly available: number;
}

/** Pieces, sheets, and nothing that floats. */
export interface SheetProblem {
  readonly pieces: readonly WholePiece[];
  readonly sheets: readonly WholeSheet[];
}

/** A pattern and how often it is cut. */
export interface PatternUse {
  readonly pattern: Pattern;
  readonly times: number;
}

/** The cost of a list of patterns. */
export function costOf(problem: SheetProblem, uses: readonly PatternUse[]): number {
  return uses.reduce((sum, { pattern, times }) => sum + problem.sheets[pattern.sheet]!.cost * times, 0);
}

/** How many of each piece are still missing after some patterns are cut; never below 0. */
export function missingAfter(wanted: readonly number[], uses: readonly PatternUse[]): number[] {
  const missing = [...wanted];
  for (const { pattern, times } of uses) pattern.counts.forEach((count, piece) => { missing[piece] = missing[piece]! - count * times; });
  return missing.map((count) => Math.max(0, count));
}

/** Whether the sheets used of each size are there. */
export function isAvailable(problem: SheetProblem, uses: readonly PatternUse[]): boolean {
  return problem.sheets.every((sheet, index) => uses.reduce((sum, { pattern, times }) => sum + (pattern.sheet === index ? times : 0), 0) <= sheet.available);
}

/** A quotient of whole numbers, rounded up. */
export function ceilOf(numerator: bigint, denominator: bigint): bigint {
  return numerator <= 0n ? 0n : (numerator + denominator - 1n) / denominator;
}

/** More sheets than this of one size are not tried in a sum. */
const mostInSum = 3000;

/** The least sum of costs, each taken as often as one likes, that is not below a value: no plan costs anything between. */
export function nextSum(value: number, costs: readonly number[]): number {
  const distinct = [...new Set(costs)].sort((a, b) => b - a);
  const [first, second, third] = distinct;
  if (first === undefined || distinct.length > 3 || value / distinct.at(-1)! > mostInSum) return value;
  let best = Math.ceil(value / first) * first;
  const tryRest = (sum: number, cost: number): void => { best = Math.min(best, sum + Math.max(0, Math.ceil((value - sum) / cost)) * cost); };
  for (let many = 0; second !== undefined && many * first < best; many++) {
    if (third === undefined) tryRest(many * first, second);
    else for (let more = 0; many * first + more * second < best; more++) tryRest(many * first + more * second, third);
  }
  return best;
}
