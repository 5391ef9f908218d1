// Figure: cover paper laid over a board, its edge over the edge of the cloth; for covers of cloth and paper.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { cornerReach } from "../corner-cut.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { awayFromTheMiddle, nameIn } from "../bench/plan-labels.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxPath, coverRoom, planCover } from "./cover-plan.ts";
import type { CoverPlan } from "./cover-plan.ts";

/** Figure `cover-sides`; none where cloth covers the whole cover. */
export function drawCoverSides(input: DrawingInput<"post-album">): FigureDraft | null {
  const { geometry } = input.model;
  const { paper } = geometry;
  if (!paper) return null;
  const words = sectionWords(input);
  const rooms = planCover(geometry, { ...coverRoom, width: 84, board: { whole: 50, broken: 42 } });
  const { items, scale: plan } = placeAtScale(rooms, (at) => ({ fixed: outsideItems(input, paperEdges(input, at), at), labels: labelsOf(input, paperEdges(input, at), at) }));
  return {
    id: "cover-sides",
    title: "Paper over the board",
    caption: `One cover, outside up, ${plan.scale.name}${plan.left}. The straight edge of the paper lies over the edge of the cloth; at head, tail and fore-edge it reaches beyond the board by the turn-in. The corners at the fore-edge are cut at 45° before turning in. ${input.unitNote}`,
    alternative: `A cover lies outside up: to the left the cloth of the hinge, to the right a piece of paper ${words.size(paper.height)} high × ${words.size(paper.width)} wide. It covers ${words.size(paper.lap)} of the cloth and reaches ${words.size(geometry.turnIn)} beyond the board at head, tail and fore-edge; its two corners at the fore-edge are cut off at 45°.`,
    items,
  };
}

interface PaperEdges {
  readonly left: number;
  readonly right: number;
  readonly turnIn: number;
  readonly cut: number;
}

function paperEdges(input: DrawingInput<"post-album">, { scale, clothRight, board }: CoverPlan): PaperEdges {
  const { geometry } = input.model;
  const mm = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * scale.factor;
  const turnIn = mm(geometry.turnIn);
  return { left: clothRight - mm(geometry.paper!.lap), right: board.right + turnIn, turnIn, cut: cornerReach(point(turnIn, turnIn), mm(geometry.cornerDistance)) };
}

function outsideItems(_input: DrawingInput<"post-album">, paper: PaperEdges, { strip, board, down, across, clothRight }: CoverPlan): readonly SceneItem[] {
  const tail = down.size;
  const corner = (y: number, up: number): SceneItem => stroke(line(point(paper.right - paper.cut - 1, y - up), point(paper.right + 1, y + up * (paper.cut + 1))), "cut");
  return [
    area(boxPath({ left: strip.left, top: strip.top, right: clothRight, bottom: strip.bottom }), "face-dark", "outline"),
    area(rectangle(paper.left, 0, paper.right - paper.left, tail), "paper", "outline"),
    stroke(boxPath({ ...board, left: board.left }), "hidden"),
    stroke(line(point(strip.right, strip.top), point(strip.right, strip.bottom)), "edge"),
    stroke(line(point(clothRight, strip.top), point(clothRight, strip.bottom)), "hidden"),
    ...(paper.cut === 0 ? [] : [corner(0, 1), corner(tail, -1)]),
    ...(down.breakAt === null ? [] : breakAlong(down.breakAt, strip.left - 1, paper.right + 1)),
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, -1, tail + 1)),
  ];
}

function labelsOf(input: DrawingInput<"post-album">, paper: PaperEdges, { strip, board, down, clothRight }: CoverPlan): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const inPaper = { left: Math.max(paper.left, clothRight) + 1, right: board.right, top: board.top, bottom: board.bottom };
  return [
    dimension({ name: "lap", from: point(paper.left, 0), to: point(clothRight, 0), side: "above", text: input.number(geometry.paper!.lap), offset: 5, outside: "before" }),
    dimension({ name: "turn-in at the fore-edge", from: point(board.right, down.size), to: point(paper.right, down.size), side: "below", text: input.number(geometry.turnIn), offset: 5 }),
    dimension({ name: "turn-in at the tail", from: point(paper.right, board.bottom), to: point(paper.right, down.size), side: "right", text: input.number(geometry.turnIn), offset: 5 }),
    dimension({ name: "turn-in at the head", from: point(paper.right, 0), to: point(paper.right, board.top), side: "right", text: input.number(geometry.turnIn), offset: 5 }),
    firstOf(areaLabel("cover paper", words.part("cover-paper"), awayFromTheMiddle(inPaper)), nameIn("cover paper", words.part("cover-paper"), inPaper, { directions: [0, 15, -15], reach: 10 })),
    leaderAnywhere({ name: "cloth", text: [words.part("hinge-cloth"), "outside"], target: point((strip.left + strip.right) / 2, strip.top + (strip.bottom - strip.top) * 0.25), directions: [180, 170, 190, 160], reach: (strip.right - strip.left) / 2 + 6 }),
    leaderAnywhere({ name: "line", text: ["line on", "the cloth"], target: point(paper.left, strip.bottom - 3), end: "arrow", directions: [230, 220, 240, 250], reach: 10 }),
    leaderAnywhere({ name: "hidden board", text: ["edge of the board", "under the paper"], target: point(board.right, board.top + (board.bottom - board.top) * 0.3), end: "arrow", directions: [15, 25, 5, 35], reach: paper.turnIn + 6 }),
  ];
}
