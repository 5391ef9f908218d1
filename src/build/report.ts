// The words at the end of a build: problems with their places, what is stale, what was written, how large and how long.
import { stat } from "node:fs/promises";
import path from "node:path";
import type { RenderedPages } from "../5-pages/types.ts";
import type { PrintResult } from "../6-print/types.ts";
import { printProblems } from "../problems/print-problem.ts";
import type { ComputedProject } from "./compute.ts";
import { faultInWords } from "./fault-words.ts";
import type { KeptBooklet } from "./kept.ts";
import { countOf, sizeInWords, timeInWords } from "./progress.ts";
import type { Progress } from "./progress.ts";

/** Every problem of every project asked for, faults of ours, and what stays stale because of them. */
export function reportProblems(wanted: readonly ComputedProject[], kept: readonly KeptBooklet[], progress: Progress): void {
  const problems = wanted.flatMap((result) => result.problems);
  const texts = new Map(wanted.flatMap((result) => [...result.texts]));
  if (problems.length > 0) progress.say(printProblems(problems, texts));
  for (const { plan, definition } of wanted.flatMap((result) => result.booklets)) {
    const warnings = plan.findings.filter((finding) => finding.severity === "warn");
    if (warnings.length > 0) progress.say(`${definition.project}: ${countOf(warnings.length, "warning")} about the design (${warnings.map((finding) => finding.code).join(", ")}); the booklet says what to do under "What the sizes tell"`);
  }
  for (const result of wanted) {
    if (result.fault) progress.say(`${result.project.name}: ${faultInWords(result.fault)}`);
    if (result.booklets.length > 0) continue;
    const stale = kept.filter((booklet) => booklet.folder === result.project.name).map((booklet) => `${booklet.project}/`);
    progress.say(`${result.project.name}: not built; ${stale.length === 0 ? "there are no pages of an earlier build" : `stale pages of an earlier build are kept: ${stale.join(", ")}`}`);
  }
}

/** What the summary of a build is made from. */
export interface ResultsToReport {
  readonly rendered: RenderedPages;
  readonly printed: readonly PrintResult[];
  readonly output: string;
  readonly milliseconds: number;
  readonly write: (text: string) => void;
}

/** One line for each page and print-out with its size, print-outs with their pages, then the sum. */
export async function reportResults({ rendered, printed, output, milliseconds, write }: ResultsToReport): Promise<void> {
  const results = new Map(printed.map((result) => [path.relative(output, result.job.pdf).split(path.sep).join("/"), result]));
  const files = [...rendered.files, ...results.keys()].sort();
  const widest = Math.max(0, ...files.map((file) => file.length));
  for (const file of files) {
    const result = results.get(file);
    if (result && result.failure !== null) {
      write(`${file.padEnd(widest)}  missing: ${result.failure}\n`);
      continue;
    }
    const size = sizeInWords((await stat(path.join(output, file))).size).padStart(7);
    write(`${file.padEnd(widest)}  ${size}${result ? `  ${countOf(result.pages, "page")}, ${timeInWords(result.milliseconds)}` : ""}\n`);
  }
  const missing = printed.filter((result) => result.failure !== null).length;
  write(`${countOf(files.length - missing, "file")} in ${timeInWords(milliseconds)}${missing > 0 ? `; ${countOf(missing, "print-out")} missing` : ""}\n`);
}
