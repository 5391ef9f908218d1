// Bench cards: nothing lost, cautions before the work, and no card that holds more than there is room for.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { viewBooklet } from "../../src/5-pages/booklet-view.ts";
import { blocksOf } from "../../src/5-pages/cards/card-blocks.ts";
import { cardSize, cardTypes, countLines, lineWidthOf } from "../../src/5-pages/cards/card-type.ts";
import { viewCards } from "../../src/5-pages/cards/card-view.ts";
import { heightOf, layOutCards } from "../../src/5-pages/cards/lay-out-cards.ts";
import type { CardContents } from "../../src/5-pages/cards/lay-out-cards.ts";
import type { StepView } from "../../src/5-pages/step-view.ts";
import { fixtureBooklet } from "./fixture.ts";

const steps = viewBooklet(fixtureBooklet()).stages.flatMap((stage) => stage.steps);
const room = { width: 188, height: 108 };
const usual = steps.find((step) => step.cautions.length > 0 && step.action.length > 0)!;

const words = fc.array(fc.constantFrom("fold", "the", "strip", "along", "247\u00a05\u20448\u00a0in", "bookbinder’s", "press."), { minLength: 1, maxLength: 160 }).map((list) => list.join(" "));
const anyStep = fc.record({
  action: fc.array(words, { maxLength: 9 }),
  cautions: fc.array(words.map((html) => ({ signal: "CAUTION" as const, injury: true, html })), { maxLength: 8 }),
  sizes: fc.array(words.map((text) => ({ label: text.slice(0, 24), text: text.slice(0, 18) })), { maxLength: 12 }),
  table: fc.option(fc.array(fc.tuple(words, words).map(([a, b]) => [a.slice(0, 30), b.slice(0, 12)]), { minLength: 1, maxLength: 60 }).map((rows) => ({ caption: "Marks", columns: ["mark", "at"], rows }))),
  check: words,
}).map((change): StepView => ({ ...usual, ...change }));
const anyFigure = fc.option(fc.record({ width: fc.integer({ min: 20, max: 175 }), height: fc.integer({ min: 12, max: 215 }), caption: words.map((text) => text.slice(0, 200)) }));

/** Height that a card's blocks need beside or above its drawing. */
function used({ blocks, figure }: CardContents, drawing: { readonly width: number; readonly height: number } | null): number {
  if (figure === null || drawing === null) return heightOf(blocks, room.width);
  return figure.at === "beside"
    ? Math.max(heightOf(blocks, room.width - 6 - drawing.width * figure.factor), drawing.height * figure.factor)
    : heightOf(blocks, room.width) + drawing.height * figure.factor;
}

describe("the cards of any step", () => {
  it("hold every block once and in order, the drawing once, and fit their room", () => {
    fc.assert(fc.property(anyStep, anyFigure, (step, drawing) => {
      const blocks = blocksOf(step, room);
      const cards = layOutCards(blocks, drawing, room);
      expect(cards.flatMap((card) => card.blocks)).toEqual(blocks);
      expect(cards.filter((card) => card.figure !== null)).toHaveLength(drawing ? 1 : 0);
      for (const card of cards) expect(used(card, drawing)).toBeLessThanOrEqual(room.height);
    }), { numRuns: 60 });
  });

  it("say every word of the actions", () => {
    fc.assert(fc.property(anyStep, (step) => {
      const said = blocksOf(step, room).filter((block) => block.kind === "action").map((block) => block.html.replace(/<span class="card-letter">.*?<\/span>/g, "").replace(/<[^>]*>/g, "")).join(" ");
      expect(said.split(/\s+/).filter((word) => word !== "").join(" ")).toBe(step.action.join(" ").replace(/\s+/g, " "));
    }), { numRuns: 40 });
  });

  it("have all cautions before the first action", () => {
    fc.assert(fc.property(anyStep, anyFigure, (step, drawing) => {
      const kinds = layOutCards(blocksOf(step, room), drawing, room).flatMap((card) => card.blocks.map((block) => block.kind));
      if (kinds.includes("action") && kinds.includes("caution")) expect(kinds.lastIndexOf("caution")).toBeLessThan(kinds.indexOf("action"));
    }), { numRuns: 40 });
  });
});

describe("the cards of a booklet", () => {
  const drawn = steps.map((step) => ({ step, figure: null }));

  it("show every step, numbered by their place in it where it has several", () => {
    const { sheets } = viewCards(drawn, "a4");
    const cards = sheets.flat();
    expect([...new Set(cards.map((card) => card.n))]).toEqual(steps.map((step) => step.n));
    for (const step of steps) {
      const own = cards.filter((card) => card.n === step.n);
      expect(own.map((card) => card.part)).toEqual(own.length === 1 ? [""] : own.map((_, index) => `${index + 1} of ${own.length}`));
    }
  });

  it("stand two on a large sheet and one on a small one; a card is half of the large sheet", () => {
    expect(viewCards(drawn, "a4").sheets.every((sheet, index, all) => sheet.length === 2 || index === all.length - 1)).toBe(true);
    expect(viewCards(drawn, "half-letter").sheets.every((sheet) => sheet.length === 1)).toBe(true);
    expect(cardSize("a4")).toEqual({ width: 210, height: 148.5, perSheet: 2 });
    expect(cardSize("letter").height).toBeCloseTo(139.7, 9);
    expect(cardSize("a5")).toEqual({ width: 210, height: 148, perSheet: 1 });
  });

  it("remind of cautions that stand on an earlier card", () => {
    const many = { ...usual, cautions: Array.from({ length: 4 }, () => ({ signal: "WARNING" as const, injury: true, html: "A knife slips. ".repeat(14) })), action: Array.from({ length: 8 }, () => "Cut along the ruler in many light strokes until the strip comes away.") };
    const cards = viewCards([{ step: many, figure: null }], "a4").sheets.flat();
    expect(cards.length).toBeGreaterThan(1);
    expect(cards[0]!.isWarnedBefore).toBe(false);
    expect(cards.at(-1)!.isWarnedBefore).toBe(true);
  });
});

it("lines are counted as a column is filled: a word more than fits begins a new line, a word wider than the column takes several", () => {
  expect(countLines("fold", 100, cardTypes.action)).toBe(1);
  expect(countLines("fold the strip ".repeat(12), 100, cardTypes.action)).toBeGreaterThan(countLines("fold the strip ".repeat(6), 100, cardTypes.action));
  expect(countLines("m".repeat(60), 100, cardTypes.action)).toBe(Math.ceil(lineWidthOf("m".repeat(60), cardTypes.action) / 100));
});
