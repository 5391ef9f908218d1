// Tests of exact lengths: making, comparing and taking them to the marks of a ruler.
import { describe, expect, test } from "vitest";
import {
  addLengths, compareLengths, divideLength, inches, isLess, isOnMark, lengthOf, longest, mm, multiplyLength, noLength,
  ratioOf, roundDownToMark, roundToMark, roundUpToMark, sameLength, shortest, subtractLength, toMillimetres,
} from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

describe("making a length", () => {
  test("one inch is 25.4 mm exactly, and 1/64 in is 396.875 micrometres", () => {
    expect(inches(1)).toEqual(mm("25.4"));
    expect(inches(1, 64)).toEqual(mm("0.396875"));
    expect(inches("9.75")).toEqual(lengthOf(rational(4953, 20)));
  });

  test("a float is refused, because it would not be exact", () => {
    expect(() => mm(0.45)).toThrow("write 0.45 as text");
    expect(() => inches(9.75)).toThrow("write 9.75 as text");
    expect(() => mm("0,45")).toThrow("not a decimal");
  });
});

describe("reckoning with lengths", () => {
  test("thirds of an inch add up to the inch", () => {
    const third = divideLength(inches(1), 3);
    expect(addLengths(third, third, third)).toEqual(inches(1));
    expect(addLengths()).toEqual(noLength);
    expect(multiplyLength(third, rational(3, 2))).toEqual(inches(1, 2));
    expect(subtractLength(mm(1), mm(3))).toEqual(mm(-2));
    expect(ratioOf(inches(1), inches(1, 16))).toEqual(rational(16));
  });

  test("comparing is exact across units", () => {
    expect([compareLengths(inches(1), mm("25.4")), sameLength(inches(5), mm(127)), isLess(inches(1), mm("25.4")), isLess(mm("25.399"), inches(1))]).toEqual([0, true, false, true]);
    expect(longest(mm(3), inches(1, 8), mm(2))).toEqual(inches(1, 8));
    expect(shortest(mm(3), inches(1, 8), mm(2))).toEqual(mm(2));
  });

  test("a length as a float is in millimetres", () => {
    expect(toMillimetres(inches(9, 4))).toBe(57.15);
  });
});

describe("a length taken to the marks of a ruler", () => {
  test("goes to the nearest, up or down; exact halves go away from zero", () => {
    const step = mm("0.5");
    const marks = [mm("10.2"), mm("10.25"), mm("10.5"), mm("-10.25")].map((length) => [roundDownToMark, roundToMark, roundUpToMark].map((round) => toMillimetres(round(length, step))));
    expect(marks).toEqual([[10, 10, 10.5], [10, 10.5, 10.5], [10.5, 10.5, 10.5], [-10.5, -10.5, -10]]);
  });

  test("stands on an inch mark only when it is one", () => {
    expect(isOnMark(inches(9, 16), inches(1, 16))).toBe(true);
    expect(isOnMark(inches(9, 32), inches(1, 16))).toBe(false);
    expect(isOnMark(mm(3), inches(1, 64))).toBe(false);
    expect(isOnMark(noLength, inches(1, 64))).toBe(true);
  });

  test("cannot be on a ruler without steps", () => {
    expect(() => roundToMark(mm(1), noLength)).toThrow("division by zero");
  });
});
