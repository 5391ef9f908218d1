// Every figure that a step or the cut list names is drawn, and the figures of preparing and marking agree with the model.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { drawFigures, drawingInput } from "../../src/4-figures/index.ts";
import type { DrawingInput } from "../../src/4-figures/binding.ts";
import type { FigureDraft } from "../../src/4-figures/figure.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { fullColumn } from "../../src/4-figures/scale.ts";
import { flatItems, sceneBox, smallestType } from "../../src/4-figures/scene.ts";
import type { PathItem, TextItem } from "../../src/4-figures/scene.ts";
import { drawClothLayout } from "../../src/4-figures/stub-album/cloth-layout.ts";
import { drawCornerCut } from "../../src/4-figures/stub-album/corner-cut.ts";
import { drawCutParts } from "../../src/4-figures/bench/cut-parts.ts";
import { drawScaleCheck } from "../../src/4-figures/bench/scale-check.ts";
import { boxesMeet } from "../../src/geometry/box.ts";
import { pathBox, pathPoints } from "../../src/geometry/path.ts";
import { divideLength, inches, mm, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

/** The whole way from a definition to what a figure is drawn from; null for a book that cannot be made. */
function inputOf(overrides: StubAlbumOverrides): DrawingInput<"stub-album"> | null {
  const definition = stubAlbumDefinition(overrides);
  const { model, problems } = buildModel(definition);
  if (problems.length > 0) return null;
  return drawingInput({ definition, model: model as DrawingInput<"stub-album">["model"], plan: makePlan(definition, model).plan });
}

const texts = (figure: FigureDraft): readonly TextItem[] => flatItems(figure.items).filter((item): item is TextItem => item.kind === "text");
const paths = (figure: FigureDraft): readonly PathItem[] => flatItems(figure.items).filter((item): item is PathItem => item.kind === "path");
const scaleIn = (caption: string): number => {
  const [, paper, book] = /(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)/.exec(caption)!;
  return Number(paper) / Number(book);
};

const switches = [true, false].flatMap((lining) => [true, false].flatMap((bookmark) => (["ribbon", "none"] as const).flatMap((closure) =>
  (["back to back", "single"] as const).map((mounting) => ({ lining, bookmark, closure, pages: { mounting } })))));

describe.each([["mm", 1], ["mm", 8], ["in", 7], ["in", 60]] as const)("in %s with %i stubs", (units, stubs) => {
  it.each(switches)("every figure that steps and cut list name is drawn: lining $lining, bookmark $bookmark, closure $closure, $pages.mounting", (book) => {
    const input = inputOf({ units, book: { stubs, ...book } })!;
    const drawn = drawFigures(input).figures;
    const named = [...input.plan.steps.map((step) => step.figure).filter((id) => id !== null), ...input.plan.cutList.map((item) => item.figure)];
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((id) => !drawn.has(id))).toEqual([]);
  });
});

const albums: readonly (readonly [name: string, overrides: StubAlbumOverrides])[] = [
  ["8 stubs in millimetres", {}],
  ["7 stubs in inches", { units: "in", book: { stubs: 7 } }],
  ["60 × 60 mm", { book: { boards: { height: mm(60), width: mm(60) }, stubs: 3, "stub depth": mm(8), "side strip": mm(10) } }],
  ["600 × 60 mm", { book: { boards: { height: mm(600), width: mm(60) }, "side strip": mm(12) } }],
  ["60 × 60 mm with one stub and a wide turn-in", { book: { stubs: 1, "stub depth": mm(6), "floor gap": mm(2), margin: mm(2), "side strip": mm(10), "turn in": divideLength(mm(174), 10), "height clearance": mm(0), boards: { height: mm(60), width: mm(60), thickness: mm(1) }, pages: { mounting: "single" }, lining: false, bookmark: false, closure: "none" }, thickness: { "strip board": divideLength(mm(36), 10) } }],
  ["60 × 600 mm with 60 deep stubs", { book: { stubs: 60, "stub depth": mm(100), "floor gap": mm(40), boards: { height: mm(60), width: mm(600) } } }],
];

