// The table of problem codes is complete.
import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { printProblemTable, problemTable } from "../../src/problems/problem-table.ts";
import { problemCodes } from "../../src/problems/problem.ts";

describe("the table of problem codes", () => {
  it("explains every code once, in words without a full stop", () => {
    expect(Object.keys(problemTable).sort()).toEqual([...problemCodes].sort());
    expect(new Set(problemCodes).size).toBe(problemCodes.length);
    for (const { means, remedy } of Object.values(problemTable)) {
      expect(means).not.toMatch(/\.$/);
      expect(remedy).not.toMatch(/\.$/);
    }
  });

  it("prints one Markdown row for each code", () => {
    const rows = printProblemTable().trimEnd().split("\n");
    expect(rows).toHaveLength(problemCodes.length + 2);
    expect(rows.every((row) => row.split("|").length === 5)).toBe(true);
  });

  it("names no code of this phase that no case of a bad definition shows", () => {
    // Given by other rooms: the folder without a file, the model, and the timetable of a class. Prose files have tests of their own.
    const elsewhere = ["file-missing", "file-too-large", "step-file-unknown", "design-impossible", "class-impossible"];
    const cases = new URL("../cases/bad-definitions/", import.meta.url);
    const printed = readdirSync(cases).map((name) => readFileSync(new URL(`${name}/expected.txt`, cases), "utf8")).join("\n");
    expect(problemCodes.filter((code) => !elsewhere.includes(code) && !printed.includes(`[${code}]`))).toEqual([]);
  });
});
