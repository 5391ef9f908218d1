// The few positions at which a cut can make sense: sums of piece sizes, thinned out without losing any best layout.

/** More positions than this along one edge are not worth a table. */
export const mostPoints = 4000;

/**
 * All sums of piece sizes, each used as often as one likes, up to a limit; from 0, ascending.
 * `null` when there are more than `most`.
 */
export function sumsOf(sizes: readonly number[], limit: number, most = mostPoints): readonly number[] | null {
  const found = new Set([0]);
  for (const size of [...new Set(sizes)].sort((a, b) => b - a)) {
    for (const start of [...found]) {
      for (let next = start + size; next <= limit && !found.has(next); next += size) found.add(next);
      if (found.size > most) return null;
    }
  }
  return [...found].sort((a, b) => a - b);
}

/** Index of the last point that is not above a value; the points ascend and start at 0. */
export function lastUpTo(points: ArrayLike<number>, value: number): number {
  let low = 0;
  let high = points.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (points[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/**
 * Reduced raster points of a length: sums rounded so that both sides of each cut grow as far as they can.
 * If p and q are sums with p + q within the length, the raster has points r ≥ p and s ≥ q with r + s within it, at every depth of cuts,
 * so that a table over these points alone finds a best layout. Source: Scheithauer and Terno, Operations Research Letters 19 (1996) 87–93.
 */
export function rasterPoints(sizes: readonly number[], length: number, most = mostPoints): readonly number[] | null {
  const sums = sumsOf(sizes, length, most);
  if (!sums) return null;
  const points = new Set(sums.map((sum) => sums[lastUpTo(sums, length - sum)]!));
  return [...points].sort((a, b) => a - b);
}
