// The definition as written: texts, lists and mappings that know where they stand in the file.
import type { Span } from "../problems/problem.ts";

/** One value as the author wrote it. Numbers stay text, so that no length ever passes through a float. */
export interface ScalarNode {
  readonly kind: "scalar";
  /** The text after unfolding and escapes. */
  readonly text: string;
  /** Nothing was written after the key, or `~` or `null`. */
  readonly isEmpty: boolean;
  /** What stands here could not be read, which is a problem of its own: nothing further is said about the value. */
  readonly isBroken: boolean;
  readonly span: Span;
  /** The offset in the file of each UTF-16 unit of `text`. */
  readonly offsets: readonly number[];
}

/** A mapping as written, its keys in the order of the file. */
export interface MapNode {
  readonly kind: "map";
  readonly entries: ReadonlyMap<string, Entry>;
  readonly span: Span;
}

/** A list as written. */
export interface ListNode {
  readonly kind: "list";
  readonly items: readonly Node[];
  readonly span: Span;
}

/** What stands behind a key, and where the key itself stands. */
export interface Entry {
  readonly keySpan: Span;
  readonly value: Node;
}

/** Anything written in a definition: a single value, a mapping or a list. */
export type Node = ScalarNode | MapNode | ListNode;

/** A step on the way from the root to a node: a key, or the index in a list. */
export type Path = readonly (string | number)[];

/** What the schemas look at: mappings as objects without prototype, lists as arrays, and scalars as their nodes. */
export type Written = ScalarNode | readonly Written[] | { readonly [key: string]: Written };

/** Turns a tree into what the schemas look at. */
export function writtenOf(node: Node): Written {
  if (node.kind === "scalar") return node;
  if (node.kind === "list") return node.items.map(writtenOf);
  // Without a prototype, a key such as `__proto__` is a key like any other.
  const object = Object.create(null) as Record<string, Written>;
  for (const [key, entry] of node.entries) object[key] = writtenOf(entry.value);
  return object;
}

/** Whether something a schema was given is a scalar. A mapping with a key `kind` cannot be taken for one: its `kind` is a node. */
export function isScalarNode(written: unknown): written is ScalarNode {
  return typeof written === "object" && written !== null && (written as { kind?: unknown }).kind === "scalar";
}

/** Where a path leads: how much of it is written, the last node on the way, and the key that leads to it. */
export interface Found {
  readonly node: Node;
  /** The span of the key (or list item) that holds `node`; null at the root. */
  readonly keySpan: Span | null;
  /** How many steps of the path are written. */
  readonly depth: number;
}

/** Follows a path as far as it is written. An index into something that is no list stays where it is: one value stands for a list of one. */
export function follow(root: Node, path: Path): Found {
  let found: Found = { node: root, keySpan: null, depth: 0 };
  for (const [index, step] of path.entries()) {
    const { node } = found;
    if (typeof step === "number" && node.kind !== "list" && step === 0) {
      found = { ...found, depth: index + 1 };
      continue;
    }
    const item = node.kind === "list" && typeof step === "number" ? node.items[step] : undefined;
    const entry = node.kind === "map" ? node.entries.get(String(step)) : undefined;
    if (item) found = { node: item, keySpan: firstLineOf(item), depth: index + 1 };
    else if (entry) found = { node: entry.value, keySpan: entry.keySpan, depth: index + 1 };
    else return found;
  }
  return found;
}

/** The node that a path leads to, or null when it is not written. */
export function nodeAt(root: Node, path: Path): Node | null {
  const found = follow(root, path);
  return found.depth === path.length ? found.node : null;
}

/** Every written path with the span to point at: a scalar's value, but only the key of a mapping or list, which may be long. */
export function spansByPath(root: Node): ReadonlyMap<string, Span> {
  const spans = new Map<string, Span>();
  const visit = (node: Node, path: string, keySpan: Span): void => {
    if (path !== "") spans.set(path, node.kind === "scalar" && !node.isEmpty ? node.span : keySpan);
    const inside = path === "" ? "" : `${path}/`;
    if (node.kind === "map") for (const [key, entry] of node.entries) visit(entry.value, inside + key, entry.keySpan);
    if (node.kind === "list") node.items.forEach((item, index) => visit(item, inside + String(index), firstLineOf(item)));
  };
  visit(root, "", root.span);
  return spans;
}

/** A list item that is itself a mapping is pointed at by its first key. */
export function firstLineOf(node: Node): Span {
  if (node.kind === "map") return [...node.entries.values()][0]?.keySpan ?? node.span;
  if (node.kind === "list") return node.items[0] ? firstLineOf(node.items[0]) : node.span;
  return node.span;
}
