// Laws of the link stitch over many sizes, in both units, with one needle and with two: the way of the thread, the boards, every figure.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breachesOf } from "../../src/2-model/sewing/laws.ts";
import type { Model } from "../../src/2-model/types.ts";
import { drawings } from "../../src/4-figures/link-stitch.ts";
import { addLengths, isLess, multiplyLength, toMillimetres } from "../../src/units/length.ts";
import { expectSoundDrawings } from "../fixtures/figure-laws.ts";
import { linkStitchDefinition, linkStitchInput, linkStitchModel } from "../fixtures/link-stitch.ts";

interface Book {
  readonly units: "mm" | "in";
  readonly text: string;
}

/** Sizes over the whole range that a definition allows, whole millimetres or sixteenths of an inch. */
const books: fc.Arbitrary<Book> = fc.constantFrom<"mm" | "in">("mm", "in").chain((units) => fc.record({
  height: fc.integer({ min: 45, max: 490 }), width: fc.integer({ min: 32, max: 390 }), sections: fc.integer({ min: 3, max: 30 }), sheets: fc.integer({ min: 1, max: 16 }),
  stations: fc.integer({ min: 2, max: 12 }), two: fc.boolean(), ends: fc.integer({ min: 5, max: 20 }), board: fc.integer({ min: 1, max: 10 }), square: fc.integer({ min: 0, max: 19 }),
  hole: fc.integer({ min: 5, max: 29 }), bore: fc.integer({ min: 2, max: 5 }), covered: fc.boolean(), lining: fc.boolean(), turnIn: fc.integer({ min: 5, max: 40 }), trim: fc.constantFrom("none", "fore-edge", "three edges"),
}).map((b): Book => {
  const size = (millimetres: number): string => (units === "mm" ? `${millimetres} mm` : `${Math.max(1, Math.round(millimetres / 1.5875))}/16 in`);
  const stations = b.two ? 2 * Math.max(1, Math.floor(b.stations / 2)) : b.stations;
  return {
    units,
    text: `{text block: {page: {height: ${size(b.height)}, width: ${size(b.width)}}, sections: ${b.sections}, folded sheets: ${b.sheets}, trim: ${b.trim}}, `
      + `sewing: {needle: ${b.two ? "two" : "one curved"}, stations: ${stations}, station from head: ${size(b.ends)}, station from tail: ${size(b.ends)}}, `
      + `boards: {thickness: ${size(b.board)}, square: ${b.square === 0 ? "0" : size(b.square)}, covered: ${b.covered ? "yes" : "no"}, hole distance: ${size(b.hole)}, hole diameter: ${size(b.bore)}}, `
      + `turn in: ${size(Math.max(6, b.turnIn))}, lining: ${b.lining ? "yes" : "no"}}`,
  };
}));

const madeOf = ({ text, units }: Book): Model<"link-stitch"> | null => {
  const { model, problems } = linkStitchModel(linkStitchDefinition(text, { units }));
  for (const finding of model.findings) for (const words of [finding.message, finding.consequence, finding.remedy]) expect(words.length).toBeGreaterThan(5);
  return problems.length > 0 ? null : model;
};

function holds(runs: number, law: (model: Model<"link-stitch">) => void): void {
  let made = 0;
  fc.assert(fc.property(books, (book) => {
    const model = madeOf(book);
    if (!model) return;
    made += 1;
    law(model);
  }), { numRuns: runs });
  expect(made, "books that could be made").toBeGreaterThan(runs / 4);
}

describe("the thread of every link stitch that can be made", () => {
  it("is in one piece, changes sides at holes only, and covers what it must once", () => {
    holds(60, (model) => {
      for (const path of model.thread!.paths) expect(breachesOf(path, addLengths(...path.moves.map(({ length }) => length)))).toEqual([]);
    });
  });
  it("goes through every hole of sections and boards, and lies over each board's edge at each station", () => {
    holds(60, (model) => {
      const moves = model.thread!.paths.flatMap((path) => path.moves);
      const pierced = new Set(moves.filter(({ kind }) => kind === "hole").map(({ from }) => from.place));
      const { geometry } = model;
      const wanted = [...Array.from({ length: geometry.text.sections }, (_, i) => `section-${i + 1}`), "front-board", "back-board"].flatMap((part) => geometry.stations.map((_, k) => `${part}/${k + 1}`));
      expect([...pierced].sort()).toEqual(wanted.sort());
      expect(moves.filter(({ kind }) => kind === "edge")).toHaveLength(4 * geometry.stations.length);
    });
  });
  it("links under the stitch between the two sections before: a link at a station goes under one that was sewn there, one section lower", () => {
    holds(60, (model) => {
      for (const path of model.thread!.paths) for (const move of path.moves) {
        if ((move.kind !== "link" && move.kind !== "kettle") || move.under === null) continue;
        const caught = path.moves[move.under - 1]!;
        expect(caught.to.place.split("/")[1]).toBe(move.from.place.split("/")[1]);
        // Round the thread of the same pass on a board's edge, or under a stitch of an earlier one that starts a section lower at most two.
        if (caught.pass === move.pass) expect(caught.kind).toBe("edge");
        else expect([move.pass - 1, move.pass - 2]).toContain(caught.pass);
      }
    });
  });
  it("is no shorter than the stretches inside the folds and the ways over the boards", () => {
    holds(60, ({ thread, geometry }) => {
      const span = toMillimetres(geometry.stations.at(-1)!.at) - toMillimetres(geometry.stations[0]!.at);
      const inside = geometry.needles === 1 ? geometry.text.sections * span : 0;
      const boards = 4 * geometry.stations.length * toMillimetres(geometry.holeDistance);
      expect(toMillimetres(thread!.sewn)).toBeGreaterThan(inside + boards);
    });
  });
});

describe("the boards of every link stitch that can be made", () => {
  it("reach a square beyond the pages at head, tail and fore-edge, and less than one mark more before they are covered", () => {
    holds(60, ({ geometry }) => {
      const { square, text, boardHeight, boardWidth } = geometry;
      expect(isLess(boardHeight, addLengths(text.pageHeight, multiplyLength(square, 2)))).toBe(false);
      expect(isLess(boardWidth, addLengths(text.blockWidth, square))).toBe(false);
      expect(toMillimetres(boardWidth) - toMillimetres(text.blockWidth) - toMillimetres(square)).toBeLessThan(1.6);
    });
  });
});

describe("the figures of every link stitch that can be made", () => {
  it("have labels that touch nothing, readable type, a scale in the caption, and fit the column", () => {
    let made = 0;
    fc.assert(fc.property(books, ({ text, units }) => {
      const input = linkStitchInput(linkStitchDefinition(text, { units }));
      if (!input) return;
      made += 1;
      expectSoundDrawings(input, drawings);
    }), { numRuns: 25 });
    expect(made, "books that could be made").toBeGreaterThan(6);
  });
});
