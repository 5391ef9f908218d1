// Timetables of classes: known shortest ends, and what is blamed when a class does not fit.
import { expect, test } from "vitest";
import { checkTimetable } from "../../../src/3-plan/timetable/check-timetable.ts";
import { doesFit, withTool, withWaitAtMost } from "../../../src/3-plan/timetable/class-blame.ts";
import { makeTimetable } from "../../../src/3-plan/timetable/class-timetable.ts";
import { divideLongSteps, withStepInParts } from "../../../src/3-plan/timetable/pauses.ts";
import type { ClassActivities } from "../../../src/3-plan/timetable/class-types.ts";
import { classInput, classStep } from "../../fixtures/class.ts";

const evening = { start: 0, minutes: 120, breaks: [{ start: 60, minutes: 15 }] };
const plain = { pace: 1, cleanUpMinutes: 0, sessions: [evening], tools: [] };

test("groups that queue at one tool end when the tool has been used by all, and that is proven", () => {
  const input = classInput({ ...plain, groups: 5, tools: [{ id: "drill", count: 1 }], steps: [classStep("mark", 5), classStep("drill", 10, ["mark"], { tools: [{ tool: "drill", count: 1 }] })] });
  expect(makeTimetable(input)).toMatchObject({ fits: true, end: 55, lowerBound: 55, proven: true });
});

test("work does not run over a break, a wait does", () => {
  const steps = [classStep("glue", 50), classStep("cover", 20, [{ step: "glue", leastMinutes: 20 }])];
  const { slots, end } = makeTimetable(classInput({ ...plain, groups: 1, steps }));
  expect(end).toBe(95);
  expect(slots.map(({ start, end: until, kind }) => [kind, start, until])).toEqual([["work", 0, 50], ["wait", 50, 70], ["break", 60, 75], ["work", 75, 95]]);
});

test("pace slows the hands and not the teacher, and the clean-up keeps its minutes", () => {
  const input = classInput({ ...plain, groups: 2, pace: 1.5, cleanUpMinutes: 20, steps: [classStep("fold", 30, [], { demonstrationMinutes: 10 })] });
  expect(makeTimetable(input)).toMatchObject({ fits: true, end: 55, proven: true });
  expect(makeTimetable({ ...input, cleanUpMinutes: 66 })).toMatchObject({ fits: false });
});

test("an open time keeps glueing back until the press is free", () => {
  const press = [{ tool: "press", count: 1 }];
  const steps = [classStep("glue", 5), classStep("close", 5, [{ step: "glue", mostMinutes: 2 }], { tools: press, rest: { minutes: 20, tools: press } })];
  const { slots, end, proven } = makeTimetable(classInput({ ...plain, groups: 2, tools: [{ id: "press", count: 1 }], steps }));
  expect([end, proven]).toEqual([35, true]);
  expect(slots.find(({ step, group, kind }) => step === "glue" && group === 1 && kind === "work")!.end).toBeGreaterThanOrEqual(28);
});

/** The class fits, and its timetable passes the checker. */
function expectToFit(input: ClassActivities): void {
  const { fits, slots } = makeTimetable(input);
  expect(fits).toBe(true);
  expect(checkTimetable(input, slots)).toEqual([]);
  expect(doesFit(input)).toBe(true);
}

test("a queue is blamed with the minutes for which the tool is in use; one tool more does", () => {
  const input = classInput({ ...plain, groups: 6, tools: [{ id: "drill", count: 1 }], steps: [classStep("drill", 30, [], { tools: [{ tool: "drill", count: 1 }] })] });
  expect(makeTimetable(input)).toMatchObject({ fits: false, proven: true, blame: [{ kind: "queue", tool: "drill", minutes: 180 }] });
  expect(doesFit(input)).toBe(false);
  expectToFit(withTool(input, "drill", 2));
});

test("a wait is blamed; to the minute, what the session leaves for it is the longest that does", () => {
  const input = classInput({ ...plain, groups: 2, steps: [classStep("glue", 20), classStep("press open", 20, [{ step: "glue", leastMinutes: 240 }])] });
  expect(makeTimetable(input).blame).toEqual([{ kind: "wait", step: "glue", minutes: 240 }]);
  expectToFit(withWaitAtMost(input, "glue", 80));
  expect(doesFit(withWaitAtMost(input, "glue", 81))).toBe(false);
});

