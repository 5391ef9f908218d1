// House rule: leaves and phases 1 to 4 are pure; they must run in a reader's browser and give the same result everywhere.
import { expect, test } from "vitest";
import ts from "typescript";
import { importsOf, nodesOf, parseSource, placeIn, sourceFiles } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";

const pureRooms = ["units", "geometry", "problems", "catalogue", "1-definition", "2-model", "3-plan", "4-figures"];

/** Packages that a pure room may use: both read text and nothing else. */
const packages: Readonly<Record<string, readonly string[]>> = { "1-definition": ["yaml", "zod"] };

/** Names that reach the computer, the clock, the network, chance or a console. */
const impureNames = new Set([
  "process", "Buffer", "Date", "performance", "fetch", "XMLHttpRequest", "WebSocket", "setTimeout", "setInterval", "setImmediate", "crypto",
  "require", "__dirname", "__filename", "globalThis", "localStorage", "navigator", "console", "Intl",
]);

/** Members that give another result by chance or by the language of the computer. */
const impureMembers = new Set(["random", "localeCompare", "toLocaleString", "toLocaleLowerCase", "toLocaleUpperCase"]);

function breachesIn(file: SourceFile): readonly string[] {
  const room = file.path.split("/")[1] ?? "";
  const imports = importsOf(file).filter(({ target, from }) => target === null && !(packages[room] ?? []).includes(from)).map(({ from, at }) => `${at}: ${room} may not import ${from}`);
  const names = nodesOf(file).flatMap((node) => {
    if (ts.isMetaProperty(node)) return [`${placeIn(file, node)}: import.meta is not known in every place a pure room runs in`];
    if (!ts.isIdentifier(node)) return [];
    const isMember = ts.isPropertyAccessExpression(node.parent) && node.parent.name === node;
    if (isMember) return impureMembers.has(node.text) ? [`${placeIn(file, node)}: ${node.text} is not the same everywhere`] : [];
    const isKey = (ts.isPropertyAssignment(node.parent) || ts.isPropertySignature(node.parent)) && node.parent.name === node;
    return impureNames.has(node.text) && !isKey ? [`${placeIn(file, node)}: ${node.text} is not pure`] : [];
  });
  return [...imports, ...names];
}

test("the leaves and phases 1 to 4 use no files, clock, network, chance, environment, console or language of the computer", () => {
  expect(pureRooms.flatMap((room) => sourceFiles(`src/${room}/`)).flatMap(breachesIn)).toEqual([]);
});

test("the rule finds each kind of impurity", () => {
  const sample = (text: string): readonly string[] => breachesIn(parseSource("src/3-plan/a.ts", text));
  for (const impure of [
    'import { readFileSync } from "node:fs";', 'import path from "path";', 'import { z } from "zod";', "const now = Date.now();", "new Date();", "Math.random();",
    "process.env.HOME;", "performance.now();", 'await fetch("x");', "setTimeout(() => 1);", "crypto.randomUUID();", "import.meta.url;", "console.log(1);",
    'a.localeCompare("b");', "(1).toLocaleString();",
  ]) expect(sample(impure), impure).not.toEqual([]);
  expect(sample("const times = { Date: 1, process: 2 }; import { mm } from \"../units/length.ts\"; times.process;")).toEqual([]);
});
