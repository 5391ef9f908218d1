// Takes a few sheets of a plan apart and lays their pieces anew, again and again, until one sheet has become empty.
import { countsIn, leavesOf } from "./cut-tree.ts";
import type { CutTree } from "./cut-tree.ts";
import { searchLayout } from "./layout-search.ts";
import type { Guide, WantedPiece } from "./layout-beginnings.ts";
import { drawFrom } from "./seeded.ts";
import type { WholePiece } from "./sheet-problem.ts";
import { isSpent } from "./work-meter.ts";
import type { WorkMeter } from "./work-meter.ts";

/** What an improvement starts from and how long it may go on. */
export interface ImproveOrders {
  readonly pieces: readonly WholePiece[];
  readonly width: number;
  readonly height: number;
  /** No plan has fewer sheets than this. */
  readonly bound: number;
  readonly rounds: number;
  readonly meter: WorkMeter;
  readonly keep: number;
  /** Called with every sheet that is laid, so that good ones can be kept for a later choice. */
  readonly onSheet?: (tree: CutTree) => void;
}

const guides: readonly Guide[] = ["waste", "large-first", "larger-first", "largest-first"];

/** As good a plan as could be found, of the same pieces on at most as many sheets. */
export function improveLayouts(start: readonly CutTree[], orders: ImproveOrders): readonly CutTree[] {
  const draw = drawFrom(orders.pieces.length * 977 + start.length);
  const { pieces, width, height } = orders;
  const fillOf = (tree: CutTree): number => leavesOf(tree, width, height).reduce((sum, { leaf }) => sum + (leaf.kind === "piece" ? pieces[leaf.piece]!.width * pieces[leaf.piece]!.height : 0), 0) / (width * height);
  let sheets = start.map((tree) => ({ tree, fill: fillOf(tree) }));
  for (let round = 0; round < orders.rounds && sheets.length > orders.bound && !isSpent(orders.meter); round++) {
    sheets.sort((a, b) => a.fill - b.fill);
    const many = Math.min(sheets.length, 2 + draw(4));
    // Mostly the emptiest sheet is among those taken apart.
    const chosen = new Set(draw(4) > 0 ? [0] : []);
    while (chosen.size < many) chosen.add(draw(sheets.length));
    const taken = sheets.filter((_, index) => chosen.has(index));
    const wanted = wantedFrom(taken.map((each) => each.tree), pieces);
    const guide = guides[draw(guides.length)]!;
    const firstCuts = ([["x"], ["y"], ["x", "y"]] as const)[draw(3)]!;
    const found = searchLayout(wanted, { width, height, keep: orders.keep, guide, firstCuts, mostSheets: taken.length, meter: orders.meter });
    if (!found) continue;
    const laid = found.map((tree) => ({ tree, fill: fillOf(tree) }));
    if (orders.onSheet) for (const { tree } of laid) orders.onSheet(tree);
    const unevenness = (list: readonly { readonly fill: number }[]): number => list.reduce((sum, { fill }) => sum + fill * fill, 0);
    if (laid.length > taken.length || (laid.length === taken.length && unevenness(laid) < unevenness(taken) - 0.002)) continue;
    sheets = [...sheets.filter((_, index) => !chosen.has(index)), ...laid];
  }
  return sheets.map((each) => each.tree);
}

/** The pieces of some sheets as they are wanted anew. */
export function wantedFrom(trees: readonly CutTree[], pieces: readonly WholePiece[]): readonly WantedPiece[] {
  const counts = trees.map((tree) => countsIn(tree, pieces.length));
  return pieces.map((piece, index) => ({ ...piece, piece: index, count: counts.reduce((sum, each) => sum + each[index]!, 0) })).filter((each) => each.count > 0);
}
