// Linear dimensions: extension lines, dimension line with arrowheads, the size above it; outside where it does not fit.
import { line } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import { arrowLength, arrowhead } from "./arrows.ts";
import { rerunnable } from "./place.ts";
import type { Placeable } from "./place.ts";
import { label, stroke, typeFor } from "./scene.ts";
import type { PathItem, TextItem } from "./scene.ts";
import { measureText } from "./text-metrics.ts";

/** On which side of the part the dimension lies; above and below measure across the page, left and right along it. */
export type Side = "above" | "below" | "left" | "right";

/** One size between two points. */
export interface DimensionSpec {
  /** Unique in the figure. */
  readonly name: string;
  /** The two points measured between; extension lines start a gap away from them. */
  readonly from: Point;
  readonly to: Point;
  readonly side: Side;
  /** The size as printed. */
  readonly text: string;
  /** Least distance in millimetres from the outer one of the two points to the dimension line; default 7. */
  readonly offset?: number;
  /** Beyond which end the size is tried first where it does not fit between; default after the right or lower end. */
  readonly outside?: "before" | "after";
  readonly size?: number;
}

/**
 * Space between the part and its extension line, and how far that line passes the arrow, in millimetres.
 * Source: 1/16 in and 1/8 in (*Print Reading for Industry*); the overshoot is halved here because our figures are small.
 */
export const extensionGap = 1.5;
/** How far an extension line passes the arrow, in millimetres: half of what the source of `extensionGap` asks. */
export const extensionOvershoot = 1.6;

/** Clear space between a size and the line under it. */
const textLift = 0.9;

/** A dimension to be placed: at `offset`, then farther and farther out; the size inside first, then beyond either end. */
export function dimension(spec: DimensionSpec): Placeable {
  return { name: spec.name, candidates: rerunnable(() => dimensionCandidates(spec)) };
}

function* dimensionCandidates(spec: DimensionSpec): Generator<readonly (PathItem | TextItem)[]> {
  const frame = makeFrame(spec);
  const size = typeFor([spec.text], spec.size);
  const width = measureText(spec.text, size);
  const span = frame.high - frame.low;
  for (let level = 0; level < 16; level += 1) {
    const at = (spec.offset ?? 7) + level * (size + 1.6);
    if (span >= width + 2 * arrowLength + 1.5) yield drawDimension(spec, frame, at, "inside", "inside");
    else {
      if (span >= width + 1.2) yield drawDimension(spec, frame, at, "outside", "inside");
      const sides = spec.outside === "before" ? ["before", "after"] as const : ["after", "before"] as const;
      for (const text of sides) yield drawDimension(spec, frame, at, "outside", text);
    }
  }
}

/** The dimension seen from its own side: `t` runs along the dimension line, `out` away from the part. */
interface Frame {
  readonly low: number;
  readonly high: number;
  /** How far each end's point lies inside of the outer one. */
  readonly lowDepth: number;
  readonly highDepth: number;
  place(t: number, out: number): Point;
}

function makeFrame({ from, to, side }: DimensionSpec): Frame {
  const level = side === "above" || side === "below";
  const [first, last] = (level ? from.x <= to.x : from.y <= to.y) ? [from, to] : [to, from];
  const outward = side === "below" || side === "right" ? 1 : -1;
  const across = (at: Point): number => (level ? at.y : at.x) * outward;
  const outer = Math.max(across(first), across(last));
  return {
    low: level ? first.x : first.y,
    high: level ? last.x : last.y,
    lowDepth: outer - across(first),
    highDepth: outer - across(last),
    place: (t, out) => (level ? { x: t, y: (outer + out) * outward } : { x: (outer + out) * outward, y: t }),
  };
}

function drawDimension(spec: DimensionSpec, frame: Frame, at: number, arrows: "inside" | "outside", text: "inside" | "before" | "after"): readonly (PathItem | TextItem)[] {
  const { name } = spec;
  const size = typeFor([spec.text], spec.size);
  const width = measureText(spec.text, size);
  const level = spec.side === "above" || spec.side === "below";
  const own = (from: Point, to: Point): PathItem => stroke(line(from, to), "dimension", name);
  const tail = arrowLength + 1.5;
  const room = width + 2;
  // Up the page, "after" the high end is below it: the text still reads from the right.
  const start = text === "before" ? frame.low - tail - room : arrows === "outside" ? frame.low - tail : frame.low;
  const end = text === "after" ? frame.high + tail + room : arrows === "outside" ? frame.high + tail : frame.high;
  const middle = text === "inside" ? (frame.low + frame.high) / 2 : text === "after" ? frame.high + tail + room / 2 : frame.low - tail - room / 2;
  const inward = arrows === "inside" ? -1 : 1;
  const along = (sign: number): Point => (level ? { x: sign, y: 0 } : { x: 0, y: sign });
  const onLine = frame.place(middle, at);
  const textAt = level ? { x: onLine.x, y: onLine.y - textLift } : { x: onLine.x - textLift, y: onLine.y };
  return [
    own(frame.place(frame.low, extensionGap - frame.lowDepth), frame.place(frame.low, at + extensionOvershoot)),
    own(frame.place(frame.high, extensionGap - frame.highDepth), frame.place(frame.high, at + extensionOvershoot)),
    own(frame.place(start, at), frame.place(end, at)),
    arrowhead(frame.place(frame.low, at), along(inward), name),
    arrowhead(frame.place(frame.high, at), along(-inward), name),
    label(name, spec.text, textAt, { anchor: "middle", size, angle: level ? 0 : 90 }),
  ];
}
