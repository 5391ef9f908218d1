// Schedules a project: cheap bounds first, then good schedules by breeding, then a search that proves or improves them.
import { breedSchedules } from "./genetic-search.ts";
import { LearningSearch, criticalPath } from "./learning-search.ts";
import type { SearchResult } from "./learning-search.ts";
import { longestPaths } from "./longest-paths.ts";
import type { Project, Schedule } from "./project.ts";

/** How much may be tried. Counts, not seconds, so that the same project has the same schedule everywhere. */
export interface Budget {
  readonly schedules: number;
  readonly failures: number;
  readonly seed: number;
  /** For benchmarks that compare at equal time. */
  readonly isBreedingOver?: () => boolean;
  readonly isOver?: () => boolean;
}

/** What came out; `open` means that neither a proof nor, with a null schedule, any schedule was found within the budget. */
export type Solution = SearchResult;

const impossible: Solution = { state: "impossible", schedule: null, lowerBound: 0, failures: 0 };

const shortSearch = 200;

/** The shortest schedule that the budget allows to find, with a bound below which none can be. */
export function solveProject(project: Project, budget: Budget): Solution {
  const paths = pathsOfPossible(project);
  if (!paths) return impossible;
  const bound = criticalPath(project, paths);
  const bred = breed(project, paths, bound, budget);
  if (bred && bred.makespan <= bound) return { state: "shortest", schedule: bred, lowerBound: bred.makespan, failures: 0 };
  return new LearningSearch(project, paths, bred).run({ failures: budget.failures, ...(budget.isOver ? { isOver: budget.isOver } : {}) });
}

/** Any schedule that ends by a given minute: `impossible` is a proof that there is none, a null schedule with `open` only says that none was found. */
export function findScheduleWithin(project: Project, within: number, budget: Budget): Solution {
  const paths = pathsOfPossible(project);
  if (!paths || criticalPath(project, paths) > within) return impossible;
  const search = new LearningSearch(project, paths, null, within);
  // A short search often settles it either way; breeding is for what it leaves open.
  const first = search.run({ failures: Math.min(shortSearch, budget.failures), goal: within });
  if (first.state === "impossible" || first.schedule) return first;
  const bred = breed(project, paths, within, budget);
  if (bred && bred.makespan <= within) return { state: "open", schedule: bred, lowerBound: 0, failures: first.failures };
  return search.run({ failures: Math.max(0, budget.failures - shortSearch), goal: within });
}

function pathsOfPossible(project: Project): Int32Array | null {
  const asksTooMuch = project.demands.some((demands) => demands.some((demand, resource) => demand > project.capacities[resource]!));
  const hasNoTime = project.windows.some((windows) => windows?.length === 0);
  return asksTooMuch || hasNoTime ? null : longestPaths(project);
}

function breed(project: Project, paths: Int32Array, goal: number, { schedules, seed, isBreedingOver }: Budget): Schedule | null {
  return schedules > 0 ? breedSchedules(project, paths, { schedules, seed, goal, ...(isBreedingOver ? { isOver: isBreedingOver } : {}) }) : null;
}
