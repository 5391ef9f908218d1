// Turns the issues of the schemas into problems: from path to place, and from typed details to words.
import type { z } from "zod";
import { nearestOf } from "../problems/nearest.ts";
import type { Problem, ProblemCode, Span } from "../problems/problem.ts";
import type { IssueDetail, Refusal, UnknownKey, WrongKind } from "./refusal.ts";
import { follow, isScalarNode } from "./tree.ts";
import type { Found, Node, Path } from "./tree.ts";

/** How many known keys a hint lists before it stops. */
const mostListed = 24;

/** What the words of a problem need besides the issue. */
export interface IssueContext {
  readonly file: string;
  /** The tree that the schema has looked at. */
  readonly root: Node;
  /** Where keys belong that stand in the wrong place, by key; asked for only when one is unknown where it stands. */
  homes(): ReadonlyMap<string, readonly string[]>;
}

/** The problems of one definition. A key that is missing because it is misspelled right there is reported once. */
export function problemsFromIssues(context: IssueContext, issues: readonly z.core.$ZodIssue[]): readonly Problem[] {
  const meant = new Set(issues.map((issue) => meantPath(issue)).filter((path) => path !== null));
  return issues.flatMap((issue) => {
    const found = follow(context.root, pathOf(issue));
    if (found.node.kind === "scalar" && found.node.isBroken) return [];
    if (detailOf(issue).kind === "type" && meant.has(pathOf(issue).join("/"))) return [];
    return [problemFromIssue(context, issue)];
  });
}

function pathOf(issue: z.core.$ZodIssue): Path {
  return issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
}

/** The path that an unknown key was probably meant to have. */
function meantPath(issue: z.core.$ZodIssue): string | null {
  const detail = detailOf(issue);
  const path = pathOf(issue);
  const near = detail.kind === "unknown key" ? nearestOf(String(path.at(-1)), detail.known) : null;
  return near && [...path.slice(0, -1), near].join("/");
}

function problemFromIssue(context: IssueContext, issue: z.core.$ZodIssue): Problem {
  const { file, root } = context;
  const path = pathOf(issue);
  const found = follow(root, path);
  // What is wrong with a value that stands for its mapping (`units: cm`) is said of the key that is written.
  const name = nameOf(root, found.node.kind === "scalar" ? path.slice(0, found.depth) : path);
  const make = (code: ProblemCode, span: Span | null, message: string, hint: string): Problem =>
    ({ code, severity: "error", message, hint, place: { file, span } });
  const detail = detailOf(issue);
  switch (detail.kind) {
    case "value":
      return make(detail.code, spanWithin(found, detail), `${name}${detail.says}`, detail.hint);
    case "unknown key":
      return unknownKey(detail, name, found, context.homes, make);
    case "type":
      return wrongKind(detail, path, name, found, root, make);
  }
}

type Make = (code: ProblemCode, span: Span | null, message: string, hint: string) => Problem;

function detailOf(issue: z.core.$ZodIssue): IssueDetail {
  const params = issue.code === "custom" ? (issue.params as { detail?: IssueDetail } | undefined) : undefined;
  if (params?.detail) return params.detail;
  throw new Error(`internal error: an issue without details: ${issue.code} at ${issue.path.join("/")}`, { cause: issue });
}

function unknownKey(detail: UnknownKey, key: string, found: Found, homes: IssueContext["homes"], make: Make): Problem {
  const near = nearestOf(key, detail.known) ?? keyElsewhere(key, homes());
  // Ids that may be written with blanks or hyphens stand twice among the known; one form is enough to read.
  const shown = detail.known.filter((known) => !known.includes("-") || !detail.known.includes(known.replaceAll("-", " ")));
  const known = shown.length === 0 ? "none is known here" : shown.length <= mostListed ? `known here: ${shown.join(", ")}` : "";
  const hint = near ? `did you mean ${near}?` : known;
  return make(detail.code, found.keySpan, `${short(key)} is not a ${detail.noun}${detail.noun === "key" ? " that is known here" : ""}`, hint);
}

/** A key at the wrong level, most often by its indentation, with the keys it belongs under. */
function keyElsewhere(key: string, homes: ReadonlyMap<string, readonly string[]>): string | null {
  const near = key.length < 4 ? null : nearestOf(key, homes.keys());
  return near && `${near}, which belongs under ${homes.get(near)!.join(", ")}`;
}

function wrongKind(detail: WrongKind, path: Path, name: string, found: Found, root: Node, make: Make): Problem {
  if (found.depth < path.length) {
    const missing = nameOf(root, path);
    const parent = found.depth === 0 ? "" : nameOf(root, path.slice(0, found.depth));
    return make("key-missing", found.keySpan, parent === "" ? `${missing} is missing` : `${parent} has no ${missing}`, `add it, for example ${missing}: ${detail.example}`);
  }
  if (isScalarNode(found.node) && found.node.isEmpty) {
    return make("value-missing", found.keySpan, `${name} has no value`, `write ${detail.expected}${detail.isOptional ? ", or take the key out" : ""}`);
  }
  const written = found.node.kind === "list" ? "a list" : found.node.kind === "map" ? "a mapping of keys" : "a single value";
  const span = found.node.kind === "scalar" ? found.node.span : found.keySpan;
  return make(detail.code, span, path.length === 0 ? `the definition is ${written}` : `${name} is ${written}`, `write ${detail.expected}`);
}

/** A part of a value where the refusal names one, else the value; a mapping or list is pointed at by its key. */
function spanWithin(found: Found, refusal: Refusal): Span | null {
  const { node, keySpan } = found;
  if (node.kind !== "scalar") return keySpan;
  const { start, end } = refusal;
  if (start === undefined || end === undefined || node.offsets.length === 0) return node.span;
  const first = node.offsets[Math.min(start, node.offsets.length - 1)]!;
  const last = node.offsets[Math.min(Math.max(end, start + 1), node.offsets.length) - 1]!;
  return { start: first, end: Math.max(first, last) + 1 };
}

/** What a value is called: its key, or its number in a list. */
function nameOf(root: Node, path: Path): string {
  const step = path.at(-1);
  if (step === undefined) return "the definition";
  if (typeof step === "string") return short(step);
  const parent = path.slice(0, -1);
  return follow(root, parent).node.kind === "list" ? `entry ${step + 1} of ${nameOf(root, parent)}` : nameOf(root, parent);
}

function short(key: string): string {
  const line = key.replace(/\s+/gu, " ").trim();
  return line === "" ? '""' : line.length > 40 ? `${line.slice(0, 39)}…` : line;
}
