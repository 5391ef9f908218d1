// Problems as an author reads them: place, what is wrong, the line with carets, what would do, and a count at the end.
import { drawCodeFrame } from "./code-frame.ts";
import { locate, readLines } from "./place.ts";
import type { LineTable } from "./place.ts";
import type { Problem } from "./problem.ts";

/**
 * Prints problems sorted by file and position, with a count line at the end; an empty list prints nothing.
 * `texts` holds the text of each file by the path that the places name; without it a problem is printed without its line.
 */
export function printProblems(problems: readonly Problem[], texts: ReadonlyMap<string, string>): string {
  if (problems.length === 0) return "";
  const lineTables = new Map<string, LineTable>();
  const linesOf = (file: string): LineTable | null => {
    const text = texts.get(file);
    if (text === undefined) return null;
    const known = lineTables.get(file) ?? readLines(text);
    lineTables.set(file, known);
    return known;
  };
  const printed = sortProblems(problems).map((problem) => printProblem(problem, linesOf(problem.place.file)));
  return `${printed.join("\n\n")}\n\n${countProblems(problems)}\n`;
}

/** Problems in the order in which they are printed: by file, then by position, whole-file problems first. */
export function sortProblems(problems: readonly Problem[]): readonly Problem[] {
  const startOf = (problem: Problem): number => problem.place.span?.start ?? -1;
  return [...problems].sort((a, b) => compareText(a.place.file, b.place.file) || startOf(a) - startOf(b)
    || compareText(a.code, b.code) || compareText(a.message, b.message));
}

function printProblem(problem: Problem, lines: LineTable | null): string {
  const { file, span } = problem.place;
  const rows = [`${problem.severity}: ${problem.message} [${problem.code}]`];
  if (span && lines) {
    const { line, column } = locate(lines, span.start);
    rows[0] = `${file}:${line}:${column}: ${rows[0]}`;
    rows.push(drawCodeFrame(lines, span));
  } else {
    rows[0] = `${file}: ${rows[0]}`;
  }
  if (problem.hint !== "") rows.push(`  hint: ${problem.hint}`);
  return rows.join("\n");
}

function countProblems(problems: readonly Problem[]): string {
  const errors = problems.filter((problem) => problem.severity === "error").length;
  const warnings = problems.length - errors;
  const files = new Set(problems.map((problem) => problem.place.file)).size;
  const counts = [errors > 0 ? countOf(errors, "error") : "", warnings > 0 ? countOf(warnings, "warning") : ""];
  return `${counts.filter((count) => count !== "").join(" and ")} in ${countOf(files, "file")}`;
}

function countOf(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** By code unit: the same order on every machine, whatever its language. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
