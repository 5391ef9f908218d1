// Laws of sheets that are folded, laid into each other and read: folded again here with nothing but paper's own rules.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { foldSheets, foldStations, mostSheetsAlone, sheetsOfSections } from "../../src/6-print/fold/fold-sheets.ts";
import type { FoldedSheet } from "../../src/6-print/fold/fold-sheets.ts";
import { addLengths, mm, multiplyLength, sameLength, subtractLength, toMillimetres } from "../../src/units/length.ts";

const paper = mm("0.1");
const pageCount = fc.integer({ min: 1, max: 400 });

/** Leafs through a section: from the front, each sheet's first leaf from the outside in, then each second leaf from the inside out. */
function readSection(sheets: readonly FoldedSheet[]): readonly (number | null)[] {
  const firstLeaves = sheets.flatMap(({ outer, inner }) => [outer.right, inner.left]);
  const secondLeaves = sheets.toReversed().flatMap(({ outer, inner }) => [inner.right, outer.left]);
  return [...firstLeaves, ...secondLeaves];
}

function sectionsOf(sheets: readonly FoldedSheet[]): readonly (readonly FoldedSheet[])[] {
  return Array.from({ length: sheets.at(-1)!.section }, (_, index) => sheets.filter(({ section }) => section === index + 1));
}

describe("folded sheets", () => {
  it("read in order from the first page to the last, each page once, empty ones only at the end", () => {
    fc.assert(fc.property(pageCount, (pages) => {
      const read = sectionsOf(foldSheets(pages, paper)).flatMap(readSection);
      expect(read.length % 4).toBe(0);
      expect(read.length - pages).toBeLessThan(4);
      expect(read).toEqual(Array.from({ length: read.length }, (_, index) => (index < pages ? index + 1 : null)));
    }));
  });

  it("have on the back of each leaf the page that follows, when the printer turns them on the short edge", () => {
    fc.assert(fc.property(pageCount, (pages) => {
      for (const { outer, inner } of foldSheets(pages, paper)) {
        // Turned about its upright middle, the left half of the one side lies behind the right half of the other.
        if (outer.right !== null && inner.left !== null) expect(inner.left).toBe(outer.right + 1);
        if (outer.left !== null && inner.right !== null) expect(outer.left).toBe(inner.right + 1);
      }
    }));
  });

  it("move their pages by one thickness of paper for each sheet around them, the outermost not at all", () => {
    fc.assert(fc.property(pageCount, fc.integer({ min: 20, max: 500 }), (pages, microns) => {
      const thickness = mm(String(microns / 1000));
      for (const { place, shift } of foldSheets(pages, thickness)) {
        let around = mm(0);
        for (let each = 1; each < place; each += 1) around = addLengths(around, thickness);
        expect(sameLength(shift, around)).toBe(true);
      }
    }));
  });

  it("are one section while they are few; then sections of three to five sheets that differ by one at most", () => {
    fc.assert(fc.property(pageCount, (pages) => {
      const sections = sheetsOfSections(pages);
      expect(sections.reduce((sum, sheets) => sum + sheets, 0)).toBe(Math.ceil(pages / 4));
      expect(Math.max(...sections) - Math.min(...sections)).toBeLessThanOrEqual(1);
      if (Math.ceil(pages / 4) <= mostSheetsAlone) expect(sections).toHaveLength(1);
      else {
        expect(Math.max(...sections)).toBeLessThanOrEqual(5);
        expect(Math.min(...sections)).toBeGreaterThanOrEqual(3);
      }
    }));
  });

  it("are sewn through holes that lie alike from head and tail and evenly between", () => {
    fc.assert(fc.property(fc.integer({ min: 100, max: 420 }), fc.integer({ min: 1, max: 9 }), (height, sections) => {
      const stations = foldStations(mm(height), sections);
      // Thread that goes in at the first hole comes out at the last only when they are even in number; one section begins and ends in the middle.
      expect(stations.length % 2).toBe(sections === 1 ? 1 : 0);
      stations.forEach((at, index) => expect(sameLength(at, subtractLength(mm(height), stations.at(-1 - index)!))).toBe(true));
      const gaps = stations.slice(1).map((at, index) => subtractLength(at, stations[index]!));
      for (const gap of gaps) expect(sameLength(gap, gaps[0]!)).toBe(true);
    }));
  });
});

describe("published figures", () => {
  it("28 pages on seven sheets, outermost 28 | 1 outside and 2 | 27 inside: stored article on imposition (READ)", () => {
    // In one section, as there; the rule of the pages is the same within any section.
    const [outermost] = foldSheets(28, paper);
    expect([outermost!.outer, outermost!.inner]).toEqual([{ left: 28, right: 1 }, { left: 2, right: 27 }]);
  });

  it("creep of 32 pages on 0.10 mm paper is 0.7 mm: stored pre-press help page, (n/4 − 1) × thickness (READ)", () => {
    const shifts = foldSheets(32, paper).map(({ shift }) => shift);
    expect(sameLength(shifts.at(-1)!, multiplyLength(paper, 32 / 4 - 1))).toBe(true);
    expect(toMillimetres(shifts.at(-1)!)).toBeCloseTo(0.7, 9);
  });

  it("the outer holes lie 1/2 to 1 1/2 in from the ends: Bean & Brodhead 1918, Problem I (READ)", () => {
    for (const height of [mm(210), mm("215.9")]) {
      const end = toMillimetres(foldStations(height, 1)[0]!);
      expect(end).toBeGreaterThanOrEqual(12.7);
      expect(end).toBeLessThanOrEqual(38.1);
    }
  });
});
