// What must hold of the way of any thread; each law gives back its breaches in words, none when it is kept.
import { addLengths, isLess, noLength, sameLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Move, Spot, ThreadPath } from "./types.ts";

/** The thread is in one piece: each move starts where the one before ended, the first and last at the tails; numbers and passes run on. */
export function breaksInThread({ start, moves, end, passes, places }: ThreadPath): readonly string[] {
  const breaches: string[] = [];
  let at = start.at;
  let pass = 1;
  moves.forEach((move, index) => {
    if (move.n !== index + 1) breaches.push(`move ${index + 1} is numbered ${move.n}`);
    if (!sameSpot(move.from, at)) breaches.push(`move ${move.n} starts at ${spotText(move.from)}, but the thread is at ${spotText(at)}`);
    if (move.pass !== pass && move.pass !== pass + 1) breaches.push(`move ${move.n} of pass ${move.pass} follows pass ${pass}`);
    for (const spot of [move.from, move.to]) if (!places.has(spot.place)) breaches.push(`move ${move.n} goes to ${spot.place}, which is no place`);
    pass = move.pass;
    at = move.to;
  });
  if (!sameSpot(at, end.at)) breaches.push(`the tail hangs at ${spotText(end.at)}, but the thread ends at ${spotText(at)}`);
  if (pass !== passes.length) breaches.push(`${passes.length} passes are named, ${pass} are sewn`);
  return breaches;
}

/**
 * The thread changes its side at every hole and nowhere else but around an edge: a hole move stays at its hole and changes the side; a run,
 * a tape, a link, a kettle or a knot keeps the side; what is laid down to a hole is followed by going through it, unless the thread first
 * links, climbs or ties there; and no hole is gone through twice without anything between.
 */
export function sidesNotChanged({ moves, places }: ThreadPath): readonly string[] {
  return moves.flatMap((move, index) => {
    const next = moves[index + 1];
    const breaches: string[] = [];
    if (move.kind === "hole") {
      if (places.get(move.from.place)?.kind !== "hole") breaches.push(`move ${move.n} goes through ${move.from.place}, which is no hole`);
      if (move.from.place !== move.to.place || move.from.side === move.to.side) breaches.push(`move ${move.n} goes through a hole from ${spotText(move.from)} to ${spotText(move.to)}`);
      if (next?.kind === "hole") breaches.push(`moves ${move.n} and ${next.n} go through hole ${move.from.place} and straight back`);
    } else {
      if (move.kind !== "edge" && move.from.side !== move.to.side) breaches.push(`move ${move.n} changes from ${move.from.side} to ${move.to.side} without a hole`);
      if (staysOnTop(move, next) && places.get(move.to.place)?.kind === "hole") breaches.push(`moves ${move.n} and ${next!.n} pass hole ${move.to.place} without going through it`);
    }
    return breaches;
  });
}

/** Every wanted run is covered as often as asked, and the thread lies nowhere else. */
export function runsNotCovered({ moves, wanted }: ThreadPath): readonly string[] {
  const sewn = new Map<string, number>();
  for (const { run } of moves) if (run !== null) sewn.set(run, (sewn.get(run) ?? 0) + 1);
  const asked = new Map(wanted.map(({ id, times }) => [id, times]));
  const unasked = moves.filter(({ kind, run }) => run === null && (kind === "run" || kind === "tape" || kind === "edge"));
  return [
    ...[...asked].filter(([id, times]) => (sewn.get(id) ?? 0) !== times).map(([id, times]) => `${id} is sewn ${sewn.get(id) ?? 0} times in place of ${times}`),
    ...[...sewn.keys()].filter((id) => !asked.has(id)).map((id) => `${id} is sewn, but not asked for`),
    ...unasked.map(({ n, kind }) => `move ${n} (${kind}) covers no wanted run`),
  ];
}

/** All lengths are above nothing, and the whole given is the sum of the moves. */
export function lengthsThatDoNotAdd({ moves }: ThreadPath, sewn: Length): readonly string[] {
  const total = addLengths(...moves.map(({ length }) => length));
  return [
    ...moves.filter(({ length }) => !isLess(noLength, length)).map(({ n }) => `move ${n} has no length`),
    ...(sameLength(total, sewn) ? [] : ["the sewn length is not the sum of the moves"]),
  ];
}

/** All breaches of one path whose moves are said to add up to `sewn`: empty for every path that may be printed. */
export function breachesOf(path: ThreadPath, sewn: Length): readonly string[] {
  return [...breaksInThread(path), ...sidesNotChanged(path), ...runsNotCovered(path), ...lengthsThatDoNotAdd(path, sewn)];
}

function staysOnTop(move: Move, next: Move | undefined): boolean {
  const laid = ["run", "tape", "edge"];
  return next !== undefined && laid.includes(move.kind) && laid.includes(next.kind);
}

function sameSpot(a: Spot, b: Spot): boolean {
  return a.place === b.place && a.side === b.side;
}

function spotText({ place, side }: Spot): string {
  return `${place} ${side}`;
}
