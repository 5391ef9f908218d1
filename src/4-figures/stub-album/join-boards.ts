// Figure: the hinge, outside up, over the two boards, and one side strip under its weight seen from the tail.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, headingType, label, moveItems, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { weight } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the plan on paper. */
const room = { width: 48, height: 70 } as const;
/** How much of each board is drawn, in widths of its side strip; the rest is broken off. */
const shownStrips = 1.9;

/** Figure `join-boards`. */
export function drawJoinBoards(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const [side, gap, spine] = [geometry.sideStripWidth, geometry.jointGap, geometry.spineStripWidth].map(toMillimetres) as [number, number, number];
  const shown = Math.min(toMillimetres(geometry.boardWidth), side * shownStrips);
  const { items, scale } = placeAtScale(scalesThatFit(2 * shown + 2 * gap + spine, toMillimetres(geometry.boardHeight), room.width, room.height), ({ factor }) => {
    const plan: JoinPlan = {
      board: shown * factor, side: side * factor, gap: gap * factor, spine: spine * factor,
      height: toMillimetres(geometry.boardHeight) * factor, inset: toMillimetres(geometry.stripInset) * factor,
      isBroken: shown < toMillimetres(geometry.boardWidth),
    };
    const top = plan.height + 34;
    return { fixed: [...planItems(plan), ...moveItems(weightView(), 0, top)], labels: [...planLabels(plan, input), ...weightLabels(top, input)] };
  });
  const inset = words.size(geometry.stripInset);
  return {
    id: "join-boards",
    title: "Gluing the hinge over the boards",
    caption: `The hinge over the two boards, all with the outside up, ${scale.name}; the boards are broken off. Below, one side strip under its weight, seen from the tail; thickness is not to scale, the hinge tape is left out.`,
    alternative: `Two boards lie inside down, spine edges towards each other. The hinge lies over them, its cloth up: each side strip is glued on the outside of a board, its spine-side edge flush with the board’s spine edge, ${inset} from the board’s head and ${inset} from its tail. `
      + "Only the joints and the spine strip lie between the boards. Seen from the tail, from below: pressing board, barrier sheet, board, adhesive, side strip covered with cloth, barrier sheet, pressing board, weight.",
    items,
  };
}

/** In millimetres of paper; the left board's broken edge is at x = 0, the boards' heads at y = 0. */
interface JoinPlan {
  readonly board: number;
  readonly side: number;
  readonly gap: number;
  readonly spine: number;
  readonly height: number;
  readonly inset: number;
  readonly isBroken: boolean;
}

function planItems({ board, side, gap, spine, height, inset, isBroken }: JoinPlan): readonly SceneItem[] {
  const rightBoard = board + 2 * gap + spine;
  const full = rightBoard + board;
  const strips = height - 2 * inset;
  const outer = (x: number): SceneItem => (isBroken ? stroke(wavyLine(point(x, 0), point(x, height)), "edge") : stroke(line(point(x, 0), point(x, height)), "outline"));
  const ridges = [board, board + gap, board + gap + spine, rightBoard];
  return [
    ...[0, rightBoard].map((x) => area(rectangle(x, 0, board, height), "face-light", "none")),
    stroke(polyline([point(0, 0), point(board, 0), point(board, height), point(0, height)]), "outline"),
    stroke(polyline([point(full, 0), point(rightBoard, 0), point(rightBoard, height), point(full, height)]), "outline"),
    outer(0), outer(full),
    area(rectangle(board - side, inset, 2 * side + 2 * gap + spine, strips), "face-dark", "outline"),
    ...ridges.map((x) => stroke(line(point(x, inset), point(x, inset + strips)), "edge")),
  ];
}

function planLabels(plan: JoinPlan, input: DrawingInput<"stub-album">): readonly Placeable[] {
  const { board, side, gap, spine, height, inset } = plan;
  const words = sectionWords(input);
  const rightBoard = board + 2 * gap + spine;
  const full = rightBoard + board;
  const text = words.size(input.model.geometry.stripInset);
  const pointing = (name: string, lines: string | readonly string[], x: number, share: number): Placeable =>
    leaderAnywhere({ name, text: lines, target: point(x, height * share), reach: full - x + 3, directions: [0, 12, -12, 25, -25] });
  return [
    dimension({ name: "inset at the head", from: point(0, 0), to: point(board - side, inset), side: "left", text, offset: 4 }),
    firstOf(
      dimension({ name: "inset at the tail", from: point(0, height), to: point(board - side, height - inset), side: "left", text, offset: 4 }),
      dimension({ name: "inset at the tail", from: point(full, height), to: point(rightBoard + side, height - inset), side: "right", text, offset: 4 }),
    ),
    leaderAnywhere({ name: "flush", text: "edges flush", target: point(board, inset / 2), end: "arrow", directions: [75, 60, 90, 105, 45], reach: 6 }),
    pointing("boards", [words.part("boards"), "outside up"], full - Math.min(3, (board - side) / 2), 0.14),
    pointing("side strip", [words.part("side-strip"), "under the cloth"], rightBoard + side / 2, 0.36),
    pointing("joint", "joint", rightBoard - gap / 2, 0.56),
    pointing("spine strip", [words.part("spine-strip"), "under the cloth"], board + gap + spine * 0.75, 0.7),
    leaderAnywhere({ name: "hinge cloth", text: words.part("hinge-cloth"), target: point(board + gap + spine * 0.3, height * 0.9), directions: [270, 285, 255, 300, 240], reach: height * 0.1 + 4 }),
  ];
}

