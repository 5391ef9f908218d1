// The flat case seen from inside, wrong side of the cloth up, at one scale: cloth, boards and strip as boxes on paper.
import type { CaseBindingGeometry } from "../../2-model/case-binding/geometry.ts";
import type { Box } from "../../geometry/box.ts";
import { rectangle } from "../../geometry/path.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { cornerReach } from "../corner-cut.ts";
import type { FillKind } from "../fill-kinds.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { LineKind } from "../types.ts";

/** Boxes in millimetres of paper; the head left corner of the cloth lies at (0, 0). Boards may reach beyond a spine cloth. */
export interface CasePlan {
  readonly factor: number;
  readonly cloth: Box;
  readonly left: Box;
  readonly strip: Box;
  readonly right: Box;
  readonly turnIn: number;
  /** Along the cloth's edges from its corner to the 45° cut; 0 when nothing is cut. */
  readonly cut: number;
}

/** Millimetres of the book that the flat case takes, boards included. */
export function caseSize(geometry: CaseBindingGeometry): { readonly width: number; readonly height: number } {
  const { covering, boardWidth, joint, stripWidth } = geometry;
  const mm = toMillimetres;
  const boards = 2 * mm(boardWidth) + 2 * mm(joint) + mm(stripWidth);
  return { width: covering.clothOnBoards ? boards : mm(covering.clothWidth), height: mm(covering.clothHeight) };
}

/** Lays out the flat case at a factor of millimetres on paper for one of the book. */
export function planCase(geometry: CaseBindingGeometry, factor: number): CasePlan {
  const { covering, boardHeight, boardWidth, joint, stripWidth } = geometry;
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const turnIn = paper(covering.turnIn);
  const [head, tail] = [turnIn, turnIn + paper(boardHeight)];
  const box = (left: number, width: number): Box => ({ left, top: head, right: left + width, bottom: tail });
  const board = paper(boardWidth);
  const spineEdge = covering.clothOnBoards ? paper(covering.clothOnBoards) : turnIn + board;
  const strip = box(spineEdge + paper(joint), paper(stripWidth));
  const mm = toMillimetres(covering.turnIn);
  return {
    factor, turnIn, strip,
    cloth: { left: 0, top: 0, right: paper(covering.clothWidth), bottom: paper(covering.clothHeight) },
    left: box(spineEdge - board, board), right: box(strip.right + paper(joint), board),
    cut: covering.kind === "full" ? cornerReach({ x: mm, y: mm }, toMillimetres(covering.cornerDistance)) * factor : 0,
  };
}

/** A box as a filled area. */
export function boxArea({ left, top, right, bottom }: Box, fill: FillKind, line: LineKind | "none"): SceneItem {
  return area(rectangle(left, top, right - left, bottom - top), fill, line);
}

/** The box round everything in the plan. */
export function planBox({ cloth, left, right }: CasePlan): Box {
  return { left: Math.min(cloth.left, left.left), top: 0, right: Math.max(cloth.right, right.right), bottom: cloth.bottom };
}
