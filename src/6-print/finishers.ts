// Threads in which prints are finished, so that neither the tabs nor the projects still being computed wait for it.
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { FinishedPrint, RawPrint } from "./finish-print.ts";
import type { Answer, Question } from "./finish-worker.ts";

/** Threads that finish prints. */
export interface Finishers {
  /** Throws, with words for the author, when the print cannot be used, or when the thread broke. */
  finish(print: RawPrint): Promise<FinishedPrint>;
  close(): Promise<void>;
}

interface Finisher extends Finishers {
  /** How many prints it has in hand. */
  waiting(): number;
}

/** Starts at most one thread for each tab, and leaves one core to the browser. */
export function startFinishers(tabs: number): Finishers {
  const count = Math.max(1, Math.min(tabs, availableParallelism() - 1));
  const finishers = Array.from({ length: count }, startFinisher);
  return {
    finish: (print) => finishers.reduce((least, each) => (each.waiting() < least.waiting() ? each : least)).finish(print),
    close: async () => void (await Promise.all(finishers.map((each) => each.close()))),
  };
}

function startFinisher(): Finisher {
  const worker = new Worker(new URL("./finish-thread.mjs", import.meta.url), { execArgv: [] });
  const asked = new Map<number, { resolve(print: FinishedPrint): void; reject(cause: Error): void }>();
  let number = 0;
  let broken: Error | null = null;
  worker.on("message", (answer: Answer) => {
    const waiting = asked.get(answer.number);
    asked.delete(answer.number);
    if ("failure" in answer) waiting?.reject(new Error(answer.failure));
    else waiting?.resolve(answer.print);
  });
  worker.on("error", (cause) => {
    broken = cause instanceof Error ? cause : new Error(String(cause));
    for (const { reject } of asked.values()) reject(broken);
    asked.clear();
  });
  return {
    waiting: () => asked.size,
    finish: (print) => new Promise((resolve, reject) => {
      if (broken !== null) return reject(broken);
      const question: Question = { number: (number += 1), print };
      asked.set(question.number, { resolve, reject });
      worker.postMessage(question);
    }),
    close: async () => void (await worker.terminate()),
  };
}
