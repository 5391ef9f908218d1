// Laws of formulas: they compute what direct arithmetic does, and print as text that means the same.
import fc from "fast-check";
import { expect, test } from "vitest";
import { evaluateFormula, namesInFormula, parseFormula, printFormula } from "../../src/units/formula.ts";
import type { FormulaContext } from "../../src/units/formula.ts";
import { mm } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

/** A fraction that is never reduced: an arithmetic of its own to compare with. */
type Unreduced = readonly [bigint, bigint];

interface Written {
  readonly text: string;
  readonly value: Unreduced;
}

const named: Readonly<Record<string, Unreduced>> = { stubs: [7n, 1n], "floor gap": [-5n, 3n], "x2": [11n, 4n], "turn in": [0n, 1n] };

const context: FormulaContext = {
  step: mm(1),
  lookUp: (name) => ({ value: rational(...named[name]!), dimension: 0 }),
};

const plus = (a: Unreduced, b: Unreduced): Unreduced => [a[0] * b[1] + b[0] * a[1], a[1] * b[1]];
const times = (a: Unreduced, b: Unreduced): Unreduced => [a[0] * b[0], a[1] * b[1]];
const negative = (a: Unreduced): Unreduced => [-a[0], a[1]];

const number: fc.Arbitrary<Written> = fc.tuple(fc.nat(500), fc.nat(99)).map(([whole, hundredths]) => ({
  text: `${whole}.${String(hundredths).padStart(2, "0")}`, value: [BigInt(whole * 100 + hundredths), 100n],
}));
const name: fc.Arbitrary<Written> = fc.constantFrom(...Object.keys(named)).map((text) => ({ text, value: named[text]! }));
/** Divisors are numbers above zero. */
const divisor: fc.Arbitrary<Written> = fc.integer({ min: 1, max: 40 }).map((value) => ({ text: String(value), value: [1n, BigInt(value)] }));

const { sum } = fc.letrec<{ sum: Written; product: Written; factor: Written }>((tie) => ({
  factor: fc.oneof(
    { maxDepth: 4 },
    fc.oneof(number, name),
    tie("sum").map(({ text, value }) => ({ text: `(${text})`, value })),
    tie("factor").map(({ text, value }) => ({ text: `-${text}`, value: negative(value) })),
  ),
  product: fc.tuple(tie("factor"), fc.array(fc.oneof(
    tie("factor").map((factor) => ({ ...factor, text: ` * ${factor.text}` })),
    divisor.map((factor) => ({ ...factor, text: `/${factor.text}` })),
  ), { maxLength: 3 })).map(([first, rest]) => rest.reduce((sofar, next) => ({ text: sofar.text + next.text, value: times(sofar.value, next.value) }), first)),
  sum: fc.tuple(tie("product"), fc.array(fc.tuple(fc.constantFrom("+", "-"), tie("product")), { maxLength: 3 })).map(([first, rest]) => rest.reduce(
    (sofar, [sign, next]) => ({ text: `${sofar.text} ${sign} ${next.text}`, value: plus(sofar.value, sign === "+" ? next.value : negative(next.value)) }), first,
  )),
}));

test("a formula computes what direct arithmetic on its parts gives", () => {
  fc.assert(fc.property(sum, ({ text, value }) => {
    expect(evaluateFormula(parseFormula(text), context)).toEqual({ value: rational(...value), dimension: 0 });
  }), { numRuns: 500 });
});

test("a printed formula is read back, uses the same names and has the same value", () => {
  fc.assert(fc.property(sum, ({ text }) => {
    const formula = parseFormula(text);
    const again = parseFormula(printFormula(formula));
    expect(namesInFormula(again)).toEqual(namesInFormula(formula));
    expect(evaluateFormula(again, context)).toEqual(evaluateFormula(formula, context));
    expect(printFormula(again)).toBe(printFormula(formula));
  }), { numRuns: 500 });
});

test("a length in either unit scales every sum alike", () => {
  fc.assert(fc.property(sum, fc.constantFrom("mm", "in"), ({ text, value }, unit) => {
    const scale: Unreduced = unit === "mm" ? [1n, 1n] : [127n, 5n];
    expect(evaluateFormula(parseFormula(`(${text}) * 1 ${unit}`), context)).toEqual({ value: rational(...times(value, scale)), dimension: 1 });
  }));
});
