// How panels are shared out over strips so that every join lies in a valley, and which sheet needs the fewest.
import type { Definition, SheetGrain } from "../../1-definition/types.ts";
import { addLengths, inches, isLess, mm, multiplyLength, noLength, ratioOf, roundToMark } from "../../units/length.ts";
import type { Length, Unit } from "../../units/length.ts";
import { floorRational } from "../../units/rational.ts";
import type { ParentSheet, Strip } from "./geometry.ts";

/** The sheet planned for where the author names none: common practice, no source. */
const usualSheet: Readonly<Record<Unit, { readonly height: Length; readonly width: Length }>> = {
  mm: { height: mm(700), width: mm(500) },
  in: { height: inches(26), width: inches(20) },
};

/** A sheet and the strips that it gives; `planned` is false when no join plan was found and one strip stands in. */
export interface StripPlan {
  readonly sheet: ParentSheet;
  readonly strips: readonly Strip[];
  readonly planned: boolean;
}

/**
 * Panels of each strip from the left; null when they cannot be joined in valleys.
 * Seen from the front, odd folds are valleys. A join after the first strip is in a valley when that strip has an odd number of panels, and
 * after every further strip when that one has an even number. `most` panels fit beside a tab, `mostLast` without one.
 * The fewest strips; all middle ones alike, so that there are at most three kinds; then as even as can be.
 */
export function shareOutPanels(panels: number, most: number, mostLast: number): readonly number[] | null {
  if (panels <= mostLast) return [panels];
  const largestOdd = most - ((most + 1) % 2);
  const largestEven = most - (most % 2);
  if (largestOdd < 1) return null;
  const middles = Math.max(0, panels - largestOdd - mostLast);
  if (middles > 0 && largestEven < 2) return null;
  const count = middles === 0 ? 0 : Math.ceil(middles / largestEven);
  const evens = count === 0 ? [0] : Array.from({ length: largestEven / 2 }, (_, index) => 2 * (index + 1));
  const odds = Array.from({ length: (largestOdd + 1) / 2 }, (_, index) => 2 * index + 1);
  const ways = evens.flatMap((even) => odds.map((odd) => [odd, ...Array.from({ length: count }, () => even), panels - odd - count * even]))
    .filter((way) => way.at(-1)! >= 1 && way.at(-1)! <= mostLast);
  const unevenness = (way: readonly number[]): number => Math.max(...way) - Math.min(...way);
  return ways.reduce<readonly number[] | null>((best, way) => (best === null || unevenness(way) < unevenness(best) ? way : best), null);
}

/** Chooses the sheet and plans the strips: fewest strips, then fewest sheets, then the smaller sheet, then the author's order. */
export function planStrips(definition: Definition<"concertina">): StripPlan {
  const { panels, panel, join } = definition.book;
  const paper = definition.materials["panel paper"]!;
  const sizeAssumed = paper.sheets.length === 0;
  const sheets = sizeAssumed ? [usualSheet[definition.units.governing]] : paper.sheets;
  const grainAssumed = paper.grain === "unknown";
  const plansFor = (ways: (sheet: { readonly height: Length; readonly width: Length }) => readonly (readonly [along: Length, across: Length])[]): readonly StripPlan[] =>
    sheets.flatMap((sheet) => ways(sheet)).flatMap(([along, across]): readonly StripPlan[] => {
      const stripsFromEach = wholeTimes(along, panel.height);
      if (stripsFromEach === 0 && !sizeAssumed) return [];
      const fitting = (tab: Length): number => panelsThatFit(across, panel.width, tab, definition.units.step);
      const shares = shareOutPanels(panels, fitting(join.tab), fitting(noLength));
      if (!shares) return [];
      const count = Math.ceil(shares.length / Math.max(1, stripsFromEach));
      return [{ sheet: { along, across, sizeAssumed, grainAssumed, stripsFromEach, count }, strips: stripsOf(shares), planned: true }];
    });
  const withGrain = plansFor((sheet) => waysWithGrain(sheet, paper.grain));
  // Across the grain is a warning of its own; only when nothing else fits.
  const plans = withGrain.length > 0 ? withGrain : plansFor((sheet) => [[sheet.height, sheet.width], [sheet.width, sheet.height]]);
  const best = plans.reduce<StripPlan | null>((chosen, plan) => (chosen === null || isBetter(plan, chosen) ? plan : chosen), null);
  if (best) return best;
  const { height, width } = sheets[0]!;
  return { sheet: { along: height, across: width, sizeAssumed, grainAssumed, stripsFromEach: 1, count: 1 }, strips: stripsOf([panels]), planned: false };
}

/** A sheet can be laid with its grain along the panels' height in one way; in both where it has none or nobody knows. */
function waysWithGrain({ height, width }: { readonly height: Length; readonly width: Length }, grain: SheetGrain): readonly (readonly [along: Length, across: Length])[] {
  const [long, short] = isLess(height, width) ? [width, height] : [height, width];
  if (grain === "long") return [[long, short]];
  return grain === "short" ? [[short, long]] : [[short, long], [long, short]];
}

function isBetter(plan: StripPlan, than: StripPlan): boolean {
  if (plan.strips.length !== than.strips.length) return plan.strips.length < than.strips.length;
  if (plan.sheet.count !== than.sheet.count) return plan.sheet.count < than.sheet.count;
  const area = ({ sheet }: StripPlan): number => Number(sheet.along.n * sheet.across.n) / Number(sheet.along.d * sheet.across.d);
  return area(plan) < area(than);
}

/** How often a part fits into a length, in whole pieces. */
function wholeTimes(length: Length, part: Length): number {
  return Math.max(0, Number(floorRational(ratioOf(length, part))));
}

/** The most panels of a strip that, cut on a mark of the ruler, is not longer than the sheet. */
function panelsThatFit(across: Length, width: Length, tab: Length, step: Length): number {
  let panels = wholeTimes(across, width);
  while (panels > 0 && isLess(across, roundToMark(addLengths(multiplyLength(width, panels), tab), step))) panels -= 1;
  return panels;
}

function stripsOf(shares: readonly number[]): readonly Strip[] {
  let firstPanel = 1;
  return shares.map((panels, index) => {
    const last = index === shares.length - 1;
    const strip: Strip = { n: index + 1, part: shares.length === 1 ? "strip" : index === 0 ? "first-strip" : last ? "last-strip" : "middle-strip", panels, firstPanel, hasTab: !last };
    firstPanel += panels;
    return strip;
  });
}
