// Figure: the inside of a board with the closure ribbon glued at the middle of its fore-edge.
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import { boardInside, boardItems, edgeNames, freeEnd, gluedRibbon, nameInside } from "./board-inside.ts";
import type { BoardInside } from "./board-inside.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the board on paper. */
const room = { width: 42, height: 52 } as const;

/** Figure `closure`; none for a book without ribbons. */
export function drawClosure(input: DrawingInput<"stub-album">): FigureDraft | null {
  const { geometry } = input.model;
  if (!geometry.closureLength) return null;
  const words = sectionWords(input);
  const glued = words.size(geometry.closureGlued);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.boardWidth), toMillimetres(geometry.boardHeight), room.width, room.height), ({ factor }) => {
    const board = boardInside(geometry, factor);
    const { width, height, middle, ribbon } = board;
    return {
      fixed: [
        ...boardItems(board, "face-light"), area(gluedRibbon(board), "face-deep", "outline"), ...freeEnd(board),
        stroke(line(point(width - ribbon.glued - 7, middle), point(width - ribbon.glued - 0.8, middle)), "centre"),
      ],
      labels: [
        dimension({ name: "glued length", from: point(width - ribbon.glued, middle + ribbon.width / 2), to: point(width, middle + ribbon.width / 2), side: "below", text: glued, offset: 5 }),
        ...middleOfForeEdge(board),
        ...edgeNames(board),
        leaderAnywhere({ name: "closure ribbon", text: [words.part("closure-ribbon"), `${words.size(geometry.closureLength!)} long`], target: point(width - ribbon.glued * 0.6, middle), directions: [120, 135, 110, 90, 150, 60, 45, 30], reach: 9 }),
        nameInside("boards", `${words.part("boards")}, inside`, { left: 0, top: height * 0.55, right: width, bottom: height }, point(width * 0.5, height * 0.85)),
      ],
    };
  });
  return {
    id: "closure",
    title: "Ribbon on the inside of a board",
    caption: `The back board from inside, ${scale.name}; the front board is its mirror image. The end of the ribbon is glued flat at the middle of the fore-edge; its free end is drawn shortened.`,
    alternative: `Inside of a board, ${words.size(geometry.boardHeight)} high × ${words.size(geometry.boardWidth)} wide. The closure ribbon, ${words.size(geometry.closureLength)} long and ${words.size(geometry.ribbonWidth)} wide, lies square to the fore-edge, its middle at half the height of the board. `
      + `${glued} of it are glued to the board from the fore-edge inwards; the rest hangs free beyond the fore-edge.`,
    items,
  };
}

/** Half a fore-edge on paper that is long enough for its own dimension. */
const halfRoom = 14;

/** That the ribbon lies in the middle: two equal halves, or in words where the board is too low for them. */
function middleOfForeEdge({ width, height, middle, ribbon }: BoardInside): readonly Placeable[] {
  const half = (name: string, from: number, to: number): Placeable =>
    dimension({ name, from: point(width, from), to: point(width, to), side: "right", text: "equal", offset: 19 });
  if (middle >= halfRoom) return [half("upper half", 0, middle), half("lower half", middle, height)];
  return [leaderAnywhere({ name: "middle", text: "middle of the fore-edge", target: point(width, middle - ribbon.width / 2), end: "arrow", directions: [60, 50, 40, 70, 30], reach: 8 })];
}
