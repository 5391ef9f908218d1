// Keeps within capacity: where activities certainly run at the same time, there is no room for others.
import { reasons } from "./bounds.ts";
import type { Bounds } from "./bounds.ts";
import type { Project } from "./project.ts";

/**
 * One resource. An activity certainly runs from its latest start to its earliest end, if there is anything between the two;
 * what certainly runs, added up over time, is the profile. An activity is pushed along until it fits beside it.
 * Reasons speak of single minutes: these activities run at that minute, so another one does not.
 */
export class Capacity {
  private readonly bounds: Bounds;
  private readonly capacity: number;
  /** Activities that use the resource, the largest demands first. */
  readonly users: Int32Array;
  private readonly lengths: Int32Array;
  private readonly demands: Int32Array;
  private readonly edges: Int32Array;
  private readonly changes: Int32Array;
  private readonly from: Int32Array;
  private readonly until: Int32Array;
  private readonly height: Int32Array;
  private segments = 0;

  constructor(bounds: Bounds, project: Project, resource: number) {
    this.bounds = bounds;
    this.capacity = project.capacities[resource]!;
    const demandOf = (activity: number): number => project.demands[activity]![resource]!;
    const users = project.durations.flatMap((duration, activity) => (duration > 0 && demandOf(activity) > 0 ? [activity] : [])).sort((a, b) => demandOf(b) - demandOf(a));
    this.users = Int32Array.from(users);
    this.lengths = Int32Array.from(users, (activity) => project.durations[activity]!);
    this.demands = Int32Array.from(users, demandOf);
    [this.edges, this.changes, this.from, this.until, this.height] = Array.from({ length: 5 }, () => new Int32Array(2 * users.length)) as [Int32Array, Int32Array, Int32Array, Int32Array, Int32Array];
  }

  /** Pushes activities out of full stretches of time; false on failure. */
  propagate(): boolean {
    const highest = this.buildProfile();
    if (highest > this.capacity) return this.failAtOverload();
    const { bounds, users, lengths, demands } = this;
    for (let index = 0; index < users.length; index += 1) {
      const demand = demands[index]!;
      if (highest + demand <= this.capacity) break;
      const user = users[index]!;
      if (bounds.isFixed(user)) continue;
      if (!this.pushLater(index, user, lengths[index]!, demand) || !this.pushEarlier(index, user, lengths[index]!, demand)) return false;
    }
    return true;
  }

  private buildProfile(): number {
    const { edges, changes, from, until, height } = this;
    const { least } = this.bounds;
    let count = 0;
    for (let index = 0; index < this.users.length; index += 1) {
      const user = this.users[index]!;
      const begin = -least[2 * user + 1]!;
      const end = least[2 * user]! + this.lengths[index]!;
      if (begin >= end) continue;
      count = this.insert(begin, this.demands[index]!, count);
      count = this.insert(end, -this.demands[index]!, count);
    }
    let segments = 0;
    let sum = 0;
    let highest = 0;
    for (let at = 0; at < count;) {
      const time = edges[at]!;
      if (sum > 0) until[segments - 1] = time;
      while (at < count && edges[at] === time) sum += changes[at++]!;
      if (sum === 0) continue;
      from[segments] = time;
      height[segments] = sum;
      segments += 1;
      if (sum > highest) highest = sum;
    }
    this.segments = segments;
    return highest;
  }

  private insert(time: number, change: number, count: number): number {
    const { edges, changes } = this;
    let at = count;
    while (at > 0 && edges[at - 1]! > time) {
      edges[at] = edges[at - 1]!;
      changes[at] = changes[at - 1]!;
      at -= 1;
    }
    edges[at] = time;
    changes[at] = change;
    return count + 1;
  }

  private failAtOverload(): boolean {
    let segment = 0;
    while (this.height[segment]! <= this.capacity) segment += 1;
    const minute = (this.from[segment]! + this.until[segment]! - 1) >> 1;
    // Written as a failed push of the largest activity that runs then: it would have to start after that minute.
    let index = 0;
    while (!this.runsAt(index, minute)) index += 1;
    const user = this.users[index]!;
    const start = this.writeReason(index, minute, this.demands[index]!, 2 * user, minute + 1 - this.lengths[index]!);
    return this.bounds.raise(2 * user, minute + 1, reasons.facts, start);
  }

  private runsAt(index: number, minute: number): boolean {
    const { least } = this.bounds;
    const user = this.users[index]!;
    return -least[2 * user + 1]! <= minute && minute < least[2 * user]! + this.lengths[index]!;
  }

  /** Facts for "this activity does not run at the minute", given that it would if it started within a run around the minute. */
  private writeReason(pushed: number, minute: number, demand: number, view: number, least: number): number {
    const { facts } = this.bounds;
    const start = facts.length;
    facts.push(1);
    facts.push(view);
    facts.push(least);
    let sum = demand;
    let count = 1;
    for (let index = 0; sum <= this.capacity; index += 1) {
      if (index === pushed || !this.runsAt(index, minute)) continue;
      const user = this.users[index]!;
      sum += this.demands[index]!;
      count += 2;
      facts.push(2 * user);
      facts.push(minute + 1 - this.lengths[index]!);
      facts.push(2 * user + 1);
      facts.push(-minute);
    }
    facts.data[start] = count;
    return start;
  }

  private pushLater(index: number, user: number, length: number, demand: number): boolean {
    const { bounds, from, until, height, segments } = this;
    const { least } = bounds;
    const latest = -least[2 * user + 1]!;
    const certainEnd = least[2 * user]! + length;
    let segment = this.firstSegmentAfter(least[2 * user]!);
    for (; segment < segments; segment += 1) {
      const start = least[2 * user]!;
      if (from[segment]! >= start + length) break;
      if (height[segment]! + demand <= this.capacity || until[segment]! <= start) continue;
      if (latest <= from[segment]! && until[segment]! <= certainEnd) continue;
      while (least[2 * user]! < until[segment]! && least[2 * user]! + length > from[segment]!) {
        const minute = Math.min(until[segment]!, least[2 * user]! + length) - 1;
        const reason = this.writeReason(index, minute, demand, 2 * user, minute + 1 - length);
        if (!bounds.raise(2 * user, minute + 1, reasons.facts, reason)) return false;
      }
    }
    return true;
  }

  private pushEarlier(index: number, user: number, length: number, demand: number): boolean {
    const { bounds, from, until, height } = this;
    const { least } = bounds;
    const turned = 2 * user + 1;
    const latestAtFirst = -least[turned]!;
    let segment = this.firstSegmentAfter(latestAtFirst + length) ;
    if (segment === this.segments) segment -= 1;
    for (; segment >= 0; segment -= 1) {
      const latest = -least[turned]!;
      if (until[segment]! <= latest) break;
      if (height[segment]! + demand <= this.capacity || from[segment]! >= latest + length) continue;
      if (latestAtFirst <= from[segment]! && until[segment]! <= least[2 * user]! + length) continue;
      while (-least[turned]! < until[segment]! && -least[turned]! + length > from[segment]!) {
        const minute = Math.max(from[segment]!, -least[turned]!);
        const reason = this.writeReason(index, minute, demand, turned, -minute);
        if (!bounds.raise(turned, length - minute, reasons.facts, reason)) return false;
      }
    }
    return true;
  }

  /** The first segment that ends after a minute. */
  private firstSegmentAfter(minute: number): number {
    let low = 0;
    let high = this.segments;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.until[middle]! <= minute) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
