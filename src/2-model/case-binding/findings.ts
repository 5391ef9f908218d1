// What is wrong or risky about a case binding, each with the numbers behind it, the consequence and the remedy.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, inches, isLess, mm, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findCornerFaults } from "../covering-findings.ts";
import { findDeviations, findEdgeFaults, findGrainFaults } from "../findings.ts";
import type { Ledger } from "../ledger.ts";
import { findThreadFaults } from "../sewing/findings.ts";
import type { Thread } from "../sewing/types.ts";
import { findTextBlockFaults } from "../text-block/findings.ts";
import { findStationFaults } from "../text-block/stations.ts";
import { findCutFaults } from "../tool-findings.ts";
import type { Finding, Hole, Part } from "../types.ts";
import type { CaseBindingGeometry } from "./geometry.ts";

interface Evidence {
  readonly definition: Definition<"case-binding">;
  readonly ledger: Ledger;
  readonly geometry: CaseBindingGeometry;
  readonly parts: readonly Part[];
  readonly holes: readonly Hole[];
  readonly thread: Thread | null;
}

/** All findings of a case binding; `stop` means that the book cannot be made as defined. */
export function findFaults(evidence: Evidence): readonly Finding[] {
  const { definition, ledger, geometry, parts, holes, thread } = evidence;
  return [
    ...findTextBlockFaults(geometry.block, definition, ledger),
    ...(geometry.sewing ? findStationFaults(geometry.sewing.stations, definition, "book/sewing", ledger) : []),
    ...(thread ? findThreadFaults(thread, definition.book.thread.needleful, definition, "book/thread/needleful") : []),
    ...backFaults(evidence), ...jointFaults(evidence), ...boardFaults(evidence), ...coveringFaults(evidence),
    ...findCutFaults(parts, definition), ...findEdgeFaults(holes, parts, definition), ...findGrainFaults(parts, definition), ...findDeviations(ledger.values, definition),
  ];
}

/** Guide to the ANSI/NISO/LBI Library Binding Standard (2008), Appendix A, Decision Tree 2: double-fan adhesive binding for 2 in or less. */
const thickestGlued = inches(2);
/** Board thicker than this does not bend round a back: common practice, no source. */
const thickestBent = mm(1);

function backFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const { round, backThickness, block, sewing, mull, lining } = geometry;
  const found: Finding[] = [];
  if (round && isLess(backThickness, multiplyLength(round.rise, 2))) {
    found.push({
      code: "rise-too-high", severity: "stop", where: "rounded back", path: "book/back rise",
      message: `the back rises ${thickness(round.rise)} over a thickness of ${thickness(backThickness)}, more than half a circle`,
      consequence: "no text block can be rounded so far",
      remedy: `give a rise of at most ${thickness(divideLength(backThickness, 2))}; about a quarter of the thickness is usual`,
    });
  }
  if (round && isLess(thickestBent, geometry.stripThickness)) {
    found.push({
      code: "strip-too-stiff", severity: "warn", where: "spine strip", path: "materials/spine strip",
      message: `the spine strip is ${thickness(geometry.stripThickness)} thick, and the back is rounded`,
      consequence: "the strip does not bend round the back and stands off at the joints",
      remedy: `take card or board of at most ${thickness(thickestBent)}`,
    });
  }
  if (!sewing && isLess(thickestGlued, block.spineThickness)) {
    found.push({
      code: "glued-block-too-thick", severity: "warn", where: "text block", path: "book/held by",
      message: `the glued text block is ${thickness(block.spineThickness)} thick; the library binders' guide of 2008 glues blocks of ${thickness(thickestGlued)} at most`,
      consequence: "leaves work loose when the book is opened wide",
      remedy: "sew it, or make two volumes",
    });
  }
  const tooShort = !isLess(noLength, mull.height);
  const tooNarrow = (lining !== null && !isLess(noLength, lining.width)) || (geometry.endband !== null && !isLess(noLength, geometry.endband));
  if (tooShort || tooNarrow) {
    found.push({
      code: "linings-vanish", severity: "stop", where: "spine", path: tooShort ? "book/mull/short at ends" : "book/text block",
      message: tooShort ? `${printLength(mull.short, definition.units)} kept free at head and tail leave no mull` : `the back is ${thickness(geometry.backWidth)} wide, less than one mark of the ruler`,
      consequence: "there is nothing to glue to the spine",
      remedy: tooShort ? "make the distance from head and tail smaller" : "take more sections, or leave lining and endbands out",
    });
  }
  return found;
}

