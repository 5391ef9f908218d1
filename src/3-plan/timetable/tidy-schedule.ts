// Makes a schedule pleasant without making it longer: nobody waits without a reason, and what is shown is shown shortly before it is done.
import { chanceFrom } from "./chance.ts";
import { ListScheduler } from "./list-schedule.ts";
import { longestPaths } from "./longest-paths.ts";
import { makespanOf, nextStart } from "./project.ts";
import type { Project, Schedule } from "./project.ts";

/** The same or a better schedule in which activities start earlier on the whole: orders near its own are tried, and kept if they help. */
export function startEarlier(project: Project, schedule: Schedule, tries: number, seed: number): Schedule {
  const paths = longestPaths(project);
  if (!paths) return schedule;
  const chance = chanceFrom(seed);
  const scheduler = new ListScheduler(project, paths);
  const sumOf = (starts: ArrayLike<number>): number => Array.from(starts).reduce((sum, start) => sum + start, 0);
  let best = schedule;
  let keys = Float64Array.from(schedule.starts);
  let sum = sumOf(keys);
  for (let attempt = 0; attempt < tries; attempt += 1) {
    const changed = Float64Array.from(keys);
    const moved = chance(changed.length);
    const other = chance(changed.length);
    // The first attempt keeps the order; later ones put one activity just before or behind another.
    if (attempt > 0) changed[moved] = changed[other]! + (chance(2) - 0.5);
    const starts = scheduler.schedule(changed, 0);
    if (!starts || makespanOf(project, starts) > best.makespan || sumOf(starts) > sum) continue;
    sum = sumOf(starts);
    keys = changed;
    best = { starts: [...starts], makespan: makespanOf(project, starts) };
  }
  return best;
}

/** The schedule with some activities moved as late as the others, left where they are, allow: never beyond the first activity that must follow them. */
export function moveLater(project: Project, schedule: Schedule, movable: readonly number[]): Schedule {
  const starts = [...schedule.starts];
  for (const activity of [...movable].sort((a, b) => starts[b]! - starts[a]!)) {
    const latest = Math.min(...project.lags.filter(({ from }) => from === activity).map(({ to, lag }) => starts[to]! - lag));
    for (let start = Math.min(latest, schedule.makespan - project.durations[activity]!); start > starts[activity]!; start -= 1) {
      if (!isFree(project, starts, activity, start)) continue;
      starts[activity] = start;
    }
  }
  return { starts, makespan: makespanOf(project, starts) };
}

function isFree(project: Project, starts: readonly number[], activity: number, start: number): boolean {
  if (nextStart(project.windows[activity]!, start) !== start) return false;
  const end = start + project.durations[activity]!;
  const beside = starts.flatMap((other, index) => (index !== activity && other < end && start < other + project.durations[index]! ? [index] : []));
  return project.capacities.every((capacity, resource) => {
    const demand = project.demands[activity]![resource]!;
    return demand === 0 || beside.reduce((sum, index) => sum + project.demands[index]![resource]!, demand) <= capacity;
  });
}
