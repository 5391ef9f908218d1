// Branch and bound that learns from every failure: it finds shortest schedules, proves that none is shorter, or that there is none at all.
import { Bounds, reasons } from "./bounds.ts";
import { Capacity } from "./capacity.ts";
import { chanceFrom } from "./chance.ts";
import { Choices } from "./choices.ts";
import { Clauses } from "./clauses.ts";
import { Energy } from "./energy.ts";
import { FailureAnalysis } from "./failure.ts";
import { LagNetwork } from "./lag-network.ts";
import { conflictingPairs, noPath } from "./longest-paths.ts";
import { Nearby, nextAssumption } from "./nearby.ts";
import type { Assumption } from "./nearby.ts";
import { horizonOf, makespanOf } from "./project.ts";
import type { Project, Schedule } from "./project.ts";

/** How long a search may go on; the clock is passed in by benchmarks only, so that results elsewhere depend on nothing but the input. */
export interface SearchLimit {
  readonly failures: number;
  /** A schedule as short as this will do. */
  readonly goal?: number;
  /** Whether time is up; asked now and then. */
  readonly isOver?: () => boolean;
}

/** What a search came to: `open` means that it was stopped before it could tell. */
export interface SearchResult {
  readonly state: "shortest" | "impossible" | "open";
  readonly schedule: Schedule | null;
  /** No schedule ends earlier. */
  readonly lowerBound: number;
  readonly failures: number;
}

const failuresOfFirstRun = 100;

/** Once there is a schedule, all runs but every fourth look near it. */
const runsPerFullRun = 4;
const failuresNearby = 150;
const mostPairs = 6_000;

/**
 * Lazy clause generation after Ohrimenko, Stuckey and Codish (2009), for resources as in Schutt, Feydy, Stuckey and Wallace (2011, 2013):
 * each failure is traced back to a clause over bounds of start times, and the clauses prune all that follows.
 */
export class LearningSearch {
  private readonly project: Project;
  private readonly bounds: Bounds;
  private readonly network: LagNetwork;
  private readonly capacities: readonly Capacity[];
  private readonly capacitiesOf: readonly Int32Array[];
  private readonly energies: readonly Energy[];
  private readonly isDue: Uint8Array;
  private readonly isEnergyDue: Uint8Array;
  private readonly clauses: Clauses;
  private readonly choices: Choices;
  private readonly analysis: FailureAnalysis;
  private readonly nearby: Nearby;
  private readonly end: number;
  private head = 0;
  private best: Schedule | null = null;
  private failures = 0;
  /** Runs that look everywhere, and all runs. */
  private fullRuns = 0;
  private runs = 0;
  private clausesKept = 4_000;
  private isPossible: boolean;

  /** `paths` are the longest paths of the project; a schedule known beforehand has to be beaten, and none may end later than `within`. */
  constructor(project: Project, paths: Int32Array, known: Schedule | null, within: number | null = null) {
    this.project = project;
    const count = project.durations.length;
    const pairs = conflictingPairs(project).filter(([a, b]) => paths[a * count + b]! < project.durations[a]! && paths[b * count + a]! < project.durations[b]!).slice(0, mostPairs);
    this.end = count;
    this.bounds = new Bounds(count + 1 + pairs.length);
    this.network = new LagNetwork(this.bounds);
    this.clauses = new Clauses(this.bounds);
    this.choices = new Choices(this.bounds, count);
    this.analysis = new FailureAnalysis(this.bounds, this.network, this.clauses);
    this.capacities = project.capacities.map((_, resource) => new Capacity(this.bounds, project, resource));
    this.energies = project.capacities.map((_, resource) => new Energy(this.bounds, project, resource));
    this.capacitiesOf = project.durations.map((_, activity) => Int32Array.from(this.capacities.flatMap((each, resource) => (each.users.includes(activity) ? [resource] : []))));
    this.isDue = new Uint8Array(this.capacities.length).fill(1);
    this.isEnergyDue = new Uint8Array(this.capacities.length).fill(1);
    this.addLags(paths);
    const orderOf = (pair: number): number => count + 1 + pair;
    pairs.forEach(([a, b], pair) => this.addPair(a, b, orderOf(pair)));
    this.nearby = new Nearby(project, pairs, orderOf, chanceFrom(1));
    this.isPossible = this.setFirstBounds();
    if (known) this.take(known);
    if (within !== null) this.isPossible &&= this.bounds.raise(2 * this.end + 1, -within, reasons.none, 0) && this.propagate();
  }

