// The sewing thread in the published shape of plan.json.
import type { Thread } from "../2-model/sewing/types.ts";
import type { Length } from "../units/length.ts";
import type { PlanJson } from "./plan-schema.ts";

/** The thread with its moves in order; `length` puts a length into the published form. */
export function threadJson(thread: Thread, length: (value: Length) => { mm: number; exact: string }): NonNullable<PlanJson["thread"]> {
  return {
    length: length(thread.length),
    sewn: length(thread.sewn),
    net: length(thread.net),
    by_kind: [...thread.byKind].map(([kind, sum]) => ({ kind, length: length(sum) })),
    places: thread.paths.flatMap((path, index) => [...path.places.values()].map((place) => ({
      path: index + 1, id: place.id, name: place.name, kind: place.kind, part: place.part, hole: place.hole,
      along: length(place.along), across: length(place.across), depth: length(place.depth),
    }))),
    needlefuls: thread.needlefuls.map((each) => ({
      n: each.n, path: each.path, first_move: each.first, last_move: each.last, join_at: each.joinAt && { ...each.joinAt }, length: length(each.length),
    })),
    moves: thread.paths.flatMap((path, index) => path.moves.map((move) => ({
      path: index + 1, n: move.n, kind: move.kind, from: { ...move.from }, to: { ...move.to }, pass: path.passes[move.pass - 1]!.name, run: move.run,
      tape: move.kind === "tape" ? move.tape : null,
      edge: move.kind === "edge" ? move.edge : null,
      under: "under" in move ? move.under : null,
      length: length(move.length),
    }))),
  };
}
