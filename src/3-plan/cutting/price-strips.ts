// A quick, not always best, value of one sheet: strips across it, in each strip stacks of equal pieces.
import { rowOf } from "./cut-tree.ts";
import type { CutAxis, CutTree } from "./cut-tree.ts";
import type { Lying } from "./price-sheet.ts";
import { lastUpTo, sumsOf } from "./raster-points.ts";

/** Layouts of strips in one direction, prepared for one sheet. */
export interface StripTable {
  /** Rough number of looks into the table for one pricing. */
  readonly effort: number;
  /** The best value that strips of stacks give, and a layout that has it. */
  price(values: ArrayLike<number>): { readonly value: number; readonly tree: CutTree };
}

/** At most so many strip depths are tried; more hardly ever change the result. */
const mostDepths = 150;

interface Stack {
  readonly lying: Lying;
  /** Size along the strip and across it. */
  readonly along: number;
  readonly across: number;
  /** For each point along the strip, the point before this piece; −1 when it does not fit. */
  readonly before: Int32Array;
}

/** Prepares strips that lie along an axis; `null` when there are too many positions. */
export function stripTable(width: number, height: number, lying: readonly Lying[], along: CutAxis): StripTable | null {
  const [length, breadth] = along === "x" ? [width, height] : [height, width];
  const sized = lying.map((way) => ({ lying: way, along: along === "x" ? way.width : way.height, across: along === "x" ? way.height : way.width }));
  const points = sumsOf(sized.map((each) => each.along), length);
  const depths = depthsOf(sized.map((each) => each.across), breadth);
  const heights = sumsOf(depths, breadth);
  if (!points || !heights || depths.length === 0) return null;
  const stacks: readonly Stack[] = sized.map((each) => ({ ...each, before: Int32Array.from(points, (point) => (point >= each.along ? lastUpTo(points, point - each.along) : -1)) }));
  const best = new Float64Array(points.length);

  const fillStrip = (values: ArrayLike<number>, depth: number): number => {
    best.fill(0);
    const usable = stacks.filter((stack) => stack.across <= depth && values[stack.lying.piece]! > 0);
    for (const { lying: { piece }, across, before } of usable) {
      const gain = values[piece]! * Math.floor(depth / across);
      for (let p = 0; p < best.length; p++) {
        const from = before[p]!;
        if (from < 0) continue;
        const value = best[from]! + gain;
        if (value > best[p]!) best[p] = value;
      }
    }
    for (let p = 1; p < best.length; p++) if (best[p]! < best[p - 1]!) best[p] = best[p - 1]!;
    return best[best.length - 1]!;
  };

  const readStrip = (values: ArrayLike<number>, depth: number): CutTree => {
    fillStrip(values, depth);
    const chosen: Stack[] = [];
    let at = best.length - 1;
    while (at > 0 && best[at]! > 0) {
      if (best[at] === best[at - 1]) { at--; continue; }
      const stack = stacks.find((each) => each.across <= depth && each.before[at]! >= 0 && best[each.before[at]!]! + values[each.lying.piece]! * Math.floor(depth / each.across) === best[at]);
      if (!stack) { at--; continue; }
      chosen.push(stack);
      at = stack.before[at]!;
    }
    return rowOf(chosen.map((stack) => ({ size: stack.along, tree: stackTree(stack, depth) })), along, length);
  };

  const stackTree = (stack: Stack, depth: number): CutTree => {
    const { piece, turned } = stack.lying;
    const leaf: CutTree = { kind: "piece", piece, turned };
    return rowOf(Array.from({ length: Math.floor(depth / stack.across) }, () => ({ size: stack.across, tree: leaf })), along === "x" ? "y" : "x", depth);
  };

  return {
    effort: depths.length * stacks.length * points.length,
    price: (values) => {
      const gains = depths.map((depth) => fillStrip(values, depth));
      const total = new Float64Array(heights.length);
      const from = new Int32Array(heights.length).fill(-1);
      for (let h = 1; h < heights.length; h++) {
        total[h] = total[h - 1]!;
        for (let d = 0; d < depths.length; d++) {
          if (depths[d]! > heights[h]!) break;
          const value = total[lastUpTo(heights, heights[h]! - depths[d]!)]! + gains[d]!;
          if (value > total[h]!) { total[h] = value; from[h] = d; }
        }
      }
      const chosen: number[] = [];
      for (let h = heights.length - 1; h > 0;) {
        const d = from[h]!;
        if (d < 0) { h--; continue; }
        chosen.push(depths[d]!);
        h = lastUpTo(heights, heights[h]! - depths[d]!);
      }
      const trees = new Map([...new Set(chosen)].map((depth) => [depth, readStrip(values, depth)]));
      const tree = rowOf(chosen.map((depth) => ({ size: depth, tree: trees.get(depth)! })), along === "x" ? "y" : "x", breadth);
      return { value: total[heights.length - 1]!, tree };
    },
  };
}

/** Depths of strips: of one piece, or of several equal ones stacked. */
function depthsOf(sizes: readonly number[], breadth: number): readonly number[] {
  const found = new Set<number>();
  for (let times = 1; found.size < mostDepths; times++) {
    const fitting = sizes.filter((size) => size * times <= breadth);
    if (fitting.length === 0) break;
    for (const size of fitting) found.add(size * times);
  }
  return [...found].sort((a, b) => a - b);
}
