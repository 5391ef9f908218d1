// Reads YAML 1.2 into a tree: every complaint is gathered with its exact span, aliases and merge keys are resolved, growth is bounded.
import { Composer, Lexer, Parser, isAlias, isMap, isScalar, isSeq } from "yaml";
import type { Alias, Document, ParsedNode, Scalar, YAMLMap, YAMLSeq } from "yaml";
import type { Problem, ProblemCode, Span } from "../problems/problem.ts";
import { nearestOf } from "../problems/nearest.ts";
import { scalarOffsets } from "./scalar-offsets.ts";
import type { ScalarStyle } from "./scalar-offsets.ts";
import type { Entry, MapNode, Node, ScalarNode } from "./tree.ts";
import { syntaxProblems } from "./yaml-problems.ts";

/** Deepest nesting that is read; a definition needs six levels. */
export const deepestNesting = 32;

/** Most values that may come from aliases and merge keys, so that a few lines cannot unfold into millions. */
export const mostAliasedValues = 5_000;

/** What became of a text: a tree with places, and what the parser had to say. */
export interface TreeReading {
  /** Null when the text holds nothing that could be checked further. */
  readonly root: Node | null;
  readonly problems: readonly Problem[];
  /** Offset of the line before the first syntax error: what follows may be misread. Infinity when there is none. */
  readonly soundUntil: number;
  /** The text with every line that holds a syntax error blanked, so that offsets stay: values elsewhere can be checked in it. */
  readonly mended: string;
}

/** Reads the text of one file into a tree. Never throws on any text. */
export function readTree(file: string, text: string): TreeReading {
  const problems: Problem[] = [];
  const report = (code: ProblemCode, span: Span | null, message: string, hint: string): void => {
    problems.push({ code, severity: "error", message, hint, place: { file, span } });
  };
  const tokens = readTokens(text);
  if (tokens.tooDeepAt !== null) {
    report("yaml-nesting", { start: tokens.tooDeepAt, end: tokens.tooDeepAt + 1 }, `this is nested more than ${deepestNesting} levels deep`, "a definition needs no more than six levels: look for a bracket, brace or dash too many");
    return { root: null, problems, soundUntil: 0, mended: "" };
  }
  const composed: Document.Parsed<ParsedNode, boolean>[] = [];
  const composer = new Composer({ schema: "failsafe", uniqueKeys: false, prettyErrors: false, logLevel: "silent" });
  let holding = 0;
  for (const document of composer.compose(tokens.tokens, false, text.length)) {
    if (!holdsSomething(document) && document.errors.length === 0) continue;
    composed.push(document);
    if (holdsSomething(document)) holding += 1;
    if (holding > 1) break;
  }
  const [document, second] = composed;
  const syntax = syntaxProblems(file, text, document ? document.errors : []);
  problems.push(...syntax);
  if (second) {
    const start = second.contents?.range[0] ?? second.range[0];
    const line = text.lastIndexOf("\n---", start);
    report("yaml-syntax", line === -1 ? { start, end: start + 1 } : { start: line + 1, end: line + 4 }, "a second document begins here", "a file holds one definition: take this line and what follows out, or use variants for further sizes");
  }
  const badLines = syntax.map((problem) => lineStart(text, problem.place.span!.start));
  const soundUntil = badLines.reduce((least, start) => Math.min(least, lineStart(text, start - 1)), Infinity);
  const mended = badLines.reduce((sofar, start) => blankLine(sofar, start), text);
  if (!document?.contents || !holdsSomething(document)) {
    if (problems.length === 0) {
      const isBlank = text.trim() === "";
      report("file-empty", null, isBlank ? "this file is empty" : "this file holds only comments", "start from the commented example of the binding in examples/");
    }
    return { root: null, problems, soundUntil, mended };
  }
  const deeper: TreeReport[] = [];
  const root = convert(text, document.contents, (...each) => deeper.push(each));
  // An echo of a syntax error on its own line would only hide it.
  const lines = new Set(badLines);
  for (const each of deeper) if (!lines.has(lineStart(text, each[1].start))) report(...each);
  return { root, problems, soundUntil, mended };
}

function holdsSomething(document: Document.Parsed<ParsedNode, boolean>): boolean {
  const { contents } = document;
  return contents !== null && !(isScalar(contents) && contents.type === "PLAIN" && contents.value === "");
}

