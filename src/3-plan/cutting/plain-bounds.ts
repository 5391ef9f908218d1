// Lower bounds that need no solver: area, and areas stretched by functions under which nothing that fits ceases to fit.
import { ceilOf } from "./sheet-problem.ts";
import type { SheetProblem } from "./sheet-problem.ts";

/** A function of sizes into whole numbers, and what it makes of the whole sheet. */
interface Stretch {
  readonly of: (size: number) => number;
  readonly whole: number;
}

/** At most so many functions for each edge are tried. */
const mostStretches = 60;

/**
 * Functions f with f(a) + f(b) + … ≤ f(whole) whenever a + b + … ≤ whole.
 * Source: Carlier, Clautiaux and Moukrim, Computers & Operations Research 34 (2007) 2223–2250, functions f0, f1 (as u) and f2.
 */
function stretchesOf(whole: number, sizes: readonly number[]): readonly Stretch[] {
  const edges = [...new Set([...sizes, ...sizes.map((size) => whole - size + 1), ...sizes.map((size) => whole - size)])].filter((size) => size > 0 && 2 * size <= whole).sort((a, b) => b - a);
  const step = Math.max(1, Math.ceil((2 * edges.length) / mostStretches));
  const chosen = edges.filter((_, index) => index % step === 0);
  const cutOff = chosen.map((edge): Stretch => ({ whole, of: (size) => (size > whole - edge ? whole : size < edge ? 0 : size) }));
  const counted = chosen.map((edge): Stretch => {
    const times = Math.floor(whole / edge);
    return { whole: 2 * times, of: (size) => (2 * size > whole ? 2 * (times - Math.floor((whole - size) / edge)) : 2 * size === whole ? times : 2 * Math.floor(size / edge)) };
  });
  return [{ whole, of: (size) => size }, ...cutOff, ...counted];
}

/** No plan needs fewer sheets than this, however they are cut; sheets of several sizes are taken as large as the largest edges. */
export function fewestSheetsBound({ pieces, sheets }: SheetProblem): number {
  const width = Math.max(...sheets.map((sheet) => sheet.width));
  const height = Math.max(...sheets.map((sheet) => sheet.height));
  const mayTurn = pieces.some((piece) => piece.mayTurn);
  const across = stretchesOf(width, pieces.flatMap((piece) => (mayTurn && piece.mayTurn ? [piece.width, piece.height] : [piece.width])));
  const down = stretchesOf(height, pieces.flatMap((piece) => (mayTurn && piece.mayTurn ? [piece.width, piece.height] : [piece.height])));
  let best = 0;
  for (const f of across) {
    for (const g of down) {
      let sum = 0;
      for (const piece of pieces) {
        const straight = piece.width <= width && piece.height <= height ? f.of(piece.width) * g.of(piece.height) : Infinity;
        const turned = piece.mayTurn && piece.height <= width && piece.width <= height ? f.of(piece.height) * g.of(piece.width) : Infinity;
        sum += (Math.min(straight, turned) / f.whole / g.whole) * piece.count;
      }
      // Far more is taken off than the floating sum can be wrong by.
      if (Number.isFinite(sum)) best = Math.max(best, Math.ceil(sum - 1e-6));
    }
  }
  return Math.max(best, areaBound(pieces, width, height));
}

function areaBound(pieces: SheetProblem["pieces"], width: number, height: number): number {
  const area = pieces.reduce((sum, piece) => sum + BigInt(piece.width) * BigInt(piece.height) * BigInt(piece.count), 0n);
  return Number(ceilOf(area, BigInt(width) * BigInt(height)));
}

/** No plan costs less than this: the area at the price of the cheapest sheet by area, in exact fractions. */
export function leastCostBound(problem: SheetProblem): number {
  const area = problem.pieces.reduce((sum, piece) => sum + BigInt(piece.width) * BigInt(piece.height) * BigInt(piece.count), 0n);
  const byRate = problem.sheets.map((sheet) => ({ cost: BigInt(sheet.cost), area: BigInt(sheet.width) * BigInt(sheet.height) })).sort((a, b) => (a.cost * b.area < b.cost * a.area ? -1 : 1));
  const [cheapest] = byRate;
  const byArea = cheapest ? Number(ceilOf(area * cheapest.cost, cheapest.area)) : 0;
  return Math.max(byArea, fewestSheetsBound(problem) * Math.min(...problem.sheets.map((sheet) => sheet.cost)));
}
