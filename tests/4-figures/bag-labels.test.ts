// Bag labels: every bag has one, each in its own field, its words inside and on top of nothing; what has no room is told in short.
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { drawBagLabels } from "../../src/4-figures/class/bag-labels.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { flatItems, smallestType, textBox } from "../../src/4-figures/scene.ts";
import { labelGridNames, labelGrids } from "../../src/catalogue/label-grids.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";

const solver = await loadLinearSolver();

function labelsOf(book: string, labels: string, title = "Tide ledger") {
  const text = `benchleaf: 1\n${book}title: "${title}"\nsummary: S\nauthor: {name: A, workshop: Quillmere Workshop (invented)}\nunits: mm\nclass:\n  participants: 9\n  spares: 2\n  sessions: 2 h\n  labels: ${labels}\n`;
  const { definitions, problems } = readDefinition({ project: "x", file: "content/x/project.yaml", bytes: new TextEncoder().encode(text), files: new Set(["project.yaml"]), prose: new Map() });
  expect(problems).toEqual([]);
  const { model } = buildModel(definitions[0]!);
  const own = makePlan(definitions[0]!, model, solver).plan.class!;
  return { own, labels: drawBagLabels(definitions[0]!, own)! };
}

const ledger = "binding: case binding\nbook: {text block: {page: {height: 210 mm, width: 148 mm}, sections: 10, folded sheets: 4}, covering: half, ribbon: yes}\n";
const pamphlet = "binding: pamphlet\nbook: {sheets: 6, page: {height: 210 mm, width: 148 mm}}\n";

describe.each(labelGridNames)("labels on the grid %s", (name) => {
  it.each([["a book of many parts", ledger], ["a book of few parts", pamphlet]])("%s", (_, book) => {
    const { own, labels } = labelsOf(book, name, "Instructions for a rather thick tide ledger, with a ribbon and endbands");
    const grid = labelGrids[name];
    // Nine participants, the teacher and two spare sets.
    expect(labels.sheets.flatMap((sheet) => sheet.boxes)).toHaveLength(12);
    expect(labels.sheets).toHaveLength(Math.ceil(12 / (grid.columns * grid.rows)));
    expect(labels.paper).toBe(grid.paper);
    for (const { items, boxes } of labels.sheets) {
      expect(findCollisions(items)).toEqual([]);
      for (const item of flatItems(items)) {
        if (item.kind !== "text") continue;
        const ink = textBox(item);
        expect(boxes.some((box) => ink.left >= box.left && ink.right <= box.right && ink.top >= box.top && ink.bottom <= box.bottom), item.text).toBe(true);
      }
    }
    const words = labels.sheets.flatMap(({ items }) => flatItems(items).flatMap((item) => (item.kind === "text" ? [item.text] : [])));
    for (const bag of own.bags) expect(words.filter((text) => text === bag.words)).toHaveLength(1);
  });
});

describe("a label", () => {
  const wordsOn = (labels: string, book = ledger): readonly string[] => flatItems(labelsOf(book, labels).labels.sheets[0]!.items).flatMap((item) => (item.kind === "text" ? [item.text] : []));

  it("lists every part where it has room, and says where to look where it has none", () => {
    const { own } = labelsOf(ledger, "a4 2x3");
    expect(wordsOn("a4 2x3").filter((text) => /^\d+ × /.test(text)).length).toBe(6 * own.kit.length);
    const small = wordsOn("{columns: 3, rows: 9, width: 60 mm, height: 25 mm, left: 10 mm, top: 20 mm}");
    expect(small.some((text) => /^\d+ × /.test(text))).toBe(false);
    expect(small.join(" ")).toContain(`of ${own.kit.length} kinds`);
  });

  it("is set as large as its fullest fellow allows, twice the type of a drawing at most, and all of a class alike", () => {
    const sizes = (book: string, labels: string): readonly number[] => [...new Set(labelsOf(book, labels).labels.sheets.flatMap(({ items }) => flatItems(items).flatMap((item) => (item.kind === "text" && /^\d+ × /.test(item.text) ? [item.size] : []))))];
    const [few, many] = [sizes(pamphlet, "a4 2x4"), sizes(ledger, "a4 2x4")];
    expect([few.length, many.length]).toEqual([1, 1]);
    expect(few[0]! / smallestType).toBeCloseTo(2);
    expect(many[0]!).toBeLessThan(few[0]!);
    expect(many[0]!).toBeGreaterThanOrEqual(smallestType);
  });

  it("begins at the first free one of a sheet", () => {
    const { labels } = labelsOf(pamphlet, "{grid: a4 2x4, first: 6}");
    expect(labels.sheets.map((sheet) => sheet.boxes.length)).toEqual([3, 8, 1]);
    // The sixth label stands in the second column of the third row: 10 + 95 and 14.5 + 2 × 67.
    expect(labels.sheets[0]!.boxes[0]).toMatchObject({ left: 105, top: 148.5, right: 200, bottom: 215.5 });
  });

  it("has no outline where none is wanted", () => {
    const lines = (labels: string): number => flatItems(labelsOf(pamphlet, labels).labels.sheets[0]!.items).filter((item) => item.kind === "path" && item.owner.endsWith("outline")).length;
    expect([lines("a4 2x4"), lines("{grid: a4 2x4, outlines: no}")]).toEqual([8, 0]);
  });
});
