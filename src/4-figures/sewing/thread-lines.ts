// Thread as lines on paper: this pass heavy, earlier passes thin, the far side dashed and set a little aside, arrows in the sewing direction.
import { curve, polygon, polyline } from "../../geometry/path.ts";
import { addPoints, between, distance, midpoint, point, quarterLeft, scalePoint, subtractPoints, unitVector } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { Move, Place, Side, ThreadPath } from "../../2-model/sewing/types.ts";
import { arrowhead } from "../arrows.ts";
import { area, stroke } from "../scene.ts";
import type { PathItem } from "../scene.ts";
import type { LineKind } from "../types.ts";

/** A face of the work as it lies before the reader. */
export interface ThreadFace {
  readonly path: ThreadPath;
  /** Where a place lies on paper. */
  at(place: Place): Point;
  /** The side that is turned to the reader: thread there is drawn solid, elsewhere dashed. */
  readonly facing: Side;
  /** Where thread crosses the edge that a move goes around. */
  edgeOf(move: Move & { readonly kind: "edge" }, at: Point): Point;
  /** How far thread on the far side is set aside, so that both sides of one line are seen; default 1.4 mm to the right and below. */
  readonly aside?: Point;
  /** Whether this pass's move bears arrows where it is long enough; all do when left out. */
  hasArrow?(move: Move): boolean;
  /** What a link or a kettle catches, where it is not the middle of the move it goes under. */
  catchOf?(move: Move): Point | null;
}

/** Lines shorter than this bear no arrowhead. */
const shortestWithArrow = 3.2;

/** The lines of one move; `isNew` draws it heavy and with an arrow. */
export function moveLines(face: ThreadFace, move: Move, isNew: boolean): readonly PathItem[] {
  const { path, facing } = face;
  const arrows = isNew && (face.hasArrow?.(move) ?? true);
  const at = (id: string): Point => face.at(path.places.get(id)!);
  const [from, to] = [at(move.from.place), at(move.to.place)];
  const isNear = (side: Side): boolean => side === facing;
  const kindOf = (near: boolean): LineKind => (isNew ? (near ? "thread" : "thread-hidden") : near ? "thread-before" : "thread-before-hidden");
  const away = face.aside ?? point(1.4, 1.4);
  switch (move.kind) {
    case "hole":
    case "knot": return [];
    case "run":
    case "tape": {
      const near = isNear(move.to.side);
      const [a, b] = near ? [from, to] : setAside(from, to, away);
      return [stroke(polyline([a, b]), kindOf(near)), ...arrowOn(a, b, arrows, near ? 0.5 : 0.34)];
    }
    case "edge": {
      // Both halves lie over each other where the thread comes back to its hole: only the near one is seen.
      const edge = face.edgeOf(move, from);
      const comesBack = move.from.place === move.to.place;
      const halves = ([[from, edge, move.from.side], [edge, to, move.to.side]] as const).filter(([, , side]) => isNear(side) || !comesBack);
      return halves.flatMap(([a, b, side]) => [stroke(polyline([a, b]), kindOf(isNear(side))), ...arrowOn(a, b, arrows)]);
    }
    case "link":
    case "kettle": return loopLines(face, move, from, to, kindOf(isNear(move.to.side)), arrows);
  }
}

/** Moved to the side that lies more to the right and below, square to the line, so that there and back are moved alike. */
function setAside(from: Point, to: Point, away: Point): readonly [Point, Point] {
  const across = quarterLeft(unitVector(subtractPoints(to, from)));
  const sign = across.x * away.x + across.y * away.y < 0 ? -1 : 1;
  const by = scalePoint(across, sign * Math.hypot(away.x, away.y) * Math.SQRT1_2);
  return [addPoints(from, by), addPoints(to, by)];
}

/** An arrowhead that stands out beyond the heavy line it lies on, its middle at `share` of the way; none on a line that is too short. */
export function arrowOn(from: Point, to: Point, isNew: boolean, share = 0.5): readonly PathItem[] {
  const long = distance(from, to);
  if (!isNew || long < shortestWithArrow) return [];
  const length = Math.min(3.4, long * 0.7);
  return [threadArrow(between(from, to, share + length / 2 / long), subtractPoints(to, from), length)];
}

/** An arrowhead on heavy thread, wide enough to stand out beyond it. */
export function threadArrow(tip: Point, direction: Point, length = 3.4): PathItem {
  const forward = unitVector(direction);
  const tail = subtractPoints(tip, scalePoint(forward, length));
  const half = scalePoint(quarterLeft(forward), Math.min(1.35, length * 0.42));
  return area(polygon([tip, addPoints(tail, half), subtractPoints(tail, half)]), "arrow", "none");
}

/** Under an earlier stitch: out to it on one side, back on the other. */
function loopLines(face: ThreadFace, move: Extract<Move, { readonly under: number | null }>, from: Point, to: Point, kind: LineKind, isNew: boolean): readonly PathItem[] {
  const earlier = move.under === null ? null : face.path.moves[move.under - 1]!;
  const middleOf = (other: Move): Point => midpoint(face.at(face.path.places.get(other.from.place)!), face.at(face.path.places.get(other.to.place)!));
  const caught = face.catchOf?.(move) ?? (earlier ? middleOf(earlier) : addPoints(midpoint(from, to), point(-3, 0)));
  const side = scalePoint(quarterLeft(unitVector(subtractPoints(caught, from))), 1.6);
  return [
    stroke(curve(from, addPoints(midpoint(from, caught), side), addPoints(caught, scalePoint(side, 0.6)), caught), kind),
    stroke(curve(caught, subtractPoints(caught, scalePoint(side, 0.6)), subtractPoints(midpoint(caught, to), side), to), kind),
    ...(isNew && distance(caught, to) >= shortestWithArrow ? [arrowhead(to, subtractPoints(to, subtractPoints(midpoint(caught, to), side)), "", 1.8)] : []),
  ];
}
