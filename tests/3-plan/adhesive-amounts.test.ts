// Adhesive amounts: the surfaces of a small book added up by hand; and in every demo each glueing says where it is laid.
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import type { Plan } from "../../src/3-plan/types.ts";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";

const solver = await loadLinearSolver();

function planOf(adhesives: string, packs = ""): Plan {
  const text = `benchleaf: 1\nbinding: concertina\ntitle: T\nsummary: S\nauthor: {name: A}\nunits: mm\nbook: {panels: 8, panel: {height: 150 mm, width: 100 mm}, square: 3 mm, turn in: 15 mm, closure: none, covering: paper}\n`
    + `materials: {panel paper: {sheets: [500 mm x 900 mm], grain: short}}\nadhesives: {${adhesives}}\nclass: {participants: 8, teacher copy: yes, spares: 1, sessions: [4 h, 4 h, 4 h]${packs}}\n`;
  const { definitions, problems } = readDefinition({ project: "x", file: "content/x/project.yaml", bytes: new TextEncoder().encode(text), files: new Set(["project.yaml"]), prose: new Map() });
  expect(problems).toEqual([]);
  const { model } = buildModel(definitions[0]!);
  return makePlan(definitions[0]!, model, solver).plan;
}

const adhesivesOf = (plan: Plan) => plan.class!.orders.filter((line) => line.role === "adhesive");

describe("ten small concertinas", () => {
  /*
   * Boards 156 × 106 mm, two faces: 2 × 165.36 = 330.72 cm². Coverings 186 × 136 mm, turn-ins of 15 mm along four edges of both:
   * 2 × (2 × 186 × 15 + 2 × 136 × 15) = 193.2 cm². First and last panel 150 × 100: 300 cm². Together 823.92 cm² a book, 8239.2 for ten.
   */
  it("take the paste and the PVA that is worked out by hand", () => {
    const [pva] = adhesivesOf(planOf("covering: PVA, ends: PVA"));
    // 0.82392 m² × 120 g/m² = 98.87 g; as much again: 197.7 g, up to ten: 200 g.
    expect([pva!.name, pva!.needed, pva!.unit]).toEqual(["PVA", 200, "g, about"]);
    expect(pva!.note).toContain("8240\u00a0cm² at 120 g/m²");
  });

  it("pay for whole packs of it, and a kit for its share", () => {
    const written = "adhesives: [{adhesive: PVA, grams: 150, price: 4.50}, {adhesive: double-sided tape, length: 3.5 m, price: 2}]";
    const { orders, costs } = planOf("covering: PVA, ends: double-sided tape", `, ${written}`).class!;
    const shown = orders.filter((line) => line.isCounted && line.role === "adhesive").map((line) => [line.name, line.needed, line.packSize, line.packs, line.price, line.over]);
    // 130 g out of one pot of 150 g; 10 m off rolls of which 3 whole metres count each.
    expect(shown).toEqual([["PVA", 130, 150, 1, 450, 20], ["double-sided tape", 10, 3, 4, 800, 2]]);
    expect(costs.toSpend).toBe("€\u00a012.50");
    // 4.50 × 130 ÷ 150 = 3.90; 2 × 10 ÷ 3 = 6.67; together 10.57 for ten books.
    expect(costs.usedPerSet).toBe("€\u00a01.06");
    expect(costs.unpriced).not.toContain("PVA");
    expect(planOf("covering: PVA, ends: PVA").class!.costs.unpriced).toContain("PVA");
  });

  it("take tape by its length where tape is chosen", () => {
    const lines = adhesivesOf(planOf("covering: PVA, ends: double-sided tape"));
    // Two panels, wider than a tape, along their edges: 2 × 2 × (150 + 100) = 1000 mm a book, 10 m for ten.
    expect(lines.map(({ name, needed, unit }) => [name, needed, unit])).toEqual([["PVA", 130, "g, about"], ["double-sided tape", 10, "m, about"]]);
  });
});

describe("every demo", async () => {
  const projects = await readContent(path.resolve(import.meta.dirname, "../../content"));
  it.each(projects.map((project) => [project.name, project] as const))("%s: each adhesive of the booklet is in the order with its amount, or is a part itself", async (_, project) => {
    const { booklets } = await computeProject(project, loadLinearSolver);
    for (const { plan } of booklets.filter(({ plan: each }) => each.class)) {
      const named = new Set(plan.steps.flatMap((step) => (step.adhesive ? [step.adhesive.name] : [])));
      named.delete("self-adhesive tape");
      expect(new Set(adhesivesOf(plan).map(({ name }) => name))).toEqual(named);
      for (const line of adhesivesOf(plan)) expect(line.needed).toBeGreaterThan(0);
    }
  });
});
