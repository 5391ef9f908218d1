// Millimetres to inches against the table in Adam, Practical Bookbinding (1903), "The Metric and British Systems".
import { expect, test } from "vitest";
import { inches, mm, ratioOf, roundToMark } from "../../src/units/length.ts";
import { rationalFromDecimal } from "../../src/units/rational.ts";

// As printed: millimetres, inches.
const printedTable: readonly (readonly [millimetres: number, inInches: string])[] = [
  [1, ".039"], [2, ".079"], [3, ".118"], [5, ".197"], [7, ".276"], [10, ".394"], [30, "1.181"], [50, "1.968"], [100, "3.94"], [300, "11.81"], [1000, "39.37"],
];

/** 50 mm is 1.9685 in: the table cuts it off to 1.968 where rounding, as in its other rows, gives 1.969. */
const knownDifferences: ReadonlyMap<number, string> = new Map([[50, "1.969"]]);

test.each(printedTable)("%i mm is %s in as printed", (millimetres, printed) => {
  const places = printed.length - printed.indexOf(".") - 1;
  const lastPlace = inches(`0.${"0".repeat(places - 1)}1`);
  const rounded = ratioOf(roundToMark(mm(millimetres), lastPlace), inches(1));
  expect(rounded).toEqual(rationalFromDecimal(knownDifferences.get(millimetres) ?? printed));
});

test("the known difference is one: the printed figure is less than a thousandth off", () => {
  for (const [millimetres, computed] of knownDifferences) {
    const printed = printedTable.find(([row]) => row === millimetres)?.[1];
    expect(printed).not.toBe(computed);
    expect(Number(computed) - Number(printed)).toBeCloseTo(0.001, 9);
  }
});
