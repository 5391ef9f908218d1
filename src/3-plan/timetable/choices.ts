// Chooses what a search tries next: facts that took part in recent failures first, else the activity that can start earliest.
import type { Bounds } from "./bounds.ts";

/** A fact of the form "variable at least bound" or its opposite, to be tried. */
export interface Choice {
  readonly view: number;
  readonly least: number;
}

const keySpan = 2 ** 24;

/** Facts seen in failures, kept in a heap by how often and how lately they were seen. */
export class Choices {
  private readonly bounds: Bounds;
  /** Variables that are start times; the others are orders of two activities. */
  private readonly activities: number;
  private readonly ids = new Map<number, number>();
  private readonly variable: number[] = [];
  private readonly least: number[] = [];
  private readonly weight: number[] = [];
  private readonly heap: number[] = [];
  private readonly placeInHeap: number[] = [];
  /** Facts taken out of the heap because they were decided, with the level at which that was seen. */
  private readonly set: number[] = [];
  private readonly setLevel: number[] = [];
  private step = 1;
  /** Starts of the best schedule so far: the search looks near it. */
  guide: readonly number[] | null = null;

  constructor(bounds: Bounds, activities: number) {
    this.bounds = bounds;
    this.activities = activities;
  }

  /** The facts of a new clause become more interesting. */
  notice(facts: readonly number[]): void {
    for (let at = 0; at < facts.length; at += 2) {
      const view = facts[at]!;
      const least = view % 2 === 0 ? facts[at + 1]! : 1 - facts[at + 1]!;
      const key = (view >> 1) * keySpan + least + keySpan / 2;
      let id = this.ids.get(key);
      if (id === undefined) {
        id = this.variable.length;
        this.ids.set(key, id);
        this.variable.push(view >> 1);
        this.least.push(least);
        this.weight.push(0);
        this.placeInHeap.push(-1);
        this.insert(id);
      }
      this.weight[id]! += this.step;
      if (this.placeInHeap[id]! >= 0) this.siftUp(this.placeInHeap[id]!);
    }
    this.step *= 1.05;
    if (this.step > 1e100) {
      for (let id = 0; id < this.weight.length; id += 1) this.weight[id]! *= 1e-100;
      this.step *= 1e-100;
    }
  }

  /** Facts that were decided above a level are open again. */
  backTo(level: number): void {
    while (this.set.length > 0 && this.setLevel[this.setLevel.length - 1]! > level) {
      this.setLevel.pop();
      this.insert(this.set.pop()!);
    }
  }

  /** The next fact to try; null when all is decided. */
  next(byFailures: boolean): Choice | null {
    const { bounds } = this;
    while (byFailures && this.heap.length > 0) {
      const id = this.heap[0]!;
      const variable = this.variable[id]!;
      const least = this.least[id]!;
      if (bounds.least[2 * variable]! < least && bounds.most(variable) >= least) {
        const guided = this.guide?.[variable];
        const isAtLeast = guided !== undefined && guided >= least;
        return isAtLeast ? { view: 2 * variable, least } : { view: 2 * variable + 1, least: 1 - least };
      }
      this.removeTop();
      this.set.push(id);
      this.setLevel.push(bounds.level);
    }
    return this.earliest();
  }

  private earliest(): Choice | null {
    const { bounds } = this;
    let best = -1;
    for (let activity = 0; activity < this.activities; activity += 1) {
      if (bounds.isFixed(activity)) continue;
      if (best < 0) best = activity;
      else {
        const difference = bounds.least[2 * activity]! - bounds.least[2 * best]!;
        if (difference < 0 || (difference === 0 && bounds.most(activity) < bounds.most(best))) best = activity;
      }
    }
    return best < 0 ? null : { view: 2 * best + 1, least: -bounds.least[2 * best]! };
  }

  private insert(id: number): void {
    this.placeInHeap[id] = this.heap.length;
    this.heap.push(id);
    this.siftUp(this.heap.length - 1);
  }

  private removeTop(): void {
    const top = this.heap[0]!;
    const last = this.heap.pop()!;
    this.placeInHeap[top] = -1;
    if (last === top) return;
    this.heap[0] = last;
    this.placeInHeap[last] = 0;
    this.siftDown();
  }

  private siftUp(from: number): void {
    const { heap, weight, placeInHeap } = this;
    const id = heap[from]!;
    let at = from;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (weight[heap[parent]!]! >= weight[id]!) break;
      heap[at] = heap[parent]!;
      placeInHeap[heap[at]!] = at;
      at = parent;
    }
    heap[at] = id;
    placeInHeap[id] = at;
  }

  private siftDown(): void {
    const { heap, weight, placeInHeap } = this;
    const id = heap[0]!;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && weight[heap[child + 1]!]! > weight[heap[child]!]!) child += 1;
      if (weight[heap[child]!]! <= weight[id]!) break;
      heap[at] = heap[child]!;
      placeInHeap[heap[at]!] = at;
      at = child;
    }
    heap[at] = id;
    placeInHeap[id] = at;
  }
}
