// Bounds, raster points, units and sums: each against numbers worked out by hand.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fewestSheetsBound } from "../../../src/3-plan/cutting/plain-bounds.ts";
import { bestOnBar } from "../../../src/3-plan/cutting/price-bar.ts";
import { provenBound } from "../../../src/3-plan/cutting/proven-bound.ts";
import { rasterPoints, sumsOf } from "../../../src/3-plan/cutting/raster-points.ts";
import { nextSum } from "../../../src/3-plan/cutting/sheet-problem.ts";
import { unitFor } from "../../../src/3-plan/cutting/whole-units.ts";
import { meterFor } from "../../../src/3-plan/cutting/work-meter.ts";
import { inches, mm, sameLength } from "../../../src/units/length.ts";

const oneSheet = (width: number, height: number) => [{ width, height, cost: 1, second: 1, available: Infinity }];

describe("raster points", () => {
  it("are all sums of sizes, thinned so that both sides of a cut are as large as they can be", () => {
    expect(sumsOf([3, 5], 14)).toEqual([0, 3, 5, 6, 8, 9, 10, 11, 12, 13, 14]);
    // Sums of 4 and 7 up to 13 are 0 4 7 8 11 12; what 13 less each leaves holds 12 8 4 4 0 0 (13 − 0 → 12, 13 − 4 → 8, 13 − 7 → 4, 13 − 8 → 4, …).
    expect(rasterPoints([4, 7], 13)).toEqual([0, 4, 8, 12]);
  });
});

describe("plain bounds", () => {
  it("see that pieces of more than half an edge do not stand beside each other, which area does not", () => {
    expect(fewestSheetsBound({ pieces: [{ width: 6, height: 1, count: 30, mayTurn: false }], sheets: oneSheet(10, 10) })).toBe(3);
    expect(fewestSheetsBound({ pieces: [{ width: 6, height: 6, count: 5, mayTurn: true }], sheets: oneSheet(10, 10) })).toBe(5);
  });

  it("count an exact fit as a fit", () => {
    expect(fewestSheetsBound({ pieces: [{ width: 5, height: 5, count: 8, mayTurn: false }], sheets: oneSheet(10, 10) })).toBe(2);
  });
});

describe("the bound from values", () => {
  it("is the value of the pieces over the most that a sheet holds, rounded up", () => {
    expect(provenBound([{ cost: 1, available: Infinity }], [10], [1], [4])).toBe(3);
    expect(provenBound([{ cost: 1, available: Infinity }], [12], [1], [4])).toBe(3);
    expect(provenBound([{ cost: 7, available: Infinity }], [12], [1], [4])).toBe(21);
  });

  it("takes off what the few cheap sheets hold beyond their price", () => {
    // One leftover sheet holds 4 for 1 coin, new ones 4 for 2: 12 pieces cost 1 + 2 × 2.
    expect(provenBound([{ cost: 1, available: 1 }, { cost: 2, available: Infinity }], [12], [1], [4, 4])).toBe(5);
  });

  it("is not lifted by rounding", () => {
    expect(provenBound([{ cost: 1, available: Infinity }], [3], [333_333_333_333], [999_999_999_999])).toBe(1);
    expect(provenBound([{ cost: 1, available: Infinity }], [3], [333_333_333_334], [1_000_000_000_000])).toBe(2);
  });
});

describe("sums of costs", () => {
  it("are the next that can be paid", () => {
    expect(nextSum(161, [16])).toBe(176);
    expect(nextSum(7, [3, 5])).toBe(8);
    expect(nextSum(0, [3, 5])).toBe(0);
    expect(nextSum(1, [4, 6, 9])).toBe(4);
    expect(nextSum(11, [4, 6, 9])).toBe(12);
    expect(nextSum(16, [4, 6, 9])).toBe(16);
  });
});

describe("the unit of a problem", () => {
  it("makes every length whole and gives it back exactly", () => {
    const lengths = [inches(9), inches(3, 64), mm("0.45"), mm(700)];
    const unit = unitFor(lengths);
    for (const length of lengths) expect(sameLength(unit.toLength(unit.toWhole(length)), length)).toBe(true);
    // 700 mm and 450 mm are 14 and 9 times 50 mm.
    expect([mm(700), mm(450)].map((length) => unitFor([mm(700), mm(450)]).toWhole(length))).toEqual([14, 9]);
  });
});

describe("the best choice on a bar", () => {
  it("is what trying everything gives", () => {
    const item = fc.record({ size: fc.integer({ min: 1, max: 12 }), count: fc.integer({ min: 0, max: 3 }), value: fc.integer({ min: 0, max: 20 }) });
    fc.assert(fc.property(fc.array(item, { maxLength: 5 }), fc.integer({ min: 0, max: 30 }), (items, length) => {
      const most = (index: number, left: number): number => {
        const each = items[index];
        if (!each) return 0;
        return Math.max(...Array.from({ length: each.count + 1 }, (_, times) => (times * each.size > left ? 0 : times * each.value + most(index + 1, left - times * each.size))));
      };
      const choice = bestOnBar(items, length, meterFor(Infinity));
      expect(choice.value).toBe(most(0, length));
      expect(items.reduce((sum, { value }, index) => sum + value * choice.counts[index]!, 0)).toBe(choice.value);
      expect(items.reduce((sum, { size }, index) => sum + size * choice.counts[index]!, 0)).toBeLessThanOrEqual(length);
    }), { numRuns: 200 });
  });
});
