// Templates on sheets: everything shown somewhere, true to size, seams named on both sides, checks on every sheet.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxContains, boxesMeet } from "../../src/geometry/box.ts";
import { line, rectangle } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { area, label, stroke, textBox } from "../../src/4-figures/scene.ts";
import type { TemplateDraft } from "../../src/4-figures/template-draft.ts";
import { shareSheets } from "../../src/4-figures/share-sheets.ts";
import { layOutSheets } from "../../src/4-figures/template-sheets.ts";
import { sheetMargin, sheetOverlap } from "../../src/4-figures/template-tiles.ts";
import type { TemplateSheet } from "../../src/4-figures/types.ts";

const papers = { a4: [210, 297], letter: [215.9, 279.4], a5: [148, 210], "half-letter": [139.7, 215.9] } as const;
const paperIds = ["a4", "letter", "a5", "half-letter"] as const;

function draft(width: number, height: number): TemplateDraft {
  return {
    id: "t", title: "Test template", book: "A book, revision 1", use: ["Lay it on."], alternative: "A rectangle.", width, height,
    items: [
      area(rectangle(0, 0, width, height), "none", "cut"),
      ...Array.from({ length: Math.floor(width / 20) }, (_, index) => stroke(line(point(index * 20 + 10, 0), point(index * 20 + 10, 10)), "valley", `mark ${index}`)),
      ...Array.from({ length: Math.floor(width / 20) }, (_, index) => label(`mark ${index}`, `m${index}`, point(index * 20 + 10, 14), { anchor: "middle" })),
    ],
    marks: [],
  };
}

