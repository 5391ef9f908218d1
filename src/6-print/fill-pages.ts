// Shares the steps of a handout out to pages, so that no page stays half empty that need not be, and no sequence is torn apart.

/** How the steps of a page are set: as usual, a little closer, or the one step alone on its page with its drawing so many times as large. */
export type StepWay = "usual" | "close" | number;

/** The ways that are tried. */
export const stepWays: readonly StepWay[] = ["usual", "close", 1.1, 1.2, 1.3];

/** The heights of one step in millimetres, one for each of `stepWays`. */
export interface StepHeights {
  /** From the step before to this one when both stand on one page, with the heading of a stage where one begins. */
  readonly gap: number;
  /** What stands above it when it begins a page: the heading of its stage. */
  readonly lead: number;
  readonly whole: readonly number[];
  /** From its title to the end of what must be done; its check, its mistake and its wait may follow on the next page. Null where they may not. */
  readonly work: readonly number[] | null;
}

/** What is known of a handout before its steps are shared out. */
export interface StepMeasures {
  readonly pageHeight: number;
  /** How far the page is filled on which the steps begin. */
  readonly before: number;
  readonly steps: readonly StepHeights[];
}

/** The steps of one page. */
export interface PageOfSteps {
  readonly first: number;
  readonly last: number;
  readonly way: StepWay;
  /** The check of the last step, and what follows it, stands on the next page. */
  readonly parts: boolean;
  /** It begins where the page before it ends, and is not told to begin a page: the first one, and one behind a step that is longer than a page. */
  readonly isLoose: boolean;
}

interface Sharing {
  readonly cost: number;
  readonly pages: readonly PageOfSteps[];
}

/** What each page costs, and what is paid to fill it, in pages. A page that is more than half empty is worth two. */
const prices = { page: 1, emptiness: 0.4, halfEmpty: 2, stillEmptier: 10, close: 0.2, parted: 0.9, larger: 0.1, timesLarger: 0.5 } as const;
/** Kept free on each page: the browser rounds it to whole dots. */
const spare = 1.5;
/** The line that says which step goes on, in millimetres. */
const continuedLine = 5.5;

/** The cheapest way to share the steps out, from the last one back; the first page goes on below what stands before the steps where they fit. */
export function fillPages({ pageHeight, before, steps }: StepMeasures): readonly PageOfSteps[] {
  const room = pageHeight - spare;
  const isLong = (step: number): boolean => steps[step]!.whole[0]! > room;
  const known = new Map<string, Sharing>();
  const from = (first: number, carried: number, above: number): Sharing => {
    if (first === steps.length) return { cost: 0, pages: [] };
    const key = `${first} ${carried > 0} ${above}`;
    const found = known.get(key) ?? cheapest(first, carried, above);
    known.set(key, found);
    return found;
  };
  const cheapest = (first: number, carried: number, above: number): Sharing => {
    const offers: Sharing[] = [];
    const offer = (page: Omit<PageOfSteps, "isLoose">, used: number, extra: number, rest: number): void => {
      const after = from(page.last + 1, rest, 0);
      // Behind the last step the handout goes on: its page is filled by other things.
      const emptiness = page.last === steps.length - 1 ? 0 : priceOfEmptiness(used / room);
      offers.push({ cost: prices.page + emptiness + extra + after.cost, pages: [{ ...page, isLoose: first === 0 ? above > 0 : isLong(first - 1) }, ...after.pages] });
    };
    stepWays.forEach((way, index) => {
      let used = above + carried;
      const extra = way === "usual" ? 0 : way === "close" ? prices.close : prices.larger + prices.timesLarger * (way - 1);
      for (let last = first; last < steps.length; last += 1) {
        const step = steps[last]!;
        used += last === first && carried + above === 0 ? step.lead : step.gap;
        const work = step.work?.[index];
        if (typeof way !== "number" && work !== undefined && last < steps.length - 1 && used + work <= room) {
          offer({ first, last, way, parts: true }, used + work, extra + prices.parted, step.whole[0]! - step.work![0]! + continuedLine);
        }
        used += step.whole[index]!;
        // A step longer than a page breaks where it must, and the next one may go on below it.
        if (isLong(last) && last === first) used %= room;
        if (used > room) break;
        offer({ first, last, way, parts: false }, used, extra, 0);
        if (typeof way === "number") break;
      }
    });
    // It does not fit below what was carried over: this must not be chosen.
    if (offers.length === 0) offer({ first, last: first, way: "usual", parts: false }, room, steps.length, 0);
    return offers.reduce((best, each) => (each.cost < best.cost ? each : best));
  };
  const below = before > 0 && before + (steps[0]?.gap ?? 0) + Math.min(steps[0]?.whole[0] ?? 0, steps[0]?.work?.[0] ?? Infinity) <= room ? from(0, 0, before) : null;
  const anew = from(0, 0, 0);
  return below && below.cost <= anew.cost + priceOfEmptiness(before / room) + (before > 0 ? prices.page : 0) ? below.pages : anew.pages;
}

/** The lower edge of a box stands a little below its ink. */
const half = 0.52;

function priceOfEmptiness(share: number): number {
  return share < half ? prices.halfEmpty + prices.stillEmptier * (half - share) : prices.emptiness * (1 - share);
}
