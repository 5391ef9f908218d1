// Steps shared out to pages: whole, in order, none too many on a page, and no page half empty that need not be.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fillPages, stepWays } from "../../src/6-print/fill-pages.ts";
import type { PageOfSteps, StepHeights, StepMeasures } from "../../src/6-print/fill-pages.ts";

/** A step of one height in every way but "close", which takes a twentieth off, and with a larger drawing. */
function step(whole: number, { work = null as number | null, larger = 0, gap = 0 } = {}): StepHeights {
  const inEveryWay = (height: number): readonly number[] => stepWays.map((way) => (way === "close" ? height * 0.95 : typeof way === "number" ? height + larger * (way - 1) : height));
  return { gap, lead: 0, whole: inEveryWay(whole), work: work === null ? null : inEveryWay(work) };
}

const share = (steps: readonly StepHeights[], before = 0, pageHeight = 270): readonly PageOfSteps[] => fillPages({ pageHeight, before, steps });
const brief = (pages: readonly PageOfSteps[]): readonly string[] => pages.map(({ first, last, way, parts }) => `${first}-${last}${way === "usual" ? "" : ` ${way}`}${parts ? " parts" : ""}`);

describe("the pages of some steps", () => {
  it("hold as many whole steps as fit", () => {
    expect(brief(share([step(120), step(120), step(200), step(130), step(130)]))).toEqual(["0-1", "2-2", "3-4"]);
  });
  it("are set closer where two steps just do not fit", () => {
    expect(brief(share([step(140), step(140), step(250)]))).toEqual(["0-1 close", "2-2"]);
  });
  it("part a check from its work rather than leave a page half empty", () => {
    expect(brief(share([step(120), step(170, { work: 140 }), step(220), step(250)]))).toEqual(["0-1 parts", "2-2", "3-3"]);
    expect(brief(share([step(200), step(190, { work: 60 }), step(250)])), "a page of 200 is full enough").toEqual(["0-0", "1-1", "2-2"]);
  });
  it("show a lone drawing larger where the page would stay half empty", () => {
    expect(brief(share([step(130, { larger: 60 }), step(250), step(250)]))[0]).toBe("0-0 1.2");
  });
  it("begin below what stands before them where they fit, and anew where not", () => {
    expect(share([step(100), step(250)], 120).map((page) => page.isLoose)).toEqual([true, false]);
    expect(share([step(200), step(250)], 120).map((page) => page.isLoose)).toEqual([false, false]);
  });
  it("let a step that is longer than a page break by itself", () => {
    expect(share([step(400), step(250)]).map((page) => page.isLoose)).toEqual([false, true]);
  });

  it("hold every step once, in order, and never more than their height", () => {
    const anyStep = fc.record({ whole: fc.integer({ min: 20, max: 265 }), rest: fc.integer({ min: 8, max: 40 }), gap: fc.integer({ min: 0, max: 9 }), mayPart: fc.boolean() })
      .map(({ whole, rest, gap, mayPart }) => step(whole, { gap, work: mayPart && rest < whole ? whole - rest : null, larger: 30 }));
    fc.assert(fc.property(fc.array(anyStep, { minLength: 1, maxLength: 14 }), fc.integer({ min: 0, max: 270 }), (steps, before) => {
      const pages = share(steps, before);
      expect(pages.flatMap(({ first, last }) => Array.from({ length: last - first + 1 }, (_, index) => first + index))).toEqual(steps.map((_, index) => index));
      pages.forEach((page, index) => expect(heightOf(page, pages[index - 1], { pageHeight: 270, before, steps })).toBeLessThanOrEqual(270));
    }), { numRuns: 60 });
  });
});

/** What stands on a page, added up anew. */
function heightOf(page: PageOfSteps, previous: PageOfSteps | undefined, { before, steps }: StepMeasures): number {
  const way = stepWays.indexOf(page.way);
  const carried = previous?.parts ? steps[previous.last]!.whole[0]! - steps[previous.last]!.work![0]! : 0;
  const above = previous === undefined && page.isLoose ? before : 0;
  return steps.slice(page.first, page.last + 1).reduce((sum, each, index) => {
    const height = page.parts && page.first + index === page.last ? each.work![way]! : each.whole[way]!;
    return sum + (index === 0 && carried + above === 0 ? each.lead : each.gap) + height;
  }, above + carried);
}
