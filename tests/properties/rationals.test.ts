// Laws of exact fractions: they form a field, keep lowest terms, and agree with whole-number arithmetic.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addRational, ceilRational, compareRational, divideRational, floorRational, multiplyRational, nearestWhole, oneRational, rational, rationalFromDecimal,
  rationalToNumber, subtractRational, zeroRational,
} from "../../src/units/rational.ts";
import { anyRational } from "./arbitraries.ts";

test("addition and multiplication commute, associate and distribute", () => {
  fc.assert(fc.property(anyRational, anyRational, anyRational, (a, b, c) => {
    expect(addRational(a, b)).toEqual(addRational(b, a));
    expect(multiplyRational(a, b)).toEqual(multiplyRational(b, a));
    expect(addRational(addRational(a, b), c)).toEqual(addRational(a, addRational(b, c)));
    expect(multiplyRational(multiplyRational(a, b), c)).toEqual(multiplyRational(a, multiplyRational(b, c)));
    expect(multiplyRational(a, addRational(b, c))).toEqual(addRational(multiplyRational(a, b), multiplyRational(a, c)));
  }));
});

test("nought, one, subtraction and division undo what they should", () => {
  fc.assert(fc.property(anyRational, anyRational, (a, b) => {
    expect(addRational(a, zeroRational)).toEqual(a);
    expect(multiplyRational(a, oneRational)).toEqual(a);
    expect(addRational(subtractRational(a, b), b)).toEqual(a);
    if (b.n !== 0n) expect(multiplyRational(divideRational(a, b), b)).toEqual(a);
  }));
});

test("every result is in lowest terms over a positive denominator, whatever its terms were", () => {
  const whole = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
  fc.assert(fc.property(whole, whole.filter((d) => d !== 0n), whole.filter((k) => k !== 0n), (n, d, k) => {
    const made = rational(n * k, d * k);
    expect(made).toEqual(rational(n, d));
    expect(made.d > 0n).toBe(true);
    expect(made.n * d).toBe(n * made.d);
  }));
});

test("order agrees with the sign of the difference", () => {
  fc.assert(fc.property(anyRational, anyRational, (a, b) => {
    const difference = subtractRational(a, b).n;
    expect(compareRational(a, b)).toBe(difference > 0n ? 1 : difference < 0n ? -1 : 0);
  }));
});

test("down, up and nearest bracket the value within one, and within a half", () => {
  fc.assert(fc.property(anyRational, (a) => {
    const down = rational(floorRational(a));
    const up = rational(ceilRational(a));
    expect(compareRational(down, a) <= 0 && compareRational(a, up) <= 0).toBe(true);
    expect(up.n - down.n).toBe(a.d === 1n ? 0n : 1n);
    const off = subtractRational(a, rational(nearestWhole(a)));
    expect(compareRational(off.n < 0n ? rational(-off.n, off.d) : off, rational(1, 2)) <= 0).toBe(true);
  }));
});

test("a float goes to its exact fraction and back, so no nearer float exists", () => {
  fc.assert(fc.property(fc.bigInt({ min: -(2n ** 53n), max: 2n ** 53n }), fc.integer({ min: 0, max: 300 }), (digits, shift) => {
    expect(rationalToNumber(rational(digits, 2n ** BigInt(shift)))).toBe(Number(digits) * 2 ** -shift);
  }));
});

test("the float of any fraction is within half a unit in its last place", () => {
  fc.assert(fc.property(anyRational.filter((a) => a.n !== 0n), (a) => {
    const value = rationalToNumber(a);
    const exponent = Math.floor(Math.log2(Math.abs(value)));
    const shift = 1074;
    const asFraction = rational(BigInt(Math.round(value * 2 ** (52 - exponent))) * 2n ** BigInt(shift), 2n ** BigInt(shift + 52 - exponent));
    const off = subtractRational(a, asFraction);
    // Half a unit in the last place is 2^(exponent − 53).
    const bound = exponent - 53 >= 0 ? rational(2n ** BigInt(exponent - 53)) : rational(1n, 2n ** BigInt(53 - exponent));
    expect(compareRational(off.n < 0n ? rational(-off.n, off.d) : off, bound) <= 0).toBe(true);
  }));
});

test("a decimal is read as its digits over a power of ten", () => {
  fc.assert(fc.property(fc.nat(), fc.stringMatching(/^\d{1,12}$/), fc.boolean(), (whole, decimals, isNegative) => {
    const places = 10n ** BigInt(decimals.length);
    const digits = BigInt(whole) * places + BigInt(decimals);
    expect(rationalFromDecimal(`${isNegative ? "-" : ""}${whole}.${decimals}`)).toEqual(rational(isNegative ? -digits : digits, places));
  }));
});