test("a press that is held while work dries is blamed as a queue", () => {
  const press = [{ tool: "press", count: 1 }];
  const steps = [classStep("glue", 5, [], { tools: press, rest: { minutes: 50, tools: press } }), classStep("trim", 5, [{ step: "glue", leastMinutes: 50 }])];
  const input = classInput({ ...plain, groups: 3, tools: [{ id: "press", count: 1 }], steps });
  const { blame } = makeTimetable(input);
  expect(blame).toContainEqual({ kind: "queue", tool: "press", minutes: 165 });
  expectToFit(withTool(input, "press", 2));
});

test("a teacher who must stand beside every group is blamed", () => {
  const input = classInput({ ...plain, groups: 4, steps: [classStep("punch", 30, [], { needsTeacher: true })] });
  expect(makeTimetable(input).blame).toEqual([{ kind: "teacher" }]);
  expectToFit({ ...input, teachers: 2 });
});

test("a queue and a wait that must both go are blamed together", () => {
  const steps = [classStep("glue", 10, [], { tools: [{ tool: "brush", count: 1 }] }), classStep("fold", 10, [{ step: "glue", leastMinutes: 40 }])];
  const input = classInput({ ...plain, groups: 2, tools: [{ id: "brush", count: 1 }], sessions: [{ start: 0, minutes: 25, breaks: [] }], steps });
  expect(makeTimetable(input)).toMatchObject({ blame: [{ kind: "queue", tool: "brush", minutes: 20 }, { kind: "wait", step: "glue", minutes: 40 }], blamedTogether: true });
});

test("too much to do by hand is nobody's wait", () => {
  const input = classInput({ ...plain, groups: 2, steps: ["a", "b", "c", "d"].map((id) => classStep(id, 40)) });
  expect(makeTimetable(input).blame).toEqual([{ kind: "hands-on", minutes: 160 }]);
});

test("a step longer than any stretch is named, unless it may pause: then it is done in parts, and all its minutes are there", () => {
  const input = classInput({ ...plain, groups: 2, steps: [classStep("sew", 85), classStep("trim", 4, ["sew"])] });
  expect(makeTimetable(input).blame).toEqual([{ kind: "step-too-long", step: "sew", isShown: false, minutes: 85, longestStretch: 60 }]);
  expect(divideLongSteps(input)).toEqual(input);
  const divided = divideLongSteps({ ...input, steps: input.steps.map((step) => ({ ...step, mayPause: true })) });
  expect(divided.steps.map(({ id, minutes }) => [id, minutes])).toEqual([["sew, part 1", 28], ["sew, part 2", 28], ["sew", 29], ["trim", 4]]);
  expectToFit(divided);
  expect(divideLongSteps(divided)).toEqual(divided);
});

test("a step in parts is shown once, before the first, and rests after the last", () => {
  const { steps } = withStepInParts(classInput({ steps: [classStep("sew", 50, [], { demonstrationMinutes: 5, rest: { minutes: 10, tools: [] } })] }), "sew", 2);
  expect(steps.map(({ demonstrationMinutes, rest, needs }) => [demonstrationMinutes, rest?.minutes ?? 0, needs.map(({ step }) => step)])).toEqual([[5, 0, []], [0, 10, ["sew, part 1"]]]);
});

test("the same class has the same timetable", () => {
  expect(makeTimetable(classInput())).toEqual(makeTimetable(classInput()));
});

test("a class that fits on two evenings, with presses, open times and a night between, is proven shortest", () => {
  const result = makeTimetable(classInput());
  expect(result).toMatchObject({ fits: true, proven: true, end: result.lowerBound });
  expect(checkTimetable(classInput(), result.slots)).toEqual([]);
});

test("what is shown is done on the same day, or, in a class that fits no other way, shown as late as the day before allows", () => {
  const steps = [classStep("glue", 20), classStep("drill", 10, [{ step: "glue", leastMinutes: 600 }], { demonstrationMinutes: 10 })];
  const timesWith = (secondEvening: number): unknown => makeTimetable(classInput({ ...plain, groups: 2, sessions: [evening, { start: 24 * 60, minutes: secondEvening, breaks: [] }], steps })).slots
    .filter(({ step, kind }) => step === "drill" && kind !== "wait").map(({ session, start, kind }) => [kind, session, start]);
  expect(timesWith(120)).toEqual([["demonstration", 1, 0], ["work", 1, 10], ["work", 1, 10]]);
  expect(timesWith(15)).toEqual([["demonstration", 0, 110], ["work", 1, 0], ["work", 1, 0]]);
});