describe.each(albums)("figure scale-check: %s", (_, overrides) => {
  const figure = drawScaleCheck(inputOf(overrides)!, "boards");
  it("shows both check lines in the length that its scale says, and the ruler's figure at the end of the one it lies on", () => {
    const factor = scaleIn(figure.caption);
    const lengths = paths(figure).filter((item) => item.line === "outline").flatMap((item) => {
      // A check line is drawn as tick, line, tick.
      const points = pathPoints(item.path)[0]!;
      return points.length === 4 && points[0]!.y === points[3]!.y && points[1]!.y === points[2]!.y && points[1]!.y - points[0]!.y === 2 ? [{ length: points[2]!.x - points[1]!.x, end: points[2]!.x }] : [];
    });
    expect(lengths.map(({ length }) => length / factor)).toEqual([expect.closeTo(100, 6), expect.closeTo(101.6, 6)]);
    const [name, line] = overrides.units === "in" ? ["ruler 4", 1] : ["ruler 100", 0];
    const reading = texts(figure).find((item) => item.label === name)!;
    expect(reading.weight).toBe(600);
    expect(reading.at.x).toBeCloseTo(lengths[line]!.end, 6);
  });
  it("names both check lines and says that height is along the spine", () => {
    const words = texts(figure).map((item) => item.text);
    expect(words).toEqual(expect.arrayContaining(["exactly 100 mm", "exactly 4 in", "height, along the spine"]));
  });
});

describe.each(albums)("figure cut-parts: %s", (_, overrides) => {
  const input = inputOf(overrides)!;
  const figure = drawCutParts(input);
  const factor = scaleIn(figure.caption);
  const outlines = paths(figure).filter((item) => item.line === "outline").map((item) => pathBox(item.path)!);
  it("shows every part once, none over another", () => {
    expect(outlines).toHaveLength(input.plan.cutList.length);
    outlines.forEach((box, index) => expect(outlines.slice(index + 1).some((other) => boxesMeet(box, other))).toBe(false));
  });
  it("draws every part at the one scale, or says that it is shortened or widened", () => {
    input.model.parts.forEach((part, index) => {
      const box = outlines[index]!;
      for (const [shown, wanted, name] of [[box.right - box.left, toMillimetres(part.width) * factor, part.name], [box.bottom - box.top, toMillimetres(part.height) * factor, part.name]] as const) {
        if (Math.abs(shown - wanted) < 1e-6) continue;
        const sentence = shown < wanted ? /Drawn shortened: ([^.]*)\./ : /Drawn wider than they are: ([^.]*)\./;
        expect(sentence.exec(figure.caption)![1]!.split(", ")).toContain(name);
      }
    });
  });
  it("prints the letter, the count and the size of every part", () => {
    for (const { letter, part } of input.plan.cutList) {
      expect(texts(figure).filter((item) => item.label === `letter ${part.id}`).map((item) => item.text)).toEqual([letter]);
      const words = texts(figure).filter((item) => item.label === `words ${part.id}`).map((item) => item.text);
      expect(words.slice(0, 2)).toEqual([`${part.name} ×${part.count}`, `${input.number(part.height)} × ${input.number(part.width)}`]);
    }
  });
  it("has a grain arrow for every part that has a grain, and for no other", () => {
    const owners = new Set(paths(figure).map((item) => item.owner).filter((owner) => owner.startsWith("grain ")));
    const grained = input.model.parts.filter((part) => part.grain !== "none" && input.definition.materials[part.material]!.grain !== "none");
    expect([...owners].sort()).toEqual(grained.map((part) => `grain ${part.id}`).sort());
  });
});

describe.each(albums)("figure cloth-layout: %s", (_, overrides) => {
  const input = inputOf(overrides)!;
  const figure = drawClothLayout(input);
  const lines = input.model.parts.find((part) => part.id === "hinge-cloth")!.features.filter((feature) => feature.kind === "placement line");
  it("has labels that touch nothing", () => {
    expect(findCollisions(figure.items)).toEqual([]);
  });
  it("prints every placement line once, as a running dimension", () => {
    for (const mark of lines) expect(texts(figure).filter((item) => item.label === mark.name).map((item) => item.text)).toEqual([input.number(mark.at)]);
    for (const zero of ["left edge", "head edge"]) expect(texts(figure).filter((item) => item.label === zero).map((item) => item.text)).toEqual(["0"]);
  });
  it("draws the lines of the left half at its scale from the left edge", () => {
    const factor = scaleIn(figure.caption);
    const drawn = paths(figure).filter((item) => item.line === "placement").map((item) => pathBox(item.path)!).filter((box) => box.right - box.left < 1e-9).map((box) => box.left);
    const wanted = lines.filter((mark) => mark.direction === "vertical").map((mark) => toMillimetres(mark.at) * factor);
    expect(drawn).toHaveLength(6);
    drawn.slice(0, 3).forEach((x, index) => expect(x).toBeCloseTo(wanted[index]!, 6));
  });
});

