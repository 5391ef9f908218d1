// What is wrong or risky about a concertina, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, isLess, mm, multiplyLength, noLength, shortest, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printSizes, printThickness } from "../../units/print-length.ts";
import { findCornerFaults, findMeetingTurnIns } from "../covering-findings.ts";
import { findDeviations, findGrainFaults } from "../findings.ts";
import { findCutFaults } from "../tool-findings.ts";
import type { Ledger } from "../ledger.ts";
import type { Finding, Part } from "../types.ts";
import type { ConcertinaGeometry } from "./geometry.ts";
import { scoredFrom } from "./strip.ts";

interface Evidence {
  readonly definition: Definition<"concertina">;
  readonly ledger: Ledger;
  readonly geometry: ConcertinaGeometry;
  readonly parts: readonly Part[];
  /** False when no join plan was found. */
  readonly planned: boolean;
}

/** All findings of a concertina; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, parts } = evidence;
  const unplanned = planFaults(evidence);
  // A strip in one piece that only stands in for a missing join plan is no part to judge.
  const judged = unplanned.length === 0 ? parts : parts.filter((part) => part.material !== "panel paper");
  return [
    ...unplanned, ...foldFaults(evidence), ...joinFaults(evidence), ...stripNotes(evidence), ...coverFaults(evidence), ...closureFaults(evidence),
    ...findCutFaults(judged, definition), ...findGrainFaults(judged, definition), ...findDeviations(ledger.values, definition),
  ];
}

function inPrint({ definition: { units } }: Evidence) {
  return {
    size: (length: Length): string => printLength(length, units),
    thickness: (length: Length): string => printThickness(length, units),
    sizes: (height: Length, width: Length): string => printSizes(height, width, units),
  };
}

/** No sheet holds two panels beside a tab. A panel higher than every sheet is told by the shared finding. */
function planFaults(evidence: Evidence): readonly Finding[] {
  const { definition, geometry, planned } = evidence;
  const { sheets } = definition.materials["panel paper"]!;
  const { size, sizes } = inPrint(evidence);
  const someIsHighEnough = sheets.some((sheet) => !isLess(sheet.height, geometry.panelHeight) || !isLess(sheet.width, geometry.panelHeight));
  if (planned || !(sheets.length === 0 || someIsHighEnough)) return [];
  const longest = size(geometry.sheet.across);
  return [{
    code: "strips-too-short", severity: "stop", where: "strip", path: sheets.length === 0 ? "book/panel/width" : "materials/panel paper",
    message: sheets.length === 0
      ? `${geometry.panels} panels ${size(geometry.panelWidth)} wide cannot be joined from strips of ${longest}, the longest that a usual sheet gives`
      : `${geometry.panels} panels of ${sizes(geometry.panelHeight, geometry.panelWidth)} cannot be joined from your sheets, ${sheets.map((sheet) => sizes(sheet.height, sheet.width)).join(", ")}`,
    consequence: "a strip after the first must hold two panels and a tab, or its join would lie on a crest, where it shows and catches",
    remedy: `name a sheet that is at least ${size(addLengths(multiplyLength(geometry.panelWidth, 2), geometry.tab))} across its grain, or make the panels narrower`,
  }];
}

