// Figure: the inside of a cover with hinge lining and lining paper, and the margins that are left.
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross, breakAlong } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { awayFromTheMiddle, besideThePlan } from "../bench/plan-labels.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxPath, coverRoom, planCover } from "./cover-plan.ts";
import type { CoverPlan } from "./cover-plan.ts";

/** Figure `cover-inside`; none for a book without lining. */
export function drawCoverInside(input: DrawingInput<"post-album">): FigureDraft | null {
  const { geometry } = input.model;
  const { lining } = geometry;
  if (!lining) return null;
  const words = sectionWords(input);
  const inset = words.size(geometry.inset);
  const { items, scale: plan } = placeAtScale(planCover(geometry, { ...coverRoom, width: 90, board: { whole: 54, broken: 44 } }), (at) => ({ fixed: insideItems(input, at), labels: labelsOf(input, at) }));
  return {
    id: "cover-inside",
    title: "The lined cover, inside",
    caption: `One cover from the inside, ${plan.scale.name}${plan.left}; the other one is its mirror image. The lining paper lies over the lap of the hinge lining and leaves the same rim on all four sides of the board; it never crosses the joint.`,
    alternative: `Inside of a cover, hinge to the left. The hinge lining, ${words.size(geometry.hingeLining.height)} high, covers the hinge strip from ${inset} beside the spine edge, goes through the joint and laps ${words.size(geometry.clothLap)} onto the board. `
      + `The lining paper, ${words.size(lining.height)} high × ${words.size(lining.width)} wide, stops ${inset} short of head, tail, fore-edge and the edge beside the joint.`,
    items,
  };
}

function parts(input: DrawingInput<"post-album">, { strip, board, scale }: CoverPlan) {
  const { geometry } = input.model;
  const inset = toMillimetres(geometry.inset) * scale.factor;
  const lap = Math.min(toMillimetres(geometry.clothLap) * scale.factor, (board.right - board.left) * 0.9);
  return {
    inset,
    cover: { ...strip, right: board.right },
    hinge: { left: strip.left + inset, right: board.left + lap, top: strip.top + inset, bottom: strip.bottom - inset },
    paper: { left: board.left + inset, right: board.right - inset, top: board.top + inset, bottom: board.bottom - inset },
  };
}

function insideItems(input: DrawingInput<"post-album">, plan: CoverPlan): readonly SceneItem[] {
  const { strip, board, down, across } = plan;
  const { cover, hinge, paper } = parts(input, plan);
  const edge = (x: number): SceneItem => stroke(line(point(x, strip.top), point(x, strip.bottom)), "hidden");
  return [
    area(boxPath(cover), "face-dark", "outline"), area(boxPath(hinge), "face-middle", "edge"), edge(strip.right), edge(board.left),
    area(boxPath(paper), "paper", "edge"),
    ...(hinge.right > paper.left + 0.5 ? [stroke(line(point(hinge.right, hinge.top), point(hinge.right, hinge.bottom)), "hidden")] : []),
    ...(down.breakAt === null ? [] : breakAlong(down.breakAt, cover.left - 1, cover.right + 1)),
    ...(across.breakAt === null ? [] : breakAcross(across.breakAt, cover.top - 1, cover.bottom + 1)),
  ];
}

function labelsOf(input: DrawingInput<"post-album">, plan: CoverPlan): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { strip, board, down } = plan;
  const { cover, hinge, paper } = parts(input, plan);
  const inset = input.number(geometry.inset);
  const inPaper = { ...paper, left: Math.max(paper.left, hinge.right) };
  return [
    dimension({ name: "inset at the spine", from: point(cover.left, cover.bottom), to: point(hinge.left, cover.bottom), side: "below", text: inset, offset: 5, outside: "before" }),
    dimension({ name: "inset beside the joint", from: point(board.left, cover.top), to: point(paper.left, cover.top), side: "above", text: inset, offset: 5 }),
    dimension({ name: "inset at the fore-edge", from: point(paper.right, cover.bottom), to: point(cover.right, cover.bottom), side: "below", text: inset, offset: 5 }),
    dimension({ name: "inset at the head", from: point(cover.left, cover.top), to: point(cover.left, hinge.top), side: "left", text: inset, offset: 5 }),
    dimension({ name: "inset at the tail", from: point(cover.right, paper.bottom), to: point(cover.right, cover.bottom), side: "right", text: inset, offset: 5 }),
    areaLabel("spine edge", "spine edge", [12, 15, 18].flatMap((out) => [0.5, 0.6, 0.4].map((share) => point(cover.left - out, cover.top + (cover.bottom - cover.top) * share))), { angle: 90 }),
    firstOf(areaLabel("lining paper", words.part("lining-paper"), awayFromTheMiddle(inPaper)), leaderAnywhere({ name: "lining paper", text: words.part("lining-paper"), target: point(paper.right - 2, paper.top + 6), directions: [0, 15, -15], reach: 8 })),
    leaderAnywhere({ name: "hinge lining", text: words.part("hinge-lining"), target: point((hinge.left + strip.right) / 2, hinge.top + (hinge.bottom - hinge.top) * 0.2), directions: [110, 100, 120, 90, 130], reach: 18 }),
    leaderAnywhere({ name: "joint", text: "joint, free of paper", target: point((strip.right + board.left) / 2, hinge.bottom - 3), directions: [270, 260, 280, 250, 290], reach: 12 }),
    leaderAnywhere({ name: "rim", text: "rim of covering", target: point(cover.right - Math.max(0.3, (cover.right - paper.right) / 2), cover.top + (cover.bottom - cover.top) * 0.35), directions: [0, 15, -15, 30], reach: 6 }),
    grainArrow("grain", "height", [...awayFromTheMiddle(inPaper), ...besideThePlan({ across: { size: cover.right + 6 }, down })]),
  ];
}