type Tokens = ReturnType<typeof readTokens>["tokens"];

/** The parser's tokens, watched while they arrive: deep nesting exhausts the composer's stack, so it must be seen before. */
function readTokens(text: string): { tokens: Parameters<Composer["compose"]>[0] extends Iterable<infer T> ? T[] : never; tooDeepAt: number | null } {
  const parser = new Parser();
  const tokens: Tokens = [];
  // Each level of ours is at most two entries on the parser's stack.
  const deepestStack = deepestNesting * 2;
  for (const lexeme of new Lexer().lex(text)) {
    tokens.push(...parser.next(lexeme));
    if (parser.stack.length > deepestStack) return { tokens: [], tooDeepAt: Math.max(0, parser.offset - lexeme.length) };
  }
  tokens.push(...parser.end());
  return { tokens, tooDeepAt: null };
}

function lineStart(text: string, offset: number): number {
  return offset <= 0 ? 0 : text.lastIndexOf("\n", offset - 1) + 1;
}

function blankLine(text: string, start: number): string {
  const end = text.indexOf("\n", start);
  const stop = end === -1 ? text.length : end;
  return text.slice(0, start) + " ".repeat(stop - start) + text.slice(stop);
}

type TreeReport = [code: ProblemCode, span: Span, message: string, hint: string];
type Report = (...report: TreeReport) => void;
type YamlNode = Scalar | YAMLMap | YAMLSeq | Alias;

