// What the scheduling engine is given and what it answers: activities, lags between them, resources, all in whole minutes.

/** `start of to ≥ start of from + lag`; a negative lag bounds from above how long `from` may start after `to`. */
export interface Lag {
  readonly from: number;
  readonly to: number;
  readonly lag: number;
}

/** A run of minutes in which an activity may start, both ends included. */
export interface StartWindow {
  readonly first: number;
  readonly last: number;
}

/** Activities that share resources; nothing is interrupted once it has started. */
export interface Project {
  readonly durations: readonly number[];
  /** How much of each resource each activity holds from its start to its end. */
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
  readonly lags: readonly Lag[];
  /** For each activity the windows for its start, in order and apart; null where any minute from 0 on will do. */
  readonly windows: readonly (readonly StartWindow[] | null)[];
  /** Activities that may still run when all is done, such as books left in a press; the makespan does not count them. */
  readonly isRest: readonly boolean[];
}

/** Starts of all activities, and the end of the last one that is no rest. */
export interface Schedule {
  readonly starts: readonly number[];
  readonly makespan: number;
}

/** A project in which every activity may start at any minute from 0 on, and counts. */
export function plainProject(project: Omit<Project, "windows" | "isRest">): Project {
  return { ...project, windows: project.durations.map(() => null), isRest: project.durations.map(() => false) };
}

/** The end of the last activity that is no rest. */
export function makespanOf(project: Project, starts: ArrayLike<number>): number {
  return project.durations.reduce((latest, duration, activity) => (project.isRest[activity] ? latest : Math.max(latest, starts[activity]! + duration)), 0);
}

/** The earliest allowed start at or after a minute; null when the windows are over. */
export function nextStart(windows: readonly StartWindow[] | null, minute: number): number | null {
  if (!windows) return minute;
  let low = 0;
  let high = windows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (windows[middle]!.last < minute) low = middle + 1;
    else high = middle;
  }
  return low === windows.length ? null : Math.max(minute, windows[low]!.first);
}

/** A minute by which every schedule worth having is over: all activities one after another, each after its longest lag and a wait for its last window. */
export function horizonOf(project: Project): number {
  const longest = project.durations.map((duration, activity) => project.lags.reduce((most, each) => (each.from === activity ? Math.max(most, each.lag) : most), duration));
  const lastWindow = project.windows.reduce((latest, windows, activity) => (windows ? Math.max(latest, windows[windows.length - 1]!.last + project.durations[activity]!) : latest), 0);
  return longest.reduce((sum, each) => sum + each, 0) + lastWindow;
}
