// Lays pieces one after the other and keeps the most promising beginnings: for few copies of many pieces.
// Source of the scheme: Fontan and Libralesso, "An anytime tree search algorithm for two-dimensional two- and three-staged guillotine packing problems" (2020).
import { best, extend, groundFor, grown, startOf, stepsOf } from "./layout-beginnings.ts";
import type { Beginning, Children, SearchOrders, WantedPiece } from "./layout-beginnings.ts";
import { stepsToTrees } from "./layout-steps.ts";
import { restOfSheet } from "./cut-tree.ts";
import type { CutTree } from "./cut-tree.ts";

/** A layout of all wanted pieces on few sheets; `null` when none within `mostSheets` was found. */
export function searchLayout(wanted: readonly WantedPiece[], orders: SearchOrders): readonly CutTree[] | null {
  const ground = groundFor(wanted, orders, false);
  const total = ground.types.reduce((sum, each) => sum + each.count, 0);
  let kept: readonly Beginning[] = [startOf()];
  for (let level = 0; level < total; level++) {
    const children: Children = { list: [], below: Infinity };
    for (const beginning of kept) extend(beginning, ground, children);
    if (children.list.length === 0) return null;
    kept = best(children.list, orders.keep).map((child) => grown(child, ground));
  }
  const done = kept.reduce((a, b) => (b.sheets < a.sheets || (b.sheets === a.sheets && b.columnEnd < a.columnEnd) ? b : a));
  return stepsToTrees(stepsOf(done), ground.types, orders);
}

/** A valuable layout of one sheet that uses no piece more often than it is wanted. */
export function searchSheet(wanted: readonly WantedPiece[], orders: SearchOrders): { readonly value: number; readonly tree: CutTree } {
  const ground = groundFor(wanted, { ...orders, mostSheets: 1 }, true);
  let kept: readonly Beginning[] = [startOf()];
  let found = kept[0]!;
  for (;;) {
    const children: Children = { list: [], below: Infinity };
    for (const beginning of kept) extend(beginning, ground, children);
    if (children.list.length === 0) break;
    kept = best(children.list, orders.keep).map((child) => grown(child, ground));
    for (const each of kept) if (each.value > found.value) found = each;
  }
  return { value: found.value, tree: stepsToTrees(stepsOf(found), ground.types, orders)[0] ?? restOfSheet };
}
