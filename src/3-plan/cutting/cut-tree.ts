// A sheet as a tree of cuts from edge to edge: the one form in which layouts are searched, improved and turned into cuts.

/** Along which axis the two parts of a cut lie: "x" is a cut with the grain of y, its parts side by side. */
export type CutAxis = "x" | "y";

/** A rectangle that is left over, holds one piece in its corner, or is cut from edge to edge at a distance from its lower edge. */
export type CutTree =
  | { readonly kind: "rest" }
  | { readonly kind: "piece"; readonly piece: number; readonly turned: boolean }
  | { readonly kind: "cut"; readonly axis: CutAxis; readonly at: number; readonly first: CutTree; readonly second: CutTree };

/** A rectangle with nothing in it. */
export const restOfSheet: CutTree = { kind: "rest" };

/** One way of cutting one sheet, and how many of each piece it gives. */
export interface Pattern {
  readonly sheet: number;
  readonly tree: CutTree;
  readonly counts: readonly number[];
}

/** A leaf of a tree with its place. */
export interface PlacedLeaf {
  readonly leaf: CutTree;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How many of each piece stand in a tree. */
export function countsIn(tree: CutTree, pieces: number): number[] {
  const counts = new Array<number>(pieces).fill(0);
  const visit = (node: CutTree): void => {
    if (node.kind === "piece") counts[node.piece]!++;
    if (node.kind === "cut") { visit(node.first); visit(node.second); }
  };
  visit(tree);
  return counts;
}

/** A pattern with its counts. */
export function patternOf(sheet: number, tree: CutTree, pieces: number): Pattern {
  return { sheet, tree, counts: countsIn(tree, pieces) };
}

/** The leaves with their places, in the order in which the cuts part them. */
export function leavesOf(tree: CutTree, width: number, height: number, x = 0, y = 0): readonly PlacedLeaf[] {
  if (tree.kind !== "cut") return [{ leaf: tree, x, y, width, height }];
  return tree.axis === "x"
    ? [...leavesOf(tree.first, tree.at, height, x, y), ...leavesOf(tree.second, width - tree.at, height, x + tree.at, y)]
    : [...leavesOf(tree.first, width, tree.at, x, y), ...leavesOf(tree.second, width, height - tree.at, x, y + tree.at)];
}

/** A cut at a distance; none when one side would be nothing. */
export function cutAt(axis: CutAxis, at: number, whole: number, first: CutTree, second: CutTree): CutTree {
  return at >= whole ? first : { kind: "cut", axis, at, first, second };
}

/** The tree with only so many of each piece as are wanted; what falls out becomes rest. `allowed` is used up. */
export function withoutSurplus(tree: CutTree, allowed: number[]): CutTree {
  if (tree.kind === "rest") return tree;
  if (tree.kind === "piece") return allowed[tree.piece]!-- > 0 ? tree : restOfSheet;
  const first = withoutSurplus(tree.first, allowed);
  const second = withoutSurplus(tree.second, allowed);
  return first.kind === "rest" && second.kind === "rest" ? restOfSheet : { ...tree, first, second };
}

/** Parts set one beside the other along an axis, what is left over behind them. */
export function rowOf(parts: readonly { readonly size: number; readonly tree: CutTree }[], axis: CutAxis, whole: number): CutTree {
  const [first, ...others] = parts;
  return first ? cutAt(axis, first.size, whole, first.tree, rowOf(others, axis, whole - first.size)) : restOfSheet;
}
