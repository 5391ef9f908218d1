// Tests of lengths in print: fractions, steps, "about", dual units, thicknesses and the exact text of plan.json.
import { describe, expect, test } from "vitest";
import { inches, lengthOf, mm } from "../../src/units/length.ts";
import { printExact, printLength, printNumberOnly, printSizes, printThickness } from "../../src/units/print-length.ts";
import type { LengthStyle } from "../../src/units/print-length.ts";
import { rational } from "../../src/units/rational.ts";

const inchStyle: LengthStyle = { governing: "in", step: inches(1, 16), dual: false };
const metricStyle: LengthStyle = { governing: "mm", step: mm("0.5"), dual: false };
const dual = (style: LengthStyle): LengthStyle => ({ ...style, dual: true });

/** No-break spaces are shown as underscores, so that a test can be read. */
const seen = (text: string): string => text.replaceAll("\u00a0", "_");

describe("a length on the project's marks", () => {
  test("in inches is a whole number and a fraction in lowest terms", () => {
    expect(seen(printLength(inches("9.75"), inchStyle))).toBe("9_3⁄4_in");
    expect(seen(printLength(inches(12, 16), inchStyle))).toBe("3⁄4_in");
    expect(seen(printLength(inches(9), inchStyle))).toBe("9_in");
    expect(seen(printLength(inches(-39, 4), inchStyle))).toBe("−9_3⁄4_in");
  });

  test("in millimetres has only the decimals it needs", () => {
    expect(seen(printLength(mm("247.5"), metricStyle))).toBe("247.5_mm");
    expect(seen(printLength(mm(247), metricStyle))).toBe("247_mm");
    expect(seen(printLength(mm("247.25"), { ...metricStyle, step: mm("0.25") }))).toBe("247.25_mm");
    expect(seen(printLength(mm("-0.5"), metricStyle))).toBe("−0.5_mm");
  });

  test("of nothing is a plain nought", () => {
    expect([printLength(mm(0), metricStyle), printLength(mm(0), dual(inchStyle))].map(seen)).toEqual(["0_mm", "0_in"]);
  });
});

describe("a length off the project's marks", () => {
  test("is rounded to the nearest one and says so", () => {
    expect(seen(printLength(lengthOf(rational(40, 3)), metricStyle))).toBe("about_13.5_mm");
    expect(seen(printLength(inches(29, 3), inchStyle))).toBe("about_9_11⁄16_in");
  });

  test("but exact in the other unit has it behind, as it was meant", () => {
    expect(seen(printLength(mm(3), inchStyle))).toBe("about_1⁄8_in (3_mm)");
    expect(seen(printLength(mm("247.3"), inchStyle))).toBe("about_9_3⁄4_in (247.3_mm)");
    expect(seen(printLength(inches(9, 32), metricStyle))).toBe("about_7_mm (9⁄32_in)");
  });

  test("and shorter than a mark is printed as a thickness, never as about nothing", () => {
    expect(seen(printLength(mm("0.2"), metricStyle))).toBe("0.2_mm");
    expect(seen(printLength(mm("0.5"), inchStyle))).toBe("about_0.02_in (0.5_mm)");
  });
});

describe("a length in dual units", () => {
  test("has the governing unit first and the other marked as rounded behind", () => {
    expect(seen(printLength(inches("9.75"), dual(inchStyle)))).toBe("9_3⁄4_in (about_247.5_mm)");
    expect(seen(printLength(mm("247.5"), dual(metricStyle)))).toBe("247.5_mm (about_9_3⁄4_in)");
  });

  test("does not call rounded what is exact in both", () => {
    expect(seen(printLength(inches(5), dual(inchStyle)))).toBe("5_in (127_mm)");
    expect(seen(printLength(mm(127), dual(metricStyle)))).toBe("127_mm (5_in)");
  });
});

