// Finds stretches of time into which more work must go than a resource can do, even where no single minute is too full.
import { reasons } from "./bounds.ts";
import type { Bounds } from "./bounds.ts";
import type { Project } from "./project.ts";

const longestPause = 8;

/**
 * One resource, looked at after Vilím's timetable edge finding (2011): what certainly runs is counted minute by minute, the rest of an activity
 * wherever the stretch leaves it no other place. Each reason says of every activity how much of it cannot be moved out of the stretch.
 */
export class Energy {
  private readonly bounds: Bounds;
  private readonly capacity: number;
  private readonly users: readonly number[];
  private readonly lengths: Int32Array;
  private readonly demands: Int32Array;
  private readonly byStart: Int32Array;
  private readonly earliest: Int32Array;
  private readonly latest: Int32Array;
  private readonly loose: Int32Array;
  private readonly certainBefore: Float64Array;
  private readonly certainBeforeEnd: Float64Array;
  private readonly edges: Int32Array;
  private readonly heights: Int32Array;
  private readonly energyAt: Float64Array;
  private edgeCount = 0;
  /** Calls to pass over: looking is dear, and where it found nothing lately it is done less often. */
  private pause = 0;
  private nextPause = 1;

  constructor(bounds: Bounds, project: Project, resource: number) {
    this.bounds = bounds;
    this.capacity = project.capacities[resource]!;
    const demandOf = (activity: number): number => project.demands[activity]![resource]!;
    this.users = project.durations.flatMap((duration, activity) => (duration > 0 && demandOf(activity) > 0 ? [activity] : []));
    const count = this.users.length;
    this.lengths = Int32Array.from(this.users, (activity) => project.durations[activity]!);
    this.demands = Int32Array.from(this.users, demandOf);
    this.byStart = Int32Array.from(this.users, (_, index) => index);
    [this.earliest, this.latest, this.loose] = Array.from({ length: 3 }, () => new Int32Array(count)) as [Int32Array, Int32Array, Int32Array];
    [this.certainBefore, this.certainBeforeEnd] = [new Float64Array(count), new Float64Array(count)];
    [this.edges, this.heights] = [new Int32Array(2 * count), new Int32Array(2 * count)];
    this.energyAt = new Float64Array(2 * count);
  }

  /** False if some stretch is overfull; the failure is noted in the bounds. */
  propagate(): boolean {
    if (this.pause > 0) {
      this.pause -= 1;
      return true;
    }
    if (!this.look()) {
      this.nextPause = 1;
      return false;
    }
    this.pause = this.nextPause;
    this.nextPause = Math.min(longestPause, this.nextPause + 1);
    return true;
  }

  private look(): boolean {
    const { bounds, users, lengths, demands, byStart, earliest, latest, loose } = this;
    const count = users.length;
    this.edgeCount = 0;
    for (let index = 0; index < count; index += 1) {
      const user = users[index]!;
      const early = bounds.least[2 * user]!;
      const late = -bounds.least[2 * user + 1]!;
      earliest[index] = early;
      latest[index] = late;
      const certain = Math.max(0, early + lengths[index]! - late);
      loose[index] = lengths[index]! - certain;
      if (certain > 0) {
        this.insertEdge(late, demands[index]!);
        this.insertEdge(early + lengths[index]!, -demands[index]!);
      }
    }
    for (let at = 1; at < count; at += 1) {
      const index = byStart[at]!;
      let to = at;
      for (; to > 0 && earliest[byStart[to - 1]!]! < earliest[index]!; to -= 1) byStart[to] = byStart[to - 1]!;
      byStart[to] = index;
    }
    this.sumUpEdges();
    for (let index = 0; index < count; index += 1) {
      this.certainBefore[index] = this.certainUpTo(earliest[index]!);
      this.certainBeforeEnd[index] = this.certainUpTo(latest[index]! + lengths[index]!);
    }
    for (let index = 0; index < count; index += 1) if (!this.checkStretchesTo(index)) return false;
    return true;
  }

