// Each folder of tests/cases/bad-definitions holds a definition and the problems as printed; REFRESH_CASES=1 writes them anew.
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { printProblems } from "../../src/problems/print-problem.ts";

const cases = new URL("../cases/bad-definitions/", import.meta.url);
const files = new Set(["project.yaml", "pictures/fold.jpg", "pictures/press.png"]);

describe("the problems of a bad definition, as printed", () => {
  for (const name of readdirSync(cases).sort()) {
    it(`are those expected for ${name.replaceAll("-", " ")}`, () => {
      const folder = new URL(`${name}/`, cases);
      const result = readDefinition({ project: "invented", file: "content/invented/project.yaml", bytes: readFileSync(new URL("project.yaml", folder)), files, prose: new Map() });
      const printed = printProblems(result.problems, result.texts);
      const expectedFile = new URL("expected.txt", folder);
      if (process.env["REFRESH_CASES"] === "1" || !existsSync(expectedFile)) writeFileSync(expectedFile, printed);
      expect(result.definitions).toEqual([]);
      expect(printed).toBe(readFileSync(expectedFile, "utf8"));
    });
  }
});
