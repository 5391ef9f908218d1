// How many columns of a terminal each character takes, and what is shown for characters that must not reach it.

/** One shown character of a source line: the text printed for it, its width in columns, and where it stood (UTF-16 units). */
export interface Cell {
  readonly shown: string;
  readonly columns: number;
  readonly start: number;
  readonly end: number;
}

const tabStop = 4;

/** Splits a line into cells: tabs become blanks up to the next stop, control characters a visible stand-in. */
export function cellsOf(line: string): readonly Cell[] {
  const cells: Cell[] = [];
  let column = 0;
  let at = 0;
  for (const character of line) {
    const columns = character === "\t" ? tabStop - (column % tabStop) : columnsOf(character.codePointAt(0)!);
    cells.push({ shown: character === "\t" ? " ".repeat(columns) : visible(character), columns, start: at, end: at + character.length });
    column += columns;
    at += character.length;
  }
  return cells;
}

/** Control characters would move the cursor or change its colour; direction marks would turn the line round. */
function visible(character: string): string {
  const code = character.codePointAt(0)!;
  if (code < 0x20) return String.fromCodePoint(0x2400 + code);
  if (code === 0x7f) return "\u2421";
  const isHidden = (code >= 0x80 && code < 0xa0) || (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)
    || (code >= 0xd800 && code <= 0xdfff) || code === 0x2028 || code === 0x2029 || code === 0xfeff;
  return isHidden ? "\ufffd" : character;
}

// Ranges taken together from Unicode's EastAsianWidth.txt (W and F) and from the combining blocks; from memory, coarse on purpose:
// a wrong width only shifts a caret by a column.
const wide: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f], [0x2e80, 0x303e], [0x3041, 0xa4cf], [0xac00, 0xd7a3], [0xf900, 0xfaff], [0xfe30, 0xfe6f], [0xff00, 0xff60],
  [0xffe0, 0xffe6], [0x1f300, 0x1f64f], [0x1f680, 0x1f6ff], [0x1f900, 0x1f9ff], [0x1fa70, 0x1faff], [0x20000, 0x3fffd],
];
const widthless: readonly (readonly [number, number])[] = [
  [0x300, 0x36f], [0x483, 0x489], [0x591, 0x5bd], [0x1ab0, 0x1aff], [0x200b, 0x200f], [0x20d0, 0x20ff], [0xfe00, 0xfe0f], [0xfe20, 0xfe2f],
];

function columnsOf(code: number): number {
  const within = ([first, last]: readonly [number, number]): boolean => first <= code && code <= last;
  if (widthless.some(within)) return 0;
  return wide.some(within) ? 2 : 1;
}
