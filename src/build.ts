// The whole story: content in, phases in order, pages and print-outs out. Reads and writes files; computes nothing itself.
import { renderPages } from "./5-pages/index.ts";
import { printPages } from "./6-print/index.ts";
import { chooseProjects, findClashes } from "./build/choose.ts";
import { computeProject } from "./build/compute.ts";
import type { ComputedProject } from "./build/compute.ts";
import { readContent } from "./build/content.ts";
import { listBooklets, readKept, removeOrphans } from "./build/kept.ts";
import { loadLinearSolver } from "./build/linear-solver.ts";
import { countOf } from "./build/progress.ts";
import type { Progress } from "./build/progress.ts";
import { reportProblems, reportResults } from "./build/report.ts";

/** What to build, from where and into which folder. */
export interface BuildOptions {
  /** Folders under `content`; all of them when empty. */
  readonly projects: readonly string[];
  readonly content: string;
  readonly output: string;
  /** Whether to print PDFs too. */
  readonly print: boolean;
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
export async function build({ projects, content, output, print, tabs, progress, write }: BuildOptions): Promise<ExitStatus> {
  const started = performance.now();
  const folders = await readContent(content);
  const asked = chooseProjects(projects, folders);
  const each: ComputedProject[] = [];
  for (const folder of folders) {
    if (asked.has(folder.name)) progress.step(`${folder.name}: computing`);
    // The others are computed for the list of books only.
    each.push(await computeProject(folder, asked.has(folder.name) ? loadLinearSolver : null));
  }
  const computed = separate(each);
  const wanted = computed.filter((result) => asked.has(result.project.name));
  const kept = await readKept(output);
  progress.step("rendering pages");
  const rendered = await renderPages({
    booklets: wanted.flatMap((result) => result.booklets),
    listed: listBooklets(computed, asked, kept),
    output,
    withPrints: print,
  });
  await removeOrphans(projects.length === 0 ? computed : wanted, projects.length === 0 ? kept : kept.filter((one) => asked.has(one.folder)), output);
  const printed = rendered.jobs.length === 0 ? [] : await printPages(rendered.jobs, {
    tabs,
    folder: output,
    onProgress: (finished, all) => progress.step(`printing: ${finished} of ${countOf(all, "document")}`),
  });
  progress.done();
  reportProblems(wanted, kept, progress);
  await reportResults({ rendered, printed, output, milliseconds: performance.now() - started, write });
  return exitStatus(wanted, printed.some((result) => result.failure !== null));
}

/** A project that would write into the folder of another is not built. */
function separate(computed: readonly ComputedProject[]): readonly ComputedProject[] {
  const clashes = findClashes(computed);
  return computed.map((result) => {
    const own = clashes.filter((problem) => problem.place.file === result.project.source?.file);
    return own.length === 0 ? result : { ...result, booklets: [], problems: [...result.problems, ...own] };
  });
}

function exitStatus(wanted: readonly ComputedProject[], printFailed: boolean): ExitStatus {
  if (printFailed || wanted.some((result) => result.fault !== null)) return 3;
  return wanted.some((result) => result.booklets.length === 0) ? 1 : 0;
}

