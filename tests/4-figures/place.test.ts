// The placer: what it places touches nothing foreign, and what cannot be placed is named.
import { describe, expect, it } from "vitest";
import { line, rectangle } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { placeEvery, placeAtScale } from "../../src/4-figures/figure.ts";
import { areaLabel, balloon, gridCentres, leaderLabel } from "../../src/4-figures/leaders.ts";
import { findCollisions, placeLabels } from "../../src/4-figures/place.ts";
import { area, flatItems, label, stroke, textBox } from "../../src/4-figures/scene.ts";

const wall = stroke(line(point(0, -50), point(0, 50)), "outline");

describe("placing labels", () => {
  it("takes the first candidate when it is free", () => {
    const { items, unplaced } = placeLabels([wall], [areaLabel("a", "card", [point(20, 0), point(40, 0)])]);
    expect(unplaced).toEqual([]);
    const text = flatItems(items).find((item) => item.kind === "text")!;
    expect(text.at.x).toBeCloseTo(20, 9);
  });
  it("passes over a candidate on a line", () => {
    const { items } = placeLabels([wall], [areaLabel("a", "card", [point(0, 0), point(40, 0)])]);
    expect(flatItems(items).find((item) => item.kind === "text")!.at.x).toBeCloseTo(40, 9);
  });
  it("passes over a candidate on an earlier label", () => {
    const { items } = placeLabels([], [areaLabel("a", "card", [point(0, 0)]), areaLabel("b", "cloth", [point(1, 1), point(30, 0)])]);
    expect(findCollisions(items)).toEqual([]);
    expect(flatItems(items).filter((item) => item.kind === "text")).toHaveLength(2);
  });
  it("names what found no place", () => {
    expect(placeLabels([wall], [areaLabel("a", "card", [point(0, 0)])]).unplaced).toEqual(["a"]);
  });
  it("keeps labels inside the bounds when there are some", () => {
    expect(placeLabels([], [areaLabel("a", "card", [point(0, 0)])], { bounds: { left: 0, top: -9, right: 9, bottom: 9 } }).unplaced).toEqual(["a"]);
  });
  it("lets a later leader run clear of an earlier label", () => {
    const items = placeEvery([label("first", "first label", point(3, -5))], [leaderLabel({ name: "second", text: "second label", target: point(0, 0) })]);
    expect(findCollisions(items)).toEqual([]);
  });
  it("places thirty leader labels round one point without a collision", () => {
    const labels = Array.from({ length: 30 }, (_, index) => leaderLabel({ name: `n${index}`, text: `part number ${index}`, target: point(index % 5, Math.floor(index / 5)) }));
    const items = placeEvery([stroke(rectangle(-2, -2, 12, 12), "outline")], labels);
    expect(findCollisions(items)).toEqual([]);
    expect(flatItems(items).filter((item) => item.kind === "text")).toHaveLength(30);
  });
  it("keeps a balloon's ring off the lines it could cover", () => {
    const items = placeEvery([stroke(rectangle(-2, -40, 4, 80), "outline")], [balloon({ name: "b", letter: "B", target: point(0, 0), reach: 2 })]);
    const text = flatItems(items).find((item) => item.kind === "text")!;
    expect(Math.abs((textBox(text).left + textBox(text).right) / 2)).toBeGreaterThan(2 + 2.6);
  });
  it("gives the same places every time", () => {
    const draw = () => placeEvery([wall], Array.from({ length: 8 }, (_, index) => leaderLabel({ name: `n${index}`, text: `label ${index}`, target: point(1, index) })));
    expect(draw()).toEqual(draw());
  });
});

describe("enlarging a figure", () => {
  it("goes on to the next scale when a label finds no place", () => {
    const { scale } = placeAtScale([1, 2, 3], (factor) => ({
      fixed: [stroke(rectangle(0, 0, 5 * factor, 5 * factor), "outline")], labels: [areaLabel("a", "card", [point(2.5 * factor, 2.5 * factor)])],
    }));
    expect(scale).toBe(2);
  });
  it("is an internal error when no scale will do", () => {
    expect(() => placeAtScale([1], () => ({ fixed: [wall], labels: [areaLabel("a", "card", [point(0, 0)])] }))).toThrow(/internal error: no place for the labels a/);
  });
});

describe("finding collisions", () => {
  it("sees a label on a label and a label on a foreign line", () => {
    expect(findCollisions([label("a", "card", point(0, 0)), label("b", "card", point(2, 0))])).toHaveLength(1);
    expect(findCollisions([wall, label("a", "card", point(-2, 0))])).toHaveLength(1);
  });
  it("passes a label on its own line, and one on a plain tone", () => {
    expect(findCollisions([stroke(line(point(-9, 0), point(9, 0)), "dimension", "a"), label("a", "card", point(0, 0))])).toEqual([]);
    expect(findCollisions([area(rectangle(-9, -9, 30, 30), "card", "none"), label("a", "card", point(0, 0))])).toEqual([]);
  });
  it("passes the lines of one label set under each other", () => {
    expect(findCollisions([label("a", "one", point(0, 0)), label("a", "two", point(0, 1))])).toEqual([]);
  });
});

it("grid centres start in the middle", () => expect(gridCentres({ left: 0, top: 0, right: 10, bottom: 20 }, 3, 3)[0]).toEqual({ x: 5, y: 10 }));
