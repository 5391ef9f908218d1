// The section figures of the stub album: drawn to the model's sizes, every label in a free place, and described in words with the same numbers.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DrawFigure, DrawingInput } from "../../src/4-figures/binding.ts";
import type { FigureDraft } from "../../src/4-figures/figure.ts";
import { finishFigure } from "../../src/4-figures/figure.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { flatItems, smallestType } from "../../src/4-figures/scene.ts";
import type { PathItem, TextItem } from "../../src/4-figures/scene.ts";
import { drawCloseStubs } from "../../src/4-figures/stub-album/close-stubs.ts";
import { drawClosedSpine } from "../../src/4-figures/stub-album/closed-spine.ts";
import { drawDecorationRoom } from "../../src/4-figures/stub-album/decoration-room.ts";
import { drawFoldSequence } from "../../src/4-figures/stub-album/fold-sequence.ts";
import { layOutFloor, ribbonPath, ribbonSizes } from "../../src/4-figures/stub-album/folded-card.ts";
import { drawGlueFloor } from "../../src/4-figures/stub-album/glue-floor.ts";
import { drawPageMounting } from "../../src/4-figures/stub-album/page-mounting.ts";
import { drawPostSection } from "../../src/4-figures/stub-album/post-section.ts";
import { drawings } from "../../src/4-figures/stub-album.ts";
import { distance } from "../../src/geometry/point.ts";
import { pathArea, pathBox } from "../../src/geometry/path.ts";
import { findAdhesive } from "../../src/catalogue/adhesives.ts";
import { inches, lengthOf, mm, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { printLength, printThickness } from "../../src/units/print-length.ts";
import { stubAlbumInput } from "../fixtures/drawing-input.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

type Input = DrawingInput<"stub-album">;

const drawScoring: DrawFigure<"stub-album"> = (input) => drawings.figures["scoring"]!(input);

/** Widest that still stands beside the text of a step, and widest of all. */
const beside = 85;
const column = 170;
const tallest = 215;

const figures: readonly (readonly [id: string, draw: DrawFigure<"stub-album">, widest: number])[] = [
  ["scoring", drawScoring, beside], ["fold-sequence", drawFoldSequence, beside], ["close-stubs", drawCloseStubs, beside], ["glue-floor", drawGlueFloor, beside],
  ["page-mounting", drawPageMounting, column], ["post-section", drawPostSection, column], ["closed-spine", drawClosedSpine, column], ["decoration-room", drawDecorationRoom, column],
];

const books: Readonly<Record<string, StubAlbumOverrides>> = {
  "the usual book": {},
  "the usual book in inches": { units: "in" },
  "one stub": { book: { stubs: 1 } },
  "two stubs with both units": { units: "in", dual: true, book: { stubs: 2 } },
  "three stubs with single papers and decoration": { book: { stubs: 3, pages: { mounting: "single", decoration: mm("1.5") } } },
  "sixty stubs": { book: { stubs: 60 } },
  "sixty tiny stubs in a 60 mm book": {
    book: { stubs: 60, "stub depth": mm(6), "floor gap": mm("1.5"), margin: mm(2), boards: { height: mm(60), width: mm(60), thickness: mm("0.5") }, "side strip": mm(10), "turn in": mm(5) },
    thickness: { card: mm("0.2"), "page paper": mm("0.1") },
  },
  "a 600 mm book of deep stubs": {
    book: { stubs: 5, "stub depth": mm(100), "floor gap": mm(40), margin: mm(100), boards: { height: mm(600), width: mm(600), thickness: mm(10) }, "side strip": mm(120), "turn in": mm(60), pages: { decoration: mm(38) } },
    thickness: { card: mm("0.8") },
  },
  "a fixed spine, no lining": { book: { spine: mm(72), lining: false } },
  "odd thicknesses in inches": { units: "in", book: { stubs: 7, "floor gap": inches(1, 2), "stub depth": inches(3), pages: { decoration: inches(1, 4), mounting: "single" } }, thickness: { card: mm("0.37") } },
  "one stub with both units and decoration": { units: "in", dual: true, book: { stubs: 1, margin: inches(1, 2), pages: { decoration: mm(3) } } },
  "wet adhesive in the stubs": { rest: { adhesives: { ...stubAlbumDefinition().adhesives, stubs: findAdhesive("PVA")!, pages: findAdhesive("wheat paste")! } } },
  "adhesives with long names": { rest: { adhesives: Object.fromEntries(Object.keys(stubAlbumDefinition().adhesives).map((job) => [job, findAdhesive("PVA and methyl cellulose mix")!])) } },
  "posts that are all too short": { book: { posts: { lengths: [mm(3)] } } },
};

function draftOf(draw: DrawFigure<"stub-album">, input: Input): FigureDraft {
  const draft = draw(input);
  expect(draft).not.toBeNull();
  return draft!;
}

/** Faults that no figure may have: labels that touch, type too small, drawing too large. */
function faultsOf(draft: FigureDraft, widest: number): readonly string[] {
  const figure = finishFigure(draft);
  const texts = flatItems(draft.items).filter((item): item is TextItem => item.kind === "text");
  return [
    ...findCollisions(draft.items),
    ...texts.filter((text) => text.size < smallestType - 1e-9).map((text) => `"${text.text}" is set too small`),
    ...(figure.width > widest ? [`${figure.width} mm wide, at most ${widest}`] : []),
    ...(figure.height > tallest ? [`${figure.height} mm high, at most ${tallest}`] : []),
  ];
}

/** Distance between the tips of a dimension's two arrowheads, in millimetres of paper. */
function drawnLength(draft: FigureDraft, name: string): number {
  const tips = flatItems(draft.items).flatMap((item) => (isArrowOf(item, name) ? item.path.flatMap((step) => (step.kind === "move" ? [step.to] : [])) : []));
  expect(tips, `arrowheads of "${name}"`).toHaveLength(2);
  return distance(tips[0]!, tips[1]!);
}

function isArrowOf(item: PathItem | TextItem, name: string): item is PathItem {
  return item.kind === "path" && item.fill === "arrow" && item.owner === name;
}

/** Paper to book, as the caption states it; `nth` counts the scales named in it. */
function statedScale(draft: FigureDraft, nth = 0): number {
  const [, paper, book] = [...draft.caption.matchAll(/\b(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)/g)][nth] ?? [];
  return Number(paper) / Number(book);
}

function valueOf(input: Input, name: string): Length {
  return lengthOf(input.model.values.get(name)!.quantity.value);
}

function textsOf(draft: FigureDraft): readonly string[] {
  return flatItems(draft.items).flatMap((item) => (item.kind === "text" ? [item.text] : []));
}

/** Stubs of a ribbon: its outer crests, which turn clockwise on the page. */
function crestsDrawn(draft: FigureDraft, fill: PathItem["fill"]): number {
  return flatItems(draft.items).reduce((sum, item) => (item.kind === "path" && item.fill === fill ? sum + item.path.filter((step) => step.kind === "arc" && step.clockwise).length : sum), 0);
}

describe.each(Object.entries(books))("%s", (_, overrides) => {
  const input = stubAlbumInput(overrides);

  test.each(figures)("in %s every label stands free, no type is too small, and the drawing fits its place", (id, draw, widest) => {
    const draft = draftOf(draw, input);
    expect(draft.id).toBe(id);
    expect(faultsOf(draft, widest)).toEqual([]);
  });

  test("draws dimensions at exactly the scale that the captions state", () => {
    const { geometry } = input.model;
    const { pages, posts } = geometry;
    const drawn: (readonly [name: string, draft: FigureDraft, length: Length, scale: number])[] = [];
    const add = (draft: FigureDraft, name: string, length: Length, nth = 0): void => void drawn.push([name, draft, length, statedScale(draft, nth)]);

    const close = draftOf(drawCloseStubs, input);
    add(close, "closed stub", valueOf(input, "closed stub"));
    add(close, "growth", geometry.stubGrowth);
    const mounting = draftOf(drawPageMounting, input);
    add(mounting, "adhesive zone", pages.adhesiveZone);
    add(mounting, "page zone", pages.adhesiveZone, 1);
    add(mounting, "page width", pages.width, 1);
    add(mounting, "page height", pages.height, 1);
    const post = draftOf(drawPostSection, input);
    add(post, "post stack", posts.stack);
    add(post, "hole", posts.holeDiameter);
    if (posts.length) add(post, "post length", posts.length);
    const stripWidth = printLength(geometry.spineStripWidth, { ...input.definition.units, dual: false });
    const floor = draftOf(drawGlueFloor, input);
    add(floor, "margin left", geometry.margin);
    add(floor, "margin right", geometry.margin);
    expect(textsOf(floor)).toContain(`${stripWidth} wide`);
    const spine = draftOf(drawClosedSpine, input);
    add(spine, "room at each end", pages.roomAtEachEnd);
    if (geometry.stubs > 1) add(spine, "room per opening", pages.roomPerOpening);
    if (!spine.caption.includes(" are drawn.") && !textsOf(spine).includes(`${stripWidth} wide`)) add(spine, "spine strip width", geometry.spineStripWidth);
    const room = draftOf(drawDecorationRoom, input);
    if (geometry.stubs > 1) {
      add(room, "pitch", geometry.pitch);
      add(room, "room per opening", pages.roomPerOpening);
    } else add(room, "room at each end", pages.roomAtEachEnd);

    for (const [name, draft, length, scale] of drawn) {
      expect(drawnLength(draft, name), `${draft.id}: ${name}`).toBeCloseTo(toMillimetres(length) * scale, 6);
    }
  });

  test("says in the text alternatives what the drawings say, with the same numbers", () => {
    const { geometry, scores } = input.model;
    const style = { ...input.definition.units, dual: false };
    const [size, thickness] = [(length: Length) => printLength(length, style), (length: Length) => printThickness(length, style)];
    const told: readonly (readonly [draw: DrawFigure<"stub-album">, numbers: readonly string[]])[] = [
      [drawScoring, [String(scores.length), size(geometry.stripHeight)]],
      [drawFoldSequence, [size(geometry.cardWidth), thickness(geometry.foldedFloor), thickness(geometry.stubGrowth)]],
      [drawCloseStubs, [thickness(valueOf(input, "closed stub")), thickness(geometry.stubGrowth), size(geometry.stubDepth)]],
      [drawGlueFloor, [size(geometry.margin), size(geometry.spineStripWidth), thickness(geometry.foldedFloor)]],
      [drawPageMounting, [size(geometry.pages.height), size(geometry.pages.width), size(geometry.pages.adhesiveZone), `${geometry.pages.papers} papers`]],
      [drawPostSection, [thickness(geometry.posts.stack), thickness(geometry.posts.holeDiameter), ...(geometry.posts.length ? [size(geometry.posts.length)] : ["No post in the list is long enough"])]],
      [drawClosedSpine, [size(geometry.spineStripWidth), size(input.model.finished.thickness), size(geometry.jointGap), thickness(geometry.pages.roomAtEachEnd), thickness(geometry.pages.roomInAll)]],
      [drawDecorationRoom, [thickness(geometry.pages.roomInAll), ...(geometry.stubs > 1 ? [thickness(geometry.pages.roomPerOpening), thickness(geometry.pitch)] : [])]],
    ];
    for (const [draw, numbers] of told) {
      const draft = draftOf(draw, input);
      for (const number of numbers) expect(draft.alternative, draft.id).toContain(number);
    }
  });
});

test("the drawn ribbon holds exactly the flat card: its area over its thickness is the card's developed width", () => {
  for (const stubs of [1, 2, 8, 60]) {
    const { geometry } = stubAlbumInput({ book: { stubs } }).model;
    // A hundred times as large, so that crests taken for short straight lines lose nothing.
    const enlarged = 100;
    const sizes = ribbonSizes(geometry, enlarged);
    const floor = layOutFloor(geometry, enlarged, stubs, 0);
    const area = Math.abs(pathArea(ribbonPath(floor.stubs.map(({ x }) => x), 0, floor.width, sizes)));
    // 0.0001 mm a stub: the model rounds π/4 − 1/2 to four figures.
    expect(Math.abs(area / sizes.card / enlarged - toMillimetres(geometry.cardWidth))).toBeLessThan(0.0001 * stubs);
  }
});

test("as many stubs are drawn in the closed spine as the book has, or as the caption says", () => {
  for (const stubs of [1, 2, 5, 8, 9, 16, 30, 60]) {
    const draft = draftOf(drawClosedSpine, stubAlbumInput({ book: { stubs } }));
    const said = /Of \d+ stubs, (\d+) are drawn/.exec(draft.caption);
    expect(crestsDrawn(draft, "solid")).toBe(said ? Number(said[1]) : stubs);
  }
});

test("the glued floor and the folding frames draw the first two and the last of many stubs, and number them", () => {
  const input = stubAlbumInput({ book: { stubs: 24 } });
  expect(crestsDrawn(draftOf(drawGlueFloor, input), "card")).toBe(3);
  expect(textsOf(draftOf(drawFoldSequence, input)).filter((text) => /^\d+$/.test(text))).toEqual(["1", "2", "24", "1", "2", "24"]);
});

test("the boards stand beside the spine strip: their inner faces in line with its ends, their feet as high as the closed rise", () => {
  const input = stubAlbumInput();
  const { geometry } = input.model;
  const draft = draftOf(drawClosedSpine, input);
  expect(statedScale(draft)).toBe(1);
  const boxes = flatItems(draft.items).flatMap((item) => (item.kind === "path" && (item.fill === "board" || item.fill === "strip") ? [{ fill: item.fill, box: pathBox(item.path)! }] : []));
  const boards = boxes.filter(({ fill }) => fill === "board").map(({ box }) => box);
  const [spine, ...sides] = boxes.filter(({ fill }) => fill === "strip").map(({ box }) => box);
  const [width, rise, stack] = [geometry.spineStripWidth, geometry.closedRise, geometry.hingeStack].map(toMillimetres) as [number, number, number];
  expect(boards.map((box) => [box.left, box.right]).flat()).toContain(0);
  expect(boards[0]!.right).toBeCloseTo(0, 9);
  expect(boards[1]!.left).toBeCloseTo(width, 9);
  expect(sides[0]!.left).toBeCloseTo(-stack, 9);
  expect(sides[1]!.right).toBeCloseTo(width + stack, 9);
  for (const box of [...boards, ...sides]) expect(spine!.bottom - box.bottom).toBeCloseTo(rise, 9);
});

test("two papers are drawn on each stub back to back, one when single", () => {
  const papers = (mounting: "back to back" | "single"): number => {
    const draft = draftOf(drawPageMounting, stubAlbumInput({ book: { pages: { mounting } } }));
    return flatItems(draft.items).filter((item) => item.kind === "path" && item.fill === "paper" && item.line === "edge").length;
  };
  // Two stubs are shown.
  expect(papers("back to back")).toBe(4);
  expect(papers("single")).toBe(2);
});

test("the caption says how much the card is thickened, and only when it is", () => {
  expect(draftOf(drawClosedSpine, stubAlbumInput()).caption).not.toContain("too thick");
  expect(draftOf(drawClosedSpine, stubAlbumInput({ thickness: { card: mm("0.16") } })).caption).toContain("The card is drawn 2 times too thick");
});

test("decoration thicker than its opening is said to be so and never drawn as if it fitted", () => {
  const input = stubAlbumInput({ book: { pages: { decoration: mm(36) } } });
  const spine = draftOf(drawClosedSpine, input);
  expect(spine.caption).toContain("More is planned than an opening holds: 36\u00a0mm");
  expect(flatItems(spine.items).some((item) => item.kind === "path" && item.fill === "tape")).toBe(false);
  const room = draftOf(drawDecorationRoom, input);
  expect(room.caption).toContain("36\u00a0mm, more than there is room for");
  expect(faultsOf(room, column)).toEqual([]);
});

test("for any number of stubs and any sizes every label of every figure finds a free place", () => {
  const tenths = (from: number, to: number) => fc.integer({ min: from * 10, max: to * 10 }).map((value) => mm((value / 10).toFixed(1)));
  // The ranges that a definition may have, but for floor gap and margin: thinner than a mark of the ruler (1/16 in) the model refuses some of them.
  const book = fc.record({
    units: fc.constantFrom("mm" as const, "in" as const), dual: fc.boolean(),
    stubs: fc.integer({ min: 1, max: 60 }), depth: tenths(6, 100), gap: tenths(2, 40), margin: tenths(2, 100), height: tenths(60, 600), width: tenths(60, 600),
    board: tenths(1, 10), side: tenths(10, 120), card: fc.integer({ min: 10, max: 100 }).map((value) => mm((value / 100).toFixed(2))), single: fc.boolean(), decoration: fc.option(tenths(0, 40)),
  });
  fc.assert(fc.property(book, (sizes) => {
    const input = stubAlbumInput({
      units: sizes.units, dual: sizes.dual, thickness: { card: sizes.card },
      book: {
        stubs: sizes.stubs, "stub depth": sizes.depth, "floor gap": sizes.gap, margin: sizes.margin, "side strip": sizes.side,
        boards: { height: sizes.height, width: sizes.width, thickness: sizes.board }, pages: { mounting: sizes.single ? "single" : "back to back", decoration: sizes.decoration },
      },
    });
    for (const [id, draw, widest] of figures) {
      const draft = draftOf(draw, input);
      expect(faultsOf(draft, widest), id).toEqual([]);
    }
  }), { numRuns: 30 });
});
