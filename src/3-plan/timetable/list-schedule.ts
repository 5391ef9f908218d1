// Makes a schedule from an order of importance: each activity in turn goes to the earliest place that is left for it.
import { noPath } from "./longest-paths.ts";
import { nextStart } from "./project.ts";
import type { Project } from "./project.ts";

/** Activities held together by maximum lags are placed together; anything else is a unit of its own. */
interface Unit {
  /** In the order in which the lags inside the unit let them start. */
  readonly members: readonly number[];
  readonly followers: readonly number[];
  readonly countBefore: number;
}

const mostAttempts = 50;

/** The serial schedule generation scheme (Kolisch 1996), with units that are taken out and put later when a maximum lag would break. */
export class ListScheduler {
  private readonly project: Project;
  private readonly paths: Int32Array;
  private readonly units: readonly Unit[];
  private readonly before: readonly (readonly { readonly from: number; readonly lag: number }[])[];
  private readonly uses: readonly (readonly { readonly resource: number; readonly demand: number }[])[];
  private readonly used: Int32Array[];
  private readonly starts: Int32Array;
  private readonly countLeft: Int32Array;
  private readonly unitKeys: Float64Array;
  private readonly usedUntil: Int32Array;
  private release = 0;

  constructor(project: Project, paths: Int32Array) {
    this.project = project;
    this.paths = paths;
    const count = project.durations.length;
    const unitOf = unitsOf(paths, count);
    const isInside = (from: number, to: number): boolean => unitOf[from] === unitOf[to];
    this.before = project.durations.map((_, activity) => project.lags.filter(({ from, to }) => to === activity && !isInside(from, to)));
    this.units = Array.from({ length: Math.max(...unitOf) + 1 }, (_, unit) => {
      const all = project.durations.flatMap((_duration, activity) => (unitOf[activity] === unit ? [activity] : []));
      const begin = (activity: number): number => Math.max(...all.map((other) => paths[other * count + activity]!));
      const followers = new Set(project.lags.filter(({ from, to }) => unitOf[from] === unit && !isInside(from, to)).map(({ to }) => unitOf[to]!));
      const previous = new Set(all.flatMap((activity) => this.before[activity]!.map(({ from }) => unitOf[from]!)));
      return { members: [...all].sort((a, b) => begin(a) - begin(b) || a - b), followers: [...followers], countBefore: previous.size };
    });
    this.uses = project.durations.map((duration, activity) =>
      duration === 0 ? [] : project.demands[activity]!.flatMap((demand, resource) => (demand > 0 ? [{ resource, demand }] : [])));
    this.used = project.capacities.map(() => new Int32Array(256));
    this.usedUntil = new Int32Array(project.capacities.length);
    this.starts = new Int32Array(count);
    this.countLeft = new Int32Array(this.units.length);
    this.unitKeys = new Float64Array(this.units.length);
  }

  /** Starts by order of rising keys as far as the lags allow, none before the release; null if something finds no place. The array is used again by the next call. */
  schedule(keys: ArrayLike<number>, release: number): Int32Array | null {
    const { units, countLeft, unitKeys } = this;
    this.release = release;
    for (const [resource, used] of this.used.entries()) used.fill(0, 0, this.usedUntil[resource]);
    this.usedUntil.fill(0);
    const ready: number[] = [];
    for (let unit = 0; unit < units.length; unit += 1) {
      countLeft[unit] = units[unit]!.countBefore;
      let key = Infinity;
      for (const member of units[unit]!.members) key = Math.min(key, keys[member]!);
      unitKeys[unit] = key;
      if (countLeft[unit] === 0) ready.push(unit);
    }
    while (ready.length > 0) {
      let best = 0;
      for (let at = 1; at < ready.length; at += 1) if (unitKeys[ready[at]!]! < unitKeys[ready[best]!]!) best = at;
      const unit = ready[best]!;
      ready[best] = ready[ready.length - 1]!;
      ready.pop();
      if (!this.placeUnit(units[unit]!.members)) return null;
      for (const follower of units[unit]!.followers) if (--countLeft[follower]! === 0) ready.push(follower);
    }
    return this.starts;
  }

  private placeUnit(members: readonly number[]): boolean {
    const floors = members.map((member) => this.before[member]!.reduce((latest, { from, lag }) => Math.max(latest, this.starts[from]! + lag), this.release));
    for (let attempt = 0; attempt < mostAttempts; attempt += 1) {
      const placed = this.tryMembers(members, floors);
      if (placed === null) return false;
      if (placed === members.length) return true;
      for (let at = 0; at < placed; at += 1) this.occupy(members[at]!, -1);
    }
    return false;
  }

  /** Places members as long as the maximum lags hold; on a breach the one that started too early is told to wait. Returns how many stand. */
  private tryMembers(members: readonly number[], floors: number[]): number | null {
    const { starts, paths } = this;
    const count = starts.length;
    for (let at = 0; at < members.length; at += 1) {
      const member = members[at]!;
      let earliest = floors[at]!;
      for (let other = 0; other < at; other += 1) {
        const lag = paths[members[other]! * count + member]!;
        if (lag !== noPath) earliest = Math.max(earliest, starts[members[other]!]! + lag);
      }
      const start = this.placeFor(member, earliest);
      if (start === null) return null;
      let isSound = true;
      for (let other = 0; other < at; other += 1) {
        const lag = paths[member * count + members[other]!]!;
        if (lag === noPath || start + lag <= starts[members[other]!]!) continue;
        floors[other] = Math.max(floors[other]!, start + lag);
        isSound = false;
      }
      if (!isSound) return at;
      starts[member] = start;
      this.occupy(member, 1);
    }
    return members.length;
  }

  private placeFor(activity: number, earliest: number): number | null {
    const { release } = this;
    const length = this.project.durations[activity]!;
    const windows = this.project.windows[activity]!;
    const uses = this.uses[activity]!;
    let start = nextStart(windows, earliest);
    search: while (start !== null) {
      for (const { resource, demand } of uses) {
        const used = this.used[resource]!;
        const most = this.project.capacities[resource]! - demand;
        if (most < 0) return null;
        for (let minute = Math.min(start + length - release, this.usedUntil[resource]!) - 1; minute >= start - release; minute -= 1) {
          if (used[minute]! <= most) continue;
          start = nextStart(windows, minute + 1 + release);
          continue search;
        }
      }
      return start;
    }
    return null;
  }

  private occupy(activity: number, sign: number): void {
    const begin = this.starts[activity]! - this.release;
    const end = begin + this.project.durations[activity]!;
    for (const { resource, demand } of this.uses[activity]!) {
      let used = this.used[resource]!;
      if (used.length < end) {
        const larger = new Int32Array(Math.max(end, 2 * used.length));
        larger.set(used);
        this.used[resource] = used = larger;
      }
      for (let minute = begin; minute < end; minute += 1) used[minute]! += sign * demand;
      if (end > this.usedUntil[resource]!) this.usedUntil[resource] = end;
    }
  }
}

/** Numbers the groups of activities between which paths lead both ways. */
function unitsOf(paths: Int32Array, count: number): readonly number[] {
  const unitOf: number[] = [];
  let units = 0;
  for (let activity = 0; activity < count; activity += 1) {
    let unit = -1;
    for (let other = 0; other < activity && unit < 0; other += 1) if (paths[activity * count + other] !== noPath && paths[other * count + activity] !== noPath) unit = unitOf[other]!;
    unitOf.push(unit < 0 ? units++ : unit);
  }
  return unitOf;
}
