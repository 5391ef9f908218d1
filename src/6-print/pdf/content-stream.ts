// Cuts the content stream of a PDF page into its operators and keeps the bytes of each (ISO 32000-1, 7.8.2 and Annex A).

/** One operator with its operands. Text holds bytes: one character of code 0-255 for each. */
export interface Operation {
  readonly operator: string;
  readonly operands: readonly string[];
}

/** Order matters: strings in brackets are cut by hand before this is used. */
const token = /<<|>>|<[0-9A-Fa-f\s]*>|\[|\]|\/[^\s()<>[\]{}/%]*|[^\s()<>[\]{}/%]+/y;
const blank = /(?:[\0\t\n\f\r ]|%[^\r\n]*)+/y;
const operand = /^[-+.\d/(<>[]|^\]$|^(?:true|false|null)$/;

/** Reads a decoded content stream. Throws at anything that is not PDF, and at inline images, which our browsers do not write. */
export function readOperations(bytes: string): readonly Operation[] {
  const operations: Operation[] = [];
  let operands: string[] = [];
  let at = skipBlank(bytes, 0);
  while (at < bytes.length) {
    const text = tokenAt(bytes, at);
    if (operand.test(text)) operands.push(text);
    else {
      if (text === "BI") throw new Error("inline image in a content stream");
      operations.push({ operator: text, operands });
      operands = [];
    }
    at = skipBlank(bytes, at + text.length);
  }
  return operations;
}

/** The operators as a content stream, one a line. */
export function writeOperations(operations: readonly Operation[]): string {
  return operations.map(({ operator, operands }) => (operands.length > 0 ? `${operands.join(" ")} ${operator}\n` : `${operator}\n`)).join("");
}

/** The operands as numbers; what is no number becomes NaN. */
export function numbersOf(operation: Operation): readonly number[] {
  return operation.operands.map(Number);
}

function skipBlank(bytes: string, at: number): number {
  blank.lastIndex = at;
  return blank.test(bytes) ? blank.lastIndex : at;
}

function tokenAt(bytes: string, at: number): string {
  if (bytes[at] === "(") return bytes.slice(at, endOfString(bytes, at));
  token.lastIndex = at;
  const match = token.exec(bytes);
  if (match === null) throw new Error(`content stream: unexpected byte ${bytes.charCodeAt(at)}`);
  return match[0];
}

/** Strings nest round brackets; a backslash takes the next byte literally. */
function endOfString(bytes: string, start: number): number {
  let depth = 0;
  for (let at = start; at < bytes.length; at += 1) {
    if (bytes[at] === "\\") at += 1;
    else if (bytes[at] === "(") depth += 1;
    else if (bytes[at] === ")" && (depth -= 1) === 0) return at + 1;
  }
  throw new Error("content stream: a string does not end");
}
