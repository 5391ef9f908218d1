// Break marks: a white gap between two wavy lines where a drawing leaves out a stretch.
import type { Path } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { area, stroke } from "./scene.ts";
import type { SceneItem } from "./scene.ts";

/** White gap of a break in millimetres of paper. */
export const breakGap = 2.4;
const wave = 0.7;

/** Leaves out a stretch of something level: a gap from `top` to `bottom` round `x`. Draw it after what it cuts. */
export function breakAcross(x: number, top: number, bottom: number, gap = breakGap): readonly SceneItem[] {
  return breakBetween(point(x - gap / 2, top), point(x - gap / 2, bottom), point(gap, 0));
}

/** Leaves out a stretch of something upright: a gap from `left` to `right` round `y`. */
export function breakAlong(y: number, left: number, right: number, gap = breakGap): readonly SceneItem[] {
  return breakBetween(point(left, y - gap / 2), point(right, y - gap / 2), point(0, gap));
}

/** A level part that goes on beyond `x`, to the left (−1) or right (1): ended by a wavy line, what lies beyond it covered. */
export function raggedEnd(x: number, top: number, bottom: number, beyond: -1 | 1): readonly SceneItem[] {
  const end = wavyLine(point(x, top), point(x, bottom));
  const mask: Path = [...end, { kind: "line", to: point(x + beyond * breakGap, bottom) }, { kind: "line", to: point(x + beyond * breakGap, top) }, { kind: "close" }];
  return [area(mask, "plate", "none"), stroke(end, "edge")];
}

/** The same for an upright part that goes on above (−1) or below (1) `y`. */
export function raggedTop(y: number, left: number, right: number, beyond: -1 | 1): readonly SceneItem[] {
  const end = wavyLine(point(left, y), point(right, y));
  const mask: Path = [...end, { kind: "line", to: point(right, y + beyond * breakGap) }, { kind: "line", to: point(left, y + beyond * breakGap) }, { kind: "close" }];
  return [area(mask, "plate", "none"), stroke(end, "edge")];
}

function breakBetween(from: Point, to: Point, gap: Point): readonly SceneItem[] {
  const near = wavyLine(from, to);
  const [farFrom, farTo] = [point(from.x + gap.x, from.y + gap.y), point(to.x + gap.x, to.y + gap.y)];
  const back = wavyLine(farTo, farFrom);
  const mask: Path = [...near, ...back.map((step) => (step.kind === "move" ? { kind: "line", to: step.to } as const : step)), { kind: "close" }];
  return [area(mask, "plate", "none"), stroke(near, "edge"), stroke(wavyLine(farFrom, farTo), "edge")];
}

/** A wavy line ends a part that goes on: one S from end to end; walked back it is the same line. */
export function wavyLine(from: Point, to: Point): Path {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy) || 1;
  const swing = Math.min(wave, length / 6) * 2;
  const [sideX, sideY] = [(-dy / length) * swing, (dx / length) * swing];
  return [
    { kind: "move", to: from },
    {
      kind: "curve", to,
      control1: point(from.x + dx / 3 + sideX, from.y + dy / 3 + sideY),
      control2: point(from.x + (dx * 2) / 3 - sideX, from.y + (dy * 2) / 3 - sideY),
    },
  ];
}
