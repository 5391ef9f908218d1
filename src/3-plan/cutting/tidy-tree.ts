// Makes a tree of cuts fit for the bench: pieces cut to size, leftovers pushed together into few large ones.
import { cutAt, leavesOf, restOfSheet, rowOf } from "./cut-tree.ts";
import type { CutAxis, CutTree } from "./cut-tree.ts";
import type { WholePiece } from "./sheet-problem.ts";

interface Part {
  readonly size: number;
  readonly tree: CutTree;
}

const other = (axis: CutAxis): CutAxis => (axis === "x" ? "y" : "x");

/** The same pieces with fewer cuts and larger leftovers; every piece fills its rectangle. */
export function tidied(tree: CutTree, pieces: readonly WholePiece[], width: number, height: number): CutTree {
  if (tree.kind === "rest") return tree;
  if (tree.kind === "piece") return cutToSize(tree, pieces, width, height);
  const parts = partsOf(tree, tree.axis, tree.axis === "x" ? width : height);
  const across = tree.axis === "x" ? height : width;
  const clean = parts.map(({ size, tree: part }) => ({ size, tree: tree.axis === "x" ? tidied(part, pieces, size, height) : tidied(part, pieces, width, size) }));
  return shared(joined(clean, tree.axis), tree.axis, tree.axis === "x" ? width : height, across);
}

/** The parts into which one direction of cuts parts a rectangle. */
export function partsOf(tree: CutTree, axis: CutAxis, whole: number): readonly Part[] {
  if (tree.kind !== "cut" || tree.axis !== axis) return [{ size: whole, tree }];
  return [...partsOf(tree.first, axis, tree.at), ...partsOf(tree.second, axis, whole - tree.at)];
}

/** Cuts a piece out of a corner so that the larger of the two leftovers is as large as it can be. */
function cutToSize(leaf: Extract<CutTree, { kind: "piece" }>, pieces: readonly WholePiece[], width: number, height: number): CutTree {
  const piece = pieces[leaf.piece]!;
  const [w, h] = leaf.turned ? [piece.height, piece.width] : [piece.width, piece.height];
  const besideFirst = Math.max((width - w) * height, w * (height - h)) >= Math.max((height - h) * width, h * (width - w));
  return besideFirst
    ? cutAt("x", w, width, cutAt("y", h, height, leaf, restOfSheet), restOfSheet)
    : cutAt("y", h, height, cutAt("x", w, width, leaf, restOfSheet), restOfSheet);
}

/** Parts that were cut anew in the same direction become parts of this row; all leftovers become one at its end. */
function joined(parts: readonly Part[], axis: CutAxis): readonly Part[] {
  const flat = parts.flatMap(({ size, tree }) => partsOf(tree, axis, size));
  const used = flat.filter((part) => part.tree.kind !== "rest");
  const left = flat.reduce((sum, part) => sum + (part.tree.kind === "rest" ? part.size : 0), 0);
  const ordered = [...used].sort((a, b) => b.size - a.size);
  return left > 0 ? [...ordered, { size: left, tree: restOfSheet }] : ordered;
}

/** What every part of a row leaves over at its far side is cut off the whole row first. */
function shared(parts: readonly Part[], axis: CutAxis, length: number, breadth: number): CutTree {
  if (parts.every((part) => part.tree.kind === "rest")) return restOfSheet;
  const ends = parts.map(({ tree }) => {
    const last = partsOf(tree, other(axis), breadth).at(-1)!;
    return last.tree.kind === "rest" ? last.size : 0;
  });
  const common = Math.min(...ends);
  const filled = parts.filter((part) => part.tree.kind !== "rest").map((part) => part.size);
  const filledLength = filled.reduce((sum, size) => sum + size, 0);
  // A leftover at the row's end counts as common too; it is worth it only where the strip gained is the larger one.
  const isWorthIt = common > 0 && (filledLength === length || common * length > (length - filledLength) * breadth);
  if (!isWorthIt) return rowOf(parts, axis, length);
  const shorter = parts.map(({ size, tree }) => ({ size, tree: rowOf(lessRest(partsOf(tree, other(axis), breadth), common), other(axis), breadth - common) }));
  return cutAt(other(axis), breadth - common, breadth, rowOf(shorter, axis, length), restOfSheet);
}

function lessRest(parts: readonly Part[], less: number): readonly Part[] {
  const last = parts.at(-1)!;
  return last.size > less ? [...parts.slice(0, -1), { size: last.size - less, tree: last.tree }] : parts.slice(0, -1);
}

/** The area of the largest leftover. */
export function largestRest(tree: CutTree, width: number, height: number): number {
  return leavesOf(tree, width, height).reduce((most, leaf) => (leaf.leaf.kind === "rest" ? Math.max(most, leaf.width * leaf.height) : most), 0);
}
