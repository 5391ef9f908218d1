// Figure: the inside of a covered board with its lining paper, the insets all round.
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area } from "../scene.ts";
import { sectionWords } from "./section-words.ts";

/** Room for the board on paper. */
const room = { width: 52, height: 62 } as const;

/** A lining in the middle of a board. */
export interface LinedBoardSpec {
  readonly id: string;
  readonly title: string;
  /** Part ids. */
  readonly lining: string;
  readonly board: string;
  readonly inset: Length;
}

/** Where the lining lies inside a board. */
export function drawLinedBoard(input: DrawingInput, spec: LinedBoardSpec): FigureDraft {
  const words = sectionWords(input);
  const partOf = (id: string) => input.model.parts.find((part) => part.id === id)!;
  const [lining, board] = [partOf(spec.lining), partOf(spec.board)];
  const inset = words.size(spec.inset);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(board.width), toMillimetres(board.height), room.width, room.height), ({ factor }) => {
    const [width, height] = [toMillimetres(board.width) * factor, toMillimetres(board.height) * factor];
    const [liningWidth, liningHeight] = [toMillimetres(lining.width) * factor, toMillimetres(lining.height) * factor];
    // Centred: what rounding takes off the lining shows on both sides alike.
    const [left, top] = [(width - liningWidth) / 2, (height - liningHeight) / 2];
    const inside = { left, top, right: left + liningWidth, bottom: top + liningHeight };
    const beside = (x: number): readonly Point[] => [0.5, 0.35, 0.65, 0.2, 0.8].map((share) => point(x, height * share));
    return {
      fixed: [area(rectangle(0, 0, width, height), "face-middle", "outline"), area(rectangle(left, top, liningWidth, liningHeight), "paper", "edge")],
      labels: [
        dimension({ name: "inset at the head", from: point(0, 0), to: point(0, top), side: "left", text: inset, offset: 4 }),
        dimension({ name: "inset at the spine edge", from: point(0, 0), to: point(left, 0), side: "above", text: inset, offset: 4 }),
        dimension({ name: "inset at the fore-edge", from: point(left + liningWidth, height), to: point(width, height), side: "below", text: inset, offset: 4 }),
        areaLabel("spine edge", "spine edge", [-3, -6, -10, -14].flatMap(beside), { angle: 90 }),
        areaLabel("fore-edge", "fore-edge", [3, 6, 10, 14].flatMap((out) => beside(width + out)), { angle: 90 }),
        firstOf(areaLabel("lining", words.part(spec.lining), gridCentres(inside, 5, 9)), leaderAnywhere({ name: "lining", text: words.part(spec.lining), target: point(width * 0.5, height * 0.2), directions: [30, 45, 15, 60], reach: 8 })),
        grainArrow("grain", "height", [...(height < 20 ? [] : gridCentres(inside, 5, 7)), ...[8, 14, 20, 26].flatMap((out) => [point(width + out, height / 2), point(-out - 6, height / 2)])]),
        leaderAnywhere({ name: "board", text: words.part(spec.board), target: point(width - Math.max(0.4, left / 2), height * 0.75), directions: [340, 330, 350, 320, 0, 20], reach: 6 }),
      ],
    };
  });
  return {
    id: spec.id, title: spec.title,
    caption: `The inside of a board with its ${lining.name}, ${scale.name}. It leaves the same rim of covering all round, ${inset} wide.`,
    alternative: `Inside of a board, ${words.size(board.height)} high × ${words.size(board.width)} wide, with the ${lining.name}, ${words.size(lining.height)} high × ${words.size(lining.width)} wide, grain along the height; it stops ${inset} short of the board’s head, tail, spine edge and fore-edge.`,
    items,
  };
}
