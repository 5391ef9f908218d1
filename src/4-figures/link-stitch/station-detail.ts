// One station from near by: the thread round a board's edge, seen across the spine.
import { curve, line, polyline, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point, subtractPoints } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { wavyLine } from "../breaks.ts";
import { area, centredLabel, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { threadArrow } from "../sewing/thread-lines.ts";

/** The board in millimetres of paper, not to scale: its thickness, how far it is shown, where its hole is and how wide. */
const board = { thickness: 5, shown: 52, hole: 26, bore: 2.6 } as const;
/** The section beside it: the gap that the thread runs in, its thickness, and the leaves drawn. */
const section = { gap: 6, thickness: 12, leaves: 3 } as const;
/** How far the thread lies off what it passes. */
const off = 2.2;

/** Words for the numbers in the drawing, as the caption explains them. */
export const boardWords = "1 out of the fold, 2 round the board’s edge and along its outside, 3 in through the hole, 4 back between board and section, 5 once round the thread on the edge, 6 in again.";

/** Across the spine at one station, spine to the left; the front board lies under its section, the back board over it. */
export function drawBoardDetail(side: "front" | "back"): readonly SceneItem[] {
  // Drawn for the front board; for the back board everything is upside down.
  const flip = side === "front" ? 1 : -1;
  const at = (x: number, y: number): Point => point(x, y * flip);
  const middle = -section.gap - section.thickness / 2;
  const under = board.thickness + off;
  const between = -1.6;
  const way: readonly Point[] = [
    at(18, middle - 1), at(-off, middle - 1), at(-off - 0.6, middle), at(-off - 0.6, under - 1.2), at(-off + 0.6, under), at(board.hole - 1, under), at(board.hole, under - 1), at(board.hole, between + 0.8),
    at(board.hole - 0.8, between), at(0, between),
  ];
  // Round the thread on the edge: in front of it, past it, and up into the fold.
  const hook: Path = [...curve(at(0, between), at(-3, between), at(-6.4, between + 0.4), at(-5.6, between - 2)), ...curve(at(-5.6, between - 2), at(-4.8, between - 4), at(-2.4, middle + 1.4), at(0, middle + 1.4)).slice(1)];
  const into = polyline([at(0, middle + 1.4), at(18, middle + 1.4)]);
  const number = (n: number, x: number, y: number): SceneItem => centredLabel(`way ${n}`, `${n}`, at(x, y), { weight: 600 });
  return [
    ...leaves(at, middle),
    area(box(at, 0, 0, board.shown, board.thickness), "board", "outline"),
    area(box(at, board.hole - board.bore / 2, -0.1, board.bore, board.thickness + 0.2), "plate", "none"),
    ...[-1, 1].map((by) => stroke(line(at(board.hole + (by * board.bore) / 2, 0), at(board.hole + (by * board.bore) / 2, board.thickness)), "outline")),
    stroke(wavyLine(at(board.shown, middle * 2 - 1), at(board.shown, board.thickness + 1)), "edge"),
    stroke(polyline(way), "thread"), stroke(hook, "thread"), stroke(into, "thread"),
    threadArrow(at(7, middle - 1), subtractPoints(at(-1, 0), at(0, 0))), threadArrow(at(-off - 0.6, 0.5), subtractPoints(at(0, 1), at(0, 0))),
    threadArrow(at(13, under), point(1, 0)), threadArrow(at(11, between), point(-1, 0)), threadArrow(at(15, middle + 1.4), point(1, 0)),
    number(1, -off - 2.6, middle - 2.6), number(2, board.hole * 0.3, under + 3), number(3, board.hole + 3.4, under - 1), number(4, board.hole * 0.6, between - 2.3),
    number(5, -off - 6.2, between + 0.5), number(6, 21, middle + 1.6),
    label("detail board", `${side} board`, at(board.shown + 2, board.thickness / 2 + flip), {}), label("detail section", "section", at(board.shown + 2, middle + flip), {}),
  ];
}

function box(at: (x: number, y: number) => Point, x: number, y: number, width: number, height: number): Path {
  const [a, b] = [at(x, y), at(x + width, y + height)];
  return rectangle(a.x, Math.min(a.y, b.y), width, Math.abs(b.y - a.y));
}

/** The section's leaves, nested, with the hole in their fold left open. */
function leaves(at: (x: number, y: number) => Point, middle: number): readonly SceneItem[] {
  return Array.from({ length: section.leaves }, (_, k) => {
    const half = section.thickness / 2 - k * 1.5;
    const bend = 2 + (section.leaves - k) * 0.6;
    const left = k * 0.9;
    const open = 2.4;
    const arm = (way: 1 | -1): Path => [
      { kind: "move", to: at(board.shown, middle + way * half) },
      { kind: "line", to: at(left + bend, middle + way * half) },
      { kind: "curve", control1: at(left, middle + way * half), control2: at(left, middle + way * half), to: at(left, middle + way * Math.min(open, half - 0.2)) },
    ];
    return [stroke(arm(1), k === 0 ? "outline" : "edge"), stroke(arm(-1), k === 0 ? "outline" : "edge")];
  }).flat();
}
