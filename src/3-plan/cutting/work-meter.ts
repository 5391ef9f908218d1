// Counts the work of a search, so that it ends after the same work on every computer, however fast.

/** A count of work; one unit is one look at a place for a piece. */
export interface WorkMeter {
  spent: number;
  readonly most: number;
}

/** A meter that has not run yet. */
export function meterFor(most: number): WorkMeter {
  return { spent: 0, most };
}

/** Whether a share of the whole work has been spent. */
export function isSpent(meter: WorkMeter, share = 1): boolean {
  return meter.spent >= meter.most * share;
}
