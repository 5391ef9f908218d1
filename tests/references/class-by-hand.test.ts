// One class worked out by hand from its definition, with pencil and paper: pieces, sheets, packs, what is over, cost and kit price.
import path from "node:path";
import { describe, expect, it } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";

const project = (await readContent(path.resolve(import.meta.dirname, "../../content"))).find(({ name }) => name === "tide-tables")!;
const { booklets } = await computeProject(project, loadLinearSolver);
const own = booklets[0]!.plan.class!;

/*
 * 20 participants, the teacher, 2 spare sets: 23 sets. A page is 210 × 148 mm, so a folded sheet is 210 × 296 mm, the cover about as wide.
 * Text paper: 6 sheets a book, 138 pieces of 210 × 296 mm. A4 has its grain along the short side; laid with the grain up it is 210 high
 * and 297 wide: one piece each. 138 sheets, 2 packs of 100 at 6.20: 12.40; 62 over. Used: 138 × 0.062 = 8.556.
 * Covers: 23 of 210 × 300.5 mm or less. 500 × 700 mm, grain short, lies 500 high and 700 wide: 2 × 2 = 4 a sheet. 23 ÷ 4 = 5.75: 6 sheets at 1.30: 7.80.
 * Thread: at most 700 mm a book: 23 × 0.7 = 16.1 m of 25 m: one spool, 4.80.
 * To spend: 12.40 + 7.80 + 4.80 = 25.00; 25.00 ÷ 20 = 1.25 each. Used: 8.556 + 7.80 + 4.80 = 21.156; ÷ 23 = 0.9198: 0.92 a set, and a kit without margin.
 */
describe("a class of twenty, worked by hand", () => {
  it("cuts the same number of pieces from the same number of sheets", () => {
    expect(own.sets).toBe(23);
    expect(own.cutPlans.map((each) => [each.role, each.request.pieces.reduce((sum, { count }) => sum + count, 0), each.plan.sheets])).toEqual([["text paper", 138, 138], ["cover paper", 23, 6]]);
  });

  it("buys the same packs", () => {
    expect(own.orders.map(({ role, packs, price, over }) => [role, packs, price, over])).toEqual([["text paper", 2, 1240, 62], ["cover paper", 6, 780, 0], ["thread", 1, 480, 0]]);
  });

  it("comes to the same sums", () => {
    expect(own.costs).toEqual({ toSpend: "€\u00a025.00", perParticipant: "€\u00a01.25", usedPerSet: "€\u00a00.92", kitPrice: "€\u00a00.92", unpriced: [] });
  });
});
