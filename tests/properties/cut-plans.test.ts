// Cut plans of random orders: always sound, never below what trying everything gives, and equal to it where they claim a minimum.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { checkBarPlan, checkSheetPlan } from "../../src/3-plan/cutting/check-cut-plan.ts";
import { planBars } from "../../src/3-plan/cutting/plan-bars.ts";
import { planSheets } from "../../src/3-plan/cutting/plan-sheets.ts";
import { usualEffort } from "../../src/3-plan/cutting/solve-sheets.ts";
import type { BarCutRequest, SheetCutRequest } from "../../src/3-plan/cutting/types.ts";
import { inches, mm } from "../../src/units/length.ts";
import { fewestBarsByTrying, fewestByTrying } from "../fixtures/brute-cutting.ts";

const solver = await loadLinearSolver();
const smallEffort = { ...usualEffort, work: 300_000, table: 3e6, iterations: 1_000, rounds: 40, dives: 1, repairs: 5 };

const edge = fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 20, max: 400 }).map((size) => mm(size)) }, { weight: 1, arbitrary: fc.integer({ min: 15, max: 200 }).map((sixteenths) => inches(sixteenths, 16)) });
const piece = fc.record({ width: edge, height: edge, count: fc.integer({ min: 1, max: 14 }), mayTurn: fc.boolean() });
const sheet = fc.record({ width: fc.integer({ min: 300, max: 1000 }).map((size) => mm(size)), height: fc.integer({ min: 300, max: 1000 }).map((size) => mm(size)), cost: fc.integer({ min: 0, max: 90 }), available: fc.option(fc.integer({ min: 1, max: 30 })) });
const sheetRequest: fc.Arbitrary<SheetCutRequest> = fc.record({
  pieces: fc.array(piece, { minLength: 1, maxLength: 6 }).map((list) => list.map((each, index) => ({ ...each, id: `piece ${index}` }))),
  sheets: fc.array(sheet, { minLength: 1, maxLength: 2 }).map((list) => list.map((each, index) => ({ ...each, id: `sheet ${index}` }))),
  kerf: fc.integer({ min: 0, max: 4 }).map((size) => mm(size)),
  trim: fc.integer({ min: 0, max: 9 }).map((size) => mm(size)),
  aim: fc.constantFrom("fewest-sheets", "lowest-cost"),
});

describe("plans for sheets", () => {
  it("have no fault that an independent check finds", () => {
    let plans = 0;
    fc.assert(fc.property(sheetRequest, (request) => {
      const result = planSheets(request, solver, smallEffort);
      if (result.kind === "plan") {
        plans++;
        expect(checkSheetPlan(request, result.plan)).toEqual([]);
      }
    }), { numRuns: 12 });
    expect(plans).toBeGreaterThan(4);
  });

  it("need as many sheets as trying everything does", () => {
    const small = fc.record({ width: fc.integer({ min: 1, max: 9 }), height: fc.integer({ min: 1, max: 7 }), mayTurn: fc.boolean() });
    fc.assert(fc.property(fc.array(small, { minLength: 1, maxLength: 6 }), fc.integer({ min: 6, max: 10 }), fc.integer({ min: 5, max: 8 }), (pieces, width, height) => {
      const request: SheetCutRequest = {
        pieces: pieces.map((each, index) => ({ id: `${index}`, width: mm(each.width), height: mm(each.height), count: 1, mayTurn: each.mayTurn })),
        sheets: [{ id: "sheet", width: mm(width), height: mm(height), cost: 1, available: null }],
        aim: "fewest-sheets",
      };
      const fewest = fewestByTrying(pieces, width, height);
      const result = planSheets(request, solver, smallEffort);
      if (result.kind !== "plan") {
        expect(fewest).toBe(Infinity);
        return;
      }
      expect(checkSheetPlan(request, result.plan)).toEqual([]);
      expect(result.plan.bound.atLeast).toBeLessThanOrEqual(fewest);
      expect(result.plan.sheets).toBe(fewest);
    }), { numRuns: 40 });
  });

  it("are the same when made twice", () => {
    const [request] = fc.sample(sheetRequest.filter(({ pieces }) => pieces.length > 4), 1);
    expect(planSheets(request!, solver, smallEffort)).toEqual(planSheets(request!, solver, smallEffort));
  });
});

describe("plans for bars", () => {
  it("are sound and need as many bars as trying everything does", () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 1, maxLength: 8 }), fc.integer({ min: 60, max: 120 }), fc.integer({ min: 0, max: 3 }), (lengths, bar, kerf) => {
      const request: BarCutRequest = { pieces: lengths.map((length, index) => ({ id: `${index}`, length: mm(length), count: 1 })), bars: [{ id: "bar", length: mm(bar), cost: 1, available: null }], kerf: mm(kerf), aim: "fewest-bars" };
      const result = planBars(request, solver, smallEffort);
      if (result.kind !== "plan") throw new Error(result.kind);
      expect(checkBarPlan(request, result.plan)).toEqual([]);
      const fewest = fewestBarsByTrying(lengths.map((length) => length + kerf), bar + kerf);
      expect(result.plan.bars).toBe(fewest);
      expect(result.plan.bound.atLeast).toBeLessThanOrEqual(fewest);
    }), { numRuns: 40 });
  });

  it("are sound with several lengths of bar at several prices", () => {
    const bars = fc.array(fc.record({ length: fc.integer({ min: 60, max: 200 }).map((size) => mm(size)), cost: fc.integer({ min: 0, max: 20 }), available: fc.option(fc.integer({ min: 1, max: 40 })) }), { minLength: 1, maxLength: 3 });
    const pieces = fc.array(fc.record({ length: fc.integer({ min: 10, max: 60 }).map((size) => mm(size)), count: fc.integer({ min: 1, max: 20 }) }), { minLength: 1, maxLength: 6 });
    fc.assert(fc.property(pieces, bars, fc.constantFrom("fewest-bars", "lowest-cost"), (wanted, stock, aim) => {
      const request: BarCutRequest = { pieces: wanted.map((each, index) => ({ ...each, id: `piece ${index}` })), bars: stock.map((each, index) => ({ ...each, id: `bar ${index}` })), aim };
      const result = planBars(request, solver, smallEffort);
      if (result.kind === "plan") expect(checkBarPlan(request, result.plan)).toEqual([]);
    }), { numRuns: 12 });
  });
});
