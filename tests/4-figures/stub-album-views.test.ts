// The stub album's plan and pictorial views: what is drawn measures what the model says, and the words say it too.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FigureDraft } from "../../src/4-figures/figure.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { fullColumn } from "../../src/4-figures/scale.ts";
import { flatItems, sceneBox, smallestType } from "../../src/4-figures/scene.ts";
import type { PathItem } from "../../src/4-figures/scene.ts";
import { drawBookmark } from "../../src/4-figures/stub-album/bookmark.ts";
import { drawClosure } from "../../src/4-figures/stub-album/closure.ts";
import { drawCoveredHinge } from "../../src/4-figures/stub-album/covered-hinge.ts";
import { drawFinishedBook } from "../../src/4-figures/stub-album/finished-book.ts";
import { drawGlueStrips } from "../../src/4-figures/stub-album/glue-strips.ts";
import { stripHoles } from "../../src/4-figures/stub-album/hole-layout.ts";
import { drawJoinBoards } from "../../src/4-figures/stub-album/join-boards.ts";
import { drawLining } from "../../src/4-figures/stub-album/lining.ts";
import { drawNamedParts } from "../../src/4-figures/stub-album/named-parts.ts";
import { drawPierceHoles } from "../../src/4-figures/stub-album/pierce-holes.ts";
import { sectionWords } from "../../src/4-figures/bench/section-words.ts";
import { drawings } from "../../src/4-figures/stub-album.ts";
import { distance, midpoint, subtractPoints } from "../../src/geometry/point.ts";
import { pathBox, pathPoints } from "../../src/geometry/path.ts";
import type { Length } from "../../src/units/length.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import { stubAlbumInput } from "../fixtures/drawing-input.ts";

const drawTurnIn = (input: Parameters<typeof drawCoveredHinge>[0]): FigureDraft => drawings.figures["turn-in"]!(input)!;

const draws = [drawGlueStrips, drawTurnIn, drawCoveredHinge, drawClosure, drawLining, drawJoinBoards, drawPierceHoles, drawBookmark, drawFinishedBook, drawNamedParts];
const albums = [["in millimetres", stubAlbumInput()], ["in inches", stubAlbumInput({ units: "in", book: { stubs: 5 } })]] as const;

/** Paper for one millimetre of book, by the figure's own caption: "1:2.5" is 0.4. `which` counts from 0. */
function scaleOf(figure: FigureDraft, which = 0): number {
  const found = [...figure.caption.matchAll(/(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)/g)][which]!;
  return Number(found[1]) / Number(found[2]);
}

function paths(figure: FigureDraft): readonly PathItem[] {
  return flatItems(figure.items).filter((item) => item.kind === "path");
}

/** Distance between the two extension lines of a dimension, as drawn. */
function measured(figure: FigureDraft, name: string, along: "x" | "y"): number {
  const lines = paths(figure).filter((item) => item.owner === name && item.line === "dimension").map((item) => pathPoints(item.path)[0]![0]!);
  return Math.abs(lines[1]![along] - lines[0]![along]);
}

function textOf(figure: FigureDraft, name: string): string {
  return flatItems(figure.items).flatMap((item) => (item.kind === "text" && item.label === name ? [item.text] : [])).join(" ");
}

