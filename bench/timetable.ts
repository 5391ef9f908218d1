// Benchmark of the timetable engine: published instances of project scheduling, our results beside the published ones.
import { readFileSync } from "node:fs";
import path from "node:path";
import { checkSchedule } from "./check-schedule.ts";
import { readInstances } from "./scheduling-instances.ts";
import type { Instance } from "./scheduling-instances.ts";
import { breedSchedules } from "../src/3-plan/timetable/genetic-search.ts";
import { criticalPath } from "../src/3-plan/timetable/learning-search.ts";
import { longestPaths } from "../src/3-plan/timetable/longest-paths.ts";
import { solveProject } from "../src/3-plan/timetable/solve-project.ts";

interface Outcome {
  readonly instance: Instance;
  readonly state: "shortest" | "impossible" | "open";
  readonly makespan: number | null;
  readonly lowerBound: number;
  readonly criticalPath: number;
  readonly milliseconds: number;
}

const unlimited = 1_000_000_000;
const schedulesInSurveys = 5_000;

/** Runs all sets that are in a folder; `seconds` for each instance, and only every nth instance, if wanted. */
export function benchTimetable([folder = path.join(import.meta.dirname, "instances"), seconds = "0.5", every = "1"]: readonly string[]): void {
  const instancesOf = (set: string): readonly Instance[] => readInstances(readFileSync(path.join(folder, `${set}.json`), "utf8")).filter((_, index) => index % Number(every) === 0);
  console.log(`Every ${every === "1" ? "" : `${every}th `}instance; at most ${seconds} s for each, or ${schedulesInSurveys} schedules without a search. Every schedule is checked.\n`);
  console.log("| set | n | method | mean gap to published optimum or best | optimum or best reached | better than best | proven | contradicts published | mean ms |");
  console.log("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
  for (const set of ["j30", "j60"]) {
    const instances = instancesOf(set);
    report(set, `${schedulesInSurveys} schedules`, instances.map(breedOnly));
    report(set, `${seconds} s`, instances.map((instance) => solve(instance, Number(seconds))));
  }
  for (const set of ["max_j10", "max_ubo10", "max_j20", "max_ubo20", "max_j30", "max_ubo50"]) report(set, `${seconds} s`, instancesOf(set).map((instance) => solve(instance, Number(seconds))));
}

function breedOnly(instance: Instance): Outcome {
  const begin = performance.now();
  const paths = longestPaths(instance.project)!;
  const bound = criticalPath(instance.project, paths);
  const schedule = breedSchedules(instance.project, paths, { schedules: schedulesInSurveys, seed: 1, goal: bound });
  if (schedule) checkSchedule(instance, schedule.starts);
  return { instance, state: schedule?.makespan === bound ? "shortest" : "open", makespan: schedule?.makespan ?? null, lowerBound: bound, criticalPath: bound, milliseconds: performance.now() - begin };
}

function solve(instance: Instance, seconds: number): Outcome {
  const begin = performance.now();
  const isAfter = (share: number) => (): boolean => performance.now() - begin > share * seconds * 1_000;
  const { state, schedule, lowerBound } = solveProject(instance.project, { schedules: schedulesInSurveys, failures: unlimited, seed: 1, isBreedingOver: isAfter(0.5), isOver: isAfter(1) });
  if (schedule) checkSchedule(instance, schedule.starts);
  const paths = longestPaths(instance.project);
  return { instance, state, makespan: schedule?.makespan ?? null, lowerBound, criticalPath: paths ? criticalPath(instance.project, paths) : 0, milliseconds: performance.now() - begin };
}

function report(set: string, method: string, outcomes: readonly Outcome[]): void {
  const possible = outcomes.filter(({ instance }) => instance.isPossible);
  const scheduled = possible.filter(({ makespan }) => makespan !== null);
  const gaps = scheduled.map(({ instance, makespan }) => makespan! / instance.best! - 1);
  const mean = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0) / Math.max(1, numbers.length);
  const percent = (share: number): string => `${(100 * share).toFixed(3)} %`;
  const contradictions = outcomes.filter(contradicts);
  const missed = possible.length - scheduled.length;
  const deviation = set.startsWith("j") ? `; ${percent(mean(scheduled.map((each) => each.makespan! / each.criticalPath - 1)))} over the critical path` : "";
  console.log(`| ${[
    set, outcomes.length, method, `${percent(mean(gaps))}${missed > 0 ? `; ${missed} without a schedule` : ""}${deviation}`, `${gaps.filter((gap) => gap <= 0).length} of ${possible.length}`,
    gaps.filter((gap) => gap < 0).length, `${outcomes.filter(({ state }) => state !== "open").length} of ${outcomes.length}`, contradictions.map(({ instance }) => instance.id).join(" ") || "none",
    mean(outcomes.map(({ milliseconds }) => milliseconds)).toFixed(0),
  ].join(" | ")} |`);
  for (const { instance, makespan, lowerBound, state } of outcomes) if (state === "open" && method.endsWith(" s")) console.error(`${instance.id}: ours ${lowerBound} to ${makespan ?? "?"}, published ${instance.bound ?? "?"} to ${instance.best ?? "?"}`);
}

/** A better result than a proven bound, a schedule of the impossible, or a proof against a known schedule. */
function contradicts({ instance, state, makespan, lowerBound }: Outcome): boolean {
  if (!instance.isPossible) return makespan !== null;
  if (state === "impossible" || (instance.best !== null && lowerBound > instance.best)) return true;
  return makespan !== null && instance.bound !== null && makespan < instance.bound;
}
