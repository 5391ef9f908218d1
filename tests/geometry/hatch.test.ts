// Hatching is measured: every stroke inside, evenly apart, together as long as area over spacing.
import { describe, expect, it } from "vitest";
import { hatchLines } from "../../src/geometry/hatch.ts";
import { circle, rectangle } from "../../src/geometry/path.ts";
import { distance, point } from "../../src/geometry/point.ts";

function totalLength(strokes: ReturnType<typeof hatchLines>): number {
  return strokes.reduce((sum, [from, to]) => sum + distance(from, to), 0);
}

describe("hatching", () => {
  it.each([0, 45, 90, -45, 30])("of a rectangle at %i degrees is as long as its area divided by the spacing", (angle) => {
    expect(totalLength(hatchLines(rectangle(3, 4, 40, 30), angle, 0.5))).toBeCloseTo((40 * 30) / 0.5, -2);
  });
  it("stays inside a circle", () => {
    for (const at of hatchLines(circle(point(0, 0), 10), 45, 1).flat()) expect(distance(at, point(0, 0))).toBeLessThanOrEqual(10.001);
  });
  it("leaves out a hole", () => {
    const ring = [...circle(point(0, 0), 10), ...circle(point(0, 0), 5)];
    expect(totalLength(hatchLines(ring, 45, 0.25))).toBeCloseTo((Math.PI * (100 - 25)) / 0.25, -2);
  });
  it("rises to the right at 45 degrees", () => {
    const [from, to] = hatchLines(rectangle(0, 0, 20, 20), 45, 3)[2]!;
    expect((to.y - from.y) / (to.x - from.x)).toBeCloseTo(-1, 6);
  });
  it("of nothing is nothing", () => expect(hatchLines([], 45, 1)).toEqual([]));
});
