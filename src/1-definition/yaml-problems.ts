// Our own words for what the YAML parser complains about: what is wrong at the place, and what an author would do.
import type { YAMLError } from "yaml";
import type { Problem, Span } from "../problems/problem.ts";

interface Wording {
  readonly message: string;
  readonly hint: string;
  readonly span?: Span;
}

const quoteIt = 'put the whole text in quotes: "…"';

/** Lines with syntax errors that are reported: with more of them, the file is not what its author takes it for. */
const mostLines = 50;

/** Turns parser errors into problems, one for each line: what follows on the same line is nearly always an echo of the first. */
export function syntaxProblems(file: string, text: string, errors: readonly YAMLError[]): readonly Problem[] {
  const problems: Problem[] = [];
  const lines = new Set<number>();
  let openQuote = false;
  for (const error of [...errors].sort((a, b) => a.pos[0] - b.pos[0])) {
    const start = Math.min(error.pos[0], text.length);
    const line = text.lastIndexOf("\n", start - 1);
    if (openQuote || lines.size >= mostLines) break;
    if (lines.has(line)) continue;
    lines.add(line);
    const wording = wordingOf(error, text, start);
    const span = wording.span ?? { start, end: Math.max(start + 1, Math.min(error.pos[1], text.length)) };
    const code = error.code === "TAB_AS_INDENT" ? "yaml-tab" : error.code === "RESOURCE_EXHAUSTION" ? "yaml-nesting" : "yaml-syntax";
    problems.push({ code, severity: "error", message: wording.message, hint: wording.hint, place: { file, span: firstLineOf(text, span) } });
    // A quote that is never closed has swallowed the rest of the file.
    openQuote = error.message.includes("closing");
  }
  return problems;
}

function wordingOf(error: YAMLError, text: string, start: number): Wording {
  const rest = text.slice(start);
  const before = text.slice(text.lastIndexOf("\n", start - 1) + 1, start);
  switch (error.code) {
    case "TAB_AS_INDENT":
      return { message: "this line is indented with a tab", hint: "indent with spaces; two for each level are usual" };
    case "BAD_INDENT":
      if (/flow/i.test(error.message)) return unclosedFlow(error, text, start);
      return { message: "this line is indented differently from the lines it belongs with", hint: "start keys of one group in the same column" };
    case "BLOCK_AS_IMPLICIT_KEY":
      return colonInText(text, start);
    case "MULTILINE_IMPLICIT_KEY":
      return { ...lineWithoutColon(text, start), span: { start, end: start + Math.max(1, rest.split("\n")[0]!.trimEnd().length) } };
    case "KEY_OVER_1024_CHARS":
      return { message: "this is longer than a key may be", hint: "look for a missing colon or quote" };
    case "BAD_SCALAR_START":
      return { message: `a text without quotes cannot begin with ${rest[0] ?? "this"}`, hint: quoteIt };
    case "BAD_DQ_ESCAPE":
      return { message: `${rest.slice(0, 2)} is not an escape that is known in double quotes`, hint: "write \\\\ for a backslash, or use single quotes" };
    case "BAD_ALIAS":
      return { message: `${rest[0] ?? "this"} stands here without a name`, hint: quoteIt };
    case "MISSING_CHAR":
      if (/closing/.test(error.message)) return unclosedQuote(error, text);
      if (/flow (?:map|sequence|collection)/i.test(error.message)) return unclosedFlow(error, text, start);
      if (/followed by map values/.test(error.message)) return lineWithoutColon(text, start);
      return { message: "something is missing before this place", hint: "separate entries by commas within { } and [ ], and write a blank behind each colon and dash" };
    case "BLOCK_IN_FLOW":
      return { message: "a comma or a closing bracket is missing here", hint: "separate entries by commas: {height: 300 mm, width: 220 mm}" };
    case "BAD_DIRECTIVE":
      return { message: "a line that begins with % is an instruction to the parser, and none is needed here", hint: `take it out; if it is text, ${quoteIt}` };
    case "RESOURCE_EXHAUSTION":
      return { message: "this is nested too deeply", hint: "look for a bracket, brace or dash too many" };
    case "UNEXPECTED_TOKEN":
      return unexpected(rest, before);
    default:
      return { message: "this cannot be read as YAML", hint: "compare it with the commented example of the binding" };
  }
}

