// Tests of the functions that formulas may call: rounding, choosing, roots, and what each refuses.
import { describe, expect, test } from "vitest";
import { evaluateFormula, parseFormula } from "../../src/units/formula.ts";
import { mm } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";
import type { Rational } from "../../src/units/rational.ts";

const compute = (text: string): { value: Rational; dimension: number } =>
  evaluateFormula(parseFormula(text), { step: mm("0.5"), lookUp: (name) => { throw new Error(name); } });

describe("the functions", () => {
  test.each([
    ["nearest(10.3 mm)", 21, 2, 1], ["up(10.1 mm)", 21, 2, 1], ["down(10.9 mm)", 21, 2, 1], ["up(10.5 mm)", 21, 2, 1],
    ["whole up(2.1)", 3, 1, 0], ["whole down(2.9)", 2, 1, 0], ["whole up(-2.1)", -2, 1, 0],
    ["max(1 mm, 3 mm, 2 mm)", 3, 1, 1], ["min(1.5, 1, 2)", 1, 1, 0],
  ])("%s", (text, n, d, dimension) => {
    expect(compute(text)).toEqual({ value: rational(n, d), dimension });
  });
});

describe("a root", () => {
  test("is exact where it is a fraction", () => {
    expect(compute("root(3 mm * 3 mm + 4 mm * 4 mm)")).toEqual({ value: rational(5), dimension: 1 });
    expect(compute("root(1 / 9)")).toEqual({ value: rational(1, 3), dimension: 0 });
    expect(compute("root(0)")).toEqual({ value: rational(0), dimension: 0 });
  });

  test("else is the nearest millionth", () => {
    expect(compute("root(2)").value).toEqual(rational(1_414_214, 1_000_000));
    expect(compute("root(3 mm * 1 mm)").value).toEqual(rational(1_732_051, 1_000_000));
    expect(compute("root(2 / 10000)").value).toEqual(rational(14_142, 1_000_000));
  });

  test("of a negative value is a fault", () => {
    expect(() => compute("root(-1)")).toThrow("root of a negative value");
  });
});

describe("an arcsine", () => {
  test("is in radians to the nearest millionth", () => {
    expect(compute("arcsine(1)")).toEqual({ value: rational(1_570_796, 1_000_000), dimension: 0 });
    expect(compute("arcsine(0.5)").value).toEqual(rational(523_599, 1_000_000));
  });

  test("of a value beyond one is a fault", () => {
    expect(() => compute("arcsine(1.01)")).toThrow("beyond one");
  });
});

describe("a function that is given what it does not take", () => {
  test.each([
    ["nearest(2)", "dimension 0"], ["down(2 mm * 2 mm)", "dimension 2"], ["whole up(2 mm)", "dimension 1"], ["root(2 mm)", "dimension 1"], ["arcsine(1 mm)", "dimension 1"],
    ["up(1 mm, 2 mm)", "takes one value"], ["min(1 mm, 2)", "different dimensions"],
  ])("%s is a fault: %s", (text, message) => {
    expect(() => compute(text)).toThrow(message);
  });
});
