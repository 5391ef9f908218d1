// House rule: what a command may not need is loaded when it is needed; help and a mistyped command answer at once.
import { expect, test } from "vitest";
import ts from "typescript";
import { readProjectFile } from "./project-files.ts";
import { importsOf, parseSource } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";

/** A file's imports that are carried out when it is loaded: no types, no `import()`. */
function loadedWith(file: SourceFile): readonly string[] {
  const statements = file.tree.statements.filter((statement) => {
    if (ts.isImportDeclaration(statement)) return statement.importClause?.phaseModifier !== ts.SyntaxKind.TypeKeyword;
    return ts.isExportDeclaration(statement) && !statement.isTypeOnly;
  });
  const alone = parseSource(file.path, statements.map((statement) => statement.getText(file.tree)).join("\n"));
  return importsOf(alone).map(({ target, from }) => target ?? from);
}

/** Everything that is loaded with a file of ours, packages by their name. */
function closureOf(first: string): ReadonlySet<string> {
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    if (path.startsWith("src/")) loadedWith(parseSource(path, readProjectFile(path))).forEach(visit);
  };
  visit(first);
  return seen;
}

const heavyIn = (first: string): readonly string[] => [...closureOf(first)].filter((path) => /^src\/\d-/.test(path) || !/^(?:src\/|node:)/.test(path));

test("neither a phase nor a package is loaded with the command line", () => {
  expect(heavyIn("src/cli.ts")).toEqual([]);
  expect(closureOf("src/cli.ts").size).toBeGreaterThan(3);
});

test("nor with the command check, before it is clear what is to be checked", () => {
  expect(heavyIn("src/build/check.ts")).toEqual([]);
});

test("the rule finds a phase behind another file", () => {
  expect(heavyIn("src/build/compute.ts")).toContain("src/4-figures/index.ts");
  expect(loadedWith(parseSource("src/a.ts", 'import type { A } from "./a.ts"; import b from "b"; await import("./c.ts"); export { d } from "./d.ts";'))).toEqual(["b", "src/d.ts"]);
});