function unexpected(rest: string, before: string): Wording {
  const found = /^[^\s,\]}]+/.exec(rest)?.[0] ?? rest[0] ?? "the end of the file";
  if (/^-/.test(found) && /:\s*$/.test(before)) return { message: "a list cannot begin on the line of its key", hint: "start the list on the next line, or write it as [first, second]" };
  if (/[|>][+-]?\d?\s+$/.test(before)) return { message: `nothing may follow ${before.trim().slice(-1)} on its line`, hint: "start the text on the next line, indented" };
  if (/["']\s*$/.test(before)) return { message: "the quoted text ends before this place", hint: "write quotes within a text doubled (''…'') in single quotes, or as \\\" in double quotes; or start the text on a line of its own after >" };
  if (/[}\]]\s*$/.test(before)) return { message: "the text begins with a bracket or brace, so it is not read as text", hint: quoteIt };
  if (/(?:^|\s)\*\S*\s*$/.test(before)) return { message: "the text begins with *, which points to an anchor", hint: quoteIt };
  if (/^[\]}]/.test(rest)) return { message: `${rest[0]!} closes nothing that was opened`, hint: "take it out, or open its partner before it" };
  if (/^,/.test(rest)) return { message: "there is nothing before this comma", hint: "take the comma out, or write an entry before it" };
  return { message: `${found.length > 40 ? `${found.slice(0, 39)}…` : found} is not expected here`, hint: "look for a missing quote, comma or line break before it" };
}

/** `title: Thirty leaves: an album` reads as a mapping within a mapping; the second colon is to blame. */
function colonInText(text: string, start: number): Wording {
  const line = text.slice(start).split("\n")[0]!;
  const colon = line.search(/:(?:\s|$)/);
  if (colon === -1) return { ...indentedFurther, span: nextLine(text, start) };
  const at = start + colon;
  return { message: "a colon and a blank within a text make it a key", hint: quoteIt, span: { start: at, end: at + 1 } };
}

const indentedFurther: Wording = {
  message: "this line is indented further than the key before it, as if it went on with that key's text",
  hint: "start keys of one group in the same column",
};

/** The written part of the line after the one that `start` is on. */
function nextLine(text: string, start: number): Span {
  const end = text.indexOf("\n", start);
  const line = /[^\s]+/.exec(text.slice(end + 1));
  return end === -1 || !line ? { start, end: start + 1 } : { start: end + 1 + line.index, end: end + 1 + line.index + line[0].length };
}

function lineWithoutColon(text: string, start: number): Wording {
  const line = text.slice(start).split("\n")[0]!.trim();
  const glued = /^([^\s:]+):(\S.*)$/.exec(line);
  if (glued) return { message: "a blank is missing behind the colon", hint: `write ${glued[1]!}: ${glued[2]!.slice(0, 40)}` };
  return { message: "this line has no key with a colon", hint: "write key: value; indent a line that continues a text further than its key" };
}

function unclosedQuote(error: YAMLError, text: string): Wording {
  const quote = /closing\s*(["'])/.exec(error.message)?.[1] ?? '"';
  // The parser points to the end; the quote that was opened is what the author has to find.
  const opened = openingQuote(text, error.pos[0], quote);
  return { message: `this ${quote} is never closed`, hint: `write ${quote} at the end of the text as well; a length in inches needs no quotes: 9 3/4 in`, span: { start: opened, end: opened + 1 } };
}

/** The last quote that begins a value: after a colon, dash, comma or bracket. */
function openingQuote(text: string, until: number, quote: string): number {
  const openings = [...text.slice(0, until).matchAll(quote === "'" ? /(?<=(?:^|[:\-,[{])\s*)'/gm : /(?<=(?:^|[:\-,[{])\s*)"/gm)];
  return openings.at(-1)?.index ?? Math.max(0, text.lastIndexOf(quote, until));
}

/** The parser points to the line that comes too soon; the bracket that was opened is what the author has to find. */
function unclosedFlow(error: YAMLError, text: string, until: number): Wording {
  const close = /end with a ([\]}])/.exec(error.message)?.[1] ?? "}";
  const open = close === "}" ? "{" : "[";
  let closed = 0;
  let at = until - 1;
  for (; at >= 0; at -= 1) {
    if (text[at] === close) closed += 1;
    else if (text[at] === open && closed === 0) break;
    else if (text[at] === open) closed -= 1;
  }
  const span = at < 0 ? { start: until, end: until + 1 } : { start: at, end: at + 1 };
  return { message: `this ${open} is never closed`, hint: `write ${close} behind its last entry`, span };
}

/** A span over several lines is cut to its first, where the author has to look. */
function firstLineOf(text: string, span: Span): Span {
  const end = text.indexOf("\n", span.start);
  return { start: span.start, end: end === -1 || end <= span.start ? span.end : Math.min(span.end, end) };
}