describe.each(albums)("the views of a stub album %s", (_, input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const onPaper = (length: Length, figure: FigureDraft): number => toMillimetres(length) * scaleOf(figure);

  it("draw the covered hinge with every dimension as long as its number says", () => {
    const figure = drawCoveredHinge(input);
    const sizes: readonly (readonly [name: string, length: Length, along: "x" | "y"])[] = [
      ["side strip width", geometry.sideStripWidth, "x"], ["joint gap width", geometry.jointGap, "x"], ["spine strip width", geometry.spineStripWidth, "x"],
      ["hinge tape width", geometry.hingeTapeWidth, "x"], ["strip height", geometry.stripHeight, "y"],
    ];
    for (const [name, length, along] of sizes) {
      expect(measured(figure, name, along), name).toBeCloseTo(onPaper(length, figure), 6);
      expect(textOf(figure, name)).toBe(input.number(length));
    }
  });

  it("draw each placement line of the cloth at its place under the strips", () => {
    const figure = drawGlueStrips(input);
    const cloth = input.model.parts.find((part) => part.id === "hinge-cloth")!;
    const lines = paths(figure).filter((item) => item.line === "placement").map((item) => pathPoints(item.path)[0]!);
    const drawn = lines.map(([from, to]) => (from!.x === to!.x ? from!.x : from!.y));
    const expected = cloth.features.flatMap((feature) => (feature.kind === "placement line" ? [onPaper(feature.at, figure)] : []));
    expect(drawn).toHaveLength(8);
    expected.forEach((at, index) => expect(drawn[index]!).toBeCloseTo(at, 6));
  });

  it("cut the corner at 45° and at the corner distance from the side strip's corner", () => {
    const figure = drawTurnIn(input);
    const [from, to] = pathPoints(paths(figure).find((item) => item.line === "cut")!.path)[0]!;
    expect(Math.abs(from!.x - to!.x)).toBeCloseTo(Math.abs(from!.y - to!.y), 6);
    const turnIn = onPaper(geometry.turnIn, figure);
    // Distance of the strip's corner (turn-in, turn-in) from the line x + y = constant.
    expect((2 * turnIn - (from!.x + from!.y)) / Math.SQRT2).toBeCloseTo(onPaper(geometry.cornerDistance, figure), 6);
  });

  it("glue the closure ribbon at the middle of the fore-edge over its glued length", () => {
    const figure = drawClosure(input)!;
    expect(measured(figure, "glued length", "x")).toBeCloseTo(onPaper(geometry.closureGlued, figure), 6);
    const [board, ribbon] = paths(figure).map((item) => pathBox(item.path)!);
    expect(ribbon!.right).toBeCloseTo(board!.right, 6);
    expect((ribbon!.top + ribbon!.bottom) / 2).toBeCloseTo((board!.top + board!.bottom) / 2, 6);
    expect(ribbon!.bottom - ribbon!.top).toBeCloseTo(onPaper(geometry.ribbonWidth, figure), 6);
  });

  it("leave the lining's inset free at all four edges, less than half a step of the ruler apart", () => {
    const figure = drawLining(input)!;
    const halfStep = (toMillimetres(input.definition.units.step) / 2) * scaleOf(figure);
    for (const [name, along] of [["inset at the spine edge", "x"], ["inset at the fore-edge", "x"], ["inset at the head", "y"], ["inset at the tail", "y"]] as const) {
      expect(Math.abs(measured(figure, name, along) - onPaper(geometry.lining!.inset, figure)), name).toBeLessThanOrEqual(halfStep + 1e-9);
      expect(textOf(figure, name)).toBe(words.size(geometry.lining!.inset));
    }
  });

  it("set the side strips on the boards with the strip's inset at head and tail", () => {
    const figure = drawJoinBoards(input);
    for (const name of ["inset at the head", "inset at the tail"]) {
      expect(measured(figure, name, "y"), name).toBeCloseTo(onPaper(geometry.stripInset, figure), 6);
      expect(textOf(figure, name)).toBe(words.size(geometry.stripInset));
    }
  });

  it("pierce every hole at its place along the strip, the tool upright over the first", () => {
    const figure = drawPierceHoles(input);
    const holes = stripHoles(input);
    const marks = paths(figure).filter((item) => item.fill === "arrow" && item.owner === "").map((item) => pathBox(item.path)!);
    const centres = marks.map((box) => midpoint({ x: box.left, y: box.top }, { x: box.right, y: box.bottom }));
    expect(centres).toHaveLength(holes.length);
    holes.slice(1).forEach((hole, index) => {
      const apart = toMillimetres(hole.along) - toMillimetres(holes[0]!.along);
      expect(distance(centres[index + 1]!, centres[0]!)).toBeCloseTo(apart * scaleOf(figure), 2);
    });
    const tool = pathBox(paths(figure).find((item) => item.fill === "metal")!.path)!;
    expect((tool.left + tool.right) / 2).toBeCloseTo(centres[0]!.x, 2);
    expect(tool.bottom).toBeCloseTo(centres[0]!.y, 2);
  });

  it("lay the bookmark cornerwise over the page with all of its free length", () => {
    const figure = drawBookmark(input)!;
    const factor = scaleOf(figure, 1);
    const ribbon = paths(figure).filter((item) => item.fill === "face-deep").map((item) => pathPoints(item.path)[0]!).at(-1)!;
    // Four corners: both ends of the left side, then both ends of the right side back.
    const length = distance(midpoint(ribbon[0]!, ribbon[3]!), midpoint(ribbon[1]!, ribbon[2]!));
    expect(length).toBeCloseTo((toMillimetres(geometry.bookmarkLength!) - toMillimetres(geometry.turnIn)) * factor, 6);
    const way = subtractPoints(ribbon[1]!, ribbon[0]!);
    expect(way.x / way.y).toBeCloseTo(toMillimetres(geometry.pages.width) / toMillimetres(geometry.pages.height), 6);
  });

  it("show the finished book with all its pages and in true proportions", () => {
    const figure = drawFinishedBook(input);
    const upright = (item: PathItem): readonly number[] => {
      const points = pathPoints(item.path)[0]!;
      return points.slice(1).flatMap((at, index) => (Math.abs(at.x - points[index]!.x) < 1e-9 ? [Math.abs(at.y - points[index]!.y)] : []));
    };
    const contours = paths(figure).filter((item) => item.line === "outline").map((item) => Math.max(0, ...upright(item))).filter((size) => size > 0);
    expect(Math.min(...contours) / Math.max(...contours)).toBeCloseTo(toMillimetres(geometry.stripHeight) / toMillimetres(geometry.boardHeight), 6);
    const pages = paths(figure).filter((item) => item.fill === "paper" && pathPoints(item.path)[0]!.length > 8 && upright(item).length > 0);
    expect(pages).toHaveLength(geometry.stubs);
    for (const page of pages) expect(Math.max(...upright(page)) / Math.max(...contours)).toBeCloseTo(toMillimetres(geometry.pages.height) / toMillimetres(geometry.boardHeight), 6);
  });

  it("say in their alternatives the sizes that the drawings show", () => {
    const { lining, pages } = geometry;
    const { height, width, thickness } = input.model.finished;
    const said: readonly (readonly [FigureDraft | null, readonly string[]])[] = [
      [drawGlueStrips(input), [geometry.clothHeight, geometry.clothWidth, geometry.turnIn, geometry.jointGap, geometry.spineStripWidth, geometry.sideStripWidth].map(words.size)],
      [drawTurnIn(input), [words.size(geometry.turnIn), words.thickness(geometry.cornerDistance), "45°"]],
      [drawCoveredHinge(input), [geometry.stripHeight, geometry.sideStripWidth, geometry.jointGap, geometry.spineStripWidth, geometry.hingeTapeWidth].map(words.size)],
      [drawClosure(input), [geometry.closureGlued, geometry.closureLength!, geometry.ribbonWidth, geometry.boardHeight].map(words.size)],
      [drawLining(input), [lining!.inset, lining!.height, lining!.width].map(words.size)],
      [drawJoinBoards(input), [words.size(geometry.stripInset)]],
      [drawPierceHoles(input), [words.thickness(geometry.posts.holeDiameter), "head", "tail"]],
      [drawBookmark(input), [geometry.bookmarkLength!, geometry.turnIn, pages.height, pages.width].map(words.size)],
      [drawFinishedBook(input), [...[height, width, thickness].map(words.size), String(geometry.stubs)]],
    ];
    for (const [figure, sizes] of said) for (const size of sizes) expect(figure!.alternative, figure!.id).toContain(size);
  });
});

