// The words at the end of a build: problems with their places, what is stale, what was written, how large and how long.
import { stat } from "node:fs/promises";
import path from "node:path";
import { printProblems } from "../problems/print-problem.ts";
import { faultInWords } from "./fault-words.ts";
import type { KeptBooklet } from "./kept.ts";
import type { MadeProjects } from "./make-projects.ts";
import type { ProjectOutcome } from "./outcome.ts";
import type { Printed } from "./press.ts";
import { countOf, sizeInWords, timeInWords } from "./progress.ts";
import type { Progress } from "./progress.ts";
import { relativeTo } from "./records.ts";

/** Every problem of every project asked for, faults of ours, and what stays stale because of them. */
export function reportProblems(wanted: readonly ProjectOutcome[], kept: readonly KeptBooklet[], progress: Progress): void {
  const problems = wanted.flatMap((outcome) => outcome.problems);
  if (problems.length > 0) progress.say(printProblems(problems, new Map(wanted.flatMap((outcome) => outcome.texts))));
  for (const { project, warnings } of wanted.flatMap((outcome) => outcome.books)) {
    if (warnings.length > 0) progress.say(`${project}: ${countOf(warnings.length, "warning")} about the design (${warnings.join(", ")}); the booklet says what to do under "What the sizes tell"`);
  }
  for (const { name, fault, books } of wanted) {
    if (fault) progress.say(`${name}: ${faultInWords(fault)}`);
    if (books.length > 0) continue;
    const stale = kept.filter((booklet) => booklet.folder === name).map((booklet) => `${booklet.project}/`);
    progress.say(`${name}: not built; ${stale.length === 0 ? "there are no pages of an earlier build" : `stale pages of an earlier build are kept: ${stale.join(", ")}`}`);
  }
}

/** What the summary of a build is made from. */
export interface ResultsToReport {
  readonly made: MadeProjects;
  readonly printed: Printed;
  readonly output: string;
  readonly milliseconds: number;
  readonly write: (text: string) => void;
}

/** One line for each page and print-out with its size, print-outs with their pages, and for each project that was left as it was; then the sum. */
export async function reportResults({ made, printed, output, milliseconds, write }: ResultsToReport): Promise<void> {
  const results = new Map(printed.results.map((result) => [relativeTo(output, result.job.pdf), result]));
  const left = new Map(printed.left.map((record) => [record.pdf, record]));
  const files = [...made.files, ...results.keys(), ...left.keys()].sort();
  const widest = Math.max(0, ...files.map((file) => file.length), ...made.unchanged.map(({ outcome }) => outcome.name.length + 1));
  for (const file of files) {
    const result = results.get(file);
    const before = left.get(file);
    if (result && result.failure !== null) {
      write(`${file.padEnd(widest)}  missing: ${result.failure}\n`);
      continue;
    }
    const size = sizeInWords((await stat(path.join(output, file))).size).padStart(7);
    const pages = result ? `  ${countOf(result.pages, "page")}, ${timeInWords(result.milliseconds)}` : before ? `  ${countOf(before.pages, "page")}, as before` : "";
    write(`${file.padEnd(widest)}  ${size}${pages}\n`);
  }
  for (const { outcome, files: before } of made.unchanged) write(`${`${outcome.name}/`.padEnd(widest)}  unchanged, ${countOf(Object.keys(before).length, "file")}\n`);
  const missing = printed.results.filter((result) => result.failure !== null).length;
  const unchanged = made.unchanged.length > 0 ? `; ${countOf(made.unchanged.length, "project")} unchanged` : "";
  write(`${countOf(files.length - missing, "file")} in ${timeInWords(milliseconds)}${unchanged}${missing > 0 ? `; ${countOf(missing, "print-out")} missing` : ""}\n`);
}
