// The stab binding's model: block, holes of the patterns, thread, worked by hand.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import type { Model } from "../../src/2-model/types.ts";
import { mm, toMillimetres } from "../../src/units/length.ts";
import { stabBindingDefinition } from "../fixtures/sewn-books.ts";
import type { SewnOverrides } from "../fixtures/sewn-books.ts";

function modelOf(overrides: SewnOverrides<"stab-binding"> = {}): Model<"stab-binding"> {
  const { model, problems } = buildModel(stabBindingDefinition(overrides));
  expect(problems).toEqual([]);
  return model as Model<"stab-binding">;
}

const codesOf = (overrides: SewnOverrides<"stab-binding">): readonly string[] => buildModel(stabBindingDefinition(overrides)).model.findings.map(({ code }) => code);
const places = (model: Model<"stab-binding">): readonly string[] => model.geometry.holes.map(({ id, along, across }) => `${id} ${toMillimetres(along)} ${toMillimetres(across)}`);

describe("forty leaves of 0.125 mm, 240 × 170 mm, covers 0.3 mm, four holes 12 mm from the spine edge", () => {
  const model = modelOf();

  it("is 5.6 mm thick and leaves 152 mm to write on", () => {
    expect(model.geometry.thickness).toEqual(mm("5.6"));
    expect(model.geometry.usableWidth).toEqual(mm(152));
    expect(modelOf({ book: { leaf: { height: mm(240), width: mm(170), kind: "folded" } } }).geometry.blockThickness).toEqual(mm(10));
  });

  it("has its holes evenly from corner to corner", () => {
    expect(places(model)).toEqual(["1 12 12", "2 84 12", "3 156 12", "4 228 12"]);
  });

  it("takes the thread that its runs add up to", () => {
    const path = model.thread!.paths.at(-1)!;
    // Lines: 3 × 72 on both faces = 432; wraps: 4 around the spine and 2 around the ends, 2 × 12 + 5.6 each = 177.6;
    // 12 runs, so 11 holes whole and two half ones: 12 × 5.6 = 67.2.
    expect(path.moves.filter(({ kind }) => kind === "run")).toHaveLength(6);
    expect(path.moves.filter(({ kind }) => kind === "edge")).toHaveLength(6);
    const sewn = path.moves.reduce((sum, { length }) => sum + toMillimetres(length), 0);
    expect(sewn).toBeCloseTo(432 + 177.6 + 67.2, 6);
    // Two inner pairs: twice 18 mm and twice 5 mm each.
    expect(toMillimetres(model.thread!.sewn)).toBeCloseTo(sewn + 2 * (36 + 10), 6);
  });

  it("starts and ends between the leaves at hole 2", () => {
    const path = model.thread!.paths.at(-1)!;
    expect([path.start.at, path.end.at]).toEqual([{ place: "2", side: "within" }, { place: "2", side: "within" }]);
  });
});

describe("the patterns", () => {
  it("add two corner holes, holes in the gaps, or two beside each main hole", () => {
    const count = (pattern: "kangxi" | "asa-no-ha toji" | "kikko toji"): number => modelOf({ book: { pattern } }).geometry.holes.length;
    expect([count("kangxi"), count("asa-no-ha toji"), count("kikko toji")]).toEqual([6, 9, 12]);
    expect(places(modelOf({ book: { pattern: "kangxi" } }))).toEqual(["a 6 6", "1 12 12", "2 84 12", "3 156 12", "4 228 12", "b 234 6"]);
  });

  it("measure slanting lines by Pythagoras", () => {
    const { thread } = modelOf({ book: { pattern: "kangxi" } });
    const slanting = thread!.paths.at(-1)!.moves.find(({ run }) => run === "front 1-a" || run === "back 1-a")!;
    expect(toMillimetres(slanting.length)).toBeCloseTo(Math.hypot(6, 6), 5);
  });
});

describe("findings", () => {
  it("warns of small set-backs, thick blocks, narrow pages and wide flaps", () => {
    expect(codesOf({ book: { holes: { count: 4, "set back": mm(5), "corner distance": mm(20) } } })).toContain("set-back-too-small");
    expect(codesOf({ book: { leaves: 300 } })).toContain("block-too-thick");
    expect(codesOf({ book: { leaf: { height: mm(240), width: mm(60), kind: "single" }, holes: { count: 4, "set back": mm(30), "corner distance": null } } })).toContain("usable-width-small");
    expect(codesOf({ book: { cover: { flap: mm(160) } } })).toContain("flap-reaches-holes");
    expect(codesOf({})).toEqual(["grain-unknown"]);
  });

  it("says where a long thread is joined", () => {
    const finding = modelOf({ book: { pattern: "asa-no-ha toji" } }).findings.find(({ code }) => code === "thread-joined")!;
    expect(finding.message).toMatch(/joined after move \d+, between the leaves at \w+ in pass \d+, at hole \d/);
  });

  it("refuses holes that run into each other, warns of close ones, and refuses a page without room", () => {
    expect(codesOf({ book: { pattern: "kikko toji", holes: { count: 4, "set back": mm(12), "corner distance": mm(5) } }, thickness: { thread: mm("1.5") } })).toContain("holes-too-close");
    expect(buildModel(stabBindingDefinition({ book: { leaf: { height: mm(240), width: mm(60), kind: "single" }, holes: { count: 4, "set back": mm(40), "corner distance": null }, "opening allowance": mm(30) } })).problems.map(({ code }) => code)).toContain("design-impossible");
  });
});
