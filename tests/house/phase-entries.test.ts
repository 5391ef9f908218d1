// House rule: one function and one product per phase; the few further functions in an index.ts are listed here with their reason.
import { expect, test } from "vitest";
import { exportsOf, parseSource } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";
import { projectFiles, readProjectFile } from "./project-files.ts";

const entries: Readonly<Record<string, { readonly entry: string; readonly further: Readonly<Record<string, string>> }>> = {
  "1-definition": { entry: "readDefinition", further: {} },
  "2-model": { entry: "buildModel", further: {} },
  "3-plan": { entry: "makePlan", further: {} },
  "4-figures": { entry: "drawFigures", further: { drawingInput: "tests draw one figure alone from the same input" } },
  "5-pages": { entry: "renderPages", further: {} },
  "6-print": { entry: "printPages", further: {} },
};

function valuesOf(file: SourceFile): readonly string[] {
  return exportsOf(file).filter((each) => each.kind !== "type").map((each) => each.name);
}

for (const [phase, { entry, further }] of Object.entries(entries)) {
  test(`src/${phase}/index.ts exports ${entry} and nothing else that runs, but for what is listed`, () => {
    const path = `src/${phase}/index.ts`;
    expect([...valuesOf(parseSource(path, readProjectFile(path)))].sort()).toEqual([entry, ...Object.keys(further)].sort());
  });
}

test("no folder below src but a phase has an index.ts", () => {
  const indexes = projectFiles().filter((path) => /^src\/.*\/index\.ts$/.test(path));
  expect(indexes).toEqual(Object.keys(entries).map((phase) => `src/${phase}/index.ts`));
});
