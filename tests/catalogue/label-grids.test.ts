// The label grids lie on their paper, as their names say, with a margin that a printer can print.
import { expect, it } from "vitest";
import { labelGridNames, labelGrids, usualLabelGrid } from "../../src/catalogue/label-grids.ts";
import { paperIds, papers } from "../../src/catalogue/papers.ts";
import { toMillimetres } from "../../src/units/length.ts";

it.each(labelGridNames)("%s is as it is called, and leaves at least 8 mm free on every side, the same left and right, above and below", (name) => {
  const { paper, columns, rows, width, height, left, top, columnGap, rowGap } = labelGrids[name];
  expect(name).toBe(`${paper} ${columns}x${rows}`);
  const free = (whole: number, start: number, each: number, gap: number, times: number): number => whole - start - times * each - (times - 1) * gap;
  const right = free(toMillimetres(papers[paper].width), toMillimetres(left), toMillimetres(width), toMillimetres(columnGap), columns);
  const below = free(toMillimetres(papers[paper].height), toMillimetres(top), toMillimetres(height), toMillimetres(rowGap), rows);
  expect(toMillimetres(left)).toBeGreaterThanOrEqual(8);
  expect(right).toBeCloseTo(toMillimetres(left), 6);
  expect(toMillimetres(top)).toBeGreaterThanOrEqual(8);
  expect(below).toBeCloseTo(toMillimetres(top), 6);
});

it("every paper has a usual grid of its own", () => {
  for (const paper of paperIds) expect(labelGrids[usualLabelGrid[paper]].paper).toBe(paper);
});
