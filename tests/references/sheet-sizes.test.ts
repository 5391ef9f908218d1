// Sheet sizes against the published tables, typed in as printed.
import { describe, expect, test } from "vitest";
import { findSheetSize, sheetSizes } from "../../src/catalogue/sheet-sizes.ts";
import { inches, mm, ratioOf, roundToMark } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { readSizes } from "../../src/units/read-length.ts";

function sheet(name: string): { readonly height: Length; readonly width: Length } {
  const found = findSheetSize(name);
  if (!found) throw new Error(`no sheet is called ${name}`);
  return { height: found.height, width: found.width };
}

// Source: Wikipedia, "ISO 216", dimension table (width × height in mm); a second copy of the table agrees on every value.
const isoTable = [
  ["841 × 1189", "1000 × 1414", "917 × 1297"],
  ["594 × 841", "707 × 1000", "648 × 917"],
  ["420 × 594", "500 × 707", "458 × 648"],
  ["297 × 420", "353 × 500", "324 × 458"],
  ["210 × 297", "250 × 353", "229 × 324"],
  ["148 × 210", "176 × 250", "162 × 229"],
  ["105 × 148", "125 × 176", "114 × 162"],
  ["74 × 105", "88 × 125", "81 × 114"],
  ["52 × 74", "62 × 88", "57 × 81"],
  ["37 × 52", "44 × 62", "40 × 57"],
  ["26 × 37", "31 × 44", "28 × 40"],
] as const;

describe("ISO 216 and ISO 269", () => {
  const rows = isoTable.flatMap((row, n) => row.map((printed, column) => ({ name: `${"ABC"[column]}${n}`, printed })));

  test.each(rows)("$name is $printed mm as printed", ({ name, printed }) => {
    const [width, height] = printed.split(" × ").map((text) => mm(text)) as [Length, Length];
    expect(sheet(name)).toEqual({ height, width });
  });

  // Source: a page on ISO 216 and ISO 269 that lists the other envelope sizes.
  test.each([["DL", "110 × 220"], ["C7/6", "81 × 162"]])("%s is %s mm as printed", (name, printed) => {
    expect(sheet(name)).toEqual(sizesAcrossFirst(printed, "mm"));
  });
});

// Source: Wikipedia, "ANSI/ASME Y14.1", and a US paper size page: width × height in inches, and the millimetres published beside them.
const northAmericanTable: readonly (readonly [name: string, inInches: string, inMillimetres: string])[] = [
  ["Letter", "8.5 × 11", "216 × 279"], ["ANSI A", "8.5 × 11", "216 × 279"], ["Legal", "8.5 × 14", "216 × 356"],
  ["Tabloid", "11 × 17", "279 × 432"], ["Ledger", "11 × 17", "279 × 432"], ["ANSI B", "11 × 17", "279 × 432"],
  ["ANSI C", "17 × 22", "432 × 559"], ["ANSI D", "22 × 34", "559 × 864"], ["ANSI E", "34 × 44", "864 × 1118"], ["ANSI F", "28 × 40", "711 × 1016"],
  ["Half Letter", "5.5 × 8.5", "140 × 216"], ["Invoice", "5.5 × 8.5", "140 × 216"], ["Junior Legal", "5 × 8", "127 × 203"],
  ["Government Letter", "8 × 10.5", "203 × 267"], ["Government Legal", "8.5 × 13", "216 × 330"],
  ["Arch A", "9 × 12", "229 × 305"], ["Arch B", "12 × 18", "305 × 457"], ["Arch C", "18 × 24", "457 × 610"],
  ["Arch D", "24 × 36", "610 × 914"], ["Arch E", "36 × 48", "914 × 1219"], ["Arch E1", "30 × 42", "762 × 1067"],
];

describe("North American sheets", () => {
  test.each(northAmericanTable)("%s is %s in, published as %s mm", (name, inInches, inMillimetres) => {
    expect(sheet(name)).toEqual(sizesAcrossFirst(inInches, "in"));
    // The published millimetres are the inches to the nearest millimetre: the opposite of the ISO habit.
    const { height, width } = sheet(name);
    expect({ height: roundToMark(height, mm(1)), width: roundToMark(width, mm(1)) }).toEqual(sizesAcrossFirst(inMillimetres, "mm"));
  });

  test("Letter is 215.9 × 279.4 mm exactly, as published", () => {
    expect(sheet("Letter")).toEqual({ width: mm("215.9"), height: mm("279.4") });
  });

  // Source: Wikipedia, "ANSI/ASME Y14.1": the ratios alternate between 1.2941 and 1.5455.
  test.each([["ANSI A", 12941], ["ANSI B", 15455], ["ANSI C", 12941], ["ANSI D", 15455], ["ANSI E", 12941]])("%s has the published ratio", (name, tenThousandths) => {
    const { height, width } = sheet(name);
    const ratio = ratioOf(height, width);
    expect(Math.round((Number(ratio.n) / Number(ratio.d)) * 10_000)).toBe(tenThousandths);
  });
});

// Source: Cockerell, Bookbinding, and the Care of Books (1901), chapter on paper, table of printing papers: inches, the longer side first.
const cockerellTable: readonly (readonly [name: string, printed: string])[] = [
  ["Foolscap", "17 × 13½"], ["Crown", "20 × 15"], ["Post", "19¼ × 15½"], ["Demy", "22½ × 17½"], ["Medium", "24 × 19"], ["Royal", "25 × 20"],
  ["Double Pott", "25 × 15"], ["Double Foolscap", "27 × 17"], ["Super Royal", "27 × 21"], ["Double Crown", "30 × 20"], ["Imperial", "30 × 22"], ["Double Post", "31½ × 19½"],
];

describe("traditional British sheets", () => {
  test.each(cockerellTable)("%s is %s in as printed", (name, printed) => {
    expect({ ok: true, writtenUnit: "in", ...sheet(name) }).toEqual(readSizes(printed, "in"));
  });
});

test("every sheet of the catalogue stands in one of the published tables", () => {
  const published = new Set([
    ...isoTable.flatMap((row, n) => row.map((_, column) => `${"ABC"[column]}${n}`)), "DL", "C7/6",
    ...northAmericanTable.map(([name]) => name), ...cockerellTable.map(([name]) => name),
  ]);
  expect(sheetSizes.map((size) => size.name).filter((name) => !published.has(name))).toEqual([]);
});

function sizesAcrossFirst(printed: string, unit: "mm" | "in"): { readonly height: Length; readonly width: Length } {
  const [width, height] = printed.split(" × ").map((text) => (unit === "mm" ? mm(text) : inches(text))) as [Length, Length];
  return { height, width };
}
