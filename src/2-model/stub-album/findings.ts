// What is wrong or risky about a stub album, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, isLess, mm, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findCornerFaults, findMeetingTurnIns } from "../covering-findings.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findMovedSizes } from "../on-mark.ts";
import { findPostFaults } from "../posts.ts";
import { findCutFaults, findPiercingFaults } from "../tool-findings.ts";
import type { Piercing } from "../tool-findings.ts";
import type { Finding, Hole, Part, Score } from "../types.ts";
import type { StubAlbumGeometry } from "./geometry.ts";
import { governingSizes } from "./materials.ts";

interface Evidence {
  readonly definition: Definition<"stub-album">;
  readonly ledger: Ledger;
  readonly geometry: StubAlbumGeometry;
  readonly parts: readonly Part[];
  readonly scores: readonly Score[];
  readonly holes: readonly Hole[];
}

/** All findings of a stub album; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, parts, holes } = evidence;
  return [
    ...spineFaults(evidence), ...markFaults(evidence), ...stubFaults(evidence), ...jointFaults(evidence), ...pageFaults(evidence), ...postFaults(evidence),
    ...findCutFaults(parts, definition), ...findPiercingFaults([boardPiercing(evidence)], definition), ...findEdgeFaults(holes, parts, definition), ...findMovedSizes(governingSizes(definition).filter(({ name }) => name !== "floor gap" || definition.book.stubs > 1), ledger, definition), ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
  ];
}

/** Strip and board are pierced together; the hinge bars the way from the spine side. */
function boardPiercing({ geometry, parts, holes }: Evidence): Piercing {
  return {
    where: "side strips and boards", part: parts.find((part) => part.id === "boards")!, holes: holes.filter((hole) => hole.part === "boards"),
    from: ["head", "tail", "far edge"], thickness: geometry.posts.stack,
  };
}

function spineFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const thickness = (length: Parameters<typeof printThickness>[0]) => printThickness(length, definition.units);
  if (!geometry.spineIsGiven && !isLess(noLength, geometry.margin)) {
    return [{
      code: "margin-too-small", severity: "stop", where: "margin", path: "book/margin",
      message: "the margin is zero, the first and the last base line lie on the edge of the card",
      consequence: "the outer stubs tear off at the fold",
      remedy: `give the floor a margin of at least ${thickness(multiplyLength(geometry.cardThickness, 3))}; about 10 mm is usual`,
    }];
  }
  if (geometry.spineIsGiven && !isLess(noLength, geometry.margin)) {
    const taken = addLengths(subtractLength(geometry.foldedFloor, multiplyLength(geometry.margin, 2)), definition.book["floor ease"]);
    return [{
      code: "spine-too-narrow", severity: "stop", where: "spine strip", path: "book/spine",
      message: `the spine is ${thickness(geometry.spineStripWidth)} wide, but ${geometry.stubs} closed stubs, the gaps between them and the ease already take ${thickness(taken)}`,
      consequence: "no margin is left, the outer stubs would hang over the spine strip",
      remedy: `make the spine wider than ${thickness(taken)}, or take fewer stubs, a narrower floor gap or thinner card`,
    }];
  }
  if (!isLess(geometry.spineStripWidth, geometry.foldedFloor)) return [];
  return [{
    code: "spine-narrower-than-floor", severity: "stop", where: "spine strip", path: "measured/folded floor",
    message: `the folded floor measures ${thickness(geometry.foldedFloor)}, the spine strip ${thickness(geometry.spineStripWidth)}`,
    consequence: "the floor would stand over the spine strip into the joints and the boards could not close",
    remedy: "make the spine wider, or leave it out so that it follows the folded floor",
  }];
}

/** Score positions are rounded to ruler marks: what is narrower than one mark would put two lines on the same mark, or one on the edge. */
function markFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { step } = definition.units;
  const spacings: readonly (readonly [where: string, path: string, length: Length])[] = [
    ["margin", geometry.spineIsGiven ? "book/spine" : "book/margin", geometry.margin],
    ["stub depth", "book/stub depth", geometry.stubDepth],
    ...(geometry.stubs > 1 ? [["floor gap", "book/floor gap", geometry.floorGap] as const] : []),
  ];
  return spacings.filter(([, , length]) => isLess(noLength, length) && isLess(length, step)).map(([where, path, length]) => ({
    code: "below-one-mark", severity: "stop", where, path,
    message: `the ${where} is ${printThickness(length, definition.units)}, less than one mark of the ruler (${printThickness(step, definition.units)})`,
    consequence: "two score lines would fall on the same mark",
    remedy: `make the ${where} at least ${printThickness(step, definition.units)}, or choose a finer step under "units"`,
  }));
}

