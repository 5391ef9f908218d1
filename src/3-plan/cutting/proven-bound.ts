// A lower bound from values of pieces, computed in whole numbers, so that no rounding can make it too high.
import { ceilOf } from "./sheet-problem.ts";

interface PricedSheet {
  readonly cost: number;
  readonly available: number;
}

/**
 * No plan costs less. `values` are any whole numbers, `best[s]` is the greatest value that one sheet s can hold.
 * If no sheet holds more than t times its cost, the wanted pieces need a cost of at least their value over t (Farley, Operations Research 38 (1990) 922–923);
 * a sheet of which only a few are there may hold more, for each of them the excess is taken off.
 */
export function provenBound(sheets: readonly PricedSheet[], wanted: readonly number[], values: readonly number[], best: readonly number[]): number {
  const worth = wanted.reduce((sum, count, piece) => sum + BigInt(count) * BigInt(values[piece]!), 0n);
  const rates = sheets.map((sheet, index) => ({ value: BigInt(best[index]!), cost: BigInt(sheet.cost), available: sheet.available }));
  const isLess = (a: { readonly value: bigint; readonly cost: bigint }, b: { readonly value: bigint; readonly cost: bigint }): boolean => a.value * b.cost < b.value * a.cost;
  const floor = rates.filter((rate) => rate.available === Infinity).reduce((most, rate) => (isLess(most, rate) ? rate : most), { value: 0n, cost: 1n, available: Infinity });
  const candidates = rates.filter((rate) => rate.value > 0n && !isLess(rate, floor));
  const bounds = candidates.map((rate) => {
    // In units of 1 over rate.cost: the excess of a sheet is its value less rate.value / rate.cost times its own cost.
    const excess = rates.filter((each) => each.available !== Infinity && isLess(rate, each)).reduce((sum, each) => sum + BigInt(each.available) * (each.value * rate.cost - rate.value * each.cost), 0n);
    return Number(ceilOf(worth * rate.cost - excess, rate.value));
  });
  return Math.max(0, ...bounds);
}
