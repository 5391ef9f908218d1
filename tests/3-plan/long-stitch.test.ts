// The long-stitch binding's plan: its steps in order, what each carries, and words that agree with the way of the thread.
import { describe, expect, it } from "vitest";
import { bindingDefinition } from "../../src/1-definition/long-stitch.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { longStitchDefinition, longStitchModel } from "../fixtures/long-stitch.ts";

function planOf(more: string, sections = 8) {
  const definition = longStitchDefinition(`{text block: {page: {height: 165 mm, width: 115 mm}, sections: ${sections}, folded sheets: 5}${more}}`);
  const { model } = longStitchModel(definition);
  return { model, plan: makePlan(definition, model).plan };
}

describe.each([
  ["holes, no flap", "", ["glue-strip"]],
  ["slits", ", sewing: {openings: slits}", ["glue-strip", "cut-slits"]],
  ["no reinforcement, a flap", ", cover: {reinforced: no, flap: wrap}", []],
] as const)("%s", (_, more, sometimes) => {
  const { plan } = planOf(more);
  const ids = plan.steps.map(({ id }) => id);

  it("has the steps of the definition in their order, and those that only some books have where they belong", () => {
    expect(ids).toEqual(bindingDefinition.steps.filter((id) => ids.includes(id)));
    expect(ids.filter((id) => ["glue-strip", "cut-slits"].includes(id))).toEqual(sometimes);
  });
  it("warns before every blade, awl and needle", () => {
    for (const step of plan.steps) {
      const hazards = step.cautions.map(({ hazard }) => hazard).join(" ");
      for (const tool of ["needle", "awl", "scissors", "knife"]) if (step.tools.includes(tool)) expect(hazards, step.id).toMatch(new RegExp(tool, "i"));
    }
  });
  it("folds and measures the sections before it cuts the cover, and glues nothing that is pierced wet", () => {
    expect(ids.indexOf("fold-sections")).toBeLessThan(ids.indexOf("cut-cover"));
    if (sometimes.includes("glue-strip" as never)) expect(plan.steps.find(({ id }) => id === "mark-spine")!.before).toMatch(/spine strip/);
  });
});

describe("the words of the sewing", () => {
  it("list the stations of a pass in the order in which the needle comes to them: even sections from the tail", () => {
    const { plan } = planOf("");
    const stations = (id: string) => plan.steps.find((step) => step.id === id)!.table!.rows.map(([station]) => station);
    expect(stations("sew-first-section")).toEqual(["1", "2", "3", "4", "5", "6"]);
    expect(stations("sew-second-section")).toEqual(["6", "5", "4", "3", "2", "1"]);
    expect(stations("sew-later-sections")).toEqual(["1", "2", "3", "4", "5", "6"]);
    expect(stations("sew-last-section")).toEqual(["6", "5", "4", "3", "2", "1"]);
  });
  it("say where the thread climbs, links and is tied", () => {
    const { plan } = planOf("");
    const last = (id: string) => plan.steps.find((step) => step.id === id)!.table!.rows.at(-1)!;
    expect(last("sew-first-section")).toEqual(["6", "along the inside, out, up to section 2"]);
    expect(last("sew-second-section")).toEqual(["1", "along the inside, out, down to section 1, tied to the thread’s own end, up to section 3"]);
    expect(last("sew-later-sections")).toEqual(["6", "along the inside, out, under the stitch below and up to section 4"]);
    expect(last("sew-last-section")).toEqual(["1", "along the inside, out, under the stitch below and back, in, tied to the inside stitch"]);
  });
  it("tell each join once, in the step where it comes", () => {
    const { plan, model } = planOf("");
    const joins = model.thread!.needlefuls.filter(({ joinAt }) => joinAt !== null);
    const told = plan.steps.flatMap(({ id, action }) => action.filter((line) => line.includes("weaver’s knot")).map(() => id));
    expect(joins.length).toBeGreaterThan(0);
    expect(told).toHaveLength(joins.length);
  });
  it("tell many joins of one step in one sentence, each with its section and station", () => {
    const { plan, model } = planOf(", thread: {needleful: 700 mm}", 30);
    const joins = model.thread!.needlefuls.filter(({ joinAt, path, last }) => joinAt !== null && model.thread!.paths[path - 1]!.moves[last - 1]!.pass > 2 && model.thread!.paths[path - 1]!.moves[last - 1]!.pass < 30);
    const told = plan.steps.find(({ id }) => id === "sew-later-sections")!.action.filter((line) => line.includes("weaver’s knot"));
    expect(joins.length).toBeGreaterThan(3);
    expect(told).toHaveLength(1);
    expect(told[0]!.match(/in section \d+ at station \d/g)!.length).toBe(joins.length);
  });
  it("leave out the later sections where there are only three, and end at the tail then", () => {
    const { plan } = planOf("", 3);
    expect(plan.steps.map(({ id }) => id)).not.toContain("sew-later-sections");
    expect(plan.steps.find(({ id }) => id === "sew-last-section")!.action.join(" ")).toContain("come out at station 6");
  });
  it("print the rule of thumb beside the computed length", () => {
    const cut = planOf("").plan.steps.find(({ id }) => id === "cut-thread")!;
    // (8 + 2) × 165 mm.
    expect(cut.sizes.find(({ label }) => label.startsWith("rule of thumb"))!.text).toBe("about 1650\u00a0mm");
  });
});