  private addLags(paths: Int32Array): void {
    const { project, network } = this;
    const count = project.durations.length;
    const added = new Set<number>();
    const add = (from: number, to: number): void => {
      if (from === to || added.has(from * count + to)) return;
      added.add(from * count + to);
      network.addLag(from, to, paths[from * count + to]!);
    };
    for (const { from, to } of project.lags) add(from, to);
    for (const [a, b] of conflictingPairs(project)) {
      if (paths[a * count + b]! === project.durations[a]!) add(a, b);
      else if (paths[b * count + a]! === project.durations[b]!) add(b, a);
    }
    for (let activity = 0; activity < count; activity += 1) {
      const isFollowed = project.lags.some(({ from, to, lag }) => from === activity && to !== activity && !project.isRest[to] && lag + project.durations[to]! >= project.durations[activity]! && lag >= 0 && (lag > 0 || to > activity));
      if (!isFollowed && !project.isRest[activity]) network.addLag(activity, this.end, project.durations[activity]!);
    }
  }

  private addPair(a: number, b: number, order: number): void {
    this.network.addLag(a, b, this.project.durations[a]!, 2 * order, 1);
    this.network.addLag(b, a, this.project.durations[b]!, 2 * order + 1, 0);
    this.bounds.raise(2 * order, 0, reasons.none, 0);
    this.bounds.raise(2 * order + 1, -1, reasons.none, 0);
  }

  private setFirstBounds(): boolean {
    const { project, bounds, network } = this;
    const horizon = horizonOf(project);
    let isPossible = bounds.raise(2 * this.end, 0, reasons.none, 0) && bounds.raise(2 * this.end + 1, -horizon, reasons.none, 0);
    project.windows.forEach((windows, activity) => {
      isPossible &&= bounds.raise(2 * activity, windows ? windows[0]!.first : 0, reasons.none, 0);
      isPossible &&= bounds.raise(2 * activity + 1, windows ? -windows[windows.length - 1]!.last : project.durations[activity]! - horizon, reasons.none, 0);
      windows?.forEach((window, index) => {
        if (index > 0 && window.first > windows[index - 1]!.last + 1) network.addGap(activity, windows[index - 1]!.last, window.first);
      });
    });
    return isPossible && this.propagate();
  }

  /** Notes a schedule; from now on only shorter ones count. */
  take(schedule: Schedule): void {
    if (this.best && schedule.makespan >= this.best.makespan) return;
    this.best = schedule;
    this.choices.guide = schedule.starts;
    this.backTo(0);
    this.isPossible &&= this.bounds.raise(2 * this.end + 1, 1 - schedule.makespan, reasons.none, 0) && this.propagate();
  }

  private backTo(level: number): void {
    this.bounds.backTo(level);
    this.choices.backTo(level);
    this.head = Math.min(this.head, this.bounds.trailView.length);
  }

  private propagate(): boolean {
    const { bounds, isDue, isEnergyDue } = this;
    for (;;) {
      while (this.head < bounds.trailView.length) {
        const view = bounds.trailView.data[this.head]!;
        const before = bounds.trailLeastBefore.data[this.head]!;
        this.head += 1;
        if (!this.network.follow(view) || !this.clauses.follow(view, before)) return this.stopPropagation();
        if (view >> 1 < this.end) for (const resource of this.capacitiesOf[view >> 1]!) isDue[resource] = isEnergyDue[resource] = 1;
      }
      const due = isDue.indexOf(1);
      if (due >= 0) {
        isDue[due] = 0;
        if (!this.capacities[due]!.propagate()) return this.stopPropagation();
        continue;
      }
      const energyDue = isEnergyDue.indexOf(1);
      if (energyDue < 0) return true;
      isEnergyDue[energyDue] = 0;
      if (!this.energies[energyDue]!.propagate()) return this.stopPropagation();
    }
  }

  private stopPropagation(): false {
    this.isDue.fill(0);
    this.isEnergyDue.fill(0);
    this.head = this.bounds.trailView.length;
    return false;
  }

