// Tests of exact fractions: lowest terms, rounding to whole numbers, floats and decimals.
import { describe, expect, test } from "vitest";
import {
  addRational, ceilRational, compareRational, divideRational, floorRational, multiplyRational, nearestWhole, rational, rationalFromDecimal,
  rationalToNumber, subtractRational,
} from "../../src/units/rational.ts";

describe("a fraction", () => {
  test("is kept in lowest terms with a positive denominator", () => {
    expect(rational(6, -8)).toEqual({ n: -3n, d: 4n });
    expect(rational(0, -5)).toEqual({ n: 0n, d: 1n });
  });

  test("with denominator zero is refused", () => {
    expect(() => rational(1, 0)).toThrow("division by zero");
    expect(() => divideRational(rational(1), rational(0))).toThrow("division by zero");
  });

  test("of a float that is not whole is refused", () => {
    expect(() => rational(0.5)).toThrow(RangeError);
  });

  test("adds, subtracts, multiplies and divides exactly where floats do not", () => {
    expect(addRational(rational(1, 10), rational(2, 10))).toEqual(rational(3, 10));
    expect(subtractRational(rational(1, 2), rational(2, 3))).toEqual(rational(-1, 6));
    expect(multiplyRational(rational(2, 3), rational(-3, 4))).toEqual(rational(-1, 2));
    expect(divideRational(rational(1, 2), rational(-3, 4))).toEqual(rational(-2, 3));
  });

  test("compares by value", () => {
    expect([compareRational(rational(1, 3), rational(2, 6)), compareRational(rational(-1), rational(1, 9)), compareRational(rational(5), rational(9, 2))]).toEqual([0, -1, 1]);
  });
});

describe("rounding to whole numbers", () => {
  test.each([
    [7, 2, 3n, 4n, 4n], [-7, 2, -4n, -3n, -4n], [1, 3, 0n, 1n, 0n], [-1, 3, -1n, 0n, 0n], [2, 3, 0n, 1n, 1n], [6, 2, 3n, 3n, 3n], [-6, 2, -3n, -3n, -3n], [0, 1, 0n, 0n, 0n],
  ])("%i/%i goes down to %i, up to %i and to the nearest, %i, halves away from zero", (n, d, down, up, nearest) => {
    const value = rational(n, d);
    expect([floorRational(value), ceilRational(value), nearestWhole(value)]).toEqual([down, up, nearest]);
  });
});

describe("the float of a fraction", () => {
  test("is the nearest one, for small, negative and very small values", () => {
    expect(rationalToNumber(rational(1, 3))).toBe(1 / 3);
    expect(rationalToNumber(rational(-4953, 20))).toBe(-247.65);
    expect(rationalToNumber(rational(1n, 10n ** 20n))).toBe(1e-20);
    expect(rationalToNumber(rational(0))).toBe(0);
  });

  test("is the nearest one when the terms are larger than a float can count", () => {
    expect(rationalToNumber(rational(10n ** 40n + 1n, 10n ** 38n))).toBe(100);
    expect(rationalToNumber(rational(-(2n ** 100n) - 1n, 3n * 2n ** 99n))).toBe(-2 / 3);
    expect(rationalToNumber(rational(10n ** 25n))).toBe(1e25);
  });

  test("goes to the side of the lost digits where the kept ones are an exact tie", () => {
    // 2^53 + 1 lies halfway between two floats and goes to the even one; the slightest more goes up.
    expect(rationalToNumber(rational(2n ** 53n + 1n))).toBe(2 ** 53);
    expect(rationalToNumber(rational((2n ** 53n + 1n) * 10n ** 30n + 1n, 10n ** 30n))).toBe(2 ** 53 + 2);
  });
});

describe("a decimal", () => {
  test.each([["12", 12, 1], ["0.50", 1, 2], [".25", 1, 4], ["-3.5", -7, 2]])("%s is read exactly", (text, n, d) => {
    expect(rationalFromDecimal(text)).toEqual(rational(n, d));
  });

  test.each(["", "-", ".", "1.", "1e3", "1,5", "0x10", "NaN", "Infinity", " 1", "1\n", "1/2", "+1", "٣"])("written as %j is refused", (text) => {
    expect(rationalFromDecimal(text)).toBeNull();
  });
});
