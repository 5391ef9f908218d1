// What must hold for every model of every binding; a breach is a mistake of ours.
import { addLengths, isLess, noLength, subtractLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { breachesOf } from "./sewing/laws.ts";
import type { Model, Part } from "./types.ts";

/** Throws when a model contradicts itself: sizes not above zero, marks or holes outside their part, names used twice, a thread that breaks a law. */
export function validateModel(model: Model): void {
  const parts = new Map<string, Part>();
  for (const part of model.parts) {
    demand(!parts.has(part.id), `part "${part.id}" is listed twice`);
    parts.set(part.id, part);
    demand(part.count >= 1, `part "${part.id}" has count ${part.count}`);
    for (const side of ["height", "width", "thickness"] as const) demand(isLess(noLength, part[side]), `${side} of part "${part.id}" is not above zero`);
  }
  let before: { readonly part: string; readonly at: Length } | null = null;
  for (const score of model.scores) {
    const part = partOf(parts, score.part);
    demand(isLess(noLength, score.at) && isLess(score.at, part.width), `score "${score.name}" lies outside its part`);
    demand(before === null || before.part !== score.part || isLess(before.at, score.at), `score "${score.name}" is out of order`);
    before = score;
  }
  const holes = new Set<string>();
  for (const hole of model.holes) {
    const part = partOf(parts, hole.part);
    demand(!holes.has(`${hole.part}/${hole.id}`), `hole "${hole.id}" is placed twice`);
    holes.add(`${hole.part}/${hole.id}`);
    demand(inside(hole.along, part.height) && inside(hole.across, part.width), `hole "${hole.id}" lies outside its part`);
  }
  for (const path of model.thread?.paths ?? []) {
    const breach = breachesOf(path, addLengths(...path.moves.map(({ length }) => length)))[0];
    demand(breach === undefined, `the thread: ${breach}`);
    for (const place of path.places.values()) demand(place.hole === null || holes.has(`${place.part}/${place.hole}`), `place "${place.id}" of the thread has no hole`);
  }
  for (const side of ["height", "width", "thickness"] as const) demand(isLess(noLength, model.finished[side]), `finished ${side} is not above zero`);
}

function inside(at: Length, side: Length): boolean {
  return isLess(noLength, at) && isLess(noLength, subtractLength(side, at));
}

function partOf(parts: ReadonlyMap<string, Part>, id: string): Part {
  const part = parts.get(id);
  if (!part) throw new Error(`internal error: no part is called "${id}"`);
  return part;
}

function demand(holds: boolean, breach: string): void {
  if (!holds) throw new Error(`internal error: ${breach}`);
}
