// Figure: a covering wrong side up with its board on it, measured from head and left edge, its corners to be cut off.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { cornerReach } from "../corner-cut.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import { sectionWords } from "./section-words.ts";

/** Room for the covering on paper. */
const room = { width: 72, height: 66 } as const;

/** A board in the middle of its covering, the same turn-in all round. */
export interface CoveredBoardSpec {
  readonly id: string;
  readonly title: string;
  /** Part ids. */
  readonly covering: string;
  readonly board: string;
  readonly turnIn: Length;
  /** From the board's corner to the 45° cut, square to it. */
  readonly cornerDistance: Length;
}

/** Where a board lies on its covering. */
export function drawCoveredBoard(input: DrawingInput, spec: CoveredBoardSpec): FigureDraft {
  const words = sectionWords(input);
  const partOf = (id: string) => input.model.parts.find((part) => part.id === id)!;
  const [covering, board] = [partOf(spec.covering), partOf(spec.board)];
  const [sheetWidth, sheetHeight] = [toMillimetres(covering.width), toMillimetres(covering.height)];
  const turnIn = words.size(spec.turnIn);
  const { items, scale } = placeAtScale(scalesThatFit(sheetWidth, sheetHeight, room.width, room.height), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [width, height, edge] = [sheetWidth * factor, sheetHeight * factor, paper(spec.turnIn)];
    const [boardWidth, boardHeight] = [paper(board.width), paper(board.height)];
    const box = { left: edge, top: edge, right: edge + boardWidth, bottom: edge + boardHeight };
    const reach = Math.max(0, cornerReach(point(edge, edge), paper(spec.cornerDistance)));
    const corners = reach === 0 ? [] : ([[0, 0, 1, 1], [width, 0, -1, 1], [0, height, 1, -1], [width, height, -1, -1]] as const).map(([x, y, right, down]) =>
      stroke(line(point(x, y + down * reach), point(x + right * reach, y)), "placement"));
    const named = (name: string, text: string, centres: readonly { readonly x: number; readonly y: number }[], target: { readonly x: number; readonly y: number }, directions: readonly number[]): Placeable =>
      firstOf(areaLabel(name, text, centres), leaderAnywhere({ name, text, target, directions, reach: 6 }));
    return {
      fixed: [
        area(rectangle(0, 0, width, height), "face-light", "outline"),
        stroke(line(point(0, edge), point(width, edge)), "edge"), stroke(line(point(edge, 0), point(edge, height)), "edge"),
        area(rectangle(edge, edge, boardWidth, boardHeight), "face-middle", "outline"),
        ...corners,
      ],
      labels: [
        dimension({ name: "turn-in at the head", from: point(width, 0), to: point(width, edge), side: "right", text: input.number(spec.turnIn), offset: 5 }),
        dimension({ name: "turn-in at the left", from: point(0, 0), to: point(edge, 0), side: "above", text: input.number(spec.turnIn), offset: 5 }),
        dimension({ name: "board width", from: point(edge, height), to: point(edge + boardWidth, height), side: "below", text: input.number(board.width), offset: 6 }),
        dimension({ name: "covering width", from: point(0, height), to: point(width, height), side: "below", text: input.number(covering.width), offset: 13 }),
        dimension({ name: "board height", from: point(0, edge), to: point(0, edge + boardHeight), side: "left", text: input.number(board.height), offset: 6 }),
        dimension({ name: "covering height", from: point(0, 0), to: point(0, height), side: "left", text: input.number(covering.height), offset: 13 }),
        grainArrow("grain", "height", [...(boardHeight < 20 ? [] : gridCentres({ ...box, right: edge + boardWidth * 0.6 }, 3, 3)), ...[8, 14, 20, 26].map((out) => point(width + out, height * 0.6))]),
        named("board", words.part(spec.board), gridCentres(box, 5, 9), point(edge + boardWidth * 0.8, edge + boardHeight * 0.7), [0, 15, -15, 30, -30]),
        leaderAnywhere({ name: "covering", text: [words.part(spec.covering), "wrong side up"], target: point(width - edge * 0.4, edge + boardHeight * 0.3), directions: [10, 0, 20, -10, -20], reach: edge * 0.4 + 5 }),
        ...(reach === 0 ? [] : [leaderAnywhere({ name: "corner", text: "corner: cut off later", target: point(width - reach * 0.45, height - reach * 0.45), end: "arrow" as const, directions: [330, 320, 340, 310, 0, 350], reach: reach * 0.45 + 5 })]),
      ],
    };
  });
  const both = board.count > 1 ? "one of the boards" : "the board";
  return {
    id: spec.id, title: spec.title,
    caption: `The ${covering.name} wrong side up with ${both} on it, ${scale.name}. Two drawn lines, ${turnIn} from the head edge and from the left edge, show where the board’s corner goes. ${input.unitNote}`,
    alternative: `The ${covering.name}, ${words.size(covering.height)} high and ${words.size(covering.width)} wide, lies wrong side up, grain along the height. Lines are drawn on it ${turnIn} from its head edge and ${turnIn} from its left edge. `
      + `The board, ${words.size(board.height)} high and ${words.size(board.width)} wide, lies with its corner where they cross, the same turn-in all round; the four corners of the ${covering.name} are cut off at 45° later.`,
    items,
  };
}
