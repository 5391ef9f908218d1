// Cut plans worked out by hand: marks from the straight edge, kerf and trimmed edges, leftovers, grain, prices and what is refused.
import { describe, expect, it } from "vitest";
import { loadLinearSolver } from "../../../src/build/linear-solver.ts";
import { checkSheetPlan } from "../../../src/3-plan/cutting/check-cut-plan.ts";
import { planBars } from "../../../src/3-plan/cutting/plan-bars.ts";
import { leastSheets, planSheets } from "../../../src/3-plan/cutting/plan-sheets.ts";
import type { SheetCutPlan, SheetCutRequest } from "../../../src/3-plan/cutting/types.ts";
import { inches, mm, toMillimetres } from "../../../src/units/length.ts";

const solver = await loadLinearSolver();

function planned(request: SheetCutRequest): SheetCutPlan {
  const result = planSheets(request, solver);
  if (result.kind !== "plan") throw new Error(result.kind);
  expect(checkSheetPlan(request, result.plan)).toEqual([]);
  return result.plan;
}

const card = { id: "card", width: mm(700), height: mm(1000), cost: 0, available: null };

describe("a plan for sheets", () => {
  it("gives one layout, its cuts from the straight edge and what is left", () => {
    const plan = planned({ pieces: [{ id: "page", width: mm(300), height: mm(450), count: 8, mayTurn: false }], sheets: [card], aim: "fewest-sheets" });
    expect([plan.sheets, plan.bound]).toEqual([2, { counts: "sheets", atLeast: 2, mostAbove: 0 }]);
    const [layout] = plan.layouts;
    expect(layout!.times).toBe(2);
    // 2 × 300 across leaves 100 of 700, 2 × 450 along leaves 100 of 1000.
    expect(layout!.pieces.map(({ x, y }) => [toMillimetres(x), toMillimetres(y)]).sort()).toEqual([[0, 0], [0, 450], [300, 0], [300, 450]].sort());
    const marks = layout!.cuts.map(({ measured, marks: list }) => [measured, ...list.map(toMillimetres)]);
    expect(marks[0]).toEqual(["from-left", 300, 600]);
    expect(marks.slice(1)).toEqual([["from-below", 450, 900], ["from-below", 450, 900]]);
  });

  it("counts the saw's width once between pieces, and once beyond the last one where anything is left", () => {
    const strips = (width: number): SheetCutRequest => ({ pieces: [{ id: "strip", width: mm(width), height: mm(1000), count: 7, mayTurn: false }], sheets: [card], kerf: mm(2), aim: "fewest-sheets" });
    // 7 × 98 + 6 × 2 = 698 ≤ 700, but 7 × 98.4 would be 700.8.
    expect(planned(strips(98)).sheets).toBe(1);
    expect(planned(strips(99)).sheets).toBe(2);
    expect(planned(strips(98)).layouts[0]!.cuts[0]!.marks.map(toMillimetres)).toEqual([98, 198, 298, 398, 498, 598, 698]);
  });

  it("trims the edges first", () => {
    const plan = planned({ pieces: [{ id: "page", width: mm(340), height: mm(980), count: 2, mayTurn: false }], sheets: [card], trim: mm(10), aim: "fewest-sheets" });
    expect(plan.sheets).toBe(1);
    expect(plan.layouts[0]!.cuts.map(({ part, marks }) => [part, ...marks.map(toMillimetres)])).toEqual([["sheet", 10, 690], ["1a", 10, 990], ["2a", 340]]);
  });

  it("turns a piece only where it may be turned", () => {
    const boards = (mayTurn: boolean): SheetCutRequest => ({ pieces: [{ id: "board", width: mm(500), height: mm(350), count: 4, mayTurn }], sheets: [card], aim: "fewest-sheets" });
    // Upright 2 × 2 of 350 × 500 fill the sheet; lying, only one stands beside nothing, two above each other.
    expect(planned(boards(true)).sheets).toBe(1);
    expect(planned(boards(false)).sheets).toBe(2);
  });

  it("leaves one large offcut rather than several small ones, and says what it holds", () => {
    const plan = planned({ pieces: [{ id: "label", width: mm(100), height: mm(100), count: 7, mayTurn: true }, { id: "board", width: mm(400), height: mm(600), count: 1, mayTurn: false }], sheets: [card], aim: "fewest-sheets" });
    const [largest] = plan.layouts[0]!.offcuts;
    expect(toMillimetres(largest!.width) * toMillimetres(largest!.height)).toBeGreaterThanOrEqual(700 * 300);
    expect(largest!.holds).toContain("label");
  });

  it("takes the cheaper sheets where money counts and the fewer where sheets count", () => {
    const pieces = [{ id: "page", width: mm(300), height: mm(400), count: 4, mayTurn: false }];
    const sheets = [{ id: "small", width: mm(300), height: mm(400), cost: 100, available: null }, { id: "large", width: mm(600), height: mm(800), cost: 450, available: null }];
    const cheap = planned({ pieces, sheets, aim: "lowest-cost" });
    expect([cheap.sheets, cheap.cost, cheap.bound]).toEqual([4, 400, { counts: "cost", atLeast: 400, mostAbove: 0 }]);
    const few = planned({ pieces, sheets, aim: "fewest-sheets" });
    expect([few.sheets, few.cost, few.bound]).toEqual([1, 450, { counts: "sheets", atLeast: 1, mostAbove: 0 }]);
  });

  it("needs so many sheets whatever they cost: in all, and of a size that alone holds a piece", () => {
    const sheets = [{ id: "small", width: mm(300), height: mm(400), cost: 100, available: null }, { id: "large", width: mm(600), height: mm(800), cost: 450, available: null }];
    const pieces = [{ id: "page", width: mm(300), height: mm(400), count: 9, mayTurn: false }, { id: "board", width: mm(350), height: mm(500), count: 3, mayTurn: false }];
    // No sheet holds two boards, nor a page beside one: three large ones for the boards, and nine pages at four on a sheet take three more.
    expect(leastSheets({ pieces, sheets, aim: "lowest-cost" })).toEqual({ together: 6, ofSize: [0, 3] });
    const plan = planned({ pieces, sheets, aim: "lowest-cost" });
    expect(plan.layouts.filter(({ sheet }) => sheet === "large").reduce((sum, { times }) => sum + times, 0)).toBeGreaterThanOrEqual(3);
    expect(plan.sheets).toBeGreaterThanOrEqual(6);
  });

  it("takes the cheaper of two equal numbers of sheets", () => {
    const sheets = [{ id: "dear", width: mm(600), height: mm(400), cost: 500, available: null }, { id: "cheap", width: mm(610), height: mm(410), cost: 300, available: null }];
    expect(planned({ pieces: [{ id: "page", width: mm(300), height: mm(400), count: 6, mayTurn: false }], sheets, aim: "fewest-sheets" })).toMatchObject({ sheets: 3, cost: 900 });
  });

  it("keeps to what is there", () => {
    const request: SheetCutRequest = { pieces: [{ id: "page", width: mm(300), height: mm(400), count: 3, mayTurn: false }], sheets: [{ id: "left over", width: mm(300), height: mm(400), cost: 0, available: 1 }, { id: "new", width: mm(300), height: mm(800), cost: 10, available: null }], aim: "lowest-cost" };
    expect(planned(request)).toMatchObject({ sheets: 2, cost: 10 });
    expect(planSheets({ ...request, sheets: [request.sheets[0]!] }, solver)).toEqual({ kind: "too-few-sheets" });
  });

  it("names the pieces that fit no sheet", () => {
    const pieces = [{ id: "wall", width: mm(800), height: mm(100), count: 1, mayTurn: false }, { id: "leaf", width: mm(800), height: mm(100), count: 1, mayTurn: true }];
    expect(planSheets({ pieces, sheets: [card], aim: "fewest-sheets" }, solver)).toEqual({ kind: "too-large", pieces: ["wall"] });
  });

  it("holds inches and millimetres in one plan exactly", () => {
    // 4 × 6 in = 609.6 mm: fits 609.6 mm and not 609.5 mm.
    const request = (width: string): SheetCutRequest => ({ pieces: [{ id: "page", width: inches(6), height: mm(100), count: 4, mayTurn: false }], sheets: [{ id: "sheet", width: mm(width), height: mm(100), cost: 0, available: null }], aim: "fewest-sheets" });
    expect(planned(request("609.6")).sheets).toBe(1);
    expect(planned(request("609.5")).sheets).toBe(2);
  });
});

describe("a plan for bars", () => {
  it("cuts thread with the least left over", () => {
    const result = planBars({ pieces: [{ id: "long", length: mm(600), count: 2 }, { id: "short", length: mm(400), count: 2 }], bars: [{ id: "skein", length: mm(1000), cost: 0, available: null }], aim: "fewest-bars" }, solver);
    expect(result).toMatchObject({ kind: "plan", plan: { bars: 2, bound: { counts: "bars", atLeast: 2, mostAbove: 0 } } });
  });

  it("names what is longer than every bar", () => {
    expect(planBars({ pieces: [{ id: "long", length: mm(1001), count: 1 }], bars: [{ id: "skein", length: mm(1000), cost: 0, available: null }], aim: "fewest-bars" }, solver)).toEqual({ kind: "too-long", pieces: ["long"] });
  });
});
