// What a search has learned from its failures: clauses, each of which says that at least one of several facts is true.
import { reasons } from "./bounds.ts";
import type { Bounds, View } from "./bounds.ts";
import { IntList } from "./int-list.ts";

/** A learned clause as it is kept when clauses are thrown out: view and bound of each fact in turn. */
interface KeptClause {
  readonly facts: readonly number[];
  readonly spread: number;
  readonly activity: number;
}

/** Clauses with two watched facts each: only when one of these becomes false need the clause be looked at. */
export class Clauses {
  private readonly bounds: Bounds;
  /** Facts of all clauses: view, bound, view, bound … */
  readonly facts = new IntList();
  readonly begins = new IntList();
  readonly ends = new IntList();
  private spreads: number[] = [];
  private activities: number[] = [];
  private step = 1;
  /** By the view whose raise can make a watched fact false: clause, and the bound at which it does. */
  private watchers: IntList[];

  constructor(bounds: Bounds) {
    this.bounds = bounds;
    this.watchers = this.noWatchers();
  }

  get count(): number {
    return this.begins.length;
  }

  private noWatchers(): IntList[] {
    return Array.from({ length: 2 * this.bounds.variables }, () => new IntList());
  }

  /** Adds a clause of two or more facts; the first two are watched. `spread` is the number of levels its facts come from. */
  add(facts: readonly number[], spread: number, activity = this.step): number {
    const clause = this.begins.length;
    this.begins.push(this.facts.length);
    for (const each of facts) this.facts.push(each);
    this.ends.push(this.facts.length);
    this.spreads.push(spread);
    this.activities.push(activity);
    this.watch(clause, facts[0]!, facts[1]!);
    this.watch(clause, facts[2]!, facts[3]!);
    return clause;
  }

  private watch(clause: number, view: View, least: number): void {
    const list = this.watchers[view ^ 1]!;
    list.push(clause);
    list.push(1 - least);
  }

  /** A clause that helped to explain a failure is worth keeping. */
  praise(clause: number): void {
    this.activities[clause]! += this.step;
    if (this.activities[clause]! < 1e30) return;
    this.activities = this.activities.map((each) => each * 1e-30);
    this.step *= 1e-30;
  }

  /** Praise counts more the later it comes. */
  age(): void {
    this.step *= 1.001;
  }

  /** Looks at the clauses that may have become unit when a view was raised from a bound; false on failure. */
  follow(view: View, before: number): boolean {
    const { bounds, facts } = this;
    const { least } = bounds;
    const list = this.watchers[view]!;
    let kept = 0;
    let read = 0;
    let isSound = true;
    next: while (read < list.length) {
      const clause = list.data[read]!;
      const falseFrom = list.data[read + 1]!;
      read += 2;
      if (falseFrom <= before || falseFrom > least[view]! || !isSound) {
        list.data[kept++] = clause;
        list.data[kept++] = falseFrom;
        continue;
      }
      const begin = this.begins.data[clause]!;
      const end = this.ends.data[clause]!;
      const data = facts.data;
      // The false fact goes second.
      if ((data[begin]! ^ 1) === view && 1 - data[begin + 1]! === falseFrom) swapFacts(data, begin, begin + 2);
      const other = data[begin]!;
      const otherLeast = data[begin + 1]!;
      if (least[other]! < otherLeast) {
        for (let at = begin + 4; at < end; at += 2) {
          const candidate = data[at]!;
          if (least[candidate ^ 1]! >= 1 - data[at + 1]!) continue;
          swapFacts(data, begin + 2, at);
          this.watch(clause, data[begin + 2]!, data[begin + 3]!);
          continue next;
        }
        isSound = bounds.raise(other, otherLeast, reasons.clause, clause);
      }
      list.data[kept++] = clause;
      list.data[kept++] = falseFrom;
    }
    list.length = kept;
    return isSound;
  }

  /** Throws out the half of the clauses that is of least use; only at level 0, where no raise needs its reason any more. */
  halve(): void {
    const all = this.spreads.map((spread, clause): KeptClause => ({
      facts: [...this.facts.data.subarray(this.begins.data[clause]!, this.ends.data[clause]!)], spread, activity: this.activities[clause]!,
    }));
    const isTrue = (view: View, least: number): boolean => this.bounds.leastAtRoot[view]! >= least;
    const open = all.filter(({ facts }) => !facts.some((view, index) => index % 2 === 0 && isTrue(view, facts[index + 1]!)));
    const core = open.filter(({ spread }) => spread <= 2);
    const rest = open.filter(({ spread }) => spread > 2).sort((a, b) => b.activity - a.activity);
    for (const list of [this.facts, this.begins, this.ends]) list.length = 0;
    this.spreads = [];
    this.activities = [];
    this.watchers = this.noWatchers();
    for (const each of [...core, ...rest.slice(0, rest.length >> 1)]) this.addOpen(each);
  }

  /** Adds a clause again with two facts in front that are not false at level 0. */
  private addOpen({ facts, spread, activity }: KeptClause): void {
    const pairs = facts.flatMap((view, index) => (index % 2 === 0 ? [[view, facts[index + 1]!] as const] : []));
    const possible = pairs.filter(([view, least]) => this.bounds.least[view ^ 1]! < 1 - least);
    if (possible.length < 2) throw new Error("a clause with a single open fact was not followed");
    this.add(possible.flat(), spread, activity);
  }
}

function swapFacts(data: Int32Array, a: number, b: number): void {
  for (let offset = 0; offset < 2; offset += 1) {
    const kept = data[a + offset]!;
    data[a + offset] = data[b + offset]!;
    data[b + offset] = kept;
  }
}
