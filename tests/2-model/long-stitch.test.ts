// The long-stitch binding's model: one book worked by hand, the way of its thread written out, and each of its findings.
import { describe, expect, it } from "vitest";
import { printLength, printThickness } from "../../src/units/print-length.ts";
import { toMillimetres } from "../../src/units/length.ts";
import { longStitchDefinition, longStitchModel } from "../fixtures/long-stitch.ts";

const book = "{text block: {page: {height: 180 mm, width: 125 mm}, sections: 8, folded sheets: 6, swell percent: 50}, sewing: {long stitches: 2, inside stitch: 14 mm}, cover: {flap: wrap}}";
const materials = "materials: {text paper: {thickness: 0.13 mm}, thread: {thickness: 0.6 mm}, cover: {thickness: 1.2 mm}, spine strip: {thickness: 0.35 mm}}\n";

describe("a book worked by hand", () => {
  const definition = longStitchDefinition(book, { rest: materials });
  const { model, problems } = longStitchModel(definition);
  const { geometry } = model;
  const thickness = (name: string): string => printThickness(model.values.get(name)!.quantity.value as never, definition.units);
  const size = (length: Parameters<typeof printLength>[0]): string => printLength(length, definition.units);

  it("can be made", () => expect(problems).toEqual([]));
  it("counts paper and thread: 12 leaves of 0.13 mm in a section, 8 sections, half a thread for each", () => {
    expect(thickness("section thickness")).toBe("1.56\u00a0mm");
    expect(thickness("text block thickness")).toBe("12.48\u00a0mm");
    // 8 × 0.6 mm × 0.5.
    expect(thickness("swell")).toBe("2.4\u00a0mm");
    expect(thickness("spine thickness")).toBe("14.88\u00a0mm");
    expect(thickness("section pitch")).toBe("1.86\u00a0mm");
  });
  it("shares the fold: 15 + 14 + 54 + 14 + 54 + 14 + 15 mm", () => {
    expect(geometry.stations.map(({ at }) => toMillimetres(at))).toEqual([15, 29, 83, 97, 151, 165]);
    expect(size(geometry.longStitch)).toBe("54\u00a0mm");
  });
  it("develops the cover: reach, bends of 0.7854 × 1.2 mm, and the rounding of each width", () => {
    // Strip 0.35, PVA 0.05, block 125 + (6 − 0.7854) × 0.13 = 125.6779, square 3: 129.0779 in all; half a bend is 0.4712.
    expect(thickness("bend")).toBe("about\u00a00.94\u00a0mm");
    expect(size(geometry.frontWidth)).toBe("130\u00a0mm");
    // 14.88 + 1.5 + 0.9425 = 17.3225: to the nearest mark.
    expect(size(geometry.spineWidth)).toBe("17.5\u00a0mm");
    // 129.0779 + 0.9425 = 130.0204.
    expect(size(geometry.backWidth)).toBe("130.5\u00a0mm");
    // 12.48 + 1.2 + 1.5 + 0.9425 = 16.1225: to the nearest mark.
    expect(size(geometry.flap!.wall)).toBe("16\u00a0mm");
    expect(size(geometry.flap!.width)).toBe("65\u00a0mm");
    expect(size(geometry.coverWidth)).toBe("359\u00a0mm");
    expect(size(geometry.coverHeight)).toBe("186\u00a0mm");
    expect(geometry.folds.map(({ at }) => toMillimetres(at))).toEqual([130, 147.5, 278, 294]);
    // 17.5 − 0.9425 = 16.5575, down.
    expect(size(geometry.strip!.width)).toBe("16.5\u00a0mm");
  });
  it("sets the columns round the middle of the spine, 138.75 mm from the left edge", () => {
    const columns = geometry.columns.map(toMillimetres);
    expect((columns[3]! + columns[4]!) / 2).toBeCloseTo(138.75, 9);
    expect(columns[0]).toBeCloseTo(138.75 - 3.5 * 1.86, 9);
  });
  it("adds up the thread: passages, stitches, climbs, links and knots", () => {
    // Through half a section, strip with its adhesive, and cover: 0.78 + 0.35 + 0.05 + 1.2 = 2.38 mm; 8 × 6 times, and once more at the end.
    const through = 49 * 2.38;
    const along = 8 * 150;
    // 1–2 at the tail, 1–2 and 1–3 at the head; sections 3 to 7: there and back over 1.5 pitches, one pitch up, once round the thread; the last link.
    const ends = 1.86 * (1 + 1 + 2) + 5 * (2 * 1.5 * 1.86 + 1.86 + 2 * 0.6) + (2 * 1.5 * 1.86 + 2 * 0.6);
    const knots = 2 * 12 * 0.6;
    expect(toMillimetres(model.thread!.sewn)).toBeCloseTo(through + along + ends + knots, 6);
  });
});

