// Breeds good schedules: populations of early and of late schedules, each made from the other.
import { chanceFrom } from "./chance.ts";
import type { Chance } from "./chance.ts";
import { ListScheduler } from "./list-schedule.ts";
import { longestPaths, noPath } from "./longest-paths.ts";
import { horizonOf, makespanOf } from "./project.ts";
import type { Project, Schedule } from "./project.ts";

/** How far breeding goes. */
export interface BreedingLimit {
  readonly schedules: number;
  readonly seed: number;
  /** A schedule as short as this cannot be bettered. */
  readonly goal: number;
  readonly isOver?: () => boolean;
}

/** Orders to try before giving up when none of them leads to a schedule. */
const triesWithoutSuccess = 5;

const entrants = 3;

/** A child may be worse than the one it replaces by one part in this many. */
const leastLoss = 64;

/** An individual: starts in its own direction of time, and its makespan. */
interface Member {
  readonly starts: Float64Array;
  readonly makespan: number;
  /** From the release to the end of the last activity, rests too. */
  readonly span: number;
  /** Release of the time axis it was made on. */
  readonly release: number;
}

/**
 * A genetic algorithm with two populations after Debels and Vanhoucke (2007): left-justified schedules breed right-justified ones and the other
 * way round, so that every child is also a forward or backward improvement; a child keeps the busiest stretch of its father.
 */
export function breedSchedules(project: Project, paths: Int32Array, limit: BreedingLimit): Schedule | null {
  return new Breeding(project, paths, limit).run();
}

class Breeding {
  private readonly project: Project;
  private readonly limit: BreedingLimit;
  private readonly chance: Chance;
  private readonly horizon: number;
  private readonly forward: ListScheduler;
  private readonly backward: ListScheduler;
  private readonly shares: readonly number[];
  private best: Schedule | null = null;
  private made = 0;

  constructor(project: Project, paths: Int32Array, limit: BreedingLimit) {
    this.project = project;
    this.limit = limit;
    this.chance = chanceFrom(limit.seed);
    this.horizon = horizonOf(project);
    const turned = turnedRound(project, this.horizon);
    this.forward = new ListScheduler(project, paths);
    this.backward = new ListScheduler(turned, longestPaths(turned) ?? paths);
    this.shares = project.durations.map((_, activity) => project.demands[activity]!.reduce((sum, demand, resource) => sum + (demand > 0 ? demand / project.capacities[resource]! : 0), 0));
    this.tails = tailsOf(project, paths);
  }

  private readonly tails: readonly number[];

  private isOver(): boolean {
    return this.made >= this.limit.schedules || (this.best !== null && this.best.makespan <= this.limit.goal) || (this.made % 32 === 0 && this.limit.isOver?.() === true);
  }

  run(): Schedule | null {
    const size = Math.max(8, Math.min(40, Math.floor(this.limit.schedules / 60)));
    let parents = this.firstGeneration(size);
    let others: readonly Member[] = [];
    for (let isForward = false; parents.length > 0 && !this.isOver(); isForward = !isForward) {
      const children = this.nextGeneration(parents, others, isForward);
      [parents, others] = [children, parents];
    }
    return this.best;
  }

  /** Orders drawn by chance, with a bias towards activities on long paths to the end. */
  private firstGeneration(size: number): Member[] {
    const members: Member[] = [];
    const most = Math.max(1, ...this.tails);
    for (let tries = 0; members.length < size && tries < 3 * size && (members.length > 0 || tries < triesWithoutSuccess) && !this.isOver(); tries += 1) {
      const spread = tries === 0 ? 0 : 0.6 * most;
      const member = this.make(this.tails.map((tail) => -tail + (spread * this.chance(1_000)) / 1_000), 0, true);
      if (member) members.push(member);
    }
    return members;
  }

  private make(keys: ArrayLike<number>, release: number, isForward: boolean): Member | null {
    this.made += 1;
    const starts = (isForward ? this.forward : this.backward).schedule(keys, release);
    if (!starts) return null;
    let end = release;
    for (let activity = 0; activity < starts.length; activity += 1) end = Math.max(end, starts[activity]! + this.project.durations[activity]!);
    const makespan = isForward ? makespanOf(this.project, starts) : end - release;
    if (isForward && (this.best === null || makespan < this.best.makespan)) this.best = { starts: [...starts], makespan };
    return { starts: Float64Array.from(starts), makespan, span: end - release, release };
  }

