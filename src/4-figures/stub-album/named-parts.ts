// Figure: the finished book with every part named as in the cut list.
import type { Point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { scaleWords } from "../scale.ts";
import { drawOpenBook } from "./open-book.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Rooms for the book on paper, the wished one first: labels stand round it. */
const rooms = [{ width: 84, height: 92 }, { width: 100, height: 110 }, { width: 110, height: 140 }] as const;

/** Figure `named-parts`. */
export function drawNamedParts(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const { part } = sectionWords(input);
  const { items, scale } = placeAtScale(rooms.map((room) => drawOpenBook(geometry, room)), ({ items: fixed, targets }) => {
    const left = [180, 170, 190, 160, 200, 150, 210];
    const right = [0, 10, -10, 20, -20, 30, -30];
    const up = [120, 135, 105, 90, 150, 75];
    // Text as a function: a part that this book does not have has no name to ask for.
    const named: readonly (readonly [name: string, text: () => string | readonly string[], target: Point | null, directions: readonly number[], reach: number])[] = [
      ["spine-strip", () => [part("spine-strip"), "in its cloth"], targets["spine-strip"], up, 8],
      ["card", () => [part("card"), "folded into stubs"], targets.card, [75, 60, 90, 50, 40], 16],
      ["post", () => "screw post", targets.post, left, 8],
      ["hinge-cloth", () => part("hinge-cloth"), targets["hinge-cloth"], left, 8],
      ["side-strip", () => [part("side-strip"), "under the cloth"], targets["side-strip"], left, 8],
      ["boards", () => part("boards"), targets.boards, [250, 240, 260, 230, 220], 30],
      ["lining-paper", () => part("lining-paper"), targets["lining-paper"], [45, 30, 60, 20, 0], 14],
      ["page-paper", () => part("page-paper"), targets["page-paper"], right, 20],
      ["closure-ribbon", () => part("closure-ribbon"), targets["closure-ribbon"], right, 8],
      ["bookmark", () => part("bookmark"), targets.bookmark, [-20, -40, -60, 0, -90], 8],
    ];
    return { fixed, labels: named.flatMap(([name, text, target, directions, reach]) => (target ? [leaderAnywhere({ name, text: text(), target, directions, reach })] : [])) };
  });
  const names = input.model.parts.filter((each) => each.id !== "hinge-tape").map((each) => part(each.id));
  return {
    id: "named-parts",
    title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scaleWords(scale.factor)} along the edges. The hinge tape is hidden inside the joints.`,
    alternative: `The finished book standing a little open, its parts named: ${names.join(", ")}, and the screw posts.`,
    items,
  };
}
