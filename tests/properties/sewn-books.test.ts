// Laws of sewing over all patterns, hole counts and sizes of the two bindings, in both units; and their drawings at odd sizes.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Definition } from "../../src/1-definition/types.ts";
import { buildModel } from "../../src/2-model/index.ts";
import type { Model } from "../../src/2-model/types.ts";
import { breachesOf } from "../../src/2-model/sewing/laws.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import type { Plan } from "../../src/3-plan/types.ts";
import type { BindingDrawings } from "../../src/4-figures/binding.ts";
import type { FigureDraft } from "../../src/4-figures/figure.ts";
import { drawFigures, drawingInput } from "../../src/4-figures/index.ts";
import { drawings as ofPamphlet } from "../../src/4-figures/pamphlet.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { drawings as ofStabBinding } from "../../src/4-figures/stab-binding.ts";
import type { BindingId } from "../../src/catalogue/bindings.ts";
import { fullColumn } from "../../src/4-figures/scale.ts";
import { addLengths, divideLength, inches, isLess, mm, sameLength, toMillimetres } from "../../src/units/length.ts";
import type { Length, Unit } from "../../src/units/length.ts";
import { pamphletDefinition, stabBindingDefinition } from "../fixtures/sewn-books.ts";

const sizes = (unit: Unit, least: number, most: number): fc.Arbitrary<Length> =>
  unit === "mm"
    ? fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => divideLength(mm(tenths), 10))
    : fc.integer({ min: Math.ceil((least * 64) / 25.4), max: Math.floor((most * 64) / 25.4) }).map((parts) => inches(parts, 64));

const anyUnit = fc.constantFrom<Unit>("mm", "in");

const pamphlets: fc.Arbitrary<Definition> = anyUnit.chain((unit) => fc.record({
  sheets: fc.integer({ min: 1, max: 20 }), height: sizes(unit, 60, 450), width: sizes(unit, 40, 450), trim: fc.boolean(), square: fc.oneof(fc.constant(mm(0)), sizes(unit, 1, 15)),
  count: fc.constantFrom<"3" | "5">("3", "5"), end: fc.option(sizes(unit, 5, 60), { nil: null }), tie: fc.constantFrom<"inside" | "outside">("inside", "outside"), paper: fc.integer({ min: 5, max: 40 }),
}).map(({ sheets, height, width, trim, square, count, end, tie, paper }) => pamphletDefinition({
  units: unit, book: { sheets, page: { height, width }, trim, cover: { square }, holes: { count, "end distance": end }, tie }, thickness: { "text paper": divideLength(mm(paper), 100) },
}) as Definition));

const stabBindings: fc.Arbitrary<Definition> = anyUnit.chain((unit) => fc.record({
  leaves: fc.integer({ min: 2, max: 300 }), height: sizes(unit, 80, 450), width: sizes(unit, 60, 450), kind: fc.constantFrom<"single" | "folded">("single", "folded"),
  pattern: fc.constantFrom<"yotsume toji" | "kangxi" | "asa-no-ha toji" | "kikko toji">("yotsume toji", "kangxi", "asa-no-ha toji", "kikko toji"),
  count: fc.integer({ min: 3, max: 8 }), setBack: sizes(unit, 5, 40), corner: fc.option(sizes(unit, 5, 60), { nil: null }), flap: fc.oneof(fc.constant(mm(0)), sizes(unit, 5, 120)), inner: fc.boolean(),
}).map(({ leaves, height, width, kind, pattern, count, setBack, corner, flap, inner }) => stabBindingDefinition({
  units: unit, book: { leaves, leaf: { height, width, kind }, pattern, holes: { count, "set back": setBack, "corner distance": corner }, cover: { flap }, "inner binding": inner },
}) as Definition));

/** The binding's own figures as scenes, before they are SVG. */
function draftsOf(definition: Definition, model: Model, plan: Plan): readonly FigureDraft[] {
  const input = drawingInput({ definition, model, plan });
  const { figures } = (definition.binding === "pamphlet" ? ofPamphlet : ofStabBinding) as BindingDrawings<BindingId>;
  return Object.values(figures).flatMap((draw) => draw(input) ?? []);
}

/** Runs a law on every book that can be made; one that cannot must say why. */
function holds(books: fc.Arbitrary<Definition>, runs: number, law: (definition: Definition, model: Model) => void): void {
  let made = 0;
  fc.assert(fc.property(books, (definition) => {
    const { model, problems } = buildModel(definition);
    expect(problems.length).toBe(model.findings.filter(({ severity }) => severity === "stop").length);
    if (problems.length > 0) return;
    made += 1;
    law(definition, model);
  }), { numRuns: runs });
  expect(made, "books that could be made").toBeGreaterThan(runs / 4);
}

describe.each([["pamphlet", pamphlets], ["stab binding", stabBindings]] as const)("every %s that can be made", (_, books) => {
  it("has a thread that is in one piece, changes its side at every hole and covers every run as often as asked", () => {
    holds(books, 120, (__, model) => {
      for (const path of model.thread!.paths) expect(breachesOf(path, addLengths(...path.moves.map(({ length }) => length)))).toEqual([]);
    });
  });

  it("has thread as long as its moves and ends, in needlefuls that hold every move once", () => {
    holds(books, 60, (__, { thread }) => {
      const { paths, needlefuls, sewn, net, length } = thread!;
      expect(sameLength(sewn, addLengths(...paths.flatMap(({ moves }) => moves.map((move) => move.length))))).toBe(true);
      expect(isLess(sewn, net)).toBe(true);
      expect(isLess(length, net)).toBe(false);
      paths.forEach(({ moves }, index) => {
        const own = needlefuls.filter(({ path }) => path === index + 1);
        expect(own.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (___, k) => first + k))).toEqual(moves.map(({ n }) => n));
      });
    });
  });

  it("has a figure for every step, no wider than the column and no higher than 200 mm, and no broken number in its texts", () => {
    holds(books, 7, (definition, model) => {
      const { plan } = makePlan(definition, model);
      const { figures, templates } = drawFigures({ definition, model, plan });
      for (const step of plan.steps) expect(figures.has(step.figure!), `${step.id}: ${step.figure}`).toBe(true);
      for (const draft of draftsOf(definition, model, plan)) expect(findCollisions(draft.items), draft.id).toEqual([]);
      for (const figure of figures.values()) {
        expect(figure.width, figure.id).toBeLessThanOrEqual(fullColumn);
        expect(figure.height, figure.id).toBeLessThanOrEqual(200);
        expect(`${figure.caption}${figure.alternative}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
      }
      const pricked = templates[0]!.marks.filter(({ act }) => act === "pierce");
      expect(pricked.length, "holes of the template").toBeGreaterThanOrEqual(3);
      for (const mark of pricked) expect(model.holes.some(({ along }) => Math.abs(toMillimetres(along) - mark.from[1]) < 1e-6)).toBe(true);
      expect(plan.steps.flatMap(({ action }) => action).join(" ")).not.toMatch(/NaN|undefined|Infinity|\[object/);
    });
  });
});
