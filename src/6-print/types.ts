// What phase 6 is asked for and what it gives back.
import type { PrintJob } from "../5-pages/types.ts";

export type { PrintJob } from "../5-pages/types.ts";

/** What became of one job. */
export interface PrintResult {
  readonly job: PrintJob;
  readonly pages: number;
  /** The files that the page loaded, below the output folder, with forward slashes; empty when it could not be printed. */
  readonly loaded: readonly string[];
  readonly milliseconds: number;
  /** Null when printed; else what went wrong in words. */
  readonly failure: string | null;
}
