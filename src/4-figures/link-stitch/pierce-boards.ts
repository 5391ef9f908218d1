// Figure `pierce-boards`: a board outside up on waste board, the template taped on, the tool upright, the other hand away.
import { circle, line, transformPath } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { cos30, isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { uprightPunch } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxOutline, prism } from "../bench/solid.ts";

/** Room on paper for the board, without the tool. */
const room = { width: 74, height: 46 } as const;
/** Rim of the waste board round the board, and thicknesses, on paper. */
const waste = { rim: 4, thickness: 2.2, board: 1.6 } as const;

/** The front board, head to the left, its spine edge nearest. */
export function drawPierceBoards(input: DrawingInput<"link-stitch">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const reach = toMillimetres(geometry.boardHeight) + toMillimetres(geometry.boardWidth);
  const { items, scale } = placeAtScale(scalesThatFit(reach * cos30, reach / 2, room.width, room.height), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [height, width, across] = [paper(geometry.boardHeight), paper(geometry.boardWidth), paper(geometry.holeDistance)];
    const radius = Math.max(paper(geometry.holeDiameter) / 2, 0.4);
    const hand = spacePoint(height * 0.7, width * 0.62, waste.board);
    const mark = (along: number): readonly SceneItem[] => {
      const plane = isometricPlane(spacePoint(along, across, waste.board), spacePoint(1, 0, 0), spacePoint(0, 1, 0));
      return [stroke(transformPath(plane, line(point(-1.6, 0), point(1.6, 0))), "edge"), stroke(transformPath(plane, line(point(0, -1.6), point(0, 1.6))), "edge"), area(transformPath(plane, circle(point(0, 0), radius)), "arrow", "none")];
    };
    const ring = isometricPlane(hand, spacePoint(height * 0.16, 0, 0), spacePoint(0, width * 0.2, 0));
    const first = isometric(spacePoint(paper(geometry.holesAlong[0]!), across, waste.board));
    return {
      fixed: [
        ...prism(boxOutline(-waste.rim, -waste.rim, height + 2 * waste.rim, width + 2 * waste.rim), -waste.thickness, 0, { top: "paper", left: "face-middle", right: "face-dark" }),
        ...prism(boxOutline(0, 0, height, width), 0, waste.board, { top: "face-light", left: "face-middle", right: "face-dark" }),
        stroke(transformPath(ring, circle(point(0, 0), 1)), "placement"),
        ...geometry.holesAlong.flatMap((along) => mark(paper(along))),
        ...uprightPunch(first, radius * 2),
      ],
      labels: [
        leaderAnywhere({ name: "tool", text: ["punch or drill,", "upright"], target: point(first.x, first.y - 24), directions: [150, 165, 135, 180], reach: 8 }),
        leaderAnywhere({ name: "hand", text: "other hand here", target: isometric(hand), directions: [45, 60, 30, 75], reach: 18 }),
        leaderAnywhere({ name: "board", text: "board, outside up", target: isometric(spacePoint(height * 0.96, width * 0.25, waste.board)), directions: [330, 340, 320, 0], reach: 12 }),
        leaderAnywhere({ name: "waste", text: "waste board", target: isometric(spacePoint(height * 0.6, -waste.rim, -waste.thickness / 2)), directions: [230, 240, 250, 220], reach: 8 }),
        leaderAnywhere({ name: "spine edge", text: "spine edge", target: isometric(spacePoint(height * 0.25, 0, waste.board)), end: "arrow", directions: [220, 210, 230, 240], reach: 14 }),
      ],
    };
  });
  const diameter = words.thickness(geometry.holeDiameter);
  return {
    id: "pierce-boards", title: "Piercing a board",
    caption: `A board with its outside up on a waste board, pictorial view, ${scale.name} along the edges. Pierce straight down, ${diameter} wide. Keep the other hand in the dashed ring, away from the tool.`,
    alternative: `A board lies outside up on a waste board, its spine edge nearest. Along that edge ${geometry.holesAlong.length} holes are marked. The tool stands upright over the first one; every hole is ${diameter} wide. The other hand holds the board far from the tool.`,
    items,
  };
}
