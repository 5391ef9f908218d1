// Printed figures for text blocks: sewing stations, octavo sizes, thickness from weight, creep.
import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/1-definition/types.ts";
import { openLedger } from "../../src/2-model/ledger.ts";
import { layOutTextBlock } from "../../src/2-model/text-block/block.ts";
import { yieldOf } from "../../src/2-model/text-block/sheet-yield.ts";
import { placeStations, placeTapes } from "../../src/2-model/text-block/stations.ts";
import type { SupportedStationKeys } from "../../src/1-definition/text-block-keys.ts";
import { findSheetSize } from "../../src/catalogue/sheet-sizes.ts";
import { addLengths, divideLength, inches, mm, noLength, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { printExact } from "../../src/units/print-length.ts";
import { thicknessFromGrammage } from "../../src/units/grammage.ts";
import { rational } from "../../src/units/rational.ts";

function stationsOf(governing: "mm" | "in", height: Length, keys: SupportedStationKeys) {
  const step = governing === "mm" ? mm("0.5") : inches(1, 16);
  const ledger = openLedger(step, {});
  ledger.give("page height", height, "given", { meaning: "", source: "" });
  const known = { defaulted: new Set<string>(), units: { governing, step, dual: false } } as unknown as Definition;
  return placeTapes(known, keys, "book", ledger);
}

/** Middle of each support, from the head. */
function middles(placed: ReturnType<typeof stationsOf>): readonly Length[] {
  return placed.tapes.map(({ headSide, tailSide }) => divideLength(addLengths(headSide, tailSide), 2));
}

describe("sewing stations", () => {
  it("Adam 1903, ch. II: kettle 1 cm from the head, twice that from the tail, the rest divided equally; 210 mm on 4 cords", () => {
    const placed = stationsOf("mm", mm(210), { "kettle from head": mm(10), "kettle from tail": mm(20), tapes: 4, "tape width": noLength, "outer tape from kettle": null });
    const ends = [placed.stations[0]!.at, placed.stations.at(-1)!.at];
    expect([ends[0]!, ...middles(placed), ends[1]!].map(toMillimetres)).toEqual([10, 46, 82, 118, 154, 190]);
  });

  it("Bean & Brodhead 1918, Problem XIV: kettles 1/2 in from each end, three tapes, one central, the others 1 to 1 1/2 in from the ends: 8 holes", () => {
    const placed = stationsOf("in", inches(15, 2), { "kettle from head": inches(1, 2), "kettle from tail": inches(1, 2), tapes: 3, "tape width": inches(1, 2), "outer tape from kettle": inches(3, 4) });
    expect(placed.stations).toHaveLength(8);
    expect(middles(placed).map((at) => printExact(at, "in"))).toEqual(["1 1/4 in", "3 3/4 in", "6 1/4 in"]);
  });

  it("Vaughn 1912, library style: punctures 3/4 in from head and 1 1/4 in from foot, five tapes, outer ones 1/4 in inside the punctures; 9 in", () => {
    const placed = stationsOf("in", inches(9), { "kettle from head": inches(3, 4), "kettle from tail": inches(5, 4), tapes: 5, "tape width": noLength, "outer tape from kettle": inches(1, 4) });
    expect(middles(placed).map((at) => toMillimetres(at) / 25.4)).toEqual([1, 2.625, 4.25, 5.875, 7.5]);
  });

  it("Bean & Brodhead 1918, Problem I: a pamphlet's three holes are the centre and one 1/2 to 1 1/2 in from each end", () => {
    const ledger = openLedger(inches(1, 16), {});
    ledger.give("page height", inches(7), "given", { meaning: "", source: "" });
    const known = { defaulted: new Set<string>(), units: { governing: "in", step: inches(1, 16), dual: false } } as unknown as Definition;
    const placed = placeStations(known, { stations: 3, "station from head": inches(1), "station from tail": inches(1) }, "book", "", ledger);
    expect(placed.map(({ at }) => printExact(at, "in"))).toEqual(["1 in", "3 1/2 in", "6 in"]);
  });
});

describe("sheets", () => {
  // Untrimmed octavo: three folds, the longer side in four, the shorter in two, worked out from Cockerell's table of sheets.
  it.each([["Crown", "7 1/2 in", "5 in"], ["Demy", "8 3/4 in", "5 5/8 in"], ["Royal", "10 in", "6 1/4 in"], ["Imperial", "11 in", "7 1/2 in"]])(
    "a sheet of %s gives four octavo folios, leaves %s × %s", (name, height, width) => {
      const sheet = findSheetSize(name)!;
      const leaf = { height: divideLength(sheet.width, 2), width: divideLength(sheet.height, 4) };
      expect([printExact(leaf.height, "in"), printExact(leaf.width, "in")]).toEqual([height, width]);
      const folio = { height: leaf.height, width: divideLength(sheet.height, 2), grain: "height" } as const;
      // The fold of a folio runs along the shorter side: short grain keeps to the spine.
      expect(yieldOf(folio, sheet, "short").perSheet).toBe(4);
      expect(yieldOf(folio, sheet, "long").perSheet).toBeLessThan(4);
    });
});

describe("thickness and creep", () => {
  // Worked out from the definition of bulk in ISO 534 (from memory): 80 g/m² at 1.25 is 100 µm, 120 g/m² at 1.30 is 156 µm.
  it("of paper is its weight times its bulk", () => {
    expect(toMillimetres(thicknessFromGrammage(rational(80), rational(5, 4)))).toBe(0.1);
    expect(toMillimetres(thicknessFromGrammage(rational(120), rational(13, 10)))).toBe(0.156);
  });

  // Two pre-press help pages: sheets less one times the thickness, times a closing quality of 1 (ideal) to 1.4; 32 pages of 0.10 mm: 0.7 to 0.98 mm.
  it("of 32 pages in one section is at least the ideal of the printers' rule, and no more than half circles can make it", () => {
    const ledger = openLedger(mm("0.5"), {});
    const paper = { role: "", name: "", thickness: mm("0.1"), thicknessFrom: "given", grammage: null, grain: "unknown", sheets: [], price: null, packLength: null, packCount: 1 } as const;
    const { creep, pages } = layOutTextBlock({ materials: { "text paper": paper, thread: paper }, defaulted: new Set() },
      { page: { height: mm(210), width: mm(148) }, sections: 1, "folded sheets": 8, trim: "none", "trim allowance": mm(3), "swell percent": 75 }, ledger);
    expect(pages).toBe(32);
    expect(toMillimetres(creep)).toBeGreaterThanOrEqual(0.98);
    expect(toMillimetres(creep)).toBeLessThanOrEqual(0.7 * (Math.PI / 2) + 1e-5);
  });
});
