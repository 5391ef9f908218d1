// Tests of how named sheets are found; their figures are checked in tests/references.
import { expect, test } from "vitest";
import { findSheetSize, sheetSizeNames, sheetSizes } from "../../src/catalogue/sheet-sizes.ts";
import { isLess } from "../../src/units/length.ts";

test("a sheet is found whatever the capitals, blanks and hyphens of its name", () => {
  expect(["a3", " A3 ", "A 3"].map((name) => findSheetSize(name)?.name)).toEqual(["A3", "A3", "A3"]);
  expect(["half letter", "Half-Letter", "HALF_LETTER", "statement"].map((name) => findSheetSize(name)?.name)).toEqual(Array(4).fill("Half Letter"));
  expect(["tabloid", "ledger", "ansi b"].map((name) => findSheetSize(name)?.name)).toEqual(Array(3).fill("Tabloid"));
});

test("an unknown name finds nothing", () => {
  expect(["A11", "", "quarto", "__proto__", "constructor"].map(findSheetSize)).toEqual([null, null, null, null, null]);
});

test("no two sheets share a name", () => {
  const keys = sheetSizeNames.map((name) => name.toLowerCase().replaceAll(" ", ""));
  expect(new Set(keys).size).toBe(keys.length);
});

test("every sheet has its longer side as height and names its source", () => {
  expect(sheetSizes.filter((size) => isLess(size.height, size.width) || size.source === "")).toEqual([]);
});
