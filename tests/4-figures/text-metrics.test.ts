// Label widths from the table, checked against sums of advances read off the font file.
import { describe, expect, it } from "vitest";
import { inkOf, measureText, millimetresPerPoint, textRuns } from "../../src/4-figures/text-metrics.ts";

describe("measuring a label", () => {
  it("adds up the advances of its characters", () => {
    // hmtx of the regular face: figures 497, space 200, "m" 829.
    expect(measureText("247 mm", 10)).toBeCloseTo((3 * 497 + 200 + 2 * 829) / 100, 9);
  });
  it("sets the figures of a fraction as numerators and denominators", () => {
    // numr and dnom figures 367, the fraction slash 86.
    expect(measureText("13\u204416", 10)).toBeCloseTo((4 * 367 + 86) / 100, 9);
    // The blank before it, 200, is drawn together by 80.
    expect(measureText("9\u00a03\u20444", 10)).toBeCloseTo((497 + 120 + 2 * 367 + 86) / 100, 9);
  });
  it("is wider in semibold", () => expect(measureText("247", 10, 600)).toBeGreaterThan(measureText("247", 10, 400)));
  it("grows with the type size", () => expect(measureText("card", 6)).toBeCloseTo(2 * measureText("card", 3), 9));
  it("takes a character outside the face as wide as a wide letter", () => expect(measureText("\u25a1", 10)).toBeGreaterThanOrEqual(measureText("W", 10)));
  it("of an empty label is nothing", () => expect(measureText("", 10)).toBe(0));
});

describe("the parts of a label", () => {
  it("are plain text and fractions in order", () => {
    expect(textRuns("9\u00a03\u20444 in")).toEqual([{ text: "9", fraction: false }, { text: "\u00a03\u20444", fraction: true }, { text: " in", fraction: false }]);
  });
  it("are one run without a fraction", () => expect(textRuns("stub 3 crest")).toEqual([{ text: "stub 3 crest", fraction: false }]));
});

describe("the ink of a label", () => {
  it("goes below the line only with descenders", () => {
    expect(inkOf("247.5").below).toBeLessThan(0.05);
    expect(inkOf("page").below).toBeGreaterThan(0.2);
    expect(inkOf("Q").below).toBeGreaterThan(0.15);
  });
});

it("a point is a seventy-second of an inch", () => expect(72 * millimetresPerPoint).toBeCloseTo(25.4, 12));