/** The joint may be off by half a mark of the ruler, because it is rounded to one. */
function jointFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const { joint, tightestJoint, loosestJoint, boardThickness, groove, rod, clothThickness } = geometry;
  const size = (length: Length): string => printLength(length, definition.units);
  const thickness = (length: Length): string => printThickness(length, definition.units);
  const halfMark = divideLength(definition.units.step, 2);
  const found: Finding[] = [];
  if (isLess(addLengths(joint, halfMark), tightestJoint)) {
    found.push({
      code: "joint-gap-too-small", severity: isLess(addLengths(joint, halfMark), boardThickness) ? "stop" : "warn", where: "joint", path: "book/joint",
      message: `the joint is ${size(joint)}; the cloth's straight way through a groove of ${size(groove)} beside boards of ${thickness(boardThickness)} is ${thickness(tightestJoint)}`,
      consequence: "the boards are pulled towards the spine, the squares at the fore-edge shrink and the covers do not open flat",
      remedy: `make the joint between ${thickness(tightestJoint)} and ${thickness(loosestJoint)}, or the groove narrower`,
    });
  } else if (isLess(addLengths(loosestJoint, halfMark), joint)) {
    found.push({
      code: "joint-too-loose", severity: "warn", where: "joint", path: "book/joint",
      message: `the joint is ${size(joint)}; along the walls and the floor of a groove of ${size(groove)} the cloth needs ${thickness(loosestJoint)} at most`,
      consequence: "the cloth bags in the groove and the boards shift on the book",
      remedy: `make the joint between ${thickness(tightestJoint)} and ${thickness(loosestJoint)}, or the groove wider`,
    });
  }
  if (isLess(rod, boardThickness)) {
    found.push({
      code: "groove-too-narrow-for-rods", severity: "note", where: "groove", path: "book/groove",
      message: `between cloth of ${thickness(clothThickness)} a groove of ${size(groove)} holds rods of ${isLess(noLength, rod) ? size(rod) : "no size"}, thinner than the boards (${thickness(boardThickness)})`,
      consequence: "rods would lie below the faces of the boards and press nothing",
      remedy: "work the joints with a bone folder and press between flat boards, or make the groove wider",
    });
  }
  return found;
}

function boardFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const found: Finding[] = [];
  const free = subtractLength(geometry.boardWidth, geometry.mull.onBoards);
  if (!isLess(noLength, free)) {
    found.push({
      code: "boards-too-narrow", severity: "stop", where: "boards", path: "book/text block/page/width",
      message: `the boards are ${isLess(noLength, geometry.boardWidth) ? size(geometry.boardWidth) : "nothing"} wide, mull reaches ${size(geometry.mull.onBoards)} onto them`,
      consequence: "there is no board left to cover", remedy: "make the pages wider, or groove and mull narrower",
    });
  }
  if (geometry.sewing && !isLess(geometry.sewing.tapeOnBoards, geometry.boardWidth)) {
    found.push({
      code: "tapes-too-long", severity: "warn", where: "tapes", path: "book/sewing/tape on boards",
      message: `the tapes reach ${size(geometry.sewing.tapeOnBoards)} onto boards of ${size(geometry.boardWidth)}`,
      consequence: "they stand out at the fore-edge", remedy: `let them reach at most ${size(divideLength(geometry.boardWidth, 2))}`,
    });
  }
  if (isLess(geometry.square, mm(1))) {
    found.push({
      code: "square-too-small", severity: "warn", where: "boards", path: "book/square",
      message: `the boards reach ${printThickness(geometry.square, definition.units)} beyond the pages`,
      consequence: "a slip of a pencil line in casing-in lets the pages stick out", remedy: "make the square 2 mm or more",
    });
  }
  return found;
}

function coveringFaults({ definition, geometry }: Evidence): readonly Finding[] {
  const size = (length: Length): string => printLength(length, definition.units);
  const { covering, boardHeight, boardWidth } = geometry;
  const found: Finding[] = [];
  if (!isLess(multiplyLength(covering.turnIn, 2), boardHeight) || !isLess(covering.turnIn, boardWidth)) {
    found.push({
      code: "turn-in-too-deep", severity: "stop", where: "turn-in", path: "book/turn in",
      message: `turn-ins of ${size(covering.turnIn)} meet on a board of ${size(boardHeight)} × ${size(boardWidth)}`,
      consequence: "they would lie on top of each other", remedy: "make the turn-in smaller",
    });
  }
  found.push(...findCornerFaults({ ...covering, where: "cloth", over: "board", thinner: "thinner boards" }, definition.units));
  const cloth = covering.clothOnBoards;
  const taken = cloth && covering.corners ? addLengths(cloth, covering.corners.reach) : cloth;
  const tooHigh = covering.corners !== null && !isLess(multiplyLength(covering.corners.reach, 2), boardHeight);
  if ((taken && !isLess(taken, boardWidth)) || tooHigh) {
    found.push({
      code: "cloth-covers-board", severity: "stop", where: covering.corners ? "cloth corners" : "spine cloth", path: covering.corners ? "book/corner reach" : "book/cloth on boards",
      message: `spine cloth${covering.corners ? " and corners take" : " takes"} ${size(tooHigh ? multiplyLength(covering.corners!.reach, 2) : taken!)} of a board of ${size(boardHeight)} × ${size(boardWidth)}`,
      consequence: "no paper side is left", remedy: "let the cloth reach less far, or cover the book in full cloth",
    });
  }
  return found;
}
