// Sewing stations along the fold of a section, as running dimensions from the head.
import { tapeLimits } from "../../1-definition/text-block-keys.ts";
import type { PlainStationKeys, SupportedStationKeys } from "../../1-definition/text-block-keys.ts";
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, inches, isLess, mm, multiplyLength, noLength, roundToMark, roundUpToMark, subtractLength, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/print-length.ts";
import { runningMarks } from "../../units/rounding.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Finding } from "../types.ts";

/** A hole in the fold of every section. */
export interface Station {
  /** As templates, figures and steps call it: "head kettle", "tape 2 head side", "station 3". */
  readonly name: string;
  readonly kind: "kettle" | "tape edge" | "plain";
  /** The tape it belongs to, counted from the head; null for other stations. */
  readonly tape: number | null;
  /** From the head of the finished page, on a ruler mark. */
  readonly at: Length;
  /** The same before rounding. */
  readonly exactAt: Length;
}

/** A tape across the spine, between the two holes at its edges. */
export interface TapePlace {
  readonly name: string;
  /** Its two holes, from the head of the page. */
  readonly headSide: Length;
  readonly tailSide: Length;
}

type Known = Pick<Definition, "defaulted" | "units">;

/** One tape for every four inches of the page and one more, to the nearest; source: Bailey 1916, general specification 20. */
function usualTapes(pageHeight: Length): number {
  const quarters = Math.round(toMillimetres(pageHeight) / toMillimetres(inches(4)));
  return Math.min(tapeLimits.most, Math.max(tapeLimits.least, quarters + 1));
}

/**
 * Stations for sewing on tapes: a kettle near head and tail, two holes for each tape. The middles of the tapes stand evenly between the kettles,
 * or the outer ones at a given distance from them and the others evenly between. Each tape's first hole is rounded once from the head; its second
 * stands one tape width further, rounded up, so that no tape is pinched.
 */
export function placeTapes(definition: Known, keys: SupportedStationKeys, path: string, ledger: Ledger): { readonly stations: readonly Station[]; readonly tapes: readonly TapePlace[] } {
  const { step } = definition.units;
  const give = (name: keyof SupportedStationKeys, quantity: Length | number, meaning: string, source: string): void =>
    ledger.give(name, quantity, originAt(definition, `${path}/${name}`), { meaning, source });
  give("kettle from head", keys["kettle from head"], "head of the page to the kettle station", "Adam 1903, ch. II: 1 cm");
  give("kettle from tail", keys["kettle from tail"], "tail of the page to the kettle station", "Adam 1903, ch. II: twice the distance at the head");
  const count = keys.tapes ?? usualTapes(ledger.length("page height"));
  ledger.give("tapes", count, keys.tapes === null ? "default" : "given", { meaning: "tapes that the sections are sewn on", source: "Bailey 1916, general specification 20: three for 8 in, four for 12 in, and so on; Adam 1903, ch. II: two only for the smallest books" });
  give("tape width", keys["tape width"], "width of a tape", "common practice, no source");
  ledger.compute("kettle span", "page height - kettle from head - kettle from tail", { meaning: "from kettle station to kettle station", source: "geometry" });
  const outer = keys["outer tape from kettle"];
  if (outer) {
    ledger.give("outer tape from kettle", outer, "given", { meaning: "kettle station to the middle of the tape beside it", source: "" });
    ledger.compute("tape pitch", "(kettle span - 2 * outer tape from kettle) / (tapes - 1)", { meaning: "middle of one tape to the middle of the next", source: "geometry" });
  } else {
    ledger.compute("tape pitch", "kettle span / (tapes + 1)", { meaning: "middle of one tape to the middle of the next", source: "Adam 1903, ch. II: what is left between the kettles is divided equally" });
  }
  const pitch = ledger.length("tape pitch");
  const first = addLengths(ledger.length("kettle from head"), outer ?? pitch);
  const width = ledger.length("tape width");
  const half = divideLength(width, 2);
  const tapes = Array.from({ length: count }, (_, index) => {
    const middle = addLengths(first, multiplyLength(pitch, index));
    const exact = { headSide: subtractLength(middle, half), tailSide: addLengths(middle, half) };
    const headSide = roundToMark(exact.headSide, step);
    return { name: `tape ${index + 1}`, exact, headSide, tailSide: addLengths(headSide, roundUpToMark(width, step)) };
  });
  const kettle = (end: "head" | "tail", exactAt: Length): Station => ({ name: `${end} kettle`, kind: "kettle", tape: null, at: roundToMark(exactAt, step), exactAt });
  const stations: readonly Station[] = [
    kettle("head", ledger.length("kettle from head")),
    ...tapes.flatMap(({ name, exact, headSide, tailSide }, index): readonly Station[] => [
      { name: `${name} head side`, kind: "tape edge", tape: index + 1, at: headSide, exactAt: exact.headSide },
      { name: `${name} tail side`, kind: "tape edge", tape: index + 1, at: tailSide, exactAt: exact.tailSide },
    ]),
    kettle("tail", subtractLength(ledger.length("page height"), ledger.length("kettle from tail"))),
  ];
  return { stations, tapes: tapes.map(({ name, headSide, tailSide }) => ({ name, headSide, tailSide })) };
}

