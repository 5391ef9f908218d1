// A cover cut through at its hinge, for every section it occurs in: covering, turn-in, hinge strip, joint, board and hinge lining.
import { polygon, rectangle, transformPath } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { scaling } from "../../geometry/transform.ts";
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { area } from "../scene.ts";
import type { PathItem } from "../scene.ts";
import { brokenAxis } from "../bench/broken-axis.ts";

/** How much of strip and board may be shown whole, on paper, and what is shown of it when it is broken. */
export interface SectionRoom {
  readonly strip: { readonly whole: number; readonly broken: number };
  readonly board: { readonly whole: number; readonly broken: number };
  /** Board shown beyond the lap, on paper. */
  readonly beyondLap: number;
}

/** On paper: x from the spine edge of the hinge strip; y up is the inside (negative), the outer face of the strip at 0. */
export interface CoverSection {
  readonly factor: number;
  readonly stripRight: number;
  readonly boardLeft: number;
  readonly lapEnd: number;
  readonly end: number;
  readonly cloth: number;
  readonly board: number;
  readonly turnedIn: number;
  readonly inset: number;
  readonly turnInAtPost: boolean;
  readonly breaks: readonly number[];
}

/** A cover at a factor of millimetres on paper for one of the book. */
export function layOutSection(geometry: PostAlbumGeometry, factor: number, room: SectionRoom): CoverSection {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const shown = (size: number, { whole, broken }: { readonly whole: number; readonly broken: number }): number => (size <= whole ? size : broken);
  const strip = brokenAxis({ trueSize: toMillimetres(geometry.hingeWidth), size: shown(mm(geometry.hingeWidth), room.strip), factor, breakAt: shown(mm(geometry.hingeWidth), room.strip) * 0.62 });
  const lapTrue = toMillimetres(geometry.clothLap) + room.beyondLap / factor;
  const board = brokenAxis({ trueSize: lapTrue, size: shown(lapTrue * factor, room.board), factor, breakAt: shown(lapTrue * factor, room.board) * 0.4 });
  const stripRight = strip.size;
  const boardLeft = stripRight + mm(geometry.jointGap);
  const turnedIn = Math.min(Math.max(0, toMillimetres(geometry.turnIn) - toMillimetres(geometry.boardThickness)), toMillimetres(geometry.hingeWidth) * 0.98);
  // A turn-in that ends in the stretch left out ends at the break.
  const isLeftOut = strip.breakAt !== null && turnedIn * factor > strip.breakAt && strip.place(turnedIn) < strip.breakAt;
  return {
    factor, stripRight, boardLeft, lapEnd: boardLeft + board.place(toMillimetres(geometry.clothLap)), end: boardLeft + board.size,
    cloth: mm(geometry.clothThickness), board: mm(geometry.boardThickness), turnedIn: isLeftOut ? strip.breakAt! : strip.place(turnedIn), inset: mm(geometry.inset),
    turnInAtPost: geometry.turnInAtPost,
    breaks: [...(strip.breakAt === null ? [] : [strip.breakAt]), ...(board.breakAt === null ? [] : [boardLeft + board.breakAt])],
  };
}


/** Board beyond the joint in a short section, on paper. */
const shortBoard = 12;

/** A cover whole at the hinge strip, of its board only the beginning. */
export function shortSection(geometry: PostAlbumGeometry, factor: number): CoverSection {
  const whole = { whole: Infinity, broken: 0 };
  const section = layOutSection(geometry, factor, { strip: whole, board: whole, beyondLap: 8 });
  const end = Math.min(section.end, section.boardLeft + shortBoard);
  return { ...section, end, lapEnd: Math.min(section.lapEnd, end + 1) };
}

/** How thick the drawn cover is at the hinge: adhesive is left out. */
export function drawnThickness({ cloth, board, turnedIn, turnInAtPost }: CoverSection): number {
  return board + cloth * (turnInAtPost && turnedIn > 0 ? 3 : 2);
}

/** The layers, inside up; the drawing goes on a little beyond its end, to be covered by a wavy line. */
export function coverLayers({ paper }: PostAlbumGeometry, section: CoverSection): readonly PathItem[] {
  const { stripRight, boardLeft, lapEnd, end, cloth, board, turnedIn, factor } = section;
  const past = end + 1;
  const clothEnd = paper ? lapEnd : past;
  return [
    // Cloth: outside, round the spine edge, and turned in.
    area(polygon([point(-cloth, cloth), point(clothEnd, cloth), point(clothEnd, 0), point(0, 0), point(0, -board), point(turnedIn, -board), point(turnedIn, -board - cloth), point(-cloth, -board - cloth)]), "cloth", "edge"),
    area(rectangle(0, -board, stripRight, board), "strip", "outline"),
    area(rectangle(boardLeft, -board, past - boardLeft, board), "board", "outline"),
    ...(paper ? paperItems(section, toMillimetres(paper.thickness) * factor, toMillimetres(paper.lap) * factor) : []),
    area(polygon(liningOutline(section)), "tape", "edge"),
  ];
}

/** The same upside down: inside down. */
export function turnedOver(items: readonly PathItem[]): readonly PathItem[] {
  return items.map((item) => ({ ...item, path: transformPath(scaling(1, -1), item.path) }));
}

/** Cover paper outside: over the edge of the cloth, then down onto the board. */
function paperItems({ lapEnd, end, cloth }: CoverSection, thickness: number, lap: number): readonly PathItem[] {
  const t = Math.max(thickness, 0.25);
  return [area(polygon([point(lapEnd - lap, cloth), point(lapEnd, cloth), point(lapEnd + cloth, 0), point(end + 1, 0), point(end + 1, t), point(lapEnd + cloth, t), point(lapEnd, cloth + t), point(lapEnd - lap, cloth + t)]), "paper", "edge")];
}

/** The lining as a band of one cloth's thickness: on the turn-in, the strip, down, along and up the joint, on the board. */
function liningOutline({ stripRight, boardLeft, lapEnd, cloth: t, board, turnedIn, inset }: CoverSection): readonly Point[] {
  const onTurnIn = inset < turnedIn - 1;
  const lower: readonly Point[] = [
    ...(onTurnIn ? [point(inset, -board - t), point(turnedIn, -board - t), point(turnedIn + t, -board)] : [point(inset, -board)]),
    point(stripRight, -board), point(stripRight, 0), point(boardLeft, 0), point(boardLeft, -board), point(lapEnd, -board),
  ];
  const upper: readonly Point[] = [
    ...(onTurnIn ? [point(inset, -board - 2 * t), point(turnedIn, -board - 2 * t), point(turnedIn + 1.4 * t, -board - t)] : [point(inset, -board - t)]),
    point(stripRight + t, -board - t), point(stripRight + t, -t), point(boardLeft - t, -t), point(boardLeft - t, -board - t), point(lapEnd, -board - t),
  ];
  return [...lower, ...[...upper].reverse()];
}
