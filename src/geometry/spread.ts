// Spreads crowded labels along a line: as little movement as possible, order kept, gaps kept.

/**
 * Positions nearest to the wished ones (least squares) that stay in order and at least `gap` apart, inside `[low, high]`.
 * `wished` must be in rising order. Null when `(count − 1) × gap` does not fit between the limits.
 * Source: isotonic regression by pooling adjacent violators, after taking the gaps off; limits by clamping, which keeps it optimal.
 */
export function spreadPositions(wished: readonly number[], gap: number, low = -Infinity, high = Infinity): readonly number[] | null {
  const room = (wished.length - 1) * gap;
  if (wished.length === 0) return [];
  if (high - low < room) return null;
  const pools: { sum: number; count: number }[] = [];
  wished.forEach((at, index) => {
    let pool = { sum: at - index * gap, count: 1 };
    for (let before = pools.at(-1); before && before.sum / before.count > pool.sum / pool.count; before = pools.at(-1)) {
      pools.pop();
      pool = { sum: before.sum + pool.sum, count: before.count + pool.count };
    }
    pools.push(pool);
  });
  const levels = pools.flatMap((pool) => Array.from({ length: pool.count }, () => pool.sum / pool.count));
  return levels.map((level, index) => Math.min(Math.max(level, low), high - room) + index * gap);
}