describe.each(albums)("figure corner-cut: %s", (_, overrides) => {
  it("draws the cut at 45°, at the corner distance from the strip's corner", () => {
    const input = inputOf(overrides)!;
    const figure = drawCornerCut(input);
    const factor = scaleIn(figure.caption);
    const [from, to] = pathPoints(paths(figure).find((item) => item.line === "cut")!.path)[0]! as [{ x: number; y: number }, { x: number; y: number }];
    expect(to.x - from.x).toBeCloseTo(from.y - to.y, 9);
    const corner = toMillimetres(input.model.geometry.turnIn) * factor;
    expect((2 * corner - (from.x + from.y)) / Math.SQRT2 / factor).toBeCloseTo(toMillimetres(input.model.geometry.cornerDistance), 6);
  });
  it("says so, and shows no cut, when the cut would pass outside the cloth", () => {
    const figure = drawCornerCut(inputOf({ ...overrides, book: { ...overrides.book, "turn in": mm(5), "joint gap": mm(20) }, thickness: { "strip board": mm(5) } })!);
    expect(figure.caption).toMatch(/outside the cloth/);
    expect(paths(figure).some((item) => item.line === "cut")).toBe(false);
  });
});

/** Sizes over the whole range that a definition allows, on and off the ruler. */
const sizes = (unit: "mm" | "in", least: number, most: number): fc.Arbitrary<Length> =>
  unit === "mm"
    ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => divideLength(mm(tenths), 10))
    : fc.integer({ min: Math.ceil((least * 64) / 25.4), max: Math.floor((most * 64) / 25.4) }).map((parts) => inches(parts, 64));

const anyAlbum: fc.Arbitrary<StubAlbumOverrides> = fc.constantFrom<"mm" | "in">("mm", "in").chain((units) => fc.record({
  stubs: fc.integer({ min: 1, max: 60 }), depth: sizes(units, 6, 100), gap: sizes(units, 2, 40), margin: sizes(units, 2, 100), height: sizes(units, 60, 600), width: sizes(units, 60, 600),
  board: sizes(units, 1, 10), side: sizes(units, 10, 120), turnIn: sizes(units, 5, 60), clearance: sizes(units, 0, 50), strip: fc.integer({ min: 5, max: 60 }), dual: fc.boolean(), whole: fc.boolean(),
}).map((album): StubAlbumOverrides => ({
  units, dual: album.dual,
  book: {
    stubs: album.stubs, "stub depth": album.depth, "floor gap": album.gap, margin: album.margin, "side strip": album.side, "turn in": album.turnIn, "height clearance": album.clearance,
    boards: { height: album.height, width: album.width, thickness: album.board },
    pages: { mounting: album.whole ? "back to back" : "single" }, lining: album.whole, bookmark: album.whole, closure: album.whole ? "ribbon" : "none",
  },
  thickness: { "strip board": divideLength(mm(album.strip), 10) },
})));

describe("of every album that can be made", () => {
  it("the four figures have labels that touch nothing, readable type, and fit the column", () => {
    let made = 0;
    fc.assert(fc.property(anyAlbum, (overrides) => {
      const input = inputOf(overrides);
      if (!input) return;
      made += 1;
      for (const figure of [(given: typeof input) => drawScaleCheck(given, "boards"), drawCutParts, drawClothLayout, drawCornerCut].map((draw) => draw(input))) {
        expect(findCollisions(figure.items).map((collision) => `${figure.id}: ${collision}`)).toEqual([]);
        for (const item of texts(figure)) expect(item.size).toBeGreaterThanOrEqual(smallestType);
        const box = sceneBox(figure.items)!;
        expect(box.right - box.left + 3, figure.id).toBeLessThanOrEqual(fullColumn);
        expect(box.bottom - box.top + 3, figure.id).toBeLessThanOrEqual(200);
      }
    }), { numRuns: 120 });
    expect(made, "albums that could be made").toBeGreaterThan(40);
  });
});
