// Figures: the finished book, large for the booklet's cover, and once more with its parts named.
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { scaleWords } from "../scale.ts";
import { sectionWords } from "../bench/section-words.ts";
import { drawBook } from "./book-view.ts";

/** Size on paper: as wide as this, or as high, whichever is reached first. */
const room = { width: 140, height: 130 } as const;
/** Rooms for the named parts, the wished one first: labels stand round the book. */
const rooms = [{ width: 96, height: 74 }, { width: 108, height: 90 }, { width: 116, height: 110 }] as const;

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: DrawingInput<"link-stitch">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawBook(geometry, room);
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  return {
    id: "finished-book", title: "The finished book",
    caption: `The finished book lying front up, its open spine towards you, in true proportions (isometric view, ${scaleWords(factor)} along the edges). It is ${sizes}.`,
    alternative: `The finished book lies front cover up, head to the left, its spine towards the reader. ${geometry.text.sections} sections lie between two boards; over the ${geometry.stations.length} stations stand chains of linked thread, and short lines of thread run from the boards’ spine edges to their holes. It is ${sizes}.`,
    items,
  };
}

/** Figure `named-parts`. */
export function drawNamedParts(input: DrawingInput<"link-stitch">): FigureDraft {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const { items, scale } = placeAtScale(rooms.map((each) => drawBook(geometry, each)), ({ items: fixed, targets }) => ({
    fixed,
    labels: [
      leaderAnywhere({ name: "hole", text: ["hole of", "station 1"], target: targets.hole, directions: [120, 135, 105, 150], reach: 10 }),
      ...(geometry.covered ? [leaderAnywhere({ name: "covering", text: [part("covering"), `over ${part("boards")}`], target: targets.covering, directions: [60, 75, 45, 90], reach: 16 })] : []),
      leaderAnywhere({ name: "board", text: geometry.covered ? "back board" : part("boards"), target: targets.board, directions: [330, 340, 320, 350, 0], reach: 10 }),
      leaderAnywhere({ name: "section", text: [geometry.text.foldedSheets === 1 ? "section: one" : `section: ${geometry.text.foldedSheets} of`, part("folio")], target: targets.section, directions: [200, 210, 190, 220, 180], reach: 12 }),
      leaderAnywhere({ name: "link", text: "chain of links", target: targets.link, end: "arrow", directions: [250, 260, 240, 270, 230], reach: 12 }),
      leaderAnywhere({ name: "thread", text: "thread over the board", target: targets.thread, end: "arrow", directions: [110, 95, 125, 80], reach: 18 }),
    ],
  }));
  const names = input.model.parts.map((each) => part(each.id));
  const hidden = geometry.lining ? ` The ${part("lining-paper")} is inside the boards.` : "";
  return {
    id: "named-parts", title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scaleWords(scale.factor)} along the edges.${hidden}`,
    alternative: `The finished book lying front up, spine towards the reader, its parts named: ${names.join(", ")}, the chains of links, the holes and the thread over the boards.${hidden}`,
    items,
  };
}
