// What is wrong or risky about a link stitch, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, isLess, mm, multiplyLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findCornerFaults, findMeetingTurnIns } from "../covering-findings.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findThreadFaults } from "../sewing/findings.ts";
import type { Thread } from "../sewing/types.ts";
import { findTextBlockFaults, findThickSections } from "../text-block/findings.ts";
import { findEndStationFaults, findStationFaults } from "../text-block/stations.ts";
import { findCutFaults, findPiercingFaults } from "../tool-findings.ts";
import type { Piercing } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import type { LinkStitchGeometry } from "./geometry.ts";

interface Evidence {
  readonly definition: Definition<"link-stitch">;
  readonly ledger: Ledger;
  readonly geometry: LinkStitchGeometry;
  readonly thread: Thread;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
}

/** All findings of a link stitch; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, geometry, parts, holes } = evidence;
  return [
    ...stationFaults(evidence), ...boardFaults(evidence), ...coveringFaults(evidence),
    ...findTextBlockFaults(geometry.text, definition, ledger), ...findThickSections(geometry.text, definition), ...findStationFaults(geometry.stations, definition, "book/sewing", ledger), ...findEndStationFaults(geometry.stationEnds, definition, "book/sewing"),
    ...findThreadFaults(evidence.thread, definition.book.thread.needleful, definition, "book/thread/needleful"),
    ...findEdgeFaults(holes.filter(({ part }) => part === "boards"), parts, definition, { path: "book/boards/hole distance", remedy: "set the holes further from the edge, or make them smaller" }),
    ...findCutFaults(parts, definition), ...findPiercingFaults([boardPiercing(evidence)], definition),
    ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
  ];
}

/** Each board is pierced by itself, covered and lined. */
function boardPiercing({ geometry, parts, holes }: Evidence): Piercing {
  return { where: "boards", part: parts.find(({ id }) => id === "boards")!, holes: holes.filter(({ part }) => part === "boards"), from: ["head", "tail", "spine-side edge"], thickness: geometry.coverThickness };
}

function stationFaults({ geometry }: Evidence): readonly Finding[] {
  const found: Finding[] = [];
  if (geometry.needles === 2 && geometry.stations.length % 2 === 1) {
    found.push({
      code: "stations-odd", severity: "stop", where: "sewing stations", path: "book/sewing/stations",
      message: `two needles work on pairs of stations, and ${geometry.stations.length} stations leave one over`,
      consequence: "the last station would have no thread",
      remedy: `take ${geometry.stations.length - 1 < 2 ? "" : `${geometry.stations.length - 1} or `}${geometry.stations.length + 1} stations, or one curved needle`,
    });
  }
  return found;
}

function boardFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const thickness = (length: Length): string => printThickness(length, definition.units);
  // At a hole thread lies once through it; when the next stitch is pulled under it, needle and thread pass beside it.
  const needed = multiplyLength(geometry.text.threadThickness, 2);
  if (!isLess(geometry.holeDiameter, needed)) return [];
  return [{
    code: "hole-too-small", severity: "warn", where: "board", path: "book/boards/hole diameter",
    message: `the holes of the boards are ${thickness(geometry.holeDiameter)} wide, the thread is ${thickness(geometry.text.threadThickness)} thick`,
    consequence: "needle and thread stick in the hole, and pulling tears the covering",
    remedy: `make the holes at least ${thickness(needed)} wide, or take thinner thread`,
  }];
}

function coveringFaults({ definition, geometry }: Evidence): readonly Finding[] {
  if (!geometry.covered) return [];
  const size = (length: Length): string => printLength(length, definition.units);
  const found: Finding[] = [];
  const least = isLess(geometry.boardHeight, geometry.boardWidth) ? geometry.boardHeight : geometry.boardWidth;
  found.push(...findMeetingTurnIns({ turnIn: geometry.turnIn, from: "two edges", over: "board", length: least }, definition.units));
  found.push(...findCornerFaults({ ...geometry, where: "covering", over: "board", thinner: "thinner board" }, definition.units));
  if (geometry.lining && !isLess(addLengths(geometry.lining.inset, mm(2)), geometry.turnIn)) {
    found.push({
      code: "lining-misses-turn-in", severity: "warn", where: "lining paper", path: "book/turn in",
      message: `the lining stops ${size(geometry.lining.inset)} from the board's edges, the turn-in reaches only ${size(geometry.turnIn)} in`,
      consequence: "the lining hardly covers the edge of the turn-in, and bare board shows between them",
      remedy: `make the turn-in at least ${size(addLengths(geometry.lining.inset, mm(5)))} deep`,
    });
  }
  return found;
}
