// The press of one build: started at once, fed while projects are still being computed; print-outs of an earlier build that would come out the same are left.
import { rm } from "node:fs/promises";
import type { PrintJob, PrintResult } from "../6-print/types.ts";
import { digestOfFile } from "./digest.ts";
import { openQueue } from "./job-queue.ts";
import type { ProgramDigests } from "./program-digest.ts";
import { countOf } from "./progress.ts";
import type { Progress } from "./progress.ts";
import { printKey, recordPrint, relativeTo } from "./records.ts";
import type { PrintRecord } from "./records.ts";

/** What a press is started with. */
export interface PressOptions {
  /** Documents printed at the same time. */
  readonly tabs: number;
  readonly output: string;
  readonly program: ProgramDigests;
  readonly progress: Progress;
}

/** A press with its browser running. */
export interface Press {
  /** Origin and version of the browser; says so when there is none. */
  readonly browser: string;
  /** Takes jobs; what `earlier` holds and would come out the same is not printed again. */
  print(jobs: readonly PrintJob[], earlier: readonly PrintRecord[]): Promise<void>;
  /** Waits for the last job and stops the browser. */
  finish(): Promise<Printed>;
}

/** All that came off the press, and what did not have to. */
export interface Printed {
  readonly results: readonly PrintResult[];
  /** What was printed, and what was left from an earlier build. */
  readonly records: readonly PrintRecord[];
  readonly left: readonly PrintRecord[];
}

/** Starts a browser. Never throws for want of one: then every job fails with the reason. */
export async function startPress({ tabs, output, program, progress }: PressOptions): Promise<Press> {
  const [{ printPages }, { startBrowser }] = await Promise.all([import("../6-print/index.ts"), import("../6-print/browser.ts")]);
  const started = await startBrowser();
  const browser = "missing" in started ? "no browser" : `${started.origin} ${started.version}`;
  const printing = { output, browser, program };
  const queue = openQueue<PrintJob>();
  const left: PrintRecord[] = [];
  const work = printPages(queue, {
    tabs,
    folder: output,
    start: () => Promise.resolve(started),
    onProgress: (done) => progress.step(`printing: ${done} of ${countOf(queue.count, "document")}`),
  });
  return {
    browser,
    print: async (jobs, earlier) => {
      for (const job of jobs) {
        const record = earlier.find(({ pdf }) => pdf === relativeTo(output, job.pdf));
        if (record && record.key === await printKey(job, record.loaded, printing) && record.digest === await digestOfFile(job.pdf)) left.push(record);
        else {
          // A print-out with other sizes than its page is worse than a missing one.
          await rm(job.pdf, { force: true });
          queue.push(job);
        }
      }
    },
    finish: async () => {
      queue.close();
      const results = await work;
      const fresh = await Promise.all(results.filter(({ failure }) => failure === null).map((result) => recordPrint(result, printing)));
      return { results, records: [...left, ...fresh], left };
    },
  };
}
