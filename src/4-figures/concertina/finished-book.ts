// Figures `finished-book` and `named-parts`: the book standing half open, bare for the cover and with its parts named.
import type { Point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { drawOpenBook } from "./open-book.ts";
import { sectionWords } from "../bench/section-words.ts";
import { scaleWords } from "../scale.ts";

type Input = DrawingInput<"concertina">;

/** Room on paper: for the cover picture, and, the wished one first, for the book with labels round it. */
const rooms = { cover: { width: 132, height: 120 }, named: [{ width: 96, height: 74 }, { width: 108, height: 90 }, { width: 116, height: 110 }] } as const;

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawOpenBook(geometry, rooms.cover);
  const sizes = `${words.size(finished.height)} high along the folds × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  return {
    id: "finished-book",
    title: "The finished concertina",
    caption: `The finished book standing half open, in true proportions (isometric view, ${scaleWords(factor)} upright). Shut, it is ${sizes}.${geometry.closure?.kind === "band" ? " Its band is taken off." : ""}`,
    alternative: `The finished concertina stands half open, seen from its front. At the left stands the front board, at the right the back board; between them ${geometry.panels} panels run zigzag in one strip.${geometry.closure?.kind === "ribbon" ? " The end of the ribbon hangs from the back board." : ""} Shut, the book is ${sizes}.`,
    items,
  };
}

/** Figure `named-parts`. */
export function drawNamedParts(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const { items, scale } = placeAtScale(rooms.named.map((room) => drawOpenBook(geometry, room)), ({ items: fixed, targets }) => {
    const strips = geometry.strips.length === 1 ? part("strip") : [`panel of ${part(geometry.strips[0]!.part)},`, "the strips are joined"];
    const named: readonly (readonly [name: string, text: string | readonly string[], target: Point | null, directions: readonly number[], reach: number])[] = [
      ["front board", [`${part("boards")}: front,`, `in ${part("covering")}`], targets.frontBoard, [180, 170, 190, 160, 200], 12],
      ["back board", [`${part("boards")}: back`], targets.backBoard, [70, 60, 80, 50, 40, 90], 9],
      ["strip", strips, targets.panel, [270, 280, 260, 290, 250], 14],
      ["valley fold", "valley fold", targets.valley, [100, 90, 110, 80, 120], 8],
      ["mountain fold", "mountain fold", targets.mountain, [260, 270, 250, 280, 240], 8],
      ["join", "join", targets.join, [80, 70, 90, 60, 100], 10],
      ["closure-ribbon", geometry.closure?.kind === "ribbon" ? part("closure-ribbon") : "", targets.ribbon, [0, 10, 350, 20, 340], 6],
    ];
    return { fixed, labels: named.flatMap(([name, text, target, directions, reach]) => (target ? [leaderAnywhere({ name, text, target, directions, reach })] : [])) };
  });
  const names = input.model.parts.map((each) => part(each.id));
  return {
    id: "named-parts",
    title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scaleWords(scale.factor)} upright. Panel 1 is glued to the inside of the front board, panel ${geometry.panels} to the back board.${geometry.closure?.kind === "band" ? ` ${part("band")} is taken off.` : ""}`,
    alternative: `The finished book standing half open, its parts named: ${names.join(", ")}; valley folds lie away from the reader, mountain folds towards the reader.`,
    items,
  };
}
