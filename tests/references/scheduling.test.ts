// Published scheduling instances with their published optima, a few of each set.
// PSPLIB j30 and j60 (Kolisch and Sprecher 1996; optima of j30 Demeulemeester and Herroelen 1995/97) and the sets with maximum time lags (Kolisch, Schwindt and Sprecher 1999, UBO after Schwindt and Franck).
import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { checkSchedule } from "../../bench/check-schedule.ts";
import { readInstances } from "../../bench/scheduling-instances.ts";
import { criticalPath } from "../../src/3-plan/timetable/learning-search.ts";
import { breedSchedules } from "../../src/3-plan/timetable/genetic-search.ts";
import { longestPaths } from "../../src/3-plan/timetable/longest-paths.ts";
import { solveProject } from "../../src/3-plan/timetable/solve-project.ts";

const instances = readInstances(readFileSync(path.join(import.meta.dirname, "scheduling/instances.json"), "utf8"));

for (const instance of instances) {
  const outcome = instance.isPossible ? `has its published optimum of ${instance.best}` : "is proven impossible, as published";
  test(`${instance.id} ${outcome}`, () => {
    const { state, schedule, lowerBound } = solveProject(instance.project, { schedules: 1_000, failures: 4_000, seed: 1 });
    if (!instance.isPossible) {
      expect(state).toBe("impossible");
      return;
    }
    expect([state, schedule?.makespan, lowerBound]).toEqual(["shortest", instance.best, instance.best]);
    checkSchedule(instance, schedule!.starts);
  });
}

test("both outcomes are among the instances", () => {
  expect(new Set(instances.map(({ isPossible }) => isPossible)).size).toBe(2);
});

test("breeding alone, at 2000 schedules, is within 1 % of the optima of the instances without maximum lags", () => {
  const gaps = instances.filter(({ project }) => project.lags.every(({ lag }) => lag >= 0)).map(({ project, best }) => {
    const paths = longestPaths(project)!;
    return breedSchedules(project, paths, { schedules: 2_000, seed: 1, goal: criticalPath(project, paths) })!.makespan / best! - 1;
  });
  expect(gaps.length).toBeGreaterThan(5);
  expect(Math.max(...gaps)).toBeLessThanOrEqual(0.05);
  expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThanOrEqual(0.01);
});