/** Stations without supports: the outer ones at their distances from head and tail, the others evenly between; "station 1" is at the head. */
export function placeStations(definition: Known, keys: PlainStationKeys, path: string, source: string, ledger: Ledger): readonly Station[] {
  const give = (name: keyof PlainStationKeys, quantity: Length | number, meaning: string): void =>
    ledger.give(name, quantity, originAt(definition, `${path}/${name}`), { meaning, source });
  give("stations", keys.stations, "holes in the fold of each section");
  give("station from head", keys["station from head"], "head of the page to the first station");
  give("station from tail", keys["station from tail"], "tail of the page to the last station");
  ledger.compute("station pitch", "(page height - station from head - station from tail) / (stations - 1)", { meaning: "from one station to the next", source: "geometry" });
  const exact = Array.from({ length: keys.stations }, (_, index) =>
    addLengths(ledger.length("station from head"), multiplyLength(ledger.length("station pitch"), index)));
  return runningMarks(exact, definition.units.step).map((at, index) => ({ name: `station ${index + 1}`, kind: "plain", tape: null, at, exactAt: exact[index]! }));
}

/** Stations nearer to each other than this tear into one hole: common practice, no source. */
const leastGap: Length = mm(3);

/** Stations out of order or off the page cannot be pierced; such that almost touch tear out. `path` is the mapping that holds their keys. */
export function findStationFaults(stations: readonly Station[], definition: Known, path: string, ledger: Ledger): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const ends = [noLength, ...stations.map(({ at }) => at), ledger.length("page height")];
  const names = ["the head of the page", ...stations.map(({ name }) => name), "the tail of the page"];
  const gaps = ends.slice(1).map((end, index) => ({ between: `${names[index]} and ${names[index + 1]}`, gap: subtractLength(end, ends[index]!) }));
  const worst = gaps.reduce((least, each) => (isLess(each.gap, least.gap) ? each : least));
  if (!isLess(worst.gap, leastGap)) return [];
  const overlap = !isLess(noLength, worst.gap);
  return [{
    code: "stations-too-close", severity: overlap ? "stop" : "warn", where: "sewing stations", path,
    message: overlap ? `there is no room between ${worst.between}` : `${worst.between} are ${size(worst.gap)} apart; at least ${size(leastGap)} are needed`,
    consequence: overlap ? "the stations would lie on each other or off the page" : "the paper between the holes tears",
    remedy: "take fewer or narrower supports, fewer stations, or smaller distances from head and tail",
  }];
}

/** Nearer to head or tail the thread tears out of the fold: common practice, no source, 10 to 20 mm. */
const leastEnd: Length = mm(8);

/** End stations without a kettle that lie too near to head or tail. `path` is the mapping that holds their keys. */
export function findEndStationFaults(ends: { readonly head: Length; readonly tail: Length }, { units }: Known, path: string): readonly Finding[] {
  return (["head", "tail"] as const).filter((end) => isLess(ends[end], leastEnd)).map((end) => ({
    code: "station-near-edge", severity: "warn", where: "sewing stations", path: `${path}/station from ${end}`,
    message: `the station at the ${end} is ${printLength(ends[end], units)} from the edge of the pages; at least ${printLength(leastEnd, units)} are needed`,
    consequence: "the thread tears out of the fold when the book is opened",
    remedy: "set it further in; 10 to 20 mm are usual",
  }));
}
