// Laws of the concertina over many sizes, in both units.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { shareOutPanels } from "../../src/2-model/concertina/join-plan.ts";
import { halvingOrder } from "../../src/2-model/concertina/strip.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { addLengths, compareLengths, divideLength, inches, isLess, isOnMark, mm, multiplyLength, noLength, sameLength, subtractLength } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { concertinaDefinition, plainSheet } from "../fixtures/concertina.ts";
import type { ConcertinaOverrides } from "../fixtures/concertina.ts";

const sizes = (unit: "mm" | "in", least: number, most: number): fc.Arbitrary<Length> =>
  unit === "mm"
    ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => divideLength(mm(tenths), 10))
    : fc.integer({ min: Math.ceil((least * 64) / 25.4), max: Math.floor((most * 64) / 25.4) }).map((parts) => inches(parts, 64));

const books: fc.Arbitrary<ConcertinaOverrides> = fc.constantFrom<"mm" | "in">("mm", "in").chain((units) => fc.record({
  panels: fc.integer({ min: 2, max: 60 }), height: sizes(units, 30, 300), width: sizes(units, 30, 200), tab: sizes(units, 8, 14), paper: fc.integer({ min: 5, max: 60 }),
  across: fc.integer({ min: 300, max: 1500 }), along: fc.integer({ min: 300, max: 1500 }), grain: fc.constantFrom<"long" | "short" | "none">("long", "short", "none"),
  closure: fc.constantFrom<"ribbon" | "band" | "none">("ribbon", "band", "none"),
}).map((book): ConcertinaOverrides => ({
  units, book: { panels: book.panels, panel: { height: book.height, width: book.width }, join: { tab: book.tab }, closure: book.closure, band: { height: mm(20) } },
  materials: { "panel paper": { thickness: divideLength(mm(book.paper), 100), grain: book.grain, sheets: [plainSheet(mm(book.along), mm(book.across))] } },
})));

/** Runs a law on every book that can be made; one that cannot must say why. */
function holds(law: (made: { readonly definition: ReturnType<typeof concertinaDefinition>; readonly model: ReturnType<typeof buildModel<"concertina">>["model"] }) => void, runs = 100): void {
  let made = 0;
  fc.assert(fc.property(books, (overrides) => {
    const definition = concertinaDefinition(overrides);
    const { model, problems } = buildModel(definition);
    expect(problems.length).toBe(model.findings.filter((finding) => finding.severity === "stop").length);
    if (problems.length > 0) return;
    made += 1;
    law({ definition, model });
  }), { numRuns: runs });
  expect(made, "books that could be made").toBeGreaterThan(runs / 5);
}

/** The fewest strips by trying every share in turn, whatever the middle ones are: owes nothing to the plan's own reasoning. */
function fewestStrips(panels: number, most: number, mostLast: number): number | null {
  if (panels <= mostLast) return 1;
  const reached = new Map<number, number>();
  for (let first = 1; first <= Math.min(most, panels - 1); first += 2) reached.set(first, 1);
  for (let at = 1; at < panels; at += 1) {
    const strips = reached.get(at);
    if (strips === undefined) continue;
    for (let even = 2; even <= most && at + even < panels; even += 2) reached.set(at + even, Math.min(reached.get(at + even) ?? Infinity, strips + 1));
  }
  const ends = [...reached].filter(([at]) => panels - at <= mostLast).map(([, strips]) => strips + 1);
  return ends.length === 0 ? null : Math.min(...ends);
}

describe("every join plan", () => {
  it("needs no more strips than any other plan whose joins lie in valleys, and is found whenever there is one", () => {
    for (let panels = 2; panels <= 60; panels += 1) {
      for (let most = 0; most <= 14; most += 1) {
        for (const mostLast of [most, most + 1]) {
          const shares = shareOutPanels(panels, most, mostLast);
          expect(shares?.length ?? null, `${panels} panels, ${most} beside a tab, ${mostLast} without`).toBe(fewestStrips(panels, most, mostLast));
          if (!shares) continue;
          expect(shares.reduce((sum, share) => sum + share, 0)).toBe(panels);
          let fold = 0;
          shares.slice(0, -1).forEach((share) => {
            fold += share;
            expect(fold % 2, "a join in a valley").toBe(1);
            expect(share).toBeLessThanOrEqual(most);
          });
          expect(shares.at(-1)!).toBeLessThanOrEqual(mostLast);
          expect(new Set(shares.slice(1, -1)).size).toBeLessThanOrEqual(1);
        }
      }
    }
  });
});

describe("halving of every power of two", () => {
  it("makes every fold once, midway between two places that are there already", () => {
    for (const panels of [2, 4, 8, 16, 32]) {
      const there = new Set([0, panels]);
      for (const fold of halvingOrder(panels)) {
        expect(there.has(fold.from) && there.has(fold.onto)).toBe(true);
        expect(2 * fold.fold).toBe(fold.from + fold.onto);
        expect(there.has(fold.fold)).toBe(false);
        expect(fold.direction).toBe(fold.fold % 2 === 1 ? "valley" : "mountain");
        there.add(fold.fold);
      }
      expect(there.size).toBe(panels + 1);
    }
  });
});

describe("every concertina that can be made", () => {
  it("has strips that fit their sheet, and folds on ruler marks within half a mark of whole panels", () => {
    holds(({ definition, model }) => {
      const { geometry, parts, scores } = model;
      const { step } = definition.units;
      for (const strip of geometry.strips) {
        const part = parts.find((each) => each.id === strip.part)!;
        expect(compareLengths(part.width, geometry.sheet.across)).toBeLessThanOrEqual(0);
        const own = scores.filter((score) => score.part === strip.part);
        expect(own).toHaveLength(strip.hasTab ? strip.panels : strip.panels - 1);
        own.forEach((score, index) => {
          expect(isOnMark(score.at, step)).toBe(true);
          const off = subtractLength(score.at, multiplyLength(geometry.panelWidth, index + 1));
          expect(compareLengths(multiplyLength(isLess(off, noLength) ? multiplyLength(off, -1) : off, 2), step)).toBeLessThanOrEqual(0);
        });
        if (strip.hasTab) expect(own.at(-1)!.fold).toBe("valley");
      }
    });
  });

  it("alternates valley and mountain over all its folds, and counts each fold once", () => {
    holds(({ model }) => {
      const { strips, panels } = model.geometry;
      const folds = strips.flatMap((strip) => model.scores.filter((score) => score.part === strip.part).map((score) => score.fold));
      expect(folds).toHaveLength(panels - 1);
      folds.forEach((fold, index) => expect(fold).toBe(index % 2 === 0 ? "valley" : "mountain"));
    });
  });

  it("is as thick as its layers, and its covers reach beyond the folded strip by the squares", () => {
    holds(({ definition, model }) => {
      const { geometry } = model;
      const value = (name: string): Length => model.values.get(name)!.quantity.value as Length;
      const layers = addLengths(multiplyLength(geometry.paperThickness, geometry.panels), geometry.tabSwell, multiplyLength(addLengths(geometry.coverStack, geometry.endAdhesiveThickness), 2));
      expect(sameLength(layers, value("shut thickness"))).toBe(true);
      const spare = subtractLength(geometry.boardWidth, addLengths(geometry.foldedWidth, multiplyLength(geometry.square, 2)));
      expect(compareLengths(multiplyLength(isLess(spare, noLength) ? multiplyLength(spare, -1) : spare, 2), definition.units.step)).toBeLessThanOrEqual(0);
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
      expect(JSON.stringify(plan.steps)).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }, 40);
  });
});
