// A pattern laid out on a book: where its holes are, what they are called, and the runs that the thread must cover.
import { addLengths, compareLengths, divideLength, multiplyLength, roundToMark, shortest, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { rational } from "../../units/rational.ts";
import { faceRun, wrapRun } from "../sewing/trail.ts";
import type { PatternRun } from "../sewing/trail.ts";
import type { StabHole } from "./geometry.ts";
import type { AddedHoles, Pattern, Share } from "./patterns.ts";

/** What a pattern is laid out on. */
export interface Ground {
  readonly height: Length;
  readonly setBack: Length;
  readonly cornerDistance: Length;
  readonly count: number;
  readonly step: Length;
}

/** A hole before it has its name: which main holes it is joined to, and around which edges it is wrapped. */
interface Draft {
  readonly along: Length;
  readonly across: Length;
  readonly main: number | null;
  readonly joins: readonly number[];
  readonly wraps: readonly ("spine" | "head" | "tail")[];
}

/** The holes in order from the head, and the runs: lines once on the front and once on the back, wraps once. */
export function layOutPattern(pattern: Pattern, ground: Ground): { readonly holes: readonly StabHole[]; readonly runs: readonly PatternRun[] } {
  const main = mainHoles(ground);
  const drafts = [...main, ...pattern.added.flatMap((added) => addedHoles(added, main, ground))]
    .map((draft, index) => ({ draft, index })).sort((a, b) => compareLengths(a.draft.along, b.draft.along) || a.index - b.index).map(({ draft }) => draft);
  let letters = 0;
  const names = drafts.map(({ main: number }) => (number === null ? String.fromCharCode(97 + letters++) : `${number + 1}`));
  const nameOfMain = (number: number): string => names[drafts.findIndex((draft) => draft.main === number)]!;
  const holes = drafts.map(({ along, across, main: number }, index): StabHole => ({ id: names[index]!, kind: number === null ? "added" : "main", along, across }));
  const both = (from: string, to: string): readonly PatternRun[] => [faceRun("front", from, to), faceRun("back", from, to)];
  const runs = [
    ...main.slice(1).flatMap((_, gap) => both(nameOfMain(gap), nameOfMain(gap + 1))),
    ...drafts.flatMap(({ joins }, index) => joins.flatMap((number) => both(nameOfMain(number), names[index]!))),
    ...drafts.flatMap(({ wraps }, index) => wraps.map((edge) => wrapRun(edge, names[index]!))),
  ];
  return { holes, runs };
}

/** Evenly from corner distance to corner distance, each rounded once from the head. */
function mainHoles({ height, setBack, cornerDistance, count, step }: Ground): readonly Draft[] {
  const span = subtractLength(height, multiplyLength(cornerDistance, 2));
  return Array.from({ length: count }, (_, k): Draft => {
    const exact = addLengths(cornerDistance, divideLength(multiplyLength(span, k), count - 1));
    return {
      along: k === 0 || k === count - 1 ? exact : roundToMark(exact, step), across: setBack, main: k, joins: [],
      wraps: ["spine", ...(k === 0 ? ["head" as const] : []), ...(k === count - 1 ? ["tail" as const] : [])],
    };
  });
}

function addedHoles(added: AddedHoles, main: readonly Draft[], { height, setBack, cornerDistance, step }: Ground): readonly Draft[] {
  const across = roundToMark(share(setBack, added.across), step);
  const last = main.length - 1;
  const draft = (along: Length, joins: readonly number[], end: "head" | "tail" | null): Draft => ({
    along, across, main: null, joins, wraps: added.wraps.flatMap((wrap) => (wrap === "spine" ? ["spine" as const] : end ? [end] : [])),
  });
  switch (added.where) {
    case "corner": {
      const in_ = roundToMark(share(cornerDistance, added.along), step);
      return [draft(in_, [0], "head"), draft(subtractLength(height, in_), [last], "tail")];
    }
    case "gap": return main.slice(1).map(({ along }, gap) => {
      const before = main[gap]!.along;
      return draft(roundToMark(addLengths(before, share(subtractLength(along, before), added.along)), step), [gap, gap + 1], null);
    });
    case "beside": {
      const narrowest = main.slice(1).map(({ along }, gap) => subtractLength(along, main[gap]!.along)).reduce((a, b) => shortest(a, b));
      const away = roundToMark(shortest(share(narrowest, added.along), divideLength(cornerDistance, 2)), step);
      return main.flatMap(({ along }, k) => [draft(subtractLength(along, away), [k], null), draft(addLengths(along, away), [k], null)]);
    }
  }
}

function share(length: Length, [n, d]: Share): Length {
  return multiplyLength(length, rational(n, d));
}

/** Two pairs for the inner binding, in the middle of the first and of the last gap, on the line of the main holes and clear of them. */
export function layOutInnerHoles(holes: readonly StabHole[], step: Length): readonly StabHole[] {
  const main = holes.filter(({ kind }) => kind === "main");
  const gaps = [[main[0]!, main[1]!], [main.at(-2)!, main.at(-1)!]] as const;
  const names = ["w", "x", "y", "z"];
  return gaps.flatMap(([a, b], index) => {
    const gap = subtractLength(b.along, a.along);
    return [rational(3, 8), rational(5, 8)].map((part, k): StabHole => ({
      id: names[index * 2 + k]!, kind: "inner", along: roundToMark(addLengths(a.along, multiplyLength(gap, part)), step), across: a.across,
    }));
  });
}
