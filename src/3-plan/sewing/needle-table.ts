// The way of the needle as a table: one row for each station that a pass comes to, read off the moves of the thread.
import type { Move, ThreadPath } from "../../2-model/sewing/types.ts";
import type { StepTable } from "../types.ts";

/** One pass of one thread, station by station; `words` says what the needle does in a move, in the binding's own words. */
export function needleTable(path: ThreadPath, pass: number, words: (move: Move, path: ThreadPath) => string): StepTable {
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
