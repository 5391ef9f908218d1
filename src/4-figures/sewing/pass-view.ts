// One pass of the needle on a face of the work: earlier passes thin below, this one heavy, holes with their names, where it begins and ends.
import { circle, pathPoints } from "../../geometry/path.ts";
import { between, point, polar } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { Move, Place } from "../../2-model/sewing/types.ts";
import { drawLeader } from "../leaders.ts";
import { placeLabels, rerunnable } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, centredLabel, smallestType, stroke } from "../scene.ts";
import type { PathItem, SceneItem, TextItem } from "../scene.ts";
import { moveLines } from "./thread-lines.ts";
import type { ThreadFace } from "./thread-lines.ts";

/** Radius of a hole on paper in millimetres, and of the ring where a pass ends. */
export const holeRadius = 0.7;
const ringRadius = 1.5;

/** What one small drawing shows. */
export interface PassView extends ThreadFace {
  /** The pass that is heavy; 0 draws all passes thin, such as a finished sewing. */
  readonly pass: number;
  /** Prefix of the labels' names, where several passes stand in one figure. */
  readonly name?: string;
  /** Directions tried first for the names of holes, in degrees (0 right, 90 up). */
  readonly nameDirections?: readonly number[];
}

/** The drawing without its labels, and the labels to be placed. Draw the work itself (outline, tapes) before `items`. */
export interface PassDrawing {
  readonly items: readonly SceneItem[];
  readonly labels: readonly Placeable[];
  /** The numbers of the stitches in the order of sewing, for `placeOrder`; none in a pass of one stitch. */
  readonly order: readonly Placeable[];
}

/** Draws the thread of one pass over that of the passes before. */
export function drawPass(view: PassView): PassDrawing {
  const { path, pass } = view;
  const before = path.moves.filter((move) => pass === 0 || move.pass < pass);
  const now = path.moves.filter((move) => move.pass === pass);
  const holes = [...path.places.values()].filter(({ kind }) => kind === "hole");
  const stitches = now.filter((move) => moveLines(view, move, false).length > 0);
  const first = now[0];
  const last = now.at(-1);
  const at = (id: string): Point => view.at(path.places.get(id)!);
  return {
    items: [
      ...linesOnce(view, before, false), ...linesOnce(view, now, true),
      ...holes.map((hole) => area(circle(view.at(hole), holeRadius), "plate", "edge")),
      ...(first ? [area(circle(at(first.from.place), holeRadius + 0.35), "arrow", "none")] : []),
      ...(last ? [stroke(circle(at(last.to.place), ringRadius), "outline")] : []),
    ],
    labels: holes.map((hole) => holeName(view, hole)),
    order: stitches.length < 2 ? [] : stitches.map((move, index) => orderMark(view, move, index + 1)),
  };
}

/** The stitch's number in the pass, ringed, beside the middle of its line. */
function orderMark(view: PassView, move: Move, number: number): Placeable {
  const name = `${view.name ?? "pass"} stitch ${number}`;
  const lines = moveLines(view, move, false).flatMap((item) => pathPoints(item.path)[0] ?? []);
  const [from, to] = [lines[0]!, lines.at(-1)!];
  const spots = [0.3, 0.72, 0.5, 0.2, 0.85].map((share) => between(from, to, share));
  const candidates = [2.7, 3.4, 4.2].flatMap((away) => [90, 0, 180, 270, 45, 135, 315, 225].flatMap((direction) => spots.map((at) => polar(at, away, direction))));
  return { name, candidates: rerunnable(() => candidates.map((centre) => [area(circle(centre, 1.65), "plate", "edge", name), centredLabel(name, `${number}`, centre, { size: smallestType })]).values()) };
}

/** Adds the stitches' numbers where all of them find a place; where one does not, none is drawn, and the words alone give the order. */
export function placeOrder(items: readonly SceneItem[], order: readonly Placeable[]): readonly SceneItem[] {
  let first: readonly string[] = [];
  for (let round = 0; round < 6; round += 1) {
    const placed = placeLabels(items, order, { clearance: 0.2, first });
    if (placed.unplaced.length === 0) return placed.items;
    first = [...new Set([...placed.unplaced, ...first])];
  }
  return items;
}

/** Thread that lies where other thread lies already is drawn once. */
function linesOnce(view: PassView, moves: readonly Move[], isNew: boolean): readonly PathItem[] {
  const seen = new Set<string>();
  return moves.flatMap((move) => {
    const key = move.run ?? `${move.n}`;
    if (!isNew && seen.has(key)) return [];
    seen.add(key);
    return moveLines(view, move, isNew);
  });
}

/** The name close to its hole where there is room, else with a pointer. */
function holeName(view: PassView, hole: Place): Placeable {
  const name = `${view.name ?? "pass"} hole ${hole.id}`;
  const target = view.at(hole);
  const directions = [...(view.nameDirections ?? []), 90, 60, 120, 45, 135, 30, 150, 0, 180, 270, 300, 240, 315, 225];
  return { name, candidates: rerunnable(() => nameCandidates(name, hole.name, target, directions)) };
}

function* nameCandidates(name: string, text: string, target: Point, directions: readonly number[]): Generator<readonly (PathItem | TextItem)[]> {
  for (const reach of [3, 3.6, 4.3]) {
    for (const direction of directions) yield [centredLabel(name, text, polar(target, reach, direction), { size: smallestType })];
  }
  for (let reach = 5; reach < 40; reach += 2) {
    for (const direction of directions) yield drawLeader({ name, text, target: point(target.x, target.y), end: "none", size: smallestType }, polar(target, reach, direction));
  }
}

/** What the marks of a pass mean: for captions. */
export const passCaption = "Heavy: the thread of this pass, in the direction of the arrows; thin: sewn before; dashed: on the far side. A dot marks where the pass begins, a ring where it ends.";

/** What the numbers of `placeOrder` mean, for captions of drawings that have them. */
export const orderCaption = "Ringed numbers give the order of the stitches.";
