// YAML becomes a tree of texts with places; growth, cycles and depth are bounded.
import { describe, expect, it } from "vitest";
import { deepestNesting, mostAliasedValues, readTree } from "../../src/1-definition/read-tree.ts";
import { follow, isScalarNode, nodeAt, spansByPath, writtenOf } from "../../src/1-definition/tree.ts";
import type { Node } from "../../src/1-definition/tree.ts";

function rootOf(text: string): Node {
  const { root, problems } = readTree("f", text);
  expect(problems).toEqual([]);
  return root!;
}

function textAt(text: string, ...path: readonly (string | number)[]): string | null {
  const node = nodeAt(rootOf(text), path);
  return node && isScalarNode(node) ? node.text : null;
}

const codes = (text: string): readonly string[] => readTree("f", text).problems.map((problem) => problem.code);

describe("the tree of a definition", () => {
  it("keeps every number as the text it was written as", () => {
    for (const number of ["0.10", "1.0", "0.1000000000000000055", "1e3", "0x1F", ".inf", "007", "12345678901234567890"]) {
      expect(textAt(`a: ${number}`, "a")).toBe(number);
    }
  });

  it("tells nothing, ~ and null from the same words in quotes", () => {
    const isEmpty = (text: string): boolean => (nodeAt(rootOf(text), ["a"]) as { isEmpty: boolean }).isEmpty;
    expect(["a:", "a: ~", "a: null", "{a}"].map(isEmpty)).toEqual([true, true, true, true]);
    expect(['a: ""', 'a: "~"', "a: 'null'", "a: no"].map(isEmpty)).toEqual([false, false, false, false]);
  });

  it("reads anchors, aliases and merge keys; keys written in place win over merged ones", () => {
    const text = "base: &base {x: 1, y: 2}\nother: &other {y: 3, z: 4}\nuse: {<<: [*base, *other], x: 9}\ncopy: *base\n";
    expect(textAt(text, "use", "x")).toBe("9");
    expect(textAt(text, "use", "y")).toBe("2");
    expect(textAt(text, "use", "z")).toBe("4");
    expect(textAt(text, "copy", "x")).toBe("1");
  });

  it("takes an alias for the anchor written last before it", () => {
    expect(textAt("a: &n 1\nb: *n\nc: &n 2\nd: *n\n", "b")).toBe("1");
    expect(textAt("a: &n 1\nb: *n\nc: &n 2\nd: *n\n", "d")).toBe("2");
  });

  it("lets aliases unfold up to the limit and not beyond", () => {
    const list = (values: number): string => `a: &a [${"x,".repeat(values)}]\nb: *a\n`;
    // The list itself is one value of those unfolded.
    expect(codes(list(mostAliasedValues - 1))).toEqual([]);
    expect(codes(list(mostAliasedValues))).toEqual(["yaml-alias-limit"]);
  });

  it("reports an alias that holds itself, once", () => {
    expect(codes("a: &a {b: [*a]}")).toEqual(["yaml-alias-limit"]);
  });

  it("reads nesting up to the limit and reports it beyond, brackets, dashes and mappings alike", () => {
    const brackets = (depth: number): string => "[".repeat(depth) + "]".repeat(depth);
    expect(codes(brackets(deepestNesting + 1))).toEqual([]);
    expect(codes(brackets(deepestNesting + 2))).toEqual(["yaml-nesting"]);
    expect(codes("- ".repeat(5000))).toEqual(["yaml-nesting"]);
    expect(codes("a: {".repeat(5000))).toEqual(["yaml-nesting"]);
  });

  it("reports nesting that only aliases make deep", () => {
    const chain = Array.from({ length: deepestNesting + 5 }, (_, index) => `k${index + 1}: &k${index + 1} [*k${index}]`);
    expect(codes(["k0: &k0 [x]", ...chain].join("\n"))).toContain("yaml-nesting");
  });

  it("ignores a document mark at the start and end, and reports a second document", () => {
    expect(codes("---\na: 1\n...\n")).toEqual([]);
    expect(codes("a: 1\n---\n")).toEqual([]);
    expect(codes("a: 1\n---\nb: 2\n")).toEqual(["yaml-syntax"]);
    expect(codes("a: 1\n...\nb: 2\n")).toEqual(["yaml-syntax"]);
  });

  it("reads the version directive without changing what a value means", () => {
    expect(textAt("%YAML 1.1\n---\na: yes\n", "a")).toBe("yes");
  });

  it("keeps a key named like a property of every object", () => {
    const written = writtenOf(rootOf("constructor: {toString: 1}\nhasOwnProperty: 2\n")) as Record<string, unknown>;
    expect(Object.keys(written)).toEqual(["constructor", "hasOwnProperty"]);
    expect(Object.getPrototypeOf(written)).toBeNull();
  });
});

describe("following a path", () => {
  const root = rootOf("book:\n  boards: {height: 1}\n  lengths: [2, 3]\n");

  it("stops at the last node that is written and says how deep that is", () => {
    expect(follow(root, ["book", "boards", "width"]).depth).toBe(2);
    expect(follow(root, ["book", "lengths", 1]).depth).toBe(3);
    expect(follow(root, ["book", "lengths", 2]).depth).toBe(2);
    expect(nodeAt(root, ["book", "spine"])).toBeNull();
  });

  it("takes one value for a list of one", () => {
    expect(follow(root, ["book", "boards", "height", 0]).depth).toBe(4);
  });

  it("gives every written path a span: the value of a scalar, the key of what holds more", () => {
    const text = "book:\n  boards: {height: 1}\n  lengths: [2, 3]\n";
    const spans = [...spansByPath(root)].map(([path, span]) => [path, text.slice(span.start, span.end)]);
    expect(spans).toEqual([["book", "book"], ["book/boards", "boards"], ["book/boards/height", "1"], ["book/lengths", "lengths"], ["book/lengths/0", "2"], ["book/lengths/1", "3"]]);
  });
});
