// Printed rules and examples for hard cases, computed with the case binding's own formulas.
import { describe, expect, it } from "vitest";
import { lengthOf, inches, isLess, mm, noLength, toMillimetres } from "../../src/units/length.ts";
import { printExact } from "../../src/units/print-length.ts";
import { caseModel, recompute } from "../fixtures/case-binding.ts";

const sixteenth = inches(1, 16);
const halfMillimetre = mm("0.5");
const text = (length: Parameters<typeof printExact>[0]): string => printExact(length, "in");

describe("J. F. Vaughn, Printing and Bookbinding for Schools (1912)", () => {
  // "Turn-in; Size of Cover Cloth", worked out for a book 6 × 9 × 1 in, square 1/8, joint 1/8: boards 6 × 9 1/4, cloth 14 3/4 × 10 3/4 in.
  it("boards as wide as the book, cloth 2 boards + back + 2 joints + 1 1/2 in", () => {
    expect(text(recompute("board width", { "block width": inches(6), groove: inches(1, 8), square: inches(1, 8) }, sixteenth))).toBe("6 in");
    const height = recompute("board height", { "page height": inches(9), square: inches(1, 8) }, sixteenth);
    expect(text(height)).toBe("9 1/4 in");
    const strip = recompute("spine strip width", { "back width": inches(1) }, sixteenth, { "strip covers": "block" });
    const cloth = { "board width": inches(6), joint: inches(1, 8), "spine strip width": strip, "turn in": inches(3, 4), "board height": height };
    expect(text(recompute("case cloth width", cloth, sixteenth))).toBe("14 3/4 in");
    expect(text(recompute("case cloth height", cloth, sixteenth))).toBe("10 3/4 in");
  });

  // "Mitres": about one board thickness between the cut and the board's corner.
  it("mitres: one board thickness, when the definition chooses it", () => {
    expect(recompute("corner distance", { "board thickness": mm("2.5") }, halfMillimetre, { "corner cut": "one board" })).toEqual(mm("2.5"));
  });

  // Cover paper: 1 1/2 in longer than the board, 7/8 in wider than leather to fore-edge (3/4 turn-in + 1/8 lap).
  it("paper sides: 1 1/2 in longer than the board and 7/8 in wider than the rest of it", () => {
    const values = { "board height": inches(9), "board width": inches(6), "cloth on boards": inches(2), "side lap": inches(1, 8), "turn in": inches(3, 4) };
    expect(text(recompute("side paper height", values, sixteenth, { covering: "quarter" }))).toBe("10 1/2 in");
    expect(text(recompute("side paper width", values, sixteenth, { covering: "quarter" }))).toBe("4 7/8 in");
  });
});

describe("Bean and Brodhead, Bookbinding for Beginners (1918)", () => {
  // Problem VI, printed: two boards 3 5/8 × 7 1/2, gap 1/4, covering about 9 in square; two of 4 5/8 × 9 1/2, covering 11 1/2 in square.
  it.each([[29, 15, "9 in", inches(3, 4)], [37, 19, "11 1/2 in", inches(1)]])("folding boards %i/8 × %i/2 in are covered with %s square", (width, height, cloth, turnIn) => {
    const values = { "board width": inches(width, 8), "board height": inches(height, 2), joint: inches(1, 8), "spine strip width": noLength, "turn in": turnIn };
    expect(text(recompute("case cloth width", values, sixteenth))).toBe(cloth);
    expect(text(recompute("case cloth height", values, sixteenth))).toBe(cloth);
  });

  // Problem XIV: overhang 1/8 in, boards set forward 1/4 in, gap at least 1/2 in more than the book's thickness, strip exactly as wide as the back.
  it("the schoolroom case: a gap of the thickness and at least 1/2 in, a strip exactly the width of the back", () => {
    const joint = recompute("joint", { groove: inches(1, 4), "board thickness": inches(1, 16) }, sixteenth);
    expect(isLess(joint, inches(1, 4))).toBe(false);
    expect(text(recompute("spine strip width", { "back width": inches(7, 8) }, sixteenth, { "strip covers": "block" }))).toBe("7/8 in");
    expect(text(recompute("board width", { "block width": inches(5), groove: inches(1, 4), square: inches(1, 8) }, sixteenth))).toBe("4 7/8 in");
  });
});

