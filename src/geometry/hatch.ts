// Hatching as real lines: parallel strokes cut to a closed path, so that prints and cutters need no fill patterns.
import { pathPoints } from "./path.ts";
import type { Path } from "./path.ts";
import type { Point } from "./point.ts";

/**
 * Parallel strokes across a closed path (even-odd), `spacing` millimetres apart, at `angleDegrees` (45 rises to the right).
 * The strokes lie on one grid for the whole page, so that neighbouring areas with the same angle run through.
 */
export function hatchLines(path: Path, angleDegrees: number, spacing: number): readonly (readonly [Point, Point])[] {
  const angle = (angleDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  // In the turned frame the strokes are level: u runs along them, v across.
  const turned = pathPoints(path).map((stroke) => stroke.map(({ x, y }) => ({ u: x * cos - y * sin, v: x * sin + y * cos })));
  const all = turned.flat();
  if (all.length === 0) return [];
  const first = Math.ceil(Math.min(...all.map((at) => at.v)) / spacing);
  const last = Math.floor(Math.max(...all.map((at) => at.v)) / spacing);
  const strokes: [Point, Point][] = [];
  for (let row = first; row <= last; row += 1) {
    // A hair off the grid, so that a stroke never runs through a corner exactly.
    const v = row * spacing + spacing * 1e-4;
    const crossings: number[] = [];
    for (const stroke of turned) {
      stroke.forEach((a, index) => {
        const b = stroke[(index + 1) % stroke.length]!;
        if ((a.v <= v) !== (b.v <= v)) crossings.push(a.u + ((v - a.v) / (b.v - a.v)) * (b.u - a.u));
      });
    }
    crossings.sort((p, q) => p - q);
    for (let index = 0; index + 1 < crossings.length; index += 2) {
      const back = (u: number): Point => ({ x: u * cos + v * sin, y: -u * sin + v * cos });
      strokes.push([back(crossings[index]!), back(crossings[index + 1]!)]);
    }
  }
  return strokes;
}