/** The parts of templates that a sheet shows, read from its inner windows. */
function windowsOf(sheet: TemplateSheet) {
  return [...sheet.svg.matchAll(/<svg x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)" viewBox="([^"]+)"[^>]*>([^]*?)<\/svg>/g)].map((match) => {
    const [x, y, width, height] = match.slice(1, 5).map(Number) as [number, number, number, number];
    const view = match[5]!.split(" ").map(Number) as [number, number, number, number];
    return { x, y, width, height, view, inside: match[6]! };
  });
}

const sizes = [[60, 60], [189, 240], [375, 50], [200, 294], [73, 294], [1200, 60], [600, 600], [12000, 60]] as const;
const cases = paperIds.flatMap((paper) => sizes.map(([width, height]) => [paper, width, height] as const));

describe.each(cases)("on %s, a template of %i × %i mm", (paper, width, height) => {
  const sheets = layOutSheets([draft(width, height)], paper);
  const views = sheets.flatMap(windowsOf).map(({ view }) => view).sort((a, b) => a[1] - b[1] || a[0] - b[0]);

  it("is shown whole, neighbouring sheets sharing the overlap", () => {
    const lefts = [...new Set(views.map(([left]) => left))].sort((a, b) => a - b);
    const tops = [...new Set(views.map(([, top]) => top))].sort((a, b) => a - b);
    expect(lefts.length * tops.length).toBe(views.length);
    expect(lefts[0]).toBeLessThanOrEqual(0);
    expect(tops[0]).toBeLessThanOrEqual(0);
    expect(Math.max(...views.map(([left, , wide]) => left + wide))).toBeGreaterThanOrEqual(width);
    expect(Math.max(...views.map(([, top, , high]) => top + high))).toBeGreaterThanOrEqual(height);
    views.forEach(([left, top, wide, high], index) => {
      if ((index + 1) % lefts.length !== 0) expect(left + wide - views[index + 1]![0]).toBeCloseTo(sheetOverlap, 2);
      if (index + lefts.length < views.length) expect(top + high - views[index + lefts.length]![1]).toBeCloseTo(sheetOverlap, 2);
    });
  });

  it("is drawn at true size, inside the printer's margins", () => {
    const [short, long] = papers[paper];
    for (const sheet of sheets) {
      expect([sheet.width, sheet.height]).toEqual(sheet.landscape ? [long, short] : [short, long]);
      const windows = windowsOf(sheet);
      expect(windows.length).toBe(sheet.pieces.length);
      windows.forEach(({ x, y, width: shown, height: high, view }, index) => {
        expect([shown, high]).toEqual([view[2], view[3]]);
        expect(x).toBeGreaterThanOrEqual(sheetMargin - 0.001);
        expect(y).toBeGreaterThanOrEqual(sheetMargin);
        expect(x + shown).toBeLessThanOrEqual(sheet.width - sheetMargin + 0.001);
        expect(y + high).toBeLessThanOrEqual(sheet.height - sheetMargin);
        // The origin says where template millimetres lie on the sheet.
        expect(x - view[0]).toBeCloseTo(-sheet.pieces[index]!.origin[0], 2);
        expect(y - view[1]).toBeCloseTo(-sheet.pieces[index]!.origin[1], 2);
        for (const other of windows.slice(index + 1)) expect(x + shown <= other.x || other.x + other.width <= x || y + high <= other.y || other.y + other.height <= y).toBe(true);
      });
    }
  });

  it("carries a check of 100 mm and of 4 in on every sheet", () => {
    for (const sheet of sheets) {
      const lengths = [...sheet.svg.matchAll(/d="M([\d.]+) ([\d.]+)L\1 ([\d.]+)L([\d.]+) \3L\4 \2" /g)].map((match) => Number(match[4]) - Number(match[1]));
      expect(lengths[0]).toBeCloseTo(100, 9);
      expect(lengths[1]).toBeCloseTo(101.6, 9);
    }
  });

  it("names every seam on both of its pieces", () => {
    const names = sheets.flatMap(windowsOf).map(({ inside }) => [...inside.matchAll(/data-label="cross ([A-Z]+)"/g)].map((match) => match[1]!));
    const all = new Set(names.flat());
    const columns = new Set(views.map(([left]) => left)).size;
    const rows = new Set(views.map(([, top]) => top)).size;
    expect(all.size).toBe(2 * ((columns - 1) * rows + (rows - 1) * columns));
    for (const name of all) expect(names.filter((list) => list.includes(name)).length).toBeGreaterThanOrEqual(2);
  });

  it("shows each of its labels whole on some sheet", () => {
    const shown = new Set(sheets.flatMap((sheet) => [...sheet.svg.matchAll(/data-label="(mark \d+)"/g)].map((match) => match[1]!)));
    expect(shown.size).toBe(Math.floor(width / 20));
  });
});

describe("sheets", () => {
  it("lie across when that takes fewer", () => {
    expect(layOutSheets([draft(250, 60)], "a4").map((sheet) => sheet.landscape)).toEqual([true]);
    expect(layOutSheets([draft(60, 230)], "a4").map((sheet) => sheet.landscape)).toEqual([false]);
  });
  it("have pieces that are labelled only when a template has several", () => {
    const labels = (width: number): readonly string[] => layOutSheets([draft(width, 60)], "a4").flatMap((sheet) => sheet.pieces.map(({ label: of }) => of));
    expect(labels(60)).toEqual([""]);
    expect(labels(375)).toEqual(["row 1 of 1, column 1 of 2", "row 1 of 1, column 2 of 2"]);
  });
  it("move a seam aside that would cut a label in two", () => {
    const long = label("long", "a label of some length", point(110, 20), { anchor: "middle" });
    const upright = label("upright", "another label of some length", point(30, 150), { anchor: "middle", angle: 90 });
    for (const [width, height, item] of [[400, 60, long], [60, 300, upright], [220, 220, long]] as const) {
      const windows = layOutSheets([{ ...draft(width, height), items: [item] }], "a4").flatMap(windowsOf);
      expect(windows.length).toBeGreaterThan(1);
      const box = textBox(item);
      expect(windows.some(({ view: [left, top, wide, high] }) => boxContains({ left, top, right: left + wide, bottom: top + high }, box))).toBe(true);
    }
  });
  it("have ids that differ from sheet to sheet and paper to paper", () => {
    const drafts = [draft(600, 60), { ...draft(200, 294), id: "u" }];
    const sheets = paperIds.flatMap((paper) => layOutSheets(drafts, paper));
    expect(sheets.length).toBeGreaterThan(4);
    const ids = sheets.flatMap((sheet) => [...sheet.svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!));
    expect(new Set(ids).size).toBe(ids.length);
  });
  it("shorten a title that is too long instead of running into the map", () => {
    const long = layOutSheets([{ ...draft(200, 294), book: "A very long title ".repeat(30) }], "a4")[0]!;
    expect(long.svg).toContain("…");
  });
  it("are shared: a guide of two pieces, a strip as high as a sheet and a corner come on two sheets, each piece under its title", () => {
    const drafts = [{ ...draft(432, 49), id: "guide", title: "Guide" }, { ...draft(90, 240), id: "strip", title: "Strip" }, { ...draft(61, 61), id: "corner", title: "Corner" }];
    expect(drafts.map((each) => layOutSheets([each], "a4").length)).toEqual([1, 1, 1]);
    const sheets = layOutSheets(drafts, "a4");
    expect(sheets.length).toBe(2);
    expect(sheets.flatMap((sheet) => sheet.pieces.map(({ template }) => template)).sort()).toEqual(["corner", "guide", "guide", "strip"]);
    for (const sheet of sheets.filter(({ pieces }) => pieces.length > 1)) {
      for (const { template } of sheet.pieces) expect(sheet.svg).toMatch(new RegExp(`data-label="piece \\d"[^>]*>${template[0]!.toUpperCase()}${template.slice(1)}`));
    }
  });
});

describe("sharing sheets", () => {
  const extent = fc.record({ width: fc.integer({ min: 5, max: 300 }), height: fc.integer({ min: 5, max: 300 }) });
  const rooms = [{ width: 189, height: 247 }, { width: 276, height: 160 }];

  it("lays every piece that fits, once, inside its room, apart from the others, on no more sheets than pieces", () => {
    fc.assert(fc.property(fc.array(extent, { maxLength: 14 }), (pieces) => {
      const sheets = shareSheets(pieces, rooms);
      const fitting = pieces.flatMap((piece, index) => (rooms.some((room) => piece.width <= room.width && piece.height <= room.height) ? [index] : []));
      expect(sheets.flatMap(({ places }) => places.map(({ piece }) => piece)).sort((a, b) => a - b)).toEqual(fitting);
      for (const { room, places } of sheets) {
        expect(places.length).toBeGreaterThan(0);
        const boxes = places.map(({ piece, x, y }) => ({ left: x, top: y, right: x + pieces[piece]!.width, bottom: y + pieces[piece]!.height }));
        boxes.forEach((box, index) => {
          expect(boxContains({ left: 0, top: 0, right: rooms[room]!.width, bottom: rooms[room]!.height }, box)).toBe(true);
          for (const other of boxes.slice(index + 1)) expect(boxesMeet(box, other)).toBe(false);
        });
      }
    }), { numRuns: 200 });
  });

  it("finds the fewest for pieces cut from whole sheets: four quarters fill one", () => {
    expect(shareSheets(Array.from({ length: 4 }, () => ({ width: 92, height: 121 })), rooms).length).toBe(1);
    expect(shareSheets(Array.from({ length: 5 }, () => ({ width: 92, height: 121 })), rooms).length).toBe(2);
  });
});
