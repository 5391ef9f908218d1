// What is wrong or risky about a long-stitch binding, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { isLess, mm, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findThreadFaults } from "../sewing/findings.ts";
import type { Thread } from "../sewing/types.ts";
import { findTextBlockFaults, findThickSections } from "../text-block/findings.ts";
import { findEndStationFaults, findStationFaults } from "../text-block/stations.ts";
import { findCutFaults } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import type { LongStitchGeometry } from "./geometry.ts";

interface Evidence {
  readonly definition: Definition<"long-stitch">;
  readonly ledger: Ledger;
  readonly geometry: LongStitchGeometry;
  readonly thread: Thread;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
}

/** All findings of a long-stitch binding; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, geometry, thread, parts, holes } = evidence;
  return [
    ...stitchFaults(evidence), ...bridgeFaults(evidence), ...coverFaults(evidence), ...flapFaults(evidence),
    ...findTextBlockFaults(geometry.text, definition, ledger), ...findThickSections(geometry.text, definition),
    ...findStationFaults(geometry.stations, definition, "book/sewing", ledger), ...findEndStationFaults(geometry.stationEnds, definition, "book/sewing"),
    ...findThreadFaults(thread, definition.book.thread.needleful, definition, "book/thread/needleful"),
    ...findEdgeFaults(holes.filter(({ part }) => part === "cover"), parts, definition, { path: "book/sewing", remedy: "set the end stations further in, or take thinner thread" }),
    ...findCutFaults(parts, definition), ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
  ];
}

/** A stitch that lies free outside is caught by everything the longer it is: common practice, no source. */
const longestStitch = mm(80);

function stitchFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  if (!isLess(longestStitch, geometry.longStitch)) return [];
  return [{
    code: "stitch-too-long", severity: "warn", where: "long stitches", path: "book/sewing/long stitches",
    message: `a long stitch is ${size(geometry.longStitch)} long, more than ${size(longestStitch)}`,
    consequence: "it sags and catches on things, and the fold gapes beside it",
    remedy: "sew more long stitches, or make the inside stitches longer",
  }];
}

/** Paper between two holes that is narrower than the holes tears like a row of perforations: common practice, no source. */
function bridgeFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const { sectionPitch, holeDiameter, openings } = geometry;
  const bridge = subtractLength(sectionPitch, holeDiameter);
  if (!isLess(bridge, holeDiameter)) return [];
  const runInto = !isLess(noLength, bridge);
  const where = openings === "slits" ? "the two end rows" : "every row";
  return [{
    code: "holes-perforate", severity: runInto ? "stop" : "warn", where: "spine", path: "book/text block/folded sheets",
    message: runInto
      ? `sections of ${thickness(sectionPitch)} want holes of ${thickness(holeDiameter)} closer than they are wide`
      : `between the holes of two sections ${thickness(bridge)} of cover is left, the holes are ${thickness(holeDiameter)} wide`,
    consequence: runInto ? "the holes of a row run into each other" : `the spine tears along ${where} as along a row of perforations`,
    remedy: `take more folded sheets in a section, or thinner thread${openings === "holes" ? "; slits leave only the two end rows" : ""}`,
  }];
}

/** Thinner covers are cut by the thread, thicker ones do not fold sharply: common practice, no source. */
const thinnestBare = mm("0.6");
const thickestCover = mm(3);
/** A spine as narrow as the sections does not shut: common practice, no source. */
const leastEase = mm(1);

function coverFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const { coverThickness, strip, ease, folds } = geometry;
  const found: Finding[] = [];
  if (!strip && isLess(coverThickness, thinnestBare)) {
    found.push({
      code: "spine-not-reinforced", severity: "warn", where: "cover", path: "book/cover/reinforced",
      message: `the cover is ${thickness(coverThickness)} thick and its spine is not reinforced; below ${thickness(thinnestBare)} it should be`,
      consequence: "the long stitches cut from hole to hole when the book is opened",
      remedy: "reinforce the spine, or take a thicker cover",
    });
  }
  if (isLess(thickestCover, coverThickness)) {
    found.push({
      code: "cover-too-thick", severity: "warn", where: "cover", path: "materials/cover",
      message: `the cover is ${thickness(coverThickness)} thick, more than ${thickness(thickestCover)}`,
      consequence: "it does not fold sharply beside the spine, and the book springs open",
      remedy: "take a thinner cover, or pare it along the folds",
    });
  }
  if (isLess(ease, leastEase)) {
    found.push({
      code: "spine-without-ease", severity: "warn", where: "cover", path: "book/cover/ease",
      message: `the spine has ${thickness(ease)} of ease; 1 to 2 mm are usual`,
      consequence: "the covers stand open, because sections swell as they are used",
      remedy: `give it at least ${thickness(leastEase)}`,
    });
  }
  const least = multiplyLength(coverThickness, 3);
  const close = folds.slice(1).find(({ at }, k) => isLess(subtractLength(at, folds[k]!.at), least));
  if (close) {
    found.push({
      code: "scores-too-close", severity: "warn", where: "cover", path: "materials/cover",
      message: `the ${close.name} lies ${printLength(subtractLength(close.at, folds[folds.indexOf(close) - 1]!.at), definition.units)} from the fold before it, less than three times the cover’s ${thickness(coverThickness)}`,
      consequence: "the second fold breaks into the first, and the cover between them does not lie flat",
      remedy: "take a thinner cover, or more sections",
    });
  }
  return found;
}

function flapFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { flap, frontWidth } = geometry;
  if (!flap || isLess(flap.width, frontWidth)) return [];
  return [{
    code: "flap-beyond-spine", severity: "stop", where: "flap", path: "book/cover/flap width",
    message: `the flap is ${printLength(flap.width, definition.units)} wide, the front cover only ${printLength(frontWidth, definition.units)}`,
    consequence: "the flap stands out beyond the spine",
    remedy: "make the flap narrower than the front cover; half of it is usual",
  }];
}
