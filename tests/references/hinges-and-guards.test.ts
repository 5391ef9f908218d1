// Printed rules for guards and hinges computed with the stub album's own formulas.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { inches, isLess, lengthOf, mm, noLength, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { evaluateFormula } from "../../src/units/formula.ts";
import { printExact } from "../../src/units/print-length.ts";
import { rational } from "../../src/units/rational.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

const { model } = buildModel(stubAlbumDefinition());

/** Computes one of the model's own formulas with the values of a printed example. */
function recompute(name: string, values: Readonly<Record<string, Length | number>>, step: Length): Length {
  const formula = model.values.get(name)!.formula!;
  const result = evaluateFormula(formula, {
    step,
    lookUp: (used) => {
      const value = values[used];
      if (value === undefined) throw new Error(`the example gives no "${used}"`);
      return typeof value === "number" ? { value: rational(value), dimension: 0 } : { value, dimension: 1 };
    },
  });
  return lengthOf(result.value);
}

describe("Paul Adam, Practical Bookbinding (1903)", () => {
  // Ch. I, printed: two-fold guard 2 × 1 cm + 3 mm = 23 mm; four-fold 4 × 1 cm + 3 mm = 43 mm. A fold is a leaf of a stub; the paste-on is the two margins.
  it.each([[1, 23], [2, 43]])("a guard of %i stubs 1 cm deep with 3 mm to paste is %i mm wide", (stubs, width) => {
    const card = recompute("card width", { stubs, "stub depth": mm(10), "floor gap": noLength, margin: mm("1.5") }, mm("0.5"));
    expect(toMillimetres(card)).toBe(width);
  });

  // Ch. I: card strips 1 cm wide, two side by side, on calico 3 cm wide; 5 mm are left on each side to paste.
  it("calico for two 1 cm strips side by side is 3 cm wide with 5 mm each side", () => {
    const cloth = recompute("hinge cloth width", { "side strip width": mm(10), "joint gap": noLength, "spine strip width": noLength, "turn in": mm(5) }, mm("0.5"));
    expect(toMillimetres(cloth)).toBe(30);
  });

  // Ch. I: the thickness of a stub in the spine must equal the plate; paper whose double thickness equals the plate.
  it("a closed stub without adhesive is twice as thick as its card", () => {
    expect(toMillimetres(recompute("closed stub", { "card thickness": mm("0.35"), "stub adhesive thickness": noLength }, mm("0.5")))).toBeCloseTo(0.7, 12);
  });
});

describe("Bean and Brodhead, Bookbinding for Beginners (1918)", () => {
  // Problem VIII A: two holes, each one fifth to one sixth of the hinge strip's length from its end, midway across the strip.
  it("holes in a strip 8 3/4 in long lie 1.46 to 1.75 in from its ends", () => {
    const end = recompute("post end distance", { "strip height": inches(35, 4) }, inches(1, 16));
    expect(isLess(end, inches(35, 24))).toBe(false);
    expect(isLess(inches(35, 20), end)).toBe(false);
  });

  it("holes in a strip 1 in wide lie 1/2 in from the back edge", () => {
    expect(printExact(recompute("post across", { "side strip width": inches(1) }, inches(1, 16)), "in")).toBe("1/2 in");
  });

  // Problem VIII D: envelope 9 in high, cover 1/8 in longer at each end (9 1/4 in); guard cloth passes each end by 1/2 in (10 in).
  it("a cover of 9 1/4 in with 1/8 in squares holds a page 9 in high", () => {
    const page = recompute("page paper height", { "strip height": inches(37, 4), "board height": inches(37, 4), square: inches(1, 8) }, inches(1, 16));
    expect(printExact(page, "in")).toBe("9 in");
  });

  it("guard cloth 1 in longer than a 9 in stiffener is 10 in", () => {
    expect(printExact(recompute("hinge cloth height", { "strip height": inches(9), "turn in": inches(1, 2) }, inches(1, 16)), "in")).toBe("10 in");
  });

  // Problem VIII A: the lining stops 1/8 in short of the board's edges.
  it("a lining on a board 9 1/4 × 4 3/8 in is 9 × 4 1/8 in", () => {
    expect(printExact(recompute("lining paper height", { "board height": inches(37, 4), "lining inset": inches(1, 8) }, inches(1, 16)), "in")).toBe("9 in");
    expect(printExact(recompute("lining paper width", { "board width": inches(35, 8), "lining inset": inches(1, 8) }, inches(1, 16)), "in")).toBe("4 1/8 in");
  });
});