describe("the way of the thread, four sections and one long stitch each", () => {
  const { model } = longStitchModel(longStitchDefinition("{text block: {page: {height: 160 mm, width: 110 mm}, sections: 4, folded sheets: 6}, sewing: {long stitches: 1}}"));
  const path = model.thread!.paths[0]!;
  const written = path.moves.map((move) => {
    const [from, to] = [move.from, move.to].map(({ place }) => place.replace("section-", ""));
    if (move.kind === "hole") return `${to} ${move.to.side === "inside" ? "in" : "out"}`;
    if (move.kind === "run") return `${from} ${move.to.side} ${to}`;
    return `${from} ${move.kind} ${to}${"under" in move && move.under ? ` under ${move.under}` : ""}`;
  });

  it("is the one written out by hand", () => {
    expect(path.start.at).toEqual({ place: "section-1/1", side: "outside" });
    expect(written).toEqual([
      "1/1 in", "1/1 inside 1/2", "1/2 out", "1/2 outside 1/3", "1/3 in", "1/3 inside 1/4", "1/4 out", "1/4 outside 2/4",
      "2/4 in", "2/4 inside 2/3", "2/3 out", "2/3 outside 2/2", "2/2 in", "2/2 inside 2/1", "2/1 out", "2/1 outside 1/1", "1/1 knot 1/1", "1/1 outside 3/1",
      "3/1 in", "3/1 inside 3/2", "3/2 out", "3/2 outside 3/3", "3/3 in", "3/3 inside 3/4", "3/4 out", "3/4 kettle 4/4 under 8",
      "4/4 in", "4/4 inside 4/3", "4/3 out", "4/3 outside 4/2", "4/2 in", "4/2 inside 4/1", "4/1 out", "4/1 link 4/1 under 18", "4/1 in", "4/1 knot 4/1",
    ]);
  });
  it("has a pass for each section", () => {
    expect(path.passes.map(({ name }) => name)).toEqual(["section 1", "section 2", "section 3", "section 4"]);
  });
});

describe("slits", () => {
  const { model } = longStitchModel(longStitchDefinition("{text block: {page: {height: 160 mm, width: 110 mm}, sections: 5, folded sheets: 6}, sewing: {openings: slits}}"));
  it("take the place of holes where long stitches begin and end, but for the first and the last section", () => {
    const ids = model.holes.filter(({ part }) => part === "cover").map(({ id }) => id).sort();
    const ends = [1, 2, 3, 4, 5].flatMap((section) => [`${section}/1`, `${section}/6`]);
    const inner = [2, 3, 4, 5].flatMap((station) => [`1/${station}`, `5/${station}`]);
    expect(ids).toEqual([...ends, ...inner].sort());
    expect(model.geometry.slits.map(({ station }) => station)).toEqual([2, 3, 4, 5]);
    expect(model.parts.find(({ id }) => id === "cover")!.features.filter(({ kind }) => kind === "slit")).toHaveLength(4);
  });
});

const plain = "page: {height: 160 mm, width: 110 mm}, sections: 8, folded sheets: 6";
const good = `{text block: {${plain}}}`;

describe("findings", () => {
  const codesOf = (text: string, rest = ""): readonly string[] => longStitchModel(longStitchDefinition(text, { rest })).model.findings.map(({ code, severity }) => `${code} ${severity}`);

  it("a plain book has none but that of unknown grain", () => {
    expect(codesOf(good)).toEqual(["grain-unknown note"]);
  });
  it.each([
    ["stitch-too-long warn", "{text block: {page: {height: 300 mm, width: 110 mm}, sections: 8, folded sheets: 6}}", ""],
    ["holes-perforate warn", "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 8, folded sheets: 3}}", ""],
    ["holes-perforate stop", "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 8, folded sheets: 1, swell percent: 50}}", "materials: {thread: {thickness: 1 mm}}\n"],
    ["spine-not-reinforced warn", `{text block: {${plain}}, cover: {reinforced: no}}`, ""],
    ["cover-too-thick warn", good, "materials: {cover: {thickness: 3.2 mm}}\n"],
    ["spine-without-ease warn", `{text block: {${plain}}, cover: {ease: 0.5 mm}}`, ""],
    ["scores-too-close warn", "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 3, folded sheets: 4}}", "materials: {cover: {thickness: 3 mm}}\n"],
    ["flap-beyond-spine stop", `{text block: {${plain}}, cover: {flap: wrap, flap width: 150 mm}}`, ""],
    ["stations-too-close stop", `{text block: {${plain}}, sewing: {inside stitch: 50 mm}}`, ""],
    ["station-near-edge warn", `{text block: {${plain}}, sewing: {station from head: 5 mm}}`, ""],
    ["section-too-thick warn", "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 8, folded sheets: 16}}", "materials: {text paper: {thickness: 0.2 mm}}\n"],
    ["thread-joined note", "{text block: {page: {height: 160 mm, width: 110 mm}, sections: 12, folded sheets: 6}}", ""],
    ["longer-than-tool warn", good, "tools: {ruler length: 200 mm}\n"],
    ["grain-across warn", good, "materials: {cover: {grain: long, sheets: [300 mm x 200 mm]}}\n"],
    ["measured-far-off warn", good, "measured: {spine thickness: 25 mm}\n"],
  ])("%s: %s", (code, text, rest) => {
    expect(codesOf(text, rest)).toContain(code);
  });
  it("a spine that is reinforced, or a cover thick enough, is not warned of", () => {
    expect(codesOf(`{text block: {${plain}}, cover: {reinforced: no}}`, "materials: {cover: {thickness: 0.6 mm}}\n")).not.toContain("spine-not-reinforced warn");
  });
});
