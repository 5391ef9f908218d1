// Laws of the long-stitch binding over many sizes, in both units, with holes and slits, with and without flap: thread, cover, every figure.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breachesOf } from "../../src/2-model/sewing/laws.ts";
import type { Model } from "../../src/2-model/types.ts";
import { drawings } from "../../src/4-figures/long-stitch.ts";
import { addLengths, sameLength, toMillimetres } from "../../src/units/length.ts";
import { expectSoundDrawings } from "../fixtures/figure-laws.ts";
import { longStitchDefinition, longStitchInput, longStitchModel } from "../fixtures/long-stitch.ts";

interface Book {
  readonly units: "mm" | "in";
  readonly text: string;
  readonly rest: string;
}

/** Sizes over the whole range that a definition allows, whole millimetres or sixteenths of an inch; covers from thin paper to thick leather. */
const books: fc.Arbitrary<Book> = fc.constantFrom<"mm" | "in">("mm", "in").chain((units) => fc.record({
  height: fc.integer({ min: 45, max: 490 }), width: fc.integer({ min: 32, max: 390 }), sections: fc.integer({ min: 3, max: 40 }), sheets: fc.integer({ min: 3, max: 16 }),
  long: fc.integer({ min: 1, max: 6 }), inside: fc.integer({ min: 5, max: 30 }), ends: fc.integer({ min: 5, max: 20 }), openings: fc.constantFrom("holes", "slits"), square: fc.integer({ min: 0, max: 14 }),
  ease: fc.integer({ min: 0, max: 5 }), reinforced: fc.boolean(), flap: fc.option(fc.integer({ min: 16, max: 200 }), { nil: null }), cover: fc.integer({ min: 10, max: 320 }), trim: fc.constantFrom("none", "fore-edge", "three edges"),
}).map((b): Book => {
  const size = (millimetres: number): string => (units === "mm" ? `${millimetres} mm` : `${Math.max(1, Math.round(millimetres / 1.5875))}/16 in`);
  const orNothing = (millimetres: number): string => (millimetres === 0 ? "0" : size(millimetres));
  return {
    units,
    text: `{text block: {page: {height: ${size(b.height)}, width: ${size(b.width)}}, sections: ${b.sections}, folded sheets: ${b.sheets}, trim: ${b.trim}}, `
      + `sewing: {long stitches: ${b.long}, inside stitch: ${size(b.inside)}, station from head: ${size(b.ends)}, station from tail: ${size(b.ends)}, openings: ${b.openings}}, `
      + `cover: {square: ${orNothing(b.square)}, ease: ${orNothing(b.ease)}, reinforced: ${b.reinforced ? "yes" : "no"}, ${b.flap === null ? "flap: none" : `flap: wrap, flap width: ${size(b.flap)}`}}}`,
    rest: `materials: {cover: {thickness: ${b.cover / 100} mm}}\n`,
  };
}));

const madeOf = ({ text, units, rest }: Book): Model<"long-stitch"> | null => {
  const { model, problems } = longStitchModel(longStitchDefinition(text, { units, rest }));
  for (const finding of model.findings) for (const words of [finding.message, finding.consequence, finding.remedy]) expect(words.length).toBeGreaterThan(1);
  return problems.length > 0 ? null : model;
};

function holds(runs: number, law: (model: Model<"long-stitch">) => void): void {
  let made = 0;
  fc.assert(fc.property(books, (book) => {
    const model = madeOf(book);
    if (!model) return;
    made += 1;
    law(model);
  }), { numRuns: runs });
  expect(made, "books that could be made").toBeGreaterThan(runs / 5);
}

