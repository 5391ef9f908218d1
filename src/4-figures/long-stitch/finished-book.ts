// Figures: the finished book, large for the booklet's cover, and once more with its parts named.
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { scaleWords } from "../scale.ts";
import { sectionWords } from "../bench/section-words.ts";
import { drawBook } from "./book-view.ts";
import type { BookView } from "./book-view.ts";

type Input = DrawingInput<"long-stitch">;

/** Size on paper: as wide as this, or as high, whichever is reached first. */
const room = { width: 140, height: 130 } as const;
/** Rooms for the named parts, the wished one first: labels stand round the book. */
const rooms = [{ width: 96, height: 74 }, { width: 108, height: 90 }, { width: 116, height: 110 }] as const;

function viewOf({ model }: Input, space: { readonly width: number; readonly height: number }): BookView {
  return drawBook(model.geometry, model.thread!, model.finished.width, space);
}

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = viewOf(input, room);
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  return {
    id: "finished-book", title: "The finished book",
    caption: `The finished book lying front up, its sewn spine towards you, in true proportions (isometric view, ${scaleWords(factor)} along the edges). It is ${sizes}.`,
    alternative: `The finished book lies front cover up, head to the left, its spine towards the reader. Outside on the spine lie ${geometry.longStitches} long ${geometry.longStitches === 1 ? "stitch" : "stitches"} for each of ${geometry.text.sections} sections, side by side, and at head and tail the thread climbs from section to section.${geometry.flap ? " A flap wraps from the back round the fore-edge onto the front." : ""} It is ${sizes}.`,
    items,
  };
}

/** Figure `named-parts`. */
export function drawNamedParts(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const { items, scale } = placeAtScale(rooms.map((each) => viewOf(input, each)), ({ items: fixed, targets }) => ({
    fixed,
    labels: [
      leaderAnywhere({ name: "front", text: [`${part("cover")}:`, "front"], target: targets.front, directions: [75, 60, 90, 105], reach: 22 }),
      leaderAnywhere({ name: "spine", text: "spine", target: targets.spine, directions: [270, 285, 255, 300], reach: 10 }),
      leaderAnywhere({ name: "sections", text: [geometry.text.foldedSheets === 1 ? "section: one" : `section: ${geometry.text.foldedSheets} of`, part("folio")], target: targets.sections, directions: [330, 340, 320, 350, 0], reach: 10 }),
      leaderAnywhere({ name: "stitch", text: "long stitches", target: targets.stitch, end: "arrow", directions: [225, 210, 240, 200], reach: 14 }),
      leaderAnywhere({ name: "climb", text: ["climb, linked", "like a chain"], target: targets.climb, end: "arrow", directions: [250, 240, 260, 230], reach: 14 }),
      ...(geometry.flap ? [leaderAnywhere({ name: "flap", text: "flap", target: targets.flap, directions: [105, 90, 120, 75], reach: 14 })] : []),
      leaderAnywhere({ name: "head", text: "head", target: targets.head, end: "arrow", directions: [135, 120, 150], reach: 8 }),
      leaderAnywhere({ name: "tail", text: "tail", target: targets.tail, end: "arrow", directions: [20, 35, 5], reach: 8 }),
    ],
  }));
  const hidden = geometry.strip ? ` The ${part("spine-strip")} is inside the spine.` : "";
  return {
    id: "named-parts", title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scaleWords(scale.factor)} along the edges.${hidden}`,
    alternative: `The finished book lying front up, spine towards the reader, its parts named: ${input.model.parts.map((each) => part(each.id)).join(", ")}, the long stitches and the climbs at the ends${geometry.flap ? ", the flap" : ""}.${hidden}`,
    items,
  };
}
