// House rule: every name that a source file exports says above itself what it means.
import { expect, test } from "vitest";
import { exportsOf, parseSource, sourceFiles } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";

/** What a binding's file exports is explained once, in the file of its phase that gives the type it satisfies. */
const explainedByItsType = /^src\/\d-[a-z]+\/[a-z-]+\.ts (?:bindingDefinition|build|plan|drawings)$/;

/** The one figure or template of a file is described by the file's first line; a comment could only repeat it. */
function isTheDrawingOfItsFile(file: SourceFile, name: string): boolean {
  const drawings = exportsOf(file).filter((each) => /^(?:draw|draft)[A-Z]/.test(each.name));
  return /^src\/4-figures\/[a-z-]+\//.test(file.path) && drawings.length === 1 && drawings[0]!.name === name;
}

function breachesIn(file: SourceFile): readonly string[] {
  return exportsOf(file).filter(({ name, hasDocComment }) => !hasDocComment && !explainedByItsType.test(`${file.path} ${name}`) && !isTheDrawingOfItsFile(file, name)).map(({ name, at }) => `${at}: ${name} has no doc comment`);
}

test("every exported name under src has a doc comment", () => {
  expect(sourceFiles("src/").flatMap(breachesIn)).toEqual([]);
});

test("the rule finds functions, values and types without a comment, and a comment without words", () => {
  const sample = (text: string): readonly string[] => breachesIn(parseSource("src/a.ts", text));
  expect(sample("export function a() {}\nexport const b = 1;\nexport interface C {}\nexport type D = 1;")).toHaveLength(4);
  expect(sample("/** */\nexport const a = 1;")).toEqual(["src/a.ts:2: a has no doc comment"]);
  expect(sample("// one line\nexport const a = 1;")).toHaveLength(1);
  expect(sample("/** One. */\nexport const a = 1;\nconst b = 2;\nexport { b };")).toEqual([]);
});
