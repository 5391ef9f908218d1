// The checker of timetables: it accepts what the engine makes and finds every kind of breach when one is put in.
import { expect, test } from "vitest";
import { checkTimetable } from "../../../src/3-plan/timetable/check-timetable.ts";
import type { TimetableFault } from "../../../src/3-plan/timetable/check-timetable.ts";
import { makeTimetable } from "../../../src/3-plan/timetable/class-timetable.ts";
import type { ClassActivities, TimetableSlot } from "../../../src/3-plan/timetable/class-types.ts";
import { classInput, classStep } from "../../fixtures/class.ts";

/** Two groups by hand: everything is in order. */
const input: ClassActivities = classInput({
  groups: 2, pace: 1, cleanUpMinutes: 10, sessions: [{ start: 0, minutes: 100, breaks: [{ start: 50, minutes: 10 }] }], tools: [{ id: "press", count: 1 }],
  steps: [
    classStep("glue", 10, [], { demonstrationMinutes: 5 }),
    classStep("close", 5, [{ step: "glue", mostMinutes: 3 }], { rest: { minutes: 15, tools: [{ tool: "press", count: 1 }] } }),
    classStep("open", 5, [{ step: "close", leastMinutes: 15 }], { needsTeacher: true }),
  ],
});

const work = (step: string, group: number, start: number, end: number): TimetableSlot => ({ session: 0, start, end, group, step, kind: "work" });
const shown: TimetableSlot = { session: 0, start: 0, end: 5, group: null, step: "glue", kind: "demonstration" };
const pause: TimetableSlot = { session: 0, start: 50, end: 60, group: null, step: null, kind: "break" };
const sound: readonly TimetableSlot[] = [
  shown, pause,
  work("glue", 0, 5, 15), work("close", 0, 15, 20), work("open", 0, 35, 40),
  work("glue", 1, 20, 30), work("close", 1, 30, 35), work("open", 1, 60, 65),
];

/** The sound timetable with one entry put in the place of another; null takes it out. */
function withSlot(old: TimetableSlot, changed: TimetableSlot | null): readonly TimetableFault["what"][] {
  const at = sound.findIndex((slot) => JSON.stringify(slot) === JSON.stringify(old));
  expect(at).toBeGreaterThan(-1);
  return checkTimetable(input, sound.flatMap((slot, index) => (index !== at ? [slot] : changed ? [changed] : []))).map(({ what }) => what);
}

test("a timetable made by hand is accepted", () => {
  expect(checkTimetable(input, sound)).toEqual([]);
});

test("a timetable of the engine is accepted", () => {
  const { fits, slots } = makeTimetable(classInput());
  expect(fits).toBe(true);
  expect(checkTimetable(classInput(), slots)).toEqual([]);
});

test("each kind of breach is found", () => {
  const open = work("open", 1, 60, 65);
  expect(withSlot(open, null)).toEqual(["missing"]);
  expect(checkTimetable(input, [...sound, work("open", 1, 70, 75)]).map(({ what }) => what)).toEqual(["repeated"]);
  expect(withSlot(open, work("open", 1, 60, 66))).toEqual(["length"]);
  expect(withSlot(open, work("open", 1, 86, 91))).toEqual(["outside-session"]);
  expect(withSlot(open, work("open", 1, 56, 61))).toEqual(["over-break"]);
  expect(withSlot(work("open", 0, 35, 40), work("open", 0, 34, 39))).toEqual(["too-early"]);
  expect(withSlot(work("glue", 1, 20, 30), work("glue", 1, 16, 26))).toEqual(["too-late"]);
  expect(withSlot(shown, { ...shown, start: 1, end: 6 })).toEqual(["not-shown-before", "group-busy"]);
  expect(withSlot(shown, null)).toEqual(["missing"]);
  expect(withSlot(shown, { ...shown, end: 4 })).toEqual(["length"]);
  expect(withSlot(work("glue", 1, 20, 30), work("glue", 1, 22, 32))).toEqual(["too-early", "group-busy"]);
  expect(withSlot(pause, null)).toEqual(["break-missing"]);
  expect(withSlot(pause, { ...pause, session: 1 })).toEqual(["unknown", "break-missing"]);
  expect(withSlot(open, { ...open, group: 2 })).toContain("unknown");
  expect(withSlot(open, { ...open, step: "paint" })).toContain("unknown");
});

test("a press that is still full and a teacher who is needed twice are found", () => {
  const crowded = [shown, pause, work("glue", 0, 5, 15), work("close", 0, 15, 20), work("open", 0, 35, 40), work("glue", 1, 18, 28), work("close", 1, 28, 33), work("open", 1, 60, 65)];
  expect(checkTimetable(input, crowded).map(({ what }) => what)).toEqual(["tool-overbooked"]);
  expect(withSlot(work("open", 0, 35, 40), work("open", 0, 62, 67))).toEqual(["teacher-overbooked"]);
});