function foldFaults(evidence: Evidence): readonly Finding[] {
  const { definition, geometry } = evidence;
  const { size, thickness } = inPrint(evidence);
  const found: Finding[] = [];
  if (definition.book.folding === "halving" && geometry.halving.length === 0) {
    const joined = geometry.strips.length > 1;
    found.push({
      code: "halving-impossible", severity: "stop", where: "folds", path: "book/folding",
      message: joined ? `the strip is joined from ${geometry.strips.length} pieces` : `${geometry.panels} panels are no power of two`,
      consequence: joined ? "a first strip that ends in a valley has an odd number of panels, and halving cannot find its folds" : "halving only finds 2, 4, 8, 16 or 32 panels of equal width",
      remedy: joined ? "name a sheet that holds the strip in one piece, or fold by scores" : "take 4, 8 or 16 panels, or fold by scores",
    });
  } else if (geometry.folding === "halving" && !isLess(geometry.paperThickness, scoredFrom)) {
    found.push({
      code: "halving-thick", severity: "warn", where: "folds", path: "book/folding",
      message: `the paper is ${thickness(geometry.paperThickness)} thick; from ${thickness(scoredFrom)} on it is counted as board`,
      consequence: "folded without a score it cracks along the fold, and the fold wanders",
      remedy: "fold by scores, or take thinner paper",
    });
  }
  const least = multiplyLength(geometry.paperThickness, 3);
  const narrowest = geometry.strips.length > 1 ? shortest(geometry.panelWidth, geometry.tab) : geometry.panelWidth;
  if (isLess(narrowest, least)) {
    found.push({
      code: "scores-too-close", severity: "warn", where: "folds", path: "materials/panel paper",
      message: `folds or edges are ${size(narrowest)} apart on paper of ${thickness(geometry.paperThickness)}; less than three times its thickness (${thickness(least)})`,
      consequence: "the folds crush each other and will not lie flat",
      remedy: "take thinner paper, wider panels or wider tabs",
    });
  }
  return found;
}

/** Below this a tab has too little surface to hold: common practice, no source. */
const leastTab = mm(8);
/** A book this much thicker at its spine side than at its fore-edge no longer lies flat: common practice, no source. */
const mostSwell = mm(1);

function joinFaults(evidence: Evidence): readonly Finding[] {
  const { geometry } = evidence;
  const { size, thickness } = inPrint(evidence);
  if (geometry.strips.length === 1) return [];
  const found: Finding[] = [];
  if (!isLess(multiplyLength(geometry.tab, 2), geometry.panelWidth)) {
    found.push({
      code: "tab-too-wide", severity: "stop", where: "tab", path: "book/join/tab",
      message: `a tab of ${size(geometry.tab)} covers half of a panel ${size(geometry.panelWidth)} wide or more`,
      consequence: "the panel gets stiff and shows the tab's edge through its front",
      remedy: "make the tab narrower; 10 to 12 mm is usual",
    });
  }
  if (isLess(geometry.tab, leastTab)) {
    found.push({
      code: "tab-too-narrow", severity: "warn", where: "tab", path: "book/join/tab",
      message: `the tab is ${size(geometry.tab)} wide, less than ${size(leastTab)}`,
      consequence: "the join opens when the strip is drawn out",
      remedy: "make the tab 10 to 12 mm wide",
    });
  }
  if (isLess(geometry.setBack, geometry.leastSetBack)) {
    found.push({
      code: "join-pinched", severity: "warn", where: "set back", path: "book/join/set back",
      message: `the edge of the next strip stays back ${thickness(geometry.setBack)}, the fold of a join takes up ${thickness(geometry.leastSetBack)}`,
      consequence: "the edge is pinched in the fold: the join stands open and the folds after it drift",
      remedy: `make the set back at least ${thickness(geometry.leastSetBack)}, or take thinner paper`,
    });
  }
  if (isLess(mostSwell, geometry.tabSwell)) {
    found.push({
      code: "tabs-swell", severity: "warn", where: "joins", path: "materials/panel paper",
      message: `${geometry.strips.length - 1} tabs make the folded strip ${thickness(geometry.tabSwell)} thicker at its spine side than at its fore-edge`,
      consequence: "the boards do not lie parallel when the book is shut",
      remedy: "take longer sheets, so that there are fewer joins, or thinner paper",
    });
  }
  return found;
}

