// The stub album's flat figures and templates over the whole range of sizes: labels touch nothing, positions are those of the model.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Length } from "../../src/units/length.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import { drawFigures } from "../../src/4-figures/index.ts";
import { drawPart } from "../../src/4-figures/part.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { fullColumn, tallestFigure } from "../../src/4-figures/scale.ts";
import { flatItems, sceneBox } from "../../src/4-figures/scene.ts";
import { drawings } from "../../src/4-figures/stub-album.ts";
import { stubAlbumInput } from "../fixtures/drawing-input.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

const counts = [1, 2, 3, 7, 12, 20, 30, 60];

function boards(height: Length, width: Length): StubAlbumOverrides["book"] {
  return { boards: { height, width, thickness: mm(2) } };
}

const albums: readonly (readonly [name: string, overrides: StubAlbumOverrides])[] = [
  ...counts.map((stubs) => [`${stubs} stubs in millimetres`, { book: { stubs } }] as const),
  ...counts.map((stubs) => [`${stubs} stubs in inches`, { units: "in", book: { stubs } }] as const),
  ["60 × 60 mm", { book: { ...boards(mm(60), mm(60)), stubs: 3, "stub depth": mm(6), "side strip": mm(10), "floor gap": mm(2) } }],
  ["600 × 600 mm", { book: { ...boards(mm(600), mm(600)), stubs: 12, "stub depth": mm(100), "floor gap": mm(40) } }],
  ["600 × 60 mm", { book: { ...boards(mm(600), mm(60)), stubs: 5, "side strip": mm(20) } }],
  ["24 × 18 in", { units: "in", book: { ...boards(inches(24), inches(18)), stubs: 7 } }],
  ["60 narrow stubs", { book: { stubs: 60, "stub depth": mm(6), "floor gap": mm("1.5") } }],
  ["30 deep stubs close together", { book: { stubs: 30, "stub depth": mm(100), "floor gap": mm("1.5") } }],
  ["8 posts in 60 mm", { book: { ...boards(mm(60), mm(200)), posts: { count: 8, barrel: mm(2) } } }],
  ["8 posts", { book: { posts: { count: 8 } } }],
];

describe.each(albums)("a stub album: %s", (_, overrides) => {
  const input = stubAlbumInput(overrides);
  const figures = [...Object.values(drawings.figures).flatMap((draw) => draw(input) ?? []), ...input.model.parts.map((part) => drawPart(input, part))];

  it("has figures whose labels touch neither each other nor foreign lines", () => {
    for (const figure of figures) expect(findCollisions(figure.items).map((collision) => `${figure.id}: ${collision}`)).toEqual([]);
  });
  it("has figures no wider than the column and no taller than a page", () => {
    for (const figure of figures) {
      const box = sceneBox(figure.items)!;
      expect(box.right - box.left + 3, figure.id).toBeLessThanOrEqual(fullColumn);
      expect(box.bottom - box.top + 3, figure.id).toBeLessThanOrEqual(tallestFigure);
    }
  });
  it("says in every caption to which scale a figure is, or that it is not", () => {
    for (const figure of figures) expect(figure.caption).toMatch(/\d:\d|not to scale/);
  });
  it("prints every score of the model once in the score map", () => {
    const map = drawings.figures["score-map"]!(input)!;
    for (const score of input.model.scores) {
      const texts = flatItems(map.items).filter((item) => item.kind === "text" && item.label === score.name);
      expect(texts.map((item) => item.kind === "text" && item.text)).toEqual([input.number(score.at)]);
    }
  });
  it("has templates whose labels touch neither each other nor foreign lines", () => {
    for (const draw of Object.values(drawings.templates)) {
      const template = draw(input)!;
      expect(findCollisions(template.items).map((collision) => `${template.id}: ${collision}`)).toEqual([]);
    }
  });
  it("has a score guide and a hole template with every mark of the model at its place", () => {
    const guide = drawings.templates["score-guide"]!(input)!;
    expect(guide.marks.map((mark) => [mark.name, mark.from[0]])).toEqual(input.model.scores.map((score) => [score.name, toMillimetres(score.at)]));
    const { marks } = drawings.templates["hole-template"]!(input)!;
    // One template serves both covers: turned over, its holes are those of the back one.
    for (const side of ["front", "back"]) {
      const holes = input.model.holes.filter((hole) => hole.part === "side-strip" && hole.id.startsWith(`${side}-`));
      expect(marks.map((mark) => [mark.name, ...mark.from])).toEqual(holes.map((hole) => [`${hole.id.slice(side.length + 1).replaceAll("-", " ")} hole`, toMillimetres(hole.across), toMillimetres(hole.along)]));
    }
  });
});

