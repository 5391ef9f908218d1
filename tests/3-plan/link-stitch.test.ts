// The link stitch's plan: its steps in order, what each carries, and words that agree with the way of the thread.
import { describe, expect, it } from "vitest";
import { bindingDefinition } from "../../src/1-definition/link-stitch.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { linkStitchDefinition, linkStitchModel } from "../fixtures/link-stitch.ts";

function planOf(more: string, units: "mm" | "in" = "mm") {
  const definition = linkStitchDefinition(`{text block: {page: {height: 165 mm, width: 115 mm}, sections: 10}${more}}`, { units });
  const { model } = linkStitchModel(definition);
  return { model, plan: makePlan(definition, model).plan };
}

describe.each([
  ["covered boards, one needle", "", ["cover-boards", "turn-in", "line-boards"]],
  ["no lining", ", lining: no", ["cover-boards", "turn-in"]],
  ["bare boards, two needles", ", sewing: {needle: two, stations: 4}, boards: {covered: no}", []],
] as const)("%s", (_, more, covering) => {
  const { plan } = planOf(more);
  const ids = plan.steps.map(({ id }) => id);

  it("has the steps of the definition in their order, and those of the covering only where there is one", () => {
    expect(ids).toEqual(bindingDefinition.steps.filter((id) => ids.includes(id)));
    expect(ids.filter((id) => ["cover-boards", "turn-in", "line-boards"].includes(id))).toEqual(covering);
  });
  it("warns before every blade, awl, needle and drill", () => {
    for (const step of plan.steps) {
      const hazards = step.cautions.map(({ hazard }) => hazard).join(" ");
      if (step.tools.includes("curvedNeedle") || step.tools.includes("needle")) expect(hazards, step.id).toMatch(/needle/i);
      if (step.tools.includes("awl")) expect(hazards, step.id).toMatch(/awl/i);
      if (step.tools.includes("scissors")) expect(hazards, step.id).toMatch(/scissors/i);
      if (step.tools.includes("knife")) expect(hazards, step.id).toMatch(/knife/i);
    }
  });
});

describe("the words of the sewing", () => {
  it("print the rule of thumb beside the computed length", () => {
    const { plan } = planOf("");
    const cut = plan.steps.find(({ id }) => id === "cut-thread")!;
    // (10 + 2 + 1) × 165 mm.
    expect(cut.sizes.find(({ label }) => label.startsWith("rule of thumb"))!.text).toBe("about 2145\u00a0mm");
    expect(cut.sizes.find(({ label }) => label.startsWith("thread in all"))!.text).toMatch(/^\d+\u00a0mm$/);
  });
  it("tell each join once, in the step where it comes", () => {
    const { plan, model } = planOf("");
    const joins = model.thread!.needlefuls.filter(({ joinAt }) => joinAt !== null);
    const told = plan.steps.flatMap(({ id, action }) => action.filter((line) => line.includes("weaver’s knot")).map(() => id));
    expect(joins.length).toBeGreaterThan(0);
    expect(told).toHaveLength(joins.length);
    expect(told.every((id) => id.startsWith("sew-"))).toBe(true);
  });
  it("list the stations of a pass in the order in which the needle comes to them: even sections from the tail", () => {
    const { plan } = planOf("");
    const stations = (id: string) => plan.steps.find((step) => step.id === id)!.table!.rows.map(([station]) => station);
    expect(stations("sew-first-section")).toEqual(["1", "2", "3", "4", "5"]);
    expect(stations("sew-second-section")).toEqual(["5", "4", "3", "2", "1"]);
    expect(stations("sew-later-sections")).toEqual(["1", "2", "3", "4", "5"]);
    expect(stations("sew-last-section")).toEqual(["5", "4", "3", "2", "1"]);
  });
  it("leave out the later sections where there are only three", () => {
    const definition = linkStitchDefinition("{text block: {page: {height: 165 mm, width: 115 mm}, sections: 3}}");
    const { model } = linkStitchModel(definition);
    expect(makePlan(definition, model).plan.steps.map(({ id }) => id)).not.toContain("sew-later-sections");
  });
});
