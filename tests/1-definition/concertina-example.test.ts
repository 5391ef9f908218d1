// The commented example of the concertina reads without a problem, names every key there is, and tells the truth about the defaults.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { buildJsonSchema } from "../../src/1-definition/json-schema.ts";
import type { Definition } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { bindingIds } from "../../src/catalogue/bindings.ts";
import { readAny } from "./reading.ts";
import { faultsBySchema } from "./schema-check.ts";

const example = readFileSync(new URL("../../examples/concertina.yaml", import.meta.url), "utf8");

/** The same book with nothing written but what is required and what makes it this book. */
const bare = `benchleaf: 1
binding: concertina
title: T
summary: S
author: {name: N}
units: mm
book: {panels: 12, panel: {height: 163 mm, width: 97 mm}}
`;

/** Keys of the sections that are the concertina's own. */
function ownKeys(): readonly string[] {
  const schema = buildJsonSchema() as { allOf: { then: { properties: Record<string, object> } }[]; definitions: Record<string, object> };
  const keys = new Set<string>();
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    if ("$ref" in node) visit(schema.definitions[String(node.$ref).split("/").at(-1)!]);
    for (const [key, inner] of Object.entries("properties" in node ? (node.properties as Record<string, unknown>) : {})) {
      keys.add(key);
      visit(inner);
    }
    if ("anyOf" in node) for (const inner of node.anyOf as unknown[]) visit(inner);
    if ("items" in node) visit(node.items);
  };
  const branch = schema.allOf[bindingIds.indexOf("concertina")]!.then.properties;
  for (const section of ["book", "materials", "measured", "adhesives"]) visit(branch[section]);
  return [...keys];
}

describe("the commented example of the concertina", () => {
  const { definitions, problems } = readAny(example);

  it("reads without a problem, its variants included, can be made, and suits the published schema", () => {
    expect(problems).toEqual([]);
    expect(definitions.map((definition) => definition.project)).toEqual(["invented", "invented-pocket", "invented-in-inches"]);
    for (const definition of definitions) expect(buildModel(definition).problems).toEqual([]);
    expect(faultsBySchema(buildJsonSchema(), parse(example))).toEqual([]);
  });

  it("names every key of its own sections, in use or behind a #", () => {
    const keys = ownKeys();
    expect(keys.length).toBeGreaterThan(35);
    expect(keys.filter((key) => !new RegExp(`(^|[{ #,])${key}:`, "m").test(example))).toEqual([]);
  });

  it("gives for every default the value that leaving the key out has", () => {
    const [left] = readAny(bare).definitions;
    const compared = ({ book, materials, measured, adhesives, bench, tools, units, level, language, revision, print }: Definition): object => ({ book, adhesives, measured, bench, tools, units, level, language, revision, print, materials: Object.fromEntries(Object.entries(materials).map(([role, { thicknessFrom: _, ...rest }]) => [role, rest])) });
    expect(compared(definitions[0]!)).toEqual(compared(left!));
  });
});

describe("a concertina's definition", () => {
  const marked = (text: string): readonly string[] => readAny(text).problems.map(({ code, message }) => `${code}: ${message}`);
  it.each([
    ["panels: 12", "panels: 1", /value-range/], ["panels: 12", "panels: 61", /value-range/], ["width: 97 mm", "width: 20 mm", /length-range/],
    ["panel: {height: 163 mm, width: 97 mm}", "panel: {height: 163 mm}", /key-missing/], ["panels: 12", "panels: 12, stubs: 3", /key-unknown/],
    ["panels: 12", "panels: 12, folding: origami", /value-unknown/], ["panels: 12", "panels: 12, covering: leather", /value-unknown/],
  ])("with %s written as %s is a problem", (sound, wrong, expected) => {
    expect(marked(bare)).toEqual([]);
    expect(marked(bare.replace(sound, wrong)).join("\n")).toMatch(expected);
  });
});
