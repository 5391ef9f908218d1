// Laws of the stub album over many sizes, in both units.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { addLengths, compareLengths, divideLength, inches, isLess, isOnMark, mm, multiplyLength, noLength, sameLength, subtractLength } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

/** Whole tenths of a millimetre or whole 64ths of an inch: odd sizes, on and off the ruler. */
const sizes = (unit: "mm" | "in", least: number, most: number): fc.Arbitrary<Length> =>
  unit === "mm"
    ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => divideLength(mm(tenths), 10))
    : fc.integer({ min: Math.ceil((least * 64) / 25.4), max: Math.floor((most * 64) / 25.4) }).map((parts) => inches(parts, 64));

const albums: fc.Arbitrary<StubAlbumOverrides> = fc.constantFrom<"mm" | "in">("mm", "in").chain((unit) =>
  fc.record({
    stubs: fc.integer({ min: 1, max: 30 }), depth: sizes(unit, 8, 60), gap: sizes(unit, 2, 30), margin: sizes(unit, 3, 40),
    height: sizes(unit, 60, 600), width: sizes(unit, 60, 600), board: sizes(unit, 1, 6), strip: sizes(unit, 10, 60), turnIn: sizes(unit, 6, 25),
    card: fc.integer({ min: 10, max: 90 }), posts: fc.integer({ min: 2, max: 6 }), single: fc.boolean(),
  }).map((album): StubAlbumOverrides => ({
    units: unit,
    book: {
      stubs: album.stubs, "stub depth": album.depth, "floor gap": album.gap, margin: album.margin, "side strip": album.strip, "turn in": album.turnIn,
      boards: { height: album.height, width: album.width, thickness: album.board },
      pages: { mounting: album.single ? "single" : "back to back" }, posts: { count: album.posts },
    },
    thickness: { card: divideLength(mm(album.card), 100) },
  })));

/** Runs a law on every album that can be made; one that cannot must say why. */
function holds(law: (made: { readonly definition: ReturnType<typeof stubAlbumDefinition>; readonly model: ReturnType<typeof buildModel<"stub-album">>["model"] }) => void): void {
  let made = 0;
  fc.assert(fc.property(albums, (overrides) => {
    const definition = stubAlbumDefinition(overrides);
    const { model, problems } = buildModel(definition);
    expect(problems.length).toBe(model.findings.filter((finding) => finding.severity === "stop").length);
    for (const finding of model.findings) for (const text of [finding.message, finding.consequence, finding.remedy]) expect(text.length).toBeGreaterThan(5);
    if (problems.length > 0) return;
    made += 1;
    law({ definition, model });
  }), { numRuns: 150 });
  expect(made, "albums that could be made").toBeGreaterThan(20);
}

