// The source line of a problem with a row of carets under the exact characters.
import type { Span } from "./problem.ts";
import { lineText, locate } from "./place.ts";
import type { LineTable } from "./place.ts";
import { cellsOf } from "./text-columns.ts";
import type { Cell } from "./text-columns.ts";

/** Columns of the source line that are shown; what lies outside is cut off and marked with an ellipsis. */
const windowColumns = 100;
/** Columns kept before the first caret when a long line is cut. */
const leadColumns = 30;

/**
 * Draws two lines: the numbered source line, and carets under the span.
 * A span over several lines is marked to the end of its first line; an empty one gets a single caret.
 */
export function drawCodeFrame(lines: LineTable, span: Span): string {
  const { line, column } = locate(lines, span.start);
  const text = lineText(lines, line);
  // Only the neighbourhood of the span can be seen; a line may be as long as its file.
  const cut = Math.max(0, column - 1 - windowColumns * 4);
  const cells = cellsOf(text.slice(cut, column - 1 + windowColumns * 4));
  const from = column - 1 - cut;
  const to = Math.max(from + (span.end - span.start), from + 1);
  const shown = cutToWindow(cells, from, to);
  const gutter = String(line).padStart(5);
  return `${gutter} | ${shown.source}\n${" ".repeat(gutter.length)} | ${shown.carets}`.split("\n").map((row) => row.trimEnd()).join("\n");
}

function cutToWindow(cells: readonly Cell[], from: number, to: number): { source: string; carets: string } {
  let first = 0;
  const total = columnsOf(cells);
  if (total > windowColumns) {
    const before = cells.filter((cell) => cell.end <= from);
    // Drop from the left as long as more than the lead stays before the caret and the rest still fills the window.
    let lead = columnsOf(before);
    let rest = total;
    while (lead > leadColumns && rest > windowColumns) {
      lead -= cells[first]!.columns;
      rest -= cells[first]!.columns;
      first += 1;
    }
  }
  let source = first > 0 ? "…" : "";
  let carets = first > 0 ? " " : "";
  let used = 0;
  let index = first;
  for (; index < cells.length && used + cells[index]!.columns <= windowColumns; index += 1) {
    const cell = cells[index]!;
    source += cell.shown;
    carets += (cell.end > from && cell.start < to ? "^" : " ").repeat(cell.columns);
    used += cell.columns;
  }
  if (index < cells.length) source += "…";
  // A span that starts behind the last character points just after it.
  if (!carets.includes("^")) carets += "^";
  return { source, carets };
}

function columnsOf(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.columns, 0);
}
