// Labels with a pointer, detail balloons, labels inside an area and the grain arrow, each as something that looks for its place.
import { circle, line, polyline } from "../geometry/path.ts";
import { along, point, polar } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { arrowhead, dot } from "./arrows.ts";
import { firstOf, rerunnable } from "./place.ts";
import type { Placeable } from "./place.ts";
import { area, centredLabel, label, labelType, stroke, typeFor } from "./scene.ts";
import type { PathItem, TextItem } from "./scene.ts";
import { inkOf, measureText } from "./text-metrics.ts";
import type { FontWeight } from "./text-metrics.ts";

/** Words with a line to what they name. */
export interface LeaderSpec {
  readonly name: string;
  /** One line of text, or several set under each other. */
  readonly text: string | readonly string[];
  /** What the label points at. */
  readonly target: Point;
  /** `dot` inside an area, `arrow` at a line, `none` for a bare line. Default dot. */
  readonly end?: "dot" | "arrow" | "none";
  /** Directions tried in this order, in degrees (0 right, 90 up); default all round, first upper right. */
  readonly directions?: readonly number[];
  /** Shortest leader in millimetres; default 7. */
  readonly reach?: number;
  readonly size?: number;
  readonly weight?: FontWeight;
}

const allDirections = [45, 135, 315, 225, 20, 160, 340, 200, 70, 110, 290, 250, 0, 180, 90, 270] as const;

/** A label with a leader and a short level shoulder, at the first free place; leaders grow until one is found. */
export function leaderLabel(spec: LeaderSpec): Placeable {
  return { name: spec.name, candidates: rerunnable(() => leaderCandidates(spec)), lastResort: rerunnable(() => longLeaders(spec)) };
}

/** Every direction at 6 degrees, ever longer: for the one label in ten thousand books that finds no place among the rest. */
function* longLeaders(spec: LeaderSpec): Generator<readonly (PathItem | TextItem)[]> {
  for (let reach = 6; reach <= 120; reach += 3) {
    for (let direction = 0; direction < 360; direction += 6) yield drawLeader(spec, polar(spec.target, reach, direction));
  }
}

/** The same, but where none of the wished directions is free, any direction will do: for labels that must find a place. */
export function leaderAnywhere(spec: LeaderSpec): Placeable {
  const { directions: _wished, ...anyDirection } = spec;
  return firstOf(leaderLabel(spec), leaderLabel({ ...anyDirection, reach: Math.min(spec.reach ?? 7, 7) }));
}

function* leaderCandidates(spec: LeaderSpec): Generator<readonly (PathItem | TextItem)[]> {
  for (let level = 0; level < 24; level += 1) {
    for (const direction of spec.directions ?? allDirections) yield drawLeader(spec, polar(spec.target, (spec.reach ?? 7) + level * 2.5, direction));
  }
}

/** Like `leaderLabel`, but where its directions find no place within `levels` lengths of leader, every direction is tried. */
export function preferredLeader(spec: LeaderSpec & { readonly directions: readonly number[] }, levels = 5): Placeable {
  return { name: spec.name, candidates: rerunnable(() => preferredCandidates(spec, levels)), lastResort: rerunnable(() => longLeaders(spec)) };
}

function* preferredCandidates(spec: LeaderSpec & { readonly directions: readonly number[] }, levels: number): Generator<readonly (PathItem | TextItem)[]> {
  let left = levels * spec.directions.length;
  for (const candidate of leaderCandidates(spec)) {
    if (left === 0) break;
    left -= 1;
    yield candidate;
  }
  yield* leaderCandidates({ ...spec, directions: allDirections });
}

/** A leader label whose shoulder stands exactly at `knee`: for columns of labels beside a drawing. */
export function drawLeader(spec: LeaderSpec, knee: Point): readonly (PathItem | TextItem)[] {
  const lines = typeof spec.text === "string" ? [spec.text] : spec.text;
  const size = typeFor(lines, spec.size);
  const toRight = knee.x >= spec.target.x - 0.01;
  const shoulder = point(knee.x + (toRight ? 1.8 : -1.8), knee.y);
  const textX = shoulder.x + (toRight ? 0.8 : -0.8);
  const ink = inkOf(lines[0]!);
  return [
    stroke(polyline([spec.target, knee, shoulder]), "dimension", spec.name),
    ...endOf(spec, knee),
    ...lines.map((text, index) => label(spec.name, text, point(textX, knee.y + ((ink.above - ink.below) / 2 + index * 1.15) * size), {
      size, anchor: toRight ? "start" as const : "end" as const, ...(spec.weight ? { weight: spec.weight } : {}),
    })),
  ];
}

