// Templates on sheets: everything shown somewhere, true to size, seams named on both sides, checks on every sheet.
import { describe, expect, it } from "vitest";
import { boxContains } from "../../src/geometry/box.ts";
import { line, rectangle } from "../../src/geometry/path.ts";
import { point } from "../../src/geometry/point.ts";
import { area, label, stroke, textBox } from "../../src/4-figures/scene.ts";
import { finishTemplate } from "../../src/4-figures/template.ts";
import type { TemplateDraft } from "../../src/4-figures/template-draft.ts";
import { layOutSheets, sheetMargin, sheetOverlap } from "../../src/4-figures/template-sheets.ts";
import type { TemplateSheet } from "../../src/4-figures/types.ts";

const papers = { a4: [210, 297], letter: [215.9, 279.4] } as const;
const paperIds = ["a4", "letter"] as const;

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

/** The part of the template that a sheet shows, read from its inner window. */
function windowOf(sheet: TemplateSheet) {
  const match = /<svg x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)" viewBox="([^"]+)"/.exec(sheet.svg)!;
  const [x, y, width, height] = match.slice(1, 5).map(Number) as [number, number, number, number];
  const view = match[5]!.split(" ").map(Number) as [number, number, number, number];
  return { x, y, width, height, view };
}

const sizes = [[60, 60], [189, 240], [375, 50], [200, 294], [73, 294], [1200, 60], [600, 600], [12000, 60]] as const;
const cases = paperIds.flatMap((paper) => sizes.map(([width, height]) => [paper, width, height] as const));

describe.each(cases)("on %s, a template of %i × %i mm", (paper, width, height) => {
  const sheets = layOutSheets(draft(width, height), paper);

  it("is shown whole, neighbouring sheets sharing the overlap", () => {
    const views = sheets.map((sheet) => windowOf(sheet).view);
    const lefts = [...new Set(views.map(([left]) => left))].sort((a, b) => a - b);
    const tops = [...new Set(views.map(([, top]) => top))].sort((a, b) => a - b);
    expect(lefts.length * tops.length).toBe(sheets.length);
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
      const { x, y, width: shown, height: high, view } = windowOf(sheet);
      expect([shown, high]).toEqual([view[2], view[3]]);
      expect([sheet.width, sheet.height]).toEqual(sheet.landscape ? [long, short] : [short, long]);
      expect(x).toBeGreaterThanOrEqual(sheetMargin - 0.001);
      expect(y).toBeGreaterThanOrEqual(sheetMargin);
      expect(x + shown).toBeLessThanOrEqual(sheet.width - sheetMargin + 0.001);
      expect(y + high).toBeLessThanOrEqual(sheet.height - sheetMargin);
      // The origin says where template millimetres lie on the sheet.
      expect(x - view[0]).toBeCloseTo(-sheet.origin[0], 2);
      expect(y - view[1]).toBeCloseTo(-sheet.origin[1], 2);
    }
  });

  it("carries a check of 100 mm and of 4 in on every sheet", () => {
    for (const sheet of sheets) {
      const lengths = [...sheet.svg.matchAll(/d="M([\d.]+) ([\d.]+)L\1 ([\d.]+)L([\d.]+) \3L\4 \2" /g)].map((match) => Number(match[4]) - Number(match[1]));
      expect(lengths[0]).toBeCloseTo(100, 9);
      expect(lengths[1]).toBeCloseTo(101.6, 9);
    }
  });

  it("names every seam on both of its sheets", () => {
    const names = sheets.map((sheet) => [...sheet.svg.matchAll(/data-label="cross ([A-Z]+)"/g)].map((match) => match[1]!));
    const all = new Set(names.flat());
    const views = sheets.map((sheet) => windowOf(sheet).view);
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
    expect(layOutSheets(draft(250, 60), "a4").map((sheet) => sheet.landscape)).toEqual([true]);
    expect(layOutSheets(draft(60, 230), "a4").map((sheet) => sheet.landscape)).toEqual([false]);
  });
  it("are labelled only when there are several", () => {
    expect(layOutSheets(draft(60, 60), "a4")[0]!.label).toBe("");
    expect(layOutSheets(draft(375, 60), "a4").map((sheet) => sheet.label)).toEqual(["row 1 of 1, column 1 of 2", "row 1 of 1, column 2 of 2"]);
  });
  it("move a seam aside that would cut a label in two", () => {
    const long = label("long", "a label of some length", point(110, 20), { anchor: "middle" });
    const upright = label("upright", "another label of some length", point(30, 150), { anchor: "middle", angle: 90 });
    for (const [width, height, item] of [[400, 60, long], [60, 300, upright], [220, 220, long]] as const) {
      const sheets = layOutSheets({ ...draft(width, height), items: [item] }, "a4");
      expect(sheets.length).toBeGreaterThan(1);
      const box = textBox(item);
      expect(sheets.some((sheet) => {
        const { view: [left, top, wide, high] } = windowOf(sheet);
        return boxContains({ left, top, right: left + wide, bottom: top + high }, box);
      })).toBe(true);
    }
  });
  it("have ids that differ from sheet to sheet and paper to paper", () => {
    const { sheets } = finishTemplate(draft(375, 60));
    const ids = [...sheets.a4, ...sheets.letter].flatMap((sheet) => [...sheet.svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!));
    expect(new Set(ids).size).toBe(ids.length);
  });
  it("shorten a title that is too long instead of running into the map", () => {
    const long = layOutSheets({ ...draft(375, 60), book: "A very long title ".repeat(30) }, "a4")[0]!;
    expect(long.svg).toContain("…");
  });
});
