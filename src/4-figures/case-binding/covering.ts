// Figures of the covering: turning in a spine cloth, cloth corners, paper sides.
import { line, polygon, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import { grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { boneFolder } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxArea, caseSize, planBox, planCase } from "./case-plan.ts";

type Input = DrawingInput<"case-binding">;

/** Figure `spine-turn-in`: the head of the spine cloth folded over boards and strip, the tail still flat. */
export const drawSpineTurnIn: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  if (geometry.covering.kind === "full") return null;
  const words = sectionWords(input);
  const size = caseSize(geometry);
  const { items, scale } = placeAtScale(scalesThatFit(size.width, size.height, 74, 60), ({ factor }) => {
    const plan = planCase(geometry, factor);
    const { cloth, left, strip, right, turnIn } = plan;
    const box = planBox(plan);
    return {
      fixed: [
        area(rectangle(0, turnIn, cloth.right, cloth.bottom - turnIn), "face-light", "outline"),
        ...[left, strip, right].map((each) => boxArea(each, "face-middle", "outline")),
        area(rectangle(0, turnIn, cloth.right, turnIn), "cloth", "outline"),
        ...movementArrow(point(cloth.right / 2, cloth.bottom + 5), point(cloth.right / 2, left.bottom - turnIn * 0.6), 3),
        ...boneFolder(point((strip.right + right.left) / 2, turnIn * 1.2), 62, 22),
      ],
      labels: [
        dimension({ name: "turn-in", from: point(box.left, left.bottom), to: point(box.left, cloth.bottom), side: "left", text: words.size(geometry.covering.turnIn), offset: 5 }),
        leaderAnywhere({ name: "turned", text: "turned in at the head", target: point(cloth.right * 0.12, turnIn * 1.5), directions: [130, 120, 145, 110], reach: turnIn * 1.5 + 6 }),
        leaderAnywhere({ name: "tail", text: ["tail: fold it", "over next"], target: point(cloth.right * 0.85, (left.bottom + cloth.bottom) / 2), directions: [320, 330, 310, 300], reach: 8 }),
        leaderAnywhere({ name: "boards", text: words.part("boards"), target: point(right.right - 3, (right.top + right.bottom) / 2), directions: [0, 15, -15], reach: 9 }),
      ],
    };
  });
  return {
    id: "spine-turn-in",
    title: "Turning in head and tail of the spine",
    caption: `The case from inside, ${scale.name}. Fold the cloth at the head over boards and strip and push it into both joints with the bone folder; then the tail.`,
    alternative: `The case from inside: two boards and the spine strip on the spine cloth. At the head the cloth, ${words.size(geometry.covering.turnIn)} deep, is folded over boards and strip; a bone folder presses it into a joint. At the tail it still stands out.`,
    items,
  };
};

/** Figure `cover-corners`: one cloth corner on the outside of a board, its turn-ins still flat. */
export const drawCoverCorners: DrawFigure<"case-binding"> = (input) => {
  const { covering } = input.model.geometry;
  const { corners } = covering;
  if (!corners) return null;
  const words = sectionWords(input);
  const shown = toMillimetres(corners.square) * 1.25;
  const { items, scale } = placeAtScale(scalesThatFit(shown, shown, 62, 62, 2), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [turnIn, reach, distance] = [paper(covering.turnIn), paper(corners.reach), paper(covering.cornerDistance)];
    const end = shown * factor;
    // The board's corner lies at (turnIn, turnIn); the slanting edge is the line x + y = 2 turnIn + reach.
    const sum = 2 * turnIn + reach;
    const cut = Math.max(0, 2 * turnIn - distance * Math.SQRT2);
    return {
      fixed: [
        area(rectangle(turnIn, turnIn, end - turnIn, end - turnIn), "face-light", "none"),
        stroke([{ kind: "move", to: point(end, turnIn) }, { kind: "line", to: point(turnIn, turnIn) }, { kind: "line", to: point(turnIn, end) }], "outline"),
        stroke(wavyLine(point(end, turnIn), point(end, end)), "edge"), stroke(wavyLine(point(turnIn, end), point(end, end)), "edge"),
        area(polygon([point(sum, 0), point(0, sum), point(0, 0)]), "face-middle", "outline"),
        stroke(line(point(turnIn, turnIn), point(turnIn + reach, turnIn)), "hidden"), stroke(line(point(turnIn, turnIn), point(turnIn, turnIn + reach)), "hidden"),
        ...(cut > 0 ? [stroke(line(point(cut, 0), point(0, cut)), "cut")] : []),
      ],
      labels: [
        dimension({ name: "reach", from: point(turnIn, turnIn), to: point(turnIn + reach, turnIn), side: "above", text: words.size(corners.reach), offset: turnIn + 6 }),
        dimension({ name: "turn-in", from: point(0, turnIn), to: point(0, 0), side: "left", text: words.size(covering.turnIn), offset: 5 }),
        leaderAnywhere({ name: "distance", text: ["cut off here,", `${words.thickness(covering.cornerDistance)} from the board’s corner`], target: point(cut * 0.25, cut * 0.75), end: "arrow", directions: [200, 190, 210, 180, 225], reach: 9 }),
        leaderAnywhere({ name: "cloth", text: `half a ${words.part("corner-square")}`, target: point(turnIn + reach * 0.3, turnIn + reach * 0.3), directions: [330, 340, 320, 350, 0], reach: reach * 0.5 + 10 }),
        leaderAnywhere({ name: "slant", text: "on the pencil line", target: point(turnIn + reach * 0.15, turnIn + reach * 0.85), end: "arrow", directions: [330, 320, 340, 310, 350], reach: 12 }),
        leaderAnywhere({ name: "board", text: [words.part("boards"), "outside"], target: point(end - 3, end * 0.62), directions: [0, 10, -10, 20], reach: 8 }),
      ],
    };
  });
  return {
    id: "cover-corners",
    title: "A cloth corner",
    caption: `One fore-edge corner of a board, outside up, ${scale.name}. The long side of the cloth lies on the pencil line, ${words.size(corners.reach)} from the corner along both edges; the same turn-in stands out on both sides.`,
    alternative: `A triangle of cloth lies over a fore-edge corner of a board. Its long side joins two marks, each ${words.size(corners.reach)} from the board’s corner along an edge. It stands out ${words.size(covering.turnIn)} beyond both edges; its tip is cut off at 45°, ${words.thickness(covering.cornerDistance)} from the board’s corner.`,
    items,
  };
};

