// Finds out what a failure of the search teaches: the first point at which one fact alone would have had to be otherwise.
import { reasons } from "./bounds.ts";
import type { Bounds, View } from "./bounds.ts";
import type { Clauses } from "./clauses.ts";
import type { LagNetwork } from "./lag-network.ts";

/** What was learned: at least one of these facts (view, bound, view, bound …) holds; after going back, only the first still can. */
export interface Lesson {
  readonly facts: readonly number[];
  /** Level to go back to. */
  readonly level: number;
  /** Number of levels that the facts come from. */
  readonly spread: number;
}

const notNeeded = -(2 ** 30);

/** Works back from the failed raise noted in the bounds, replacing facts by their reasons. */
export class FailureAnalysis {
  private readonly bounds: Bounds;
  private readonly network: LagNetwork;
  private readonly clauses: Clauses;
  /** For each view the bound that the failure needs, and the raise that brought it about. */
  private readonly needed: Int32Array;
  private readonly raisedBy: Int32Array;
  private readonly touched: number[] = [];
  private begin = 0;
  private open = 0;
  private latest = -1;

  constructor(bounds: Bounds, network: LagNetwork, clauses: Clauses) {
    this.bounds = bounds;
    this.network = network;
    this.clauses = clauses;
    this.needed = new Int32Array(2 * bounds.variables).fill(notNeeded);
    this.raisedBy = new Int32Array(2 * bounds.variables).fill(-1);
  }

  /** The lesson of the failure; null if the failure needs no choice at all, so that there is no solution. */
  learn(): Lesson | null {
    const { bounds } = this;
    const { failedView, failedLeast } = bounds;
    this.begin = bounds.levelTrail.data[bounds.level]!;
    this.open = 0;
    this.latest = -1;
    this.explain(failedView, failedLeast, bounds.failedReason, bounds.failedData);
    this.need(failedView ^ 1, 1 - failedLeast);
    if (bounds.level === 0 || this.latest < 0) return this.forget(null);
    if (this.open === 0) this.openLatestLevel();
    const pivot = this.backToOnePoint();
    return this.forget(this.lesson(pivot));
  }

  private forget(lesson: Lesson | null): Lesson | null {
    for (const view of this.touched) this.needed[view] = notNeeded;
    this.touched.length = 0;
    return lesson;
  }

  /** A failure that needs only older choices is looked at from the level of the latest of them. */
  private openLatestLevel(): void {
    const { bounds } = this;
    this.begin = bounds.levelTrail.data[bounds.trailLevel.data[this.latest]!]!;
    for (const view of this.touched) if (this.needed[view] !== notNeeded && this.raisedBy[view]! >= this.begin) this.open += 1;
  }

  /** Replaces facts of the level by their reasons, latest first, until a single one is left; returns its view. */
  private backToOnePoint(): View {
    const { bounds, needed, raisedBy } = this;
    for (let at = this.latest; ; at -= 1) {
      const view = bounds.trailView.data[at]!;
      if (needed[view] === notNeeded || raisedBy[view] !== at) continue;
      if (this.open === 1) return view;
      const least = needed[view]!;
      needed[view] = notNeeded;
      this.open -= 1;
      const reason = bounds.trailReason.data[at]!;
      this.explain(view, reason === reasons.lag ? least : bounds.trailLeast.data[at]!, reason, bounds.trailData.data[at]!);
    }
  }

  private explain(view: View, least: number, reason: number, data: number): void {
    if (reason === reasons.lag) {
      const { network } = this;
      this.need(network.from.data[data]!, least - network.lag.data[data]!);
      if (network.when.data[data]! >= 0) this.need(network.when.data[data]!, network.whenLeast.data[data]!);
    } else if (reason === reasons.gap) {
      this.need(view, data);
    } else if (reason === reasons.clause) {
      const { facts, begins, ends } = this.clauses;
      this.clauses.praise(data);
      for (let at = begins.data[data]! + 2; at < ends.data[data]!; at += 2) this.need(facts.data[at]! ^ 1, 1 - facts.data[at + 1]!);
    } else if (reason === reasons.facts) {
      const { facts } = this.bounds;
      for (let at = data + 1, count = facts.data[data]!; count > 0; count -= 1, at += 2) this.need(facts.data[at]!, facts.data[at + 1]!);
    }
  }

  private need(view: View, least: number): void {
    const { bounds, needed, raisedBy } = this;
    if (least <= bounds.leastAtRoot[view]! || needed[view]! >= least) return;
    const at = bounds.raiseBehind(view, least);
    const before = needed[view]!;
    if (before === notNeeded) this.touched.push(view);
    const wasOpen = before !== notNeeded && raisedBy[view]! >= this.begin;
    needed[view] = least;
    raisedBy[view] = at;
    if (at >= this.begin && !wasOpen) this.open += 1;
    if (at > this.latest) this.latest = at;
  }

  private lesson(pivot: View): Lesson {
    const { bounds, needed, raisedBy } = this;
    const facts = [pivot ^ 1, 1 - needed[pivot]!];
    const levels = new Set<number>();
    let level = 0;
    let deepest = 0;
    const seen = new Set<View>([pivot]);
    for (const view of this.touched) {
      if (needed[view] === notNeeded || seen.has(view)) continue;
      seen.add(view);
      if (this.followsFromOthers(view)) continue;
      const at = bounds.trailLevel.data[raisedBy[view]!]!;
      levels.add(at);
      facts.push(view ^ 1, 1 - needed[view]!);
      if (at > level) [level, deepest] = [at, facts.length - 2];
    }
    if (deepest > 2) {
      [facts[2], facts[deepest]] = [facts[deepest]!, facts[2]!];
      [facts[3], facts[deepest + 1]] = [facts[deepest + 1]!, facts[3]!];
    }
    return { facts, level, spread: levels.size + 1 };
  }

  /** Whether the reason of a fact is needed anyway, so that the fact itself may be left out. */
  private followsFromOthers(view: View): boolean {
    const { bounds, network } = this;
    const at = this.raisedBy[view]!;
    const reason = bounds.trailReason.data[at]!;
    const data = bounds.trailData.data[at]!;
    if (reason === reasons.lag) {
      const when = network.when.data[data]!;
      return this.isGivenBefore(at, network.from.data[data]!, this.needed[view]! - network.lag.data[data]!) && (when < 0 || this.isGivenBefore(at, when, network.whenLeast.data[data]!));
    }
    if (reason === reasons.clause) {
      const { facts, begins, ends } = this.clauses;
      for (let each = begins.data[data]! + 2; each < ends.data[data]!; each += 2) if (!this.isGivenBefore(at, facts.data[each]! ^ 1, 1 - facts.data[each + 1]!)) return false;
      return true;
    }
    if (reason === reasons.facts) {
      const { facts } = bounds;
      for (let each = data + 1, count = facts.data[data]!; count > 0; count -= 1, each += 2) if (!this.isGivenBefore(at, facts.data[each]!, facts.data[each + 1]!)) return false;
      return true;
    }
    return false;
  }

  /** Only what was raised earlier may stand in for a fact: else two facts could each be left out because of the other. */
  private isGivenBefore(at: number, view: View, least: number): boolean {
    return least <= this.bounds.leastAtRoot[view]! || (this.needed[view]! >= least && this.raisedBy[view]! < at);
  }
}
