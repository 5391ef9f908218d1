// Running dimensions: every position once, measured from one datum, crowded figures spread apart with jogged leaders in order.
import { line, polyline } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import { spreadPositions } from "../geometry/spread.ts";
import { arrowhead, datumRing, dot } from "./arrows.ts";
import type { Side } from "./dimensions.ts";
import { label, labelType, stroke, typeFor } from "./scene.ts";
import type { PathItem, TextItem } from "./scene.ts";
import { inkOf, measureText } from "./text-metrics.ts";
import type { FontWeight } from "./text-metrics.ts";

/** One position on the edge that is measured. */
export interface RunningMark {
  /** Label name, unique in the figure. */
  readonly name: string;
  /** Position on paper along the edge. */
  readonly at: number;
  readonly text: string;
  readonly weight?: FontWeight;
}

/** Positions along one edge, all measured from the same datum. */
export interface RunningSpec {
  /** Names the common dimension line. */
  readonly name: string;
  /** Above and below measure across the page (figures run up the page); left and right measure along it (figures level). */
  readonly side: Side;
  /** Where the part's edge lies on paper: y for above and below, x for left and right. */
  readonly edge: number;
  /** Where measuring starts, on paper. When it lies far outside the marks (another band shows it), the line starts at the nearest mark, without ring. */
  readonly datum: number;
  /** In rising order of `at`. The datum itself is a mark too, if it shall carry a 0. */
  readonly marks: readonly RunningMark[];
  /** Figures stay between these positions along the edge; default 12 mm beyond the outermost marks. */
  readonly low?: number;
  readonly high?: number;
  readonly size?: number;
  /** Draws the line with arrowheads; without it only leaders and figures. Default true. */
  readonly dimensionLine?: boolean;
  /** Where the leaders start, in millimetres out from the edge; default 1. Negative starts inside the part. */
  readonly start?: number;
}

/** The drawn dimensions and the room they take. */
export interface RunningDrawing {
  readonly items: readonly (PathItem | TextItem)[];
  /** How far the drawing reaches out from the edge, in millimetres. */
  readonly depth: number;
  /** The longest sideways way of a leader: large values want a larger scale. */
  readonly shift: number;
}

/** Distance between the middle lines of neighbouring figures, in millimetres. */
export function runningPitch(texts: readonly string[], size = labelType): number {
  const tallest = texts.map(inkOf).reduce((most, ink) => Math.max(most, ink.above + ink.below), 0.72);
  return tallest * size + 0.6;
}

/** Draws running dimensions; null when the figures do not fit between `low` and `high`. */
export function runningDimensions(spec: RunningSpec): RunningDrawing | null {
  const { marks } = spec;
  if (marks.length === 0) return { items: [], depth: 0, shift: 0 };
  const size = typeFor(marks.map((mark) => mark.text), spec.size);
  const pitch = runningPitch(marks.map((mark) => mark.text), size);
  const places = spreadPositions(marks.map((mark) => mark.at), pitch, spec.low ?? marks[0]!.at - 12, spec.high ?? marks.at(-1)!.at + 12);
  if (!places) return null;
  const shift = Math.max(...marks.map((mark, index) => Math.abs(mark.at - places[index]!)));

  const outward = spec.side === "below" || spec.side === "right" ? 1 : -1;
  const level = spec.side === "above" || spec.side === "below";
  const place = (t: number, out: number): Point => (level ? { x: t, y: spec.edge + outward * out } : { x: spec.edge + outward * out, y: t });
  const withLine = spec.dimensionLine ?? true;
  const lineAt = (spec.start ?? 1) + 2.5;
  const jogStart = withLine ? lineAt + 1.2 : (spec.start ?? 1) + 1;
  // The jog is as deep as two thirds of the longest sideways way: leaders then stay steeper than 1 : 1.5.
  const jogEnd = jogStart + (shift < 0.01 ? 0 : Math.max(1.5, shift / 1.5));
  const textAt = jogEnd + 1.6;

  const items: (PathItem | TextItem)[] = [];
  marks.forEach((mark, index) => {
    const to = places[index]!;
    items.push(stroke(polyline([place(mark.at, spec.start ?? 1), place(mark.at, jogStart), place(to, jogEnd), place(to, jogEnd + 1)]), "dimension", mark.name));
    const middle = inkMiddle(mark.text) * size;
    const at = place(to, textAt);
    items.push(label(mark.name, mark.text, level ? { x: at.x + middle, y: at.y } : { x: at.x, y: at.y + middle }, {
      size, weight: mark.weight ?? 400, angle: level ? 90 : 0,
      // Up the page, text above the edge starts at its leader and text below ends there.
      anchor: spec.side === "above" || spec.side === "right" ? "start" : "end",
    }));
  });
  if (withLine) items.push(...dimensionLine(spec, place, lineAt, level));
  const widest = Math.max(...marks.map((mark) => measureText(mark.text, size, mark.weight ?? 400)));
  return { items, depth: textAt + widest, shift };
}

function dimensionLine(spec: RunningSpec, place: (t: number, out: number) => Point, lineAt: number, level: boolean): readonly PathItem[] {
  const { datum } = spec;
  const positions = spec.marks.map((mark) => mark.at);
  const isNear = datum >= positions[0]! - farDatum && datum <= positions.at(-1)! + farDatum;
  const ends = isNear ? [...positions, datum] : positions;
  const items: PathItem[] = [stroke(line(place(Math.min(...ends), lineAt), place(Math.max(...ends), lineAt)), "dimension", spec.name)];
  positions.forEach((at, index) => {
    if (Math.abs(at - datum) < 0.01) return;
    const sign = at > datum ? 1 : -1;
    const neighbour = positions[index - sign];
    const nearer = neighbour === undefined || sign * neighbour < sign * datum ? datum : neighbour;
    const room = Math.abs(at - nearer);
    // Where positions crowd, a dot takes the arrowhead's place.
    items.push(room < 2.6 ? dot(place(at, lineAt), spec.name, 0.45) : arrowhead(place(at, lineAt), level ? { x: sign, y: 0 } : { x: 0, y: sign }, spec.name, Math.min(2.1, room - 0.8)));
  });
  if (isNear) items.push(datumRing(place(datum, lineAt), spec.name));
  return items;
}

/** A datum farther from the marks than this, in millimetres, belongs to another band. */
const farDatum = 6;

/** How far below the middle of a label's ink its baseline lies, in parts of the type size. */
function inkMiddle(text: string): number {
  const ink = inkOf(text);
  return (ink.above - ink.below) / 2;
}
