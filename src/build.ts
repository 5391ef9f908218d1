// The whole story: content in, phases in order, pages and print-outs out; what has not changed since the last build is left as it is. Computes nothing itself.
import { chooseProjects } from "./build/choose.ts";
import { readContent } from "./build/content.ts";
import { readKept } from "./build/kept.ts";
import { makeProjects } from "./build/make-projects.ts";
import type { MadeProjects } from "./build/make-projects.ts";
import type { ProjectOutcome } from "./build/outcome.ts";
import { startPress } from "./build/press.ts";
import type { Press, Printed } from "./build/press.ts";
import { readProgramDigests } from "./build/program-digest.ts";
import type { Progress } from "./build/progress.ts";
import { digestsOf, relativeTo, removeOldRecords, writeProjectRecord } from "./build/records.ts";
import { reportProblems, reportResults } from "./build/report.ts";

/** What to build, from where and into which folder. */
export interface BuildOptions {
  /** Folders under `content`; all of them when empty. */
  readonly projects: readonly string[];
  readonly content: string;
  readonly output: string;
  /** Whether to print PDFs too. */
  readonly print: boolean;
  /** Whether to make anew what has not changed. */
  readonly afresh: boolean;
  /** Pages printed at the same time. */
  readonly tabs: number;
  readonly progress: Progress;
  /** Takes the summary at the end. */
  readonly write: (text: string) => void;
}

/** 0: all built. 1: problems in definitions. 2: usage. 3: fault of ours, or no browser to print with. */
export type ExitStatus = 0 | 1 | 2 | 3;

/**
 * Builds what is asked for; a project with problems does not stop the others and keeps what an earlier build left.
 * @throws UsageFault for a project that does not exist.
 */
export async function build(options: BuildOptions): Promise<ExitStatus> {
  const { projects, content, output, print, tabs, progress, write } = options;
  const started = performance.now();
  const folders = await readContent(content);
  const asked = chooseProjects(projects, folders);
  const [program, kept] = await Promise.all([readProgramDigests(), readKept(output)]);
  const press = print ? startPress({ tabs, output, program, progress }) : null;
  const made = await makeProjects(options, { folders, asked, program, kept, press }).catch(async (cause: unknown) => {
    await (await press)?.finish();
    throw cause;
  });
  const printed = (await (await press)?.finish()) ?? nothing;
  progress.done();
  await keepRecords(output, made, printed, await press);
  await removeOldRecords(output, new Set(folders.map(({ name }) => name)));
  const wanted = made.outcomes.filter(({ name }) => asked.has(name));
  reportProblems(wanted, kept, progress);
  await reportResults({ made, printed, output, milliseconds: performance.now() - started, write });
  return exitStatus(wanted, printed.results.some(({ failure }) => failure !== null));
}

const nothing: Printed = { results: [], records: [], left: [] };

/** What the next build may leave as it is. */
async function keepRecords(output: string, { fresh, files }: MadeProjects, printed: Printed, press: Press | null): Promise<void> {
  const failed = printed.results.filter(({ failure }) => failure !== null).map(({ job }) => relativeTo(output, job.pdf));
  for (const { key, outcome } of fresh) {
    const isOwn = (file: string): boolean => outcome.books.some((book) => file.startsWith(`${book.project}/`));
    const prints = printed.records.filter(({ pdf }) => isOwn(pdf));
    const digests = { ...(await digestsOf(output, files.filter(isOwn))), ...Object.fromEntries(prints.map(({ pdf, digest }) => [pdf, digest])) };
    await writeProjectRecord(output, { key: failed.some(isOwn) ? "" : key, browser: press?.browser ?? null, outcome, files: digests, prints });
  }
}

function exitStatus(wanted: readonly ProjectOutcome[], printFailed: boolean): ExitStatus {
  if (printFailed || wanted.some(({ fault }) => fault !== null)) return 3;
  return wanted.some(({ books }) => books.length === 0) ? 1 : 0;
}
