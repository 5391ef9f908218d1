// Numbers that look drawn by lot but follow from a seed, so that every run gives the same plan.

/** Gives whole numbers from 0 up to a limit, the limit left out. */
export type Draw = (below: number) => number;

/** A generator that starts from a seed: Marsaglia's xorshift with 32 bits (Journal of Statistical Software 8(14), 2003). */
export function drawFrom(seed: number): Draw {
  let state = (seed ^ 0x9e3779b9) >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
}
