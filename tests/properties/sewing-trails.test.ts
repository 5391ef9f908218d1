// Laws of the trail search over random patterns; whether a trail exists is compared with two graph libraries.
import { createRequire } from "node:module";
import fc from "fast-check";
import { connectedComponents } from "graphology-components";
import { MultiGraph } from "graphology";
import { expect, it } from "vitest";
import { faceRun, findTrail, wrapRun } from "../../src/2-model/sewing/trail.ts";
import type { PatternRun, TrailStep } from "../../src/2-model/sewing/trail.ts";
import type { Side } from "../../src/2-model/sewing/types.ts";

/** The package has no types of its own: edges in, the vertices of a trail out, an error where there is none. */
const eulerianTrail = createRequire(import.meta.url)("eulerian-trail") as (options: { readonly edges: readonly (readonly [string, string])[] }) => readonly string[];

const names = ["a", "b", "c", "d", "e"];
const aHole = fc.constantFrom(...names);
const aSide = fc.constantFrom<Side>("front", "back");

/** Any runs at all: most have no trail. */
const anyRuns: fc.Arbitrary<readonly PatternRun[]> = fc.array(fc.oneof(
  fc.tuple(aSide, aHole, aHole, fc.integer({ min: 1, max: 2 })).filter(([, from, to]) => from !== to).map(([side, from, to, times]) => faceRun(side, from, to, times)),
  fc.tuple(aHole, fc.integer({ min: 1, max: 2 })).map(([hole, times]) => wrapRun("spine", hole, times)),
), { minLength: 1, maxLength: 9 }).map((runs) => runs.map((run, index) => ({ ...run, id: `${index}` })));

/** The runs of a walk that changes its side at every hole: there is a trail, though the search may find another. */
const walkedRuns: fc.Arbitrary<{ readonly runs: readonly PatternRun[]; readonly end: string }> = fc.array(fc.option(aHole, { nil: null }), { minLength: 1, maxLength: 14 }).map((stops) => {
  let [place, side] = ["a", "front" as Side];
  const runs = stops.map((stop, index): PatternRun => {
    const run = stop === null || stop === place ? wrapRun("spine", place) : faceRun(side, place, stop);
    if (run.edge === null) [place, side] = [stop!, side === "front" ? "back" : "front"];
    return { ...run, id: `${index}` };
  });
  return { runs, end: place };
});

const start = { place: "a", side: "front" as Side };
const asGiven = { rank: () => 0 };

function expectTrail(trail: readonly TrailStep[], runs: readonly PatternRun[], end: string): void {
  const sewn = (run: PatternRun): number => trail.filter((step) => step.run === run).length;
  for (const run of runs) expect(sewn(run)).toBe(run.times);
  expect(trail).toHaveLength(runs.reduce((sum, { times }) => sum + times, 0));
  expect(trail[0]!.from).toEqual(start);
  trail.forEach((step, index) => {
    const next = trail[index + 1];
    if (!next) return;
    expect(next.from.place).toBe(step.to.place);
    expect(next.from.side).not.toBe(step.to.side);
  });
  expect(trail.at(-1)!.to.place).toBe(end);
}

/** Whether the runs, as a graph of holes, can be drawn in one line from the first hole to the last: asked of a library. */
function oneLine(runs: readonly PatternRun[], end: string): boolean {
  const edges = runs.flatMap(({ ends, times }) => Array.from({ length: times }, () => [ends[0].place, ends[1].place] as const));
  // One edge more, from the end back to the start, by way of a vertex of its own, makes it a closed line that must go through both.
  try {
    return eulerianTrail({ edges: [...edges, [end, "beyond"], ["beyond", start.place]] }).length === edges.length + 3
      && allInOnePiece(runs, end);
  } catch {
    return false;
  }
}

function allInOnePiece(runs: readonly PatternRun[], end: string): boolean {
  const graph = new MultiGraph();
  for (const place of [start.place, end]) graph.mergeNode(place);
  for (const { ends } of runs) graph.mergeEdge(ends[0].place, ends[1].place);
  for (const { ends } of runs) for (const { place } of ends) graph.mergeNode(place);
  if (start.place !== end) graph.addEdge(start.place, end);
  return connectedComponents(graph).length === 1;
}

/** Whether every hole is entered on each side as often as it is left on the other, counted from the pattern. */
function sidesAgree(runs: readonly PatternRun[], end: string): boolean {
  const front = (place: string): number => runs.reduce((sum, { ends, times }) => sum + times * ends.filter((spot) => spot.place === place && spot.side === "front").length, 0);
  const back = (place: string): number => runs.reduce((sum, { ends, times }) => sum + times * ends.filter((spot) => spot.place === place && spot.side === "back").length, 0);
  return (["front", "back"] as const).some((endSide) => names.every((place) => {
    const ownFront = (place === start.place ? 1 : 0) + (place === end && endSide === "front" ? 1 : 0);
    const ownBack = place === end && endSide === "back" ? 1 : 0;
    return front(place) - ownFront === back(place) - ownBack;
  }));
}

it("finds a trail exactly where the libraries find one line and the sides of every hole agree", () => {
  let found = 0;
  let none = 0;
  fc.assert(fc.property(fc.oneof(anyRuns, walkedRuns.map(({ runs }) => runs)), aHole, (runs, end) => {
    const trail = findTrail({ runs, start, end, ...asGiven });
    expect(trail !== null).toBe(oneLine(runs, end) && sidesAgree(runs, end));
    if (trail === null) return void (none += 1);
    found += 1;
    expectTrail(trail, runs, end);
  }), { numRuns: 600 });
  expect(found).toBeGreaterThan(20);
  expect(none).toBeGreaterThan(100);
});

it("finds a trail through the runs of every walk that changes its side at each hole, whatever is preferred", () => {
  fc.assert(fc.property(walkedRuns, fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 20, maxLength: 20 }), ({ runs, end }, ranks) => {
    const trail = findTrail({ runs, start, end, rank: (next, before) => ranks[(Number(next.run.id) * 3 + (before ? Number(before.run.id) : 0)) % ranks.length]! });
    expect(trail).not.toBeNull();
    expectTrail(trail!, runs, end);
  }), { numRuns: 300 });
});
