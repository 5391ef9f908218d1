// The concertina's figures and templates over the whole range of sizes: labels touch nothing, all fit, positions are those of the model.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawings } from "../../src/4-figures/concertina.ts";
import { drawFigures } from "../../src/4-figures/index.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { fullColumn } from "../../src/4-figures/scale.ts";
import { flatItems, sceneBox, smallestType } from "../../src/4-figures/scene.ts";
import type { FigureDraft } from "../../src/4-figures/figure.ts";
import type { DrawingInput } from "../../src/4-figures/binding.ts";
import { pathBox } from "../../src/geometry/path.ts";
import { divideLength, inches, mm, multiplyLength, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { concertinaInput, plainSheet, sheetOf } from "../fixtures/concertina.ts";
import type { ConcertinaOverrides } from "../fixtures/concertina.ts";

type Input = DrawingInput<"concertina">;

function draftsOf(input: Input): readonly FigureDraft[] {
  return Object.values(drawings.figures).flatMap((draw) => draw(input) ?? []);
}

function faultsOf(input: Input): readonly string[] {
  return draftsOf(input).flatMap((figure) => {
    const box = sceneBox(figure.items)!;
    return [
      ...findCollisions(figure.items).map((collision) => `${figure.id}: ${collision}`),
      ...flatItems(figure.items).flatMap((item) => (item.kind === "text" && item.size < smallestType - 1e-9 ? [`${figure.id}: "${item.text}" is too small`] : [])),
      ...(box.right - box.left + 3 > fullColumn ? [`${figure.id} is ${box.right - box.left} wide`] : []),
      ...(box.bottom - box.top + 3 > 200 ? [`${figure.id} is ${box.bottom - box.top} high`] : []),
    ];
  });
}

const books: readonly (readonly [name: string, overrides: ConcertinaOverrides])[] = [
  ["8 panels by halving", { materials: sheetOf(mm(700), mm(1000)) }],
  ["16 panels, three strips, inches", { units: "in", book: { panels: 16 } }],
  ["15 panels, cloth, no closure", { book: { panels: 15, covering: "cloth", closure: "none" } }],
  ["two panels with a band", { book: { panels: 2, closure: "band" } }],
  ["60 panels in many strips", { book: { panels: 60 } }],
  ["60 panels in one strip", { book: { panels: 60, panel: { height: mm(30), width: mm(30) } }, materials: sheetOf(mm(2000), mm(2000), "none") }],
  ["32 panels by halving, dual", { units: "in", dual: true, book: { panels: 32, panel: { height: inches(3), width: inches(2) } }, materials: sheetOf(inches(30), inches(70)) }],
  ["large", { book: { panels: 6, panel: { height: mm(600), width: mm(400) }, closure: "band", band: { height: mm(300) } }, materials: sheetOf(mm(1000), mm(1400)) }],
  ["high and narrow", { book: { panels: 9, panel: { height: mm(600), width: mm(30) }, square: mm(1) } }],
  ["low and wide", { book: { panels: 9, panel: { height: mm(30), width: mm(300) }, "turn in": mm(8) }, materials: { ...sheetOf(mm(2000), mm(700)), boards: { thickness: mm(1) } } }],
];

describe.each(books)("figures of a concertina: %s", (_, overrides) => {
  const input = concertinaInput(overrides)!;
  it("have labels that touch nothing, readable type, and fit the column and the page", () => {
    expect(faultsOf(input)).toEqual([]);
  });
  it("are drawn for every step and every part", () => {
    const drawn = drawFigures(input).figures;
    const named = [...input.plan.steps.map((step) => step.figure!), ...input.plan.cutList.map((item) => item.figure), "finished-book", "named-parts"];
    expect(named.filter((id) => !drawn.has(id))).toEqual([]);
  });
  it("have templates whose marks are the model's folds", () => {
    const guide = drawings.templates["fold-guide"]!(input)!;
    const longest = Math.max(...input.model.geometry.strips.map((strip) => input.model.scores.filter((score) => score.part === strip.part).length));
    expect(guide.marks).toHaveLength(longest);
    guide.marks.forEach((mark, index) => expect(Math.abs(mark.from[0] - (index + 1) * toMillimetres(input.model.geometry.panelWidth))).toBeLessThanOrEqual(toMillimetres(input.definition.units.step) / 2 + 1e-9));
    expect(findCollisions(guide.items)).toEqual([]);
    const corner = drawings.templates["corner-template"]!(input)!.marks.find((mark) => mark.name === "corner cut")!;
    const turnIn = toMillimetres(input.model.geometry.turnIn);
    expect((2 * turnIn - corner.from[0]) / Math.SQRT2).toBeCloseTo(toMillimetres(input.model.geometry.cornerDistance), 9);
  });
});

/** Sizes over the whole range that a definition allows, on and off the ruler. */
const sizes = (unit: "mm" | "in", least: number, most: number): fc.Arbitrary<Length> =>
  unit === "mm"
    ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => divideLength(mm(tenths), 10))
    : fc.integer({ min: Math.ceil((least * 64) / 25.4), max: Math.floor((most * 64) / 25.4) }).map((parts) => inches(parts, 64));

