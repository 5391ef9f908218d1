// The commented examples of the pamphlet and of the stab binding read without a problem, hold every key and tell the truth about the defaults.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { buildJsonSchema } from "../../src/1-definition/json-schema.ts";
import { bindingIds } from "../../src/catalogue/bindings.ts";
import type { BindingId } from "../../src/catalogue/bindings.ts";
import { readAny as read } from "./reading.ts";

const bare: Readonly<Record<string, string>> = {
  pamphlet: "book: {sheets: 7, page: {height: 198 mm, width: 131 mm}}",
  "stab-binding": "book: {leaves: 44, leaf: {height: 227 mm, width: 161 mm}}",
};

/** All keys that may stand in this binding's book, as the published schema has them. */
function keysOfBook(id: BindingId): readonly string[] {
  const schema = buildJsonSchema() as { allOf: { then: { properties: Record<string, object> } }[]; definitions: Record<string, object> };
  const keys = new Set<string>();
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    if ("$ref" in node) visit(schema.definitions[String(node.$ref).split("/").at(-1)!]);
    for (const [key, inner] of Object.entries("properties" in node ? (node.properties as Record<string, unknown>) : {})) {
      keys.add(key);
      visit(inner);
    }
  };
  visit(schema.allOf[bindingIds.indexOf(id)]!.then.properties["book"]);
  return [...keys];
}

describe.each(["pamphlet", "stab-binding"] as const)("the commented example of %s", (id) => {
  const example = readFileSync(new URL(`../../examples/${id}.yaml`, import.meta.url), "utf8");
  const { definitions, problems } = read(example);

  it("reads without a problem, its variants included", () => {
    expect(problems).toEqual([]);
    expect(definitions).toHaveLength(3);
    expect(definitions[0]!.author.name).toContain("(invented)");
  });

  it("holds every key of its book, in use or behind a #", () => {
    const keys = keysOfBook(id);
    expect(keys.length).toBeGreaterThan(9);
    expect(keys.filter((key) => !new RegExp(`(?:^|[\\s#{,])${key}:`, "m").test(example))).toEqual([]);
  });

  it("gives for every default the value that leaving the key out has", () => {
    const { definitions: [left] } = read(`benchleaf: 1\nbinding: ${id.replace("-", " ")}\ntitle: T\nsummary: S\nauthor: {name: N}\nunits: mm\n${bare[id]!}\n`);
    expect(definitions[0]!.book).toEqual(left!.book);
  });
});