/** The pile on one side strip, from its top at y = 0 down; the board's spine edge is at x = 12. Not to scale. */
const pile = { left: 0, spine: 12, stripEnd: 30, right: 46, pressing: 3, barrier: 0.5, strip: 3.6, cloth: 0.7, adhesive: 0.8, board: 4.4 } as const;
const levels = (() => {
  const upperBarrier = pile.pressing;
  const cloth = upperBarrier + pile.barrier;
  const strip = cloth + pile.cloth;
  const underCloth = strip + pile.strip;
  const adhesive = underCloth + pile.cloth;
  const board = adhesive + pile.adhesive;
  const lowerBarrier = board + pile.board;
  return { upperBarrier, cloth, strip, underCloth, adhesive, board, lowerBarrier, foot: lowerBarrier + pile.barrier };
})();

function weightView(): readonly SceneItem[] {
  const { left, spine, stripEnd, right } = pile;
  const bar = (from: number, to: number, top: number, height: number, fill: "face-light" | "face-middle" | "face-deep" | "adhesive" | "paper"): SceneItem =>
    area(rectangle(from, top, to - from, height), fill, fill === "adhesive" || fill === "face-deep" ? "none" : "edge");
  return [
    label("pile heading", "One side strip under its weight", point(left, -15.5), { size: headingType, weight: 600 }),
    ...weight(point((spine + stripEnd) / 2, 0), 15, 6.5),
    bar(spine - 3, stripEnd + 3, 0, pile.pressing, "paper"),
    bar(spine - 5, stripEnd + 5, levels.upperBarrier, pile.barrier, "face-middle"),
    // Cloth: over strip and joint on top, round the outer edge, and turned in under the strip.
    bar(left, stripEnd + pile.cloth, levels.cloth, pile.cloth, "face-deep"),
    bar(stripEnd, stripEnd + pile.cloth, levels.cloth, levels.adhesive - levels.cloth, "face-deep"),
    bar(spine + 7, stripEnd + pile.cloth, levels.underCloth, pile.cloth, "face-deep"),
    bar(spine, stripEnd, levels.strip, pile.strip, "face-middle"),
    bar(left, spine - 5, levels.strip, pile.strip, "face-middle"),
    bar(spine, stripEnd + pile.cloth, levels.adhesive, pile.adhesive, "adhesive"),
    bar(spine, spine + 7, levels.underCloth, pile.cloth, "adhesive"),
    bar(spine, right, levels.board, pile.board, "face-light"),
    bar(spine - 5, right, levels.lowerBarrier, pile.barrier, "face-middle"),
    bar(spine - 7, right, levels.foot, pile.pressing, "paper"),
    stroke(wavyLine(point(left, levels.cloth - 1), point(left, levels.underCloth + 1)), "edge"),
    stroke(wavyLine(point(right, levels.board - 1), point(right, levels.foot + pile.pressing + 1)), "edge"),
  ];
}

function weightLabels(top: number, input: DrawingInput<"stub-album">): readonly Placeable[] {
  const { part, adhesive } = sectionWords(input);
  const to = (name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[], reach: number): Placeable =>
    leaderAnywhere({ name, text, target: point(x, top + y), directions, reach });
  const right = [0, 12, 20, -12, 30, -20, -30, 40];
  return [
    to("weight", "weight", (pile.spine + pile.stripEnd) / 2 + 4, -3, [0, 10, 20], 14),
    to("upper pressing board", "pressing board", pile.stripEnd + 1, pile.pressing / 2, right, 14),
    to("pile side strip", part("side-strip"), pile.stripEnd - 2, levels.strip + 1.6, right, 21),
    to("pile adhesive", adhesive("boards"), pile.stripEnd - 1, levels.adhesive + 0.4, [0, 3, -3, 6], 19),
    to("pile board", part("boards"), pile.right - 3, levels.board + 2.2, [-8, -14, -20, -30, -45, -60], 7),
    to("pile spine strip", part("spine-strip"), pile.left + 3, levels.strip + 1.8, [90, 105, 75, 120, 270, 255], 9),
    to("barrier sheet", "barrier sheet", pile.spine - 4, levels.lowerBarrier + 0.2, [250, 240, 260, 230, 270, 280], 8),
  ];
}
