// Paths of straight lines, circular arcs and curves: made, moved, cut into points, measured.
import { boxAround } from "./box.ts";
import type { Box } from "./box.ts";
import { addPoints, distance, scalePoint, subtractPoints } from "./point.ts";
import type { Point } from "./point.ts";
import { determinant, isSimilarity, transformPoint } from "./transform.ts";
import type { Transform } from "./transform.ts";

/** One stroke of a pen. Arcs are circular; `clockwise` as seen on the page (SVG's sweep flag), `large` picks the longer way. */
export type PathStep =
  | { readonly kind: "move"; readonly to: Point }
  | { readonly kind: "line"; readonly to: Point }
  | { readonly kind: "arc"; readonly to: Point; readonly radius: number; readonly large: boolean; readonly clockwise: boolean }
  | { readonly kind: "curve"; readonly to: Point; readonly control1: Point; readonly control2: Point }
  | { readonly kind: "close" };

/** An outline or a line as steps of the pen, in millimetres, y downwards. */
export type Path = readonly PathStep[];

/** A chain of straight lines through the points; closed when `closed` is true. */
export function polyline(points: readonly Point[], closed = false): Path {
  const steps: PathStep[] = points.map((to, index) => ({ kind: index === 0 ? "move" : "line", to }));
  if (closed) steps.push({ kind: "close" });
  return steps;
}

/** A straight line. */
export function line(from: Point, to: Point): Path {
  return polyline([from, to]);
}

/** A closed chain of straight lines through the points. */
export function polygon(points: readonly Point[]): Path {
  return polyline(points, true);
}

/** A closed rectangle from its left top corner and its size. */
export function rectangle(left: number, top: number, width: number, height: number): Path {
  return polygon([{ x: left, y: top }, { x: left + width, y: top }, { x: left + width, y: top + height }, { x: left, y: top + height }]);
}

/** A full circle as two half arcs. */
export function circle(centre: Point, radius: number): Path {
  const right = { x: centre.x + radius, y: centre.y };
  const left = { x: centre.x - radius, y: centre.y };
  return [
    { kind: "move", to: right },
    { kind: "arc", to: left, radius, large: false, clockwise: true },
    { kind: "arc", to: right, radius, large: false, clockwise: true },
    { kind: "close" },
  ];
}

/** An arc from one point to another; the shorter way unless `large`. */
export function arc(from: Point, to: Point, radius: number, clockwise: boolean, large = false): Path {
  return [{ kind: "move", to: from }, { kind: "arc", to, radius, large, clockwise }];
}

/** One cubic curve. */
export function curve(from: Point, control1: Point, control2: Point, to: Point): Path {
  return [{ kind: "move", to: from }, { kind: "curve", to, control1, control2 }];
}

/** Moves, turns, scales or slants a path; where circles would become ellipses, arcs become curves. */
export function transformPath(transform: Transform, path: Path): Path {
  if (!isSimilarity(transform) && path.some((step) => step.kind === "arc")) return transformPath(transform, arcsAsCurves(path));
  const factor = Math.sqrt(Math.abs(determinant(transform)));
  const mirrors = determinant(transform) < 0;
  const place = (at: Point): Point => transformPoint(transform, at);
  return path.map((step): PathStep => {
    if (step.kind === "close") return step;
    if (step.kind === "arc") return { ...step, to: place(step.to), radius: step.radius * factor, clockwise: step.clockwise !== mirrors };
    if (step.kind === "curve") return { ...step, to: place(step.to), control1: place(step.control1), control2: place(step.control2) };
    return { ...step, to: place(step.to) };
  });
}

/** Every separate stroke of the path as a chain of points close enough to the true shape (`tolerance` in millimetres). */
export function pathPoints(path: Path, tolerance = 0.02): readonly (readonly Point[])[] {
  const strokes: Point[][] = [];
  let stroke: Point[] = [];
  for (const step of path) {
    if (step.kind === "move") strokes.push((stroke = [step.to]));
    else if (step.kind === "line") stroke.push(step.to);
    else if (step.kind === "close") stroke.push(stroke[0]!);
    else if (step.kind === "arc") stroke.push(...arcPoints(stroke.at(-1)!, step, tolerance));
    else stroke.push(...curvePoints(stroke.at(-1)!, step, tolerance));
  }
  return strokes;
}

/** Length of the pen's way in millimetres, closing lines included. */
export function pathLength(path: Path): number {
  return pathPoints(path, 0.001).reduce((total, stroke) => total + stroke.slice(1).reduce((sum, at, index) => sum + distance(at, stroke[index]!), 0), 0);
}

