// Tests of formulas: what is read, computed, printed, and refused.
import { describe, expect, test } from "vitest";
import { evaluateFormula, namesInFormula, parseFormula, printFormula } from "../../src/units/formula.ts";
import type { FormulaContext, Quantity } from "../../src/units/formula.ts";
import { inches, mm } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

const length = (value: Length): Quantity => ({ value, dimension: 1 });
const number = (value: number): Quantity => ({ value: rational(value), dimension: 0 });

const values: Readonly<Record<string, Quantity>> = {
  stubs: number(3), "stub depth": length(mm(20)), "floor gap": length(mm(5)), "turn in": length(inches(5, 8)),
};

const context: FormulaContext = {
  step: mm("0.5"),
  lookUp: (name) => {
    const value = values[name];
    if (!value) throw new Error(`no value is called "${name}"`);
    return value;
  },
};

const compute = (text: string): Quantity => evaluateFormula(parseFormula(text), context);

describe("computing a formula", () => {
  test("multiplies before adding and keeps the order of subtractions and divisions", () => {
    expect(compute("2 * stubs * stub depth + (stubs - 1) * floor gap + 10 mm")).toEqual(length(mm(140)));
    expect(compute("10 - 3 - 2")).toEqual(number(5));
    expect(compute("12 / 2 / 3")).toEqual(number(2));
    expect(compute("12 / 2 * 3")).toEqual(number(18));
  });

  test("takes literals in both units, with and without a blank", () => {
    expect(compute("1 in + 2.5mm")).toEqual(length(mm("27.9")));
  });

  test("tells a name that ends in a unit's word from the unit", () => {
    expect(compute("2 * turn in")).toEqual(length(inches(5, 4)));
  });

  test("takes a leading minus and a minus behind an operator", () => {
    expect(compute("-stubs * -2 - -1")).toEqual(number(7));
    expect(compute("-(stubs + 1)")).toEqual(number(-4));
  });

  test("gives products of lengths the dimension of an area and ratios none", () => {
    expect(compute("stub depth * floor gap")).toEqual({ value: rational(100), dimension: 2 });
    expect(compute("stub depth / floor gap")).toEqual(number(4));
  });
});

describe("a formula that cannot be right", () => {
  test.each([
    ["stubs + floor gap", "different dimension"],
    ["max(stubs, floor gap)", "compares different dimensions"],
    ["stub depth / (stubs - 3)", "divides by zero"],
    ["stub width", 'no value is called "stub width"'],
  ])("%s is a fault when it is computed: %s", (text, message) => {
    expect(() => compute(text)).toThrow(message);
  });

  test.each([
    ["", "a value is missing"],
    ["2 +", "a value is missing"],
    ["(2 + 3", "a bracket is not closed"],
    ["max(2, 3", "the bracket of max is not closed"],
    ["2 3", '"3" is not expected there'],
    ["2 stubs", '"stubs" is not expected there'],
    ["2)", '")" is not expected there'],
    ["twice(2)", 'no function is called "twice"'],
    ["2 ^ 3", "cannot be read"],
    ["Stubs", "cannot be read"],
  ])("%j is a fault when it is read: %s", (text, message) => {
    expect(() => parseFormula(text)).toThrow(message);
  });
});

describe("the names in a formula", () => {
  test("are listed once, in order, without units and functions", () => {
    expect(namesInFormula(parseFormula("up(2 * turn in + 3 mm) + max(stub depth, turn in) - 1 in"))).toEqual(["turn in", "stub depth"]);
  });
});

describe("printing a formula", () => {
  test("uses the signs of print and keeps a literal with its unit", () => {
    expect(printFormula(parseFormula("up(2*stubs*stub depth - (stubs-1)/2*floor gap + 10mm)")))
      .toBe("up(2 × stubs × stub depth − (stubs − 1) ÷ 2 × floor gap + 10\u00a0mm)");
  });

  test("writes a negation close to its value", () => {
    expect(printFormula(parseFormula("-stubs + max(-1, - (2))"))).toBe("−stubs + max(−1, −(2))");
  });

  test("puts values in place of names, but not of units and functions", () => {
    const formula = parseFormula("nearest(stubs * floor gap + 1 in)");
    expect(printFormula(formula, (name) => ({ stubs: "8", "floor gap": "5 mm" })[name] ?? "?")).toBe("nearest(8 × 5 mm + 1\u00a0in)");
  });

  test("gives a text that is read back", () => {
    const printed = printFormula(parseFormula("2 * stubs - stubs / -3"));
    expect(compute(printed)).toEqual(number(7));
  });
});
