// Paths are checked by measuring: lengths, areas and boxes against closed formulas.
import { describe, expect, it } from "vitest";
import { arc, circle, curve, line, pathArea, pathBox, pathLength, pathPoints, polyline, rectangle, transformPath } from "../../src/geometry/path.ts";
import { distance, point } from "../../src/geometry/point.ts";
import { compose, rotation, scaling, translation } from "../../src/geometry/transform.ts";

describe("measuring a path", () => {
  it("gives a rectangle its perimeter and area", () => {
    expect(pathLength(rectangle(5, 5, 30, 20))).toBeCloseTo(100, 9);
    expect(Math.abs(pathArea(rectangle(5, 5, 30, 20)))).toBeCloseTo(600, 9);
  });
  it("gives a circle its circumference and area", () => {
    expect(pathLength(circle(point(3, 4), 10))).toBeCloseTo(2 * Math.PI * 10, 2);
    expect(Math.abs(pathArea(circle(point(3, 4), 10)))).toBeCloseTo(Math.PI * 100, 1);
  });
  it("keeps every point of a flattened circle on the circle", () => {
    for (const at of pathPoints(circle(point(3, 4), 10)).flat()) expect(distance(at, point(3, 4))).toBeCloseTo(10, 9);
  });
  it("takes a quarter of a circle the short way and three quarters the long way", () => {
    expect(pathLength(arc(point(10, 0), point(0, 10), 10, true))).toBeCloseTo(5 * Math.PI, 2);
    expect(pathLength(arc(point(10, 0), point(0, 10), 10, true, true))).toBeCloseTo(15 * Math.PI, 2);
  });
  it("bends an arc to the side that its direction says", () => {
    const clockwise = pathBox(arc(point(0, 0), point(20, 0), 10, true))!;
    const against = pathBox(arc(point(0, 0), point(20, 0), 10, false))!;
    expect(clockwise.top).toBeCloseTo(-10, 2);
    expect(clockwise.bottom).toBeCloseTo(0, 6);
    expect(against.bottom).toBeCloseTo(10, 2);
  });
  it("gives a straight curve the length of its chord", () => expect(pathLength(curve(point(0, 0), point(3, 0), point(6, 0), point(9, 0)))).toBeCloseTo(9, 6));
  it("counts the closing line of a polygon and not of a chain", () => {
    const corners = [point(0, 0), point(3, 0), point(3, 4)];
    expect(pathLength(polyline(corners))).toBeCloseTo(7, 9);
    expect(pathLength(polyline(corners, true))).toBeCloseTo(12, 9);
  });
  it("finds no box round nothing", () => expect(pathBox([])).toBeNull());
});

describe("transforming a path", () => {
  it("keeps lengths when it is moved, turned and mirrored", () => {
    const shape = [...circle(point(0, 0), 5), ...line(point(0, 0), point(7, 7))];
    const moved = transformPath(compose(scaling(-1, 1), rotation(33), translation(4, -9)), shape);
    expect(pathLength(moved)).toBeCloseTo(pathLength(shape), 2);
  });
  it("doubles lengths and quadruples areas at twice the size", () => {
    const twice = transformPath(scaling(2), circle(point(1, 1), 5));
    expect(pathLength(twice)).toBeCloseTo(20 * Math.PI, 2);
    expect(twice.some((step) => step.kind === "arc")).toBe(true);
  });
  it("mirrors an arc to the other side", () => {
    const mirrored = pathBox(transformPath(scaling(1, -1), arc(point(0, 0), point(20, 0), 10, true)))!;
    expect(mirrored.bottom).toBeCloseTo(10, 2);
    expect(mirrored.top).toBeCloseTo(0, 6);
  });
  it("turns a circle into the ellipse that an uneven scale asks for", () => {
    const ellipse = transformPath(scaling(2, 1), circle(point(0, 0), 5));
    expect(ellipse.every((step) => step.kind !== "arc")).toBe(true);
    for (const { x, y } of pathPoints(ellipse).flat()) expect((x / 10) ** 2 + (y / 5) ** 2).toBeCloseTo(1, 2);
    expect(Math.abs(pathArea(ellipse))).toBeCloseTo(Math.PI * 50, 0);
  });
});