/** Area enclosed by the path's strokes in square millimetres, by the shoelace formula; strokes against the clock count negative. */
export function pathArea(path: Path): number {
  return pathPoints(path, 0.001).reduce((total, stroke) => total + stroke.reduce((sum, at, index) => {
    const next = stroke[(index + 1) % stroke.length]!;
    return sum + (at.x * next.y - next.x * at.y) / 2;
  }, 0), 0);
}

/** The box round the path itself to 0.005 mm, line widths left out; null for an empty path. */
export function pathBox(path: Path): Box | null {
  return boxAround(pathPoints(path, 0.005).flat());
}

type ArcStep = Extract<PathStep, { kind: "arc" }>;
type CurveStep = Extract<PathStep, { kind: "curve" }>;

interface ArcFrame {
  readonly centre: Point;
  readonly radius: number;
  readonly start: number;
  /** Signed turn in radians, positive clockwise on the page. */
  readonly turn: number;
}

function arcFrame(from: Point, step: ArcStep): ArcFrame {
  const chord = distance(from, step.to);
  const radius = Math.max(step.radius, chord / 2);
  const middle = scalePoint(addPoints(from, step.to), 0.5);
  const rise = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4));
  const side = step.large === step.clockwise ? 1 : -1;
  const chordVector = chord === 0 ? { x: 1, y: 0 } : scalePoint(subtractPoints(step.to, from), 1 / chord);
  const centre = addPoints(middle, scalePoint({ x: chordVector.y, y: -chordVector.x }, rise * side));
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  let turn = Math.atan2(step.to.y - centre.y, step.to.x - centre.x) - start;
  if (step.clockwise && turn <= 0) turn += 2 * Math.PI;
  if (!step.clockwise && turn >= 0) turn -= 2 * Math.PI;
  return { centre, radius, start, turn };
}

function arcPoints(from: Point, step: ArcStep, tolerance: number): readonly Point[] {
  const { centre, radius, start, turn } = arcFrame(from, step);
  const largestStep = 2 * Math.acos(Math.max(0, 1 - tolerance / Math.max(radius, tolerance)));
  const count = Math.max(2, Math.ceil(Math.abs(turn) / largestStep));
  return Array.from({ length: count }, (_, index) => {
    if (index === count - 1) return step.to;
    const angle = start + (turn * (index + 1)) / count;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
}

function curvePoints(from: Point, step: CurveStep, tolerance: number): readonly Point[] {
  const reach = distance(from, step.control1) + distance(step.control1, step.control2) + distance(step.control2, step.to);
  const count = Math.min(200, Math.max(8, Math.ceil(Math.sqrt(reach / tolerance))));
  return Array.from({ length: count }, (_, index) => {
    const t = (index + 1) / count;
    const u = 1 - t;
    const mix = (axis: "x" | "y"): number =>
      u * u * u * from[axis] + 3 * u * u * t * step.control1[axis] + 3 * u * t * t * step.control2[axis] + t * t * t * step.to[axis];
    return { x: mix("x"), y: mix("y") };
  });
}

/** Arcs written as cubic curves of at most a quarter turn each (the usual approximation, out by less than 0.03 % of the radius). */
function arcsAsCurves(path: Path): Path {
  const steps: PathStep[] = [];
  let at: Point = { x: 0, y: 0 };
  let start = at;
  for (const step of path) {
    if (step.kind === "arc") {
      const frame = arcFrame(at, step);
      const pieces = Math.max(1, Math.ceil(Math.abs(frame.turn) / (Math.PI / 2) - 1e-9));
      const piece = frame.turn / pieces;
      const handle = (4 / 3) * Math.tan(piece / 4) * frame.radius;
      const on = (angle: number): Point => ({ x: frame.centre.x + frame.radius * Math.cos(angle), y: frame.centre.y + frame.radius * Math.sin(angle) });
      const tangent = (angle: number, by: number): Point => ({ x: -Math.sin(angle) * by, y: Math.cos(angle) * by });
      for (let index = 0; index < pieces; index += 1) {
        const [first, last] = [frame.start + piece * index, frame.start + piece * (index + 1)];
        const to = index === pieces - 1 ? step.to : on(last);
        steps.push({ kind: "curve", to, control1: addPoints(on(first), tangent(first, handle)), control2: addPoints(to, tangent(last, -handle)) });
      }
    } else steps.push(step);
    if (step.kind === "move") start = step.to;
    at = step.kind === "close" ? start : step.to;
  }
  return steps;
}
