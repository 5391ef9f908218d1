// Laws of planned rounding: running marks never gather error, and shared parts always make up their whole.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addLengths, compareLengths, divideLength, isLess, isOnMark, multiplyLength, noLength, roundToMark, sameLength, subtractLength,
} from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { runningMarks, shareOut } from "../../src/units/rounding.ts";
import { anyLength, anyRuler } from "./arbitraries.ts";

function distance(a: Length, b: Length): Length {
  const difference = subtractLength(a, b);
  return difference.n < 0n ? subtractLength(noLength, difference) : difference;
}

test("each running mark is on a mark and off by at most half a step, the last one too", () => {
  fc.assert(fc.property(anyRuler, anyLength, fc.integer({ min: 1, max: 200 }), ({ step }, total, count) => {
    const exact = Array.from({ length: count }, (_, index) => multiplyLength(divideLength(total, count), index + 1));
    const marks = runningMarks(exact, step);
    expect(marks).toHaveLength(count);
    marks.forEach((mark, index) => {
      expect(isOnMark(mark, step)).toBe(true);
      expect(compareLengths(multiplyLength(distance(mark, exact[index]!), 2), step) <= 0).toBe(true);
    });
    expect(marks.at(-1)).toEqual(roundToMark(total, step));
  }));
});

test("running marks keep the order of the positions", () => {
  fc.assert(fc.property(anyRuler, fc.array(anyLength, { maxLength: 30 }), ({ step }, positions) => {
    const marks = runningMarks([...positions].sort(compareLengths), step);
    marks.slice(1).forEach((mark, index) => expect(isLess(mark, marks[index]!)).toBe(false));
  }));
});

test("shared parts of any number add up to the rounded total, each on a mark and less than a step from its exact length", () => {
  fc.assert(fc.property(anyRuler, fc.array(anyLength, { maxLength: 60 }), ({ step }, parts) => {
    const total = addLengths(...parts);
    const shared = shareOut(total, parts, step);
    expect(sameLength(addLengths(...shared), roundToMark(total, step))).toBe(true);
    shared.forEach((part, index) => {
      expect(isOnMark(part, step)).toBe(true);
      expect(isLess(distance(part, parts[index]!), step)).toBe(true);
      if (isOnMark(parts[index]!, step)) expect(part).toEqual(parts[index]);
    });
  }));
});

test("equal parts differ by at most one mark, the wider ones first", () => {
  fc.assert(fc.property(anyRuler, anyLength, fc.integer({ min: 1, max: 100 }), ({ step }, total, count) => {
    const shared = shareOut(total, Array.from({ length: count }, () => divideLength(total, count)), step);
    expect(compareLengths(subtractLength(shared[0]!, shared.at(-1)!), step) <= 0).toBe(true);
    shared.slice(1).forEach((part, index) => expect(isLess(shared[index]!, part)).toBe(false));
  }));
});
