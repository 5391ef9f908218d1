// What is wrong or risky about a post album's covers: joints that do not open, boards without room, turn-ins that meet.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, compareLengths, isLess, multiplyLength, noLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printLength, printThickness } from "../../units/print-length.ts";
import { findCornerFaults } from "../covering-findings.ts";
import type { LengthStyle } from "../../units/print-length.ts";
import type { Finding } from "../types.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

/** All findings of the covers. */
export function findCoverFaults(definition: Definition<"post-album">, geometry: PostAlbumGeometry): readonly Finding[] {
  const size = (length: Length) => printLength(length, definition.units);
  const thickness = (length: Length) => printThickness(length, definition.units);
  return [...jointFaults(geometry, size, thickness), ...widthFaults(geometry, size), ...turnInFaults(geometry, size, thickness, definition.units)];
}

type Print = (length: Length) => string;

/** Folded back without post heads, the joint's own layers need half a circle: below that the cover cannot be opened at all. */
function jointFaults(geometry: PostAlbumGeometry, size: Print, thickness: Print): readonly Finding[] {
  const { jointGap, leastJointGap, jointLayers, boardThickness } = geometry;
  if (!isLess(jointGap, leastJointGap)) return [];
  const bend = multiplyLength(jointLayers, { n: 15708n, d: 10000n });
  const isStiff = isLess(jointGap, bend);
  return [{
    code: "joint-gap-too-small", severity: isStiff ? "stop" : "warn", where: "joint gap", path: "book/joint gap",
    message: `the joint gap is ${size(jointGap)}; with board of ${thickness(boardThickness)} and ${thickness(jointLayers)} of cloth and adhesive in the joint, folding right back needs ${thickness(leastJointGap)}`,
    consequence: isStiff ? "the joint is stiffer than it is wide: the cover cannot open past the hinge" : "the cover does not open past the hinge, it springs shut and pulls at the posts",
    remedy: `make the joint gap at least ${thickness(leastJointGap)}, or take thinner board or cloth`,
  }];
}

function widthFaults(geometry: PostAlbumGeometry, size: Print): readonly Finding[] {
  const { hingeWidth, jointGap, leafWidth, boardWidth, inset, clothLap, lining } = geometry;
  const taken = addLengths(hingeWidth, jointGap);
  const leastBoard = lining ? multiplyLength(inset, 2) : noLength;
  const hasNoBoard = compareLengths(boardWidth, leastBoard) <= 0;
  const found: Finding[] = [];
  if (hasNoBoard || isLess(leafWidth, multiplyLength(taken, 3))) {
    found.push({
      code: "hinge-too-wide", severity: hasNoBoard ? "stop" : "warn", where: "hinge", path: "book/hinge",
      message: `hinge and joint gap take ${size(taken)} of leaves ${size(leafWidth)} wide`,
      consequence: hasNoBoard ? "no board is left beside the hinge" : "more than a third of every leaf lies in the hinge and cannot be used",
      remedy: "make the hinge narrower or the leaves wider; Vaughn (1912) calls 3⁄4 to 1 1⁄2 in reasonable for a hinge",
    });
  }
  if (!hasNoBoard && !isLess(clothLap, boardWidth)) {
    found.push({
      code: "cloth-lap-too-wide", severity: "stop", where: "cloth lap", path: "book/cloth lap",
      message: `the cloth laps ${size(clothLap)} onto boards ${size(boardWidth)} wide`,
      consequence: "the cloth reaches beyond the fore-edge",
      remedy: `make the lap narrower than ${size(boardWidth)}`,
    });
  }
  return found;
}

function turnInFaults(geometry: PostAlbumGeometry, size: Print, thickness: Print, units: LengthStyle): readonly Finding[] {
  const { turnIn, boardThickness, coverHeight, hingeWidth, boardWidth, cornerDistance } = geometry;
  const turnedIn = subtractLength(turnIn, boardThickness);
  const found: Finding[] = [];
  const tooDeep: readonly (readonly [what: string, room: Length])[] = [
    [`the turn-ins from head and tail meet on a cover of ${size(coverHeight)}`, multiplyLength(coverHeight, { n: 1n, d: 2n })],
    [`the turn-in at the spine reaches over the hinge strip, ${size(hingeWidth)} wide, into the joint`, hingeWidth],
    [`the turn-in at the fore-edge reaches over the board, ${size(boardWidth)} wide, into the joint`, boardWidth],
  ];
  const worst = tooDeep.find(([, room]) => isLess(noLength, room) && !isLess(turnedIn, room));
  if (worst) {
    found.push({
      code: "turn-in-too-deep", severity: "stop", where: "turn-in", path: "book/turn in",
      message: `a turn-in of ${size(turnIn)} goes over an edge ${thickness(boardThickness)} thick; ${worst[0]}`,
      consequence: "it would lie on top of another one or stiffen the joint",
      remedy: "make the turn-in smaller",
    });
  }
  if (!isLess(boardThickness, turnIn)) {
    found.push({
      code: "turn-in-too-short", severity: "stop", where: "turn-in", path: "book/turn in",
      message: `a turn-in of ${size(turnIn)} goes over an edge ${thickness(boardThickness)} thick`,
      consequence: "nothing of it is left to be glued inside",
      remedy: `make the turn-in a good deal deeper than ${thickness(boardThickness)}; 15 mm is usual`,
    });
  }
  found.push(...findCornerFaults({ turnIn, cornerDistance, where: "cover cloth", over: "board", thinner: "thinner board" }, units));
  return found;
}
