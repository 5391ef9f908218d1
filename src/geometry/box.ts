// Upright boxes and whether they meet: what the label placer and the page layout ask.
import type { Point } from "./point.ts";

/** An upright rectangle in millimetres; `top` is the smaller y. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A box from its left top corner and its size. */
export function boxOf(left: number, top: number, width: number, height: number): Box {
  return { left, top, right: left + width, bottom: top + height };
}

/** The smallest box round some points; null when there are none. */
export function boxAround(points: readonly Point[]): Box | null {
  if (points.length === 0) return null;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}

/** The smallest box around several; null for none. */
export function boxUnion(boxes: readonly Box[]): Box | null {
  return boxAround(boxes.flatMap((box) => [{ x: box.left, y: box.top }, { x: box.right, y: box.bottom }]));
}

/** The box made larger by `by` on every side (smaller when negative). */
export function growBox(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

/** From left to right. */
export function boxWidth(box: Box): number {
  return box.right - box.left;
}

/** From top to bottom. */
export function boxHeight(box: Box): number {
  return box.bottom - box.top;
}

/** Whether two boxes share an area; boxes that only touch along an edge do not. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether the inner box lies within the outer one; touching edges count as within. */
export function boxContains(outer: Box, inner: Box): boolean {
  return outer.left <= inner.left && outer.top <= inner.top && outer.right >= inner.right && outer.bottom >= inner.bottom;
}

/** Whether any point of the straight line from `a` to `b` lies inside the box (its rim does not count). */
export function segmentMeetsBox(a: Point, b: Point, box: Box): boolean {
  // Liang and Barsky's clipping: keep the part of the line that is inside each of the four sides.
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let [enter, leave] = [0, 1];
  for (const [step, room] of [[-dx, a.x - box.left], [dx, box.right - a.x], [-dy, a.y - box.top], [dy, box.bottom - a.y]] as const) {
    if (step === 0) {
      if (room <= 0) return false;
      continue;
    }
    const at = room / step;
    if (step < 0) enter = Math.max(enter, at);
    else leave = Math.min(leave, at);
  }
  return enter < leave || (dx === 0 && dy === 0 && enter <= leave);
}
