// Searching near a good schedule: all but one stretch of it stays about as it is, and the stretch is scheduled anew.
import type { Bounds, View } from "./bounds.ts";
import type { Chance } from "./chance.ts";
import type { Project, Schedule } from "./project.ts";

/** Something to hold for a while: view at least bound. */
export interface Assumption {
  readonly view: View;
  readonly least: number;
}

/** How a stretch came out: it holds a shorter schedule, it holds none, or that was not found out. */
export type Outcome = "shorter" | "none" | "unknown";

/** What is not scheduled anew starts at most this many minutes earlier or later. */
const reach = 4;

/** Shares of the makespan. */
const [smallestStretch, firstStretch, largestStretch] = [0.1, 0.3, 0.95];

/**
 * Large neighbourhoods after Shaw (1998), for schedules as in Godard, Laborie and Nuijten (2005), both named from memory: outside a stretch of time drawn by chance, activities
 * that cannot share a resource keep their order. What a search learns under these assumptions holds without them, since they are choices like any other.
 */
export class Nearby {
  private readonly project: Project;
  private readonly pairs: readonly (readonly [number, number])[];
  private readonly orderOf: (pair: number) => number;
  private readonly chance: Chance;
  private share = firstStretch;

  /** `orderOf` is the variable that says whether the first of a pair comes first. */
  constructor(project: Project, pairs: readonly (readonly [number, number])[], orderOf: (pair: number) => number, chance: Chance) {
    this.project = project;
    this.pairs = pairs;
    this.orderOf = orderOf;
    this.chance = chance;
  }

  /** Assumptions that leave one stretch of a schedule open. */
  draw({ starts, makespan }: Schedule): readonly Assumption[] {
    const { durations } = this.project;
    const length = this.share * makespan;
    const from = (this.chance(1_001) / 1_000) * (makespan + length / 2) - 0.75 * length;
    const isOpen = starts.map((start, activity) => start + durations[activity]! > from && start < from + length);
    const orders = this.pairs.flatMap(([a, b], pair): readonly Assumption[] => {
      if (isOpen[a] || isOpen[b]) return [];
      const order = 2 * this.orderOf(pair);
      return [starts[a]! + durations[a]! <= starts[b]! ? { view: order, least: 1 } : { view: order + 1, least: 0 }];
    });
    const times = starts.flatMap((start, activity): readonly Assumption[] =>
      isOpen[activity] ? [] : [{ view: 2 * activity, least: start - reach }, { view: 2 * activity + 1, least: -start - reach }]);
    return [...times, ...orders];
  }

  /** The next stretch is longer where one held nothing, and shorter where it was too much to search. */
  notice(outcome: Outcome): void {
    if (outcome === "none") this.share = Math.min(largestStretch, this.share * 1.03);
    if (outcome === "unknown") this.share = Math.max(smallestStretch, this.share * 0.97);
  }
}

/** The first assumption that does not hold yet, null when all do, or `impossible` when one no longer can. */
export function nextAssumption(assumptions: readonly Assumption[], bounds: Bounds): Assumption | null | "impossible" {
  for (const assumption of assumptions) {
    if (bounds.least[assumption.view]! >= assumption.least) continue;
    return -bounds.least[assumption.view ^ 1]! < assumption.least ? "impossible" : assumption;
  }
  return null;
}