describe("every stub album that can be made", () => {
  it("has 3n scores exactly on ruler marks, equal leaves, and the last one a margin from the right edge", () => {
    holds(({ definition, model }) => {
      const { step } = definition.units;
      const { geometry, scores } = model;
      expect(scores).toHaveLength(3 * geometry.stubs);
      for (const score of scores) {
        expect(isOnMark(score.at, step)).toBe(true);
        expect(sameLength(score.at, score.exactAt)).toBe(true);
      }
      for (let crest = 1; crest < scores.length; crest += 3) {
        const [left, middle, right] = [scores[crest - 1]!.at, scores[crest]!.at, scores[crest + 1]!.at];
        expect(sameLength(subtractLength(middle, left), subtractLength(right, middle))).toBe(true);
      }
      expect(sameLength(subtractLength(geometry.cardWidth, scores.at(-1)!.at), geometry.margin)).toBe(true);
    });
  });

  it("has a spine strip that holds the folded floor and the ease with less than one mark to spare", () => {
    holds(({ definition, model }) => {
      const slack = subtractLength(subtractLength(model.geometry.spineStripWidth, model.geometry.foldedFloor), definition.book["floor ease"]);
      expect(isLess(slack, noLength)).toBe(false);
      expect(isLess(slack, definition.units.step)).toBe(true);
    });
  });

  it("has score marks that add up to the printed floor: gaps and margins read off the marks, and the growth of every stub", () => {
    holds(({ model }) => {
      const { geometry, scores } = model;
      const gaps = Array.from({ length: geometry.stubs - 1 }, (_, i) => subtractLength(scores[3 * i + 3]!.at, scores[3 * i + 2]!.at));
      const margins = addLengths(scores[0]!.at, subtractLength(geometry.cardWidth, scores.at(-1)!.at));
      expect(sameLength(addLengths(margins, ...gaps, multiplyLength(geometry.stubGrowth, geometry.stubs)), geometry.foldedFloor)).toBe(true);
    });
  });

  it("notes each size that was put on a mark, is never more than half a mark off it, and notes nothing else", () => {
    holds(({ definition, model }) => {
      const { step } = definition.units;
      const noted = model.findings.filter((finding) => finding.code === "put-on-mark").map((finding) => finding.where);
      const { book } = definition;
      const sizes = [["stub depth", book["stub depth"], model.geometry.stubDepth], ["floor gap", book["floor gap"], model.geometry.floorGap], ["margin", book.margin!, model.geometry.margin]] as const;
      for (const [name, written, used] of sizes) {
        expect(compareLengths(multiplyLength(absolute(subtractLength(written, used)), 2), step)).toBeLessThanOrEqual(0);
        if (name !== "floor gap" || book.stubs > 1) expect(noted.includes(name), name).toBe(!sameLength(written, used));
      }
    });
  });

  it("has washers that never fill more than the slack of its posts, and a hole that a bit is sold for", () => {
    holds(({ definition, model }) => {
      const { posts, cardThickness } = model.geometry;
      expect(isLess(posts.slack!, multiplyLength(cardThickness, posts.washers))).toBe(false);
      expect(isLess(posts.slack!, multiplyLength(cardThickness, posts.washers + 1))).toBe(true);
      expect(isOnMark(posts.holeDiameter, definition.units.governing === "in" ? inches(1, 64) : mm("0.5"))).toBe(true);
      const play = subtractLength(posts.holeDiameter, posts.barrel);
      expect(isLess(play, definition.book.posts.clearance)).toBe(false);
    });
  });

  it("has a folded floor that is its gaps, margins and growth, and rooms that add up to it", () => {
    holds(({ model }) => {
      const { geometry } = model;
      const value = (name: string): Length => model.values.get(name)!.quantity.value as Length;
      const sum = addLengths(multiplyLength(geometry.floorGap, geometry.stubs - 1), multiplyLength(geometry.margin, 2), multiplyLength(geometry.stubGrowth, geometry.stubs));
      expect(sameLength(sum, geometry.foldedFloor)).toBe(true);
      const rooms = addLengths(
        multiplyLength(geometry.pages.roomPerOpening, geometry.stubs - 1), multiplyLength(geometry.pages.roomAtEachEnd, 2), multiplyLength(value("page thickness"), geometry.stubs),
      );
      expect(sameLength(rooms, geometry.foldedFloor)).toBe(true);
      const last = addLengths(geometry.stubCentres.at(-1)!, divideLength(geometry.stubGrowth, 2), geometry.margin);
      expect(sameLength(last, geometry.foldedFloor)).toBe(true);
    });
  });

  it("has cloth lines that end a turn-in from the right edge, and cloth that covers strips, joints and turn-ins", () => {
    holds(({ definition, model }) => {
      const { geometry } = model;
      const cloth = model.parts.find((part) => part.id === "hinge-cloth")!;
      const upright = cloth.features.flatMap((feature) => (feature.kind === "placement line" && feature.direction === "vertical" ? [feature.at] : []));
      expect(upright).toHaveLength(6);
      const rest = subtractLength(cloth.width, upright.at(-1)!);
      expect(isLess(rest, geometry.turnIn)).toBe(false);
      expect(isLess(subtractLength(rest, geometry.turnIn), definition.units.step)).toBe(true);
    });
  });

  it("keeps its pages inside the boards when it is full", () => {
    holds(({ model }) => {
      const { geometry } = model;
      const foreEdge = addLengths(geometry.floorHeight, geometry.pages.width);
      const boards = addLengths(geometry.closedRise, geometry.boardWidth);
      expect(isLess(boards, addLengths(foreEdge, geometry.pages.square))).toBe(false);
    });
  });

  it("has cut sizes on ruler marks wherever the author's own sizes are on them", () => {
    holds(({ definition, model }) => {
      const { step } = definition.units;
      const given = [model.geometry.boardHeight, model.geometry.boardWidth, model.geometry.sideStripWidth, model.geometry.turnIn];
      if (!given.every((length) => isOnMark(length, step))) return;
      for (const part of model.parts.filter((each) => !each.readyMade)) {
        expect(isOnMark(part.height, step), `${part.id} height`).toBe(true);
        expect(isOnMark(part.width, step), `${part.id} width`).toBe(true);
      }
    });
  });

  it("has a plan whose sittings hold every step once and whose text holds no broken number", () => {
    holds(({ definition, model }) => {
      const { plan, problems } = makePlan(definition, model);
      expect(problems).toEqual([]);
      let next = 1;
      for (const sitting of plan.sittings) {
        expect(sitting.firstStep).toBe(next);
        next = sitting.lastStep + 1;
      }
      expect(next).toBe(plan.steps.length + 1);
      expect(JSON.stringify({ ...plan, cutList: plan.cutList.map((item) => [item.heightText, item.widthText]), prose: [] }, (_, value: unknown) => (typeof value === "bigint" ? String(value) : value)))
        .not.toMatch(/NaN|undefined|Infinity|\[object/);
    });
  });
});

function absolute(length: Length): Length {
  return isLess(length, noLength) ? multiplyLength(length, -1) : length;
}
