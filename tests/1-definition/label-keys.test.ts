// The labels of a class: a grid by name, a sheet of one's own, and what is wrong with either.
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { labelGrids } from "../../src/catalogue/label-grids.ts";
import { mm, noLength } from "../../src/units/length.ts";

function read(labels: string, units = "mm") {
  const text = `benchleaf: 1\nbinding: pamphlet\ntitle: T\nsummary: S\nauthor: {name: A}\nunits: ${units}\nbook: {sheets: 4, page: {height: 200 mm, width: 140 mm}}\nclass:\n  participants: 3\n  sessions: 2 h\n${labels}`;
  return readDefinition({ project: "invented", file: "content/invented/project.yaml", bytes: new TextEncoder().encode(text), files: new Set(["project.yaml"]), prose: new Map() });
}

const own = "columns: 2, rows: 6, width: 97 mm, height: 42 mm, left: 7 mm, top: 20 mm";

describe("labels", () => {
  it("are on the usual grid of the paper when nothing is written", () => {
    expect(read("").definitions[0]!.class!.labels).toEqual({ ...labelGrids["a4 2x4"], first: 1, outlines: true });
    expect(read("", "in").definitions[0]!.class!.labels).toEqual({ ...labelGrids["letter 2x4"], first: 1, outlines: true });
  });

  it("take a grid by its name alone, or with what is besides", () => {
    expect(read("  labels: a4 3x7\n").definitions[0]!.class!.labels).toEqual({ ...labelGrids["a4 3x7"], first: 1, outlines: true });
    expect(read("  labels: {grid: letter 2x5, first: 4, outlines: no}\n").definitions[0]!.class!.labels).toEqual({ ...labelGrids["letter 2x5"], first: 4, outlines: false });
  });

  it("take a sheet of the author's own", () => {
    const { definitions, problems } = read(`  labels: {${own}, column gap: 2 mm}\n`);
    expect(problems).toEqual([]);
    expect(definitions[0]!.class!.labels).toEqual({ paper: "a4", columns: 2, rows: 6, width: mm(97), height: mm(42), left: mm(7), top: mm(20), columnGap: mm(2), rowGap: noLength, first: 1, outlines: true });
  });

  it.each([
    [`{grid: a4 2x4, rows: 3}`, "keys-exclude", "rows and grid"],
    [`{columns: 2, rows: 6, width: 97 mm, height: 42 mm, left: 7 mm}`, "key-missing", "no top"],
    [`{${own}, column gap: 12 mm}`, "value-range", "beyond the right edge of A4"],
    [`{${own}, row gap: 5.1 mm}`, "value-range", "beyond the lower edge of A4"],
    [`{${own}, first: 13}`, "value-range", "a sheet has 12 labels"],
    [`a4 2x9`, "value-unknown", "a4 2x9"],
  ])("with a fault are a problem at their place: %s", (labels, code, words) => {
    const { definitions, problems } = read(`  labels: ${labels}\n`);
    expect(definitions).toEqual([]);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(problems[0]!.message).toContain(words);
    expect(problems[0]!.place.span!.start).toBeGreaterThan(160);
  });

  it("that fill the paper to its very edge are not refused", () => {
    expect(read("  labels: {columns: 2, rows: 4, width: 105 mm, height: 74.25 mm, left: 0 mm, top: 0 mm}\n").problems).toEqual([]);
  });
});
