// What is wrong or risky about a post album's leaves and posts; faults of the covers have a file of their own.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, divideLength, isLess, longest, mm, multiplyLength, noLength, ratioOf } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { nearestWhole } from "../../units/rational.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findPostFaults } from "../posts.ts";
import { findCutFaults, findPiercingFaults } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import { findCoverFaults } from "./cover-findings.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

interface Evidence {
  readonly definition: Definition<"post-album">;
  readonly ledger: Ledger;
  readonly geometry: PostAlbumGeometry;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
}

/** All findings of a post album; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, geometry, parts, holes } = evidence;
  return [
    ...findCoverFaults(definition, geometry), ...scoreFaults(evidence), ...guardFaults(evidence), ...postFaults(evidence), ...lotFaults(evidence),
    ...findCutFaults(parts, definition), ...findPiercingFaults(piercingsOf(evidence), definition),
    ...findEdgeFaults(holes, parts, definition), ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
  ];
}

/** A leaf bends at its score only where nothing holds it: between the edge of the guards and the edge of the board that lies on it. */
function scoreFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { hingeWidth, jointGap, scores, scoreSpacing, leafThickness, leafWidth, pageWidth } = geometry;
  const size = (length: Length) => printLength(length, definition.units);
  const thickness = (length: Length) => printThickness(length, definition.units);
  const found: Finding[] = [];
  const [first, boardEdge] = [scores[0]!, addLengths(hingeWidth, jointGap)];
  const isHeld = !isLess(hingeWidth, first);
  if (isHeld || isLess(boardEdge, first)) {
    found.push({
      code: "leaf-cannot-flex", severity: isHeld ? "stop" : "warn", where: "first score", path: "book/scores/first",
      message: `the first score lies ${size(first)} from the spine edge; guards and hinge strip end at ${size(hingeWidth)}, the board begins at ${size(boardEdge)}`,
      consequence: isHeld ? "guards and hinge strip hold the leaf down at its score, so it cannot bend there" : "the leaf bends at the edge of the guards instead, where it is not scored, and cracks",
      remedy: `put the first score between ${size(hingeWidth)} and ${size(boardEdge)} from the spine edge, or leave it out to have it in the middle`,
    });
  }
  if (!isLess(noLength, pageWidth)) {
    found.push({
      code: "hinge-too-wide", severity: "stop", where: "leaf", path: "book/leaf/width",
      message: `the last score would lie outside the leaf, which is ${size(leafWidth)} wide`,
      consequence: "nothing is left that could turn", remedy: "make the leaf wider or the hinge narrower",
    });
  }
  const least = multiplyLength(leafThickness, 3);
  if (scores.length > 1 && isLess(scoreSpacing, least)) {
    found.push({
      code: "scores-too-close", severity: "warn", where: "score spacing", path: "book/scores/spacing",
      message: `score lines are ${thickness(scoreSpacing)} apart on card of ${thickness(leafThickness)}; less than three times its thickness (${thickness(least)})`,
      consequence: "the scores crush each other and the card breaks between them",
      remedy: `make the spacing at least ${thickness(least)}, or score only once`,
    });
  }
  if (scores.length > 1 && isLess(scoreSpacing, definition.units.step)) {
    found.push({
      code: "below-one-mark", severity: "stop", where: "score spacing", path: "book/scores/spacing",
      message: `the score spacing is ${thickness(scoreSpacing)}, less than one mark of the ruler (${thickness(definition.units.step)})`,
      consequence: "two score lines would fall on the same mark",
      remedy: `make the score spacing at least ${thickness(definition.units.step)}, or choose a finer step under "units"`,
    });
  }
  return found;
}

/** A wedge that can be seen: more than 2 mm, and more than a tenth of the leaves' thickness. Common practice, no source. */
const visibleWedge = mm(2);

function guardFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { wedge, leafStack, inserts, guardThickness, guardLayers, guardCardThickness, leaves } = geometry;
  const thickness = (length: Length) => printThickness(length, definition.units);
  const isThin = isLess(noLength, wedge);
  const size = isThin ? wedge : multiplyLength(wedge, -1);
  if (!isLess(longest(visibleWedge, divideLength(leafStack, 10)), size)) return [];
  const path = definition.book["guard layers"] === null ? "materials/guard card" : "book/guard layers";
  const numbers = `what is mounted between two leaves is ${thickness(inserts)} thick, the guard there ${thickness(guardThickness)} (${guardLayers} × ${thickness(guardCardThickness)})`;
  const inAll = `with ${leaves - 1} openings the leaves are ${thickness(size)} ${isThin ? "thicker" : "thinner"} at the fore-edge than at the hinge`;
  const remedy = `${strips(geometry, isThin)}, or take guard card of another thickness`;
  return [isThin
    ? { code: "guards-too-thin", severity: "warn", where: "guard", path, message: `${numbers}; ${inAll}`, consequence: "the album gapes at the fore-edge and the covers stand apart like a wedge", remedy }
    : { code: "guards-too-thick", severity: "warn", where: "guard", path, message: `${numbers}; ${inAll}`, consequence: "the leaves sag towards the fore-edge and the covers press on what is mounted", remedy }];
}

/** How many strips more or fewer take the wedge away. */
function strips({ wedge, inserts, guardCardThickness, leaves }: PostAlbumGeometry, isThin: boolean): string {
  const openings = leaves - 1;
  const all = Math.max(1, Math.abs(Number(nearestWhole(ratioOf(wedge, guardCardThickness)))));
  if (all >= openings) return `take ${nearestWhole(ratioOf(inserts, guardCardThickness))} strips for each guard`;
  const every = Math.max(1, Math.floor(openings / all));
  const which = ["", "single", "second", "third"][every] ?? `${every}th`;
  return `${isThin ? "put one strip more into" : "leave one strip out of"} every ${which} opening`;
}

function postFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { lengths, extensions } = definition.book.posts;
  return findPostFaults({ ...geometry.posts, units: definition.units, lengths, extensions, rowHeight: geometry.leafHeight, thinner: "fewer leaves or thinner guards" });
}

/** Covers are pierced one by one, leaves and guards in lots; nothing bars the way from the spine side. */
function piercingsOf({ geometry, parts, holes }: Evidence) {
  const piercing = (where: string, id: string, thickness: Length) => ({
    where, part: parts.find((part) => part.id === id)!, holes: holes.filter((hole) => hole.part === id), from: ["head", "tail", "spine-side edge"] as const, thickness,
  });
  return [piercing("covers", "hinge-strip", geometry.coverAtHinge), piercing("leaves", "leaf", multiplyLength(geometry.leafThickness, geometry.lots.leaves))];
}

/** The whole stack is seldom drilled in one go: worth knowing before a class queues at the drill. */
function lotFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { drillDepth } = definition.tools;
  if (!drillDepth || compareLengths(geometry.leafStack, drillDepth) <= 0) return [];
  const lots = Math.ceil(geometry.leaves / geometry.lots.leaves) + Math.ceil(geometry.guardStrips / geometry.lots.guards);
  return [{
    code: "pierced-in-lots", severity: "note", where: "leaves", path: "tools/drill depth",
    message: `leaves and guards together are ${printThickness(geometry.leafStack, definition.units)} thick, the tool goes through ${printThickness(drillDepth, definition.units)}: ${lots} lots`,
    consequence: "every lot needs the template and its own turn at the tool",
    remedy: "plan for it, or take a longer bit",
  }];
}
