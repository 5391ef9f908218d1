// House rule: everything that is shown as an example is invented and says so.
import { parseDocument } from "yaml";
import { expect, test } from "vitest";
import { projectFiles, readProjectFile } from "./project-files.ts";

const definitions = projectFiles().filter((file) => /^(?:content\/[^/]+\/project|examples\/[^/]+)\.yaml$/.test(file));

test("there are demo projects and examples", () => {
  expect(definitions.some((file) => file.startsWith("content/"))).toBe(true);
  expect(definitions.some((file) => file.startsWith("examples/"))).toBe(true);
});

for (const file of definitions) {
  test(`${file} says that it is invented, in a comment at its head and beside the people it names`, () => {
    const text = readProjectFile(file);
    const head = text.split("\n").filter((line) => line.startsWith("#")).slice(0, 6).join("\n");
    expect(head).toMatch(/\binvented\b/i);
    const { author } = parseDocument(text).toJS() as { readonly author: { readonly name: string; readonly workshop?: string } };
    expect(`${author.name} ${author.workshop ?? ""}`).toMatch(/\(invented\)/);
  });

  test(`${file} begins with the line by which an editor finds the schema`, () => {
    const depth = "../".repeat(file.split("/").length - 1);
    expect(readProjectFile(file).split("\n", 1)[0]).toBe(`# yaml-language-server: $schema=${depth}schema/project.schema.json`);
  });
}

test("README.md says that its example is invented", () => {
  expect(readProjectFile("README.md")).toMatch(/\binvented\b/i);
});
