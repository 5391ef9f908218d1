// What the needle of a long-stitch binding does in one move, in words for the table of a pass.
import type { Move, ThreadPath } from "../../2-model/sewing/types.ts";

/** In at an end, along and out, along the outside and in; at the ends up, under, or tied. */
export function longStitchWords(move: Move, path: ThreadPath): string {
  const section = (id: string): string => id.slice("section-".length).split("/")[0]!;
  const climbs = section(move.from.place) !== section(move.to.place);
  switch (move.kind) {
    case "hole": return move.to.side === "inside" ? "in" : "out";
    case "run":
      if (!climbs) return move.to.side === "inside" ? "along the inside" : "along the outside, a long stitch";
      return Number(section(move.to.place)) > Number(section(move.from.place)) ? `up to section ${section(move.to.place)}` : `down to section ${section(move.to.place)}`;
    case "link": return "under the stitch below and back";
    case "kettle": return `under the stitch below and up to section ${section(move.to.place)}`;
    case "knot": return move.n === path.moves.length ? "tied to the inside stitch" : "tied to the thread’s own end";
    case "tape":
    case "edge": throw new Error(`internal error: a ${move.kind} in a book without tapes and boards`);
  }
}
