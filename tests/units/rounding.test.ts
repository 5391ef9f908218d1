// Tests of planned rounding on worked examples; its laws are in tests/properties.
import { describe, expect, test } from "vitest";
import { addLengths, divideLength, inches, mm } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { runningMarks, shareOut } from "../../src/units/rounding.ts";

describe("running marks", () => {
  test("do not gather the error of rounded gaps", () => {
    const exact = Array.from({ length: 9 }, (_, index) => divideLength(mm(100 * (index + 1)), 9));
    const marks = runningMarks(exact, mm("0.5"));
    // Nine gaps of 11.11 mm rounded one by one would end at 99 mm.
    expect(marks).toEqual(["11", "22", "33.5", "44.5", "55.5", "66.5", "78", "89", "100"].map((text) => mm(text)));
  });

  test("of no positions are none", () => {
    expect(runningMarks([], mm(1))).toEqual([]);
  });
});

describe("parts shared out", () => {
  test("still make up the whole: three thirds of ten millimetres", () => {
    const third = divideLength(mm(10), 3);
    expect(shareOut(mm(10), [third, third, third], mm(1))).toEqual([mm(4), mm(3), mm(3)]);
  });

  test("get the marks left over by the largest remainder", () => {
    const parts = ["1.2", "2.7", "3.5", "2.6"].map((text) => mm(text));
    expect(shareOut(mm(10), parts, mm(1))).toEqual([mm(1), mm(3), mm(3), mm(3)]);
  });

  test("stay where they are when they are on a mark", () => {
    expect(shareOut(inches(1), [inches(1, 4), inches(3, 4)], inches(1, 16))).toEqual([inches(1, 4), inches(3, 4)]);
    expect(shareOut(mm("2.7"), [mm(1), mm("1.7")], mm(1))).toEqual([mm(1), mm(2)]);
  });

  test("add up to a whole that is itself rounded", () => {
    const parts: readonly Length[] = [mm("0.4"), mm("0.4"), mm("0.4"), mm("0.4")];
    const shared = shareOut(mm("1.6"), parts, mm(1));
    expect(shared).toEqual([mm(1), mm(1), mm(0), mm(0)]);
    expect(addLengths(...shared)).toEqual(mm(2));
  });

  test("that are not the parts of the total are a fault", () => {
    expect(() => shareOut(mm(10), [mm(3), mm(3)], mm(1))).toThrow("do not add up");
  });
});
