// Where the parts of a cover lie on its cloth, in millimetres of paper: every plan view of a cover starts from these edges.
import type { PostAlbumGeometry } from "../../2-model/post-album/geometry.ts";
import type { Box } from "../../geometry/box.ts";
import { rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { brokenAxis } from "../bench/broken-axis.ts";
import type { BrokenAxis } from "../bench/broken-axis.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";

/** The covering that strip and board are glued to: the whole cover's cloth, or only that of its hinge. */
export function coveringId({ paper }: PostAlbumGeometry): "cover-cloth" | "hinge-cloth" {
  return paper ? "hinge-cloth" : "cover-cloth";
}

/** A cover lying inside up, hinge to the left; origin at the head left corner of its cloth. */
export interface CoverPlan {
  readonly scale: Scale;
  readonly across: BrokenAxis;
  readonly down: BrokenAxis;
  /** How far the cloth goes, from its left edge; with paper over the board it ends at its lap. */
  readonly clothRight: number;
  readonly strip: Box;
  readonly board: Box;
  /** From the cover's edge to where a turn-in ends on the inside. */
  readonly turnedIn: number;
  /** Words for the caption when something is left out: ", the middle of its height left out". */
  readonly left: string;
}

/** Paper for a plan; what is whole may be larger, so that a break always leaves out a good piece. */
export interface PlanRoom {
  readonly width: number;
  readonly board: { readonly whole: number; readonly broken: number };
  readonly height: { readonly whole: number; readonly broken: number };
}

/** Room for one plan of a cover among labels. */
export const coverRoom: PlanRoom = { width: 98, board: { whole: 56, broken: 44 }, height: { whole: 88, broken: 70 } };

/**
 * The largest scale, up to 1:1, at which the cover fits. Only the middle of the board and the middle of the height are ever left out.
 * `larger` takes scales beyond the wished one, should labels find no place.
 */
export function planCover(geometry: PostAlbumGeometry, room: PlanRoom = coverRoom): readonly CoverPlan[] {
  const wished = scales.findIndex(({ factor }) => factor <= 1 && fits(geometry, room, factor));
  const first = wished < 0 ? scales.length - 1 : wished;
  return [0, 1, 2, 3].flatMap((step) => {
    const scale = scales[first + (step < 3 ? step : -1)];
    return scale ? [planAt(geometry, room, scale)] : [];
  });
}

function paperSizes(geometry: PostAlbumGeometry, room: PlanRoom, factor: number) {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const [turnIn, strip, gap, board, cover] = [geometry.turnIn, geometry.hingeWidth, geometry.jointGap, geometry.boardWidth, geometry.coverHeight].map(mm) as [number, number, number, number, number];
  const shown = (size: number, { whole, broken }: { readonly whole: number; readonly broken: number }): number => (size <= whole ? size : broken);
  const height = cover + 2 * turnIn;
  const right = geometry.paper ? 0 : turnIn;
  return { turnIn, strip, gap, board, boardShown: shown(board, room.board), right, width: turnIn + strip + gap + board + right, height, heightShown: shown(height, room.height) };
}

function fits(geometry: PostAlbumGeometry, room: PlanRoom, factor: number): boolean {
  const { turnIn, strip, gap, boardShown, right } = paperSizes(geometry, room, factor);
  return turnIn + strip + gap + boardShown + right <= room.width && 2 * turnIn <= room.height.broken * 0.6;
}

function planAt(geometry: PostAlbumGeometry, room: PlanRoom, scale: Scale): CoverPlan {
  const { factor } = scale;
  const { turnIn, strip, gap, board, boardShown, right, width, height, heightShown } = paperSizes(geometry, room, factor);
  const boardLeft = turnIn + strip + gap;
  const across = brokenAxis({ trueSize: width / factor, size: boardLeft + boardShown + right, factor, breakAt: boardLeft + boardShown * 0.6 });
  const down = brokenAxis({ trueSize: height / factor, size: heightShown, factor });
  const [head, tail] = [turnIn, heightShown - turnIn];
  const missing = [...(down.breakAt === null ? [] : ["height"]), ...(boardShown < board ? ["width"] : [])];
  return {
    scale, across, down,
    clothRight: geometry.paper ? boardLeft + Math.min(toMillimetres(geometry.clothLap) * factor, boardShown * 0.9) : across.size,
    strip: { left: turnIn, right: turnIn + strip, top: head, bottom: tail },
    board: { left: boardLeft, right: boardLeft + boardShown, top: head, bottom: tail },
    turnedIn: Math.max(0, turnIn - toMillimetres(geometry.boardThickness) * factor),
    left: missing.length === 0 ? "" : `, the middle of its ${missing.join(" and ")} left out`,
  };
}

/** A box as the outline of an area. */
export function boxPath({ left, top, right, bottom }: Box): Path {
  return rectangle(left, top, right - left, bottom - top);
}
