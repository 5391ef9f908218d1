// Cuts the content stream of a PDF page into its operators and keeps the bytes of each (ISO 32000-1, 7.8.2 and Annex A).

/** One operator with its operands. Text holds bytes: one character of code 0-255 for each. */
export interface Operation {
  readonly operator: string;
  readonly operands: readonly string[];
}

/** An operator as it was read: a page has tens of thousands, most are only written again, so the operands are cut when somebody asks for them. */
class ReadOperation implements Operation {
  readonly operator: string;
  /** The operands as they stand in the stream. */
  readonly written: string;

  constructor(operator: string, written: string) {
    this.operator = operator;
    this.written = written;
  }

  get operands(): readonly string[] {
    return tokensOf(this.written);
  }
}

/** Order matters: strings in brackets are cut by hand before this is used. */
const token = /<<|>>|<[0-9A-Fa-f\s]*>|\[|\]|\/[^\s()<>[\]{}/%]*|[^\s()<>[\]{}/%]+/y;
const blank = /(?:[\0\t\n\f\r ]|%[^\r\n]*)+/y;
const operand = /^[-+.\d/(<>[]|^\]$|^(?:true|false|null)$/;

/** Reads a decoded content stream. Throws at anything that is not PDF, and at inline images, which our browsers do not write. */
export function readOperations(bytes: string): readonly Operation[] {
  const operations: Operation[] = [];
  let at = skipBlank(bytes, 0);
  let start = at;
  while (at < bytes.length) {
    const end = endOfToken(bytes, at);
    if (!isOperand(bytes, at, end)) {
      const operator = bytes.slice(at, end);
      if (operator === "BI") throw new Error("inline image in a content stream");
      operations.push(new ReadOperation(operator, bytes.slice(start, at)));
      start = at = skipBlank(bytes, end);
    } else at = skipBlank(bytes, end);
  }
  return operations;
}

/** The operators as a content stream, one a line. */
export function writeOperations(operations: readonly Operation[]): string {
  return operations.map((operation) => {
    if (operation instanceof ReadOperation) return `${operation.written}${operation.operator}\n`;
    const { operator, operands } = operation;
    return operands.length > 0 ? `${operands.join(" ")} ${operator}\n` : `${operator}\n`;
  }).join("");
}

/** The operands as numbers; what is no number becomes NaN. */
export function numbersOf(operation: Operation): readonly number[] {
  return operation.operands.map(Number);
}

function tokensOf(written: string): readonly string[] {
  const tokens: string[] = [];
  for (let at = skipBlank(written, 0); at < written.length; ) {
    const end = endOfToken(written, at);
    tokens.push(written.slice(at, end));
    at = skipBlank(written, end);
  }
  return tokens;
}

/** Most tokens are numbers, told by their first character. */
function isOperand(bytes: string, at: number, end: number): boolean {
  const code = bytes.charCodeAt(at);
  return isNumeric(code) || operand.test(bytes.slice(at, end));
}

/** A digit, a sign or the point. */
function isNumeric(code: number): boolean {
  return (code >= 48 && code <= 57) || code === 45 || code === 46 || code === 43;
}

function skipBlank(bytes: string, at: number): number {
  const code = bytes.charCodeAt(at);
  if (code > 32 && code !== 37) return at;
  // A single space between two tokens is by far the commonest.
  if (code === 32 && bytes.charCodeAt(at + 1) > 37) return at + 1;
  blank.lastIndex = at;
  return blank.test(bytes) ? blank.lastIndex : at;
}

function endOfToken(bytes: string, at: number): number {
  let end = at;
  while (isNumeric(bytes.charCodeAt(end))) end += 1;
  if (end > at && (end === bytes.length || bytes.charCodeAt(end) <= 32)) return end;
  if (bytes[at] === "(") return endOfString(bytes, at);
  token.lastIndex = at;
  if (!token.test(bytes)) throw new Error(`content stream: unexpected byte ${bytes.charCodeAt(at)}`);
  return token.lastIndex;
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
