// Timetables of classes: known shortest ends, what is blamed when a class does not fit, and remedies that hold.
import { expect, test } from "vitest";
import { checkTimetable } from "../../../src/3-plan/timetable/check-timetable.ts";
import { withLongerSessions, withTool, withWaitAtMost } from "../../../src/3-plan/timetable/class-remedies.ts";
import { makeTimetable, withStepInParts } from "../../../src/3-plan/timetable/class-timetable.ts";
import { withFurtherSessions } from "../../../src/3-plan/timetable/class-calendar.ts";
import type { ClassActivities } from "../../../src/3-plan/timetable/class-types.ts";
import { classInput, classStep } from "../../fixtures/class.ts";

const evening = { start: 0, minutes: 120, breaks: [{ start: 60, minutes: 15 }] };
const plain = { pace: 1, cleanUpMinutes: 0, sessions: [evening], tools: [] };

/** The class with a remedy applied. */
function remedied(input: ClassActivities, remedy: ReturnType<typeof makeTimetable>["remedies"][number]): ClassActivities {
  switch (remedy.kind) {
    case "more-tools": return withTool(input, remedy.tool, remedy.count);
    case "more-teachers": return { ...input, teachers: remedy.teachers };
    case "shorter-wait": return withWaitAtMost(input, remedy.step, remedy.mostMinutes);
    case "more-sessions": return { ...input, sessions: withFurtherSessions(input.sessions, remedy.sessions) };
    case "longer-sessions": return withLongerSessions(input, remedy.minutes);
    case "split-steps": {
      const longer = { ...input, sessions: withFurtherSessions(input.sessions, remedy.furtherSessions) };
      return remedy.steps.reduce((changed, { step, parts }) => withStepInParts(changed, step, parts), longer);
    }
  }
}

function expectRemediesToHold(input: ClassActivities): void {
  const { fits, remedies } = makeTimetable(input);
  expect(fits).toBe(false);
  expect(remedies.length).toBeGreaterThan(0);
  for (const remedy of remedies) {
    const changed = remedied(input, remedy);
    const { fits: fitsNow, slots } = makeTimetable(changed);
    expect(fitsNow, JSON.stringify(remedy)).toBe(true);
    expect(checkTimetable(changed, slots)).toEqual([]);
  }
}

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

test("a queue is blamed, and the smallest number of tools that helps is named", () => {
  const input = classInput({ ...plain, groups: 6, tools: [{ id: "drill", count: 1 }], steps: [classStep("drill", 30, [], { tools: [{ tool: "drill", count: 1 }] })] });
  const { fits, proven, blame, remedies } = makeTimetable(input);
  expect([fits, proven]).toEqual([false, true]);
  expect(blame).toMatchObject([{ kind: "queue", tool: "drill" }]);
  expect(remedies).toContainEqual({ kind: "more-tools", tool: "drill", count: 2 });
  expectRemediesToHold(input);
});

test("a wait is blamed, and the longest wait that would do is named to five minutes", () => {
  const input = classInput({ ...plain, groups: 2, steps: [classStep("glue", 20), classStep("press open", 20, [{ step: "glue", leastMinutes: 240 }])] });
  const { blame, remedies } = makeTimetable(input);
  expect(blame).toEqual([{ kind: "wait", step: "glue", minutes: 240 }]);
  expect(remedies).toContainEqual({ kind: "shorter-wait", step: "glue", mostMinutes: 80 });
  expect(remedies).toContainEqual({ kind: "more-sessions", sessions: 1 });
  expectRemediesToHold(input);
});

test("a teacher who must stand beside every group is blamed, and the number that would do is named", () => {
  const input = classInput({ ...plain, groups: 4, steps: [classStep("punch", 30, [], { needsTeacher: true })] });
  const { blame, remedies } = makeTimetable(input);
  expect(blame).toEqual([{ kind: "teacher" }]);
  expect(remedies).toContainEqual({ kind: "more-teachers", teachers: 2 });
  expectRemediesToHold(input);
});

test("a queue and a wait that must both go are blamed together", () => {
  const steps = [classStep("glue", 10, [], { tools: [{ tool: "brush", count: 1 }] }), classStep("fold", 10, [{ step: "glue", leastMinutes: 40 }])];
  const input = classInput({ ...plain, groups: 2, tools: [{ id: "brush", count: 1 }], sessions: [{ start: 0, minutes: 25, breaks: [] }], steps });
  const { blame, remedies } = makeTimetable(input);
  expect(blame).toEqual([{ kind: "queue", tool: "brush" }, { kind: "wait", step: "glue", minutes: 40 }]);
  expect(remedies.map(({ kind }) => kind)).toEqual(["longer-sessions", "more-sessions"]);
  expectRemediesToHold(input);
});

test("too much to do by hand is nobody's wait: more or longer sessions help", () => {
  const input = classInput({ ...plain, groups: 2, steps: ["a", "b", "c", "d"].map((id) => classStep(id, 40)) });
  const { blame, remedies } = makeTimetable(input);
  expect(blame).toEqual([{ kind: "hands-on", minutes: 160 }]);
  expect(remedies).toContainEqual({ kind: "more-sessions", sessions: 1 });
  expectRemediesToHold(input);
});

test("a step longer than any stretch is named with the parts it could be done in", () => {
  const input = classInput({ ...plain, groups: 2, steps: [classStep("sew", 80), classStep("trim", 4, ["sew"])] });
  const { blame, remedies } = makeTimetable(input);
  expect(blame).toEqual([{ kind: "step-too-long", step: "sew", minutes: 80, longestStretch: 60 }]);
  expect(remedies).toEqual([{ kind: "split-steps", steps: [{ step: "sew", parts: 2 }], furtherSessions: 0 }]);
  expectRemediesToHold(input);
  // Two parts of 50 minutes do not go into stretches of 60 and 45: the second one waits for another evening.
  const longer = { ...input, steps: [classStep("sew", 100)] };
  expect(makeTimetable(longer).remedies).toEqual([{ kind: "split-steps", steps: [{ step: "sew", parts: 2 }], furtherSessions: 1 }]);
  expectRemediesToHold(longer);
});

test("the same class has the same timetable", () => {
  expect(makeTimetable(classInput())).toEqual(makeTimetable(classInput()));
});

test("a class that fits on two evenings, with presses, open times and a night between, is proven shortest", () => {
  const result = makeTimetable(classInput());
  expect(result).toMatchObject({ fits: true, proven: true, end: result.lowerBound });
  expect(checkTimetable(classInput(), result.slots)).toEqual([]);
});
