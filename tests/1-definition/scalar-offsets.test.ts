// Each character of a value leads back to its place in the file, whatever the style.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Scalar, stringify } from "yaml";
import { readTree } from "../../src/1-definition/read-tree.ts";
import { isScalarNode, nodeAt } from "../../src/1-definition/tree.ts";
import type { ScalarNode } from "../../src/1-definition/tree.ts";

function scalarIn(text: string): ScalarNode {
  const { root, problems } = readTree("f", text);
  expect(problems).toEqual([]);
  const node = nodeAt(root!, ["key"]);
  if (!node || !isScalarNode(node)) throw new Error("no scalar at key");
  return node;
}

/** The characters of the file under the first occurrence of some words of the value. */
function underWords(text: string, words: string): string {
  const node = scalarIn(text);
  const at = node.text.indexOf(words);
  expect(at).toBeGreaterThanOrEqual(0);
  return text.slice(node.offsets[at]!, node.offsets[at + words.length - 1]! + 1);
}

describe("the offsets of a value's characters", () => {
  it("lead into plain and quoted texts on one line", () => {
    expect(underWords("key: one {card width} two # no", "{card width}")).toBe("{card width}");
    expect(underWords("key: 'it''s {card width}'", "{card width}")).toBe("{card width}");
    expect(underWords('key: "a \\"b\\" \\u00e9\\x41 {card width}"', "{card width}")).toBe("{card width}");
  });

  it("lead through folded lines, blank lines and their indentation", () => {
    expect(underWords("key: one\n  two\n\n  {card width}\n", "{card width}")).toBe("{card width}");
    expect(underWords('key: "one \n   two\\\n   three\n\n\n   {card width}"\n', "{card width}")).toBe("{card width}");
    expect(underWords("key: 'one\n\n  {card width}'\n", "{card width}")).toBe("{card width}");
  });

  it("lead into block texts, kept or folded, chomped or not, with more indented lines and stated indentation", () => {
    for (const header of ["|", "|-", "|+", ">", ">-", ">+"]) {
      const text = `key: ${header} # note\n  one\n  two\n\n    more\n  {card width} x\n\n`;
      expect(underWords(text, "{card width}")).toBe("{card width}");
    }
    expect(underWords("key: |2\n     {card width}\n   x\n", "{card width}")).toBe("{card width}");
    expect(underWords("key: >\r\n  one\r\n  two {card width}\r\n", "{card width}")).toBe("{card width}");
  });

  it("are one for each UTF-16 unit, also of characters beyond the basic plane", () => {
    const text = 'key: "🧵 \\U0001F9F5 {n}"';
    const node = scalarIn(text);
    expect(node.offsets).toHaveLength(node.text.length);
    expect(underWords(text, "{n}")).toBe("{n}");
  });

  it("point at the very character for anything written in any style", () => {
    const line = fc.stringMatching(/^[a-z{}:#'"\\ é-]{0,12}$/);
    const value = fc.array(line, { minLength: 1, maxLength: 6 }).map((lines) => lines.join("\n"));
    const style = fc.constantFrom(Scalar.PLAIN, Scalar.QUOTE_SINGLE, Scalar.QUOTE_DOUBLE, Scalar.BLOCK_LITERAL, Scalar.BLOCK_FOLDED);
    fc.assert(fc.property(value, style, fc.integer({ min: 20, max: 60 }), fc.boolean(), (written, type, lineWidth, isWindows) => {
      const scalar = new Scalar(written);
      scalar.type = type;
      const text = stringify({ key: scalar }, { lineWidth }).replaceAll("\n", isWindows ? "\r\n" : "\n");
      // Some texts cannot be written in the style asked for; those are not what is tested here.
      fc.pre(readTree("f", text).problems.length === 0);
      const node = scalarIn(text);
      fc.pre(node.text === written);
      expect(node.offsets).toHaveLength(written.length);
      let last = -1;
      [...written].forEach((character, index) => {
        const offset = node.offsets[index]!;
        expect(offset).toBeGreaterThanOrEqual(last);
        last = offset;
        const there = text[offset]!;
        // A blank may be a folded break, a break may be an escape, and some characters are written as escapes.
        if (/[a-z{}:#é]/.test(character)) expect(there).toBe(character);
        if (character === "\n") expect(there).toMatch(/[\r\n\\]/);
        if (character === " ") expect(there).toMatch(/[ \r\n\\]/);
      });
    }), { numRuns: 800 });
  });
});
