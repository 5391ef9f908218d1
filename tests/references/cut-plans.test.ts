// Cut plans against published instances: the sources stand beside each set in the fixture.
import { expect, test } from "vitest";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { checkBarPlan, checkSheetPlan } from "../../src/3-plan/cutting/check-cut-plan.ts";
import { countsIn } from "../../src/3-plan/cutting/cut-tree.ts";
import { planBars } from "../../src/3-plan/cutting/plan-bars.ts";
import { planSheets } from "../../src/3-plan/cutting/plan-sheets.ts";
import { exactTable, lyingOn } from "../../src/3-plan/cutting/price-sheet.ts";
import type { BarCutRequest, SheetCutRequest } from "../../src/3-plan/cutting/types.ts";
import { mm } from "../../src/units/length.ts";
import { fewestBars, fewestSheets, mostValuableSheets } from "../fixtures/published-cutting.ts";

const solver = await loadLinearSolver();

for (const { name, sheet: [width, height], pieces, published } of mostValuableSheets) {
  test(`${name}: one sheet holds a value of ${published} and no more`, () => {
    const sized = pieces.map(([pieceWidth, pieceHeight]) => ({ width: pieceWidth, height: pieceHeight, mayTurn: false }));
    const values = pieces.map((piece) => piece[2]);
    const { value, tree } = exactTable(width, height, lyingOn(sized, width, height), 1e9)!.price(values);
    expect(value).toBe(published);
    expect(countsIn(tree, pieces.length).reduce((sum, count, piece) => sum + count * values[piece]!, 0)).toBe(published);
  });
}

for (const { name, sheet: [width, height], pieces, published } of fewestSheets) {
  test(`${name}: ${published} sheets are enough, and our plan is sound and no worse`, () => {
    const request: SheetCutRequest = {
      pieces: pieces.map(([pieceWidth, pieceHeight, count], index) => ({ id: `piece ${index + 1}`, width: mm(pieceWidth), height: mm(pieceHeight), count, mayTurn: false })),
      sheets: [{ id: "sheet", width: mm(width), height: mm(height), cost: 1, available: null }],
      aim: "fewest-sheets",
    };
    const result = planSheets(request, solver);
    if (result.kind !== "plan") throw new Error(result.kind);
    expect(checkSheetPlan(request, result.plan)).toEqual([]);
    expect(result.plan.sheets).toBeLessThanOrEqual(published);
    expect(result.plan.bound.mostAbove).toBe(0);
  });
}

for (const { name, bar, pieces, published } of fewestBars) {
  test(`${name}: ${published} bars, proven`, () => {
    const request: BarCutRequest = {
      pieces: pieces.map(([length, count], index) => ({ id: `piece ${index + 1}`, length: mm(length), count })),
      bars: [{ id: "bar", length: mm(bar), cost: 1, available: null }],
      aim: "fewest-bars",
    };
    const result = planBars(request, solver);
    if (result.kind !== "plan") throw new Error(result.kind);
    expect(checkBarPlan(request, result.plan)).toEqual([]);
    expect(result.plan.bars).toBe(published);
    expect(result.plan.bound).toEqual({ counts: "bars", atLeast: published, mostAbove: 0 });
  });
}
