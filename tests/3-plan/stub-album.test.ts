// The stub album's plan: steps in an order that can be done, waits, sittings, prose, appendix.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { findAdhesive } from "../../src/catalogue/adhesives.ts";
import { mm } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

function planOf(overrides: StubAlbumOverrides = {}) {
  const definition = stubAlbumDefinition(overrides);
  return makePlan(definition, buildModel(definition).model);
}

const wetEverywhere = { rest: { adhesives: Object.fromEntries(["stubs", "pages", "joints", "hinge", "boards", "lining", "floor", "closure"].map((job) => [job, findAdhesive("PVA")!])) } };

describe("steps", () => {
  it("carry everything a step must carry", () => {
    for (const step of planOf().plan.steps) {
      expect(step.action.length).toBeGreaterThan(0);
      expect(step.minutes).toBeGreaterThan(0);
      expect(step.check).not.toBe("");
      expect(step.mistake).not.toBeNull();
      expect(step.figure).not.toBeNull();
      for (const line of step.action) expect(line).toMatch(/[.?!]$/);
    }
  });

  it("have a figure of their own each", () => {
    const figures = planOf().plan.steps.map((step) => step.figure);
    expect(new Set(figures).size).toBe(figures.length);
  });

  it("warn before every knife, awl, punch, drill and pair of scissors", () => {
    const { steps } = planOf().plan;
    for (const [tool, word] of [["knife", "knife"], ["awl", "awl"], ["holeTool", "punch"], ["holeTool", "drill"], ["scissors", "Scissors"]] as const) {
      const users = steps.filter((step) => step.tools.includes(tool));
      expect(users.length).toBeGreaterThan(0);
      for (const step of users) expect(step.cautions.some((caution) => caution.hazard.includes(word)), `${step.id}: ${word}`).toBe(true);
    }
  });

  it("warn of a knife or needle that only the repair needs", () => {
    for (const [word, hazard] of [[/\bknife\b/, "knife"], [/\bneedle\b/, "needle"]] as const) {
      const users = planOf().plan.steps.filter((step) => word.test(step.mistake!.repair));
      expect(users.length).toBeGreaterThan(0);
      for (const step of users) expect(step.cautions.some((caution) => caution.hazard.includes(hazard)), `${step.id}: ${hazard}`).toBe(true);
    }
  });

  it("warn of vapour and fire wherever solvent cement is used, before every other caution", () => {
    const cement = findAdhesive("contact cement")!;
    const { steps } = planOf({ rest: { adhesives: Object.fromEntries(Object.keys(wetEverywhere.rest.adhesives).map((job) => [job, cement])) } }).plan;
    const glueing = steps.filter((step) => step.adhesive !== null);
    expect(glueing.length).toBeGreaterThan(5);
    for (const step of glueing) expect(step.cautions[0]!.hazard, step.id).toMatch(/flammable vapour/);
    for (const step of steps.filter((each) => each.adhesive === null)) expect(step.cautions.some((caution) => /flammable/.test(caution.hazard)), step.id).toBe(false);
  });

  it("say \"about\" once before a size, in inches too, and put no bracket into another", () => {
    const { steps, tools } = planOf({ units: "in", dual: true }).plan;
    const words = JSON.stringify([tools, steps.map((step) => [step.action, step.check])]);
    expect(words).not.toContain("about about");
    expect(words).not.toMatch(/\([^()]*\(/);
  });

  it("warn of wet adhesive wherever it is used, and nowhere when only tape is", () => {
    for (const step of planOf(wetEverywhere).plan.steps.filter((each) => each.adhesive)) {
      if (step.id === "finish") continue;
      expect(step.cautions.some((caution) => caution.hazard.startsWith("Wet adhesive")), step.id).toBe(true);
    }
    const tape = findAdhesive("double-sided tape")!;
    const dry = planOf({ rest: { adhesives: Object.fromEntries(Object.keys(wetEverywhere.rest.adhesives).map((job) => [job, tape])) } });
    expect(dry.plan.steps.flatMap((step) => step.cautions).some((caution) => caution.hazard.startsWith("Wet adhesive"))).toBe(false);
  });

  it("repeat sizes exactly as the cut list prints them", () => {
    const { plan } = planOf({ units: "in", dual: true });
    for (const step of plan.steps) {
      for (const size of step.sizes) {
        const item = plan.cutList.find((each) => size.label === `${each.part.name} (${each.letter})`);
        if (!item) continue;
        expect(size.text).toContain(item.heightText.split("\u00a0")[0]);
      }
    }
    expect(plan.steps.flatMap((step) => step.sizes).filter((size) => /\([A-Z]\)$/.test(size.label)).length).toBeGreaterThan(10);
  });

  it("leave out closure, lining and bookmark when the book has none, and mount one paper when pages are single", () => {
    const { plan } = planOf({ book: { closure: "none", lining: false, bookmark: false, pages: { mounting: "single" } } });
    const ids = plan.steps.map((step) => step.id);
    expect(ids).not.toContain("attach-closure");
    expect(ids).not.toContain("line-boards");
    expect(ids).not.toContain("attach-bookmark");
    expect(plan.steps.find((step) => step.id === "mount-pages")!.action.join(" ")).not.toContain("second paper");
    expect(plan.steps.flatMap((step) => step.action).join(" ")).not.toMatch(/bookmark|lining paper|ribbon/);
  });
});

describe("the glossary", () => {
  it("explains only what the book has", () => {
    const terms = (overrides: StubAlbumOverrides) => planOf(overrides).plan.glossary.map((term) => term.term);
    expect(terms({})).toEqual(expect.arrayContaining(["closure", "lining"]));
    expect(terms({ book: { closure: "none", lining: false } })).not.toEqual(expect.arrayContaining(["closure"]));
    expect(terms({ book: { closure: "none", lining: false } })).not.toEqual(expect.arrayContaining(["lining"]));
    expect(planOf({ book: { closure: "none", bookmark: false } }).plan.values.map((row) => row.name).join()).not.toMatch(/closure|ribbon/);
  });
});

describe("the corners of the cloth", () => {
  const cut = (turnIn: string) => planOf({ book: { "turn in": mm(turnIn) }, thickness: { "strip board": mm(8) } }).plan.steps.find((step) => step.id === "cut-corners")!.action.join(" ");

  it("are cut while the cut meets the cloth, and left whole when it would pass outside", () => {
    // The cut lies 1.5 × 8 = 12 mm from the strip's corner, the cloth's corner √2 turn-ins: 12 / √2 is about 8.49.
    expect(cut("8.5")).toContain("45°");
    expect(cut("8.4")).toContain("leave all four corners whole");
  });
});

describe("waits", () => {
  it("stand after the step that glues, tell the step that depends on it, and what to do meanwhile", () => {
    const { steps } = planOf().plan;
    const turnIn = steps.find((step) => step.id === "turn-in")!;
    const tapeJoints = steps.find((step) => step.id === "tape-joints")!;
    expect(turnIn.wait!.minutes).toBe(30);
    expect(turnIn.wait!.text).toContain(`before step ${tapeJoints.n}`);
    expect(turnIn.wait!.meanwhile).toContain(`steps ${turnIn.n + 1} to ${tapeJoints.n - 1}`);
    expect(tapeJoints.before).toContain(`(step ${turnIn.n})`);
  });

  it("are none when nothing wet is used", () => {
    const tape = findAdhesive("double-sided tape")!;
    const { plan } = planOf({ rest: { adhesives: Object.fromEntries(Object.keys(wetEverywhere.rest.adhesives).map((job) => [job, tape])) } });
    expect(plan.steps.every((step) => step.wait === null && step.before === "")).toBe(true);
    expect(plan.longestWaitMinutes).toBe(0);
  });

  it("longer than an hour end a sitting, and every step stands in exactly one sitting", () => {
    const { plan } = planOf({ rest: { bench: { sittingMinutes: 600, pace: 1 } } });
    expect(plan.sittings.length).toBe(2);
    expect(plan.sittings[0]!.endsBecause).toContain("dry");
    expect(plan.sittings[0]!.firstStep).toBe(1);
    expect(plan.sittings.at(-1)!.lastStep).toBe(plan.steps.length);
    for (const [index, sitting] of plan.sittings.entries()) {
      if (index > 0) expect(sitting.firstStep).toBe(plan.sittings[index - 1]!.lastStep + 1);
      expect(sitting.minutes).toBeLessThanOrEqual(600);
    }
    expect(plan.sittings.reduce((sum, sitting) => sum + sitting.handsOnMinutes, 0)).toBe(plan.handsOnMinutes);
  });

  it("keep every need: no step starts before what it needs has set or dried", () => {
    // Told by the schedule itself: with a very long setting time the needing step must move to a later sitting.
    const slow = { ...findAdhesive("PVA")!, setMinutes: 300, dryMinutes: 900 };
    const { plan } = planOf({ rest: { adhesives: { ...stubAlbumDefinition().adhesives, hinge: slow } } });
    const sittingOf = (n: number) => plan.sittings.findIndex((sitting) => sitting.firstStep <= n && n <= sitting.lastStep);
    const numberOf = (id: string) => plan.steps.find((step) => step.id === id)!.n;
    expect(sittingOf(numberOf("tape-joints"))).toBeGreaterThan(sittingOf(numberOf("turn-in")));
  });
});

describe("findings about time", () => {
  it("warn when the adhesive dries before the joint is closed, and not at the limit", () => {
    const open = (minutes: number) => planOf({ rest: { adhesives: { ...stubAlbumDefinition().adhesives, boards: { ...findAdhesive("PVA")!, openMinutes: minutes } } } }).plan.findings.map((finding) => finding.code);
    expect(open(4)).not.toContain("open-time-too-short");
    expect(open(3)).toContain("open-time-too-short");
  });
});

describe("author's prose", () => {
  const piece = (markdown: string) => ({ slot: "introduction", markdown, place: { file: "prose/introduction.md", span: null }, offsets: [...markdown].map((_, index) => index) });

  it("has computed values filled in by name, with a dot or a space", () => {
    const { plan, problems } = planOf({ rest: { prose: [piece("Card {card.width}, {card width}, \\{plain\\}, {page paper.count} papers.")] } });
    expect(problems).toEqual([]);
    expect(plan.prose.get("introduction")).toBe("Card 375\u00a0mm, 375\u00a0mm, {plain}, 16 papers.");
  });

  it("for a step that this book does not have is a warning, and is not printed", () => {
    const piece = { slot: "line-boards", markdown: "Rub it down twice.", place: { file: "content/x/prose/line-boards.md", span: null }, offsets: [] };
    const definition = { ...stubAlbumDefinition({ book: { lining: false } }), prose: [piece] };
    const { problems } = makePlan(definition, buildModel(definition).model);
    expect(problems).toMatchObject([{ code: "step-file-unknown", severity: "warning", place: { file: piece.place.file } }]);
    const lined = { ...stubAlbumDefinition({ book: { lining: true } }), prose: [piece] };
    expect(makePlan(lined, buildModel(lined).model).problems).toEqual([]);
  });

  it("with an unknown name is a problem at that name, with the nearest known one", () => {
    const { problems } = planOf({ rest: { prose: [piece("The {spine stripp.width} is wide.")] } });
    expect(problems).toHaveLength(1);
    expect(problems[0]!.code).toBe("name-unknown");
    expect(problems[0]!.place.span).toEqual({ start: 4, end: 24 });
    expect(problems[0]!.hint).toContain("spine strip width");
  });
});

describe("steps of the author's own", () => {
  it("are numbered in their place, and references to later steps move with them", () => {
    const added = {
      id: "own", after: "mark-cloth", title: "Own step", minutes: 5, cautions: [], check: null, picture: null,
      text: { slot: "own", markdown: "Do it.", place: { file: "x", span: null }, offsets: [] }, place: { file: "x", span: null },
    };
    const plain = planOf().plan.steps;
    const { steps } = planOf({ rest: { addedSteps: [added] } }).plan;
    expect(steps.map((step) => step.n)).toEqual(steps.map((_, index) => index + 1));
    expect(steps.findIndex((step) => step.id === "own")).toBe(steps.findIndex((step) => step.id === "mark-cloth") + 1);
    const tapeBefore = plain.find((step) => step.id === "tape-joints")!.n;
    expect(steps.find((step) => step.id === "turn-in")!.wait!.text).toContain(`before step ${tapeBefore + 1}`);
  });
});

describe("the appendix", () => {
  it("lists every value with its formula, the values put in and the result", () => {
    const { plan } = planOf();
    const floor = plan.values.find((row) => row.name === "folded floor")!;
    expect(floor.formula).toBe("flat floor + stubs × stub growth");
    expect(floor.filled.replaceAll("\u00a0", " ")).toBe("55 mm + 8 × 0.5 mm");
    expect(floor.result.replaceAll("\u00a0", " ")).toBe("59 mm");
  });

  it("puts values into a formula without their second unit", () => {
    const filled = planOf({ units: "in", dual: true }).plan.values.map((row) => row.filled);
    expect(filled.filter((text) => text.includes("about"))).toEqual([]);
    expect(filled.filter((text) => text.includes("mm")).length).toBeGreaterThan(0);
  });

  it("offers a box to measure what can be measured, and none once a measured value governs", () => {
    expect(planOf().plan.measureYours.map((box) => box.name)).toContain("folded floor");
    expect(planOf({ measured: { "folded floor": mm(59) } }).plan.measureYours.map((box) => box.name)).not.toContain("folded floor");
  });
});

describe("the safety page", () => {
  it("lists the author's own cautions with their steps, and leaves a NOTICE where it stands", () => {
    const piece = (markdown: string) => ({ slot: "fold-card", markdown, place: { file: "x", span: null }, offsets: [] });
    const stepChanges = [{ step: "fold-card", tip: null, cautions: [piece("WARNING: Shells cut."), piece("NOTICE: Sand scratches.")], minutes: null, picture: null, place: { file: "x", span: null } }];
    const { plan } = planOf({ rest: { stepChanges } });
    const fold = plan.steps.find((step) => step.id === "fold-card")!;
    expect(plan.safety.own).toEqual([{ markdown: "WARNING: Shells cut.", steps: [fold.n] }]);
  });

  it("gathers injury hazards, gravest first, and defers to venue, law, data sheet and supervisor", () => {
    const { safety } = planOf().plan;
    expect(safety.hazards.length).toBeGreaterThan(5);
    expect(safety.hazards.map((hazard) => hazard.signal)).not.toContain("NOTICE");
    const ranks = safety.hazards.map((hazard) => ["DANGER", "WARNING", "CAUTION"].indexOf(hazard.signal));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    for (const word of ["rules of the place", "law", "data sheets", "supervisor"]) expect(safety.deferral).toContain(word);
  });
});
