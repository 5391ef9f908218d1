// Printed rules of the handbooks that no other file here checks: covers and joints, sewing stations, inner bindings, imposition, class times.
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { readDefinition } from "../../src/1-definition/index.ts";
import type { Definition } from "../../src/1-definition/types.ts";
import type { StabPattern } from "../../src/1-definition/stab-binding.ts";
import { openLedger } from "../../src/2-model/ledger.ts";
import { buildModel } from "../../src/2-model/index.ts";
import type { Model } from "../../src/2-model/types.ts";
import { patterns } from "../../src/2-model/stab-binding/patterns.ts";
import { yieldOf } from "../../src/2-model/text-block/sheet-yield.ts";
import { placeStations, placeTapes } from "../../src/2-model/text-block/stations.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { pagesOnSheets } from "../../src/catalogue/nested-sheets.ts";
import { evaluateFormula } from "../../src/units/formula.ts";
import { addLengths, hypotenuse, inches, isLess, lengthOf, mm, multiplyLength, noLength, subtractLength, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { printExact } from "../../src/units/print-length.ts";
import { caseDefinition, caseModel, recompute } from "../fixtures/case-binding.ts";
import { linkStitchDefinition } from "../fixtures/link-stitch.ts";
import { stabBindingDefinition } from "../fixtures/sewn-books.ts";

const sixteenth = inches(1, 16);
const halfMillimetre = mm("0.5");
const text = (length: Length): string => printExact(length, "in");
const inInches = { defaulted: new Set<string>(), units: { governing: "in", step: sixteenth, dual: false } } as unknown as Definition;

function inchLedger(height: Length) {
  const ledger = openLedger(sixteenth, {});
  ledger.give("page height", height, "given", { meaning: "", source: "" });
  return ledger;
}

describe("Paul Adam, Practical Bookbinding (1903), ch. VI", () => {
  // 3B-4: whole-cloth blank 1 to 1 1/2 cm bigger all round than boards and back together.
  it("a blank for whole cloth stands out 1 to 1 1/2 cm all round, as our usual turn-in does", () => {
    const turnIn = toMillimetres(lengthOf(caseModel().values.get("turn in")!.quantity.value));
    expect(turnIn).toBeGreaterThanOrEqual(10);
    expect(turnIn).toBeLessThanOrEqual(15);
    const pieces = { "board width": mm(146), joint: mm("2.5"), "spine strip width": mm(20), "board height": mm(216), "turn in": mm(10) };
    expect(toMillimetres(recompute("case cloth width", pieces, halfMillimetre))).toBe(2 * 146 + 2 * 2.5 + 20 + 20);
    expect(toMillimetres(recompute("case cloth height", pieces, halfMillimetre))).toBe(216 + 20);
  });

  // 3B-5: the inside lining is about 1/2 cm smaller than the board.
  it("a lining 2 1/2 mm in from every edge is 1/2 cm smaller than its board", () => {
    const { values } = buildModel(linkStitchDefinition("{text block: {page: {height: 165 mm, width: 115 mm}, sections: 6}}")).model;
    const formula = values.get("lining paper height")!.formula!;
    const lookUp = (name: string) => ({ value: name === "board height" ? mm(171) : mm("2.5"), dimension: 1 });
    expect(toMillimetres(lengthOf(evaluateFormula(formula, { step: halfMillimetre, lookUp }).value))).toBe(166);
  });
});

describe("Bean and Brodhead, Bookbinding for Beginners (1918)", () => {
  // 3B-9, Problem V: covers overhang the pad 1/8 in each way, the gap is the pad's thickness and 3/8 in.
  it("a pad cover: overhang 1/8 in, gap of the pad's thickness and 3/8 in", () => {
    expect(text(recompute("board height", { "page height": inches(8), square: inches(1, 8) }, sixteenth))).toBe("8 1/4 in");
    const joint = recompute("joint", { groove: inches(1, 8), "board thickness": sixteenth }, sixteenth);
    const strip = recompute("spine strip width", { "back width": inches(1, 2) }, sixteenth, { "strip covers": "block" });
    expect(text(subtractLength(addLengths(strip, joint, joint), inches(1, 2)))).toBe("3/8 in");
  });

  // 3H, hours per problem: "sew and case a book 10". Class hours hold the waits and the tidying too, so our hands-on time must be less.
  it("sewing and casing a book takes less hands-on time than the ten class hours set for it, and more than a third of them", () => {
    const definition = caseDefinition();
    const { steps } = makePlan(definition, buildModel(definition).model).plan;
    const hours = steps.reduce((sum, { minutes }) => sum + minutes, 0) / 60;
    expect(hours).toBeLessThan(10);
    expect(hours).toBeGreaterThan(10 / 3);
  });

  // 3H, "Equipment": not more than five minutes to set up.
  it("a class sets up in five minutes when nothing else is said", () => {
    const written = stringify({ benchleaf: 1, binding: "pamphlet", title: "Test book", summary: "A book for tests.", author: { name: "A. Tester" }, units: "in", book: { sheets: 4, page: { height: "8 in", width: "5 in" } }, class: { participants: 25, sessions: ["2 h"] } });
    const { definitions } = readDefinition({ project: "test-book", file: "content/test-book/project.yaml", bytes: new TextEncoder().encode(written), files: new Set(), prose: new Map() });
    expect(definitions[0]!.class!.setUp).toBe(5);
  });
});

describe("D. Cockerell, Bookbinding and the Care of Books", () => {
  // 3B-10: boards about 1/8 in from the back form a French joint.
  it("boards 1/8 in from the back make a joint that we do not find fault with", () => {
    const codes = caseModel({ "text block": { page: { height: "8 in", width: "5 in" } }, groove: "1/8 in" }, { units: "in" }).findings.map(({ code }) => code);
    expect(codes).not.toContain("joint-gap-too-small");
    expect(codes).not.toContain("joint-too-loose");
  });

  // 3C-2: kettle about 1/4 in from each end of a trimmed book; slips 2 in on each side.
  it("kettles 1/4 in from each end, slips 2 in on each side", () => {
    const { stations } = placeTapes(inInches, { "kettle from head": inches(1, 4), "kettle from tail": inches(1, 4), tapes: 5, "tape width": noLength, "outer tape from kettle": null }, "book", inchLedger(inches(9)));
    expect([stations[0]!.at, stations.at(-1)!.at].map(text)).toEqual(["1/4 in", "8 3/4 in"]);
    expect(text(recompute("tape length", { "back width": inches(1), "tape on boards": inches(2) }, sixteenth))).toBe("5 in");
  });
});

describe("turn-ins and linings by trade", () => {
  // 3B-11, R&E "cover turned-in": edition binding seldom over 1/2 in.
  it("a turn-in of 1/2 in is enough for a board of usual thickness", () => {
    const codes = caseModel({ "text block": { page: { height: "8 in", width: "5 in" } }, "turn in": "1/2 in" }, { units: "in" }).findings.map(({ code }) => code);
    expect(codes.filter((code) => code.startsWith("turn-in"))).toEqual([]);
  });

  // 3B-15: super 1 1/2 in onto each endpaper (Vaughn), at least 1 1/4 in (Bailey 1916), 2 in for reference books and 1/2 in short of head and tail.
  it.each([[3, 2, "4 in"], [5, 4, "3 1/2 in"], [2, 1, "5 in"]])("mull %i/%i in onto each board of a back of 1 in is %s wide", (n, d, width) => {
    expect(text(recompute("mull width", { "back width": inches(1), "mull on boards": inches(n, d) }, sixteenth))).toBe(width);
  });
});

describe("sewing stations", () => {
  // 3C-5, Vaughn, case binding: five punctures, the top 3/4 to 1 in from the head, the bottom 1 1/4 to 1 1/2 in from the foot.
  it.each([[inches(3, 4), inches(5, 4)], [inches(1), inches(3, 2)]])("five punctures with unequal ends stand where Vaughn puts them, in order", (head, tail) => {
    const placed = placeStations(inInches, { stations: 5, "station from head": head, "station from tail": tail }, "book", "", inchLedger(inches(9)));
    expect(placed).toHaveLength(5);
    expect(text(placed[0]!.at)).toBe(text(head));
    expect(text(subtractLength(inches(9), placed[4]!.at))).toBe(text(tail));
    placed.slice(1).forEach(({ at }, index) => expect(isLess(placed[index]!.at, at)).toBe(true));
  });

  // 3C-7, Bailey 1916, general specification 20: three bands for books of 8 in, four for 12 in, and so on. 3C-1, Adam 1903, ch. II: two only for books under 7 cm high.
  it.each([["8 in", 3], ["12 in", 4], ["16 in", 5], ["2 5/8 in", 2]])("a book of %s has %i tapes when nothing else is said", (height, tapes) => {
    expect(caseModel({ "text block": { page: { height, width: "2 1/2 in" } } }, { units: "in" }).geometry.sewing!.tapes).toHaveLength(tapes);
  });

  // 3D-3, a stored page on yotsume toji: an inner binding of two pairs of holes, clear of the outer sewing.
  it.each(Object.keys(patterns) as readonly StabPattern[])("the inner binding of %s has two pairs of holes clear of those of the pattern", (pattern) => {
    for (const count of [3, 4, 5, 8]) {
      const { geometry } = buildModel(stabBindingDefinition({ book: { pattern, holes: { count, "set back": mm(12), "corner distance": null } } })).model as Model<"stab-binding">;
      expect(geometry.innerHoles).toHaveLength(4);
      const clear = multiplyLength(geometry.holeDiameter, 3);
      for (const inner of geometry.innerHoles) {
        for (const hole of geometry.holes) expect(isLess(hypotenuse(subtractLength(inner.along, hole.along), subtractLength(inner.across, hole.across)), clear), `${count} holes: ${inner.id} at ${hole.id}`).toBe(false);
      }
    }
  });
});

describe("imposition", () => {
  // 3G, Vaughn, "Forms for Four and More Pages": half a sheet of 25 × 38 is 25 × 19 in; 1/2 in for trim between pages; trimmed page 6 × 9, untrimmed 6 1/4 × 9 1/2.
  it("pages of 9 × 6 in trimmed 1/4 in on three edges come from leaves of 9 1/2 × 6 1/4 in, eight pages on a side of 19 × 25 in", () => {
    const { block } = caseModel({ "text block": { page: { height: "9 in", width: "6 in" }, trim: "three edges", "trim allowance": "1/4 in" } }, { units: "in" }).geometry;
    expect([text(block.folioHeight), text(block.folioWidth)]).toEqual(["9 1/2 in", "12 1/2 in"]);
    const { perSheet } = yieldOf({ height: block.folioHeight, width: block.folioWidth, grain: "height" }, { height: inches(19), width: inches(25), name: null } as Parameters<typeof yieldOf>[1], "short");
    // Each folio has two pages on each side.
    expect(2 * perSheet).toBe(8);
  });

  // 5, worked out from the rule that a stored article's 28-page brochure confirms: outside to inside, outer face / inner face.
  const table = {
    4: "4|1 / 2|3",
    8: "8|1 / 2|7; 6|3 / 4|5",
    12: "12|1 / 2|11; 10|3 / 4|9; 8|5 / 6|7",
    16: "16|1 / 2|15; 14|3 / 4|13; 12|5 / 6|11; 10|7 / 8|9",
    20: "20|1 / 2|19; 18|3 / 4|17; 16|5 / 6|15; 14|7 / 8|13; 12|9 / 10|11",
    24: "24|1 / 2|23; 22|3 / 4|21; 20|5 / 6|19; 18|7 / 8|17; 16|9 / 10|15; 14|11 / 12|13",
    28: "28|1 / 2|27; 26|3 / 4|25; 24|5 / 6|23; 22|7 / 8|21; 20|9 / 10|19; 18|11 / 12|17; 16|13 / 14|15",
    32: "32|1 / 2|31; 30|3 / 4|29; 28|5 / 6|27; 26|7 / 8|25; 24|9 / 10|23; 22|11 / 12|21; 20|13 / 14|19; 18|15 / 16|17",
  } as const;

  it.each(Object.entries(table))("%s pages on nested sheets", (pages, row) => {
    expect(pagesOnSheets(Number(pages) / 4).map(({ outer, inner }) => `${outer.join("|")} / ${inner.join("|")}`).join("; ")).toBe(row);
  });
});
