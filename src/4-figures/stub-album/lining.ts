// Figure: the inside of a board with its lining paper, the insets all round and the ribbon under it.
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import { boardGrain, boardInside, boardItems, edgeNames, freeEnd, gluedRibbon, nameInside } from "./board-inside.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the board on paper. */
const room = { width: 46, height: 56 } as const;

/** Figure `lining`; none for a book without lining. */
export function drawLining(input: DrawingInput<"stub-album">): FigureDraft | null {
  const { geometry } = input.model;
  const { lining } = geometry;
  if (!lining) return null;
  const words = sectionWords(input);
  const inset = words.size(lining.inset);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.boardWidth), toMillimetres(geometry.boardHeight), room.width, room.height), ({ factor }) => {
    const board = boardInside(geometry, factor);
    const { width, height, middle, ribbon } = board;
    const [liningWidth, liningHeight] = [toMillimetres(lining.width) * factor, toMillimetres(lining.height) * factor];
    // Centred: what rounding takes off the lining shows on both sides alike.
    const [left, top] = [(width - liningWidth) / 2, (height - liningHeight) / 2];
    const withRibbon = geometry.closureLength !== null;
    const inside = { left, top, right: left + liningWidth, bottom: top + liningHeight };
    const labels: Placeable[] = [
      dimension({ name: "inset at the spine edge", from: point(0, 0), to: point(left, 0), side: "above", text: inset, offset: 4 }),
      dimension({ name: "inset at the fore-edge", from: point(left + liningWidth, height), to: point(width, height), side: "below", text: inset, offset: 4 }),
      dimension({ name: "inset at the head", from: point(0, 0), to: point(0, top), side: "left", text: inset, offset: 4 }),
      firstOf(
        dimension({ name: "inset at the tail", from: point(0, top + liningHeight), to: point(0, height), side: "left", text: inset, offset: 4 }),
        dimension({ name: "inset at the tail", from: point(width, top + liningHeight), to: point(width, height), side: "right", text: inset, offset: 4 }),
      ),
      ...edgeNames(board),
      boardGrain(board, { ...inside, right: left + liningWidth * 0.5 }),
      nameInside("lining paper", words.part("lining-paper"), { ...inside, bottom: top + liningHeight * 0.5 }, point(width * 0.5, height * 0.15)),
      leaderAnywhere({ name: "boards", text: words.part("boards"), target: point(width - Math.max(0.4, left / 2), height * 0.72), directions: [0, 340, 20, 320], reach: 6 }),
    ];
    if (withRibbon) labels.push(leaderAnywhere({ name: "closure ribbon", text: [words.part("closure-ribbon"), "under it"], target: point(width - ribbon.glued * 0.7, middle + ribbon.width * 0.3), directions: [250, 240, 230, 270, 220, 320, 300, 120], reach: 8 }));
    return {
      fixed: [
        ...boardItems(board, "face-middle"), ...(withRibbon ? freeEnd(board) : []),
        area(rectangle(left, top, liningWidth, liningHeight), "paper", "edge"),
        ...(withRibbon ? [area(rectangle(width - left, middle - ribbon.width / 2, left, ribbon.width), "face-deep", "none"), stroke(gluedRibbon(board), "hidden")] : []),
      ],
      labels,
    };
  });
  const ribbonWords = geometry.closureLength ? " The glued end of the closure ribbon lies under it at the middle of the fore-edge." : "";
  return {
    id: "lining",
    title: "Lining the inside of a board",
    caption: `The back board from inside with its lining paper, ${scale.name}; the front board is its mirror image. The lining leaves the same rim of board all round.${ribbonWords}`,
    alternative: `Inside of a board, ${words.size(geometry.boardHeight)} high × ${words.size(geometry.boardWidth)} wide, with lining paper ${words.size(lining.height)} high × ${words.size(lining.width)} wide, grain along the height. `
      + `The lining stops ${inset} short of the board’s head, tail, spine edge and fore-edge.${ribbonWords}`,
    items,
  };
}
