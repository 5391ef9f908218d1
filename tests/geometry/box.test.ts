// Boxes meet only when they share an area, and lines meet boxes only inside them.
import { describe, expect, it } from "vitest";
import { boxAround, boxContains, boxesMeet, boxOf, boxUnion, growBox, segmentMeetsBox } from "../../src/geometry/box.ts";
import { point } from "../../src/geometry/point.ts";

const box = boxOf(10, 10, 20, 10);

describe("boxes", () => {
  it("meet when they share an area", () => expect(boxesMeet(box, boxOf(29, 19, 5, 5))).toBe(true));
  it("do not meet when they only share an edge", () => expect(boxesMeet(box, boxOf(30, 10, 5, 5))).toBe(false));
  it("do not meet when they overlap along one axis only", () => expect(boxesMeet(box, boxOf(12, 25, 5, 5))).toBe(false));
  it("are contained up to the rim and no further", () => {
    expect(boxContains(box, boxOf(10, 10, 20, 10))).toBe(true);
    expect(boxContains(box, boxOf(10, 10, 20.01, 10))).toBe(false);
  });
  it("grow on all four sides", () => expect(growBox(box, 1)).toEqual({ left: 9, top: 9, right: 31, bottom: 21 }));
  it("around nothing are null", () => {
    expect(boxAround([])).toBeNull();
    expect(boxUnion([])).toBeNull();
  });
  it("unite to the smallest box round both", () => expect(boxUnion([box, boxOf(0, 0, 1, 1)])).toEqual({ left: 0, top: 0, right: 30, bottom: 20 }));
});

describe("a line", () => {
  it("meets a box it runs through without a corner inside", () => expect(segmentMeetsBox(point(0, 15), point(50, 15), box)).toBe(true));
  it("meets a box that holds it whole", () => expect(segmentMeetsBox(point(12, 12), point(14, 14), box)).toBe(true));
  it("meets a box when it ends inside", () => expect(segmentMeetsBox(point(0, 0), point(11, 11), box)).toBe(true));
  it("does not meet a box whose rim it runs along", () => expect(segmentMeetsBox(point(0, 10), point(50, 10), box)).toBe(false));
  it("does not meet a box it passes at a corner", () => expect(segmentMeetsBox(point(0, 25), point(15, 40), box)).toBe(false));
  it("does not meet a box it stops short of", () => expect(segmentMeetsBox(point(0, 15), point(9.9, 15), box)).toBe(false));
  it("of no length meets the box it lies in", () => {
    expect(segmentMeetsBox(point(15, 15), point(15, 15), box)).toBe(true);
    expect(segmentMeetsBox(point(5, 15), point(5, 15), box)).toBe(false);
  });
});
