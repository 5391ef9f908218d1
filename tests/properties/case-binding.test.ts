// Laws of the case binding over many sizes, in both units: sizes that add up, a thread that keeps its laws, figures without collisions.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { breachesOf } from "../../src/2-model/sewing/laws.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { drawings } from "../../src/4-figures/case-binding.ts";
import { finishFigure } from "../../src/4-figures/figure.ts";
import { drawingInput } from "../../src/4-figures/index.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { flatItems, sceneBox, smallestType } from "../../src/4-figures/scene.ts";
import { addLengths, compareLengths, isLess, isOnMark, multiplyLength, noLength, sameLength, subtractLength } from "../../src/units/length.ts";
import { caseDefinition } from "../fixtures/case-binding.ts";

const size = (unit: "mm" | "in", least: number, most: number): fc.Arbitrary<string> =>
  unit === "mm" ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => `${tenths / 10} mm`) : fc.integer({ min: Math.ceil((least * 32) / 25.4), max: Math.floor((most * 32) / 25.4) }).map((parts) => `${parts}/32 in`);

const books = fc.constantFrom<"mm" | "in">("mm", "in").chain((unit) => fc.record({
  height: size(unit, 80, 450), width: size(unit, 60, 350), sections: fc.integer({ min: 2, max: 40 }), sheets: fc.integer({ min: 1, max: 8 }), trim: fc.constantFrom("none", "fore-edge", "three edges"),
  held: fc.constantFrom("sewing on tapes", "sewing on tapes", "glue"), back: fc.constantFrom("flat", "rounded"), covering: fc.constantFrom("full", "quarter", "half"),
  board: size(unit, 1, 4), groove: size(unit, 2, 10), square: size(unit, 1, 8), turnIn: size(unit, 8, 25), tapes: fc.integer({ min: 2, max: 5 }), strip: fc.constantFrom("block and boards", "block"),
  lining: fc.boolean(), endbands: fc.boolean(), ribbon: fc.boolean(), dual: fc.boolean(),
}).map((each) => caseDefinition({
  "text block": { page: { height: each.height, width: each.width }, sections: each.sections, "folded sheets": each.sheets, trim: each.trim }, "held by": each.held, sewing: { tapes: each.tapes },
  back: each.back, covering: each.covering, boards: { thickness: each.board }, groove: each.groove, square: each.square, "turn in": each.turnIn, "strip covers": each.strip,
  "spine lining": each.lining, endbands: each.endbands, ribbon: each.ribbon,
}, { units: { governing: unit, dual: each.dual } })));

type Made = { readonly definition: ReturnType<typeof caseDefinition>; readonly model: ReturnType<typeof buildModel<"case-binding">>["model"] };

/** Runs a law on every book that can be made; one that cannot must say why. */
function holds(runs: number, law: (made: Made) => void): void {
  let made = 0;
  fc.assert(fc.property(books, (definition) => {
    const { model, problems } = buildModel(definition);
    expect(problems.length).toBe(model.findings.filter((finding) => finding.severity === "stop").length);
    if (problems.length > 0) return;
    made += 1;
    law({ definition, model });
  }), { numRuns: runs });
  expect(made, "books that could be made").toBeGreaterThan(runs / 4);
}

describe("every case binding that can be made", () => {
  it("has a case whose sizes add up on the ruler's marks and cover the text block", () => {
    holds(60, ({ definition, model }) => {
      const { geometry } = model;
      const { step } = definition.units;
      const opened = addLengths(multiplyLength(geometry.boardWidth, 2), multiplyLength(geometry.joint, 2), geometry.stripWidth);
      const { covering } = geometry;
      const cloth = covering.clothOnBoards ? addLengths(multiplyLength(covering.clothOnBoards, 2), multiplyLength(geometry.joint, 2), geometry.stripWidth) : addLengths(opened, multiplyLength(covering.turnIn, 2));
      const spare = subtractLength(covering.clothWidth, cloth);
      expect(isLess(spare, noLength)).toBe(false);
      expect(isLess(spare, step)).toBe(true);
      for (const length of [geometry.boardHeight, geometry.boardWidth, geometry.stripWidth, covering.clothWidth, covering.clothHeight, geometry.mull.width]) expect(isOnMark(length, step)).toBe(true);
      expect(isLess(geometry.stripWidth, geometry.backThickness)).toBe(false);
      const reach = addLengths(geometry.groove, geometry.boardWidth);
      const wanted = addLengths(geometry.block.blockWidth, geometry.square);
      expect(compareLengths(subtractLength(wanted, reach), step)).toBeLessThanOrEqual(0);
    });
  });

  it("is sewn by a thread that keeps its laws, with all its stations on the page", () => {
    holds(25, ({ model }) => {
      const { geometry, thread } = model;
      if (!geometry.sewing) {
        expect(thread).toBeNull();
        return;
      }
      const path = thread!.paths[0]!;
      expect(breachesOf(path, thread!.sewn)).toEqual([]);
      expect(path.moves.filter(({ kind }) => kind === "hole")).toHaveLength(geometry.block.sections * geometry.sewing.stations.length);
      const stations = geometry.sewing.stations.map(({ at }) => at);
      for (const [index, at] of stations.entries()) expect(isLess(index === 0 ? noLength : stations[index - 1]!, at)).toBe(true);
      expect(isLess(stations.at(-1)!, geometry.block.pageHeight)).toBe(true);
      expect(sameLength(thread!.sewn, addLengths(...path.moves.map(({ length }) => length)))).toBe(true);
    });
  });

  it("has a plan without broken numbers in which every figure that a step names is drawn, without collisions and within the column", () => {
    holds(6, ({ definition, model }) => {
      const { plan, problems } = makePlan(definition, model);
      expect(problems).toEqual([]);
      expect(JSON.stringify(plan.steps)).not.toMatch(/NaN|undefined|Infinity|\[object/);
      const input = drawingInput({ definition, model, plan });
      const drawn = new Set<string>();
      for (const [id, draw] of Object.entries(drawings.figures)) {
        const draft = draw(input);
        if (!draft) continue;
        drawn.add(id);
        const figure = finishFigure(draft);
        expect(findCollisions(draft.items), id).toEqual([]);
        expect(figure.width, `${id} width`).toBeLessThanOrEqual(170);
        expect(figure.height, `${id} height`).toBeLessThanOrEqual(200);
        for (const item of flatItems(draft.items)) if (item.kind === "text") expect(item.size, `${id}: ${item.text}`).toBeGreaterThanOrEqual(smallestType - 1e-9);
      }
      for (const step of plan.steps) expect(drawn, `figure of ${step.id}`).toContain(step.figure);
      for (const [id, draft] of Object.entries(drawings.templates)) {
        const template = draft(input);
        if (!template) continue;
        expect(findCollisions(template.items), id).toEqual([]);
        const box = sceneBox(template.items)!;
        expect(box.right, `${id} width`).toBeLessThanOrEqual(template.width + 0.01);
        expect(box.bottom, `${id} height`).toBeLessThanOrEqual(template.height + 0.01);
      }
    });
  });
});