describe("the named parts", () => {
  const input = stubAlbumInput();
  const text = flatItems(drawNamedParts(input).items).flatMap((item) => (item.kind === "text" ? [item.text] : []));
  it("carry name and letter of every part but the hidden tape, as the cut list prints them", () => {
    for (const part of input.model.parts.filter(({ id }) => id !== "hinge-tape")) expect(text).toContain(sectionWords(input).part(part.id));
  });
});

describe("a book without lining, closure and bookmark", () => {
  const input = stubAlbumInput({ book: { lining: false, closure: "none", bookmark: false } });
  it("has no figures of them", () => expect([drawLining(input), drawClosure(input), drawBookmark(input)]).toEqual([null, null, null]));
  it("names no such parts", () => expect(drawNamedParts(input).alternative).not.toMatch(/ribbon|bookmark|lining/));
  it("does not speak of ribbons in the finished book", () => expect(drawFinishedBook(input).alternative).not.toMatch(/ribbon|bookmark/));
});

describe("the views over the whole range of sizes", () => {
  it("have labels of readable size that touch nothing, and no figure wider than the column", () => {
    const side = fc.integer({ min: 60, max: 600 });
    const album = fc.record({
      units: fc.constantFrom("mm" as const, "in" as const), stubs: fc.integer({ min: 1, max: 60 }), height: side, width: side,
      turnIn: fc.integer({ min: 8, max: 25 }), sideStrip: fc.integer({ min: 10, max: 60 }), posts: fc.integer({ min: 2, max: 8 }),
    });
    fc.assert(fc.property(album, ({ units, stubs, height, width, turnIn, sideStrip, posts }) => {
      const length = (size: number): Length => (units === "mm" ? mm(size) : inches(Math.round((size * 16) / 25.4), 16));
      const input = stubAlbumInput({
        units,
        book: { stubs, boards: { height: length(height), width: length(width) }, "turn in": length(turnIn), "side strip": length(sideStrip), posts: { count: posts } },
      });
      fc.pre(input.model.findings.every((finding) => finding.severity !== "stop"));
      for (const draw of draws) {
        const figure = draw(input)!;
        expect(findCollisions(figure.items), figure.id).toEqual([]);
        const box = sceneBox(figure.items)!;
        expect(box.right - box.left, figure.id).toBeLessThanOrEqual(fullColumn);
        for (const item of flatItems(figure.items)) if (item.kind === "text") expect(item.size).toBeGreaterThanOrEqual(smallestType - 1e-9);
      }
    }), { numRuns: 40 });
  });
});