describe("A. F. Collins, Handicraft for Boys (1918), a book 5 × 7 1/2 × 1 in", () => {
  it("boards 5 × 7 3/4 in, gap 1 1/2 in, cloth 2 in longer than the board", () => {
    expect(text(recompute("board height", { "page height": inches(15, 2), square: inches(1, 8) }, sixteenth))).toBe("7 3/4 in");
    expect(text(recompute("case cloth height", { "board height": inches(31, 4), "turn in": inches(1) }, sixteenth))).toBe("9 3/4 in");
  });

  // Known difference: his cloth is three times the board's width, 15 in; boards, gap and turn-ins of 1 in add up to 13 1/2 in.
  it("cloth 15 in wide by his rule of thumb, 1 1/2 in more than the pieces on it take", () => {
    expect(text(recompute("case cloth width", { "board width": inches(5), joint: inches(1, 4), "spine strip width": inches(1), "turn in": inches(1) }, sixteenth))).toBe("13 1/2 in");
  });
});

describe("Paul Adam, Practical Bookbinding (1903)", () => {
  // Ch. VI: packing as wide as the back from first to last sheet and as high as the boards; from packing to board one board thickness.
  it("a strip as wide as the back, one board thickness from boards that touch the shoulder", () => {
    expect(recompute("joint", { groove: noLength, "board thickness": mm("2.5") }, halfMillimetre)).toEqual(mm("2.5"));
    const model = caseModel({ groove: "0 mm", "strip covers": "block", boards: { thickness: "2.5 mm" } });
    expect(toMillimetres(model.geometry.joint)).toBe(2.5);
    expect(model.findings.map(({ code }) => code)).not.toContain("joint-gap-too-small");
    expect(model.findings.map(({ code }) => code)).not.toContain("joint-too-loose");
  });

  // Ch. VI: spine cloth of a half binding about 4 cm wider than the packing; with a joint of 2.5 mm 17.5 mm of it lie on each board.
  it("spine cloth 4 cm wider than the packing", () => {
    const cloth = recompute("spine cloth width", { "spine strip width": mm(20), joint: mm("2.5"), "cloth on boards": mm("17.5") }, halfMillimetre, { covering: "half" });
    expect(toMillimetres(cloth)).toBe(60);
  });

  // Ch. II, printed: ordinary cords are 6 cm and the thickness; six volumes of 25 cm in all take 6 × 6 + 25 = 61 cm, laced in double, 97 cm.
  it.each([[30, 610], [60, 970]])("slips of %i mm on six volumes of 25 cm in all take %i mm of cord", (slip, total) => {
    const one = recompute("tape length", { "back width": noLength, "tape on boards": mm(slip) }, halfMillimetre);
    expect(6 * toMillimetres(one) + 250).toBe(total);
  });
});

describe("linings, squares, turn-ins, thread", () => {
  // M. W. Brown, Mending and Repair of Books (ALA 1921): a strip of the back and 2 in, 1 in on each side.
  it("mull 2 in wider than the back", () => {
    expect(text(recompute("mull width", { "back width": inches(3, 4), "mull on boards": inches(1) }, sixteenth))).toBe("2 3/4 in");
  });

  // Bailey 1916: stopping 1/2 in short of head and tail.
  it("mull 1 in lower than the page", () => {
    expect(text(recompute("mull height", { "page height": inches(9), "mull short": inches(1, 2) }, sixteenth))).toBe("8 in");
  });

  // Language of Bindings, "squares (boards)": medium is the board's thickness.
  it.each([["1.9 mm", "narrow"], ["2 mm", "medium"], ["3 mm", "wide"]])("a square of %s on a board of 2 mm is %s", (square, word) => {
    expect(caseModel({ square }).values.get("square")!.meaning).toContain(`a ${word} square`);
  });

  // Roberts & Etherington, "cover turned-in": customarily 5/8 in in library binding, the default of an inch project.
  it("turn-ins of 5/8 in", () => {
    const model = caseModel({ "text block": { page: { height: "8 in", width: "5 in" } } }, { units: "in" });
    expect(text(lengthOf(model.values.get("turn in")!.quantity.value))).toBe("5/8 in");
  });

  // From R&E's 300 yards in a pound: 18/3 linen is 0.48 mm as solid flax and 0.62 mm at 60 % packing. Worked out, not printed: bounds only.
  it("thread of 18/3 lies between solid flax and loosely packed flax", () => {
    const thread = toMillimetres(caseModel().geometry.block.threadThickness);
    const tex = (1653.5 * 3) / 18;
    const solid = 2 * Math.sqrt(tex / 1000 / 1.5 / Math.PI);
    expect(solid).toBeCloseTo(0.48, 2);
    expect(thread).toBeGreaterThan(solid);
    expect(thread).toBeLessThan(solid / Math.sqrt(0.6));
  });
});
