// The time of a class: every demo that has one, for few and for many, walked minute by minute; what would make a class fit does.
import path from "node:path";
import { describe, expect, test } from "vitest";
import type { ClassSettings, Definition } from "../../src/1-definition/types.ts";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import type { PrintedTimetable } from "../../src/3-plan/class/printed-timetable.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import type { Problem } from "../../src/problems/problem.ts";
import type { Plan } from "../../src/3-plan/types.ts";
import { checkTimetable } from "../../src/3-plan/timetable/check-timetable.ts";
import { makeTimetable } from "../../src/3-plan/timetable/class-timetable.ts";
import { timetableJson } from "../../src/5-pages/timetable-json.ts";
import { readContent } from "../../src/build/content.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { walkTimetable } from "../fixtures/walk-timetable.ts";

const solver = await loadLinearSolver();
const demos = await readContent(path.resolve(import.meta.dirname, "../../content"));
const definitions = demos.flatMap(({ source }) => (source ? readDefinition(source).definitions.slice(0, 1) : []));
const withClass = definitions.filter((definition) => definition.class);

/** The plan with another class; nothing is said of sheets and rolls, so that no time goes into cut plans. */
function planWith(definition: Definition, change: Partial<ClassSettings>): { readonly plan: Plan; readonly timetable: PrintedTimetable; readonly problems: readonly Problem[] } {
  const materials = Object.fromEntries(Object.entries(definition.materials).map(([role, material]) => [role, { ...material, sheets: [], packLength: null }]));
  const changed = { ...definition, materials, class: { ...definition.class!, ...change } };
  const { plan, problems } = makePlan(changed, buildModel(changed).model, solver);
  return { plan, timetable: plan.class!.timetable, problems };
}

const demo = (project: string): Definition => definitions.find((definition) => definition.project === project)!;

describe.each(withClass.map((definition) => [definition.project, definition] as const))("the class of %s", (_, definition) => {
  test("fits as its author wrote it", () => {
    expect(planWith(definition, {}).timetable.advice.filter((line) => line.startsWith("To blame"))).toEqual([]);
  });

  test.each([1, 7, 12, 40])("for %i is a timetable that can be walked, or says what would make it fit", (participants) => {
    const { plan, timetable } = planWith(definition, { participants });
    const json = timetableJson(plan.class!, definition.class!.sessions[0]!.start, (id) => plan.steps.find((step) => step.id === id)!.n);
    if (timetable.made.fits) expect(walkTimetable(json)).toEqual([]);
    else {
      expect(json.slots).toEqual([]);
      expect(timetable.findings.map(({ code }) => code)).toContain("class-does-not-fit");
      expect(timetable.remedies.length).toBeGreaterThan(0);
      for (const { activities, words } of timetable.remedies.slice(0, 1)) {
        const { fits, slots } = makeTimetable(activities);
        expect(fits, words).toBe(true);
        expect(checkTimetable(activities, slots)).toEqual([]);
      }
    }
  });
});

describe("a class that does not fit", () => {
  // Seventeen people at four punches, on three evenings: one punch more would do.
  const punches = { participants: 16, tools: new Map([["holeTool", 4]] as const) };
  const { plan, timetable, problems } = planWith(demo("regatta-album"), punches);

  test("is told of the queue, with its minutes, and of the drying, which cost it the last evening", () => {
    expect(timetable.made.fits).toBe(false);
    expect(timetable.made.blame.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["queue", "wait"]));
    expect(timetable.advice[0]).toMatch(/^To blame: the queue at the hollow punch and mallet, in use for \d+.h/u);
    expect(timetable.findings.find(({ code }) => code === "class-does-not-fit")).toMatchObject({ severity: "warn", consequence: "not everybody finishes the book" });
  });

  test("is a warning of the build with its place in the file, and keeps nothing from being built", () => {
    const place = demo("regatta-album").places.get("class/sessions")!;
    expect(place.span).not.toBeNull();
    expect(problems.map(({ code, severity, place: at }) => [code, severity, at])).toEqual([["class-impossible", "warning", place]]);
    expect(problems[0]!.message).toContain("the queue at the hollow punch");
    expect(problems[0]!.hint).toContain("with 5 in place of 4");
  });

  test("is told of changes of every kind, each planned again and found to fit", () => {
    const words = timetable.remedies.map((remedy) => remedy.words);
    for (const kind of [/^with 5 in place of 4 \(hollow punch/u, /^with double-sided tape in place of PVA in step/u, /^when session 2 begins 15.min earlier, at 18:15/u, /^when session 3 is held in two halves/u, /^with 1 more session/u, /^with 1\d participants$/u]) {
      expect(words.some((each) => kind.test(each)), `${kind}: ${words.join("; ")}`).toBe(true);
    }
    for (const { activities, words: change, end } of timetable.remedies) {
      const made = makeTimetable(activities);
      expect([change, made.fits]).toEqual([change, true]);
      expect(checkTimetable(activities, made.slots)).toEqual([]);
      expect(made.end).toBe(end);
    }
  });

  test("would not fit with what is less than told", () => {
    expect(planWith(demo("regatta-album"), { ...punches, tools: new Map([["holeTool", 5]] as const) }).timetable.made.fits).toBe(true);
    const fewest = Number(/^with (\d+) participants$/u.exec(timetable.remedies.at(-1)!.words)![1]);
    expect(planWith(demo("regatta-album"), { ...punches, participants: fewest + 1 }).timetable.made.fits).toBe(false);
  });

  test("tape is offered only where the steps of the job can be done without a brush", () => {
    const brushed = plan.steps.filter((step) => step.tools.includes("brush")).map(({ n }) => n);
    const offered = timetable.remedies.flatMap(({ words }) => (words.includes("tape") ? [...words.matchAll(/steps? ([\d, and]+)$/gu)].flatMap(([, list]) => list!.match(/\d+/gu)!.map(Number)) : []));
    expect(offered.length).toBeGreaterThan(0);
    expect(brushed).toEqual(expect.arrayContaining(offered));
  });
});

