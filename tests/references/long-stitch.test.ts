// Published figures about sewing through a cover, against what the model gives.
import { describe, expect, it } from "vitest";
import { toMillimetres } from "../../src/units/length.ts";
import { longStitchDefinition, longStitchModel } from "../fixtures/long-stitch.ts";

const value = (model: ReturnType<typeof longStitchModel>["model"], name: string): number => {
  const { value: { n, d } } = model.values.get(name)!.quantity;
  return Number(n) / Number(d);
};

describe("D. W. Jones, Bookbinding: A Tutorial, 1995 (READ, opening): the spine is the clamped sections and one compressed thread for each", () => {
  // His example: 19 sections, thread of about 1 mm, about 1/2 mm compressed. DERIVED: 9.5 mm to add.
  const { model } = longStitchModel(longStitchDefinition(
    "{text block: {page: {height: 200 mm, width: 140 mm}, sections: 19, folded sheets: 8, swell percent: 50}, cover: {ease: 0, reinforced: no}}",
    { rest: "materials: {thread: {thickness: 1 mm}, cover: {thickness: 0.1 mm}}\n" },
  ));
  it("adds 9.5 mm to the sections", () => {
    expect(value(model, "swell")).toBeCloseTo(9.5, 9);
    expect(value(model, "spine thickness") - value(model, "text block thickness")).toBeCloseTo(9.5, 9);
  });
  it("makes the cover's spine that wide, but for what a thin cover takes at its bends and the next mark of the ruler", () => {
    const beyond = toMillimetres(model.geometry.spineWidth) - value(model, "text block thickness") - 9.5;
    expect(beyond).toBeGreaterThanOrEqual(0.078);
    expect(beyond).toBeLessThan(0.079 + 0.5);
  });
});

describe("Farnsworth 1922, limp vellum (READ): the lines of the spine stand as far apart as the sections are thick", () => {
  it("holds where cover and ease are left out of account", () => {
    const { model } = longStitchModel(longStitchDefinition(
      "{text block: {page: {height: 200 mm, width: 140 mm}, sections: 10, folded sheets: 5}, cover: {ease: 0, reinforced: no}}", { rest: "materials: {cover: {thickness: 0.01 mm}}\n" },
    ));
    const [front, back] = model.geometry.folds;
    const apart = toMillimetres(back!.at) - toMillimetres(front!.at);
    expect(apart - value(model, "spine thickness")).toBeGreaterThanOrEqual(0);
    expect(apart - value(model, "spine thickness")).toBeLessThan(0.51);
  });
});
