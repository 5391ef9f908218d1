// The link stitch's model: a small book reckoned by hand, boards with and without covering, two needles, and what cannot be made.
import { describe, expect, it } from "vitest";
import { toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { linkStitchDefinition, linkStitchModel } from "../fixtures/link-stitch.ts";

const page = "text block: {page: {height: 160 mm, width: 110 mm}";
const value = (model: ReturnType<typeof linkStitchModel>["model"], name: string): number => toMillimetres(model.values.get(name)!.quantity.value as Length);

describe("a book of three sections, reckoned by hand", () => {
  // One sheet of 0.1 mm in a section, thread of 0.5 mm that adds its whole thickness, bare boards of 3 mm, two stations, holes 9 mm in.
  const { model, problems } = linkStitchModel(linkStitchDefinition(
    `{${page}, sections: 3, folded sheets: 1, swell percent: 100}, sewing: {stations: 2}, boards: {covered: no}}`,
    { rest: "materials: {text paper: {thickness: 0.1 mm}, thread: {thickness: 0.5 mm}}" }));
  const [path] = model.thread!.paths;
  const sewnIn = (pass: number): number => path!.moves.filter((move) => move.pass === pass).reduce((sum, move) => sum + toMillimetres(move.length), 0);

  it("can be made", () => expect(problems).toEqual([]));
  it("has sections of 0.2 mm that stand 0.7 mm apart with their thread", () => {
    expect(value(model, "section thickness")).toBeCloseTo(0.2, 9);
    expect(value(model, "section pitch")).toBeCloseTo(0.7, 9);
    expect(value(model, "spine thickness")).toBeCloseTo(2.1, 9);
  });
  it("has boards of 166 × 113.5 mm: two squares, and one square beyond the leaf that reaches furthest", () => {
    const board = model.parts.find(({ id }) => id === "boards")!;
    // 110 + (1 − π/4) × 0.1 + 3 = 113.02, up to the next half millimetre.
    expect([toMillimetres(board.height), toMillimetres(board.width)]).toEqual([166, 113.5]);
  });
  it("is sewn with 188.4, 134 and 190.8 mm in its three passes", () => {
    // Board at a station: down 0.35 + 3 + 9, through 3, back 9 + 0.35: 24.7; once round the thread: 1. A knot: 6. Through a fold: 0.1.
    // Pass 1: 0.1 + 25.7 + 0.1 + 6 + 130 + 0.1 + 24.7 and up 0.7 + 1.
    expect(sewnIn(1)).toBeCloseTo(188.4, 9);
    // Pass 2: 0.1 + 130 + 0.1 and the climb, twice 1.05 down, 0.7 up, 1 round.
    expect(sewnIn(2)).toBeCloseTo(134, 9);
    // Pass 3: 25.7 + 0.1 + 130 + 0.1 + 3.1 + 25.7 + 0.1 + 6.
    expect(sewnIn(3)).toBeCloseTo(190.8, 9);
    expect(value(model, "sewn thread")).toBeCloseTo(513.2, 9);
  });
  it("needs 820 mm of thread: sewn, two ends of 100 mm, 100 mm in the needle, up to whole centimetres; the rule of thumb says 960", () => {
    expect(value(model, "thread length")).toBe(820);
    expect(value(model, "thread by rule of thumb")).toBe(960);
  });
  it("is 8 mm thick: 2.1 and twice 3, to the nearest mark", () => expect(value(model, "finished thickness")).toBe(8));
});

describe("covered boards", () => {
  const { model } = linkStitchModel(linkStitchDefinition(`{${page}, sections: 8}}`));
  it("have a covering with a turn-in on every side and a lining 3 mm inside the edges", () => {
    const [covering, lining] = ["covering", "lining-paper"].map((id) => model.parts.find((part) => part.id === id)!);
    // 166 + 2 × 15, 113.5 + 2 × 15; 166 − 6, 113.5 − 6.
    expect([covering!.height, covering!.width, lining!.height, lining!.width].map(toMillimetres)).toEqual([196, 143.5, 160, 107.5]);
  });
  it("count every layer: 3 + 0.15 + 0.05 + 0.12 + 0.05", () => expect(value(model, "cover thickness")).toBeCloseTo(3.37, 9));
  it("have their holes a square further from the head than the stations, 9 mm in", () => {
    const holes = model.holes.filter(({ part, id }) => part === "boards" && id.startsWith("front"));
    expect(holes.map((hole) => [toMillimetres(hole.along), toMillimetres(hole.across)])).toEqual(model.geometry.stations.map(({ at }) => [toMillimetres(at) + 3, 9]));
  });
  it("follow a measured thickness", () => {
    const measured = linkStitchModel(linkStitchDefinition(`{${page}, sections: 8}}`, { rest: "measured: {cover thickness: 3.5 mm}" })).model;
    expect(value(measured, "cover thickness")).toBe(3.5);
    expect(value(measured, "sewn thread")).toBeGreaterThan(value(model, "sewn thread"));
  });
});

describe("two needles", () => {
  const { model, problems } = linkStitchModel(linkStitchDefinition(`{${page}, sections: 6}, sewing: {needle: two, stations: 4}}`));
  it("sew each pair of stations with one thread, each half a path that changes its station in every section", () => {
    expect(problems).toEqual([]);
    expect(model.thread!.paths).toHaveLength(4);
    for (const { moves } of model.thread!.paths) {
      const runs = moves.filter(({ kind }) => kind === "run");
      expect(runs).toHaveLength(5);
      runs.forEach((run, k) => expect(run.to.place.split("/")[1]).not.toBe(runs[k - 1]?.to.place.split("/")[1]));
    }
  });
  it("cannot work on an odd number of stations", () => {
    const odd = linkStitchModel(linkStitchDefinition(`{${page}, sections: 6}, sewing: {needle: two, stations: 5}}`));
    expect(odd.problems.map(({ message, hint }) => `${message} | ${hint}`)).toEqual([expect.stringMatching(/5 stations leave one over.*\| take 4 or 6 stations/)]);
  });
});

describe("what is found about a book", () => {
  const codes = (book: string, rest = ""): readonly string[] => linkStitchModel(linkStitchDefinition(book, { rest })).model.findings.map(({ code, severity }) => `${code} ${severity}`);
  it.each([
    [`{${page}, sections: 8}, sewing: {station from head: 5 mm}}`, "station-near-edge warn"],
    [`{${page}, sections: 8, folded sheets: 16}}`, "section-too-thick warn", "materials: {text paper: {thickness: 0.15 mm}}"],
    [`{${page}, sections: 8}, boards: {hole diameter: 1 mm}}`, "hole-too-small warn", "materials: {thread: {thickness: 1 mm}}"],
    [`{${page}, sections: 8}, boards: {hole distance: 4 mm, hole diameter: 6 mm}}`, "hole-near-edge warn"],
    [`{${page}, sections: 8}, turn in: 60 mm, boards: {square: 0}}`, "turn-in-too-deep stop"],
    [`{${page}, sections: 8}, turn in: 5 mm, boards: {thickness: 4 mm}}`, "corner-cut-too-far warn"],
    [`{${page}, sections: 8}, turn in: 5 mm}`, "lining-misses-turn-in warn"],
    [`{${page}, sections: 20}}`, "thread-joined note"],
    [`{${page}, sections: 8}}`, "larger-than-sheet stop", "materials: {board: {sheets: [100 mm x 100 mm]}}"],
    [`{${page}, sections: 8}}`, "grain-across warn", "materials: {board: {grain: long, sheets: [200 mm x 120 mm, 120 mm x 180 mm]}, covering: {grain: short, sheets: [200 mm x 150 mm]}}"],
    [`{${page}, sections: 8}}`, "measured-far-off warn", "measured: {spine thickness: 20 mm}"],
  ])("%s: %s", (book, expected, rest = "") => {
    const found = codes(book.includes("turn in: 60 mm") ? book.replace("height: 160 mm", "height: 115 mm") : book, rest);
    expect(found).toContain(expected);
    expect(codes(`{${page}, sections: 4}}`)).not.toContain(expected);
  });
});
