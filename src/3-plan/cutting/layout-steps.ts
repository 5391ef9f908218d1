// Turns the steps by which a search laid its pieces into trees of cuts.
import { rowOf } from "./cut-tree.ts";
import type { CutAxis, CutTree } from "./cut-tree.ts";

/** Where the next piece goes: onto the last one, beside it, above its row, beside its column, or onto a new sheet. */
export type Place = "stack" | "row" | "column" | "sheet" | "new";

/** One piece laid down. On a `flipped` sheet the first cuts part it along y and all the others follow suit. */
export interface LayoutStep {
  readonly type: number;
  readonly turned: boolean;
  readonly place: Place;
  readonly flipped: boolean;
}

interface Typed {
  readonly piece: number;
  readonly width: number;
  readonly height: number;
}

interface Part {
  size: number;
  readonly parts: Part[];
  leaf: CutTree | null;
}

const other = (axis: CutAxis): CutAxis => (axis === "x" ? "y" : "x");

/** One tree for each sheet. */
export function stepsToTrees(steps: readonly LayoutStep[], types: readonly Typed[], sheet: { readonly width: number; readonly height: number }): readonly CutTree[] {
  const starts = steps.flatMap((step, index) => (step.place === "new" ? [index] : []));
  return starts.map((start, index) => treeOf(steps.slice(start, starts[index + 1]), types, sheet));
}

function treeOf(steps: readonly LayoutStep[], types: readonly Typed[], sheet: { readonly width: number; readonly height: number }): CutTree {
  const flipped = steps[0]!.flipped;
  const axis: CutAxis = flipped ? "y" : "x";
  const columns: Part[] = [];
  for (const { type, turned, place } of steps) {
    const { piece, width, height } = types[type]!;
    const [lyingWidth, lyingHeight] = turned ? [height, width] : [width, height];
    const [across, down] = flipped ? [lyingHeight, lyingWidth] : [lyingWidth, lyingHeight];
    if (place === "new" || place === "sheet") columns.push({ size: 0, parts: [], leaf: null });
    const column = columns.at(-1)!;
    if (place === "new" || place === "sheet" || place === "column") column.parts.push({ size: down, parts: [], leaf: null });
    const row = column.parts.at(-1)!;
    if (place !== "stack") row.parts.push({ size: across, parts: [], leaf: null });
    row.parts.at(-1)!.parts.push({ size: down, parts: [], leaf: { kind: "piece", piece, turned } });
    column.size = Math.max(column.size, row.parts.reduce((sum, stack) => sum + stack.size, 0));
  }
  const [across, down] = flipped ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  return built(columns, axis, across, down);
}

function built(parts: readonly Part[], axis: CutAxis, whole: number, breadth: number): CutTree {
  return rowOf(parts.map((part) => ({ size: part.size, tree: part.leaf ?? built(part.parts, other(axis), breadth, part.size) })), axis, whole);
}
