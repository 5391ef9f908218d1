// Looking near a schedule: what is held agrees with the schedule itself, and a stretch of it is left open.
import { expect, test } from "vitest";
import { chanceFrom } from "../../../src/3-plan/timetable/chance.ts";
import { LearningSearch } from "../../../src/3-plan/timetable/learning-search.ts";
import { conflictingPairs, longestPaths } from "../../../src/3-plan/timetable/longest-paths.ts";
import { Nearby } from "../../../src/3-plan/timetable/nearby.ts";
import { makespanOf, plainProject } from "../../../src/3-plan/timetable/project.ts";

/** Twelve activities of unlike length, two at a time, each third one after the one before it. */
const durations = [4, 2, 7, 3, 5, 1, 6, 2, 3, 8, 2, 5];
const project = plainProject({
  durations, demands: durations.map(() => [1]), capacities: [1],
  lags: durations.flatMap((duration, activity) => (activity % 3 === 1 ? [{ from: activity - 1, to: activity, lag: duration }] : [])),
});
const starts = durations.map((_, activity) => durations.slice(0, activity).reduce((sum, each) => sum + each + 1, 0));
const schedule = { starts, makespan: makespanOf(project, starts) };

test("what is held is true of the schedule, and something is left open each time", () => {
  const pairs = conflictingPairs(project);
  expect(pairs.length).toBe(66);
  const orderOf = (pair: number): number => durations.length + pair;
  const nearby = new Nearby(project, pairs, orderOf, chanceFrom(1));
  const values = [...starts, ...pairs.map(([a, b]) => (starts[a]! < starts[b]! ? 1 : 0))];
  for (let round = 0; round < 50; round += 1) {
    const assumptions = nearby.draw(schedule);
    expect(assumptions.filter(({ view, least }) => (view % 2 === 0 ? values[view >> 1]! : -values[view >> 1]!) < least)).toEqual([]);
    const heldStarts = new Set(assumptions.filter(({ view }) => view >> 1 < durations.length).map(({ view }) => view >> 1));
    expect(heldStarts.size).toBeLessThan(durations.length);
    expect(heldStarts.size).toBeGreaterThan(0);
    nearby.notice(round % 2 === 0 ? "unknown" : "none");
  }
});

test("the gaps of a loose schedule are closed, and that is proven", () => {
  const { state, schedule: found } = new LearningSearch(project, longestPaths(project)!, schedule).run({ failures: 2_000 });
  expect([state, found!.makespan]).toEqual(["shortest", durations.reduce((sum, each) => sum + each, 0)]);
});
