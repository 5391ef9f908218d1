// The stub album's model: the trade's check value, thickness, the given spine, holes and posts.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { dependentsOf } from "../../src/2-model/ledger.ts";
import { addLengths, inches, isLess, mm, multiplyLength, noLength, sameLength, subtractLength, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { printExact } from "../../src/units/print-length.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

const none: Readonly<Record<string, Length>> = { card: noLength, "strip board": noLength, cloth: noLength, "page paper": noLength, "lining paper": noLength };

function modelOf(overrides: StubAlbumOverrides) {
  const { model, problems } = buildModel(stubAlbumDefinition(overrides));
  expect(problems).toEqual([]);
  return model;
}

function inInches(length: Length): string {
  return printExact(length, "in");
}

/** Without thickness: nothing is thick but the paper, which must stay above zero to be a part. */
function withoutThickness(overrides: StubAlbumOverrides): StubAlbumOverrides {
  const plain = stubAlbumDefinition(overrides);
  const thin = Object.fromEntries(Object.entries(plain.adhesives).map(([job, adhesive]) => [job, { ...adhesive, thickness: noLength }]));
  return { ...overrides, thickness: none, rest: { adhesives: thin } };
}

describe("the check value of the trade (common practice, no source): 7 stubs 1/2 in deep, gap 1/8 in, spine 1 1/2 in, no thickness", () => {
  const overrides = withoutThickness({
    units: "in",
    book: {
      stubs: 7, "stub depth": inches(1, 2), "floor gap": inches(1, 8), spine: inches(3, 2), "floor ease": noLength,
      boards: { height: inches(10), width: inches(8), thickness: noLength }, "height clearance": inches(1, 4),
    },
  });
  // Zero thickness is no part that can be cut, so the model is read before it is validated.
  const { model } = buildModelUnvalidated(overrides);

  it("gives a card 8 1/2 in wide and 9 3/4 in tall", () => {
    const card = model.parts.find((part) => part.id === "card")!;
    expect(inInches(card.width)).toBe("8 1/2 in");
    expect(inInches(card.height)).toBe("9 3/4 in");
  });

  it("gives margins of 3/8 in", () => {
    expect(inInches(model.geometry.margin)).toBe("3/8 in");
  });

  it("gives 21 scores, the first at the margin and the last the margin from the right edge", () => {
    expect(model.scores).toHaveLength(21);
    expect(inInches(model.scores[0]!.at)).toBe("3/8 in");
    expect(inInches(model.scores[20]!.at)).toBe("8 1/8 in");
    expect(model.scores.map((score) => score.fold).slice(0, 3)).toEqual(["valley", "mountain", "valley"]);
  });

  it("mounts 14 papers back to back", () => {
    expect(model.parts.find((part) => part.id === "page-paper")!.count).toBe(14);
  });

  it("reaches joint gap + board width − square with a page, as it must when nothing is thick", () => {
    const expected = subtractLength(addLengths(model.geometry.jointGap, inches(8)), inches(1, 8));
    expect(Math.abs(toMillimetres(subtractLength(model.values.get("page reach")!.quantity.value as Length, expected)))).toBeLessThan(1e-5);
  });
});

function buildModelUnvalidated(overrides: StubAlbumOverrides) {
  const thin = stubAlbumDefinition({ ...overrides, thickness: { ...overrides.thickness, "hinge tape": mm("0.1"), ribbon: mm("0.1") } });
  const built = buildModelOrThrow(thin);
  return { model: built };
}

// Thickness zero breaks the rule that a part is thicker than nothing; a hair of 1 nm keeps the rule and changes no printed size.
function buildModelOrThrow(definition: ReturnType<typeof stubAlbumDefinition>) {
  const hair = mm("0.000001");
  const thick = (length: Length | null): Length | null => (length && !isLess(noLength, length) ? hair : length);
  const materials = Object.fromEntries(Object.entries(definition.materials).map(([role, material]) => [role, { ...material, thickness: thick(material.thickness) }]));
  const book = { ...definition.book, boards: { ...definition.book.boards, thickness: thick(definition.book.boards.thickness)! } };
  // The spine must stay 1 1/2 in and the margin 3/8 in: growth of 7 nm may not round a mark away, so the spine is given that hair more.
  const spine = book.spine ? addLengths(book.spine, multiplyLength(hair, book.stubs)) : null;
  const { model, problems } = buildModel({ ...definition, materials, book: { ...book, spine } });
  expect(problems).toEqual([]);
  return model;
}

describe("thickness", () => {
  it("grows the folded floor by card and adhesive for each stub: 10 stubs of 0.3 mm card and 0.1 mm tape, 4 mm", () => {
    const model = modelOf({ book: { stubs: 10 }, thickness: { card: mm("0.3") } });
    expect(toMillimetres(model.geometry.foldedFloor)).toBeCloseTo(9 * 5 + 20 + 10 * (0.3 + 0.1), 9);
  });

  it("leaves the developed width of the card alone when the margin is given", () => {
    const thin = modelOf({ thickness: { card: mm("0.2") } });
    const thick = modelOf({ thickness: { card: mm("0.6") } });
    expect(sameLength(thin.geometry.cardWidth, thick.geometry.cardWidth)).toBe(true);
    expect(isLess(thin.geometry.spineStripWidth, thick.geometry.spineStripWidth)).toBe(true);
  });

  it("takes the growth out of the margins when the spine is given and leaves the ease, to less than two marks", () => {
    const model = modelOf({ book: { spine: mm(60) }, thickness: { card: mm("0.4") } });
    const slack = toMillimetres(subtractLength(model.geometry.spineStripWidth, model.geometry.foldedFloor));
    expect(slack).toBeGreaterThanOrEqual(0.5);
    expect(slack).toBeLessThan(0.5 + 1);
  });

  it("gives a spine strip of 1 1/2 in for margins of 3/8 in too, when neither thickness nor ease is counted", () => {
    const { model } = buildModelUnvalidated(withoutThickness({
      units: "in", book: { stubs: 7, "stub depth": inches(1, 2), "floor gap": inches(1, 8), margin: inches(3, 8), "floor ease": noLength, boards: { height: inches(10), width: inches(8), thickness: noLength } },
    }));
    // The hair that stands for no thickness takes the strip to the next mark; before rounding it is 1 1/2 in to a hundred-thousandth.
    expect(Math.abs(toMillimetres(model.geometry.foldedFloor) - 38.1)).toBeLessThan(1e-5);
  });

  it("leaves ease between floor and spine strip: 8 stubs of the usual card, floor 59 mm, strip 59.5 mm; without ease 59 mm", () => {
    expect(toMillimetres(modelOf({}).geometry.spineStripWidth)).toBe(59.5);
    expect(toMillimetres(modelOf({ book: { "floor ease": noLength } }).geometry.spineStripWidth)).toBe(59);
  });

  it("lets a measured folded floor govern the spine strip and keeps the calculated one beside it", () => {
    const model = modelOf({ measured: { "folded floor": mm("60.2") } });
    // 60.2 and 0.5 mm of ease, up to the next half millimetre.
    expect(toMillimetres(model.geometry.spineStripWidth)).toBe(61);
    const floor = model.values.get("folded floor")!;
    expect(floor.origin).toBe("measured");
    expect(toMillimetres(floor.calculated!.value as Length)).toBe(59);
    expect(dependentsOf("folded floor", model.values)).toContain("hinge cloth width");
  });

  it("names the post among what changes with a measured stack", () => {
    expect(dependentsOf("post stack", modelOf({}).values)).toEqual(["post length", "post slack"]);
  });
});

describe("positions", () => {
  it("are exact: sizes off the ruler are put on its nearest mark first, and a note gives both numbers", () => {
    const model = modelOf({ book: { stubs: 30, "stub depth": mm("17.3"), "floor gap": mm("4.2"), margin: mm("8.1") } });
    expect([model.geometry.stubDepth, model.geometry.floorGap, model.geometry.margin].map(toMillimetres)).toEqual([17.5, 4, 8]);
    for (const score of model.scores) expect(sameLength(score.at, score.exactAt)).toBe(true);
    const notes = model.findings.filter((finding) => finding.code === "put-on-mark");
    expect(notes.map((finding) => [finding.severity, finding.path, finding.message.replaceAll("\u00a0", " ")])).toEqual([
      ["note", "book/stub depth", "the stub depth is written as 17.3 mm, which lies between two marks of the ruler; 17.5 mm is used"],
      ["note", "book/floor gap", "the floor gap is written as 4.2 mm, which lies between two marks of the ruler; 4 mm is used"],
      ["note", "book/margin", "the margin is written as 8.1 mm, which lies between two marks of the ruler; 8 mm is used"],
    ]);
  });

  it("of a metric book in inches add up to the printed floor: 11 stubs, gaps of 4.5 mm on a ruler of 1/16 in", () => {
    const { geometry } = modelOf({ units: "in", book: { stubs: 11, "stub depth": mm(17), "floor gap": mm("4.5"), margin: mm(10) } });
    expect([geometry.stubDepth, geometry.floorGap, geometry.margin].map(inInches)).toEqual(["11/16 in", "3/16 in", "3/8 in"]);
    // Ten gaps and two margins read off the marks are 2 5/8 in; eleven stubs of 0.4 mm card and 0.1 mm tape add 5.5 mm.
    expect(toMillimetres(geometry.foldedFloor)).toBeCloseTo(2.625 * 25.4 + 11 * 0.5, 9);
    expect(isLess(geometry.foldedFloor, geometry.spineStripWidth)).toBe(true);
  });

  it("of a size below one mark are not invented: the book stops as before", () => {
    expect(buildModel(stubAlbumDefinition({ units: "in", step: inches(1, 8), book: { "floor gap": mm(2) } })).model.findings.map((finding) => finding.code)).toContain("below-one-mark");
  });

  it("take a fixed spine as it is written, and let the margin follow on a mark", () => {
    const { geometry, findings } = modelOf({ book: { spine: mm("60.3"), "floor gap": mm(5) } });
    expect([geometry.spineStripWidth, geometry.margin].map(toMillimetres)).toEqual([60.3, 10]);
    expect(findings.map((finding) => finding.code)).not.toContain("put-on-mark");
  });

  it("are told from the centre line too, equally far left and right", () => {
    const { scores } = modelOf({ book: { stubs: 5 } });
    scores.forEach((score, index) => {
      const mirrored = scores[scores.length - 1 - index]!;
      expect(sameLength(score.fromCentre, multiplyLength(mirrored.fromCentre, -1))).toBe(true);
    });
  });

  it("name holes by where they are, the same in strip and board but for the strip's inset", () => {
    const model = modelOf({ book: { posts: { count: 3 } } });
    expect(model.holes.filter((hole) => hole.part === "side-strip").map((hole) => hole.id)).toEqual([
      "front-head", "front-middle", "front-tail", "back-head", "back-middle", "back-tail",
    ]);
    for (const hole of model.holes.filter((each) => each.part === "boards")) {
      const inStrip = model.holes.find((each) => each.part === "side-strip" && each.id === hole.id)!;
      expect(sameLength(subtractLength(hole.along, inStrip.along), model.geometry.stripInset)).toBe(true);
    }
  });
});

describe("what cannot be made", () => {
  const stop = (overrides: StubAlbumOverrides) => buildModel(stubAlbumDefinition(overrides)).model.findings.filter((finding) => finding.severity === "stop").map((finding) => finding.code);
  const warn = (overrides: StubAlbumOverrides) => buildModel(stubAlbumDefinition(overrides)).model.findings.filter((finding) => finding.severity === "warn").map((finding) => finding.code);

  it("a spine narrower than its stubs stops; one that just holds them does not", () => {
    // 8 stubs: 7 gaps of 5 mm, 8 × 0.5 mm of growth and 0.5 mm of ease take 39.5 mm; one mark of 0.5 mm must be left on each side.
    expect(stop({ book: { spine: mm("40.4") } })).toContain("spine-too-narrow");
    expect(stop({ book: { spine: mm("40.5") } })).not.toContain("spine-too-narrow");
  });

  it("a margin of zero stops", () => {
    expect(stop({ book: { margin: noLength } })).toContain("margin-too-small");
    expect(stop({ book: { margin: mm("0.5") } })).not.toContain("margin-too-small");
  });

  it("a floor measured wider than a given spine stops", () => {
    expect(stop({ book: { spine: mm(60) }, measured: { "folded floor": mm(61) } })).toContain("spine-narrower-than-floor");
  });

  it("a post shorter than the stack stops; 1 mm longer passes; more is a warning", () => {
    // The stack is 5.92 mm.
    expect(stop({ book: { posts: { lengths: [mm(5)] } } })).toContain("post-too-short");
    expect(warn({ book: { posts: { lengths: [mm("6.92")] } } })).not.toContain("post-too-long");
    expect(warn({ book: { posts: { lengths: [mm("6.93")] } } })).toContain("post-too-long");
  });

  it("a joint gap under strip, board and cloth bends warns; under strip and board it stops", () => {
    expect(warn({ book: { "joint gap": mm("5.7") } })).not.toContain("joint-gap-too-small");
    expect(warn({ book: { "joint gap": mm("5.5") } })).toContain("joint-gap-too-small");
    expect(stop({ book: { "joint gap": mm(5) } })).toContain("joint-gap-too-small");
  });

  it("pages wider than the reach warn, wider than the boards stop", () => {
    // The reach is about 219.4 mm, the square 3 mm.
    expect(warn({ book: { pages: { width: mm(219) } } })).not.toContain("square-too-small");
    expect(warn({ book: { pages: { width: mm(221) } } })).toContain("square-too-small");
    expect(stop({ book: { pages: { width: mm(223) } } })).toContain("pages-stick-out");
    expect(stop({ book: { pages: { height: mm(301) } } })).toContain("pages-stick-out");
  });

  it("stubs that leave no air between the papers stop", () => {
    const step = mm("0.1");
    expect(stop({ step, book: { "floor gap": mm("1") } })).not.toContain("stubs-too-close");
    expect(stop({ step, book: { "floor gap": mm("0.9") } })).toContain("stubs-too-close");
  });

  it("score lines closer than three thicknesses of card warn", () => {
    const step = mm("0.1");
    expect(warn({ step, book: { "floor gap": mm("1.2") } })).not.toContain("scores-too-close");
    expect(warn({ step, book: { "floor gap": mm("1.1") } })).toContain("scores-too-close");
  });

  it("a hole nearer to an edge than one and a half diameters warns, one that breaks out stops", () => {
    // 5.5 mm holes: 8.25 mm.
    expect(warn({ book: { posts: { "end distance": mm("8.5") } } })).not.toContain("hole-near-edge");
    expect(warn({ book: { posts: { "end distance": mm(8) } } })).toContain("hole-near-edge");
    expect(stop({ book: { posts: { "end distance": mm("2.5") } } })).toContain("hole-near-edge");
  });

  it("a measured value more than 15 % off the calculated one warns", () => {
    expect(warn({ measured: { "folded floor": mm("67.8") } })).not.toContain("measured-far-off");
    expect(warn({ measured: { "folded floor": mm(68) } })).toContain("measured-far-off");
  });

  it("a card larger than every sheet stops, one that fits only across the grain warns", () => {
    const card = (height: number, width: number) => {
      const plain = stubAlbumDefinition();
      return { rest: { materials: { ...plain.materials, card: { ...plain.materials["card"]!, grain: "long" as const, sheets: [{ height: mm(height), width: mm(width), price: null, pack: 1, inHand: 0 }] } } } };
    };
    // The card is 294 × 375 mm.
    expect(stop(card(290, 500))).toContain("larger-than-sheet");
    expect(warn(card(300, 400))).toContain("grain-across");
    expect(warn(card(400, 380))).not.toContain("grain-across");
  });
});

describe("holes and washers", () => {
  it("have the next size in which bits are sold, half a millimetre or a 64th of an inch", () => {
    expect(toMillimetres(modelOf({}).geometry.posts.holeDiameter)).toBe(5.5);
    expect(toMillimetres(modelOf({ book: { posts: { clearance: mm("0.3") } } }).geometry.posts.holeDiameter)).toBe(5.5);
    expect(inInches(modelOf({ units: "in" }).geometry.posts.holeDiameter)).toBe("7/32 in");
  });

  it("take up the slack of the posts without filling more than it", () => {
    // The stack is 5.92 mm, the card 0.4 mm.
    const washers = (post: string) => modelOf({ book: { posts: { lengths: [mm(post)] } } }).geometry.posts.washers;
    expect([washers("5.92"), washers("6.31"), washers("6.32"), washers("6.72")]).toEqual([0, 0, 1, 2]);
  });
});
