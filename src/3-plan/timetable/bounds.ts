// The bounds of all start times during a search, with the order in which they were raised and why.
import { IntList } from "./int-list.ts";

/**
 * Each variable v has two views: 2v stands for its value, 2v + 1 for its value with the sign turned.
 * Every fact is of one form, "view x is at least b": an upper bound of v is a lower bound of view 2v + 1. Turning a view round is `x ^ 1`.
 */
export type View = number;

/** Why a bound was raised. What the data mean depends on it. */
export const reasons = {
  /** A choice, or a fact about the whole project: it has no reason. */
  none: 0,
  /** Data: the arc in the lag network. */
  lag: 1,
  /** Data: the bound of the same view that fell into a gap between windows. */
  gap: 2,
  /** Data: the clause in which every other fact is false. */
  clause: 3,
  /** Data: where its facts are written in `facts`, their count first. */
  facts: 4,
} as const;

/** Bound of a view about which nothing is known. */
export const unbounded = -(2 ** 29);

/** The bounds, the trail of raises, and the levels of choices. */
export class Bounds {
  readonly variables: number;
  /** What each view is at least. */
  readonly least: Int32Array;
  /** The same at level 0, before any choice. */
  readonly leastAtRoot: Int32Array;
  /** The latest raise of each view, −1 if there was none. */
  readonly latest: Int32Array;
  readonly trailView = new IntList();
  readonly trailLeast = new IntList();
  readonly trailLeastBefore = new IntList();
  readonly trailLatestBefore = new IntList();
  readonly trailLevel = new IntList();
  readonly trailReason = new IntList();
  readonly trailData = new IntList();
  /** Facts written down as reasons: count, then view and bound of each. */
  readonly facts = new IntList();
  /** Where trail and facts stood when each level began; level 0 begins at 0. */
  readonly levelTrail = new IntList();
  readonly levelFacts = new IntList();
  level = 0;
  /** The raise that could not be made, after `raise` returned false. */
  failedView: View = -1;
  failedLeast = 0;
  failedReason = 0;
  failedData = 0;

  constructor(variables: number) {
    this.variables = variables;
    this.least = new Int32Array(2 * variables).fill(unbounded);
    this.leastAtRoot = new Int32Array(2 * variables).fill(unbounded);
    this.latest = new Int32Array(2 * variables).fill(-1);
    this.levelTrail.push(0);
    this.levelFacts.push(0);
  }

  /** The value that a variable is at most. */
  most(variable: number): number {
    return -this.least[2 * variable + 1]!;
  }

  isFixed(variable: number): boolean {
    return this.least[2 * variable] === -this.least[2 * variable + 1]!;
  }

  /** Raises a view to at least a bound; false if the variable is left without a value, and then the failed raise is noted. */
  raise(view: View, least: number, reason: number, data: number): boolean {
    const before = this.least[view]!;
    if (least <= before) return true;
    if (least > -this.least[view ^ 1]!) {
      this.failedView = view;
      this.failedLeast = least;
      this.failedReason = reason;
      this.failedData = data;
      return false;
    }
    const index = this.trailView.length;
    this.trailView.push(view);
    this.trailLeast.push(least);
    this.trailLeastBefore.push(before);
    this.trailLatestBefore.push(this.latest[view]!);
    this.trailLevel.push(this.level);
    this.trailReason.push(reason);
    this.trailData.push(data);
    this.least[view] = least;
    this.latest[view] = index;
    if (this.level === 0) this.leastAtRoot[view] = least;
    return true;
  }

  /** Opens a new level; what is raised from now on can be taken back. */
  openLevel(): void {
    this.level += 1;
    this.levelTrail.push(this.trailView.length);
    this.levelFacts.push(this.facts.length);
  }

  /** Takes back everything that was raised above a level. */
  backTo(level: number): void {
    if (level >= this.level) return;
    const keep = this.levelTrail.data[level + 1]!;
    for (let index = this.trailView.length - 1; index >= keep; index -= 1) {
      const view = this.trailView.data[index]!;
      this.least[view] = this.trailLeastBefore.data[index]!;
      this.latest[view] = this.trailLatestBefore.data[index]!;
    }
    for (const list of [this.trailView, this.trailLeast, this.trailLeastBefore, this.trailLatestBefore, this.trailLevel, this.trailReason, this.trailData]) list.length = keep;
    this.facts.length = this.levelFacts.data[level + 1]!;
    this.levelTrail.length = level + 1;
    this.levelFacts.length = level + 1;
    this.level = level;
  }

  /** The raise by which a view first came to be at least a bound; −1 if it always was. */
  raiseBehind(view: View, least: number): number {
    let index = this.latest[view]!;
    while (index >= 0 && this.trailLeastBefore.data[index]! >= least) index = this.trailLatestBefore.data[index]!;
    return index;
  }
}
