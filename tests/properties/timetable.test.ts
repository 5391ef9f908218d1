// Laws of the timetable: small projects have the makespan that trying everything finds, and no class gets a timetable that the checker rejects.
import fc from "fast-check";
import { expect, test } from "vitest";
import { checkTimetable } from "../../src/3-plan/timetable/check-timetable.ts";
import { makeTimetable } from "../../src/3-plan/timetable/class-timetable.ts";
import type { ClassActivities } from "../../src/3-plan/timetable/class-types.ts";
import type { Lag, Project, StartWindow } from "../../src/3-plan/timetable/project.ts";
import { findScheduleWithin, solveProject } from "../../src/3-plan/timetable/solve-project.ts";
import { classStep } from "../fixtures/class.ts";

const budget = { schedules: 60, failures: 5_000, seed: 1 };
const searchOnly = { ...budget, schedules: 0 };

/** Windows that leave few minutes, so that gaps matter. */
const windows: fc.Arbitrary<readonly StartWindow[] | null> = fc.option(fc.array(fc.tuple(fc.nat(3), fc.nat(4)), { minLength: 1, maxLength: 3 }).map((pairs) => {
  let at = 0;
  return pairs.map(([gap, length]) => {
    const first = at + gap + 1;
    at = first + length;
    return { first, last: at };
  });
}));

/** Up to five activities on two resources, with lags of both signs and in both directions. */
const projects: fc.Arbitrary<Project> = fc.integer({ min: 2, max: 5 }).chain((count) => fc.record({
  durations: fc.array(fc.nat(3), { minLength: count, maxLength: count }),
  demands: fc.array(fc.tuple(fc.nat(2), fc.nat(2)), { minLength: count, maxLength: count }),
  capacities: fc.tuple(fc.integer({ min: 2, max: 3 }), fc.integer({ min: 2, max: 3 })),
  lags: fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1), fc.integer({ min: -5, max: 4 })).filter(([from, to]) => from !== to).map(([from, to, lag]): Lag => ({ from, to, lag })), { maxLength: 6 }),
  windows: fc.array(windows, { minLength: count, maxLength: count }),
  isRest: fc.array(fc.nat(5).map((number) => number === 0), { minLength: count, maxLength: count }),
}));

function isSound(project: Project, starts: readonly number[]): boolean {
  const end = Math.max(...starts.map((start, activity) => start + project.durations[activity]!));
  return starts.every((start, activity) => start >= 0 && (project.windows[activity]?.some(({ first, last }) => first <= start && start <= last) ?? true))
    && project.lags.every(({ from, to, lag }) => starts[to]! >= starts[from]! + lag)
    && project.capacities.every((capacity, resource) => Array.from({ length: end }, (_, minute) => minute).every((minute) =>
      starts.reduce((sum, start, activity) => (start <= minute && minute < start + project.durations[activity]! ? sum + project.demands[activity]![resource]! : sum), 0) <= capacity));
}

/** The shortest makespan, by trying all starts within a horizon; null if there is none. */
function shortestByTrying(project: Project, horizon: number): number | null {
  let best: number | null = null;
  const starts: number[] = [];
  const place = (activity: number): void => {
    if (activity === project.durations.length) {
      const makespan = Math.max(0, ...starts.map((start, each) => (project.isRest[each] ? 0 : start + project.durations[each]!)));
      if ((best === null || makespan < best) && isSound(project, starts)) best = makespan;
      return;
    }
    for (let start = 0; start <= horizon; start += 1) {
      if (best !== null && !project.isRest[activity] && start + project.durations[activity]! >= best) break;
      starts[activity] = start;
      const isPossible = project.lags.every(({ from, to, lag }) => from > activity || to > activity || starts[to]! >= starts[from]! + lag);
      if (isPossible) place(activity + 1);
    }
    starts.length = activity;
  };
  place(0);
  return best;
}

