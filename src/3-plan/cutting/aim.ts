// What a plan is to save first, and what second: sheets or money.
import type { PatternUse } from "./sheet-problem.ts";

/** Whole-numbered costs for a search, one for each size of sheet. */
export interface AimedCosts {
  readonly first: readonly number[];
  readonly second: readonly number[];
  /** What one unit of the first is worth in sheets or coins. */
  readonly unit: number;
}

/** Costs for a search that counts sheets first, or money first; a common measure of the prices is taken out. */
export function aimedCosts(prices: readonly number[], counts: "count" | "cost"): AimedCosts {
  const common = prices.reduce(greatestCommon, 0);
  const ones = prices.map(() => 1);
  const money = common === 0 ? ones : prices.map((price) => price / common);
  return counts === "count" ? { first: ones, second: money, unit: 1 } : { first: money, second: ones, unit: common };
}

function greatestCommon(a: number, b: number): number {
  return b === 0 ? a : greatestCommon(b, a % b);
}

/** Sums up something over all sheets used. */
export function addUp(uses: readonly PatternUse[], each: (sheet: number) => number): number {
  return uses.reduce((sum, { pattern, times }) => sum + each(pattern.sheet) * times, 0);
}
