// House rule: the first line of every source file says in a sentence what the file is for.
import { expect, test } from "vitest";
import { projectFiles, readProjectFile } from "./project-files.ts";

const isSource = /\.(?:ts|js|cjs|mjs)$/;

function breachIn(file: string, text: string): readonly string[] {
  const first = text.split("\n", 1)[0]!;
  return /^\/\/ \S.{10,}[.)]$/.test(first) && first.endsWith(".") ? [] : [`${file}:1: the first line is no sentence of a comment: ${first.slice(0, 60)}`];
}

test("every source file begins with a one-line comment that ends in a full stop", () => {
  expect(projectFiles().filter((file) => isSource.test(file)).flatMap((file) => breachIn(file, readProjectFile(file)))).toEqual([]);
});

test("the rule finds a missing head, a block comment and a head without a full stop", () => {
  for (const text of ['import a from "a";', "/* Reads things. */", "// Reads things from the file", "//", "// Short."]) expect(breachIn("a.ts", text), text).toHaveLength(1);
  expect(breachIn("a.ts", "// Reads things from the file.\nimport")).toEqual([]);
});
