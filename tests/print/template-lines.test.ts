// The demos' own templates, printed and read back: every named mark lies at its place, within 0.05 mm, on A4 and on US Letter.
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { register } from "tsx/esm/api";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { renderPages } from "../../src/5-pages/index.ts";
import { printPages } from "../../src/6-print/index.ts";
import type { SheetPiece, TemplateMark } from "../../src/4-figures/types.ts";
import { drawnLines, drawnPaths, lineLength } from "./measure-pdf.ts";
import type { DrawnLine, DrawnPath } from "./measure-pdf.ts";

// Eleventy loads its configuration by itself, past the test runner: the sources must be readable for plain Node too.
register();

/** What design and issue ask of a template, in millimetres. */
const tolerance = 0.05;
const content = path.resolve(import.meta.dirname, "../../content");
let output = "";

beforeAll(async () => {
  output = await mkdtemp(path.join(tmpdir(), "template-lines-"));
  const booklets = (await Promise.all((await readContent(content)).map((project) => computeProject(project)))).flatMap((computed) => computed.booklets);
  const { jobs } = await renderPages({ booklets, listed: [], output, withPrints: true });
  const printed = await printPages(jobs.filter(({ purpose }) => purpose === "template"), { tabs: 2, onProgress: () => undefined, folder: output });
  expect(printed.flatMap(({ failure }) => failure ?? [])).toEqual([]);
});

afterAll(() => rm(output, { recursive: true, force: true }));

interface OnPaper {
  readonly page: number;
  readonly piece: SheetPiece;
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= tolerance;

/** A solid line with both ends in place. */
function isLine({ page, x1, y1, x2, y2 }: DrawnLine, on: OnPaper, [from, to]: readonly [readonly [number, number], readonly [number, number]]): boolean {
  const meets = (start: readonly [number, number], end: readonly [number, number]): boolean =>
    near(x1, start[0]) && near(y1, start[1]) && near(x2, end[0]) && near(y2, end[1]);
  return page === on.page && (meets(from, to) || meets(to, from));
}

/** A line that begins or ends there. */
function hasEnd({ page, x1, y1, x2, y2 }: DrawnLine, on: OnPaper, [x, y]: readonly [number, number]): boolean {
  return page === on.page && ((near(x1, x) && near(y1, y)) || (near(x2, x) && near(y2, y)));
}

/** A dashed line: its box lies on the line, begins where it begins, and ends at most one dash short. */
function isDashed({ page, left, right, top, bottom }: DrawnPath, on: OnPaper, [from, to]: readonly [readonly [number, number], readonly [number, number]]): boolean {
  if (page !== on.page) return false;
  const fits = (least: number, most: number, middle: number, start: number, end: number, across: number): boolean =>
    near(middle, across) && near(least, start) && most <= end + tolerance && most > end - 6;
  if (from[0] === to[0]) return right - left < 1 && fits(top, bottom, (left + right) / 2, from[1], to[1], from[0]);
  return from[1] === to[1] && bottom - top < 1 && fits(left, right, (top + bottom) / 2, from[0], to[0], from[1]);
}

/** A hole: a circle of its diameter whose box is centred on the mark. */
function isCircle({ page, left, right, top, bottom }: DrawnPath, on: OnPaper, at: readonly [number, number], diameter: number | undefined): boolean {
  return page === on.page && diameter !== undefined && near(right - left, diameter) && near(bottom - top, diameter) && near((left + right) / 2, at[0]) && near((top + bottom) / 2, at[1]);
}

/** A place to prick that has no hole drawn: a short line across, with its middle on the mark. */
function isTick({ page, x1, y1, x2, y2 }: DrawnLine, on: OnPaper, at: readonly [number, number]): boolean {
  const length = Math.hypot(x2 - x1, y2 - y1);
  return page === on.page && length > 0.5 && length < 12 && near((x1 + x2) / 2, at[0]) && near((y1 + y2) / 2, at[1]);
}

function placeOn({ piece }: OnPaper, mark: TemplateMark): readonly [readonly [number, number], readonly [number, number]] {
  const put = ([x, y]: readonly [number, number]) => [x - piece.origin[0], y - piece.origin[1]] as const;
  return [put(mark.from), put(mark.to)];
}

describe("every template of the demos, printed", () => {
  // Three score lines for each of 10 and of 12 stubs, six folds and three lines of a corner, and other marks besides.
  it.each([["harbour-album", 30], ["garden-year", 36], ["river-walk", 8], ["regatta-album", 7], ["seed-ledger", 12], ["tide-diary", 12], ["tide-ledger", 18], ["tide-tables", 3], ["mooring-log", 10]] as const)("%s has each named mark in its place on some sheet, more than %i of them, and both check lines on every sheet", async (name, least) => {
    const project = (await readContent(content)).find((each) => each.name === name)!;
    const [booklet] = (await computeProject(project)).booklets;
    const { definition, drawings } = booklet!;
    const paper = definition.print.papers[0]!;
    const bytes = new Uint8Array(await readFile(path.join(output, name, "templates.pdf")));
    const [lines, paths] = [await drawnLines(bytes), await drawnPaths(bytes)];
    // Page 1 holds the instructions.
    const pieces = drawings.sheets.get(paper)!.flatMap((sheet, index) => sheet.pieces.map((piece): OnPaper => ({ page: index + 2, piece })));
    let measured = 0;
    for (const template of drawings.templates) {
      const sheets = pieces.filter(({ piece }) => piece.template === template.id);
      expect(sheets.length, template.id).toBeGreaterThan(0);
      for (const mark of template.marks) {
        const isFound = sheets.some((on) => {
          const place = placeOn(on, mark);
          if (mark.act === "pierce") return mark.diameter === undefined ? lines.some((drawn) => isTick(drawn, on, place[0])) : paths.some((drawn) => isCircle(drawn, on, place[0], mark.diameter));
          // A mark to cut is a line, or names two corners of an outline.
          if (mark.act === "cut" && place.every((corner) => lines.some((drawn) => hasEnd(drawn, on, corner)))) return true;
          return lines.some((drawn) => isLine(drawn, on, place)) || paths.some((drawn) => isDashed(drawn, on, place));
        });
        expect(isFound, `${template.id}: ${mark.name}`).toBe(true);
        measured += 1;
      }
      for (const on of sheets) {
        for (const length of [100, 101.6]) {
          expect(lines.some((drawn) => drawn.page === on.page && near(lineLength(drawn), length)), `${template.id} page ${on.page}: ${length} mm`).toBe(true);
        }
      }
    }
    expect(measured).toBeGreaterThan(least);
  });
});
