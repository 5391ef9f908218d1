// The published JSON Schema is current, accepts the commented example, and refuses what authors most often get wrong.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { buildJsonSchema, printJsonSchema } from "../../src/1-definition/json-schema.ts";
import { bindingIds } from "../../src/catalogue/bindings.ts";
import { sound } from "./reading.ts";
import { faultsBySchema } from "./schema-check.ts";

const schema = buildJsonSchema();
const committed = readFileSync(new URL("../../schema/project.schema.json", import.meta.url), "utf8");
const example = readFileSync(new URL("../../examples/stub-album.yaml", import.meta.url), "utf8");
const faults = (text: string): readonly string[] => faultsBySchema(schema, parse(text));

/** Every schema within the schema, with the key it stands under. */
function* schemasIn(node: unknown, key = ""): Generator<{ readonly key: string; readonly schema: Record<string, unknown> }> {
  if (Array.isArray(node)) for (const item of node) yield* schemasIn(item, key);
  if (typeof node !== "object" || node === null || Array.isArray(node)) return;
  yield { key, schema: node as Record<string, unknown> };
  for (const [inner, value] of Object.entries(node)) if (inner !== "examples" && inner !== "enum") yield* schemasIn(value, inner);
}

describe("the published JSON Schema", () => {
  it("is what npm run schema would write now", () => {
    expect(committed).toBe(printJsonSchema(schema));
  });

  it("branches on the binding, once for each binding there is", () => {
    expect(schema["allOf"]).toHaveLength(bindingIds.length);
  });

  it("describes every key, and ends each description with a full stop", () => {
    const definitions = schema["definitions"] as Record<string, { description?: string }>;
    for (const { schema: { properties } } of schemasIn(schema)) {
      for (const [key, property] of Object.entries((properties ?? {}) as Record<string, { $ref?: string; description?: string; anyOf?: { $ref?: string; description?: string }[] }>)) {
        // The condition of a branch describes nothing.
        if (key === "binding" && property.description === undefined && "enum" in property) continue;
        const form = property.description === undefined && property.anyOf ? property.anyOf[0]! : property;
        const described = form.$ref ? definitions[form.$ref.split("/").at(-1)!]! : form;
        const isLeftToTheVariant = Object.keys(form).length === 0;
        if (!isLeftToTheVariant) expect(`${key}: ${described.description}`).toMatch(/: [A-Z].*\.$/);
      }
    }
  });

  it("gives examples that it accepts itself", () => {
    for (const { schema: inner } of schemasIn(schema)) {
      for (const given of (inner["examples"] ?? []) as unknown[]) expect(faultsBySchema(inner, given, schema)).toEqual([]);
    }
  });

  it("accepts the commented example and the smallest sound definition", () => {
    expect(faults(example)).toEqual([]);
    expect(faults(sound)).toEqual([]);
  });

  it("accepts lengths in every way of writing that is read", () => {
    for (const written of ["247", "24.7", "9 3/4 in", "9¾\"", ".5 in", "½ in", "24.7cm", "'1/8 inch'", "¼\""]) expect(faults(`${sound}  ribbon tie: ${written}\n`)).toEqual([]);
  });

  const mistakes: Readonly<Record<string, string>> = {
    "a missing title": sound.replace("title: Invented album\n", ""),
    "a missing book": sound.slice(0, sound.indexOf("book:")),
    "another format version": sound.replace("benchleaf: 1", "benchleaf: 2"),
    "an unknown binding": sound.replace("stub album", "stab album"),
    "another unit": sound.replace("units: mm", "units: cm"),
    "an unknown key at the top": `${sound}colour: red\n`,
    "an unknown key of the book": `${sound}  overhang: 3 mm\n`,
    "a key in capitals": sound.replace("stubs: 7", "Stubs: 7"),
    "no stubs": sound.replace("stubs: 7", "stubs: 0"),
    "half a stub": sound.replace("stubs: 7", "stubs: 7.5"),
    "a negative length": `${sound}  spine: -4\n`,
    "a length in words": `${sound}  spine: four\n`,
    "margin and spine together": `${sound}  spine: 60 mm\n  margin: 10 mm\n`,
    "a switch that is neither yes nor no": `${sound}  lining: maybe\n`,
    "an unknown step": `${sound}steps: {sew sections: {tip: a}}\n`,
    "a step after an unknown one": `${sound}add steps: [{title: a, after: b, text: c, minutes: 5}]\n`,
    "a picture without its text": `${sound}steps: {fold card: {picture: {file: a.jpg}}}\n`,
    "a picture of another kind": `${sound}steps: {fold-card: {picture: {file: a.tiff, alt: a}}}\n`,
    "a picture on the web": `${sound}steps: {fold-card: {picture: {file: "https://example.org/a.jpg", alt: a}}}\n`,
    "an unknown paper": `${sound}print: {paper: [a4, a3]}\n`,
    "a variant without a name": `${sound}variants: [{book: {stubs: 4}}]\n`,
    "a variant of another binding": `${sound}variants: [{name: a, binding: stub album}]\n`,
    "a bad size in a variant": `${sound}variants: [{name: a, book: {stubs: 0}}]\n`,
    "a thickness for the posts": `${sound}materials: {posts: {thickness: 3 mm}}\n`,
  };
  for (const [mistake, text] of Object.entries(mistakes)) {
    it(`refuses ${mistake}`, () => {
      expect(faults(text)).not.toEqual([]);
    });
  }
});
