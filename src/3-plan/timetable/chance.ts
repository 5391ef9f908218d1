// Numbers by chance that are the same in every run: each search begins from its own seed.

/** Draws whole numbers from 0 up to, and without, a given one. */
export type Chance = (below: number) => number;

/** A generator of 32 bits by Marsaglia's xorshift (2003), started from a seed. */
export function chanceFrom(seed: number): Chance {
  let state = (seed ^ 0x9e3779b9) | 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return Math.floor(((state >>> 0) / 4_294_967_296) * below);
  };
}
