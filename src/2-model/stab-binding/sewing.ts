// The way of the thread through a stab binding: found as a trail through the pattern's runs, then written down move by move with its passes.
import type { Definition } from "../../1-definition/types.ts";
import { threadCutTo } from "../../1-definition/thread-keys.ts";
import { addLengths, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { aroundEdge, straightBetween } from "../sewing/lengths.ts";
import { openPath } from "../sewing/path.ts";
import { betweenTheLeaves, halfThrough, threadOf } from "../sewing/thread.ts";
import { findTrail, onwards } from "../sewing/trail.ts";
import type { TrailStep } from "../sewing/trail.ts";
import type { Edge, Place, Thread, ThreadPath } from "../sewing/types.ts";
import type { StabBindingGeometry, StabHole } from "./geometry.ts";

/** The thread of the pattern, and before it one short thread for each pair of the inner binding. */
export function sewStabBinding(definition: Definition<"stab-binding">, geometry: StabBindingGeometry): Thread {
  const { thread } = definition.book;
  const pairs = [geometry.innerHoles.slice(0, 2), geometry.innerHoles.slice(2, 4)].filter((pair) => pair.length === 2);
  return threadOf([...pairs.map((pair) => tieInner(pair, geometry, thread.tail)), sewPattern(geometry, thread.tail)], {
    needleful: thread.needleful, joinEnd: thread["join end"], waste: thread.waste, cutTo: threadCutTo[definition.units.governing], joinAfter: betweenTheLeaves,
  });
}

function placesOf(holes: readonly StabHole[], part: string): readonly Place[] {
  return holes.map(({ id, along, across }): Place => ({ id, name: id, kind: "hole", part, hole: id, along, across, depth: noLength }));
}

/** Down through the one hole, along the back, up through the other, tied with the end that was left. */
function tieInner(pair: readonly StabHole[], { blockThickness }: StabBindingGeometry, tail: Length): ThreadPath {
  const [first, second] = [pair[0]!, pair[1]!];
  const sew = openPath({ places: placesOf(pair, "leaf"), at: { place: first.id, side: "front" }, tail, pass: `inner binding at ${first.id} and ${second.id}` });
  sew.through("back", blockThickness);
  sew.along(second.id, { run: "back" });
  sew.through("front", blockThickness);
  sew.along(first.id, { run: "front" });
  return sew.finish(tail, [{ id: "back", times: 1 }, { id: "front", times: 1 }]);
}

function sewPattern(geometry: StabBindingGeometry, tail: Length): ThreadPath {
  const { holes, runs, startHole, thickness } = geometry;
  const places = placesOf(holes, "leaf");
  const byId = new Map(places.map((place) => [place.id, place]));
  const isMain = new Set(holes.filter(({ kind }) => kind === "main").map(({ id }) => id));
  const trail = findTrail({ runs, start: { place: startHole, side: "front" }, end: startHole, rank: onwards(byId, "tail") });
  if (!trail) throw new Error(`internal error: no thread can sew the pattern ${geometry.pattern}`);
  const sew = openPath({ places, at: { place: startHole, side: "within" }, tail, pass: `pass 1, at hole ${startHole}` });
  sew.through("front", halfThrough(thickness));
  let stop = startHole;
  let passes = 1;
  trail.forEach((step, index) => {
    lay(sew, step, geometry);
    const next = trail[index + 1];
    if (next && isMain.has(step.to.place) && !step.run.edge) {
      stop = step.to.place;
      passes += 1;
      sew.pass(`pass ${passes}, at hole ${stop}`);
    }
    sew.through(next ? next.from.side : "within", next ? thickness : halfThrough(thickness));
  });
  return sew.finish(tail, runs.map(({ id, times }) => ({ id, times })));
}

function lay(sew: ReturnType<typeof openPath>, { run, to }: TrailStep, geometry: StabBindingGeometry): void {
  if (run.edge) sew.around(run.edge, to, wrapLength(run.edge, to.place, geometry), run.id);
  else sew.along(to.place, { run: run.id, length: lineLength(run.ends[0].place, run.ends[1].place, geometry) });
}

function holeOf(id: string, { holes }: StabBindingGeometry): StabHole {
  return holes.find((hole) => hole.id === id)!;
}

function lineLength(from: string, to: string, geometry: StabBindingGeometry): Length {
  const [a, b] = placesOf([holeOf(from, geometry), holeOf(to, geometry)], "leaf");
  return straightBetween(a!, b!);
}

/** From the hole to the edge on one face, over the whole thickness, and back to the hole on the other face. */
function wrapLength(edge: Edge, id: string, geometry: StabBindingGeometry): Length {
  const { along, across } = holeOf(id, geometry);
  const away = edge === "spine" ? across : edge === "head" ? along : subtractLength(geometry.height, along);
  return addLengths(aroundEdge(away, geometry.thickness));
}
