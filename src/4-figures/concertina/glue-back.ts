// Figure `glue-back`: the back board lowered onto the last panel, its edges above those of the front board, seen from the head.
import { polygon, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { stroke, area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { sectionWords } from "../bench/section-words.ts";
import { pileLine } from "./pile.ts";

type Input = DrawingInput<"concertina">;

/** On paper: the board, its thickness, the square, the lift, and the layers of the strip. */
const shown = { width: 62, board: 3.4, square: 3, lift: 9, apart: 1.2 } as const;

/** Figure `glue-back`. */
export function drawGlueBack(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { panels, lastPanelGlued, closure } = geometry;
  // An even number of layers for an even number of panels, so that the folds lie on the right side.
  const layers = panels <= 8 ? panels : panels % 2 === 0 ? 8 : 7;
  const { width, board, square, lift, apart } = shown;
  const stack = (layers - 1) * apart;
  const top = -stack - 1.6;
  // Laid face down on the front board, panel 1 is the lowest layer and its fold is on the left.
  const chain = pileLine(layers, width - 2 * square, -apart, "right", square);
  const boardTop = top - lift - board;
  const bench = board + 0.9;
  const fixed: readonly SceneItem[] = [
    area(rectangle(0, 0, width, board), "board", "outline"),
    stroke(polyline(chain.map((at) => point(at.x, at.y - 0.9))), "outline"),
    area(rectangle(square, top - 0.9, width - 2 * square, 0.8), "adhesive", "none"),
    area(rectangle(0, boardTop, width, board), "board", "outline"),
    pushArrow(point(width * 0.3, top - 2.2), point(0, 1), 6), pushArrow(point(width * 0.7, top - 2.2), point(0, 1), 6),
    stroke(polyline([point(-14, bench), point(width + 16, bench)]), "edge"),
    area(polygon([point(width + 0.6, bench - 0.3), point(width + 0.6, boardTop - 5), point(width + 3.2, boardTop - 5), point(width + 3.2, bench - 3), point(width + 13, bench - 3), point(width + 13, bench - 0.3)]), "metal", "edge"),
  ];
  return {
    id: "glue-back",
    title: "Gluing the last panel to the back board",
    caption: `Seen from the head, not to scale${layers < panels ? `; ${layers} of ${panels} panels are drawn` : ""}. The set square shows that the edges of both boards stand above each other; test all four sides.`,
    alternative: `The front board lies on the bench, the shut strip on it. On top lies panel ${panels} with its ${lastPanelGlued} up and ${words.adhesive("ends")} on it. The back board comes down on it, inside down. A set square stands on the bench and touches the edge of both boards.${closure?.kind === "ribbon" ? " The ribbon lies between the back board and the last panel." : ""}`,
    items: placeEvery(fixed, [
      preferredLeader({ name: "front board", text: [`${words.part("boards")}:`, "front"], target: point(4, board / 2), directions: [190, 180, 200], reach: 7 }),
      preferredLeader({ name: "back board", text: [`${words.part("boards")}:`, "back, inside down"], target: point(3, boardTop + board / 2), directions: [170, 160, 180, 150], reach: 6 }),
      preferredLeader({ name: "spine side", text: "fold 1: spine side", target: point(square, -0.9 - apart / 2), end: "arrow", directions: [170, 160, 150, 180], reach: 8 }),
      preferredLeader({ name: "last panel", text: [`panel ${panels}, ${lastPanelGlued} up,`, `with ${words.adhesive("ends")}`], target: point(square + 1, top - 0.5), end: "arrow", directions: [160, 150, 170, 140], reach: 9 }),
      preferredLeader({ name: "set square", text: "set square", target: point(width + 2, boardTop), directions: [40, 30, 50, 60], reach: 6 }),
    ]),
  };
}
