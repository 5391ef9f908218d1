// Lines and columns of offsets.
import { describe, expect, it } from "vitest";
import { lineText, locate, readLines } from "../../src/problems/place.ts";

describe("placing an offset", () => {
  const lines = readLines("one\ntwo\r\n\nfour");

  it("counts lines and columns from 1", () => {
    expect(locate(lines, 0)).toEqual({ line: 1, column: 1 });
    expect(locate(lines, 2)).toEqual({ line: 1, column: 3 });
    expect(locate(lines, 4)).toEqual({ line: 2, column: 1 });
  });

  it("counts a line break to the line it ends", () => {
    expect(locate(lines, 3)).toEqual({ line: 1, column: 4 });
    expect(locate(lines, 8)).toEqual({ line: 2, column: 5 });
  });

  it("finds empty lines and the end of the text", () => {
    expect(locate(lines, 9)).toEqual({ line: 3, column: 1 });
    expect(locate(lines, 14)).toEqual({ line: 4, column: 5 });
  });

  it("takes an offset outside the text to its nearer end", () => {
    expect(locate(lines, -5)).toEqual({ line: 1, column: 1 });
    expect(locate(lines, 500)).toEqual({ line: 4, column: 5 });
  });

  it("gives the text of a line without its break, Windows breaks included", () => {
    expect([1, 2, 3, 4, 5].map((line) => lineText(lines, line))).toEqual(["one", "two", "", "four", ""]);
  });

  it("agrees with counting by hand for every offset of a text", () => {
    const text = "a\n\nbc\r\nd\n";
    for (let offset = 0; offset <= text.length; offset += 1) {
      const before = text.slice(0, offset).split("\n");
      expect(locate(readLines(text), offset)).toEqual({ line: before.length, column: before.at(-1)!.length + 1 });
    }
  });
});
