// The best value that one bar can hold when each piece may be cut so many times at most: a knapsack, solved exactly.
import type { WorkMeter } from "./work-meter.ts";

/** One kind of piece in the knapsack. */
export interface BarItem {
  readonly size: number;
  readonly count: number;
  readonly value: number;
}

/** How many of each are taken, and what they are worth. */
export interface BarChoice {
  readonly value: number;
  readonly counts: readonly number[];
  /** Whether no choice is worth more; false only when both ways of searching were too long. */
  readonly isBest: boolean;
}

/** Steps of the search by branches, and cells of the table, beyond which each is given up. */
const mostSteps = 200_000;
const mostCells = 60_000_000;

/** The most valuable choice that fits into a length, or after a short search a good one. Values are whole numbers, so that sums are exact. */
export function bestOnBar(items: readonly BarItem[], length: number, meter: WorkMeter, isQuick = false): BarChoice {
  const order = [...items.keys()].filter((index) => items[index]!.value > 0 && items[index]!.count > 0 && items[index]!.size <= length)
    .sort((a, b) => items[b]!.value * items[a]!.size - items[a]!.value * items[b]!.size || items[b]!.size - items[a]!.size);
  const branched = byBranches(order.map((index) => items[index]!), length, isQuick ? mostSteps / 20 : mostSteps);
  meter.spent += branched.steps / 4;
  const isTabled = !isQuick && !branched.isBest && order.length * length <= mostCells;
  if (isTabled) meter.spent += (order.length * length) / 30;
  const choice = isTabled ? byTable(order.map((index) => items[index]!), length) : branched;
  const counts = new Array<number>(items.length).fill(0);
  order.forEach((index, place) => { counts[index] = choice.counts[place]!; });
  return { value: choice.value, counts, isBest: choice.isBest };
}

/** Depth first, densest pieces first; a branch ends where even the densest filling of what is left could not win. */
function byBranches(items: readonly BarItem[], length: number, most: number): BarChoice & { readonly steps: number } {
  const taken = new Array<number>(items.length).fill(0);
  const smallest = suffixMinima(items);
  let best = 0;
  let bestCounts = [...taken];
  let steps = 0;
  const visit = (index: number, left: number, value: number): void => {
    if (value > best) { best = value; bestCounts = [...taken]; }
    for (let at = index; at < items.length; at++) {
      if (left < smallest[at]!) return;
      const { size, count, value: worth } = items[at]!;
      if (value + Math.floor((left / size) * worth + 1e-6) <= best) return;
      for (let times = Math.min(count, Math.floor(left / size)); times > 0; times--) {
        if (++steps > most) return;
        taken[at] = times;
        visit(at + 1, left - times * size, value + times * worth);
      }
      taken[at] = 0;
    }
  };
  visit(0, length, 0);
  return { value: best, counts: bestCounts, isBest: steps <= most, steps };
}

function suffixMinima(items: readonly BarItem[]): readonly number[] {
  const minima = items.map((item) => item.size);
  for (let index = minima.length - 2; index >= 0; index--) minima[index] = Math.min(minima[index]!, minima[index + 1]!);
  return minima;
}

/** Value by length, one kind after the other; how often each was taken is kept for every length. */
function byTable(items: readonly BarItem[], length: number): BarChoice {
  let best = new Float64Array(length + 1);
  const takenAt = items.map(({ size, count, value }) => {
    const next = best.slice();
    const taken = new Uint16Array(length + 1);
    for (let at = size; at <= length; at++) {
      const most = Math.min(count, Math.floor(at / size));
      for (let times = 1; times <= most; times++) {
        const worth = best[at - times * size]! + times * value;
        if (worth > next[at]!) { next[at] = worth; taken[at] = times; }
      }
    }
    best = next;
    return taken;
  });
  const counts = new Array<number>(items.length).fill(0);
  let left = length;
  for (let index = items.length - 1; index >= 0; index--) {
    counts[index] = takenAt[index]![left]!;
    left -= counts[index]! * items[index]!.size;
  }
  return { value: best[length]!, counts, isBest: true };
}
