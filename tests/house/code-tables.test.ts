// House rule: the tables of codes in DEVELOPERS.md say what the sources say.
import ts from "typescript";
import { expect, test } from "vitest";
import { problemCodes } from "../../src/problems/problem.ts";
import { printProblemTable } from "../../src/problems/problem-table.ts";
import { readProjectFile } from "./project-files.ts";
import { nodesOf, sourceFiles } from "./source-file.ts";

const developers = readProjectFile("DEVELOPERS.md");

/** The text between `<!-- name -->` and the next blank line after the table that follows. */
function tableCalled(name: string): string {
  const start = developers.indexOf(`<!-- ${name} -->\n`);
  expect(start, `DEVELOPERS.md has no table called ${name}`).toBeGreaterThan(-1);
  return developers.slice(start + name.length + 10).split(/\n(?!\|)/)[0]! + "\n";
}

/** Every string literal in an expression: of `a ? "b" : "c"` both. */
function textsIn(expression: ts.Expression): readonly string[] {
  if (ts.isStringLiteral(expression)) return [expression.text];
  if (ts.isConditionalExpression(expression)) return [...textsIn(expression.whenTrue), ...textsIn(expression.whenFalse)];
  return [];
}

function property(object: ts.ObjectLiteralExpression, name: string): ts.Expression | null {
  const found = object.properties.find((each) => ts.isPropertyAssignment(each) && each.name.getText() === name);
  return found && ts.isPropertyAssignment(found) ? found.initializer : null;
}

/** Codes with the severities they come with; where both are chosen by one condition, the first goes with the first. */
function pairsOf(code: ts.Expression, severity: ts.Expression): readonly (readonly [string, readonly string[]])[] {
  const chosenAlike = ts.isConditionalExpression(code) && ts.isConditionalExpression(severity) && code.condition.getText() === severity.condition.getText();
  if (chosenAlike) return [...pairsOf(code.whenTrue, severity.whenTrue), ...pairsOf(code.whenFalse, severity.whenFalse)];
  return textsIn(code).map((each) => [each, textsIn(severity)]);
}

/** Finding codes with their severities, as the sources make them. */
function findingsInSources(): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const object of [...sourceFiles("src/2-model/"), ...sourceFiles("src/3-plan/")].flatMap(nodesOf).filter(ts.isObjectLiteralExpression)) {
    const code = property(object, "code");
    const severity = property(object, "severity");
    if (!code || !severity || !property(object, "consequence")) continue;
    for (const [each, severities] of pairsOf(code, severity)) found.set(each, new Set([...(found.get(each) ?? []), ...severities]));
  }
  return found;
}

test("the table of problem codes in DEVELOPERS.md is the one that the sources print", () => {
  expect(tableCalled("problem codes")).toBe(printProblemTable());
});

test("the table of finding codes in DEVELOPERS.md names every finding with its severities, and no other", () => {
  const rows = [...tableCalled("finding codes").matchAll(/^\| `([a-z-]+)` \| ([a-z, ]+) \| (.+) \| (.+) \|$/gm)];
  const inTable = Object.fromEntries(rows.map((row) => [row[1]!, row[2]!.split(", ").sort()]));
  const inSources = Object.fromEntries([...findingsInSources()].map(([code, severities]) => [code, [...severities].sort()]));
  expect(inTable).toEqual(inSources);
});

test("no finding has the code of a problem", () => {
  expect([...findingsInSources().keys()].filter((code) => (problemCodes as readonly string[]).includes(code))).toEqual([]);
});
