// Figure: hinge strip and board on the cloth, the joint kept even by a spacer.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, leaderAnywhere } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { awayFromTheMiddle, nameIn } from "../bench/plan-labels.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxPath, coveringId, planCover } from "./cover-plan.ts";
import type { CoverPlan } from "./cover-plan.ts";

/** Length of the spacer as drawn, as a share of the height. */
const spacerShare = 0.4;

/** Figure `glue-boards`. */
export function drawGlueBoards(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const gap = words.size(geometry.jointGap);
  const { items, scale: plan } = placeAtScale(planCover(geometry, { width: 92, board: { whole: 50, broken: 40 }, height: { whole: 74, broken: 58 } }), (at) => ({ fixed: planItems(input, at), labels: labelsOf(input, at) }));
  return {
    id: "glue-boards",
    title: "Hinge strip and board on the cloth",
    caption: `One cover, wrong side of the cloth up, ${plan.scale.name}${plan.left}. The spacer, ${gap} wide, is slid along the joint and touches both edges; the board is pushed against it. Heads and tails of strip and board lie on one line. ${input.unitNote}`,
    alternative: `On the cloth lie the hinge strip, ${words.size(geometry.hingeWidth)} wide, and to the right of it the board, ${words.size(geometry.boardWidth)} wide, both ${words.size(geometry.coverHeight)} high. Between them a strip of scrap board ${gap} wide keeps the joint even. An arrow pushes the board against it.`,
    items,
  };
}

/** The spacer lies in the lower part, clear of the break. */
function spacerOf({ strip, board, down }: CoverPlan) {
  const from = down.breakAt === null ? strip.top + (strip.bottom - strip.top) * (1 - spacerShare) : down.breakAt + 3;
  return { left: strip.right, right: board.left, top: Math.min(from, strip.bottom - 4), bottom: strip.bottom + 2 };
}

function planItems(input: DrawingInput<"post-album">, plan: CoverPlan): readonly SceneItem[] {
  const { strip, board, across, down, clothRight } = plan;
  const spacer = spacerOf(plan);
  const reach = Math.max(board.right, clothRight);
  return [
    area(rectangle(0, 0, clothRight, down.size), "face-light", "outline"),
    area(boxPath(strip), "face-middle", "outline"), area(boxPath(board), "face-middle", "outline"),
    area(boxPath(spacer), "face-deep", "edge"),
    pushArrow(point(board.left + 0.6, (spacer.top + strip.bottom) / 2), point(-1, 0), 9),
    stroke(line(point(strip.left - 5, strip.top), point(board.right + 4, strip.top)), "centre"),
    ...(down.breakAt === null ? [] : breakAlong(down.breakAt, -1, reach + 1)),
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, -1, down.size + 1)),
    ...(input.model.geometry.paper ? [stroke(line(point(clothRight, strip.top), point(clothRight, strip.bottom)), "hidden")] : []),
  ];
}

function labelsOf(input: DrawingInput<"post-album">, plan: CoverPlan): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { strip, board, down, clothRight } = plan;
  const spacer = spacerOf(plan);
  const right = Math.max(board.right, clothRight);
  return [
    dimension({ name: "joint gap", from: point(strip.right, down.size), to: point(board.left, down.size), side: "below", text: input.number(geometry.jointGap), offset: 5 }),
    dimension({ name: "hinge width", from: point(strip.left, 0), to: point(strip.right, 0), side: "above", text: input.number(geometry.hingeWidth), offset: 5 }),
    dimension({ name: "board width", from: point(board.left, 0), to: point(board.right, 0), side: "above", text: input.number(geometry.boardWidth), offset: 5 }),
    dimension({ name: "cover height", from: point(0, strip.top), to: point(0, strip.bottom), side: "left", text: input.number(geometry.coverHeight), offset: 5 }),
    nameIn("hinge strip", words.part("hinge-strip"), strip, { directions: [200, 190, 210, 180], reach: 12 }),
    firstOf(areaLabel("board", words.part("boards"), awayFromTheMiddle({ ...board, left: board.left + 12 })), nameIn("board", words.part("boards"), board, { directions: [0, 10, -10], reach: 8 })),
    leaderAnywhere({ name: "spacer", text: ["spacer of", "scrap board"], target: point((spacer.left + spacer.right) / 2, spacer.bottom - 1.2), directions: [285, 295, 275, 305, 315, 265], reach: down.size - spacer.bottom + 8 }),
    leaderAnywhere({ name: "level", text: ["heads on", "one line"], target: point(board.right + 2, strip.top), end: "arrow", directions: [20, 10, 30, 0, 45], reach: 5 }),
    leaderAnywhere({ name: "cloth", text: [words.part(coveringId(geometry)), "wrong side up"], target: point(Math.min(strip.left * 0.5, toMillimetres(geometry.turnIn)), down.size - strip.top * 0.4), directions: [250, 240, 260, 230], reach: 6 + (right > 0 ? 2 : 0) }),
  ];
}
