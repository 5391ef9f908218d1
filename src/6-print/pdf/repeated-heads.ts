// A table's head is printed again on each of its pages; in the structure it stands once, the repeats are artifacts (ISO 14289-1, 7.1).
import { placeKey } from "./mark-content.ts";
import { isContent, isNode, leavesOf, nodesOf } from "./structure-tree.ts";
import type { StructureNode } from "./structure-tree.ts";

/**
 * Takes out of the rows that hold header cells only what is not on their first page. `painted` has the keys of the content that is really there: a head that moved to the next page
 * leaves empty content behind.
 */
export function keepFirstHeads(top: StructureNode, painted: ReadonlySet<string>): void {
  for (const row of nodesOf(top).filter((node) => node.type === "TR" && node.kids.filter(isNode).every(({ type }) => type === "TH"))) {
    const pages = leavesOf(row).filter(isContent).filter(({ page, mark }) => painted.has(placeKey(page, mark))).map(({ page }) => page);
    if (pages.length > 0) keepPage(row, pages.reduce((first, page) => Math.min(first, page)));
  }
}

function keepPage(node: StructureNode, page: number): void {
  node.kids = node.kids.filter((kid) => isNode(kid) || kid.page === page);
  for (const kid of node.kids.filter(isNode)) keepPage(kid, page);
}