  /** Searches on, from where an earlier call left off, until the answer is known or the limit is reached. */
  run(limit: SearchLimit): SearchResult {
    const stopAt = this.failures + limit.failures;
    const isDone = (): boolean => !this.isPossible || this.failures >= stopAt || (this.best?.makespan ?? Infinity) <= (limit.goal ?? 0) || limit.isOver?.() === true;
    while (!isDone()) {
      this.runs += 1;
      if (this.best && this.runs % runsPerFullRun !== 0) {
        this.runNearby(this.best, Math.min(stopAt, this.failures + failuresNearby), limit);
      } else {
        this.fullRuns += 1;
        this.runOnce(Math.min(stopAt, this.failures + failuresOfFirstRun * luby(this.fullRuns)), limit, []);
      }
      if (this.isPossible && this.clauses.count > this.clausesKept) {
        this.clauses.halve();
        this.clausesKept += 500;
      }
    }
    return this.result();
  }

  private result(): SearchResult {
    const { best } = this;
    const failures = this.failures;
    if (this.isPossible) return { state: "open", schedule: best, lowerBound: this.bounds.leastAtRoot[2 * this.end]!, failures };
    return best ? { state: "shortest", schedule: best, lowerBound: best.makespan, failures } : { state: "impossible", schedule: null, lowerBound: 0, failures };
  }

  private runNearby(best: Schedule, stopAt: number, limit: SearchLimit): void {
    const isSearched = this.runOnce(stopAt, limit, this.nearby.draw(best));
    this.nearby.notice(this.best !== best ? "shorter" : isSearched ? "none" : "unknown");
  }

  /**
   * One run between restarts; true if nothing shorter keeps to the assumptions, false if that is not known.
   * Without assumptions every second run first tries to end as early as the lower bound, which proves a higher bound if it fails.
   */
  private runOnce(stopAt: number, limit: SearchLimit, assumptions: readonly Assumption[]): boolean {
    const { bounds } = this;
    const isNearby = assumptions.length > 0;
    let isSearched = false;
    while (this.isPossible) {
      if (!this.propagate()) {
        this.learn();
        if (this.failures % 64 === 0 && limit.isOver?.()) break;
        continue;
      }
      if (this.failures >= stopAt) break;
      const lowest = bounds.leastAtRoot[2 * this.end]!;
      const isProbing = !isNearby && bounds.level === 0 && this.fullRuns % 2 === 0 && bounds.most(this.end) > lowest;
      const assumption = nextAssumption(assumptions, bounds);
      if (assumption === "impossible") {
        isSearched = true;
        break;
      }
      const choice = assumption ?? (isProbing ? { view: 2 * this.end + 1, least: -((lowest + lowest + bounds.most(this.end)) / 3 | 0) } : this.choices.next(this.runs > 1));
      if (!choice) {
        const starts = this.project.durations.map((_, activity) => bounds.least[2 * activity]!);
        this.take({ starts, makespan: makespanOf(this.project, starts) });
        if (isNearby || this.best!.makespan <= (limit.goal ?? 0)) break;
        continue;
      }
      bounds.openLevel();
      bounds.raise(choice.view, choice.least, reasons.none, 0);
    }
    this.backTo(0);
    return isSearched;
  }

  private learn(): void {
    this.failures += 1;
    const lesson = this.analysis.learn();
    if (!lesson) {
      this.isPossible = false;
      return;
    }
    this.backTo(lesson.level);
    this.choices.notice(lesson.facts);
    this.clauses.age();
    const [view, least] = lesson.facts as readonly [number, number];
    if (lesson.facts.length === 2) this.isPossible = this.bounds.raise(view, least, reasons.none, 0);
    else this.bounds.raise(view, least, reasons.clause, this.clauses.add(lesson.facts, lesson.spread));
  }
}

/** 1, 1, 2, 1, 1, 2, 4 …: lengths of runs after Luby, Sinclair and Zuckerman (1993). */
function luby(run: number): number {
  let size = 1;
  while (size < run + 1) size *= 2;
  if (size === run + 1) return size / 2;
  return luby(run - size / 2 + 1);
}

/** The earliest end that lags alone allow. */
export function criticalPath(project: Project, paths: Int32Array): number {
  const count = project.durations.length;
  let longest = 0;
  for (let from = 0; from < count; from += 1) {
    const begin = project.windows[from]?.[0]!.first ?? 0;
    for (let to = 0; to < count; to += 1) if (!project.isRest[to] && paths[from * count + to]! > noPath) longest = Math.max(longest, begin + paths[from * count + to]! + project.durations[to]!);
  }
  return longest;
}
