// House rule: every definition in README.md can be built as it stands, and every key, limit and default in its tables is the true one.
import { parse, stringify } from "yaml";
import { expect, test } from "vitest";
import { bindingDefinition } from "../../src/1-definition/stub-album.ts";
import { readDefinition } from "../../src/1-definition/index.ts";
import type { DefinitionResult } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { printProblems } from "../../src/problems/print-problem.ts";
import { lineOf, readProjectFile } from "./project-files.ts";

const readme = readProjectFile("README.md");
const blocks = [...readme.matchAll(/^```yaml\n([\s\S]*?)^```/gm)].map((match) => ({ text: match[1]!, line: lineOf(readme, match.index) }));
const whole = blocks.filter((block) => /^benchleaf:/m.test(block.text));
const fragments = blocks.filter((block) => !/^benchleaf:/m.test(block.text));

function read(text: string): DefinitionResult {
  const files = new Set([...text.matchAll(/\bfile: (pictures\/[\w.-]+)/g)].map((match) => match[1]!));
  return readDefinition({ project: "letters", file: "content/letters/project.yaml", bytes: new TextEncoder().encode(text), files, prose: new Map() });
}

/** Everything that is wrong with a definition up to its plan, as an author would read it. */
function problemsOf(text: string): string {
  const { definitions, problems, texts } = read(text);
  const later = definitions.flatMap((definition) => {
    const { model, problems: impossible } = buildModel(definition);
    return impossible.length > 0 ? impossible : makePlan(definition, model).problems;
  });
  return printProblems([...problems, ...later], texts);
}

type Keys = { readonly [key: string]: unknown };

/** A fragment laid over a whole definition, key by key; a key that excludes another one takes its place. */
function layOver(below: Keys, over: Keys): Keys {
  const result: Record<string, unknown> = { ...below };
  for (const [key, value] of Object.entries(over)) {
    const known = result[key];
    result[key] = isMapping(known) && isMapping(value) ? layOver(known, value) : value;
  }
  return result;
}

function isMapping(value: unknown): value is Keys {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

test("README.md shows whole definitions in both units, and fragments", () => {
  expect(whole.map((block) => read(block.text).definitions[0]?.units.governing).sort()).toEqual(["in", "mm"]);
  expect(fragments.length).toBeGreaterThan(5);
});

for (const { text, line } of whole) {
  test(`the definition in README.md at line ${line} can be built as it stands`, () => {
    expect(problemsOf(text)).toBe("");
    expect(read(text).definitions.length).toBeGreaterThan(0);
  });
}

for (const { text, line } of fragments) {
  test(`the fragment in README.md at line ${line} can be built within the first definition`, () => {
    expect(problemsOf(stringify(layOver(parse(whole[0]!.text) as Keys, parse(text) as Keys)))).toBe("");
  });
}

test("the problem that README.md explains is printed as shown", () => {
  const shown = /^```text\n(content\/letters\/project\.yaml[\s\S]*?)^```/m.exec(readme)![1]!;
  expect(problemsOf(whole[0]!.text.replace("boards:", "bords:"))).toBe(shown);
});

test("every named value that README.md shows can be used in prose", () => {
  const names = [...readme.replace(/```[\s\S]*?```/g, "").matchAll(/`(\{[a-z][a-z .-]*\})`/g)].map((match) => match[1]!).filter((name) => name !== "{named values}");
  expect(names.length).toBeGreaterThan(8);
  const text = `${whole[0]!.text}\nadd steps:\n  - {title: Names, after: finish, minutes: 1, text: "${names.join(" ")}"}\n`;
  expect(problemsOf(text)).toBe("");
});

test("README.md lists the steps of a stub album as they are named and ordered in the plan", () => {
  const listed = /<!-- steps of a stub album -->\n([\s\S]*?)\n\n/.exec(readme)![1]!.match(/`([a-z ]+)`/g)!.map((name) => name.slice(1, -1).replaceAll(" ", "-"));
  const [definition] = read(whole[0]!.text).definitions;
  expect(listed).toEqual(makePlan(definition!, buildModel(definition!).model).plan.steps.map((step) => step.id));
  expect([...listed].sort()).toEqual([...bindingDefinition.steps].sort());
});
