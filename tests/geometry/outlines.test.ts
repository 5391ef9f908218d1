// Bands and hulls, measured: area and length, not drawings.
import { expect, test } from "vitest";
import { bandAlong } from "../../src/geometry/band.ts";
import { convexHull } from "../../src/geometry/hull.ts";
import { pathArea, pathBox, polygon } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";

test("a straight band covers its length times its width", () => {
  const band = bandAlong([point(0, 0), point(30, 40)], 4);
  expect(Math.abs(pathArea(band))).toBeCloseTo(50 * 4, 9);
});

test("a bent band keeps to half its width on both sides of a level line", () => {
  expect(pathBox(bandAlong([point(0, 5), point(10, 5), point(20, 5)], 3))).toEqual({ left: 0, top: 3.5, right: 20, bottom: 6.5 });
});

test("a hull leaves out inner points and points on its edges", () => {
  const hull = convexHull([point(0, 0), point(4, 0), point(2, 0), point(4, 3), point(0, 3), point(2, 1)]);
  expect(hull).toHaveLength(4);
  expect(Math.abs(pathArea(polygon(hull)))).toBeCloseTo(12, 9);
});

test("a hull is the same whatever the order of its points", () => {
  const points = [point(0, 0), point(5, 1), point(6, 4), point(2, 6), point(3, 3)];
  expect(convexHull([...points].reverse())).toEqual(convexHull(points));
});
