// The hazard sheet: nothing of the safety page is missing, numbers of people and tools are those of the class, and what is cut beforehand is told so.
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { cautions } from "../../src/catalogue/cautions.ts";
import { roomHazards } from "../../src/catalogue/hazards.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";

const solver = await loadLinearSolver();

function planOf(book: string, settings: string) {
  const text = `benchleaf: 1\n${book}title: T\nsummary: S\nauthor: {name: A}\nunits: mm\nclass: {participants: 9, sessions: [4 h, 4 h, 4 h, 4 h]${settings}}\n`;
  const { definitions, problems } = readDefinition({ project: "x", file: "content/x/project.yaml", bytes: new TextEncoder().encode(text), files: new Set(["project.yaml"]), prose: new Map() });
  expect(problems).toEqual([]);
  const { model } = buildModel(definitions[0]!);
  const { plan } = makePlan(definitions[0]!, model, solver);
  return { plan, own: plan.class! };
}

const ledger = "binding: case binding\nbook: {text block: {page: {height: 210 mm, width: 148 mm}, sections: 8, folded sheets: 3}, back: rounded}\n";

describe("the hazard sheet", () => {
  const { plan, own } = planOf(ledger, ", tools: {hammer: 3, awl: 4}");
  const line = (id: keyof typeof cautions) => own.hazards.find((each) => each.hazard === cautions[id].hazard)!;

  it("has a line for every hazard of the safety page, and says who, what and who checks", () => {
    expect(own.hazards.map(({ hazard }) => hazard)).toEqual(plan.safety.hazards.map(({ hazard }) => hazard));
    for (const { whoCouldBeHurt, precautions, check } of own.hazards) {
      expect(whoCouldBeHurt.map(({ who }) => who)).toEqual(["At work", "Beside them", "Also"]);
      expect(precautions).toHaveLength(2);
      expect(check).toMatch(/: |, /);
    }
    // No two hazards are answered with the same words.
    expect(new Set(own.hazards.map(({ precautions }) => precautions[1])).size).toBe(own.hazards.length);
  });

  it("says how many people at a time, as many as there are tools", () => {
    // Nine participants and the teacher; one hammer for each of three at a time.
    expect(line("hammer").when).toMatch(/^step \d+, up to 3 people at a time$/);
    expect(line("awl").when).toMatch(/^steps \d+ and \d+, up to 4 people at a time$/);
    expect(line("needle").when).toMatch(/up to 10 people at a time$/);
  });

  it("counts out what is counted back", () => {
    expect(line("hammer").counted).toBe("Count out and count back: 3 × backing hammer.");
    expect(line("needle").counted).toBe("Count out and count back: 10 × sewing needle.");
    expect(line("wetAdhesive").counted).toBe("");
  });

  it("tells what is done before the class, and what is not where nothing is cut beforehand", () => {
    const cutting = plan.steps.filter((step) => ["cut-block", "cut-case"].includes(step.id)).map((step) => step.n);
    expect(cutting).toHaveLength(2);
    expect(line("boardCutter").when).toBe(`steps ${cutting.join(" and ")}, before the class`);
    const later = planOf(ledger, ", cut beforehand: no").own;
    expect(later.hazards.find((each) => each.hazard === cautions.boardCutter.hazard)!.when).toBe(`steps ${cutting.join(" and ")}, up to 10 people at a time`);
    expect(own.timetable.slots.some((slot) => cutting.includes(slot.step ?? 0))).toBe(false);
    expect(later.toolsBeforehand).toEqual([]);
  });

  it("asks each question once", () => {
    expect(new Set(own.questions).size).toBe(own.questions.length);
    expect(own.questions).toContain("Who is allergic to wheat, to preservatives or to latex?");
    expect(own.questions.every((question) => question.endsWith("?"))).toBe(true);
  });
});

describe("before the class", () => {
  it("the parts that are cut to a measure are cut after the teacher's own book is measured", () => {
    const { plan, own } = planOf(ledger, "");
    const measured = plan.steps.find((step) => step.id === "measure-block")!.n;
    expect(own.preparation.filter((text) => text.includes(`what is measured in step ${measured}`))).toHaveLength(1);
    const flat = planOf("binding: pamphlet\nbook: {sheets: 6, page: {height: 210 mm, width: 148 mm}}\n", "").own;
    expect(flat.preparation.filter((text) => text.includes("what is measured"))).toEqual([]);
  });

  it("cautions about blades stand before the cut plans", () => {
    const { own } = planOf("binding: pamphlet\nbook: {sheets: 6, page: {height: 210 mm, width: 148 mm}}\n", "");
    expect(own.cuttingCautions.map(({ hazard }) => hazard)).toEqual(expect.arrayContaining([cautions.knife.hazard, cautions.boardCutter.hazard]));
  });

  it("there is a bag for every set", () => {
    const { own } = planOf("binding: pamphlet\nbook: {sheets: 6, page: {height: 210 mm, width: 148 mm}}\n", ", spares: 2");
    expect(own.bags.map(({ mark }) => mark)).toEqual(["1", "2", "3", "4", "5", "6", "7", "8", "9", "T", "S1", "S2"]);
    expect(own.bags).toHaveLength(own.sets);
  });
});

it("every caution of the catalogue has its line for the room", () => {
  expect(Object.keys(roomHazards).sort()).toEqual(Object.keys(cautions).sort());
  for (const hazard of Object.values(roomHazards)) for (const words of [hazard.maker, hazard.neighbours, hazard.others, hazard.room, hazard.check]) expect(words.length).toBeGreaterThan(10);
});
