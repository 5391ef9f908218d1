// Transforms and the isometric view, checked against points worked out by hand.
import { describe, expect, it } from "vitest";
import { along, between, distance, midpoint, point, polar, quarterLeft, unitVector } from "../../src/geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../src/geometry/project.ts";
import { compose, determinant, isSimilarity, rotation, scaling, transformPoint, translation } from "../../src/geometry/transform.ts";

function near(actual: { readonly x: number; readonly y: number }, x: number, y: number): void {
  expect(actual.x).toBeCloseTo(x, 9);
  expect(actual.y).toBeCloseTo(y, 9);
}

describe("points", () => {
  it("lie where their angle says, up the page at 90 degrees", () => near(polar(point(1, 1), 10, 90), 1, -9));
  it("turn left from right to up", () => near(quarterLeft(point(1, 0)), 0, -1));
  it("between two others divide the way", () => near(between(point(0, 0), point(10, 20), 0.25), 2.5, 5));
  it("in the middle divide it evenly", () => near(midpoint(point(0, 0), point(10, 20)), 5, 10));
  it("along a line keep their distance", () => near(along(point(0, 0), point(30, 40), 5), 3, 4));
  it("without direction point right", () => near(unitVector(point(0, 0)), 1, 0));
});

describe("transforms", () => {
  it("turn against the clock as seen on the page", () => near(transformPoint(rotation(90), point(1, 0)), 0, -1));
  it("turn about a centre", () => near(transformPoint(rotation(180, point(5, 5)), point(6, 5)), 4, 5));
  it("are done in the order in which they are named", () => near(transformPoint(compose(translation(1, 0), scaling(2)), point(1, 1)), 4, 2));
  it("know when circles stay circles", () => {
    expect(isSimilarity(compose(rotation(20), scaling(-3, 3), translation(1, 2)))).toBe(true);
    expect(isSimilarity(scaling(2, 1))).toBe(false);
  });
  it("have a negative determinant when they mirror", () => expect(determinant(scaling(-1, 1))).toBe(-1));
});

describe("the isometric view", () => {
  it("keeps lengths along each of the three axes", () => {
    for (const axis of [spacePoint(7, 0, 0), spacePoint(0, 7, 0), spacePoint(0, 0, 7)]) {
      expect(distance(isometric(axis), isometric(spacePoint(0, 0, 0)))).toBeCloseTo(7, 9);
    }
  });
  it("runs x to the lower right, y to the upper right and z up", () => {
    near(isometric(spacePoint(2, 0, 0)), Math.sqrt(3), 1);
    near(isometric(spacePoint(0, 2, 0)), Math.sqrt(3), -1);
    near(isometric(spacePoint(0, 0, 2)), 0, -2);
  });
  it("lays a flat drawing where its corners lie in space", () => {
    const lay = isometricPlane(spacePoint(1, 2, 3), spacePoint(1, 0, 0), spacePoint(0, 0, -1));
    const expected = isometric(spacePoint(1 + 5, 2, 3 - 4));
    near(transformPoint(lay, point(5, 4)), expected.x, expected.y);
  });
});
