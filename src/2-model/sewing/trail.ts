// Finds the way of one thread through a pattern given as data: an Euler trail that changes its side at every hole.
import type { Edge, Place, Side, Spot } from "./types.ts";

/**
 * A run of a pattern as an edge of its graph: it ends at two spots, a hole and a side of it each. A line along a face ends on the same side of
 * two holes; a wrap around an edge ends on both sides of one hole. `times` is how often the thread must lie there.
 */
export interface PatternRun {
  readonly id: string;
  readonly ends: readonly [Spot, Spot];
  /** The edge that it goes around; null along a face. */
  readonly edge: Edge | null;
  readonly times: number;
}

/** One run of a trail in the direction in which it is sewn. */
export interface TrailStep {
  readonly run: PatternRun;
  readonly from: Spot;
  readonly to: Spot;
}

/** A line along one face, from hole to hole. */
export function faceRun(side: Side, from: string, to: string, times = 1): PatternRun {
  return { id: `${side} ${from}-${to}`, ends: [{ place: from, side }, { place: to, side }], edge: null, times };
}

/** A wrap around an edge, from one face of a hole to the other face of the same hole. */
export function wrapRun(edge: Edge, hole: string, times = 1): PatternRun {
  return { id: `${edge} ${hole}`, ends: [{ place: hole, side: "front" }, { place: hole, side: "back" }], edge, times };
}

/** What is asked of a trail. */
export interface TrailWish {
  readonly runs: readonly PatternRun[];
  /** The hole that the thread comes out of first, from between the leaves, and the side on which it does. */
  readonly start: Spot;
  /** The hole in which it ends, between the leaves. */
  readonly end: string;
  /** Smaller is taken first where several runs could follow; runs of equal rank in the order given. */
  rank(next: TrailStep, before: TrailStep | null): number;
}

/**
 * The trail, or null when there is none. It starts at `start`, ends in hole `end`, lies on each run as often as asked, and goes through the
 * hole after each run: it arrives on one side and leaves on the other.
 *
 * Why taking one run after the other never leads into a dead end: going through a hole uses up one end on each of its sides. So a trail needs
 * as many ends on the one side of every hole as on the other, but for the first end of the trail and its last; and its runs must hang together.
 * With two sides these conditions are enough (A. Kotzig, "Moves without forbidden transitions in a graph", 1968: from memory): two closed ways
 * that meet in a hole can be joined there by exchanging their ends on the same side. The first condition stays true from run to run by itself,
 * so only the second has to be looked at before a run is taken.
 */
export function findTrail({ runs, start, end, rank }: TrailWish): readonly TrailStep[] | null {
  const left = new Map(runs.map((run) => [run, run.times]));
  const isBalanced = ([...new Set(runs.flatMap((run) => run.ends.map(({ side }) => side)))] as readonly Side[])
    .some((endSide) => sidesBalance(runs, start, { place: end, side: endSide }));
  if (!isBalanced || !hangsTogether(left, start.place)) return null;

  const trail: TrailStep[] = [];
  let here: Spot = start;
  for (let count = runs.reduce((sum, { times }) => sum + times, 0); count > 0; count -= 1) {
    const before = trail.at(-1) ?? null;
    const next = stepsFrom(here, left)
      .map((step, index) => ({ step, index, rank: rank(step, before) }))
      .sort((a, b) => a.rank - b.rank || a.index - b.index)
      .find(({ step }) => hangsTogether(without(left, step.run), step.to.place));
    if (!next) return null;
    left.set(next.step.run, left.get(next.step.run)! - 1);
    trail.push(next.step);
    here = { place: next.step.to.place, side: otherSide(next.step.to.side, runs) };
  }
  return trail;
}

/**
 * A rank by which a binder sews: around the edges of a hole before going on, the spine before head and tail; then onwards in the same
 * direction along the spine, so that a pass is not broken off; the nearest place first.
 */
export function onwards(places: ReadonlyMap<string, Place>, first: "head" | "tail"): TrailWish["rank"] {
  const order = [...places.values()].sort((a, b) => Math.sign(Number(a.along.n * b.along.d - b.along.n * a.along.d))).map(({ id }) => id);
  const at = (spot: Spot): number => order.indexOf(spot.place);
  let heading = first === "tail" ? 1 : -1;
  return (next, before) => {
    if (next.run.edge) return next.run.edge === "spine" ? 0 : 1;
    if (before && !before.run.edge) heading = Math.sign(at(before.to) - at(before.from)) || heading;
    const stride = at(next.to) - at(next.from);
    return Math.sign(stride) === heading ? 10 + Math.abs(stride) : 1000 + Math.abs(stride);
  };
}

function stepsFrom(here: Spot, left: ReadonlyMap<PatternRun, number>): readonly TrailStep[] {
  return [...left].flatMap(([run, times]) => {
    if (times === 0) return [];
    const [a, b] = run.ends;
    if (isAt(a, here)) return [{ run, from: a, to: b }];
    return isAt(b, here) ? [{ run, from: b, to: a }] : [];
  });
}

/** Whether every hole has as many ends on its one side as on the other, the trail's own first and last end left out. */
function sidesBalance(runs: readonly PatternRun[], start: Spot, end: Spot): boolean {
  const surplus = new Map<string, number>();
  const count = ({ place, side }: Spot, by: number): void => {
    surplus.set(place, (surplus.get(place) ?? 0) + (side === start.side ? by : -by));
  };
  for (const run of runs) for (const spot of run.ends) count(spot, run.times);
  count(start, -1);
  count(end, -1);
  return [...surplus.values()].every((each) => each === 0);
}

/** Whether all runs that are left can be reached from the hole. */
function hangsTogether(left: ReadonlyMap<PatternRun, number>, from: string): boolean {
  const rest = new Set([...left].filter(([, times]) => times > 0).map(([run]) => run));
  const reached = new Set([from]);
  for (let grows = true; grows;) {
    grows = false;
    for (const run of rest) {
      if (!run.ends.some(({ place }) => reached.has(place))) continue;
      for (const { place } of run.ends) reached.add(place);
      rest.delete(run);
      grows = true;
    }
  }
  return rest.size === 0;
}

function without(left: ReadonlyMap<PatternRun, number>, run: PatternRun): ReadonlyMap<PatternRun, number> {
  return new Map([...left, [run, left.get(run)! - 1]]);
}

function isAt(a: Spot, b: Spot): boolean {
  return a.place === b.place && a.side === b.side;
}

function otherSide(side: Side, runs: readonly PatternRun[]): Side {
  for (const run of runs) for (const spot of run.ends) if (spot.side !== side) return spot.side;
  return side;
}