/** Turns the library's nodes into ours. */
function convert(text: string, contents: ParsedNode, report: Report): Node {
  const anchors = new Map<string, YamlNode>();
  const targets = new Map<Alias, YamlNode | null>();
  const offsetsOf = new Map<Scalar, readonly number[]>();
  let aliasedValues = 0;
  let aliasLimitReported = false;

  const spanOf = (node: { range?: readonly [number, number, number] | null }): Span => ({ start: node.range?.[0] ?? 0, end: node.range?.[1] ?? 0 });
  const empty = (span: Span): ScalarNode => ({ kind: "scalar", text: "", isEmpty: true, isBroken: false, span, offsets: [] });
  const broken = (span: Span): ScalarNode => ({ ...empty(span), isBroken: true });

  const nodeOf = (node: unknown, around: Span, within: readonly YamlNode[], isAliased: boolean): Node => {
    if (!isScalar(node) && !isMap(node) && !isSeq(node) && !isAlias(node)) return empty(around);
    if (isAliased && (aliasedValues += 1) > mostAliasedValues) return limitReached(around);
    if (within.length > deepestNesting) {
      const { start } = spanOf(node);
      report("yaml-nesting", { start, end: start + 1 }, `this is nested more than ${deepestNesting} levels deep`, "a definition needs no more than six levels");
      return broken(around);
    }
    if (isAlias(node)) return aliasOf(node, within);
    if (node.anchor !== undefined && !isAliased) anchors.set(node.anchor, node);
    if (node.tag !== undefined && !isAliased) checkTag(node);
    if (isScalar(node)) return scalarOf(node);
    const inner = [...within, node];
    if (isMap(node)) return mapOf(node, inner, isAliased);
    return { kind: "list", span: spanOf(node), items: node.items.map((item) => nodeOf(item, spanOf(node), inner, isAliased)) };
  };

  const limitReached = (span: Span): Node => {
    if (!aliasLimitReported) report("yaml-alias-limit", span, `aliases unfold into more than ${mostAliasedValues} values here`, "write the values out, or let fewer aliases hold further aliases");
    aliasLimitReported = true;
    return broken(span);
  };

  const aliasOf = (alias: Alias, within: readonly YamlNode[]): Node => {
    const span = spanOf(alias);
    if (!targets.has(alias)) targets.set(alias, anchors.get(alias.source) ?? null);
    const target = targets.get(alias)!;
    if (!target) {
      const near = nearestOf(alias.source, anchors.keys());
      const hint = near ? `did you mean *${near}?` : "if text that begins with * is meant, put it in quotes";
      report("yaml-syntax", span, `*${alias.source} points to an anchor that is not written above it`, hint);
      return broken(span);
    }
    if (within.includes(target)) {
      report("yaml-alias-limit", span, `*${alias.source} holds itself`, "write the values out instead");
      return broken(span);
    }
    if (aliasLimitReported) return broken(span);
    return nodeOf(target, span, within, true);
  };

  const scalarOf = (node: Scalar): ScalarNode => {
    const value = typeof node.value === "string" ? node.value : "";
    const span = spanOf(node);
    const known = offsetsOf.get(node) ?? scalarOffsets(value, text.slice(span.start, span.end), styleOf(node), span.start);
    offsetsOf.set(node, known);
    const isEmpty = node.type === "PLAIN" && /^(?:|~|null|Null|NULL)$/.test(value);
    return { kind: "scalar", text: value, isEmpty, isBroken: false, span: trimBlock(text, span), offsets: known };
  };

  const checkTag = (node: YamlNode & { tag?: string }): void => {
    if (/^tag:yaml\.org,2002:(?:str|map|seq)$/.test(node.tag ?? "")) return;
    const { start } = spanOf(node);
    const before = text.lastIndexOf("!", start - 1);
    const from = before === -1 ? start : text.slice(0, start).search(/!\S*\s*$/);
    const written = /^!\S*/.exec(text.slice(from === -1 ? start : from))?.[0] ?? node.tag ?? "";
    report("yaml-syntax", from === -1 ? spanOf(node) : { start: from, end: from + written.length }, `${written} is a tag, and tags are not used here`, "take it out; if text that begins with ! is meant, put it in quotes");
  };

  const mapOf = (node: YAMLMap, inner: readonly YamlNode[], isAliased: boolean): MapNode => {
    const entries = new Map<string, Entry>();
    const merges: { readonly span: Span; readonly value: Node }[] = [];
    for (const pair of node.items) {
      const key = pair.key;
      const keySpan = isScalar(key) || isMap(key) || isSeq(key) || isAlias(key) ? spanOf(key) : spanOf(node);
      if (!isScalar(key) || typeof key.value !== "string" || key.value === "") {
        report("yaml-syntax", keySpan.end > keySpan.start ? keySpan : { start: keySpan.start, end: keySpan.start + 1 }, isScalar(key) ? "there is no key before this colon" : "a key must be plain text", "write key: value");
        continue;
      }
      // Schemas overlook this one key for reasons of JavaScript's own, so it is refused here.
      if (key.value === "__proto__") {
        report("key-unknown", keySpan, "__proto__ is not a key that is known here", "take it out");
        continue;
      }
      const value = nodeOf(pair.value, { start: keySpan.end, end: keySpan.end }, inner, isAliased);
      if (key.value === "<<" && key.type === "PLAIN") merges.push({ span: keySpan, value });
      else if (!entries.has(key.value)) entries.set(key.value, { keySpan, value });
      else reportDuplicate(key.value, keySpan, entries.get(key.value)!.keySpan);
    }
    for (const merge of merges) mergeInto(entries, merge.span, merge.value);
    return { kind: "map", entries, span: spanOf(node) };
  };

  const reportDuplicate = (key: string, span: Span, first: Span): void => {
    const line = text.slice(0, first.start).split("\n").length;
    report("yaml-duplicate-key", span, `${key} is written twice; the first is on line ${line}`, "keep one of the two");
  };

  /** `<<` brings in the keys of one mapping, or of several in a list, that are not written here already. */
  const mergeInto = (entries: Map<string, Entry>, span: Span, value: Node): void => {
    for (const source of value.kind === "list" ? value.items : [value]) {
      if (source.kind === "map") {
        for (const [key, entry] of source.entries) if (!entries.has(key)) entries.set(key, entry);
      } else if (source.kind !== "scalar" || !source.isEmpty) {
        report("value-type", span, "<< takes over the keys of another mapping, but no mapping follows it", "write <<: *name, where &name stands before a mapping further up");
      }
    }
  };

  return nodeOf(contents, { start: 0, end: 0 }, [], false);
}

function styleOf(node: Scalar): ScalarStyle {
  if (node.type === "QUOTE_SINGLE") return "single-quoted";
  if (node.type === "QUOTE_DOUBLE") return "double-quoted";
  return node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED" ? "block" : "plain";
}

/** The library counts a block text's last line break in; a span to point at ends with the text. */
function trimBlock(text: string, span: Span): Span {
  const trimmed = text.slice(span.start, span.end).trimEnd().length;
  return { start: span.start, end: span.start + Math.max(trimmed, Math.min(1, span.end - span.start)) };
}
