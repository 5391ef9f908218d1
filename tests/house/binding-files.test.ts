// House rule: a binding is the same file name in each phase, and nothing outside its own files knows its name.
import { expect, test } from "vitest";
import { bindingIds, bindings } from "../../src/catalogue/bindings.ts";
import { isThere, lineOf, projectFiles, readProjectFile } from "./project-files.ts";
import { exportsOf, parseSource } from "./source-file.ts";

/** What a binding's file exports in each phase. */
const expected: Readonly<Record<string, string>> = { "1-definition": "bindingDefinition", "2-model": "build", "3-plan": "plan", "4-figures": "drawings" };

for (const id of bindingIds) {
  test(`${id} has its file in phases 1 to 4 with the expected export, and a commented example`, () => {
    const breaches = Object.entries(expected).flatMap(([phase, name]) => {
      const path = `src/${phase}/${id}.ts`;
      if (!isThere(path)) return [`${path} is missing`];
      const names = exportsOf(parseSource(path, readProjectFile(path))).filter((each) => each.kind !== "type").map((each) => each.name);
      return names.length === 1 && names[0] === name ? [] : [`${path} exports ${names.join(", ")} in place of ${name} alone`];
    });
    expect([...breaches, ...(isThere(`examples/${id}.yaml`) ? [] : [`examples/${id}.yaml is missing`])]).toEqual([]);
  });

  test(`${id} is named in src only by its own files and by its line in the catalogue`, () => {
    const pascal = id.split("-").map((word) => word[0]!.toUpperCase() + word.slice(1)).join("");
    const camel = pascal[0]!.toLowerCase() + pascal.slice(1);
    const names = new RegExp([id, bindings[id].name, pascal, camel].join("|"), "g");
    const isOwn = (file: string): boolean => Object.keys(expected).some((phase) => file === `src/${phase}/${id}.ts` || file.startsWith(`src/${phase}/${id}/`));
    const strangers = projectFiles().filter((file) => /^(?:src|templates)\//.test(file) && !isOwn(file) && file !== "src/catalogue/bindings.ts");
    expect(strangers.flatMap((file) => {
      const text = readProjectFile(file);
      return [...text.matchAll(names)].map((match) => `${file}:${lineOf(text, match.index)}: knows ${match[0]}`);
    })).toEqual([]);
  });
}

test("no file in phases 1 to 4 bears the id of a binding that the catalogue does not list", () => {
  const folders = projectFiles().map((file) => /^src\/\d-[a-z]+\/([a-z-]+)\/[^/]+\.ts$/.exec(file)?.[1]).filter((folder) => folder !== undefined);
  const others = new Set(folders.filter((folder) => !(bindingIds as readonly string[]).includes(folder)));
  // The rooms of phases 5 and 6, cards, fold and pdf, are no bindings; bench, sewing and text-block are shared by bindings, class, cutting and timetable are of the class.
  expect([...others].filter((folder) => !["bench", "sewing", "text-block", "cutting", "timetable", "class", "covering"].includes(folder))).toEqual(["cards", "fold", "pdf"]);
});
