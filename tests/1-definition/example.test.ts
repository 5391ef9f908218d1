// The commented example reads without a problem, holds every key there is, and tells the truth about the defaults.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildJsonSchema } from "../../src/1-definition/json-schema.ts";
import type { Definition } from "../../src/1-definition/types.ts";
import { read } from "./reading.ts";

const example = readFileSync(new URL("../../examples/stub-album.yaml", import.meta.url), "utf8");

/** The same album with nothing written but what is required and what makes it this album. */
const bare = `benchleaf: 1
binding: stub album
title: T
summary: S
author: {name: N}
units: mm
book: {stubs: 9, boards: {height: 237 mm, width: 183 mm}}
`;

function keysOfBook(): readonly string[] {
  const schema = buildJsonSchema() as { allOf: { then: { properties: Record<string, object> } }[]; properties: object; definitions: Record<string, object> };
  const keys = new Set(Object.keys(schema.properties));
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    if ("$ref" in node) visit(schema.definitions[String(node.$ref).split("/").at(-1)!]);
    const properties = "properties" in node ? (node.properties as Record<string, unknown>) : {};
    for (const [key, inner] of Object.entries(properties)) {
      keys.add(key);
      visit(inner);
    }
    if ("anyOf" in node) for (const inner of node.anyOf as unknown[]) visit(inner);
    if ("items" in node) visit(node.items);
  };
  for (const [key, section] of Object.entries(schema.allOf[0]!.then.properties)) if (key !== "steps" && key !== "variants") visit(section);
  visit({ properties: { units: (schema.properties as { units: object }).units, author: (schema.properties as { author: object }).author, bench: (schema.properties as { bench: object }).bench, tools: (schema.properties as { tools: object }).tools } });
  return [...keys];
}

describe("the commented example of the stub album", () => {
  const { definitions, problems } = read(example, { files: ["pictures/fold.jpg", "pictures/sign.jpg"] });

  it("reads without a problem, its variants included", () => {
    expect(problems).toEqual([]);
    expect(definitions.map((definition) => definition.project)).toEqual(["invented", "invented-pocket", "invented-in-inches"]);
  });

  it("says that it is invented", () => {
    expect(definitions[0]!.author.name).toContain("(invented)");
    expect(example.slice(0, 300)).toContain("Invented throughout");
  });

  it("holds every key, in use or behind a #", () => {
    const missing = keysOfBook().filter((key) => !new RegExp(`(?:^|[\\s#{,])${key}:`, "m").test(example));
    expect(missing).toEqual([]);
  });

  it("explains every key of its own line", () => {
    const lines = example.split("\n").slice(7).filter((line) => /^ *#?[a-z][a-z -]*: /.test(line) && !/^(?:title|benchleaf):/.test(line));
    const section = /^ {2}(?:card|#card|strip board|boards|cloth|page paper|lining paper|hinge tape|ribbon|posts|#?floor): |^ {4}(?:tip|after|text|minutes|book|units|print): |^ *name: |^ {2}workshop|^summary/;
    expect(lines.filter((line) => !section.test(line) && !/ # /.test(line))).toEqual([]);
  });

  it("gives for every default the value that leaving the key out has", () => {
    const written = definitions[0]!;
    const { definitions: [left] } = read(bare);
    const compared = ({ book, materials, measured, adhesives, bench, tools, units, level, language, revision, print }: Definition): object => ({ book, adhesives, measured, bench, tools, units, level, language, revision, print, materials: Object.fromEntries(Object.entries(materials).map(([role, { thicknessFrom: _, ...rest }]) => [role, rest])) });
    expect(compared(written)).toEqual(compared(left!));
    expect([...left!.defaulted].length).toBeGreaterThan(40);
  });

  it("still reads when every key behind a # is put to use in place of the one it replaces", () => {
    const inUse = example
      .replace(/^ {2}margin: .*\n/m, "").replace(/^ {2}card: .*\n/m, "").replace(/^ {2}#card: \{grammage: 110.*\n/m, "").replace(/^ {2}floor: .*\n/m, "").replace(/^ {4}grid: .*\n/m, "")
      .split("\n").map((line) => (line.includes("caution: …") ? "" : line.replace(/^( +)#(?=[a-z])/, "$1"))).join("\n");
    const result = read(inUse, { files: ["pictures/fold.jpg", "pictures/sign.jpg"] });
    expect(result.problems).toEqual([]);
    expect(result.definitions[0]!.book["joint gap"]).not.toBeNull();
    expect(result.definitions[0]!.stepChanges[0]!.minutes).toBe(25);
  });
});