  /** Children in the other direction of time, one in the place of each member. */
  private nextGeneration(parents: readonly Member[], others: readonly Member[], isForward: boolean): Member[] {
    const children: (Member | null)[] = [];
    for (const [place, father] of parents.entries()) {
      const before = others[place] ?? null;
      if (this.isOver()) {
        children.push(before);
        continue;
      }
      const mother = this.tournament(parents, father);
      const keys = this.cross(father, mother);
      // Ends in one direction are starts in the other.
      for (let activity = 0; activity < keys.length; activity += 1) keys[activity] = -(keys[activity]! + this.project.durations[activity]!);
      const child = this.make(keys, isForward ? 0 : this.horizon - father.span - father.release, isForward);
      const isWorthKeeping = child !== null && (before === null || child.makespan <= before.makespan + before.makespan / leastLoss);
      children.push(isWorthKeeping ? child : before);
    }
    return children.filter((each) => each !== null);
  }

  private tournament(parents: readonly Member[], father: Member): Member {
    const draw = (): Member => parents[this.chance(parents.length)]!;
    let best = draw();
    for (let round = 2; round <= entrants; round += 1) {
      const other = draw();
      if (other.makespan < best.makespan) best = other;
    }
    return best === father ? draw() : best;
  }

  private cross(father: Member, mother: Member): Float64Array {
    const keys = Float64Array.from(father.starts);
    const [from, until] = this.busiestStretch(father);
    const apart = 2 * (father.span + mother.span);
    for (let activity = 0; activity < keys.length; activity += 1) {
      const start = father.starts[activity]! - father.release;
      const motherly = mother.starts[activity]! - mother.release;
      keys[activity] = start < from ? motherly - apart : start > until ? motherly + apart : start;
    }
    const isTwin = father.makespan === mother.makespan && father.starts.every((start, activity) => start - father.release === mother.starts[activity]! - mother.release);
    const swaps = isTwin ? Math.max(2, keys.length >> 3) : this.chance(2);
    for (let swap = 0; swap < swaps; swap += 1) {
      const [a, b] = [this.chance(keys.length), this.chance(keys.length)];
      [keys[a], keys[b]] = [keys[b]!, keys[a]!];
    }
    return keys;
  }

  /** The stretch, a quarter to three quarters of the whole, in which resources are used most. */
  private busiestStretch({ starts, makespan, release }: Member): readonly [number, number] {
    const length = Math.max(1, Math.floor(makespan / 4) + this.chance(Math.max(1, Math.floor(makespan / 2))));
    const steps = 24;
    let best = [0, length] as readonly [number, number];
    let most = -1;
    for (let step = 0; step <= steps; step += 1) {
      const from = Math.floor(((makespan - length) * step) / steps);
      let use = 0;
      for (let activity = 0; activity < starts.length; activity += 1) {
        const start = starts[activity]! - release;
        const inside = Math.min(from + length, start + this.project.durations[activity]!) - Math.max(from, start);
        if (inside > 0) use += inside * this.shares[activity]!;
      }
      if (use > most) [best, most] = [[from, from + length], use];
    }
    return best;
  }
}

/** The same project with time running backwards: minute t becomes horizon − t. */
function turnedRound(project: Project, horizon: number): Project {
  const { durations } = project;
  return {
    ...project,
    lags: project.lags.map(({ from, to, lag }) => ({ from: to, to: from, lag: lag - durations[from]! + durations[to]! })),
    windows: project.windows.map((windows, activity) => windows && [...windows].reverse().map(({ first, last }) => ({ first: horizon - last - durations[activity]!, last: horizon - first - durations[activity]! }))),
  };
}

/** Minutes from the start of each activity to the end of the longest path behind it. */
function tailsOf(project: Project, paths: Int32Array): readonly number[] {
  const count = project.durations.length;
  return project.durations.map((_, from) => project.durations.reduce((longest, duration, to) => (paths[from * count + to]! > noPath ? Math.max(longest, paths[from * count + to]! + duration) : longest), 0));
}
