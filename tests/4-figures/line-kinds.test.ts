// Lines survive a cheap printer and a reduction: the table of line kinds and the hatching, measured after being made smaller.
import { describe, expect, it } from "vitest";
import { fillLooks, hatchStroke } from "../../src/4-figures/fill-kinds.ts";
import { lineDashes, lineLooks, lineWidth, penWidths } from "../../src/4-figures/line-kinds.ts";
import type { LineKind } from "../../src/4-figures/types.ts";

/** A copier's reduction to 70 %, and the thinnest line that office printers keep: 0.25 pt. Common practice, no source. */
const reduction = 0.7;
const thinnest = (0.25 * 25.4) / 72;

const kinds = Object.keys(lineLooks) as readonly LineKind[];
const pens = ["large", "small"] as const;

describe("after a reduction to 70 %", () => {
  it.each(kinds)("a line of the kind %s is at least 0.25 pt wide with every pen", (kind) => {
    for (const pen of pens) expect(lineWidth(kind, pen) * reduction).toBeGreaterThanOrEqual(thinnest);
  });

  it("hatching is too", () => {
    expect(hatchStroke.width * reduction).toBeGreaterThanOrEqual(thinnest);
  });

  it.each(kinds.filter((kind) => lineLooks[kind].dashes !== null))("the gaps of %s stay open: wider than the line itself", (kind) => {
    for (const pen of pens) {
      const gaps = lineDashes(kind, pen)!.filter((_, index) => index % 2 === 1);
      expect(Math.min(...gaps)).toBeGreaterThan(lineWidth(kind, pen));
    }
  });
});

describe("wide and narrow lines", () => {
  // *Manual of Engineering Drawing* (BS/ISO), types of line: two widths, 2 : 1, from the row 0.25, 0.35, 0.5, 0.7, 1.0, 1.4 mm.
  const row = [0.25, 0.35, 0.5, 0.7, 1, 1.4];

  it.each(pens)("of the %s pen are two widths of the row, 2 : 1", (pen) => {
    expect(penWidths[pen].wide / penWidths[pen].narrow).toBe(2);
    expect(row).toContain(penWidths[pen].wide);
    expect(row).toContain(penWidths[pen].narrow);
  });
});

it("fills that look alike in grey differ in their hatching", () => {
  const grey = (tone: string): number => Number.parseInt(tone.length === 4 ? tone[1]! + tone[1]! : tone.slice(1, 3), 16) / 255;
  const looks = Object.entries(fillLooks).filter(([, { meaning }]) => meaning !== "");
  for (const [name, a] of looks) {
    for (const [other, b] of looks) {
      if (name >= other || Math.abs(grey(a.tone) - grey(b.tone)) >= 0.07) continue;
      expect(JSON.stringify(a.hatching), `${name} and ${other}`).not.toBe(JSON.stringify(b.hatching));
    }
  }
});
