// The functions that formulas may call, each with what it may be given and the dimension of its result.
import { lengthOf, roundDownToMark, roundToMark, roundUpToMark } from "./length.ts";
import type { Length } from "./length.ts";
import type { Quantity } from "./quantity.ts";
import { ceilRational, compareRational, floorRational, millionth, rational, rationalToNumber, rootOfRational } from "./rational.ts";
import type { Rational } from "./rational.ts";

interface FormulaFunction {
  /** Whether it compares several values or works on one. */
  readonly takes: "one" | "several";
  /** The dimensions it makes sense for: rounding to whole millimetres would depend on the unit, so `whole up` refuses lengths. */
  accepts(dimension: number): boolean;
  resultDimension(dimension: number): number;
  result(values: readonly Rational[], step: Length): Rational;
}

const sameDimension = (dimension: number): number => dimension;

function ofLength(round: (length: Length, step: Length) => Length): FormulaFunction {
  return {
    takes: "one", accepts: (dimension) => dimension === 1, resultDimension: sameDimension,
    result: (values, step) => round(lengthOf(values[0]!), step),
  };
}

function ofNumber(compute: (value: Rational) => Rational): FormulaFunction {
  return { takes: "one", accepts: (dimension) => dimension === 0, resultDimension: sameDimension, result: (values) => compute(values[0]!) };
}

function extreme(wins: 1 | -1): FormulaFunction {
  return {
    takes: "several", accepts: () => true, resultDimension: sameDimension,
    result: (values) => values.reduce((best, value) => (compareRational(value, best) === wins ? value : best)),
  };
}

const functions: ReadonlyMap<string, FormulaFunction> = new Map([
  ["nearest", ofLength(roundToMark)],
  ["up", ofLength(roundUpToMark)],
  ["down", ofLength(roundDownToMark)],
  ["whole up", ofNumber((value) => rational(ceilRational(value)))],
  ["whole down", ofNumber((value) => rational(floorRational(value)))],
  ["max", extreme(1)],
  ["min", extreme(-1)],
  ["root", { takes: "one", accepts: (dimension) => dimension % 2 === 0, resultDimension: (dimension) => dimension / 2, result: (values) => rootOfRational(values[0]!) }],
  ["arcsine", ofNumber(arcsine)],
]);

/** Whether a formula may call a function of this name. */
export function isFunctionName(name: string): boolean {
  return functions.has(name);
}

/** Applies a function; `fault` makes the error for what it must not be given. */
export function applyFunction(name: string, given: readonly Quantity[], step: Length, fault: (what: string) => Error): Quantity {
  const called = functions.get(name);
  const first = given[0];
  if (!called || !first) throw fault(`${name} cannot be applied`);
  if (called.takes === "one" && given.length > 1) throw fault(`${name} takes one value`);
  if (given.some((quantity) => quantity.dimension !== first.dimension)) throw fault(`${name} compares different dimensions`);
  if (!called.accepts(first.dimension)) throw fault(`${name} does not take a value of dimension ${first.dimension}`);
  return { dimension: called.resultDimension(first.dimension), value: called.result(given.map((quantity) => quantity.value), step) };
}

/** In radians, to the nearest millionth. */
function arcsine(value: Rational): Rational {
  const angle = Math.asin(rationalToNumber(value));
  if (!Number.isFinite(angle)) throw new RangeError("internal error: the arcsine of a value beyond one");
  return rational(Math.round(angle * Number(millionth)), millionth);
}