describe("two sizes", () => {
  test("share one unit when both are put the same way", () => {
    expect(seen(printSizes(inches("9.75"), inches("8.5"), inchStyle))).toBe("9_3⁄4 ×_8_1⁄2_in");
    expect(seen(printSizes(mm(300), mm("220.5"), metricStyle))).toBe("300 ×_220.5_mm");
    expect(seen(printSizes(inches(20), inches(26), dual(inchStyle)))).toBe("20 ×_26_in (about_508 ×_660.5_mm)");
    expect(seen(printSizes(mm(300), mm(220), inchStyle))).toBe("about_11_13⁄16 ×_8_11⁄16_in (300 ×_220_mm)");
    expect(seen(printSizes(inches("9.75"), inches("8.5"), dual(inchStyle)))).toBe("9_3⁄4 ×_8_1⁄2_in (about_247.5 ×_216_mm)");
  });

  test("are printed each in full when only one is on the marks", () => {
    expect(seen(printSizes(mm(300), inches(9), inchStyle))).toBe("about_11_13⁄16_in (300_mm) ×_9_in");
    expect(seen(printSizes(mm(300), lengthOf(rational(40, 3)), metricStyle))).toBe("300_mm ×_about_13.5_mm");
  });
});

describe("a thickness", () => {
  test("in millimetres is printed to the hundredth", () => {
    expect(seen(printThickness(mm("0.45"), metricStyle))).toBe("0.45_mm");
    expect(seen(printThickness(mm("0.4567"), metricStyle))).toBe("about_0.46_mm");
    expect(seen(printThickness(inches(1, 8), metricStyle))).toBe("about_3.18_mm (1⁄8_in)");
  });

  test("in an inch project is a fraction on a mark or a 64th, else to the thousandth", () => {
    expect(seen(printThickness(inches(3, 16), inchStyle))).toBe("3⁄16_in");
    expect(seen(printThickness(inches("0.012"), inchStyle))).toBe("0.012_in");
    expect(seen(printThickness(mm("0.4"), inchStyle))).toBe("about_0.016_in (0.4_mm)");
    expect(seen(printThickness(inches(7, 32), inchStyle))).toBe("7⁄32_in");
    expect(seen(printThickness(inches(1, 64), inchStyle))).toBe("1⁄64_in");
    expect(seen(printThickness(inches(1, 128), inchStyle))).toBe("about_0.008_in");
  });

  test("in dual units carries the other behind", () => {
    expect(seen(printThickness(mm("0.4"), dual(metricStyle)))).toBe("0.4_mm (about_0.016_in)");
    expect(seen(printThickness(inches(1, 8), dual(inchStyle)))).toBe("1⁄8_in (about_3.18_mm)");
  });
});

describe("the number on a dimension line", () => {
  test("has neither unit nor a second reading", () => {
    expect(seen(printNumberOnly(inches("9.75"), dual(inchStyle)))).toBe("9_3⁄4");
    expect(seen(printNumberOnly(lengthOf(rational(40, 3)), dual(metricStyle)))).toBe("13.5");
    expect(seen(printNumberOnly(mm(3), inchStyle))).toBe("1⁄8");
    expect(seen(printNumberOnly(mm("0.2"), metricStyle))).toBe("0.2");
  });
});

describe("the exact text", () => {
  test("is plain ASCII in the governing unit where that is exact", () => {
    expect(printExact(inches("9.75"), "in")).toBe("9 3/4 in");
    expect(printExact(inches(-1, 64), "in")).toBe("-1/64 in");
    expect(printExact(inches("9.75"), "mm")).toBe("247.65 mm");
    expect(printExact(mm(0), "in")).toBe("0 in");
  });

  test("is decimal millimetres else, and a fraction of one at last", () => {
    expect(printExact(mm(3), "in")).toBe("3 mm");
    expect(printExact(inches(1, 128), "in")).toBe("0.1984375 mm");
    expect(printExact(lengthOf(rational(40, 3)), "in")).toBe("40/3 mm");
    expect(printExact(lengthOf(rational(-40, 3)), "mm")).toBe("-40/3 mm");
    expect(printExact(lengthOf(rational(1n, 10n ** 12n)), "mm")).toBe("1/1000000000000 mm");
  });
});

test("no printed length uses a sign that the fonts lack", () => {
  const lengths = [mm(3), inches(-39, 4), inches(29, 3), mm("0.4"), lengthOf(rational(40, 3)), inches(1, 64)];
  const texts = lengths.flatMap((length) => [inchStyle, metricStyle].flatMap((style) => [style, dual(style)].flatMap((each) => [printLength(length, each), printThickness(length, each), printSizes(length, mm(5), each)])));
  expect(texts.join("")).toMatch(/^[\x20-\x7e\u00a0⁄×−]+$/u);
});
