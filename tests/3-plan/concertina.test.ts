// The concertina's plan: steps in an order that can be done, cautions before every blade, both ways of folding, joins.
import { describe, expect, it } from "vitest";
import { bindingDefinition } from "../../src/1-definition/concertina.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { findAdhesive } from "../../src/catalogue/adhesives.ts";
import { mm } from "../../src/units/length.ts";
import { concertinaDefinition, sheetOf } from "../fixtures/concertina.ts";
import type { ConcertinaOverrides } from "../fixtures/concertina.ts";

function planOf(overrides: ConcertinaOverrides = {}) {
  const definition = concertinaDefinition(overrides);
  return makePlan(definition, buildModel(definition).model).plan;
}

const whole = { materials: sheetOf(mm(700), mm(1000)) };
const joined: ConcertinaOverrides = { book: { panels: 16 }, materials: sheetOf(mm(500), mm(700)) };
const variety: readonly ConcertinaOverrides[] = [whole, joined, { book: { panels: 7, closure: "band", covering: "cloth" } }, { book: { panels: 2, closure: "none" } }, { units: "in", dual: true, book: { panels: 20 } }];

describe("steps", () => {
  it("carry everything a step must carry, each with a figure of its own", () => {
    for (const overrides of variety) {
      const { steps } = planOf(overrides);
      for (const step of steps) {
        expect(step.check).not.toBe("");
        expect(step.mistake).not.toBeNull();
        expect(step.minutes).toBeGreaterThan(0);
        for (const line of step.action) expect(line).toMatch(/[.?!]$/);
      }
      expect(new Set(steps.map((step) => step.figure)).size).toBe(steps.length);
    }
  });
  it("are all known to the definition, in its order, and every one that it knows occurs in some book", () => {
    const met = new Set<string>();
    for (const overrides of variety) {
      const ids = planOf(overrides).steps.map((step) => step.id);
      expect(ids).toEqual(bindingDefinition.steps.filter((id) => ids.includes(id)));
      ids.forEach((id) => met.add(id));
    }
    expect([...met].sort()).toEqual([...bindingDefinition.steps].sort());
  });
  it("warn before every knife, pair of scissors, bone folder for scoring, weight and wet adhesive", () => {
    for (const { steps } of variety.map(planOf)) {
      for (const [tool, word] of [["knife", "knife"], ["scissors", "Scissors"], ["weight", "Weights"]] as const) {
        for (const step of steps.filter((each) => each.tools.includes(tool))) expect(step.cautions.some((caution) => caution.hazard.includes(word)), `${step.id}: ${word}`).toBe(true);
      }
      for (const step of steps.filter((each) => each.adhesive)) expect(step.cautions.some((caution) => caution.hazard.startsWith("Wet adhesive")), step.id).toBe(true);
      for (const step of steps.filter((each) => each.id.startsWith("fold-") || each.id === "score-folds" || each.id === "make-band")) expect(step.cautions.some((caution) => caution.hazard.includes("bone folder")), step.id).toBe(true);
    }
  });
  it("never speak of wet adhesive or a brush when only tape is used", () => {
    const tape = findAdhesive("double-sided tape")!;
    const dry = planOf({ ...joined, rest: { adhesives: Object.fromEntries(Object.keys(bindingDefinition.adhesives).map((job) => [job, tape])) } });
    expect(dry.steps.flatMap((step) => step.cautions).some((caution) => caution.hazard.startsWith("Wet adhesive"))).toBe(false);
    expect(dry.steps.flatMap((step) => step.action).join(" ")).not.toMatch(/\bBrush\b|\bbrush\b/);
    expect(dry.steps.flatMap((step) => step.tools)).not.toContain("brush");
    expect(dry.steps.every((step) => step.wait === null)).toBe(true);
  });
  it("glue the first panel only when the covers are dry", () => {
    const { steps } = planOf(whole);
    expect(steps.find((step) => step.id === "glue-front")!.before).toContain(`(step ${steps.find((step) => step.id === "turn-in")!.n}) to be dry`);
  });
  it("say about once before a size", () => {
    for (const overrides of variety) expect(JSON.stringify(planOf(overrides).steps.map((step) => [step.action, step.check]))).not.toContain("about about");
  });
});

describe("folding", () => {
  it("by halving prints the order with each fold named, and where it falls", () => {
    const table = planOf(whole).steps.find((step) => step.id === "fold-strip")!.table!;
    expect(table.rows.slice(0, 2)).toEqual([["1", "back", "left edge", "right edge", "fold 4", "mountain fold", "420"], ["2", "back", "left edge", "fold 4", "fold 2", "mountain fold", "210"]]);
    expect(table.rows.at(-1)).toEqual(["7", "front", "fold 6", "right edge", "fold 7", "valley fold", "735"]);
  });
  it("by scores prints running dimensions from one edge for every kind of strip", () => {
    const table = planOf(joined).steps.find((step) => step.id === "mark-folds")!.table!;
    expect(table.rows).toHaveLength(15);
    expect(table.rows[4]).toEqual(["first strip join fold", "525", "valley fold"]);
    expect(table.rows[5]).toEqual(["middle strip fold 1", "105", "mountain fold"]);
  });
  it("of a joined strip prints the join plan", () => {
    expect(planOf(joined).steps.find((step) => step.id === "number-strips")!.table!.rows).toEqual([
      ["1", "first strip", "1–5", "5", "at the right end", "fold 5"], ["2", "middle strip", "6–11", "6", "at the right end", "fold 11"], ["3", "last strip", "12–16", "5", "none", "–"],
    ]);
  });
});

it("an odd number of panels has the last one glued with its front", () => {
  expect(planOf({ book: { panels: 7 } }).steps.find((step) => step.id === "glue-back")!.action.join(" ")).toContain("its front up");
  expect(planOf(whole).steps.find((step) => step.id === "glue-back")!.action.join(" ")).toContain("its back up");
});
