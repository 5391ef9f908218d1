// Problems as an author reads them.
import { describe, expect, it } from "vitest";
import { printProblems, sortProblems } from "../../src/problems/print-problem.ts";
import type { Problem } from "../../src/problems/problem.ts";

const file = "content/x/project.yaml";

function problemAt(text: string, words: string, more: Partial<Problem> = {}): Problem {
  const start = text.indexOf(words);
  return { code: "value-range", severity: "error", message: "spine is 4 mm", hint: "give more", place: { file, span: { start, end: start + words.length } }, ...more };
}

function print(text: string, ...problems: readonly Problem[]): string {
  return printProblems(problems, new Map([[file, text]]));
}

/** The text above the carets: what an author sees marked. */
function markedIn(printed: string): string {
  const [source, carets] = printed.split("\n").slice(1, 3);
  const cells = [...new Intl.Segmenter("en", { granularity: "grapheme" }).segment(source!)].map(({ segment }) => segment);
  const columns = cells.flatMap((cell) => (/[\u3000-\u9fff]|\p{Extended_Pictographic}/u.test(cell) ? [cell, ""] : [cell]));
  return columns.filter((_, index) => carets![index] === "^").join("");
}

describe("printed problems", () => {
  it("show place, message, code, the source line, carets under the exact span, and the hint", () => {
    const text = "book:\n  spine: 4 mm\n";
    expect(print(text, problemAt(text, "4 mm"))).toBe(
      "content/x/project.yaml:2:10: error: spine is 4 mm [value-range]\n    2 |   spine: 4 mm\n      |          ^^^^\n  hint: give more\n\n1 error in 1 file\n",
    );
  });

  it("are nothing when there is no problem", () => {
    expect(printProblems([], new Map())).toBe("");
  });

  it("leave the line out when a whole file is meant or its text is not at hand", () => {
    const whole = problemAt("", "", { place: { file, span: null } });
    expect(print("a: b", whole)).toBe("content/x/project.yaml: error: spine is 4 mm [value-range]\n  hint: give more\n\n1 error in 1 file\n");
    expect(printProblems([problemAt("a: b", "b")], new Map())).toBe("content/x/project.yaml: error: spine is 4 mm [value-range]\n  hint: give more\n\n1 error in 1 file\n");
  });

  it("leave the hint out when it is empty", () => {
    expect(print("a: b", problemAt("a: b", "b", { hint: "" }))).not.toContain("hint");
  });

  it("are sorted by file and position, whatever the order they were found in", () => {
    const at = (name: string, start: number | null): Problem => problemAt("", "", { message: `${name} ${start}`, place: { file: name, span: start === null ? null : { start, end: start } } });
    const mixed = [at("b", 3), at("a", 9), at("b", null), at("a", 2)];
    expect(sortProblems(mixed).map((problem) => problem.message)).toEqual(["a 2", "a 9", "b null", "b 3"]);
    expect(sortProblems([...mixed].reverse())).toEqual(sortProblems(mixed));
  });

  it("are counted by severity and file", () => {
    const text = "a: b";
    const warning = problemAt(text, "a", { severity: "warning" });
    const count = (...problems: readonly Problem[]): string => print(text, ...problems).trimEnd().split("\n").at(-1)!;
    expect(count(warning)).toBe("1 warning in 1 file");
    expect(count(problemAt(text, "b"), problemAt(text, "a"), warning)).toBe("2 errors and 1 warning in 1 file");
    expect(count(problemAt(text, "b"), problemAt(text, "b", { place: { file: "other", span: null } }))).toBe("2 errors in 2 files");
  });

  it("keep carets in place behind tabs, which are shown as blanks", () => {
    const text = "\tspine:\t4 mm";
    const printed = print(text, problemAt(text, "4 mm"));
    expect(printed).not.toContain("\t");
    expect(markedIn(printed)).toBe("4 mm");
  });

  it("keep carets in place behind and under wide characters, emoji and combining marks", () => {
    for (const text of ["絹: 十ミリ # x", "🧵🪡: 十ミリ", "e\u0301\u0301a: 4 mm"]) {
      const value = text.includes("4 mm") ? "4 mm" : "十ミリ";
      expect(markedIn(print(text, problemAt(text, value)))).toBe(value);
    }
  });

  it("cut long lines to a window around the span and mark the cuts", () => {
    const text = `${"before ".repeat(60)}HERE${" after".repeat(60)}`;
    const printed = print(text, problemAt(text, "HERE"));
    expect(printed.split("\n")[1]!.length).toBeLessThan(112);
    expect(printed.split("\n")[1]).toMatch(/\| ….*…$/);
    expect(markedIn(printed)).toBe("HERE");
  });

  it("show the start of a long span and stay within the window", () => {
    const text = `key: ${"long ".repeat(100)}`;
    const printed = print(text, problemAt(text, "long ".repeat(100).trimEnd()));
    expect(printed.split("\n")[2]!.length).toBeLessThan(112);
    expect(markedIn(printed)).toMatch(/^long long/);
  });

  it("mark a span over several lines to the end of its first", () => {
    const text = "a: b\nc: d\n";
    expect(markedIn(print(text, problemAt(text, "b\nc: d")))).toBe("b");
  });

  it("set one caret for an empty span, also behind the last character", () => {
    const text = "a: b";
    const at = (start: number): string => print(text, problemAt("", "", { place: { file, span: { start, end: start } } })).split("\n")[2]!;
    expect(at(0)).toBe("      | ^");
    expect(at(4)).toBe("      |     ^");
  });

  it("never let a control character or a direction mark reach the terminal", () => {
    const text = "a: \u001b[31mred\u0007\u202e\u0085";
    const printed = print(text, problemAt(text, "red"));
    expect(printed).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/u);
    expect(markedIn(printed)).toBe("red");
  });

  it("read Windows line ends without showing them", () => {
    const text = "a: b\r\nc: d\r\n";
    expect(print(text, problemAt(text, "d"))).toContain(":2:4: error");
    expect(print(text, problemAt(text, "b\r\n")).split("\n")[1]).toBe("    1 | a: b");
  });
});
