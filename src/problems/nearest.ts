// The known word that a mistyped one was probably meant to be.

/**
 * The known word nearest to `written`, or null when none is close enough to be worth suggesting.
 * Capitals, hyphens and underscores are overlooked; otherwise about one letter in three may differ.
 */
export function nearestOf(written: string, known: Iterable<string>): string | null {
  const wanted = plainForm(written);
  if (wanted === "" || wanted.length > 80) return null;
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const word of known) {
    const candidate = plainForm(word);
    // Every letter of difference in length costs at least one change.
    if (Math.abs(candidate.length - wanted.length) >= bestDistance) continue;
    const distance = candidate === wanted ? 0 : editDistance(wanted, candidate);
    // A word of one or two letters has nothing left to recognise it by once a letter is changed.
    if (distance > 0 && Math.max(wanted.length, candidate.length) < 3) continue;
    if (distance < bestDistance) [best, bestDistance] = [word, distance];
  }
  return best;
}

/**
 * How many single letters must be put in, left out, changed or swapped with their neighbour to turn one word into the other
 * (Damerau–Levenshtein distance in its "optimal string alignment" form).
 */
export function editDistance(a: string, b: string): number {
  const width = b.length + 1;
  const row = (i: number, j: number): number => i * width + j;
  const cost = new Array<number>((a.length + 1) * width).fill(0);
  for (let i = 0; i <= a.length; i += 1) cost[row(i, 0)] = i;
  for (let j = 0; j <= b.length; j += 1) cost[row(0, j)] = j;
  for (let i = 1; i <= a.length; i += 1) {
    for (let j = 1; j <= b.length; j += 1) {
      const changed = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(cost[row(i - 1, j)]! + 1, cost[row(i, j - 1)]! + 1, cost[row(i - 1, j - 1)]! + changed);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, cost[row(i - 2, j - 2)]! + 1);
      cost[row(i, j)] = least;
    }
  }
  return cost[row(a.length, b.length)]!;
}

function plainForm(word: string): string {
  return word.trim().toLowerCase().replace(/[\s_-]+/g, " ");
}
