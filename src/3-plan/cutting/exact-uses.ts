// Patterns together often give a few pieces too many; here they are cut down to what is wanted.
import { missingAfter } from "./sheet-problem.ts";
import type { PatternUse } from "./sheet-problem.ts";
import { trimmed } from "./supply-patterns.ts";

/**
 * The uses with just as many pieces as are wanted; the last sheets of a pattern give up what is too much.
 * @throws Error when the uses give too few pieces.
 */
export function exactUses(wanted: readonly number[], uses: readonly PatternUse[]): readonly PatternUse[] {
  const exact: PatternUse[] = [];
  let left: readonly number[] = wanted;
  for (const { pattern, times } of uses) {
    const fits = Math.min(times, ...pattern.counts.flatMap((count, piece) => (count > 0 ? [Math.floor(left[piece]! / count)] : [])));
    if (fits > 0) exact.push({ pattern, times: fits });
    left = missingAfter(left, [{ pattern, times: fits }]);
    for (let more = fits; more < times; more++) {
      const less = trimmed(pattern, left);
      if (less.counts.every((count) => count === 0)) break;
      exact.push({ pattern: less, times: 1 });
      left = missingAfter(left, [{ pattern: less, times: 1 }]);
    }
  }
  if (left.some((count) => count > 0)) throw new Error(`internal error: a plan lacks ${left.filter((count) => count > 0).length} of ${wanted.length} pieces`);
  return exact;
}
