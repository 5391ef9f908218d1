// Phase 6: prints HTML pages to PDF, several at a time, in one browser that reaches nothing but the output folder.
import { mkdir, rename, writeFile } from "node:fs/promises";
import { realpathSync } from "node:fs";
import path from "node:path";
import type { Browser } from "puppeteer";
import { startBrowser } from "./browser.ts";
import type { StartedBrowser } from "./browser.ts";
import { startFinishers } from "./finishers.ts";
import type { Finishers } from "./finishers.ts";
import { firstLine } from "./first-line.ts";
import { openTab } from "./print-tab.ts";
import type { PrintTab } from "./print-tab.ts";
import type { PrintJob, PrintResult } from "./types.ts";

/** How jobs are printed. */
export interface PrintOptions {
  /** How many pages are printed at the same time. */
  readonly tabs: number;
  /** Called after each job, printed or not. */
  onProgress(done: number, job: PrintJob): void;
  /** The output folder, the only place that pages may load from. When left out: the folder above each page's own. */
  readonly folder?: string;
  /** Starts the browser; tests put in their own. */
  start?(): Promise<StartedBrowser>;
}

/**
 * Prints every job, also of those that are still being made; results come in the order of the jobs. Never throws for a job: a page that cannot be printed has its `failure` in words, leaves
 * what an earlier build printed untouched, and does not stop the others. Without a browser every job fails with the same words.
 */
export async function printPages(jobs: Iterable<PrintJob> | AsyncIterable<PrintJob>, options: PrintOptions): Promise<readonly PrintResult[]> {
  const started = await (options.start ?? startBrowser)();
  const machines = "missing" in started ? started : { browser: started.browser, finishers: startFinishers(options.tabs) };
  const results: PrintResult[] = [];
  // One iterator for all tabs: each takes the next job when it is free.
  const waiting = Symbol.asyncIterator in jobs ? jobs[Symbol.asyncIterator]() : jobs[Symbol.iterator]();
  let taken = 0;
  let done = 0;
  const work = async (): Promise<void> => {
    const tab: TabInUse = { tab: null, folder: "" };
    for (let next = await waiting.next(); !next.done; next = await waiting.next()) {
      const job = next.value;
      const index = taken++;
      results[index] = "missing" in machines ? { job, pages: 0, loaded: [], milliseconds: 0, failure: machines.missing } : await printJob(machines, tab, job, options.folder);
      done += 1;
      options.onProgress(done, job);
    }
  };
  try {
    await Promise.all(Array.from({ length: Math.max(1, options.tabs) }, work));
  } finally {
    if (!("missing" in machines)) await Promise.all([machines.finishers.close(), machines.browser.close().catch(() => undefined)]);
  }
  return results;
}

/** The tab that one after the other of the jobs is printed in; null before the first and after a failure. */
interface TabInUse {
  tab: PrintTab | null;
  folder: string;
}

interface Machines {
  readonly browser: Browser;
  readonly finishers: Finishers;
}

async function printJob({ browser, finishers }: Machines, inUse: TabInUse, job: PrintJob, givenFolder: string | undefined): Promise<PrintResult> {
  const begin = performance.now();
  const result = (pages: number, failure: string | null, loaded: readonly string[] = []): PrintResult => ({ job, pages, loaded, milliseconds: performance.now() - begin, failure });
  try {
    const folder = realpathSync(givenFolder ?? folderOf(job.html));
    const { pdf: raw, words, loaded } = await (await tabFor(browser, inUse, folder)).print(job.html);
    const { pdf, pages } = await finishers.finish({ job, folder, pdf: raw, words });
    await writeWhole(job.pdf, pdf);
    return result(pages, null, loaded);
  } catch (cause) {
    await inUse.tab?.close();
    inUse.tab = null;
    return result(0, firstLine(cause));
  }
}

async function tabFor(browser: Browser, inUse: TabInUse, folder: string): Promise<PrintTab> {
  if (inUse.tab !== null && inUse.folder === folder) return inUse.tab;
  await inUse.tab?.close();
  inUse.tab = null;
  inUse.folder = folder;
  return (inUse.tab = await openTab(browser, folder));
}

/** A page lies in its project's folder, that in the output folder. The whole disk is never taken for one. */
function folderOf(html: string): string {
  const above = path.resolve(html, "../..");
  return path.dirname(above) === above ? path.dirname(path.resolve(html)) : above;
}

/** A reader never finds half a file under the PDF's name. */
async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  await mkdir(path.dirname(file), { recursive: true });
  const unfinished = `${file}.unfinished`;
  await writeFile(unfinished, bytes);
  await rename(unfinished, file);
}
