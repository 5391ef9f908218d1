// One part of the cut list as a cell of an overview: outline at a common scale, ringed letter, grain arrow, name, count and size.
import type { Part } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { along, point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { arrowhead, dot } from "../arrows.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { drawBalloon } from "../leaders.ts";
import { area, label, stroke } from "../scene.ts";
import type { PathItem, SceneItem } from "../scene.ts";
import { measureText } from "../text-metrics.ts";

/** A drawn part: its foot stands at y = 0, its left edge at x = 0. */
export interface PartCell {
  readonly items: readonly SceneItem[];
  readonly width: number;
  /** From the foot up, and from the foot down to the last line of its label. */
  readonly above: number;
  readonly below: number;
  /** Some of its height or width is left out. */
  readonly broken: boolean;
  /** Drawn wider than it is, because it would be too thin to see. */
  readonly widened: boolean;
}

/** What a cell is drawn from. */
export interface CellSpec {
  readonly part: Part;
  readonly letter: string;
  readonly hasGrain: boolean;
  /** Lines of its label, the first one heavy. */
  readonly words: readonly string[];
  readonly type: number;
  readonly factor: number;
  /** Beyond these sizes on paper the middle of the part is left out. */
  readonly longest: { readonly width: number; readonly height: number };
}

/** Thinnest part on paper, and the smallest field that holds a ringed letter, in millimetres. */
const thinnest = 1;
const letterRoom = 7;
/** Radius of the ring, as `drawBalloon` draws it, with its clear space. */
const ring = 2.6;
const shortestArrow = 5;

export function drawCell(spec: CellSpec): PartCell {
  const { part, factor, longest } = spec;
  const [trueWidth, trueHeight] = [toMillimetres(part.width) * factor, toMillimetres(part.height) * factor];
  const width = Math.max(thinnest, Math.min(trueWidth, longest.width));
  const height = Math.max(thinnest, Math.min(trueHeight, longest.height));
  const cutWidth = trueWidth > longest.width;
  const cutHeight = trueHeight > longest.height;
  const marks = placeMarks(spec, width, height);
  const lineHeight = spec.type * 1.2;
  const labels = spec.words.map((text, index) => label(`words ${part.id}`, text, point(0, 1.6 + spec.type * 0.72 + index * lineHeight), { size: spec.type, weight: index === 0 ? 600 : 400 }));
  const widest = Math.max(...spec.words.map((text, index) => measureText(text, spec.type, index === 0 ? 600 : 400)));
  return {
    items: [
      area(rectangle(0, -height, width, height), part.material === "boards" || part.material === "strip board" ? "face-middle" : "face-light", "outline"),
      ...(cutWidth ? breakAcross(width * 0.7, -height - 0.6, 0.6) : []),
      ...(cutHeight ? breakAlong(-height * 0.5, -0.6, width + 0.6) : []),
      ...marks.items, ...labels,
    ],
    width: Math.max(width, widest, marks.right),
    above: Math.max(height, marks.top),
    below: 1.6 + spec.words.length * lineHeight,
    broken: cutWidth || cutHeight,
    widened: trueWidth < thinnest || trueHeight < thinnest,
  };
}

interface Marks {
  readonly items: readonly SceneItem[];
  readonly right: number;
  readonly top: number;
}

/** Letter and grain arrow: in the part where it has room, else beside it with a pointer. */
function placeMarks(spec: CellSpec, width: number, height: number): Marks {
  const oneAboveTheOther = 2 * letterRoom + shortestArrow - 1;
  if (width >= letterRoom && height >= oneAboveTheOther) {
    const low = -height + letterRoom + 1.5;
    const length = Math.min(14, -low - 2);
    return { items: [...letterIn(spec, point(width / 2, -height + letterRoom / 2 + 0.8)), ...grainIn(spec, point(width / 2, (low - 1) / 2), length)], right: 0, top: 0 };
  }
  if (width >= 2 * letterRoom && height >= letterRoom) {
    return { items: [...letterIn(spec, point(width * 0.3, -height / 2)), ...grainIn(spec, point(width * 0.55, -height / 2), height - 2)], right: 0, top: 0 };
  }
  return marksBeside(spec, width, height);
}

function marksBeside(spec: CellSpec, width: number, height: number): Marks {
  const under = height >= oneUnderTheOther;
  const centre = point(width + 4 + ring, under ? -height + ring + 0.5 : -Math.max(height / 2, ring));
  const target = point(Math.max(width / 2, width - 2), Math.min(centre.y, -height * 0.3 - 0.3) < -height ? -height / 2 : centre.y);
  const arrow = under ? point(centre.x, centre.y + ring + 2 + 4) : point(centre.x + ring + 2.5, centre.y);
  const name = letterName(spec);
  return {
    items: [
      ...(spec.letter === "" ? [] : [stroke(line(target, along(centre, target, ring)), "dimension", name), dot(target, name, Math.min(0.5, width / 3))]),
      ...letterIn(spec, centre), ...grainIn(spec, arrow, 8),
    ],
    right: (spec.hasGrain ? arrow.x : centre.x) + ring,
    top: -centre.y + Math.max(ring, 4),
  };
}

/** Height from which the grain arrow stands under the letter beside a narrow part. */
const oneUnderTheOther = 2 * ring + 2 + 8 + 1;

function letterName({ part }: CellSpec): string {
  return `letter ${part.id}`;
}

function letterIn(spec: CellSpec, centre: Point): readonly SceneItem[] {
  return spec.letter === "" ? [] : drawBalloon(letterName(spec), spec.letter, centre);
}

function grainIn({ part, hasGrain }: CellSpec, centre: Point, length: number): readonly PathItem[] {
  return hasGrain ? bareGrainArrow(`grain ${part.id}`, centre, length) : [];
}

/** The grain arrow without its word: double-headed, along the height. */
export function bareGrainArrow(owner: string, { x, y }: Point, length: number): readonly PathItem[] {
  const [top, foot] = [point(x, y - length / 2), point(x, y + length / 2)];
  const head = Math.min(2.4, length * 0.4);
  return [stroke(line(top, foot), "edge", owner), arrowhead(top, point(0, -1), owner, head), arrowhead(foot, point(0, 1), owner, head)];
}
