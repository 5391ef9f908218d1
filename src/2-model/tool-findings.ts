// Findings about the tools that the author has: cuts longer than ruler or board cutter, holes out of the punch's reach, layers too thick for the drill.
import type { Definition } from "../1-definition/types.ts";
import { isLess, subtractLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { printLength, printSizes, printThickness } from "../units/print-length.ts";
import type { Finding, Hole, Part } from "./types.ts";

/** An edge of a part. */
export type Edge = "head" | "tail" | "spine-side edge" | "far edge";

/** What is pierced in one go: holes through layers of which one part stands for all, and the edges that a punch can come in from. */
export interface Piercing {
  readonly where: string;
  readonly part: Part;
  readonly holes: readonly Hole[];
  readonly from: readonly Edge[];
  /** All layers together. */
  readonly thickness: Length;
}

/**
 * Parts with an edge longer than a tool that the author names. Such a cut is made in two goes that never quite meet.
 * What has no grain is sold by length, ribbon, tape and thread, and is cut across only.
 */
export function findCutFaults(parts: readonly Part[], definition: Definition): readonly Finding[] {
  const { rulerLength, cutterLength } = definition.tools;
  const cut = parts.filter((part) => !part.readyMade && part.grain !== "none");
  const beyond = (limit: Length | null): readonly Part[] => (limit ? cut.filter((part) => isLess(limit, longerSide(part))) : []);
  const isCutBy = (limit: Length | null, tooLong: readonly Part[]): boolean => limit !== null && tooLong.every((part) => !isLess(limit, longerSide(part)));
  const listed = (tooLong: readonly Part[]): string => tooLong.map((part) => `${part.name} (${printSizes(part.height, part.width, definition.units)})`).join(", ");
  const found: Finding[] = [];
  const beyondRuler = beyond(rulerLength);
  if (rulerLength && beyondRuler.length > 0) {
    found.push({
      code: "longer-than-tool", severity: isCutBy(cutterLength, beyondRuler) ? "note" : "warn", where: "steel ruler", path: "tools/ruler length",
      message: `the ruler is ${printLength(rulerLength, definition.units)} long; longer than it: ${listed(beyondRuler)}`,
      consequence: "measured or cut in two goes, an edge gets a kink and the marks of the second half are off",
      remedy: isCutBy(cutterLength, beyondRuler) ? "cut these in the board cutter, and measure them with a tape measure laid along the edge" : "borrow a longer ruler, or have these parts cut where the sheets are sold",
    });
  }
  const beyondCutter = beyond(cutterLength);
  if (cutterLength && beyondCutter.length > 0) {
    found.push({
      code: "longer-than-tool", severity: isCutBy(rulerLength, beyondCutter) ? "note" : "warn", where: "board cutter", path: "tools/cutter length",
      message: `the board cutter cuts ${printLength(cutterLength, definition.units)}; longer than that: ${listed(beyondCutter)}`,
      consequence: "a cut made in two goes has a step in it",
      remedy: isCutBy(rulerLength, beyondCutter) ? "cut these by hand along the steel ruler" : "cut these by hand along a steel ruler that is longer than the cut, or have them cut where the sheets are sold",
    });
  }
  return found;
}

function longerSide(part: Part): Length {
  return isLess(part.height, part.width) ? part.width : part.height;
}

/** Holes further from every edge than the author's punch reaches, and layers thicker than the drill goes through in one go. */
export function findPiercingFaults(piercings: readonly Piercing[], definition: Definition): readonly Finding[] {
  const { punchReach, drillDepth } = definition.tools;
  const found: Finding[] = [];
  for (const piercing of piercings) {
    const tooFar = punchReach ? piercing.holes.map((hole) => ({ hole, distance: fromNearestEdge(hole, piercing) })).filter(({ distance }) => isLess(punchReach, distance)) : [];
    const furthest = tooFar.reduce<(typeof tooFar)[number] | null>((most, each) => (!most || isLess(most.distance, each.distance) ? each : most), null);
    if (punchReach && furthest) {
      found.push({
        code: "out-of-punch-reach", severity: "warn", where: piercing.where, path: "tools/punch reach",
        message: `hole ${furthest.hole.id} is ${printLength(furthest.distance, definition.units)} from the nearest edge that a punch can come in from, the punch reaches ${printLength(punchReach, definition.units)}`,
        consequence: "the punch does not get to the mark, and a hole made as far in as it goes is in the wrong place",
        remedy: "pierce with a hollow punch and mallet or a drill, which reach everywhere, or move the holes",
      });
    }
    if (drillDepth && isLess(drillDepth, piercing.thickness)) {
      found.push({
        code: "thicker-than-drill", severity: "warn", where: piercing.where, path: "tools/drill depth",
        message: `the layers are ${printThickness(piercing.thickness, definition.units)} thick, the tool goes through ${printThickness(drillDepth, definition.units)} in one go`,
        consequence: "the hole does not come through, or wanders when it is finished from the other side",
        remedy: "pierce the layers in thinner lots, all marked with the same template, or take a longer bit",
      });
    }
  }
  return found;
}

function fromNearestEdge(hole: Hole, { part, from }: Piercing): Length {
  const distances: Readonly<Record<Edge, Length>> = {
    "head": hole.along, "tail": subtractLength(part.height, hole.along), "spine-side edge": hole.across, "far edge": subtractLength(part.width, hole.across),
  };
  return from.map((edge) => distances[edge]).reduce((least, each) => (isLess(each, least) ? each : least));
}
