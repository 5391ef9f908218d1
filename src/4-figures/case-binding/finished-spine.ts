// Figure: the finished book in section through its spine, with the groove and every layer named.
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { sectionWords } from "../bench/section-words.ts";
import { backAt, grooveOf, layOutSection, leftOf, wholeBook } from "./book-section.ts";
import type { BookSection } from "./book-section.ts";

type Input = DrawingInput<"case-binding">;

/** Paper for the thickness of the book, and how much of the boards is drawn. */
const room = { thickness: 52, shown: 34 } as const;
const largest = 4;

/** Figure `finished-spine`. */
export function drawFinishedSpine(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesThatFit(1, toMillimetres(finished.thickness), Infinity, room.thickness, largest), ({ factor }) => {
    const section = layOutSection(geometry, factor, room.shown);
    return { fixed: wholeBook(section), labels: labelsOf(input, section) };
  });
  const back = geometry.round ? `the back is rounded and rises ${words.thickness(geometry.round.rise)} over its shoulders` : "the back is flat";
  return {
    id: "finished-spine",
    title: "Section through the spine",
    caption: `The finished book cut across its spine, ${scale.name}, lying on its back board. Thin layers are drawn as lines, a little apart; the wide line is the cloth, the dashed one the mull. The boards stand ${words.size(geometry.groove)} from the shoulders; the cloth of the joint, ${words.size(geometry.joint)} in the flat case, goes down into this groove.`,
    alternative: `Section across the spine, spine at the left: ${back}, ${words.thickness(geometry.backThickness)} thick with its endpapers. Mull lies over the back and reaches ${words.size(geometry.mull.onBoards)} between endpapers and boards.${geometry.lining ? " A paper lining lies on it." : ""} `
      + `${words.part("spine-strip")} stands behind, ${geometry.stripCovers === "block" ? "as wide as the back" : "as wide as text block and boards together"}. Boards of ${words.thickness(geometry.boardThickness)} lie on the endpapers, ${words.size(geometry.groove)} from the shoulders. The cloth runs over strip and boards and dips into a groove on either side. In all ${words.size(finished.thickness)} thick.`,
    items,
  };
}

/** The labels round the section. */
export function labelsOf(input: Input, section: BookSection): readonly Placeable[] {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { back, board, groove, end, layers, strip } = section;
  const { corner, bottom } = grooveOf(section);
  const left = leftOf(section);
  const right = [0, 10, -10, 20, -20, 35, -35];
  const up = [60, 75, 45, 90, 105, 30];
  const at = (name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[], reach: number, end_: "dot" | "arrow" = "dot"): Placeable =>
    leaderAnywhere({ name, text, target: point(x, y), directions, reach, end: end_ });
  const cloth = geometry.covering.kind === "full" ? words.part("cloth") : "cloth";
  return [
    dimension({ name: "groove", from: point(0, corner.y), to: point(groove, corner.y), side: "above", text: words.size(geometry.groove), offset: 6 }),
    at("board", words.part("boards"), end - 8, corner.y + 0.3 + board / 2, up, 9),
    at("cloth", cloth, end - 16, corner.y, up, 8, "arrow"),
    at("strip", words.part("spine-strip"), backAt(section, back / 2, layers.strip + strip / 2), back / 2, [180, 170, 190, 160, 200], 8 + (-left) * 0.2),
    ...(geometry.lining ? [at("lining", words.part("spine-lining"), backAt(section, back * 0.72, layers.lining), back * 0.72, [195, 205, 215, 185, 225], 10 - left, "arrow")] : []),
    at("mull", words.part("mull"), groove + (Math.min(toMillimetres(geometry.mull.onBoards) * section.factor, end - 2) - groove) * 0.6, back + layers.mull / 2, [300, 315, 285, 270, 330], 8 + board, "arrow"),
    at("groove words", "groove", bottom.x, back - bottom.y, [255, 265, 245, 235, 275], 8 + board, "arrow"),
    at("endpaper", words.part("endpaper"), end - 5, 0.3, right, 9),
    at("sections", geometry.sewing ? "sections" : "leaves", end - 5, back / 2, right, 9),
    dimension({ name: "finished thickness", from: point(end, corner.y), to: point(end, back - corner.y), side: "right", text: words.size(finished.thickness), offset: 22 }),
  ];
}