/** Score lines closer than three times the card's thickness crush each other; stubs with their papers need air between them. */
function stubFaults({ definition, geometry, ledger }: Evidence): readonly Finding[] {
  const found: Finding[] = [];
  const thickness = (length: Parameters<typeof printThickness>[0]) => printThickness(length, definition.units);
  const least = multiplyLength(geometry.cardThickness, 3);
  const spacings: readonly (readonly [where: string, path: string, length: typeof least])[] = [
    ["stub depth", "book/stub depth", geometry.stubDepth],
    ...(isLess(noLength, geometry.margin) ? [["margin", geometry.spineIsGiven ? "book/spine" : "book/margin", geometry.margin] as const] : []),
    ...(geometry.stubs > 1 ? [["floor gap", "book/floor gap", geometry.floorGap] as const] : []),
  ];
  for (const [where, path, spacing] of spacings) {
    if (!isLess(spacing, least)) continue;
    found.push({
      code: "scores-too-close", severity: "warn", where, path,
      message: `score lines are ${thickness(spacing)} apart on card of ${thickness(geometry.cardThickness)}; less than three times its thickness (${thickness(least)})`,
      consequence: "the folds crush each other and the stub will not lie flat",
      remedy: `make the ${where} at least ${thickness(least)}, or take thinner card`,
    });
  }
  const air = ledger.length("room in stub zone");
  if (geometry.stubs > 1 && isLess(air, noLength)) {
    found.push({
      code: "stubs-too-close", severity: "stop", where: "floor gap", path: "book/floor gap",
      message: `two neighbouring stubs with their papers need ${thickness(subtractLength(geometry.floorGap, air))} from fold to fold, the floor gap is ${thickness(geometry.floorGap)}`,
      consequence: "the papers on neighbouring stubs would press into each other and the book would not close",
      remedy: `make the floor gap at least ${thickness(subtractLength(geometry.floorGap, air))}, or take thinner paper or card`,
    });
  }
  if (!isLess(noLength, geometry.pages.adhesiveZone)) {
    found.push({
      code: "stub-too-shallow", severity: "stop", where: "stub depth", path: "book/stub depth",
      message: `a stub of ${printLength(geometry.stubDepth, definition.units)} leaves no room for adhesive`,
      consequence: "the pages cannot be mounted",
      remedy: "make the stubs deeper",
    });
  }
  return found;
}

function jointFaults({ definition, geometry, ledger }: Evidence): readonly Finding[] {
  const found: Finding[] = [];
  const size = (length: Parameters<typeof printLength>[0]) => printLength(length, definition.units);
  const thickness = (length: Parameters<typeof printThickness>[0]) => printThickness(length, definition.units);
  const least = ledger.length("least joint gap");
  if (isLess(geometry.jointGap, least)) {
    found.push({
      code: "joint-gap-too-small", severity: isLess(geometry.jointGap, geometry.hingeStack) ? "stop" : "warn", where: "joint gap", path: "book/joint gap",
      message: `the joint gap is ${size(geometry.jointGap)}, strip and board with the cloth's two bends need ${thickness(least)}`,
      consequence: "the boards cannot stand beside the spine: they pinch when the book is shut and will not lie open flat",
      remedy: `make the joint gap at least ${thickness(least)}, or take thinner boards or strips`,
    });
  }
  const tapeNeeded = addLengths(multiplyLength(geometry.jointGap, 2), mm(10));
  if (isLess(geometry.hingeTapeWidth, tapeNeeded)) {
    found.push({
      code: "hinge-tape-narrow", severity: "warn", where: "hinge tape", path: "book/hinge tape",
      message: `the hinge tape is ${size(geometry.hingeTapeWidth)} wide, two joint gaps and 10 mm are ${size(tapeNeeded)}`,
      consequence: "too little of it grips the strips and the joint works loose",
      remedy: `take tape at least ${size(tapeNeeded)} wide`,
    });
  }
  if (compareLengths(multiplyLength(geometry.sideStripWidth, 2), geometry.boardWidth) > 0) {
    found.push({
      code: "side-strip-too-wide", severity: "warn", where: "side strip", path: "book/side strip",
      message: `the side strip is ${size(geometry.sideStripWidth)} wide, more than half of the board's ${size(geometry.boardWidth)}`,
      consequence: "the hinge covers most of the board",
      remedy: `make the side strip narrower; ${definition.units.governing === "in" ? "3⁄4 to 1 in" : "20 to 25 mm"} is usual`,
    });
  }
  found.push(...findMeetingTurnIns({ turnIn: geometry.turnIn, from: "head and tail", over: "strip", length: geometry.stripHeight }, definition.units));
  found.push(...findCornerFaults({ ...geometry, where: "hinge cloth", over: "strip", thinner: "thinner strip board" }, definition.units));
  return found;
}

