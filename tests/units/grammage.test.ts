// Tests of paper weights: what is read, and the exact way from weight to thickness. Published tables are checked in tests/references.
import { describe, expect, test } from "vitest";
import { grammageFromPounds, poundsFromGrammage, readGrammage, thicknessFromGrammage, usualBulk } from "../../src/units/grammage.ts";
import type { BasisGrade } from "../../src/units/grammage.ts";
import { mm } from "../../src/units/length.ts";
import { rational, rationalToNumber } from "../../src/units/rational.ts";

describe("a weight of paper", () => {
  test.each([["300"], ["300 g/m2"], ["300 g/m²"], ["300gsm"], ["300 GSM"], ["300 g / m2"], ["300 g"], [" 300 g/m^2 "]])("%j is 300 grams per square metre", (text) => {
    expect(readGrammage(text)).toEqual({ ok: true, grammage: rational(300), pounds: null });
  });

  test.each([
    ["65 lb cover", 65, "cover"], ["20 lb bond", 20, "bond"], ["20# bond", 20, "bond"], ["20 lbs. writing", 20, "bond"], ["20 pounds ledger", 20, "bond"], ["110 lb index", 110, "index"],
    ["67 lb bristol", 67, "bristol"], ["100 lb tag", 100, "tag"], ["70 lb text", 70, "book"], ["70 LB BOOK paper", 70, "book"], ["60lb offset", 60, "book"], ["65 lb cover stock", 65, "cover"],
  ] as const)("%j is %i lb of %s", (text, weight, grade) => {
    expect(readGrammage(text)).toEqual({ ok: true, grammage: grammageFromPounds(rational(weight), grade), pounds: { weight: rational(weight), grade } });
  });

  test.each([
    ["65 lb", "value-type", "does not say pounds of what", "add the grade", 0, 5], ["65 lb felt", "value-unknown", '"felt" is not a grade', "use bond", 6, 10], ["65 lb constructor", "value-unknown", "is not a grade", "use bond", 6, 17],
    ["12 pt", "value-type", '"pt" is not a unit of paper weight', "65 lb cover", 3, 5], ["0 g/m2", "value-range", "not above zero", "packet", 0, 1], ["-5", "value-range", "not above zero", "packet", 0, 2],
    ["3,5 g", "value-type", "decimal comma", "3.5", 0, 3], ["heavy", "value-type", "does not start with a number", "300 or 300 g/m2", 0, 5], ["", "value-type", "no number", "300 or 300 g/m2", 0, 0],
  ])("%j is refused as %s: %s (%s), marked from %i to %i", (text, code, message, hint, start, end) => {
    expect(readGrammage(text)).toEqual({ ok: false, code, message: expect.stringContaining(message), hint: expect.stringContaining(hint), start, end });
  });

  test("that is absurdly long is refused unread", () => {
    expect(readGrammage("9".repeat(61))).toMatchObject({ ok: false, message: expect.stringContaining("too long") });
  });
});

describe("pounds and grams", () => {
  test.each(["bond", "cover", "bristol", "index", "tag", "book"] satisfies BasisGrade[])("of %s go there and back without loss", (grade) => {
    const pounds = rational(653, 10);
    expect(poundsFromGrammage(grammageFromPounds(pounds, grade), grade)).toEqual(pounds);
  });

  test("the same pounds weigh more as cover than as book paper, by the ratio of the basis areas", () => {
    expect(rationalToNumber(grammageFromPounds(rational(65), "cover")) / rationalToNumber(grammageFromPounds(rational(65), "book"))).toBeCloseTo(950 / 520, 12);
  });
});

describe("thickness from grammage and bulk", () => {
  // Derived from the definition of bulk: 80 g/m² at 1.25 cm³/g is 100 µm, 120 g/m² at 1.30 is 156 µm.
  test("is their product in micrometres, exactly", () => {
    expect(thicknessFromGrammage(rational(80), usualBulk)).toEqual(mm("0.1"));
    expect(thicknessFromGrammage(rational(120), rational(13, 10))).toEqual(mm("0.156"));
    expect(thicknessFromGrammage(rational(100, 3), rational(1))).toEqual({ n: 1n, d: 30n });
  });
});
