// Tests of lengths and pairs of sizes as authors write them, and of the problem each mistake gets.
import { describe, expect, test } from "vitest";
import { inches, mm } from "../../src/units/length.ts";
import { longestLengthText, readLength, readSizes } from "../../src/units/read-length.ts";

describe("a length", () => {
  test.each([
    ["9 3/4 in"], ['9¾"'], ["9.75in"], ["9-3/4 in"], ["9 3⁄4″"], ["9 3/4 inches"], ["9¾ INCHES"], ["9.75 in."], ["39/4 inch"], ["9¾”"], [" 9\u00a03⁄4\u202fin "],
  ])("%j is nine and three quarter inches", (text) => {
    expect(readLength(text, null)).toEqual({ ok: true, length: inches(39, 4), writtenUnit: "in" });
  });

  test.each([
    ["247 mm"], ["24.7cm"], ["0.247 m"], ["247millimetres"], ["247 millimeters"], ["24.7 centimetres"], ["0.247 metres"], ["24 7/10 cm"], ["247 MM"], ["247\u2009mm"],
  ])("%j is two hundred and forty-seven millimetres", (text) => {
    expect(readLength(text, null)).toEqual({ ok: true, length: mm(247), writtenUnit: "mm" });
  });

  test("without a unit takes the project's when it has one", () => {
    expect(readLength("5/64", "in")).toEqual({ ok: true, length: inches(5, 64), writtenUnit: "in" });
    expect(readLength("12.5", "mm")).toEqual({ ok: true, length: mm("12.5"), writtenUnit: "mm" });
    expect(readLength("1 in", "mm")).toEqual({ ok: true, length: inches(1), writtenUnit: "in" });
  });

  test("without any unit is a problem that offers both", () => {
    expect(readLength(" 5/64", null)).toEqual({
      ok: false, code: "length-unit", message: '"5/64" has no unit', hint: "write 5/64 mm or 5/64 in", start: 1, end: 5,
    });
  });

  test("may be negative: whether that makes sense is for the caller to say", () => {
    expect(readLength("-9 3/4 in", null)).toEqual({ ok: true, length: inches(-39, 4), writtenUnit: "in" });
    expect(readLength("−3 mm", null)).toEqual({ ok: true, length: mm(-3), writtenUnit: "mm" });
  });
});

describe("a text that is no length", () => {
  test.each([
    ["6 ft", "length-unit", "feet are not read", "1 foot is 12 in", 2, 4],
    ["6'", "length-unit", "feet are not read", "1 foot is 12 in", 1, 2],
    ["1' 6\"", "length-unit", "feet are not read", "1 foot is 12 in", 1, 5],
    ["9''", "length-unit", "is not read as inches", 'write in or "', 1, 3],
    ["12 pt", "length-unit", "points are not read", "0.001 in", 3, 5],
    ["12 µm", "length-unit", '"µm" is not a unit', "use mm, cm, m or in", 3, 5],
    ["12 lb", "length-unit", '"lb" is not a unit', "use mm, cm, m or in", 3, 5],
    ["247 mm (9 3/4 in)", "length-syntax", '"(9 3/4 in)" follows the length', "one unit only", 7, 17],
    ["3 mm thick", "length-syntax", '"thick" follows the length', "one length", 5, 10],
    ["10-12 mm", "length-syntax", '"-12 mm" cannot be read', "one number and one unit", 2, 8],
    ["9 3/4/5 in", "length-syntax", '"/5 in" cannot be read', "one number and one unit", 5, 10],
    ["24,7 cm", "length-syntax", "decimal comma", "write a decimal point: 24.7", 0, 4],
    ["1/0 in", "length-syntax", "divides by zero", "1 or more", 0, 3],
    ["about 3 mm", "length-syntax", "does not start with a number", "start with a number", 0, 10],
    ["", "length-syntax", "no number is written", "start with a number", 0, 0],
    ["   ", "length-syntax", "no number is written", "start with a number", 3, 3],
  ])("%j is %s: %s (%s), marked from %i to %i", (text, code, message, hint, start, end) => {
    expect(readLength(text, "mm")).toEqual({ ok: false, code, message: expect.stringContaining(message), hint: expect.stringContaining(hint), start, end });
  });

  test("is refused unread when it is absurdly long, and read up to the limit", () => {
    const longest = `${"1".repeat(longestLengthText - 3)} mm`;
    expect(readLength(longest, null).ok).toBe(true);
    expect(readLength(`1${longest}`, null)).toMatchObject({ ok: false, code: "length-syntax", message: expect.stringContaining("too long for a length (81 characters)"), end: 81 });
    expect(readLength("9".repeat(1_000_000), "mm").ok).toBe(false);
  });
});

describe("two sizes", () => {
  test.each([["500 mm x 700 mm"], ["500 x 700 mm"], ["500×700mm"], ["50 X 70 cm"], ["500 by 700 mm"], ["50 cm × 700 mm"], ["500\u00a0mm ×\u00a0700\u00a0mm"]])("%j are height 500 mm and width 700 mm", (text) => {
    expect(readSizes(text, null)).toEqual({ ok: true, height: mm(500), width: mm(700), writtenUnit: "mm" });
  });

  test.each([["9 × 12 in"], ['9" x 12"'], ["9x12in"]])("%j are nine by twelve inches", (text) => {
    expect(readSizes(text, "mm")).toEqual({ ok: true, height: inches(9), width: inches(12), writtenUnit: "in" });
  });

  test("without any unit take the project's when it has one", () => {
    expect(readSizes("9 3/4 x 8½", "in")).toEqual({ ok: true, height: inches(39, 4), width: inches(17, 2), writtenUnit: "in" });
    expect(readSizes("500 x 700", null)).toMatchObject({ ok: false, code: "length-unit", message: '"700" has no unit', start: 6, end: 9 });
  });

  test("are refused when only the first has a unit, even where the project has one", () => {
    expect(readSizes("9 in x 12", "mm")).toMatchObject({ ok: false, code: "length-unit", hint: "write the unit behind the second size too, or only there", start: 7, end: 9 });
  });

  test.each([
    ["500 mm", "is not two sizes", 0, 6], ["500 700 mm", "is not two sizes", 0, 10], ["1 x 2 x 3 mm", "is not two sizes", 6, 12], ["A3", "is not two sizes", 0, 2],
    ["500 x", "no number is written", 5, 5], ["x 700 mm", "no number is written", 0, 0], ["50,5 x 70 mm", "decimal comma", 0, 4], ["500 x 700 pt", "points are not read", 10, 12],
  ])("%j are refused: %s", (text, message, start, end) => {
    expect(readSizes(text, "mm")).toMatchObject({ ok: false, message: expect.stringContaining(message), start, end });
  });
});