function stripNotes(evidence: Evidence): readonly Finding[] {
  const { geometry } = evidence;
  const { size } = inPrint(evidence);
  const { sheet } = geometry;
  const found: Finding[] = [];
  if (sheet.sizeAssumed || sheet.grainAssumed) {
    found.push({
      code: "strips-assumed", severity: "note", where: "strip", path: "materials/panel paper",
      message: `the strips are planned up to ${size(sheet.across)} long${sheet.sizeAssumed ? ", because no sheet is named" : ""}${sheet.grainAssumed ? ", as if the grain of the sheet ran across that length" : ""}`,
      consequence: "if your paper differs, the strips, their number and the joins come out otherwise; folds across the grain crack and wander",
      remedy: `write ${[sheet.sizeAssumed ? "sheets" : "", sheet.grainAssumed ? "grain" : ""].filter((key) => key !== "").join(" and ")} under panel paper`,
    });
  }
  if (geometry.lastPanelGlued === "front") {
    found.push({
      code: "panels-odd", severity: "note", where: "panels", path: "book/panels",
      message: `${geometry.panels} panels are an odd number`,
      consequence: "the last panel is glued down with its front, the front board opens at one side and the back board at the other",
      remedy: `take ${geometry.panels - 1} or ${geometry.panels + 1} panels if the book shall open like a book`,
    });
  }
  return found;
}

/** Covering under the end panel's edge: less would let bare board show beside a panel that is glued a little askew. Common practice, no source. */
const leastUnder = mm(2);

function coverFaults(evidence: Evidence): readonly Finding[] {
  const { definition, geometry } = evidence;
  const { size, thickness } = inPrint(evidence);
  const found: Finding[] = [];
  const inside = subtractLength(geometry.turnIn, addLengths(geometry.boardThickness, geometry.coverThickness));
  const wanted = addLengths(geometry.square, leastUnder);
  if (isLess(inside, wanted)) {
    found.push({
      code: "turn-in-too-narrow", severity: "warn", where: "turn-in", path: "book/turn in",
      message: `a turn-in of ${size(geometry.turnIn)} reaches ${thickness(isLess(noLength, inside) ? inside : noLength)} over the inside of the board, the end panel begins ${size(geometry.square)} from its edge`,
      consequence: "bare board shows between covering and end panel",
      remedy: `make the turn-in at least ${size(addLengths(wanted, geometry.boardThickness, geometry.coverThickness))}`,
    });
  }
  const shortSide = shortest(geometry.boardHeight, geometry.boardWidth);
  found.push(...findMeetingTurnIns({ turnIn: geometry.turnIn, from: "two sides", over: "board", length: shortSide }, definition.units));
  found.push(...findCornerFaults({ ...geometry, where: "covering", over: "board", thinner: "thinner boards" }, definition.units));
  return found;
}

function closureFaults(evidence: Evidence): readonly Finding[] {
  const { geometry } = evidence;
  const { size, thickness } = inPrint(evidence);
  const { closure, boardHeight } = geometry;
  const found: Finding[] = [];
  if (closure === null) {
    found.push({
      code: "closure-missing", severity: "note", where: "closure", path: "book/closure",
      message: `the folded strip, ${thickness(geometry.foldedStack)} thick, is held by nothing when the book is shut`,
      consequence: "new folds spring, and the book slides open on a shelf",
      remedy: "take a ribbon or a band, or keep the book under weight or between others",
    });
  }
  const reach = closure?.kind === "band" ? closure.height : closure?.width;
  if (reach && !isLess(reach, boardHeight)) {
    found.push({
      code: "closure-too-high", severity: "stop", where: "closure", path: closure?.kind === "band" ? "book/band/height" : "book/ribbon/width",
      message: `the ${closure!.kind} is ${size(reach)} wide, the boards are ${size(boardHeight)} high`,
      consequence: "it would reach beyond head and tail",
      remedy: `make it narrower than ${size(boardHeight)}`,
    });
  }
  if (!isLess(geometry.foldedStack, geometry.panelWidth)) {
    found.push({
      code: "stack-too-thick", severity: "warn", where: "panels", path: "book/panels",
      message: `the folded strip is ${thickness(geometry.foldedStack)} thick, a panel only ${size(geometry.panelWidth)} wide`,
      consequence: "the book cannot be held or tied shut, the boards slide off the strip",
      remedy: "take fewer panels, wider ones or thinner paper",
    });
  }
  return found;
}
