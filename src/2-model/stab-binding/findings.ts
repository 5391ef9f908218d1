// What is wrong or risky about a stab binding, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { compareLengths, divideLength, hypotenuse, isLess, mm, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findThreadFaults } from "../sewing/findings.ts";
import type { Thread } from "../sewing/types.ts";
import { findCutFaults, findPiercingFaults } from "../tool-findings.ts";
import type { Piercing } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import { drilledFrom } from "./geometry.ts";
import type { StabBindingGeometry, StabHole } from "./geometry.ts";

/** What the findings are drawn from. */
interface Evidence {
  readonly definition: Definition<"stab-binding">;
  readonly ledger: Ledger;
  readonly geometry: StabBindingGeometry;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
  readonly thread: Thread;
}

/** All findings of a stab binding; `stop` means that it cannot be made as defined. */
export function findFaults({ definition, ledger, geometry, parts, holes, thread }: Evidence): readonly Finding[] {
  return [
    ...holeFaults(definition, geometry), ...pageFaults(definition, geometry),
    ...findEdgeFaults(holes, parts, definition, { path: "book/holes", remedy: "give the holes a larger set-back and corner distance, or take a plainer pattern or thinner thread" }),
    ...findCutFaults(parts, definition), ...findPiercingFaults(drillingOf(geometry, parts), definition),
    ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
    ...findThreadFaults(thread, definition.book.thread.needleful, definition, "book/thread/needleful"),
  ];
}

/** A thick block is drilled, covers and leaves in one go; a thinner one is pierced with an awl, which reaches everywhere. */
function drillingOf({ thickness }: StabBindingGeometry, parts: readonly Part[]): readonly Piercing[] {
  if (!isLess(drilledFrom, thickness)) return [];
  return [{ where: "leaves and covers", part: parts.find(({ id }) => id === "leaf")!, holes: [], from: ["head", "tail", "spine-side edge"], thickness }];
}

function holeFaults(definition: Definition<"stab-binding">, geometry: StabBindingGeometry): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const all = [...geometry.holes, ...geometry.innerHoles];
  const least = multiplyLength(geometry.holeDiameter, 3);
  const close = pairsOf(all).map(([a, b]) => ({ a, b, apart: hypotenuse(subtractLength(a.along, b.along), subtractLength(a.across, b.across)) }))
    .filter(({ apart }) => isLess(apart, least)).reduce<{ a: StabHole; b: StabHole; apart: Length } | null>((worst, next) => (worst && !isLess(next.apart, worst.apart) ? worst : next), null);
  if (close) {
    const runTogether = !isLess(geometry.holeDiameter, close.apart);
    return [{
      code: "holes-too-close", severity: runTogether ? "stop" : "warn", where: "holes", path: "book/holes",
      message: `the middles of holes ${close.a.id} and ${close.b.id} are ${thickness(close.apart)} apart; holes of ${thickness(geometry.holeDiameter)} want at least ${thickness(least)}`,
      consequence: runTogether ? "they run into each other" : "the paper between them tears",
      remedy: "take fewer main holes, a larger set-back or corner distance, thinner thread or a plainer pattern",
    }];
  }
  if (!isLess(geometry.setBack, mm(6))) return [];
  return [{
    code: "set-back-too-small", severity: "warn", where: "holes", path: "book/holes/set back",
    message: `the line of holes is only ${size(geometry.setBack)} from the spine edge; 6 mm or 1/4 in is the least that is published`,
    consequence: "the thread tears out of the paper",
    remedy: "move the holes further from the spine edge; 10 to 15 mm is usual",
  }];
}

function pairsOf<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((a, index) => items.slice(index + 1).map((b) => [a, b] as const));
}

function pageFaults(definition: Definition<"stab-binding">, geometry: StabBindingGeometry): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const { usableWidth, width, blockThickness, flap, setBack } = geometry;
  const found: Finding[] = [];
  if (!isLess(noLength, usableWidth)) {
    return [{
      code: "no-usable-width", severity: "stop", where: "leaves", path: "book/leaf/width",
      message: `set-back and opening allowance take ${size(subtractLength(width, usableWidth))} of a leaf that is ${size(width)} wide`,
      consequence: "nothing is left to write on",
      remedy: "take wider leaves or a smaller set-back",
    }];
  }
  if (isLess(usableWidth, divideLength(width, 2))) {
    found.push({
      code: "usable-width-small", severity: "warn", where: "leaves", path: "book/leaf/width",
      message: `of ${size(width)} only ${size(usableWidth)} can be written on`,
      consequence: "the book is hard to read: a side-sewn book does not open flat",
      remedy: "take wider leaves or a smaller set-back",
    });
  }
  if (isLess(mm(20), blockThickness)) {
    found.push({
      code: "block-too-thick", severity: "warn", where: "leaves", path: "book/leaves",
      message: `the block is ${thickness(blockThickness)} thick; an awl goes straight through about 20 mm`,
      consequence: "the holes run slanting and come out beside the pattern on the back",
      remedy: "drill the holes, pierce it in several lots, or make two volumes",
    });
  }
  if (isLess(noLength, flap) && compareLengths(flap, subtractLength(width, setBack)) >= 0) {
    found.push({
      code: "flap-reaches-holes", severity: "warn", where: "cover", path: "book/cover/flap",
      message: `the flap of ${size(flap)} reaches the holes, ${size(subtractLength(width, setBack))} from the fore-edge`,
      consequence: "the cover is twice as thick where it is sewn, and the flap cannot be tucked",
      remedy: `make the flap narrower than ${size(subtractLength(width, setBack))}`,
    });
  }
  return found;
}
