// Writes down the way of a thread move by move; each move starts where the one before ended.
import type { Length } from "../../units/length.ts";
import { straightBetween } from "./lengths.ts";
import type { Edge, Move, Pass, Place, Run, Side, Spot, ThreadPath } from "./types.ts";

/** A path while it is written. Every method adds one move from where the thread is, and gives back its number. */
export interface OpenPath {
  /** Where the thread is. */
  readonly here: Spot;
  /** Number of the last move; 0 before the first. */
  readonly last: number;
  /** Begins the next pass; the first one is begun when the path is opened. */
  pass(name: string): void;
  /** Through the hole to the given side: `inside` to `outside`, `front` to `back`; to or from `within` for a hidden end. */
  through(side: Side, length: Length): number;
  /** Along the same side to a place; `length` is the straight distance when it is left out. */
  along(place: string, options?: { readonly run?: string; readonly length?: Length }): number;
  /** Along the same side to a place, over a tape or past it. */
  pastTape(tape: string, place: string, length: Length, run?: string): number;
  /** Around an edge to a spot, which may be the other side of the same hole or a hole of another part. */
  around(edge: Edge, to: Spot, length: Length, run?: string): number;
  /** Under the earlier move, and back to the same spot or on to another place on the same side. */
  link(under: number, length: Length, options?: { readonly to?: string; readonly run?: string }): number;
  /** Under the earlier move and up to a hole of the next section, on the same side; `under` is null under several at once. */
  kettle(under: number | null, place: string, length: Length): number;
  /** A knot where the thread is; `under` is the earlier move it is tied round, null when it is tied with the tail. */
  knot(length: Length, under?: number | null): number;
  /** Ends the path here. */
  finish(tail: Length, wanted: readonly Run[]): ThreadPath;
}

/**
 * Opens a path at a spot, with a tail of thread left hanging there.
 * @throws Error on a place that is not listed, a hole move where there is no hole or to the same side, or a link to a later move: mistakes of ours.
 */
export function openPath({ places, at, tail, pass }: { readonly places: readonly Place[]; readonly at: Spot; readonly tail: Length; readonly pass: string }): OpenPath {
  const byId = new Map(places.map((place) => [place.id, place]));
  if (byId.size !== places.length) throw new Error("internal error: two places of a thread path share an id");
  const passes: Pass[] = [{ n: 1, name: pass }];
  const moves: Move[] = [];
  let here = at;

  const placeOf = (id: string): Place => {
    const place = byId.get(id);
    if (!place) throw new Error(`internal error: no place of the thread path is called "${id}"`);
    return place;
  };
  const earlier = (under: number | null): number | null => {
    if (under !== null && (under < 1 || under > moves.length)) throw new Error(`internal error: move ${moves.length + 1} goes under move ${under}, which is not sewn yet`);
    return under;
  };
  const add = (to: Spot, length: Length, run: string | undefined, kind: Kind): number => {
    placeOf(to.place);
    moves.push({ n: moves.length + 1, from: here, to, pass: passes.length, run: run ?? null, length, ...kind });
    here = to;
    return moves.length;
  };
  placeOf(at.place);

  return {
    get here() { return here; },
    get last() { return moves.length; },
    pass(name) {
      passes.push({ n: passes.length + 1, name });
    },
    through(side, length) {
      if (placeOf(here.place).kind !== "hole") throw new Error(`internal error: "${here.place}" is no hole to go through`);
      if (side === here.side) throw new Error(`internal error: going through hole "${here.place}" does not change the side`);
      return add({ place: here.place, side }, length, undefined, { kind: "hole" });
    },
    along(place, { run, length } = {}) {
      return add({ place, side: here.side }, length ?? straightBetween(placeOf(here.place), placeOf(place)), run, { kind: "run" });
    },
    pastTape: (tape, place, length, run) => add({ place, side: here.side }, length, run, { kind: "tape", tape: placeOf(tape).id }),
    around: (edge, to, length, run) => add(to, length, run, { kind: "edge", edge }),
    link: (under, length, { to, run } = {}) => add({ place: to ?? here.place, side: here.side }, length, run, { kind: "link", under: earlier(under) }),
    kettle: (under, place, length) => add({ place, side: here.side }, length, undefined, { kind: "kettle", under: earlier(under) }),
    knot: (length, under = null) => add(here, length, undefined, { kind: "knot", under: earlier(under) }),
    finish: (endTail, wanted) => ({ places: byId, passes, start: { at, length: tail }, moves, end: { at: here, length: endTail }, wanted }),
  };
}

/** `Omit` on a union forgets what belongs to which kind, so what the kinds add is spelt out. */
type Kind =
  | { readonly kind: "hole" | "run" }
  | { readonly kind: "tape"; readonly tape: string }
  | { readonly kind: "edge"; readonly edge: Edge }
  | { readonly kind: "link" | "kettle" | "knot"; readonly under: number | null };
