// The text block shared by sewn bindings: thickness, swell, creep against a numeric fold, sheet yield with grain, stations.
import { describe, expect, it } from "vitest";
import type { TextBlockKeys } from "../../src/1-definition/text-block-keys.ts";
import type { Definition, Material } from "../../src/1-definition/types.ts";
import { openLedger } from "../../src/2-model/ledger.ts";
import { folioPart, layOutTextBlock } from "../../src/2-model/text-block/block.ts";
import { findTextBlockFaults } from "../../src/2-model/text-block/findings.ts";
import { bestYield, giveSheetYield, yieldOf } from "../../src/2-model/text-block/sheet-yield.ts";
import { findStationFaults, placeStations, placeTapes } from "../../src/2-model/text-block/stations.ts";
import { mm, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { rationalToNumber } from "../../src/units/rational.ts";

const units = { governing: "mm", step: mm("0.5"), dual: false } as const;

function material(role: string, thickness: Length): Material {
  return { role, name: role, thickness, thicknessFrom: "given", grammage: null, grain: "unknown", sheets: [], price: null, packLength: null, packCount: 1 };
}

const usual: TextBlockKeys = {
  page: { height: mm(210), width: mm(148) }, sections: 8, "folded sheets": 4, trim: "none", "trim allowance": mm(3), "swell percent": 75,
};

function blockOf(keys: Partial<TextBlockKeys> = {}, paper = mm("0.1"), measured: Readonly<Record<string, Length>> = {}) {
  const ledger = openLedger(units.step, measured);
  const known = { materials: { "text paper": material("text paper", paper), thread: material("thread", mm("0.5")) }, defaulted: new Set<string>() };
  return { block: layOutTextBlock(known, { ...usual, ...keys }, ledger), ledger };
}

describe("thickness", () => {
  it("counts two leaves for each folded sheet and the thread of each section: 8 sections of 4 sheets of 0.1 mm, thread 0.5 mm", () => {
    const { block } = blockOf();
    expect([block.leaves, block.pages]).toEqual([64, 128]);
    expect(toMillimetres(block.sectionThickness)).toBeCloseTo(0.8, 12);
    expect(toMillimetres(block.blockThickness)).toBeCloseTo(6.4, 12);
    expect(toMillimetres(block.swell)).toBeCloseTo(8 * 0.5 * 0.75, 12);
    expect(toMillimetres(block.spineThickness)).toBeCloseTo(9.4, 12);
  });

  it("lets a measured block govern the spine, and a measured spine govern over both", () => {
    expect(toMillimetres(blockOf({}, mm("0.1"), { "text block thickness": mm(7) }).block.spineThickness)).toBe(10);
    expect(toMillimetres(blockOf({}, mm("0.1"), { "text block thickness": mm(7), "spine thickness": mm("9.2") }).block.spineThickness)).toBe(9.2);
  });
});

describe("creep", () => {
  /** Leaves of a section bent by brute force: each mid-plane is walked in small steps, first round half of the fold, then straight. */
  function foreEdges(sheets: number, thickness: number, leaf: number): readonly number[] {
    return Array.from({ length: sheets }, (_, sheet) => {
      const radius = (sheet + 0.5) * thickness;
      const steps = 20_000;
      let walked = 0;
      let [x, y] = [-radius, 0];
      for (let step = 1; step <= steps; step += 1) {
        const angle = (step / steps) * (Math.PI / 2);
        const [nextX, nextY] = [-radius * Math.cos(angle), radius * Math.sin(angle)];
        walked += Math.hypot(nextX - x, nextY - y);
        [x, y] = [nextX, nextY];
      }
      return x + leaf - walked;
    });
  }

  it.each([[1, "0.1"], [4, "0.125"], [8, "0.1"], [16, "0.2"]])("of %i sheets of %s mm is that of leaves bent one step at a time", (sheets, paper) => {
    const { block } = blockOf({ "folded sheets": sheets }, mm(paper));
    const edges = foreEdges(sheets, Number(paper), 148);
    expect(toMillimetres(block.creep)).toBeCloseTo(edges[0]! - edges.at(-1)!, 3);
    expect(toMillimetres(block.blockWidth)).toBeCloseTo(edges[0]! + sheets * Number(paper), 3);
    expect(toMillimetres(block.narrowestPage)).toBeCloseTo(148 - (edges[0]! - edges.at(-1)!), 3);
  });

  it("takes from the innermost page what it reaches further when the block is cut at the page width", () => {
    const { block } = blockOf({ trim: "fore-edge", "folded sheets": 6 });
    const edges = foreEdges(6, 0.1, toMillimetres(block.narrowestPage));
    expect(edges[0]! + 6 * 0.1).toBeCloseTo(148, 3);
    expect(toMillimetres(block.blockWidth)).toBe(148);
  });

  it("is a note from 1 mm on, and a warning when the trim does not reach it", () => {
    const codes = (keys: Partial<TextBlockKeys>, paper: string) => {
      const { block, ledger } = blockOf(keys, mm(paper));
      return findTextBlockFaults(block, { units }, ledger).map(({ code, severity }) => `${severity} ${code}`);
    };
    expect(codes({ "folded sheets": 7 }, "0.1")).toEqual([]);
    expect(codes({ "folded sheets": 8 }, "0.1")).toEqual(["note creep-shows"]);
    expect(codes({ "folded sheets": 8, trim: "fore-edge" }, "0.1")).toEqual([]);
    expect(codes({ "folded sheets": 8, trim: "fore-edge", "trim allowance": mm(1) }, "0.1")).toEqual(["warn trim-less-than-creep"]);
  });
});

describe("folios", () => {
  it("are the page twice, with what is trimmed", () => {
    const sizes = (trim: TextBlockKeys["trim"]) => {
      const { block } = blockOf({ trim });
      return [toMillimetres(block.folioHeight), toMillimetres(block.folioWidth)];
    };
    expect(sizes("none")).toEqual([210, 296]);
    expect(sizes("fore-edge")).toEqual([210, 302]);
    expect(sizes("three edges")).toEqual([216, 302]);
  });

  const sheet = { height: mm(640), width: mm(900), price: null, pack: 1, inHand: 0 };

  it("lie in a sheet only with their grain along the spine", () => {
    const folio = { height: mm(210), width: mm(296), grain: "height" } as const;
    // Short grain runs along the 640 mm: 3 rows of 210, 3 columns of 296. Long grain runs along the 900 mm: 2 of 296 and 4 of 210.
    expect(yieldOf(folio, sheet, "short")).toMatchObject({ rows: 3, columns: 3, perSheet: 9, turned: false, mayTurn: false });
    expect(yieldOf(folio, sheet, "long")).toMatchObject({ rows: 2, columns: 4, perSheet: 8, turned: true, mayTurn: false });
  });

  it("turn freely without grain, and count the poorer way while nobody knows it", () => {
    const folio = { height: mm(210), width: mm(296), grain: "height" } as const;
    expect(yieldOf(folio, sheet, "none")).toMatchObject({ perSheet: 9, mayTurn: true });
    expect(yieldOf(folio, sheet, "unknown")).toMatchObject({ perSheet: 8, turned: true, mayTurn: false });
    expect(yieldOf({ ...folio, width: mm(700) }, sheet, "unknown")).toMatchObject({ perSheet: 3, turned: false });
  });

  it("come from the sheet that wastes least, and say how many sheets are needed", () => {
    const { block, ledger } = blockOf();
    const part = folioPart(block);
    const a3 = { height: mm(420), width: mm(297), price: null, pack: 1, inHand: 0 };
    expect(bestYield(part, { grain: "short", sheets: [] })).toBeNull();
    // A3 with short grain, along the 297 mm: two folios beside each other on the 420 mm are too wide; one fits: waste; the large sheet gives nine.
    expect(giveSheetYield(part, { grain: "short", sheets: [a3, sheet] }, ledger)).toMatchObject({ sheet, perSheet: 9 });
    expect(rationalToNumber(ledger.number("folios per sheet"))).toBe(9);
    expect(rationalToNumber(ledger.number("sheets of text paper"))).toBe(4);
  });
});

describe("stations", () => {
  const known = { defaulted: new Set<string>(), units } as unknown as Definition;
  const tapes = { "kettle from head": mm(10), "kettle from tail": mm(20), tapes: 3, "tape width": mm(12), "outer tape from kettle": null };

  it("pierce at both edges of each tape, never nearer than the tape is wide, even off the ruler's marks", () => {
    const { ledger } = blockOf();
    const placed = placeTapes(known, { ...tapes, tapes: 4, "tape width": mm("12.7") }, "book/sewing", ledger);
    expect(placed.stations).toHaveLength(10);
    for (const { headSide, tailSide } of placed.tapes) expect(toMillimetres(tailSide) - toMillimetres(headSide)).toBe(13);
    for (const station of placed.stations) expect(Math.abs(toMillimetres(station.at) - toMillimetres(station.exactAt))).toBeLessThanOrEqual(0.75);
    expect(findStationFaults(placed.stations, known, "book/sewing", ledger)).toEqual([]);
  });

  it("stop when tapes do not fit between the kettles, and warn when they almost touch", () => {
    const faults = (width: string) => {
      const { ledger } = blockOf();
      const placed = placeTapes(known, { ...tapes, "tape width": mm(width) }, "book/sewing", ledger);
      return findStationFaults(placed.stations, known, "book/sewing", ledger).map(({ severity }) => severity);
    };
    // Pitch 45 mm: tapes of 42 mm leave 3 mm between them, of 42.5 mm 2.5 mm, of 45 mm nothing.
    expect(faults("42")).toEqual([]);
    expect(faults("42.5")).toEqual(["warn"]);
    expect(faults("45")).toEqual(["stop"]);
  });

  it("without supports stand evenly between the outer ones, rounded once each", () => {
    const { ledger } = blockOf();
    const placed = placeStations(known, { stations: 4, "station from head": mm(15), "station from tail": mm(15) }, "book/sewing", "common practice, no source", ledger);
    expect(placed.map(({ name, at }) => [name, toMillimetres(at)])).toEqual([["station 1", 15], ["station 2", 75], ["station 3", 135], ["station 4", 195]]);
  });
});
