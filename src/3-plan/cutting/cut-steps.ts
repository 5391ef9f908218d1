// A tidied tree as a numbered list of cuts, each measured from a straight edge of the part that is cut.
import type { Length } from "../../units/length.ts";
import { letterOf } from "../letters.ts";
import type { CutTree } from "./cut-tree.ts";
import { partsOf } from "./tidy-tree.ts";
import type { CutStep, PartCutOff, PartUse } from "./types.ts";

/** How whole numbers become lengths, and what the pieces are called. */
export interface StepGround {
  readonly pieces: readonly { readonly id: string }[];
  readonly toLength: (whole: number) => Length;
  readonly kerf: number;
}

interface Waiting {
  readonly name: string;
  readonly tree: CutTree;
  readonly width: number;
  readonly height: number;
}

/**
 * The steps for one sheet, the first one for the part of the given name that is the whole of it.
 * Sizes in the tree hold one kerf each, so that a part of size s is s less one kerf wide and the next one starts at s.
 */
export function stepsFor(tree: CutTree, width: number, height: number, partName: string, ground: StepGround, firstNumber: number): readonly CutStep[] {
  const steps: CutStep[] = [];
  const waiting: Waiting[] = tree.kind === "cut" ? [{ name: partName, tree, width, height }] : [];
  for (let part = waiting.shift(); part; part = waiting.shift()) {
    if (part.tree.kind !== "cut") continue;
    const { axis } = part.tree;
    const number = firstNumber + steps.length;
    const inner = partsOf(part.tree, axis, axis === "x" ? part.width : part.height);
    const cutOff: PartCutOff[] = [];
    const further: Waiting[] = [];
    let at = 0;
    for (const { size, tree: child } of inner) {
      const name = `${number}${letterOf(further.length, "a")}`;
      if (child.kind === "cut") further.push({ name, tree: child, width: axis === "x" ? size : part.width, height: axis === "x" ? part.height : size });
      // A leftover no wider than the kerf is sawdust.
      if (size > ground.kerf) cutOff.push({ from: ground.toLength(at), to: ground.toLength(at + size - ground.kerf), use: useOf(child, name, ground) });
      at += size;
    }
    const ends = inner.slice(0, -1).reduce<readonly number[]>((marks, { size }) => [...marks, (marks.at(-1) ?? 0) + size], []);
    steps.push({ number, part: part.name, measured: axis === "x" ? "from-left" : "from-below", marks: ends.map((end) => ground.toLength(end - ground.kerf)), parts: cutOff });
    waiting.unshift(...further);
  }
  return steps;
}

function useOf(tree: CutTree, name: string, ground: StepGround): PartUse {
  if (tree.kind === "piece") return { kind: "piece", piece: ground.pieces[tree.piece]!.id };
  return tree.kind === "cut" ? { kind: "part", part: name } : { kind: "offcut" };
}