describe("any stub album that can be written", () => {
  const marks = (unit: "mm" | "in", low: number, high: number) => fc.integer({ min: low, max: high }).map((size) => (unit === "mm" ? mm(size) : inches(Math.round(size / 1.5875), 16)));
  const album = fc.constantFrom("mm" as const, "in" as const).chain((units) => fc.record({
    units: fc.constant(units),
    book: fc.record({
      stubs: fc.integer({ min: 1, max: 60 }), "stub depth": marks(units, 6, 100), "floor gap": marks(units, 1, 40), margin: marks(units, 1, 60),
      boards: fc.record({ height: marks(units, 60, 600), width: marks(units, 60, 600), thickness: marks(units, 1, 10) }),
      "side strip": marks(units, 10, 60), "turn in": marks(units, 5, 60),
      posts: fc.record({ count: fc.integer({ min: 2, max: 8 }), barrel: marks(units, 2, 12) }),
    }),
  }));
  it("has flat figures, part drawings and templates whose labels touch nothing foreign and that fit their place", () => {
    fc.assert(fc.property(album, (overrides) => {
      const input = stubAlbumInput(overrides);
      const flat = ["score-map", "score-map-from-centre", "hole-layout"].map((id) => drawings.figures[id]!(input)!);
      for (const figure of [...flat, ...input.model.parts.map((part) => drawPart(input, part))]) {
        expect(findCollisions(figure.items), figure.id).toEqual([]);
        const box = sceneBox(figure.items)!;
        expect(box.right - box.left + 3, figure.id).toBeLessThanOrEqual(fullColumn);
        expect(box.bottom - box.top + 3, figure.id).toBeLessThanOrEqual(tallestFigure);
      }
      for (const draw of Object.values(drawings.templates)) expect(findCollisions(draw(input)!.items)).toEqual([]);
    }), { numRuns: 250 });
  });
});

describe("all drawings of a stub album", () => {
  const input = stubAlbumInput();
  const drawn = drawFigures(input);
  it("include one figure for each part of the cut list", () => {
    for (const item of input.plan.cutList) expect(drawn.figures.has(item.figure)).toBe(true);
  });
  it("have ids that are unique across figures", () => {
    const ids = [...drawn.figures.values()].flatMap((figure) => [...figure.svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!));
    expect(new Set(ids).size).toBe(ids.length);
  });
  it("are the same every time", () => expect(drawFigures(input)).toEqual(drawn));
});

describe("the corner template", () => {
  it("cuts at the corner distance from the strip's corner, square to the cut", () => {
    const input = stubAlbumInput();
    const cut = drawings.templates["corner-template"]!(input)!.marks.find((mark) => mark.name === "corner cut")!;
    const turnIn = toMillimetres(input.model.geometry.turnIn);
    // Distance of the point (turn-in, turn-in) from the line x + y = reach.
    expect((2 * turnIn - cut.from[0]) / Math.SQRT2).toBeCloseTo(toMillimetres(input.model.geometry.cornerDistance), 9);
    expect(cut.from[0]).toBeCloseTo(cut.to[1], 9);
  });
});
