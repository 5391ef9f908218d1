// Sizes from which rows of marks are counted off: put on a mark of the ruler before anything is computed from them.
import type { Definition } from "../1-definition/types.ts";
import { isLess, isOnMark } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { printThickness } from "../units/print-length.ts";
import type { Ledger } from "./ledger.ts";
import type { Finding, ValueOrigin } from "./types.ts";

/** A size of the author's that repeats along an edge. */
export interface GoverningSize {
  /** Its name in the ledger: "stub depth". */
  readonly name: string;
  readonly written: Length;
  readonly origin: ValueOrigin;
  readonly meaning: string;
  readonly path: string;
}

/**
 * Enters a governing size. Off the ruler's marks it is used at the nearest one, so that marks counted off by it are exact and equal spaces
 * come out equal; what was written stays beside it. A size below one mark is left alone: it cannot be marked at all, which is a fault of its own.
 */
export function enterOnMark(ledger: Ledger, size: GoverningSize, step: Length): void {
  const note = { meaning: size.meaning, source: "" };
  if (isOnMark(size.written, step) || isLess(size.written, step)) {
    ledger.give(size.name, size.written, size.origin, note);
    return;
  }
  ledger.give(asWritten(size.name), size.written, size.origin, { ...note, meaning: `${size.meaning}, before it is put on a mark of the ruler`, shownAs: "thickness" });
  ledger.compute(size.name, `nearest(${asWritten(size.name)})`, { ...note, source: "common practice, no source: governing sizes are fixed on the ruler first" });
}

/** A note for every governing size that was moved to a mark, with both numbers. */
export function findMovedSizes(sizes: readonly GoverningSize[], ledger: Ledger, { units }: Definition): readonly Finding[] {
  return sizes.filter((size) => ledger.values.has(asWritten(size.name))).map(({ name, written, path }) => ({
    code: "put-on-mark", severity: "note", where: name, path,
    message: `the ${name} is written as ${printThickness(written, units)}, which lies between two marks of the ruler; ${printThickness(ledger.length(name), units)} is used`,
    consequence: "marks fall on the ruler, equal spaces are equal, and all sizes follow from the one used",
    remedy: "nothing, where this size will do; for another one write it on a mark, or choose a finer step under \"units\"",
  }));
}

function asWritten(name: string): string {
  return `${name} as written`;
}
