// Reading a definition never throws, whatever is in the file: it gives definitions, or problems with places inside the texts.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import type { DefinitionResult } from "../../src/1-definition/types.ts";
import { printProblems } from "../../src/problems/print-problem.ts";
import { problemCodes } from "../../src/problems/problem.ts";

const encoder = new TextEncoder();
const example = readFileSync(new URL("../../examples/stub-album.yaml", import.meta.url), "utf8");

/** The example without its variants: each of them would be read anew at every change. */
const plainExample = example.slice(0, example.indexOf("# The same book in other sizes"));

function readBytes(bytes: Uint8Array): DefinitionResult {
  return readDefinition({ project: "p", file: "content/p/project.yaml", bytes, files: new Set(["pictures/fold.jpg"]), prose: new Map([["prose/finish.md", bytes.subarray(0, 200)]]) });
}

/** What must hold of any result. */
function expectSoundResult(result: DefinitionResult): void {
  const errors = result.problems.filter((problem) => problem.severity === "error");
  expect(errors.length > 0).toBe(result.definitions.length === 0);
  for (const { code, message, hint, place } of result.problems) {
    expect(problemCodes).toContain(code);
    expect(message).not.toBe("");
    expect(`${message} ${hint}`).not.toMatch(/\bundefined\b|\[object|internal error/);
    expect(message).not.toMatch(/\.$/);
    if (!place.span) continue;
    const length = result.texts.get(place.file)!.length;
    expect(place.span.start).toBeGreaterThanOrEqual(0);
    expect(place.span.start).toBeLessThanOrEqual(place.span.end);
    expect(place.span.end).toBeLessThanOrEqual(length + 1);
  }
  for (const definition of result.definitions) {
    for (const { place } of [...definition.prose, ...definition.stepChanges, ...definition.addedSteps]) expect(place.file).toMatch(/^content\/p\//);
  }
  expect(typeof printProblems(result.problems, result.texts)).toBe("string");
}

describe("reading a definition", () => {
  it("survives any bytes", () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => expectSoundResult(readBytes(bytes))), { numRuns: 300 });
  });

  it("survives any text made of YAML's own signs", () => {
    const sign = fc.constantFrom("-", ":", "?", "[", "]", "{", "}", ",", "&a", "*a", "!", "|", ">", "'", '"', "%", "@", "`", "#", "~", "<<", "\n", "\n  ", " ", "\t", "a", "book", "---", "...", "\r\n", "\\", "=", "0", "¾", "\u2028", "\ufeff");
    fc.assert(fc.property(fc.array(sign, { maxLength: 40 }).map((signs) => signs.join("")), (text) => expectSoundResult(readBytes(encoder.encode(text)))), { numRuns: 800 });
  });

  it("survives random cuts, copies and insertions in the commented example", () => {
    const at = fc.nat({ max: example.length - 1 });
    const piece = fc.oneof(fc.string({ maxLength: 6, unit: "binary" }), fc.constantFrom("\n", "\t", ": ", "- ", "{", "}", "[", "]", '"', "'", "*x", "&x ", "~", "null", "-1", "1e9", "/0", "  "));
    const change = fc.record({ from: at, to: at, piece, moves: fc.boolean() });
    const mutated = fc.array(change, { minLength: 1, maxLength: 4 }).map((changes) => changes.reduce((text, { from, to, piece: added, moves }) => {
      const [start, end] = [Math.min(from, to), Math.min(Math.max(from, to), Math.min(from, to) + 40)];
      return text.slice(0, start) + added + (moves ? text.slice(end) : text.slice(start));
    }, example));
    fc.assert(fc.property(mutated, (text) => expectSoundResult(readBytes(encoder.encode(text)))), { numRuns: 80 });
  });

  it("survives any value at any key of the commented example", () => {
    const lines = plainExample.split("\n").map((line, index) => ({ line, index })).filter(({ line }) => /^ *[a-z][a-z ]*: *[^|>#\s]/.test(line));
    const leaf = fc.oneof(
      fc.string({ maxLength: 12, unit: "binary" }).map((text) => JSON.stringify(text)),
      fc.double().map(String), fc.bigInt().map(String),
      fc.constantFrom("", "~", "null", "true", "no", ".inf", "-.inf", ".nan", "0x1F", "1_000", "2026-01-01", "1/2", "9 3/4 in", "-3 mm", "9¾\"", "1e400", "*x", "!!int 3", "[]", "{}", "[[[]]]", "{a: {b: c}}", "|\n      x", "../x.png", "__proto__", "constructor", "toString"),
    );
    const value = fc.oneof(leaf, fc.array(leaf.filter((text) => !text.includes("\n")), { maxLength: 3 }).map((items) => `[${items.join(", ")}]`));
    fc.assert(fc.property(fc.constantFrom(...lines), value, ({ line, index }, written) => {
      const changed = plainExample.split("\n").with(index, line.replace(/: .*$/, `: ${written}`)).join("\n");
      expectSoundResult(readBytes(encoder.encode(changed)));
    }), { numRuns: 300 });
  });

  it("survives large files that are built to be slow", () => {
    const size = 15_000;
    const hard = [
      "[", "{", "- ", "? ", "a: ", "[]", "]", "\"", "'", "!", "%a\n", "---\n", "\t", "&a ", "#\n", "*a\n", "[a,", "{a: b, ", "a\n", ": ", "\\", "- &a b\n", "- *a\n", "|\n", "[? ", "''", "\"a\":",
    ].map((unit) => unit.repeat(Math.ceil(size / unit.length)));
    hard.push(`a: "${"\\\n".repeat(size / 4)}"`, `a: |\n${" ".repeat(size)}`, Array.from({ length: 4_000 }, (_, key) => `k${key}: 1`).join("\n"), `x: &x [${"a,".repeat(6_000)}]\n${Array.from({ length: 600 }, (_, key) => `k${key}: *x`).join("\n")}`);
    for (const text of hard) expectSoundResult(readBytes(encoder.encode(text)));
  });

  it("gives the same result for the same file, and the same with Windows line ends", () => {
    const once = readBytes(encoder.encode(example));
    expect(readBytes(encoder.encode(example))).toEqual(once);
    const windows = readBytes(encoder.encode(example.replaceAll("\n", "\r\n")));
    const strip = ({ places: _, stepChanges: _s, addedSteps: _a, prose: _p, ...rest }: DefinitionResult["definitions"][number]): object => rest;
    expect(windows.definitions.map(strip)).toEqual(once.definitions.map(strip));
  });
});