const anyBook: fc.Arbitrary<ConcertinaOverrides> = fc.constantFrom<"mm" | "in">("mm", "in").chain((units) => fc.record({
  panels: fc.integer({ min: 2, max: 60 }), height: sizes(units, 30, 600), width: sizes(units, 30, 400), tab: sizes(units, 3, 15), square: sizes(units, 1, 20), turnIn: sizes(units, 8, 25),
  board: fc.integer({ min: 5, max: 50 }), paper: fc.integer({ min: 5, max: 80 }), cloth: fc.boolean(), closure: fc.constantFrom<"ribbon" | "band" | "none">("ribbon", "band", "none"),
  bandHeight: sizes(units, 15, 80), lap: sizes(units, 8, 60), ribbon: sizes(units, 3, 40), tie: sizes(units, 50, 600), dual: fc.boolean(),
  across: fc.integer({ min: 800, max: 3000 }), along: fc.integer({ min: 800, max: 3000 }), named: fc.boolean(), grain: fc.constantFrom<"long" | "short" | "none" | "unknown">("long", "short", "none", "unknown"),
}).map((book): ConcertinaOverrides => ({
  units, dual: book.dual,
  book: {
    panels: book.panels, panel: { height: book.height, width: book.width }, join: { tab: book.tab }, square: book.square, covering: book.cloth ? "cloth" : "paper", "turn in": book.turnIn,
    closure: book.closure, band: { height: book.bandHeight, lap: book.lap }, ribbon: { width: book.ribbon, tie: book.tie },
  },
  materials: {
    "panel paper": { thickness: divideLength(mm(book.paper), 100), grain: book.grain, ...(book.named ? { sheets: [plainSheet(mm(book.along), mm(book.across))] } : {}) },
    boards: { thickness: divideLength(mm(book.board), 10) },
  },
})));

describe("of every concertina that can be made", () => {
  it("all figures have labels that touch nothing, readable type, and fit", () => {
    let made = 0;
    fc.assert(fc.property(anyBook, (overrides) => {
      const input = concertinaInput(overrides);
      if (!input) return;
      made += 1;
      expect(faultsOf(input)).toEqual([]);
    }), { numRuns: 40 });
    expect(made, "books that could be made").toBeGreaterThan(20);
  });
});

it("the fold map prints each position of the model once", () => {
  const input = concertinaInput({ book: { panels: 16 } })!;
  const figure = drawings.figures["fold-map"]!(input)!;
  const texts = flatItems(figure.items).flatMap((item) => (item.kind === "text" ? [item] : []));
  for (const score of input.model.scores) expect(texts.filter((item) => item.label === score.name).map((item) => item.text)).toEqual([input.number(score.at)]);
});

it("a panel is drawn in its true proportion in the fold map", () => {
  const input = concertinaInput({ materials: sheetOf(mm(700), mm(1000)) })!;
  const figure = drawings.figures["fold-map"]!(input)!;
  const [, paper, book] = /(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)/.exec(figure.caption)!;
  const folds = flatItems(figure.items).flatMap((item) => (item.kind === "path" && (item.line === "valley" || item.line === "mountain") ? [item.path] : [])).slice(0, 7);
  const at = folds.map((path) => pathBox(path)!.left);
  expect(at).toHaveLength(7);
  at.forEach((x, index) => expect(x - at[0]!).toBeCloseTo(toMillimetres(multiplyLength(input.model.geometry.panelWidth, index)) * (Number(paper) / Number(book)), 6));
});