  private insertEdge(time: number, change: number): void {
    const { edges, heights } = this;
    let at = this.edgeCount++;
    for (; at > 0 && edges[at - 1]! > time; at -= 1) {
      edges[at] = edges[at - 1]!;
      heights[at] = heights[at - 1]!;
    }
    edges[at] = time;
    heights[at] = change;
  }

  /** Turns changes at the edges into heights behind them, with the energy up to each. */
  private sumUpEdges(): void {
    const { edges, heights, energyAt } = this;
    for (let at = 0; at < this.edgeCount; at += 1) {
      energyAt[at] = at === 0 ? 0 : energyAt[at - 1]! + heights[at - 1]! * (edges[at]! - edges[at - 1]!);
      if (at > 0) heights[at]! += heights[at - 1]!;
    }
  }

  /** Energy of what certainly runs before a minute. */
  private certainUpTo(minute: number): number {
    let low = 0;
    let high = this.edgeCount;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.edges[middle]! < minute) low = middle + 1;
      else high = middle;
    }
    return low === 0 ? 0 : this.energyAt[low - 1]! + this.heights[low - 1]! * (minute - this.edges[low - 1]!);
  }

  /** Checks all stretches that end where an activity ends at the latest. */
  private checkStretchesTo(last: number): boolean {
    const { lengths, demands, byStart, earliest, latest, loose } = this;
    const end = latest[last]! + lengths[last]!;
    const certainToEnd = this.certainBeforeEnd[last]!;
    let energy = 0;
    for (let at = 0; at < byStart.length; at += 1) {
      const index = byStart[at]!;
      const start = earliest[index]!;
      if (start >= end) continue;
      const length = lengths[index]!;
      const late = latest[index]!;
      if (late + length <= end) energy += demands[index]! * loose[index]!;
      else if (late < end) {
        const inside = Math.min(length, end - late) - Math.max(0, Math.min(end, start + length) - late);
        if (inside > 0) energy += demands[index]! * inside;
      }
      if (energy + certainToEnd - this.certainBefore[index]! > this.capacity * (end - start)) return this.fail(start, end);
    }
    return true;
  }

  /** Minutes of an activity that lie between two minutes wherever it is put. */
  private minutesWithin(index: number, start: number, end: number): number {
    const length = this.lengths[index]!;
    return Math.max(0, Math.min(end - start, length, this.earliest[index]! + length - start, end - this.latest[index]!));
  }

  /** Notes the failure as one activity that finds no room between the others, using no more of each than is needed. */
  private fail(start: number, end: number): false {
    const { bounds, users, lengths, demands } = this;
    const { facts } = bounds;
    const within = users.map((_, index) => this.minutesWithin(index, start, end));
    let spare = within.reduce((sum, minutes, index) => sum + minutes * demands[index]!, 0) - this.capacity * (end - start) - 1;
    for (let index = 0; index < users.length; index += 1) {
      const drop = within[index]! * demands[index]! <= spare ? within[index]! : 0;
      within[index]! -= drop;
      spare -= drop * demands[index]!;
    }
    for (let index = 0; index < users.length; index += 1) {
      const drop = Math.min(within[index]!, Math.floor(spare / demands[index]!));
      within[index]! -= drop;
      spare -= drop * demands[index]!;
    }
    const failing = within.findIndex((minutes) => minutes > 0);
    const begin = facts.length;
    facts.push(0);
    for (let index = 0; index < users.length; index += 1) {
      const minutes = within[index]!;
      if (minutes === 0) continue;
      facts.push(2 * users[index]!);
      facts.push(start + minutes - lengths[index]!);
      if (index === failing) continue;
      facts.push(2 * users[index]! + 1);
      facts.push(minutes - end);
    }
    facts.data[begin] = (facts.length - begin - 1) / 2;
    return bounds.raise(2 * users[failing]!, end - within[failing]! + 1, reasons.facts, begin) as false;
  }
}
