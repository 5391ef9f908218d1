// Longest paths between all activities: what every lag, taken with the others, means for each pair.
import type { Project } from "./project.ts";

/** No path leads from one activity to the other. */
export const noPath = -(2 ** 28);

/** `lags[i * count + j]`: least minutes from the start of i to the start of j; null means that the lags contradict each other. */
export function longestPaths(project: Project): Int32Array | null {
  const count = project.durations.length;
  const lags = new Int32Array(count * count).fill(noPath);
  for (let activity = 0; activity < count; activity += 1) lags[activity * count + activity] = 0;
  for (const { from, to, lag } of project.lags) lags[from * count + to] = Math.max(lags[from * count + to]!, lag);
  for (let via = 0; via < count; via += 1) closeOver(lags, count, via);
  return hasContradiction(lags, count) ? null : orderConflictingPairs(project, lags);
}

function closeOver(lags: Int32Array, count: number, via: number): void {
  for (let from = 0; from < count; from += 1) {
    const head = lags[from * count + via]!;
    if (head === noPath) continue;
    for (let to = 0; to < count; to += 1) {
      const tail = lags[via * count + to]!;
      if (tail !== noPath && head + tail > lags[from * count + to]!) lags[from * count + to] = head + tail;
    }
  }
}

function hasContradiction(lags: Int32Array, count: number): boolean {
  for (let activity = 0; activity < count; activity += 1) if (lags[activity * count + activity]! > 0) return true;
  return false;
}

/** Pairs that cannot run at the same time because together they ask too much of some resource. */
export function conflictingPairs(project: Project): readonly (readonly [number, number])[] {
  const pairs: (readonly [number, number])[] = [];
  for (let a = 0; a < project.durations.length; a += 1) {
    if (project.durations[a] === 0) continue;
    for (let b = a + 1; b < project.durations.length; b += 1) {
      if (project.durations[b] === 0) continue;
      if (project.capacities.some((capacity, resource) => project.demands[a]![resource]! + project.demands[b]![resource]! > capacity)) pairs.push([a, b]);
    }
  }
  return pairs;
}

/** Where two activities cannot overlap and the lags leave only one order, that order becomes a lag; again until nothing changes. */
function orderConflictingPairs(project: Project, lags: Int32Array): Int32Array | null {
  const count = project.durations.length;
  const pairs = conflictingPairs(project);
  for (let changed = true; changed;) {
    changed = false;
    for (const [a, b] of pairs) {
      const aCannotBeSecond = lags[a * count + b]! > -project.durations[b]!;
      const bCannotBeSecond = lags[b * count + a]! > -project.durations[a]!;
      if (aCannotBeSecond && bCannotBeSecond) return null;
      if (!aCannotBeSecond && !bCannotBeSecond) continue;
      const [first, second] = aCannotBeSecond ? [a, b] : [b, a];
      if (lags[first * count + second]! >= project.durations[first]!) continue;
      tighten(lags, count, first, second, project.durations[first]!);
      if (hasContradiction(lags, count)) return null;
      changed = true;
    }
  }
  return lags;
}

function tighten(lags: Int32Array, count: number, from: number, to: number, lag: number): void {
  for (let before = 0; before < count; before += 1) {
    const head = lags[before * count + from]!;
    if (head === noPath) continue;
    for (let after = 0; after < count; after += 1) {
      const tail = lags[to * count + after]!;
      if (tail !== noPath && head + lag + tail > lags[before * count + after]!) lags[before * count + after] = head + lag + tail;
    }
  }
}
