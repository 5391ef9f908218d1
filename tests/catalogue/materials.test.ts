// Tests of the usual materials: a name, a tag and a thickness that agree.
import { describe, expect, test } from "vitest";
import { materialRoles, usualMaterials } from "../../src/catalogue/materials.ts";
import { thicknessFromGrammage, usualBulk } from "../../src/units/grammage.ts";
import { isLess, noLength } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

describe("the usual materials", () => {
  test("have every role once, a name, a tag and a thickness above nothing where they have one", () => {
    for (const role of materialRoles) {
      const { name, thickness, source } = usualMaterials[role];
      expect([role, name.length > 0, source]).toEqual([role, true, "common practice, no source"]);
      expect(thickness === null || isLess(noLength, thickness)).toBe(true);
    }
  });

  test("have no thickness only where the book's sizes give it or it does not count", () => {
    expect(materialRoles.filter((role) => usualMaterials[role].thickness === null)).toEqual(["boards", "posts"]);
  });

  test("are as thick as the grammage in their name at the usual bulk", () => {
    const named = materialRoles.flatMap((role) => {
      const grammage = /(\d+) g\/m²/u.exec(usualMaterials[role].name)?.[1];
      return grammage === undefined ? [] : [{ role, byWeight: thicknessFromGrammage(rational(Number(grammage)), usualBulk), stated: usualMaterials[role].thickness! }];
    });
    expect(named.map(({ role }) => role)).toEqual(["card", "page paper", "text paper", "cover paper", "lining paper"]);
    for (const { byWeight, stated } of named) expect(Math.abs(Number(byWeight.n) / Number(byWeight.d) - Number(stated.n) / Number(stated.d))).toBeLessThan(0.03);
  });
});
