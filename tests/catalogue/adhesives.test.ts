// Tests of the adhesives: what sources say about their order, the printed waits, and honest tags.
import { describe, expect, test } from "vitest";
import { adhesiveNames, adhesives, findAdhesive } from "../../src/catalogue/adhesives.ts";
import { isLess, noLength } from "../../src/units/length.ts";

const pva = findAdhesive("PVA")!;
const mix = findAdhesive("PVA and methyl cellulose mix")!;
const hideGlue = findAdhesive("hide glue")!;
const paste = findAdhesive("wheat paste")!;

describe("the order of the adhesives", () => {
  // Source: D. Rash, Book_Arts-L, April 2000.
  test("in drying is PVA, hide glue, paste", () => {
    expect(pva.dryMinutes).toBeLessThan(hideGlue.dryMinutes);
    expect(hideGlue.dryMinutes).toBeLessThan(paste.dryMinutes);
    expect(pva.setMinutes).toBeLessThan(paste.setMinutes);
  });

  // Source: Roberts and Etherington, "open assembly time".
  test("in open time has PVA as the shortest", () => {
    expect(pva.openMinutes!).toBeLessThan(hideGlue.openMinutes!);
    expect(pva.openMinutes!).toBeLessThan(paste.openMinutes!);
  });

  // Source: J. Thompson, Book_Arts-L 1999: methyl cellulose lengthens the working time of PVA.
  test("has the mix open longer than PVA", () => {
    expect(mix.openMinutes!).toBeGreaterThan(pva.openMinutes!);
  });
});

// Source: Brown, Mending and Repair of Books (1921): a hinge dries under weight for at least half a day.
test("no wet adhesive is called dry before half a day", () => {
  expect(adhesives.filter((adhesive) => adhesive.wet && adhesive.dryMinutes < 12 * 60)).toEqual([]);
});

test("every adhesive is open before it is set and set before it is dry", () => {
  for (const { openMinutes, setMinutes, dryMinutes } of adhesives) {
    expect(openMinutes === null || openMinutes <= setMinutes).toBe(true);
    expect(setMinutes).toBeLessThanOrEqual(dryMinutes);
  }
});

test("tapes are dry, hold at once and leave no hurry", () => {
  for (const name of ["double-sided tape", "self-adhesive tape"]) {
    expect(findAdhesive(name)).toMatchObject({ wet: false, openMinutes: null, setMinutes: 0, dryMinutes: 0 });
  }
});

test("minutes of wet adhesives are tagged as from memory, and nothing is thinner than nothing", () => {
  expect(adhesives.filter((adhesive) => adhesive.wet && !adhesive.source.includes("from memory"))).toEqual([]);
  expect(adhesives.filter((adhesive) => isLess(adhesive.thickness, noLength))).toEqual([]);
});

test("an adhesive is found by name, other name or id, whatever its capitals and hyphens", () => {
  expect(["pva", "White Glue", "wheat-paste", "Paste", "double sided tape", "self-adhesive-tape"].map((name) => findAdhesive(name)?.id))
    .toEqual(["pva", "pva", "wheat-paste", "wheat-paste", "double-sided-tape", "self-adhesive-tape"]);
  expect(["", "superglue", "constructor"].map(findAdhesive)).toEqual([null, null, null]);
});

test("no two adhesives share a name", () => {
  const keys = adhesiveNames.map((name) => name.toLowerCase().replace(/[\s-]+/gu, " "));
  expect(new Set(keys).size).toBe(keys.length);
});
