// The way of the needle as a table: one row for each station that a pass comes to, read off the moves of the thread.
import type { Move, ThreadPath } from "../../2-model/sewing/types.ts";
import { wordsForMove } from "../sewing/move-words.ts";
import type { StepTable } from "../types.ts";

/** One pass of one thread, station by station. */
export function needleTable(path: ThreadPath, pass: number): StepTable {
  const rows: { readonly station: string; readonly moves: string[] }[] = [];
  let station = "";
  for (const move of path.moves.filter((each) => each.pass === pass)) {
    const at = stationOf(move, path);
    if (at !== station) rows.push({ station: at, moves: [] });
    station = at;
    rows.at(-1)!.moves.push(words(move, path));
  }
  return {
    caption: `The needle’s way, ${path.passes[pass - 1]!.name}`,
    columns: ["station", "what the needle does"],
    rows: rows.map(({ station: name, moves }) => [name, moves.join(", ")]),
  };
}

/** Where a move ends up; a climb to the next section belongs to the station that it leaves. */
function stationOf(move: Move, path: ThreadPath): string {
  return path.places.get(move.to.place)!.name.replace("hole ", "");
}

/** What is caught is called by its name here: the thread over the board, or the stitch between the sections. */
function words(move: Move, path: ThreadPath): string {
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
