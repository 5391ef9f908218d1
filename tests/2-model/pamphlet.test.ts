// The pamphlet's model: section, creep, cover, holes, thread, worked by hand.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import type { Model } from "../../src/2-model/types.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import { pamphletDefinition } from "../fixtures/sewn-books.ts";
import type { SewnOverrides } from "../fixtures/sewn-books.ts";

function modelOf(overrides: SewnOverrides<"pamphlet"> = {}): Model<"pamphlet"> {
  const { model, problems } = buildModel(pamphletDefinition(overrides));
  expect(problems).toEqual([]);
  return model as Model<"pamphlet">;
}

const codesOf = (overrides: SewnOverrides<"pamphlet">): readonly string[] => buildModel(pamphletDefinition(overrides)).model.findings.map(({ code }) => code);

describe("six sheets of 0.125 mm, page 210 × 148 mm, cover 0.3 mm, square 3 mm", () => {
  const { geometry, finished, parts, holes, thread } = modelOf();

  it("makes a section of twelve leaves, whose inner ones stand out by π/2 × 5 × 0.125 mm", () => {
    expect(geometry.sectionThickness).toEqual(mm("1.5"));
    expect(toMillimetres(geometry.creep)).toBeCloseTo((Math.PI / 2) * 5 * 0.125, 4);
    expect(geometry.leastCreep).toEqual(mm("0.625"));
    // 148 − 0.98 = 147.02, down to the mark.
    expect(geometry.textWidth).toEqual(mm(147));
  });

  it("has a cover that goes round it: 2 × (147 − 0.75 + 3) + π × (0.75 + 0.15) = 301.3, each half up to the mark", () => {
    expect(2 * (147 - 0.75 + 3) + Math.PI * 0.9).toBeCloseTo(301.33, 2);
    expect(geometry.coverWidth).toEqual(mm(302));
    expect(geometry.coverFold).toEqual(mm(151));
    expect(parts.map(({ id, count, height, width }) => [id, count, height, width])).toEqual([["text-sheet", 6, mm(210), mm(296)], ["cover", 1, mm(216), mm(302)]]);
    expect(finished).toEqual({ height: mm(216), width: mm("150.3"), thickness: mm("2.1") });
  });

  it("has its holes at 30, 105 and 180 mm, and a square further down in the cover", () => {
    expect(geometry.stations).toEqual([mm(30), mm(105), mm(180)]);
    expect(holes.filter(({ part }) => part === "cover").map(({ along }) => along)).toEqual([mm(33), mm(108), mm(183)]);
  });

  it("takes twice the way between the end holes, four times the fold and two ends", () => {
    // 2 × 150 + 4 × (0.75 + 0.3) = 304.2; + 200 = 504.2; + 100 in the needle, up to a centimetre: 610.
    expect(thread!.sewn).toEqual(mm("304.2"));
    expect(thread!.net).toEqual(mm("504.2"));
    expect(thread!.length).toEqual(mm(610));
  });
});

describe("the way of the thread", () => {
  const runsOf = (overrides: SewnOverrides<"pamphlet">): readonly string[] => modelOf(overrides).thread!.paths[0]!.moves.flatMap(({ run }) => run ?? []);

  it("with three holes is one long stitch on the tied side and two on the other", () => {
    expect(runsOf({})).toEqual(["outside 2-3", "inside 1-3", "outside 1-2"]);
    expect(runsOf({ book: { tie: "outside" } })).toEqual(["inside 2-3", "outside 1-3", "inside 1-2"]);
  });

  it("with five holes sews every gap on both sides, but for the middle ones on the tied side", () => {
    expect(runsOf({ book: { holes: { count: "5", "end distance": null } } })).toEqual(["outside 3-4", "inside 4-5", "outside 4-5", "inside 2-4", "outside 1-2", "inside 1-2", "outside 2-3"]);
  });

  it("starts and ends at the middle hole, on the tied side", () => {
    for (const [tie, count, middle] of [["inside", "3", "2"], ["outside", "5", "3"]] as const) {
      const path = modelOf({ book: { tie, holes: { count, "end distance": null } } }).thread!.paths[0]!;
      expect([path.start.at, path.end.at]).toEqual([{ place: middle, side: tie }, { place: middle, side: tie }]);
    }
  });
});

describe("findings", () => {
  it("warns of thick sections, of creep beyond the cover, of holes too close and of long unsewn ends", () => {
    expect(codesOf({ book: { sheets: 20 }, thickness: { "text paper": mm("0.2") } })).toContain("section-springs-open");
    expect(codesOf({ book: { sheets: 20, trim: false } })).toContain("creep-beyond-square");
    expect(codesOf({ book: { holes: { count: "5", "end distance": mm(85) } } })).toEqual(expect.arrayContaining(["fold-holes-too-close", "ends-unsewn"]));
    expect(codesOf({})).toEqual(["grain-unknown"]);
  });

  it("refuses holes that cross and pages that trimming eats", () => {
    expect(codesOf({ book: { holes: { count: "3", "end distance": mm(105) } } })).toContain("stations-cross");
    expect(codesOf({ book: { sheets: 20, page: { height: mm(210), width: mm(40) } }, thickness: { "text paper": mm("0.6") } })).toContain("creep-eats-page");
  });

  it("has none of them for a single sheet, which does not creep", () => {
    const { geometry } = modelOf({ units: "in", book: { sheets: 1 } });
    expect(toMillimetres(geometry.creep)).toBe(0);
    expect(geometry.textWidth).toEqual(inches("5.5"));
  });
});
