// Runs in a thread of its own: finishes one print after the other as they are sent.
import { parentPort } from "node:worker_threads";
import { finishPrint } from "./finish-print.ts";
import type { FinishedPrint, RawPrint } from "./finish-print.ts";
import { firstLine } from "./first-line.ts";

/** What the thread is asked; answers carry the same number. */
export interface Question {
  readonly number: number;
  readonly print: RawPrint;
}

/** What the thread answers: the print, or why there is none. */
export type Answer = { readonly number: number } & ({ readonly print: FinishedPrint } | { readonly failure: string });

parentPort?.on("message", async ({ number, print }: Question) => {
  const answer = await finishPrint(print).then(
    (finished): Answer => ({ number, print: finished }),
    (cause: unknown): Answer => ({ number, failure: firstLine(cause) }),
  );
  parentPort?.postMessage(answer);
});
