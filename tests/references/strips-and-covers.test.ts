// Printed figures about folded strips and covered boards, recomputed by the concertina's own formulas.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { scoredFrom } from "../../src/2-model/concertina/strip.ts";
import { findSheetSize } from "../../src/catalogue/sheet-sizes.ts";
import { evaluateFormula } from "../../src/units/formula.ts";
import { inches, isLess, lengthOf, mm, toMillimetres } from "../../src/units/length.ts";
import { printExact } from "../../src/units/print-length.ts";
import { rational } from "../../src/units/rational.ts";
import { concertinaDefinition, plainSheet } from "../fixtures/concertina.ts";

describe("Paul Adam, Practical Bookbinding (1903), ch. I", () => {
  // Printed: two-fold guard 2 × 1 cm + 3 mm = 23 mm; four-fold 4 × 1 cm + 3 mm = 43 mm. A fold is a panel, what is pasted on is the tab.
  it.each([[2, 23], [4, 43]])("a strip of %i panels 1 cm wide with 3 mm to paste is %i mm wide", (panels, width) => {
    const formula = buildModel(concertinaDefinition({ book: { panels: 30 } })).model.values.get("first strip width")!.formula!;
    const result = evaluateFormula(formula, {
      step: mm("0.5"),
      lookUp: (name) => (name === "panel width" ? { value: mm(10), dimension: 1 } : name === "tab" ? { value: mm(3), dimension: 1 } : { value: rational(panels), dimension: 0 }),
    });
    expect(toMillimetres(lengthOf(result.value))).toBe(width);
  });
});

describe("S. J. Vaughn, Printing and Bookbinding for Schools (1912), turn-in and size of cover cloth", () => {
  // Printed: boards 1/4 in longer than the book, so squares are 1/8 in; turn-in 3/4 in everywhere, cloth length = board length + 1 1/2 in.
  it("a panel 9 in high gets boards of 9 1/4 in and coverings of 10 3/4 in", () => {
    const { geometry } = buildModel(concertinaDefinition({ units: "in", book: { panel: { height: inches(9), width: inches(4) }, square: inches(1, 8), "turn in": inches(3, 4) } })).model;
    expect(printExact(geometry.boardHeight, "in")).toBe("9 1/4 in");
    expect(printExact(geometry.coverHeight, "in")).toBe("10 3/4 in");
  });
});

describe("ISO 216, table of sizes (Wikipedia, \"ISO 216\")", () => {
  // A3 is 297 × 420 mm, A7 is 74 × 105 mm: an A3 sheet whose grain runs along its short side holds four panels the size of an upright A6 (105 mm) exactly.
  it.each([[4, 1], [5, 2]])("%i panels of A6 from A3 sheets are %i strips", (panels, strips) => {
    const [a3, a6] = [findSheetSize("A3")!, findSheetSize("A6")!];
    const { geometry } = buildModel(concertinaDefinition({
      book: { panels, panel: { height: a6.height, width: a6.width } },
      materials: { "panel paper": { grain: "short", sheets: [plainSheet(a3.height, a3.width)] } },
    })).model;
    expect(geometry.strips).toHaveLength(strips);
  });
});

describe("Roberts & Etherington, \"board\"", () => {
  // Most sheets of 0.012 in (0.30 mm) and over count as board, nearly all under 0.006 in as paper.
  it("paper is scored from 0.30 mm on, which is 0.012 in to the nearest thousandth", () => {
    expect((toMillimetres(scoredFrom) / 25.4).toFixed(3)).toBe("0.012");
    expect(isLess(inches("0.006"), scoredFrom)).toBe(true);
  });
});