function pageFaults({ definition, geometry, ledger }: Evidence): readonly Finding[] {
  const found: Finding[] = [];
  const size = (length: Parameters<typeof printLength>[0]) => printLength(length, definition.units);
  const thickness = (length: Parameters<typeof printThickness>[0]) => printThickness(length, definition.units);
  const reach = ledger.length("page reach");
  if (isLess(reach, geometry.pages.width)) {
    const sticksOut = isLess(addLengths(reach, geometry.pages.square), geometry.pages.width);
    found.push({
      code: sticksOut ? "pages-stick-out" : "square-too-small", severity: sticksOut ? "stop" : "warn", where: "page paper", path: "book/pages/width",
      message: `page papers ${size(geometry.pages.width)} wide reach ${sticksOut ? "beyond the boards" : "into the square"}; ${thickness(reach)} keep it when the book is full`,
      consequence: sticksOut ? "the fore-edges of the pages stand out of the covers and get worn" : "the boards protect the pages less than asked",
      remedy: `make the pages at most ${size(reach)} wide, or the boards or the joint gap wider`,
    });
  }
  if (isLess(geometry.boardHeight, geometry.pages.height)) {
    found.push({
      code: "pages-stick-out", severity: "stop", where: "page paper", path: "book/pages/height",
      message: `page papers ${size(geometry.pages.height)} high are higher than the boards, ${size(geometry.boardHeight)}`,
      consequence: "head and tail of the pages stand out of the covers",
      remedy: `make the pages at most ${size(geometry.boardHeight)} high`,
    });
  }
  if (!isLess(noLength, geometry.pages.width)) {
    found.push({
      code: "boards-too-narrow", severity: "stop", where: "boards", path: "book/boards/width",
      message: `boards ${size(geometry.boardWidth)} wide leave no width for pages`, consequence: "there is no book", remedy: "take wider boards",
    });
  }
  const { decoration, roomPerOpening, roomInAll } = geometry.pages;
  if (isLess(roomInAll, noLength) || (geometry.stubs > 1 && isLess(roomPerOpening, noLength))) {
    found.push({
      code: "pages-too-thick", severity: "stop", where: "page paper", path: "materials/page paper",
      message: `one page is ${thickness(ledger.length("page thickness"))} thick, the pages stand ${thickness(geometry.pitch)} apart`,
      consequence: "the pages alone are thicker than the spine",
      remedy: "widen the floor gap or take thinner paper",
    });
  } else if (decoration && geometry.stubs > 1 && isLess(roomPerOpening, decoration)) {
    found.push({
      code: "decoration-too-thick", severity: "warn", where: "floor gap", path: "book/pages/decoration",
      message: `${thickness(decoration)} of decoration is planned in each opening, the spine leaves ${thickness(roomPerOpening)}`,
      consequence: "the book will gape at the fore-edge",
      remedy: `make the floor gap at least ${size(addLengths(geometry.floorGap, subtractLength(decoration, roomPerOpening)))}, or plan for thinner decoration`,
    });
  }
  return found;
}

function postFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { posts } = geometry;
  const { lengths } = definition.book.posts;
  return findPostFaults({
    ...posts, units: definition.units, lengths, extensions: [], rowHeight: geometry.stripHeight, thinner: "thinner boards or strips",
    choice: posts.length && { post: posts.length, extensions: [], reach: posts.length },
  });
}