/** Figure `cover-sides`: a board from outside with spine cloth, and the paper laid on it, its turn-ins still flat. */
export const drawCoverSides: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const { covering } = geometry;
  if (!covering.sides) return null;
  const words = sectionWords(input);
  const [width, height] = [toMillimetres(geometry.boardWidth) + toMillimetres(covering.turnIn), toMillimetres(covering.sides.height)];
  const { items, scale } = placeAtScale(scalesThatFit(width, height, 62, 76), ({ factor }) => sideView(input, factor));
  const corner = covering.corners ? ` Cut ${words.size(covering.corners.paperCut)} off its fore-edge corners, measured along both edges.` : " Its fore-edge corners are cut like those of cloth.";
  return {
    id: "cover-sides",
    title: "A paper side",
    caption: `A board from outside, spine edge at the left, ${scale.name}. The paper lies ${words.size(covering.sides.lap)} over the cloth and stands out by the turn-in, ${words.size(covering.turnIn)}, at head, tail and fore-edge.${corner}`,
    alternative: `${words.part("side-paper")}, ${words.size(covering.sides.height)} high × ${words.size(covering.sides.width)} wide, lies on the outside of a board. Its spine edge lies ${words.size(covering.sides.lap)} over the edge of the spine cloth, which covers ${words.size(covering.clothOnBoards!)} of the board. On the other three sides it stands out by ${words.size(covering.turnIn)}.${corner}`,
    items,
  };
};

function sideView(input: Input, factor: number): { readonly fixed: readonly SceneItem[]; readonly labels: readonly Placeable[] } {
  const { geometry } = input.model;
  const { covering } = geometry;
  const sides = covering.sides!;
  const words = sectionWords(input);
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const [turnIn, cloth, lap, board] = [paper(covering.turnIn), paper(covering.clothOnBoards!), paper(sides.lap), paper(geometry.boardWidth)];
  const high = paper(geometry.boardHeight);
  const left = cloth - lap;
  const right = board + turnIn;
  const distance = paper(covering.cornerDistance);
  const cut = covering.corners ? paper(covering.corners.paperCut) : Math.max(0, 2 * turnIn - distance * Math.SQRT2);
  const reach = covering.corners ? paper(covering.corners.reach) : 0;
  const [top, foot] = [-turnIn, high + turnIn];
  const triangle = (y: number, down: 1 | -1): readonly SceneItem[] => (reach === 0 ? [] : [area(polygon([point(board - reach, y), point(board, y), point(board, y + down * reach)]), "face-dark", "outline")]);
  return {
    fixed: [
      area(rectangle(0, 0, board, high), "face-light", "outline"),
      area(rectangle(0, 0, cloth, high), "face-dark", "outline"), ...triangle(0, 1), ...triangle(high, -1),
      area(polygon([point(left, top), point(right - cut, top), point(right, top + cut), point(right, foot - cut), point(right - cut, foot), point(left, foot)]), "paper", "outline"),
      stroke(line(point(cloth, top), point(cloth, foot)), "hidden"),
      ...[0, high].map((y) => stroke(line(point(left, y), point(Math.min(board, right), y)), "hidden")),
      stroke(line(point(board, Math.max(0, top + cut - turnIn)), point(board, Math.min(high, foot - cut + turnIn))), "hidden"),
    ],
    labels: [
      dimension({ name: "paper width", from: point(left, foot), to: point(right, foot), side: "below", text: words.size(sides.width), offset: 13 }),
      dimension({ name: "lap", from: point(left, foot), to: point(cloth, foot), side: "below", text: words.size(sides.lap), offset: 5, outside: "before" }),
      dimension({ name: "turn-in", from: point(board, foot), to: point(right, foot), side: "below", text: words.size(covering.turnIn), offset: 5 }),
      dimension({ name: "corner", from: point(right, top), to: point(right, top + cut), side: "right", text: words.size(covering.corners ? covering.corners.paperCut : covering.turnIn), offset: 6 }),
      leaderAnywhere({ name: "cloth", text: covering.kind === "half" ? "spine cloth" : words.part("cloth"), target: point(left / 2, high * 0.4), directions: [180, 170, 190], reach: left / 2 + 7 }),
      leaderAnywhere({ name: "paper", text: words.part("side-paper"), target: point(right - 4, high * 0.5), directions: [0, 10, -10], reach: 9 }),
      ...(covering.corners ? [leaderAnywhere({ name: "corner cloth", text: "cloth corner", target: point(board - reach * 0.12, high - reach * 0.12), directions: [340, 330, 350, 0], reach: 14 })] : []),
      grainArrow("grain", "height", gridCentres({ left: cloth, right: board, top: 0, bottom: high }, 5, 5)),
    ].filter((each) => covering.corners !== null || each.name !== "corner"),
  };
}
