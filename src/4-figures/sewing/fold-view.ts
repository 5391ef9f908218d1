// Sewing through a fold, seen along the section: the inside of the fold above, the outside below, the thread rising and falling through the holes.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Move, Place, Side, Spot, ThreadPath } from "../../2-model/sewing/types.ts";
import { dot } from "../arrows.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { area, centredLabel, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { LineKind } from "../types.ts";
import { arrowOn } from "./thread-lines.ts";

/** A fold with its thread. */
export interface FoldView {
  readonly path: ThreadPath;
  /** The pass that is heavy; 0 draws all passes thin. */
  readonly pass: number;
  /** Height of the section along the fold, and the places in it; others are left out. */
  readonly height: Length;
  readonly holes: readonly Place[];
  /** Millimetres of paper for one of the book, along the fold; across, the drawing is not to scale. */
  readonly factor: number;
  /** Prefix of the labels' names, where several views stand in one figure. */
  readonly name?: string;
}

/** The drawing: the head to the left, `top` and `bottom` of the fold itself on paper. */
export interface FoldDrawing {
  readonly items: readonly SceneItem[];
  readonly labels: readonly Placeable[];
  readonly top: number;
  readonly bottom: number;
}

/** Thickness of the fold on paper, how far the thread lies off it, and how far apart two threads in one hole are. */
const band = { thickness: 4, off: 1.6, apart: 1.3, tail: 7 } as const;

/** Draws a fold with head at the left; the thread's moves between its holes, through them, and its two ends. */
export function drawFold({ path, pass, height, holes, factor, name = "fold" }: FoldView): FoldDrawing {
  const width = toMillimetres(height) * factor;
  const isHere = new Set(holes.map(({ id }) => id));
  const moves = path.moves.filter((move) => isHere.has(move.from.place) && isHere.has(move.to.place) && (pass === 0 || move.pass <= pass));
  const through = lanesOf(path, holes, factor);
  const y = (side: Side): number => (side === "inside" ? -band.off : band.thickness + band.off);
  const stretches = moves.map((move) => ({ move, points: pointsOf(move, through, y) }));
  const heavy = (move: Move): boolean => pass !== 0 && move.pass === pass;
  const lineOf = (move: Move): LineKind => (heavy(move) ? "thread" : "thread-before");
  const ends = endsOf(path, moves, through, y);
  return {
    top: 0, bottom: band.thickness,
    items: [
      area(rectangle(0, 0, width, band.thickness), "face-middle", "edge"),
      ...holes.map((hole) => area(rectangle(toMillimetres(hole.along) * factor - 1.1, -0.05, 2.2, band.thickness + 0.1), "plate", "none")),
      ...holes.flatMap((hole) => [-1.1, 1.1].map((by) => stroke(line(point(toMillimetres(hole.along) * factor + by, 0), point(toMillimetres(hole.along) * factor + by, band.thickness)), "edge"))),
      ...stretches.map(({ move, points }) => stroke(polyline(points), lineOf(move))),
      ...stretches.flatMap(({ move, points }) => (heavy(move) && move.kind !== "hole" ? arrowsOn(points) : [])),
      ...ends.map(({ points, isNew }) => stroke(polyline(points), isNew && pass !== 0 ? "thread" : "thread-before")),
      ...ends.map(({ points }) => dot(points.at(-1)!, "", 0.7)),
    ],
    labels: [
      ...holes.map((hole): Placeable => ({ name: `${name} hole ${hole.id}`, candidates: [
        [centredLabel(`${name} hole ${hole.id}`, hole.name, point(toMillimetres(hole.along) * factor, band.thickness + band.off + 3.4), { weight: 600 })],
        ...[-3, 3, -5, 5].map((by) => [centredLabel(`${name} hole ${hole.id}`, hole.name, point(toMillimetres(hole.along) * factor + by, band.thickness + band.off + 3.4), { weight: 600 })]),
      ] })),
      ...ends.map(({ word, points }) => leaderAnywhere({ name: `${name} ${word}`, text: word, target: points.at(-1)!, end: "none", directions: word === "start" ? [160, 20, 90] : [20, 160, 90], reach: 3 })),
    ],
  };
}

/** Each time the thread goes through a hole it has a place of its own beside the others, in the order of sewing. */
function lanesOf(path: ThreadPath, holes: readonly Place[], factor: number): ReadonlyMap<number, Point> {
  const lanes = new Map<number, Point>();
  for (const hole of holes) {
    const times = path.moves.filter((move) => move.kind === "hole" && move.from.place === hole.id);
    // The lane nearer to where the thread comes from or goes to, so that threads in one hole do not cross.
    const reach = (move: Move): number => leaning(path, move, holes);
    const sorted = [...times].sort((a, b) => reach(a) - reach(b) || a.n - b.n);
    sorted.forEach((move, index) => lanes.set(move.n, point(toMillimetres(hole.along) * factor + (index - (sorted.length - 1) / 2) * (sorted.length > 2 ? 0.75 : band.apart), 0)));
  }
  return lanes;
}

/** Where the stitches on both sides of a hole lead: towards the head negative, towards the tail positive. */
function leaning(path: ThreadPath, move: Move, holes: readonly Place[]): number {
  const along = (spot: Spot): number => {
    const place = holes.find(({ id }) => id === spot.place);
    return place ? toMillimetres(place.along) : 0;
  };
  const here = along(move.from);
  const before = path.moves[move.n - 2];
  const after = path.moves[move.n];
  return Math.sign((before ? along(before.from) : here) - here) + Math.sign((after ? along(after.to) : here) - here);
}

function pointsOf(move: Move, lanes: ReadonlyMap<number, Point>, y: (side: Side) => number): readonly Point[] {
  if (move.kind === "hole") {
    const lane = lanes.get(move.n)!;
    return [point(lane.x, y(move.from.side)), point(lane.x, y(move.to.side))];
  }
  const from = lanes.get(move.n - 1);
  const to = lanes.get(move.n + 1);
  const [a, b] = [from ?? to, to ?? from];
  return a && b ? [point(a.x, y(move.from.side)), point(b.x, y(move.to.side))] : [];
}

function arrowsOn(points: readonly Point[]): readonly SceneItem[] {
  const [from, to] = [points[0], points.at(-1)];
  return from && to ? arrowOn(from, to, true) : [];
}

/** The two ends hang where the thread was begun and where it ends, leaning apart. */
function endsOf(path: ThreadPath, drawn: readonly Move[], lanes: ReadonlyMap<number, Point>, y: (side: Side) => number): readonly { readonly word: "start" | "end"; readonly points: readonly Point[]; readonly isNew: boolean }[] {
  const [first, last] = [drawn[0], drawn.at(-1)];
  if (!first || !last) return [];
  const end = (word: "start" | "end", move: Move, side: Side, lean: number) => {
    const lane = lanes.get(move.n) ?? lanes.get(move.n + (word === "start" ? 1 : -1));
    if (!lane) return [];
    const out = side === "inside" ? -1 : 1;
    return [{ word, isNew: true, points: [point(lane.x, y(side)), point(lane.x + lean, y(side) + out * band.tail)] }];
  };
  return [
    ...(first.n === 1 ? end("start", first, path.start.at.side, -3) : []).map((each) => ({ ...each, isNew: first.pass === last.pass })),
    ...(last.n === path.moves.length ? end("end", last, path.end.at.side, 3) : []),
  ];
}
