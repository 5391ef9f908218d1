// Moves of the needle in words: "in at 3, along the inside to 4, out at 4".
import type { Edge, Move, Side, ThreadPath } from "../../2-model/sewing/types.ts";
import { capital } from "../wording.ts";

const sideWords: Readonly<Record<Side, string>> = {
  inside: "along the inside", outside: "along the outside", front: "along the front", back: "along the back", within: "between the leaves",
};

const edgeWords: Readonly<Record<Edge, string>> = {
  spine: "around the spine edge", head: "around the head", tail: "around the tail", board: "around the edge of the board",
};

/** Through a hole, by the side that it comes out on. */
const throughWords: Readonly<Record<Side, (name: string) => string>> = {
  inside: (name) => `in at ${name}`,
  outside: (name) => `out at ${name}`,
  front: (name) => `through ${name} to the front`,
  back: (name) => `through ${name} to the back`,
  within: (name) => `in at ${name} to between the leaves`,
};

/** One move, as a phrase that can stand in a row of others. */
export function wordsForMove(move: Move, path: ThreadPath): string {
  const nameOf = (id: string): string => path.places.get(id)!.name;
  const to = nameOf(move.to.place);
  switch (move.kind) {
    case "hole": return move.from.side === "within" ? `out at ${to} on the ${move.to.side}` : throughWords[move.to.side](to);
    case "run": return to === nameOf(move.from.place) ? `up to ${to} of the next section` : `${sideWords[move.to.side]} to ${to}`;
    case "tape": return `over tape ${nameOf(move.tape)} to ${to}`;
    case "edge": return move.to.place === move.from.place ? `${edgeWords[move.edge]} and back to ${to}` : `${edgeWords[move.edge]} to ${to}`;
    case "link": return `under the stitch below${move.to.place === move.from.place ? "" : ` and on to ${to}`}`;
    case "kettle": return `behind the step between the two sections below, and up to ${to} of the next section`;
    case "knot": return "tie a knot";
  }
}

/** The moves of one pass in order, as a sentence without its full stop; all moves without a pass. */
export function wordsForPass(path: ThreadPath, pass?: number): string {
  return sentence(movesOf(path, pass).map((move) => wordsForMove(move, path)));
}

/** The same with the stitches numbered in brackets, as the drawing of a pass numbers them; a pass of one stitch has no numbers. */
export function numberedWordsForPass(path: ThreadPath, pass: number): string {
  const moves = movesOf(path, pass);
  const stitches = moves.filter(({ kind }) => kind !== "hole" && kind !== "knot");
  return sentence(moves.map((move) => {
    const number = stitches.indexOf(move) + 1;
    return `${number > 0 && stitches.length > 1 ? `(${number}) ` : ""}${wordsForMove(move, path)}`;
  }));
}

function movesOf(path: ThreadPath, pass: number | undefined): readonly Move[] {
  return path.moves.filter((move) => pass === undefined || move.pass === pass);
}

function sentence(phrases: readonly string[]): string {
  return capital(phrases.join(", "));
}
