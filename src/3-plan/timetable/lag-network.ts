// Lags as arcs between views, some of them holding only under a condition, and the gaps between windows.
import { reasons } from "./bounds.ts";
import type { Bounds, View } from "./bounds.ts";
import { IntList } from "./int-list.ts";

/** Arcs "view to ≥ view from + lag", and what a raise of `from` does to them. */
export class LagNetwork {
  private readonly bounds: Bounds;
  readonly to = new IntList();
  readonly from = new IntList();
  readonly lag = new IntList();
  /** View that must be at least `whenLeast` for the arc to hold; −1 for an arc that always holds. */
  readonly when = new IntList();
  readonly whenLeast = new IntList();
  private readonly arcsFrom: IntList[];
  private readonly arcsWhen: IntList[];
  /** Gaps of each view: last value before the gap and first value behind it, in rising order. */
  private readonly gaps: IntList[];

  constructor(bounds: Bounds) {
    this.bounds = bounds;
    const lists = (): IntList[] => Array.from({ length: 2 * bounds.variables }, () => new IntList());
    this.arcsFrom = lists();
    this.arcsWhen = lists();
    this.gaps = lists();
  }

  /** Adds `variable to ≥ variable from + lag`, as one arc for lower and one for upper bounds. */
  addLag(from: number, to: number, lag: number, when: View = -1, whenLeast = 0): void {
    this.addArc(2 * from, 2 * to, lag, when, whenLeast);
    this.addArc(2 * to + 1, 2 * from + 1, lag, when, whenLeast);
  }

  private addArc(from: View, to: View, lag: number, when: View, whenLeast: number): void {
    const arc = this.to.length;
    this.from.push(from);
    this.to.push(to);
    this.lag.push(lag);
    this.when.push(when);
    this.whenLeast.push(whenLeast);
    this.arcsFrom[from]!.push(arc);
    if (when >= 0) this.arcsWhen[when]!.push(arc);
  }

  /** Adds a gap: the variable is at most `last` or at least `next`. Gaps of one variable are added in rising order. */
  addGap(variable: number, last: number, next: number): void {
    this.gaps[2 * variable]!.push(last);
    this.gaps[2 * variable]!.push(next);
    const turned = this.gaps[2 * variable + 1]!;
    // The turned view meets the gaps in the opposite order: move what is there up by one place.
    const old = [...turned.data.subarray(0, turned.length)];
    turned.length = 0;
    for (const value of [-next, -last, ...old]) turned.push(value);
  }

  /** Moves a view out of a gap; false on failure. */
  leaveGap(view: View): boolean {
    const { data, length } = this.gaps[view]!;
    const least = this.bounds.least[view]!;
    let low = 0;
    let high = length >> 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (data[2 * middle + 1]! <= least) low = middle + 1;
      else high = middle;
    }
    if (2 * low >= length || data[2 * low]! >= least) return true;
    return this.bounds.raise(view, data[2 * low + 1]!, reasons.gap, data[2 * low]! + 1);
  }

  /** Follows all arcs from a view that has been raised; false on failure. */
  follow(view: View): boolean {
    const { bounds } = this;
    const { least } = bounds;
    if (this.gaps[view]!.length > 0 && !this.leaveGap(view)) return false;
    const arcs = this.arcsFrom[view]!;
    for (let index = 0; index < arcs.length; index += 1) {
      const arc = arcs.data[index]!;
      const reached = least[view]! + this.lag.data[arc]!;
      const to = this.to.data[arc]!;
      if (reached <= least[to]!) continue;
      const when = this.when.data[arc]!;
      if (when < 0 || least[when]! >= this.whenLeast.data[arc]!) {
        if (!bounds.raise(to, reached, reasons.lag, arc)) return false;
      } else if (reached > -least[to ^ 1]! && !this.exclude(arc)) return false;
    }
    const opened = this.arcsWhen[view]!;
    for (let index = 0; index < opened.length; index += 1) {
      const arc = opened.data[index]!;
      if (least[view]! < this.whenLeast.data[arc]!) continue;
      if (!bounds.raise(this.to.data[arc]!, least[this.from.data[arc]!]! + this.lag.data[arc]!, reasons.lag, arc)) return false;
    }
    return true;
  }

  /** The condition of an arc that can no longer hold becomes false. */
  private exclude(arc: number): boolean {
    const { bounds } = this;
    const when = this.when.data[arc]!;
    if (bounds.least[when ^ 1]! >= 1 - this.whenLeast.data[arc]!) return true;
    const to = this.to.data[arc]! ^ 1;
    const start = bounds.facts.length;
    for (const each of [2, this.from.data[arc]!, 1 - bounds.least[to]! - this.lag.data[arc]!, to, bounds.least[to]!]) bounds.facts.push(each);
    return bounds.raise(when ^ 1, 1 - this.whenLeast.data[arc]!, reasons.facts, start);
  }
}