function endOf(spec: LeaderSpec, knee: Point): readonly PathItem[] {
  if (spec.end === "none") return [];
  if (spec.end === "arrow") return [arrowhead(spec.target, { x: spec.target.x - knee.x, y: spec.target.y - knee.y }, spec.name, 1.8)];
  return [dot(spec.target, spec.name)];
}

/** A letter in a circle with a line to what it names. */
export interface BalloonSpec {
  readonly name: string;
  /** One or two characters: the part's letter in the cut list, or the letter of a detail. */
  readonly letter: string;
  readonly target: Point;
  readonly directions?: readonly number[];
  readonly reach?: number;
}

const balloonRadius = 2.6;

/** A ringed letter with a leader to the part it names. */
export function balloon(spec: BalloonSpec): Placeable {
  return { name: spec.name, candidates: rerunnable(() => balloonCandidates(spec)) };
}

function* balloonCandidates(spec: BalloonSpec): Generator<readonly (PathItem | TextItem)[]> {
  for (let level = 0; level < 24; level += 1) {
    for (const direction of spec.directions ?? allDirections) {
      const centre = polar(spec.target, (spec.reach ?? 8) + balloonRadius + level * 2.5, direction);
      yield [stroke(line(spec.target, along(centre, spec.target, balloonRadius)), "dimension", spec.name), dot(spec.target, spec.name), ...drawBalloon(spec.name, spec.letter, centre)];
    }
  }
}

/** A ringed letter at a fixed place, without leader. */
export function drawBalloon(name: string, letter: string, centre: Point): readonly (PathItem | TextItem)[] {
  return [area(circle(centre, balloonRadius), "plate", "edge", name), centredLabel(name, letter, centre, { weight: 600 })];
}

/** A label without leader, at the first free one of the given centres (inside a part, beside an edge). */
export function areaLabel(name: string, text: string, centres: readonly Point[], options: { readonly size?: number; readonly weight?: FontWeight; readonly angle?: 0 | 90 } = {}): Placeable {
  return { name, candidates: centres.map((centre) => [centredLabel(name, text, centre, options)]) };
}

/** Length of the grain arrow in millimetres. */
const grainLength = 16;

/**
 * The grain arrow: a double-headed arrow along the grain with the word beside it, at the first free one of `centres`.
 * `direction` is `height` when the grain runs up the page, `width` when it runs across.
 */
export function grainArrow(name: string, direction: "height" | "width", centres: readonly Point[], length = grainLength): Placeable {
  return { name, candidates: centres.map((centre) => drawGrainArrow(name, direction, centre, length)) };
}

/** A double arrow with the word grain, along the part's height or its width. */
export function drawGrainArrow(name: string, direction: "height" | "width", centre: Point, length = grainLength): readonly (PathItem | TextItem)[] {
  const half = Math.max(length, measureText("grain", labelType) + 4) / 2;
  const upright = direction === "height";
  const [from, to] = upright ? [point(centre.x, centre.y + half), point(centre.x, centre.y - half)] : [point(centre.x - half, centre.y), point(centre.x + half, centre.y)];
  const forward = point(to.x - from.x, to.y - from.y);
  return [
    stroke(line(from, to), "edge", name),
    arrowhead(to, forward, name, 2.6),
    arrowhead(from, point(-forward.x, -forward.y), name, 2.6),
    label(name, "grain", upright ? point(centre.x - 1.1, centre.y) : point(centre.x, centre.y - 1.1), { anchor: "middle", angle: upright ? 90 : 0 }),
  ];
}

/** Centres on a grid inside a box, the middle first: places to try for `areaLabel` and `grainArrow`. */
export function gridCentres(box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number }, columns = 9, rows = 9): readonly Point[] {
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const centres = Array.from({ length: columns * rows }, (_, index) => point(
    box.left + ((box.right - box.left) * ((index % columns) + 1)) / (columns + 1),
    box.top + ((box.bottom - box.top) * (Math.floor(index / columns) + 1)) / (rows + 1),
  ));
  const reach = (at: Point): number => Math.hypot(at.x - middle.x, at.y - middle.y);
  // Equal distances keep the grid's order, so the result never depends on the sort.
  return centres.map((at, index) => ({ at, index })).sort((a, b) => reach(a.at) - reach(b.at) || a.index - b.index).map(({ at }) => at);
}
