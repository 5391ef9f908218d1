// What is wrong or risky about a pamphlet, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, isLess, mm, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findThreadFaults } from "../sewing/findings.ts";
import type { Thread } from "../sewing/types.ts";
import { findCutFaults } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import type { PamphletGeometry } from "./geometry.ts";

/** What the findings are drawn from. */
interface Evidence {
  readonly definition: Definition<"pamphlet">;
  readonly ledger: Ledger;
  readonly geometry: PamphletGeometry;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
  readonly thread: Thread;
}

/** All findings of a pamphlet; `stop` means that it cannot be made as defined. */
export function findFaults({ definition, ledger, geometry, parts, holes, thread }: Evidence): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const { stations, pageHeight, endDistance, holeDiameter, sectionThickness, creep, square, isTrimmed, textWidth } = geometry;
  const found: Finding[] = [];
  if (!isLess(multiplyLength(endDistance, 2), pageHeight) || stations.some((at, k) => k > 0 && !isLess(stations[k - 1]!, at))) {
    return [{
      code: "stations-cross", severity: "stop", where: "holes", path: "book/holes/end distance",
      message: `holes ${size(endDistance)} from head and tail do not leave room for others on a fold of ${size(pageHeight)}`,
      consequence: "the holes would lie on each other",
      remedy: "make the end distance less than a third of the page height",
    }];
  }
  const spacing = stations.slice(1).map((at, k) => subtractLength(at, stations[k]!)).reduce((least, next) => (isLess(next, least) ? next : least));
  if (isLess(spacing, mm(12))) {
    found.push({
      code: "fold-holes-too-close", severity: "warn", where: "holes", path: "book/holes",
      message: `two holes are only ${size(spacing)} apart`,
      consequence: "the fold is weakened there and may tear",
      remedy: "take three holes in place of five, or move the outer holes outwards",
    });
  }
  if (compareLengths(multiplyLength(endDistance, 3), pageHeight) > 0) {
    found.push({
      code: "ends-unsewn", severity: "warn", where: "holes", path: "book/holes/end distance",
      message: `head and tail are not sewn over ${size(endDistance)} each, more than a third of the fold's ${size(pageHeight)}`,
      consequence: "the leaves gape at head and tail and can be pulled off there",
      remedy: "move the outer holes outwards",
    });
  }
  if (isLess(mm(5), sectionThickness)) {
    found.push({
      code: "section-springs-open", severity: "warn", where: "section", path: "book/sheets",
      message: `the section is ${thickness(sectionThickness)} thick; more than 5 mm does not fold well`,
      consequence: "the book springs open, and the innermost pages become much narrower than the outermost",
      remedy: "take fewer sheets or thinner paper, or a binding of several sections",
    });
  }
  if (!isTrimmed && isLess(noLength, creep) && !isLess(creep, square)) {
    found.push({
      code: "creep-beyond-square", severity: "warn", where: "cover", path: "book/trim",
      message: `the innermost leaf may stand out ${thickness(creep)} beyond the outermost, as much as the cover's square of ${thickness(square)} or more`,
      consequence: "seen from the fore-edge, the middle pages form a step that bends and soils",
      remedy: "trim the fore-edge, or give the cover a wider square",
    });
  }
  if (!isLess(addLengths(creep, creep), textWidth)) {
    found.push({
      code: "creep-eats-page", severity: "stop", where: "pages", path: "book/page/width",
      message: `trimming takes ${thickness(creep)} of a page that is ${size(geometry.pageWidth)} wide`,
      consequence: "nothing is left to write on",
      remedy: "take fewer sheets, thinner paper or a wider page",
    });
  }
  return [
    ...found,
    ...findEdgeFaults(holes, parts, definition, { path: "book/holes", remedy: `move the holes inwards; ${thickness(holeDiameter)} holes need more paper around them` }),
    ...findCutFaults(parts, definition), ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
    ...findThreadFaults(thread, definition.book.thread.needleful, definition, "book/thread/needleful"),
  ];
}
