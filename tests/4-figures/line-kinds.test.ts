// Lines and fills of drawings: told apart by weight, pattern and tone, never by colour.
import { describe, expect, it } from "vitest";
import { fillLooks } from "../../src/4-figures/fill-kinds.ts";
import { lineDashes, lineLooks, lineWidth } from "../../src/4-figures/line-kinds.ts";
import type { Pen } from "../../src/4-figures/line-kinds.ts";
import type { LineKind } from "../../src/4-figures/types.ts";

const kinds = Object.keys(lineLooks) as LineKind[];
const pairs = kinds.flatMap((one, index) => kinds.slice(index + 1).map((other) => [one, other] as const));

/** Whether the eye tells the patterns apart: another number of dashes in a period, or a dash twice as long. */
function patternsDiffer(one: readonly number[] | null, other: readonly number[] | null): boolean {
  if (one === null || other === null) return one !== other;
  return one.length !== other.length || Math.max(one[0]!, other[0]!) >= 2 * Math.min(one[0]!, other[0]!);
}

/** One step of the row of widths is a factor of √2. */
function widthsDiffer(one: number, other: number): boolean {
  return Math.max(one, other) >= 1.35 * Math.min(one, other);
}

function lookAlike(pen: Pen): readonly string[] {
  return pairs
    .filter(([one, other]) => !widthsDiffer(lineWidth(one, pen), lineWidth(other, pen)) && !patternsDiffer(lineDashes(one, pen), lineDashes(other, pen)))
    .map((pair) => pair.join(" and "));
}

describe("line kinds", () => {
  // Both are continuous narrow lines, as in BS/ISO drawings; a dimension line ends in arrowheads or dots, an edge at other edges.
  it.each(["small", "large"] as const)("differ in weight or pattern with the %s pen, but for edges and dimension lines, which end differently", (pen) => {
    expect(lookAlike(pen)).toEqual(["edge and dimension"]);
  });

  it("have no hue, and are dark enough to print: at least 7 : 1 on white", () => {
    for (const kind of kinds) expect(lineLooks[kind].colour, kind).toMatch(/^#([0-4])\1\1$/);
  });

  it("mean something each, in words of their own", () => {
    expect(new Set(kinds.map((kind) => lineLooks[kind].meaning)).size).toBe(kinds.length);
  });

  it("are found alike when they are", () => {
    expect(patternsDiffer([2, 1], [2.5, 1])).toBe(false);
    expect(patternsDiffer([2, 1], [5, 1])).toBe(true);
    expect(patternsDiffer(null, null)).toBe(false);
    expect(widthsDiffer(0.25, 0.3)).toBe(false);
  });
});

describe("fills of materials", () => {
  const materials = Object.entries(fillLooks).filter(([, { meaning }]) => meaning !== "");

  it("have no hue", () => {
    for (const [kind, { tone }] of materials) {
      const parts = tone.length === 4 ? [tone[1], tone[2], tone[3]] : [tone.slice(1, 3), tone.slice(3, 5), tone.slice(5, 7)];
      expect(new Set(parts).size, kind).toBe(1);
    }
  });

  it("differ in hatching, or in tone by a tenth of the way from black to white", () => {
    const tone = (text: string): number => parseInt(text.length === 4 ? text[1]! + text[1]! : text.slice(1, 3), 16) / 255;
    const alike = materials.flatMap(([one, a], index) => materials.slice(index + 1)
      .filter(([, b]) => Math.abs(tone(a.tone) - tone(b.tone)) < 0.1 && JSON.stringify(a.hatching) === JSON.stringify(b.hatching)).map(([other]) => `${one} and ${other}`));
    expect(alike).toEqual([]);
  });
});
