// Where a 45° corner cut meets the edges of the covering: one rule for part drawings, hinge and template.
import type { Point } from "../geometry/point.ts";

/**
 * How far from the covering's own corner the cut meets each of its two edges, in millimetres.
 * `inner` is the corner of what is covered, measured from the covering's corner; `distance` runs from there to the cut, square to it.
 * Zero when the cut would pass outside the covering. The cut is the line x + y = reach, and the inner corner lies (inner.x + inner.y − reach) / √2 behind it.
 */
export function cornerReach(inner: Point, distance: number): number {
  return Math.max(0, inner.x + inner.y - distance * Math.SQRT2);
}
