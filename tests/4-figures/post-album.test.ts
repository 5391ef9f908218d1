// The post album's figures and templates over the whole range of sizes: labels touch nothing, marks are those of the model, all steps have theirs.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFigures } from "../../src/4-figures/index.ts";
import type { DrawingInput } from "../../src/4-figures/binding.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { drawings } from "../../src/4-figures/post-album.ts";
import { fullColumn } from "../../src/4-figures/scale.ts";
import { flatItems, sceneBox, smallestType } from "../../src/4-figures/scene.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import { postAlbumInput } from "../fixtures/post-album.ts";
import type { PostAlbumOverrides } from "../fixtures/post-album.ts";

/** Everything that must hold for a figure; what does not, in words. */
function faultsOf(input: DrawingInput<"post-album">): readonly string[] {
  const figures = Object.values(drawings.figures).flatMap((draw) => draw(input) ?? []);
  return figures.flatMap((figure) => {
    const box = sceneBox(figure.items)!;
    const small = flatItems(figure.items).filter((item) => item.kind === "text" && item.size < smallestType - 1e-9);
    return [
      ...findCollisions(figure.items).map((collision) => `${figure.id}: ${collision}`),
      ...(box.right - box.left + 3 > fullColumn ? [`${figure.id} is ${box.right - box.left} wide`] : []),
      ...(box.bottom - box.top + 3 > 200 ? [`${figure.id} is ${box.bottom - box.top} high`] : []),
      ...(small.length > 0 ? [`${figure.id}: type too small`] : []),
      ...(/\d:\d|not to scale/.test(figure.caption) ? [] : [`${figure.id} does not tell its scale`]),
    ];
  });
}

const albums: readonly (readonly [name: string, overrides: PostAlbumOverrides])[] = [
  ["usual", {}],
  ["usual in inches, both units", { units: "in", dual: true }],
  ["cloth and paper, two scores", { book: { covering: "cloth and paper", scores: { count: 2 } } }],
  ["no guards, no lining", { book: { inserts: mm(0), lining: false } }],
  ["two small leaves", { book: { leaf: { height: mm(60), width: mm(70) }, hinge: mm(12), "turn in": mm(8), leaves: 2 } }],
  ["a hundred large leaves", { book: { leaf: { height: mm(600), width: mm(600) }, hinge: mm(60), leaves: 100, scores: { count: 3 }, posts: { count: 8 }, covering: "cloth and paper" } }],
  ["low and wide", { book: { leaf: { height: mm(60), width: mm(600) }, leaves: 30, posts: { count: 3, barrel: mm(3) }, "turn in": mm(10) } }],
  ["tall and narrow, in inches", { units: "in", book: { leaf: { height: inches(23), width: inches(5) }, leaves: 5, posts: { count: 6 } } }],
];

describe.each(albums)("a post album: %s", (_, overrides) => {
  const input = postAlbumInput(overrides)!;

  it("has figures without collisions, within the column, their scale told", () => expect(faultsOf(input)).toEqual([]));

  it("has every figure that steps and cut list name", () => {
    const drawn = drawFigures(input).figures;
    const named = [...input.plan.steps.map((step) => step.figure!), ...input.plan.cutList.map((item) => item.figure)];
    expect(named.length).toBeGreaterThan(18);
    expect(named.filter((id) => !drawn.has(id))).toEqual([]);
  });

  it("has templates whose labels touch nothing foreign, with every hole of the hinge strip at its place", () => {
    for (const draw of Object.values(drawings.templates)) expect(findCollisions(draw(input)!.items)).toEqual([]);
    const pierced = drawings.templates["hole-template"]!(input)!.marks.filter((mark) => mark.act === "pierce");
    const holes = input.model.holes.filter((hole) => hole.part === "hinge-strip");
    expect(pierced.map((mark) => [mark.name, ...mark.from])).toEqual(holes.map((hole) => [nameOf(hole.id), toMillimetres(hole.across), toMillimetres(hole.along)]));
  });
});

/** As the template and the steps call a hole. */
function nameOf(id: string): string {
  return `${id.replaceAll("-", " ")} hole`;
}

describe("the hole template", () => {
  it("shows head and tail of a leaf so that its holes come out where the leaf's are", () => {
    const input = postAlbumInput({ book: { posts: { count: 3 } } })!;
    const { marks } = drawings.templates["hole-template"]!(input)!;
    const head = marks.find((mark) => mark.name === "leaf head")!.from[1];
    for (const hole of input.model.holes.filter((each) => each.part === "leaf")) {
      expect(marks.find((mark) => mark.name === nameOf(hole.id))!.from[1] - head).toBeCloseTo(toMillimetres(hole.along), 9);
    }
  });
});

const sizes = (unit: "mm" | "in", low: number, high: number) => fc.integer({ min: low, max: high }).map((size) => (unit === "mm" ? mm(size) : inches(Math.round(size / 1.5875), 16)));
const anyAlbum: fc.Arbitrary<PostAlbumOverrides> = fc.constantFrom("mm" as const, "in" as const).chain((units) => fc.record({
  units: fc.constant(units), dual: fc.boolean(),
  book: fc.record({
    leaves: fc.integer({ min: 2, max: 100 }), leaf: fc.record({ height: sizes(units, 60, 600), width: sizes(units, 60, 600) }),
    hinge: sizes(units, 10, 60), "turn in": sizes(units, 6, 30), "cloth lap": sizes(units, 5, 40), square: sizes(units, 0, 6), inserts: sizes(units, 0, 4),
    covering: fc.constantFrom("cloth" as const, "cloth and paper" as const), lining: fc.boolean(),
    scores: fc.record({ count: fc.integer({ min: 1, max: 3 }) }), posts: fc.record({ count: fc.integer({ min: 2, max: 6 }), barrel: sizes(units, 2, 8) }),
  }),
}));

it("any post album that can be made has figures without collisions that fit their place", () => {
  let made = 0;
  fc.assert(fc.property(anyAlbum, (overrides) => {
    const input = postAlbumInput(overrides);
    if (!input) return;
    made += 1;
    expect(faultsOf(input)).toEqual([]);
  }), { numRuns: 30 });
  expect(made, "albums that could be made").toBeGreaterThan(12);
});