describe("presses and weights", () => {
  test("are taken while work dries in them: with weights for a third of the class only a third can leave its boards overnight", () => {
    const { timetable } = planWith(demo("regatta-album"), { participants: 11, teacherCopy: true, tools: new Map([["weight", 4]] as const) });
    const rests = timetable.activities.steps.filter(({ rest }) => rest !== null);
    expect(rests.length).toBeGreaterThan(1);
    expect(Math.max(...rests.map(({ rest }) => rest!.minutes))).toBe(12 * 60);
    expect(timetable.made.fits).toBe(false);
    expect(timetable.remedies.map(({ words }) => words)).toContainEqual(expect.stringMatching(/^with one for everybody|^with \d+ in place of 4 \(weights\)/u));
  });

  test("nobody queues for a tool of which there is one each", () => {
    expect(planWith(demo("regatta-album"), { participants: 3, teacherCopy: true, tools: new Map([["weight", 4]] as const) }).timetable.activities.tools).toEqual([]);
  });
});

describe("open times", () => {
  test("a case is turned in before the adhesive under its boards sets, and a book cased in is pressed while its endpapers are open", () => {
    const { timetable } = planWith(demo("tide-pad"), {});
    const hurry = timetable.activities.steps.flatMap(({ id, needs }) => needs.flatMap(({ step, mostMinutes }) => (mostMinutes === null ? [] : [[step, id, mostMinutes]])));
    const glue = demo("tide-pad").adhesives;
    expect(hurry).toEqual([["glue-boards", "turn-in", glue["case"]!.setMinutes], ["case-in", "press-book", glue["pastedowns"]!.openMinutes! - 6]]);
    expect(timetable.sessions.flatMap(({ rows }) => rows.map(({ what }) => what)).join(" ")).toMatch(/Go on with step \d+ within/u);
  });

  test("tape is in no hurry", () => {
    const definition = demo("tide-pad");
    const tape = { ...definition.adhesives["case"]!, openMinutes: null, setMinutes: 0, dryMinutes: 0 };
    const { timetable } = planWith({ ...definition, adhesives: { ...definition.adhesives, case: tape } }, {});
    expect(timetable.activities.steps.find(({ id }) => id === "turn-in")!.needs.every(({ mostMinutes }) => mostMinutes === null)).toBe(true);
  });
});

describe("long steps", () => {
  test("pause at a break where nothing is glued, and the class plan says so; glued ones are told of", () => {
    const { timetable } = planWith(demo("tide-ledger"), { participants: 4, tools: new Map(), breaks: { every: 40, length: 10 } });
    const parts = timetable.activities.steps.filter(({ part }) => part !== null);
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.every(({ mayPause }) => mayPause)).toBe(true);
    expect(timetable.made.fits).toBe(true);
    expect(timetable.findings.map(({ code }) => code)).toContain("step-pauses");
  });

  test("that fit between no two breaks are told of: what is shown is shown in one go, and what is glued is done in one go", () => {
    const { timetable: tight } = planWith(demo("tide-ledger"), { participants: 4, tools: new Map(), breaks: { every: 30, length: 10 }, demonstration: { n: 5n, d: 4n } });
    expect(tight.made.blame[0]).toMatchObject({ kind: "step-too-long", step: "fold-sections", isShown: true, minutes: 40, longestStretch: 30 });
    expect(tight.advice[0]).toMatch(/^To blame, all together: showing step 3, fold the sections, takes 40\smin and cannot pause, the longest time between two breaks is 30\smin/u);
    const { timetable: glued } = planWith(demo("regatta-album"), { participants: 12, tools: new Map([["brush", 1]] as const), breaks: { every: 30, length: 10 }, demonstration: { n: 0n, d: 1n } });
    expect(glued.made.blame[0]).toMatchObject({ kind: "step-too-long", step: "glue-boards", isShown: false, longestStretch: 35 });
    expect(glued.advice[0]).toMatch(/step \d+, glue hinge strips and boards to the cloth takes .+ and cannot pause/u);
  });
});
