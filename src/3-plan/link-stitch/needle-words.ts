// What the needle of a link stitch does in one move, in words for the table of a pass.
import type { Move, ThreadPath } from "../../2-model/sewing/types.ts";
import { wordsForMove } from "../sewing/move-words.ts";

/** What is caught is called by its name here: the thread over the board, or the stitch between the sections. */
export function linkStitchWords(move: Move, path: ThreadPath): string {
  const caught = move.kind === "link" && move.under !== null ? path.moves[move.under - 1] : undefined;
  const isOwn = caught?.kind === "edge" && caught.pass === move.pass;
  const climbs = move.from.place !== move.to.place;
  if (isOwn) return climbs ? "once round the thread on the edge and up to the next section" : "once round the thread on the edge";
  if (move.kind === "link" || move.kind === "kettle") return climbs ? "under the stitch below and up to the next section" : "under the stitch below";
  const to = path.places.get(move.to.place)!;
  if (move.kind === "edge") return to.part === "boards" ? `round the board’s edge to ${to.name}` : "back under the board".replace("under", beside(move, path));
  if (move.kind === "hole") return move.to.side === "inside" ? (to.part === "boards" ? "in there" : "in") : "out";
  if (move.kind === "run") return "along the inside";
  return wordsForMove(move, path);
}

/** Between board and section: over the front board, under the back board, as they lie while they are sewn. */
function beside(move: Move, path: ThreadPath): string {
  return path.places.get(move.from.place)!.hole?.startsWith("front") ? "over" : "under";
}