const sectionOf = (place: string): number => Number(/^section-(\d+)\//.exec(place)![1]);
const stationOf = (place: string): number => Number(place.split("/")[1]);

describe("the thread of every long-stitch binding that can be made", () => {
  it("is in one piece, changes sides at holes only, and covers what it must once", () => {
    holds(15, (model) => {
      for (const path of model.thread!.paths) expect(breachesOf(path, addLengths(...path.moves.map(({ length }) => length)))).toEqual([]);
    });
  });
  it("goes once through every opening, and through the very last one twice", () => {
    holds(15, ({ thread, geometry }) => {
      const { moves } = thread!.paths[0]!;
      const times = new Map<string, number>();
      for (const { kind, from } of moves) if (kind === "hole") times.set(from.place, (times.get(from.place) ?? 0) + 1);
      const { sections } = geometry.text;
      const end = `section-${sections}/${sections % 2 === 1 ? geometry.stations.length : 1}`;
      for (let section = 1; section <= sections; section += 1) geometry.stations.forEach((_, k) => {
        const place = `section-${section}/${k + 1}`;
        expect(times.get(place), place).toBe(place === end ? 2 : 1);
      });
      expect(times.size).toBe(sections * geometry.stations.length);
    });
  });
  it("takes turns: inside stitches between stations 1–2, 3–4 …, long stitches outside between 2–3, 4–5 …, in every section", () => {
    holds(15, ({ thread, geometry }) => {
      const runs = thread!.paths[0]!.moves.filter((move) => move.kind === "run" && sectionOf(move.from.place) === sectionOf(move.to.place));
      for (const { from, to } of runs) {
        const near = Math.min(stationOf(from.place), stationOf(to.place));
        expect(Math.abs(stationOf(from.place) - stationOf(to.place))).toBe(1);
        expect(to.side).toBe(near % 2 === 1 ? "inside" : "outside");
      }
      expect(runs).toHaveLength(geometry.text.sections * (geometry.stations.length - 1));
      expect(runs.filter(({ to }) => to.side === "outside")).toHaveLength(geometry.text.sections * geometry.longStitches);
    });
  });
  it("climbs outside at an end station only, and links from section 3 on under a stitch that joins the two sections before", () => {
    holds(15, ({ thread, geometry }) => {
      const { moves } = thread!.paths[0]!;
      const ends = [1, geometry.stations.length];
      for (const move of moves) {
        const [a, b] = [sectionOf(move.from.place), sectionOf(move.to.place)];
        if (a !== b) expect([move.to.side, ends.includes(stationOf(move.from.place)), stationOf(move.to.place)]).toEqual(["outside", true, stationOf(move.from.place)]);
        if (move.kind !== "kettle" && move.kind !== "link") continue;
        const caught = moves[move.under! - 1]!;
        const joined = [sectionOf(caught.from.place), sectionOf(caught.to.place)].sort((x, y) => x - y);
        expect(stationOf(caught.to.place)).toBe(stationOf(move.from.place));
        // The stitch spans the gap between the two sections before; the one after the knot begins a section lower.
        expect([joined[0]! <= a - 2, joined[1]]).toEqual([true, a - 1]);
      }
      // Every section but the first two and the last is linked and climbs in one; the last one is linked only.
      expect(moves.filter(({ kind }) => kind === "kettle")).toHaveLength(Math.max(0, geometry.text.sections - 3));
      expect(moves.filter(({ kind }) => kind === "link")).toHaveLength(1);
    });
  });
});

describe("the cover of every long-stitch binding that can be made", () => {
  it("is as wide as what it wraps and its bends, and less than one mark more for each width", () => {
    holds(25, ({ geometry, values }) => {
      const mm = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length);
      const { text, coverThickness: c, ease, square, frontWidth, spineWidth, backWidth, flap, coverWidth, strip } = geometry;
      const layer = strip ? mm(strip.thickness) + Number(values.get("spine strip adhesive thickness")!.quantity.value.n) / Number(values.get("spine strip adhesive thickness")!.quantity.value.d) : 0;
      const bend = (Math.PI / 4) * mm(c);
      const reach = layer + mm(text.blockWidth) + mm(square);
      const between = (given: number, exact: number): void => {
        expect(given - exact).toBeGreaterThan(-1e-3);
        expect(given - exact).toBeLessThan(1.6);
      };
      between(mm(frontWidth), reach + bend / 2);
      // To the nearest mark, but never narrower than what is held.
      const around = (given: number, held: number): void => {
        expect(given - held).toBeGreaterThan(-1e-3);
        expect(given - held - mm(ease)).toBeGreaterThan(-0.8);
        expect(given - held - mm(ease)).toBeLessThan(1.6);
      };
      around(mm(spineWidth), mm(text.spineThickness) + bend);
      between(mm(backWidth), reach + (flap ? bend : bend / 2));
      if (flap) around(mm(flap.wall), mm(text.blockThickness) + mm(c) + bend);
      expect(sameLength(coverWidth, addLengths(frontWidth, spineWidth, backWidth, ...(flap ? [flap.wall, flap.width] : [])))).toBe(true);
    });
  });
  it("has its columns one section apart, symmetrical in the spine and inside of its folds", () => {
    holds(25, ({ geometry }) => {
      const { columns, frontWidth, spineWidth, sectionPitch } = geometry;
      const left = toMillimetres(columns[0]!) - toMillimetres(frontWidth);
      const right = toMillimetres(frontWidth) + toMillimetres(spineWidth) - toMillimetres(columns.at(-1)!);
      expect(left).toBeCloseTo(right, 9);
      expect(left).toBeGreaterThanOrEqual(toMillimetres(sectionPitch) / 2 - 1e-9);
      columns.slice(1).forEach((at, k) => expect(toMillimetres(at) - toMillimetres(columns[k]!)).toBeCloseTo(toMillimetres(sectionPitch), 9));
    });
  });
  it("has a hole for every place of the thread, or a slit from the hole of section 1 to that of the last section", () => {
    holds(15, ({ geometry, holes, thread }) => {
      for (const { hole, along, across } of thread!.paths[0]!.places.values()) {
        if (hole !== null) {
          const there = holes.find(({ part, id }) => part === "cover" && id === hole)!;
          expect(sameLength(there.along, along) && sameLength(there.across, across)).toBe(true);
        } else {
          const slit = geometry.slits.find((each) => sameLength(each.along, along))!;
          expect(toMillimetres(across)).toBeGreaterThan(toMillimetres(slit.from));
          expect(toMillimetres(across)).toBeLessThan(toMillimetres(slit.to));
        }
      }
    });
  });
});

describe("the figures of every long-stitch binding that can be made", () => {
  it("have labels that touch nothing, readable type, a scale in the caption, and fit the column", () => {
    let made = 0;
    fc.assert(fc.property(books, ({ text, units, rest }) => {
      const input = longStitchInput(longStitchDefinition(text, { units, rest }));
      if (!input) return;
      made += 1;
      expectSoundDrawings(input, drawings);
    }), { numRuns: 10 });
    expect(made, "books that could be made").toBeGreaterThan(1);
  });
});
