// Tests of numbers as people write them, and of the ones that are refused by name.
import { describe, expect, test } from "vitest";
import { quoted, readNumber } from "../../src/units/read-number.ts";
import { rational } from "../../src/units/rational.ts";

const read = (text: string) => readNumber(text, 0, text.length);

describe("a number", () => {
  test.each([
    ["247", 247, 1], ["24.7", 247, 10], [".5", 1, 2], ["007", 7, 1], ["3/4", 3, 4], ["5/4", 5, 4], ["3 / 4", 3, 4], ["3⁄4", 3, 4], ["3∕4", 3, 4],
    ["9 3/4", 39, 4], ["9-3/4", 39, 4], ["9‑3/4", 39, 4], ["9–3/4", 39, 4], ["9\u00a03⁄4", 39, 4], ["9\u20093/4", 39, 4], ["93/4", 93, 4], ["12 100/128", 409, 32],
    ["¾", 3, 4], ["9¾", 39, 4], ["9 ¾", 39, 4], ["9-¾", 39, 4], ["⅟64", 1, 64], ["9⅟64", 577, 64], ["³⁄₄", 3, 4], ["9 ¹³⁄₁₆", 157, 16],
    ["-3", -3, 1], ["−9 3/4", -39, 4], ["- 3", -3, 1], ["0", 0, 1], ["0/5", 0, 1],
  ])("written as %j is read exactly", (text, n, d) => {
    expect(read(text)).toEqual({ ok: true, value: rational(n, d), start: 0, end: text.length });
  });

  test.each([
    ["¼", 1, 4], ["½", 1, 2], ["¾", 3, 4], ["⅐", 1, 7], ["⅑", 1, 9], ["⅒", 1, 10], ["⅓", 1, 3], ["⅔", 2, 3], ["⅕", 1, 5], ["⅖", 2, 5], ["⅗", 3, 5], ["⅘", 4, 5],
    ["⅙", 1, 6], ["⅚", 5, 6], ["⅛", 1, 8], ["⅜", 3, 8], ["⅝", 5, 8], ["⅞", 7, 8], ["↉", 0, 3],
  ])("may be the one character %s", (text, n, d) => {
    expect(read(`2${text}`)).toMatchObject({ ok: true, value: rational(2 * d + n, d) });
  });

  test("ends where something else begins, and counts offsets in the whole text", () => {
    expect(readNumber("card:  9 3/4 in", 5, 15)).toMatchObject({ ok: true, start: 7, end: 12 });
  });
});

describe("a number that is refused", () => {
  test.each([
    ["24,7", "decimal comma", "24.7"], ["1,500", "decimal or thousands", "1.500 or 1500"], ["1,500.5", "thousands set apart", "1500.5"], ["1,500,000", "thousands set apart", "1500000"],
    ["1 500", "thousands set apart", "1500"], ["1'500", "thousands set apart", "1500"], ["1_500", "thousands set apart", "1500"], ["1.500.000", "more than one point", "one decimal point"],
    ["1e3", "exponent", "in full"], ["1.5E-3", "exponent", "in full"], ["0x1F", "not a decimal", "digits 0 to 9"], ["NaN", "not a number that can be measured", "247"], ["-.inf", "not a number that can be measured", "247"], ["Infinity", "not a number that can be measured", "247"],
    ["5. ", "ends in a point", "write 5"], ["+5", "not needed", "leave the plus sign out"], ["9 10", "two numbers", "one number"], ["1 2 3/4", "two numbers", "one number"],
    ["9.5 3/4", "mixes decimals", "either"], ["9.5½", "mixes decimals", "either"], ["9 5/4", "one or more behind a whole number", "below 1"], ["9 4/4", "one or more behind a whole number", "below 1"],
    ["1/0", "divides by zero", "1 or more"], ["9 3/0", "divides by zero", "1 or more"], ["", "no number", "247"], ["mm", "does not start with a number", "247"], ["/4", "does not start with a number", "247"], ["٣", "does not start with a number", "247"],
  ])("%j: %s, with a hint: %s", (text, message, hint) => {
    const reading = read(text);
    expect(reading).toMatchObject({ ok: false, message: expect.stringContaining(message), hint: expect.stringContaining(hint) });
  });

  test("points at the number and nothing else", () => {
    expect(readNumber("x 24,7 cm", 1, 9)).toMatchObject({ ok: false, start: 2, end: 6 });
    expect(read("  12/0 in")).toMatchObject({ ok: false, start: 2, end: 6 });
  });
});

describe("a text in a message", () => {
  test("is trimmed, quoted, and cut after forty characters", () => {
    expect(quoted(" 9 in ")).toBe('"9 in"');
    expect(quoted("9".repeat(41))).toBe(`"${"9".repeat(39)}…"`);
    expect(quoted("9".repeat(40))).toBe(`"${"9".repeat(40)}"`);
  });
});
