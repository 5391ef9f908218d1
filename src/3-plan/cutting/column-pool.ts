// Patterns that are known, and the linear program that chooses among them.
import type { Pattern } from "./cut-tree.ts";
import type { LinearProgram, LinearSolver, ProgramColumn, ProgramRow, WholeLimits } from "./linear-solver.ts";
import type { PatternUse, SheetProblem } from "./sheet-problem.ts";

/** Patterns and the linear program over them; the program's rows are the pieces, then the sheets. */
export interface ColumnPool {
  readonly problem: SheetProblem;
  readonly patterns: Pattern[];
  readonly program: LinearProgram;
  readonly known: Set<string>;
}

/** The rows of the program: each piece as often as it is wanted, each sheet as often as it is there. */
export function rowsOf(problem: SheetProblem, wanted: readonly number[]): readonly ProgramRow[] {
  return [...wanted.map((count) => ({ lower: count, upper: Infinity })), ...problem.sheets.map((sheet) => ({ lower: -Infinity, upper: sheet.available }))];
}

/** A pattern as a column of the program. */
export function columnOf(problem: SheetProblem, pattern: Pattern): ProgramColumn {
  const rows = pattern.counts.flatMap((count, piece) => (count > 0 ? [piece] : []));
  return { cost: problem.sheets[pattern.sheet]!.cost, lower: 0, upper: Infinity, rows: [...rows, problem.pieces.length + pattern.sheet], entries: [...rows.map((piece) => pattern.counts[piece]!), 1] };
}

/** A pool without patterns. */
export function openPool(problem: SheetProblem, solver: LinearSolver): ColumnPool {
  return { problem, patterns: [], program: solver.openProgram(rowsOf(problem, problem.pieces.map((piece) => piece.count))), known: new Set() };
}

/** Adds a pattern unless one with the same counts is there. */
export function addPattern(pool: ColumnPool, pattern: Pattern): boolean {
  const key = `${pattern.sheet}:${pattern.counts.join(",")}`;
  if (pool.known.has(key) || pattern.counts.every((count) => count === 0)) return false;
  pool.known.add(key);
  pool.patterns.push(pattern);
  pool.program.addColumns([columnOf(pool.problem, pattern)]);
  return true;
}

/** How much more a pattern is worth than it costs, by the duals of the program. */
export function gainOf({ problem }: ColumnPool, pattern: Pattern, duals: Float64Array): number {
  const worth = pattern.counts.reduce((sum, count, piece) => sum + count * duals[piece]!, duals[problem.pieces.length + pattern.sheet]!);
  return worth - problem.sheets[pattern.sheet]!.cost;
}

/**
 * The choice in whole numbers among some patterns that costs least, or of those that cost at most `most` the one that is second to none in `second`.
 * Its cost is at least `bound` and at most `most`; `null` when none was found.
 */
export function chooseWhole(problem: SheetProblem, patterns: readonly Pattern[], wanted: readonly number[], cost: { readonly bound: number; readonly most: number; readonly least: "cost" | "second" }, solver: LinearSolver, limits: Pick<WholeLimits, "nodes" | "iterations">): readonly PatternUse[] | null {
  const totalRow = problem.pieces.length + problem.sheets.length;
  const rows = [...rowsOf(problem, wanted), { lower: cost.bound, upper: cost.most }];
  const columns = patterns.map((pattern) => {
    const column = columnOf(problem, pattern);
    return { ...column, cost: problem.sheets[pattern.sheet]![cost.least], rows: [...column.rows, totalRow], entries: [...column.entries, column.cost] };
  });
  const answer = solver.solveWhole(rows, columns, cost.least === "cost" ? { ...limits, target: cost.bound } : limits);
  if (!answer) return null;
  return patterns.flatMap((pattern, index) => (answer.columns[index]! > 0 ? [{ pattern, times: answer.columns[index]! }] : []));
}
