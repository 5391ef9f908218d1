// Laws of reading and printing: what is printed on the marks, or exactly, is read back as the same length.
import fc from "fast-check";
import { expect, test } from "vitest";
import { compareLengths, divideLength, inches, isOnMark, mm, multiplyLength, noLength, sameLength, subtractLength } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { printExact, printLength, printNumberOnly, printSizes, printThickness } from "../../src/units/print-length.ts";
import { readLength, readSizes } from "../../src/units/read-length.ts";
import { anyLength, anyRuler } from "./arbitraries.ts";

const marks = fc.integer({ min: -50_000, max: 50_000 });

function lengthRead(text: string): Length {
  const reading = readLength(text, null);
  if (!reading.ok) throw new Error(`${text}: ${reading.message}`);
  return reading.length;
}

function distance(a: Length, b: Length): Length {
  const difference = subtractLength(a, b);
  return difference.n < 0n ? subtractLength(noLength, difference) : difference;
}

test("a length on the marks of any ruler is printed and read back unchanged", () => {
  fc.assert(fc.property(anyRuler, marks, (ruler, count) => {
    const length = multiplyLength(ruler.step, count);
    const printed = printLength(length, { ...ruler, dual: false });
    expect(printed).not.toContain("about");
    expect(lengthRead(printed)).toEqual(length);
  }));
});

test("two sizes on the marks are printed and read back unchanged", () => {
  fc.assert(fc.property(anyRuler, marks, marks, (ruler, high, wide) => {
    const [height, width] = [multiplyLength(ruler.step, high), multiplyLength(ruler.step, wide)];
    expect(readSizes(printSizes(height, width, { ...ruler, dual: false }), null)).toEqual({ ok: true, height, width, writtenUnit: ruler.governing });
  }));
});

test("a number alone, read in the governing unit, is the same length as printed with it", () => {
  fc.assert(fc.property(anyRuler, marks, (ruler, count) => {
    const length = multiplyLength(ruler.step, count);
    expect(readLength(printNumberOnly(length, { ...ruler, dual: true }), ruler.governing)).toMatchObject({ ok: true, length });
  }));
});

test("a thickness that a caliper shows is printed and read back unchanged", () => {
  fc.assert(fc.property(anyRuler, fc.integer({ min: 0, max: 5_000 }), (ruler, count) => {
    const length = multiplyLength(ruler.governing === "mm" ? mm("0.01") : inches("0.001"), count);
    expect(lengthRead(printThickness(length, { ...ruler, dual: false }))).toEqual(length);
  }));
});

test("the exact text of any length whatever is read back as the same length", () => {
  fc.assert(fc.property(anyLength, fc.constantFrom("mm" as const, "in" as const), (length, governing) => {
    const text = printExact(length, governing);
    expect(text).toMatch(/^[\x20-\x7e]+$/);
    expect(lengthRead(text)).toEqual(length);
  }));
});

test("what is printed first is within half a step of the length, and exact unless it says about", () => {
  fc.assert(fc.property(anyRuler, anyLength, fc.boolean(), (ruler, length, dual) => {
    // A length shorter than a mark is printed as a thickness, to the caliper's marks.
    const size = distance(length, noLength);
    const shown = compareLengths(size, ruler.step) < 0 ? (ruler.governing === "mm" ? mm("0.01") : inches("0.001")) : ruler.step;
    const first = printLength(length, { ...ruler, dual }).split(" (")[0]!;
    const read = lengthRead(first.replace(/^about\u00a0/u, ""));
    if (first.startsWith("about")) expect(compareLengths(distance(read, length), divideLength(shown, 2)) <= 0).toBe(true);
    else expect(sameLength(read, length)).toBe(true);
    if (!isOnMark(length, ruler.step) && first.endsWith(ruler.governing)) expect(first.startsWith("about") || isOnMark(length, shown)).toBe(true);
  }));
});

test("no text makes the reader throw or leave the text with its marks", () => {
  fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 90, unit: "binary" }), fc.stringMatching(/^[-−]?[\d ./⁄,'"x×¼-¾e]{0,12}(mm|cm|in|")?$/u)), (text) => {
    for (const reading of [readLength(text, null), readSizes(text, "mm")]) {
      if (reading.ok) continue;
      expect(reading.message).not.toBe("");
      expect(0 <= reading.start && reading.start <= reading.end && reading.end <= text.length).toBe(true);
    }
  }), { numRuns: 2_000 });
});
