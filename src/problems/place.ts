// From a character offset to the line and column an editor shows, and to the text of that line.

/** Line and column, both counted from 1; a column is one UTF-16 unit wide, as editors count them. */
export interface LinePosition {
  readonly line: number;
  readonly column: number;
}

/** Where each line of a text starts and ends, line breaks left out. Both `\n` and `\r\n` end a line. */
export interface LineTable {
  readonly text: string;
  readonly starts: readonly number[];
}

/** Finds the start of every line once, so that many offsets of one text can be placed quickly. */
export function readLines(text: string): LineTable {
  const starts = [0];
  for (let at = text.indexOf("\n"); at !== -1; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return { text, starts };
}

/** Places an offset; one outside the text is taken to its nearer end. */
export function locate(lines: LineTable, offset: number): LinePosition {
  const at = Math.min(Math.max(Math.trunc(offset), 0), lines.text.length);
  let low = 0;
  let high = lines.starts.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (lines.starts[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: at - lines.starts[low]! + 1 };
}

/** The text of a line (counted from 1) without its line break; empty for a line that does not exist. */
export function lineText(lines: LineTable, line: number): string {
  const start = lines.starts[line - 1];
  if (start === undefined) return "";
  const next = lines.starts[line];
  const end = next === undefined ? lines.text.length : next - 1;
  return lines.text.slice(start, end).replace(/\r$/, "");
}
