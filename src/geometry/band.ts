// Bands: a ribbon or strip of even width along a line, for drawing ribbons and tapes.
import { polygon } from "./path.ts";
import type { Path } from "./path.ts";
import { addPoints, quarterLeft, scalePoint, subtractPoints, unitVector } from "./point.ts";
import type { Point } from "./point.ts";

/** The outline of a band of even `width` along a chain of points, ends cut square; needs at least two points. */
export function bandAlong(centreLine: readonly Point[], width: number): Path {
  const sides = centreLine.map((at, index) => {
    const before = centreLine[Math.max(0, index - 1)]!;
    const after = centreLine[Math.min(centreLine.length - 1, index + 1)]!;
    const out = scalePoint(quarterLeft(unitVector(subtractPoints(after, before))), width / 2);
    return { left: addPoints(at, out), right: subtractPoints(at, out) };
  });
  return polygon([...sides.map((side) => side.left), ...sides.reverse().map((side) => side.right)]);
}
