// House rule: named exports, no `any`, no syntax that has to be compiled away, and `.ts` in relative imports.
import ts from "typescript";
import { expect, test } from "vitest";
import { importsOf, nodesOf, parseSource, placeIn, sourceFiles } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";

function breachesIn(file: SourceFile): readonly string[] {
  const syntax = nodesOf(file).flatMap((node) => {
    const why = breachOf(node);
    return why === null ? [] : [`${placeIn(file, node)}: ${why}`];
  });
  const imports = importsOf(file).filter(({ from, target, at }) => target !== null && !/\.(?:ts|json)$/.test(from) && !isDynamic(file, at)).map(({ from, at }) => `${at}: ${from} is imported without its ending`);
  return [...syntax, ...imports];
}

/** The start of a template literal carries no ending; the files of bindings are loaded so. */
function isDynamic(file: SourceFile, at: string): boolean {
  const line = file.text.split("\n")[Number(at.slice(at.lastIndexOf(":") + 1)) - 1] ?? "";
  return /import\((?:\/\*.*?\*\/ ?)?`[^`]*\.ts`\)/.test(line);
}

function breachOf(node: ts.Node): string | null {
  if (node.kind === ts.SyntaxKind.AnyKeyword) return "any says nothing";
  if (ts.isExportAssignment(node)) return "a default export has no name";
  if (ts.canHaveModifiers(node) && ts.getModifiers(node)?.some((modifier) => modifier.kind === ts.SyntaxKind.DefaultKeyword)) return "a default export has no name";
  if (ts.isExportDeclaration(node) && !node.exportClause) return "export * hides what is exported";
  if (ts.isEnumDeclaration(node)) return "an enum has to be compiled away";
  if (ts.isModuleDeclaration(node) && !ts.isStringLiteral(node.name)) return "a namespace has to be compiled away";
  if (ts.isParameter(node) && ts.getModifiers(node)?.length) return "a parameter property has to be compiled away";
  return null;
}

test("sources and tests keep to named exports, erasable syntax, endings in imports and no any", () => {
  expect([...sourceFiles("src/"), ...sourceFiles("tests/")].flatMap(breachesIn)).toEqual([]);
});

test("the rule finds each breach", () => {
  const sample = (text: string): readonly string[] => breachesIn(parseSource("src/a.ts", text));
  for (const text of [
    "const a: any = 1;", "export default 1;", "export default function a() {}", 'export * from "./a.ts";', "enum A { b }", "namespace A { export const b = 1; }",
    "class A { constructor(private readonly b: number) {} }", 'import { a } from "./a.js";', 'import { a } from "./a";',
  ]) expect(sample(text), text).toHaveLength(1);
  expect(sample('import { a } from "./a.ts"; export { a }; await import(`./${a}.ts`); declare module "./types.ts" { interface B {} }')).toEqual([]);
});
