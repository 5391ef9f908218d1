// Published figures about holes, imposition and creep, against what the model and the plan give.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { pagesOnSheets } from "../../src/catalogue/nested-sheets.ts";
import type { Model } from "../../src/2-model/types.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import { pamphletDefinition, stabBindingDefinition } from "../fixtures/sewn-books.ts";

function pamphlet(overrides: Parameters<typeof pamphletDefinition>[0]): Model<"pamphlet"> {
  return buildModel(pamphletDefinition(overrides)).model as Model<"pamphlet">;
}

describe("Bean & Brodhead 1918, Problem I (READ)", () => {
  it.each([["4.5", "3"], ["6", "4.5"], ["8.5", "5.5"], ["12", "9"]])("three holes: one in the middle, one 1/2 to 1 1/2 in from each end of a page of %s × %s in", (height, width) => {
    const { geometry } = pamphlet({ units: "in", book: { page: { height: inches(height), width: inches(width) } } });
    expect(geometry.stations).toHaveLength(3);
    expect(toMillimetres(geometry.endDistance)).toBeGreaterThanOrEqual(12.7);
    expect(toMillimetres(geometry.endDistance)).toBeLessThanOrEqual(38.1);
  });

  it("the cover overhangs by 1/8 to 1/4 in unless the author says otherwise", () => {
    const { geometry } = pamphlet({ units: "in" });
    expect(toMillimetres(geometry.square)).toBeGreaterThanOrEqual(3.175);
    expect(toMillimetres(geometry.square)).toBeLessThanOrEqual(6.35);
  });
});

describe("nested sections, stored pages on imposition and pre-press (READ)", () => {
  it("28 pages on seven sheets: the outermost has 28 | 1 outside and 2 | 27 inside", () => {
    const sheets = pagesOnSheets(7);
    expect(sheets[0]).toEqual({ outer: [28, 1], inner: [2, 27] });
    expect(sheets).toHaveLength(7);
  });

  it("every page stands once, and each pair sums to one more than the pages", () => {
    for (const count of [1, 2, 5, 8, 20]) {
      const pages = pagesOnSheets(count).flatMap(({ outer, inner }) => [...outer, ...inner]);
      expect([...pages].sort((a, b) => a - b)).toEqual(Array.from({ length: 4 * count }, (_, index) => index + 1));
      for (const { outer, inner } of pagesOnSheets(count)) expect([outer[0] + outer[1], inner[0] + inner[1]]).toEqual([4 * count + 1, 4 * count + 1]);
    }
  });

  it("32 pages on 0.10 mm paper creep by 0.7 mm pressed sharp; the published factors of 1.2 to 1.4 lie between our two values", () => {
    const { geometry } = pamphlet({ book: { sheets: 8 }, thickness: { "text paper": mm("0.1") } });
    expect(toMillimetres(geometry.leastCreep)).toBeCloseTo(0.7, 9);
    expect(toMillimetres(geometry.creep)).toBeGreaterThan(0.7 * 1.4);
    expect(toMillimetres(geometry.creep)).toBeCloseTo((0.7 * Math.PI) / 2, 4);
  });
});

describe("Vaughn 1912, notebook sewn through the side (READ): holes about 1/4 in from the back", () => {
  it("a set-back of 1/4 in is not warned of, a smaller one is", () => {
    const codes = (setBack: Parameters<typeof toMillimetres>[0]): readonly string[] => buildModel(stabBindingDefinition({ units: "in", book: { holes: { count: 4, "set back": setBack, "corner distance": inches(1, 2) } } })).model.findings.map(({ code }) => code);
    expect(codes(inches(1, 4))).not.toContain("set-back-too-small");
    expect(codes(inches(7, 32))).toContain("set-back-too-small");
  });
});
