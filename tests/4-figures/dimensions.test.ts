// Dimensions: the size stands above its line, arrows turn outward when it is tight, running figures keep order and distance.
import { describe, expect, it } from "vitest";
import { pathBox } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { dimension } from "../../src/4-figures/dimensions.ts";
import type { Side } from "../../src/4-figures/dimensions.ts";
import { findCollisions, placeLabels } from "../../src/4-figures/place.ts";
import { runningDimensions, runningPitch } from "../../src/4-figures/running-dimensions.ts";
import { flatItems, textBox } from "../../src/4-figures/scene.ts";
import type { TextItem } from "../../src/4-figures/scene.ts";

function drawn(width: number, text: string, side: Side = "below") {
  const to = side === "left" || side === "right" ? point(0, width) : point(width, 0);
  const items = flatItems(placeLabels([], [dimension({ name: "d", from: point(0, 0), to, side, text })]).items);
  const texts = items.filter((item): item is TextItem => item.kind === "text");
  return { items, text: texts[0]!, box: textBox(texts[0]!) };
}

describe("a linear dimension", () => {
  it("stands between the ends above its line when there is room", () => {
    const { box } = drawn(40, "247");
    expect((box.left + box.right) / 2).toBeCloseTo(20, 6);
    expect(box.bottom).toBeLessThan(7);
    expect(box.bottom).toBeGreaterThan(5);
  });
  it("moves outside when the space is too small", () => expect(drawn(3, "247").box.left).toBeGreaterThan(3));
  it("reads from the right when it measures up the page", () => {
    const { text, box } = drawn(40, "247", "left");
    expect(text.angle).toBe(90);
    expect(box.right).toBeLessThan(-7 + 0.1);
  });
  it("lies on the side asked for", () => {
    expect(drawn(40, "247", "above").box.bottom).toBeLessThan(0);
    expect(drawn(40, "247", "right").box.left).toBeGreaterThan(0);
  });
  it("starts its extension lines a gap away from the part", () => {
    for (const item of drawn(40, "247").items) if (item.kind === "path") expect(pathBox(item.path)!.top).toBeGreaterThanOrEqual(1.5 - 1e-9);
  });
  it("moves out when another dimension has its place", () => {
    const two = ["a", "b"].map((name) => dimension({ name, from: point(0, 0), to: point(40, 0), side: "below", text: "247" }));
    const placement = placeLabels([], two);
    expect(placement.unplaced).toEqual([]);
    expect(findCollisions(placement.items)).toEqual([]);
  });
});

describe("running dimensions", () => {
  const marks = [0, 1, 2, 3, 20, 20.5, 60].map((at, index) => ({ name: `m${index}`, at, text: String(at * 10) }));
  it.each(["above", "below", "left", "right"] as const)("%s the edge touch nothing and keep their order", (side) => {
    const drawing = runningDimensions({ name: "run", side, edge: 0, datum: 0, marks })!;
    expect(findCollisions(drawing.items)).toEqual([]);
    const centres = drawing.items.filter((item) => item.kind === "text").map((item) => {
      const box = textBox(item);
      return side === "above" || side === "below" ? (box.left + box.right) / 2 : (box.top + box.bottom) / 2;
    });
    expect(centres).toHaveLength(marks.length);
    centres.slice(1).forEach((at, index) => expect(at - centres[index]!).toBeGreaterThanOrEqual(runningPitch(["0"]) - 0.2));
  });
  it("print every figure once", () => {
    const texts = runningDimensions({ name: "run", side: "above", edge: 0, datum: 0, marks })!.items.filter((item) => item.kind === "text").map((item) => item.text);
    expect(texts).toEqual(marks.map((mark) => mark.text));
  });
  it("are null when the figures cannot fit", () => {
    expect(runningDimensions({ name: "run", side: "above", edge: 0, datum: 0, marks, low: 0, high: 5 })).toBeNull();
  });
  it("stay within their limits", () => {
    const drawing = runningDimensions({ name: "run", side: "above", edge: 0, datum: 0, marks, low: 0, high: 60 })!;
    for (const item of drawing.items) if (item.kind === "text") expect((textBox(item).left + textBox(item).right) / 2).toBeGreaterThanOrEqual(-0.01);
  });
});