test("of small projects the search finds the shortest schedule, or proves that there is none, as trying everything does", () => {
  fc.assert(fc.property(projects.filter(({ durations }) => durations.length <= 4), (project) => {
    const { state, schedule, lowerBound } = solveProject(project, searchOnly);
    const expected = shortestByTrying(project, 16);
    expect(state).not.toBe("open");
    // What is possible only beyond the horizon of the trial is beyond its judgement.
    if (expected === null) expect(schedule === null || Math.max(...schedule.starts) > 16).toBe(true);
    else expect([schedule?.makespan, lowerBound]).toEqual([expected, expected]);
    if (schedule) expect(isSound(project, schedule.starts)).toBe(true);
  }), { numRuns: 150 });
});

test("breeding and search together agree with the search alone, and every schedule is sound", () => {
  fc.assert(fc.property(projects, (project) => {
    const both = solveProject(project, budget);
    const alone = solveProject(project, searchOnly);
    expect([both.state, both.schedule?.makespan]).toEqual([alone.state, alone.schedule?.makespan]);
    if (both.schedule) expect(isSound(project, both.schedule.starts)).toBe(true);
    const makespan = alone.schedule?.makespan ?? 0;
    expect(findScheduleWithin(project, makespan, budget).schedule === null).toBe(alone.schedule === null);
    expect(findScheduleWithin(project, makespan - 1, budget).schedule).toBeNull();
  }), { numRuns: 200 });
});

/** Small classes: steps in a row with some shortcuts, waits, open times, presses, demonstrations. */
const classes: fc.Arbitrary<ClassActivities> = fc.record({
  groups: fc.integer({ min: 1, max: 4 }),
  teachers: fc.constant(1),
  pace: fc.constantFrom(0.8, 1, 1.3),
  cleanUpMinutes: fc.constantFrom(0, 10),
  sessions: fc.constantFrom(
    [{ start: 0, minutes: 120, breaks: [{ start: 50, minutes: 10 }] }],
    [{ start: 0, minutes: 90, breaks: [] }, { start: 1_440, minutes: 90, breaks: [{ start: 30, minutes: 15 }] }],
  ),
  tools: fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 2 })).map(([presses, knives]) => [{ id: "press", count: presses }, { id: "knife", count: knives }]),
  steps: fc.array(fc.record({ minutes: fc.integer({ min: 1, max: 25 }), shown: fc.constantFrom(0, 0, 4), wait: fc.constantFrom(0, 0, 10, 60), open: fc.constantFrom(null, null, 3), kind: fc.constantFrom("plain", "knife", "press", "taught"), back: fc.integer({ min: 1, max: 2 }) }), { minLength: 1, maxLength: 5 })
    .map((rows) => rows.map(({ minutes, shown, wait, open, kind, back }, index) => classStep(`s${index}`, minutes, index < back ? [] : [{ step: `s${index - back}`, leastMinutes: wait, mostMinutes: open === null ? null : wait + open }], {
      demonstrationMinutes: shown, needsTeacher: kind === "taught",
      tools: kind === "knife" || kind === "press" ? [{ tool: kind, count: 1 }] : [],
      rest: kind === "press" ? { minutes: 15, tools: [{ tool: "press", count: 1 }] } : null,
    }))),
});

test("a class gets a timetable that its checker accepts and that does not end before its bound, or a reason why there is none", () => {
  fc.assert(fc.property(classes, (input) => {
    const { fits, slots, end, lowerBound, proven, blame } = makeTimetable(input, { schedules: 90, failures: 300, seed: 1 });
    if (!fits) {
      expect(slots).toEqual([]);
      expect(blame.length).toBeGreaterThan(0);
      return;
    }
    expect(checkTimetable(input, slots)).toEqual([]);
    const last = Math.max(...slots.filter(({ kind }) => kind === "work").map((slot) => input.sessions[slot.session]!.start + slot.end));
    expect(last).toBe(end);
    expect(end!).toBeGreaterThanOrEqual(lowerBound);
    if (proven) expect(end).toBe(lowerBound);
  }), { numRuns: 60 });
});
