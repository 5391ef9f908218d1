// Figure `glue-front`: the waste paper under panel 1, and panel 1 on the front board with equal squares.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale, placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, gridCentres, leaderAnywhere, preferredLeader } from "../leaders.ts";
import { firstOf } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";
import { pileLine } from "./pile.ts";

type Input = DrawingInput<"concertina">;

/** Room for the board on paper. */
const room = { width: 52, height: 56 } as const;

/** Figure `glue-front`. */
export function drawGlueFront(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const square = words.size(geometry.square);
  const plan = drawPlan(input);
  return {
    id: "glue-front",
    title: "Gluing panel 1 to the front board",
    caption: `1: seen from the head, not to scale: waste paper under panel 1 keeps the adhesive off the rest. 2: the front board, inside up, with the strip on it, ${plan.scaleName}; fold 1 lies at the spine edge, and the square is the same on all four sides.`,
    alternative: `Two views. First, from the head: the shut strip lies on the bench, panel 1 on top with its back up; a sheet of waste paper lies between panel 1 and the rest, and ${words.adhesive("ends")} is laid on panel 1. `
      + `Second: the front board, ${words.size(geometry.boardHeight)} high and ${words.size(geometry.boardWidth)} wide, inside up, its spine edge at the right. Panel 1 lies on it with the rest of the strip, ${square} from head, tail, spine edge and fore-edge.`,
    items: viewsBelow([
      withHeading("waste", "1  Waste paper under panel 1", drawWaste(input)),
      withHeading("board", "2  On the board, squares all equal", plan.items),
    ], 6),
  };
}

/** The pile from its head: fold 1 at the left, panel 1 lifted a little, waste paper under it. */
function drawWaste(input: Input): readonly SceneItem[] {
  const width = 34;
  const shown = Math.min(input.model.geometry.panels, 6);
  const fixed: SceneItem[] = [
    stroke(polyline([point(width, -6.4), point(0, -2), ...pileLine(shown - 1, width, 1.1, "left")]), "outline"),
    area(rectangle(1.6, -1.9, width + 14, 0.5), "paper", "edge"),
    area([{ kind: "move", to: point(1, -3) }, { kind: "line", to: point(width, -7.3) }, { kind: "line", to: point(width, -6.7) }, { kind: "line", to: point(1, -2.4) }, { kind: "close" }], "adhesive", "none"),
    stroke(line(point(-6, (shown - 2) * 1.1 + 1), point(width + 20, (shown - 2) * 1.1 + 1)), "edge"),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "panel 1", text: "panel 1, back up", target: point(width * 0.5, -4.4), end: "arrow", directions: [110, 120, 100, 135], reach: 7 }),
    preferredLeader({ name: "adhesive", text: sectionWords(input).adhesiveLines("ends"), target: point(width * 0.9, -6.3), end: "arrow", directions: [60, 50, 70, 40], reach: 6 }),
    preferredLeader({ name: "waste", text: "waste paper", target: point(width + 12, -1.7), directions: [20, 30, 10, 340], reach: 5 }),
    preferredLeader({ name: "fold 1", text: "fold 1", target: point(0, -1), end: "arrow", directions: [170, 160, 180], reach: 5 }),
  ]);
}

function drawPlan(input: Input): { readonly items: readonly SceneItem[]; readonly scaleName: string } {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const square = words.inLines(words.size(geometry.square))[0]!;
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.boardWidth), toMillimetres(geometry.boardHeight), room.width, room.height), ({ factor }) => {
    const [width, height] = [toMillimetres(geometry.boardWidth) * factor, toMillimetres(geometry.boardHeight) * factor];
    const [panelWidth, panelHeight] = [toMillimetres(geometry.foldedWidth) * factor, toMillimetres(geometry.panelHeight) * factor];
    const [left, top] = [(width - panelWidth) / 2, (height - panelHeight) / 2];
    const box = { left, top, right: left + panelWidth, bottom: top + panelHeight };
    return {
      fixed: [
        area(rectangle(0, 0, width, height), "face-dark", "outline"),
        area(rectangle(left, top, panelWidth, panelHeight), "paper", "edge"),
        stroke(line(point(box.right, top), point(box.right, box.bottom)), "outline"),
      ],
      labels: [
        dimension({ name: "square at the head", from: point(0, 0), to: point(0, top), side: "left", text: square, offset: 5, outside: "before" }),
        dimension({ name: "square at the tail", from: point(0, box.bottom), to: point(0, height), side: "left", text: square, offset: 5 }),
        dimension({ name: "square at the fore-edge", from: point(0, height), to: point(left, height), side: "below", text: square, offset: 5, outside: "before" }),
        dimension({ name: "square at the spine edge", from: point(box.right, height), to: point(width, height), side: "below", text: square, offset: 5 }),
        areaLabel("head", "head", [3, 6, 9].map((up) => point(width / 2, -up))),
        areaLabel("spine edge", "spine edge", [3.4, 6, 9, 12].flatMap((out) => [0.5, 0.35, 0.65].map((share) => point(width + out, height * share))), { angle: 90 }),
        firstOf(
          areaLabel("strip", "shut strip", gridCentres(box, 3, 7)),
          areaLabel("strip", "shut strip", gridCentres(box, 3, 7), { angle: 90 }),
          leaderAnywhere({ name: "strip", text: "shut strip", target: point(box.left + panelWidth * 0.5, box.top + panelHeight * 0.25), directions: [20, 30, 10, 40], reach: panelWidth * 0.5 + 4 }),
        ),
        leaderAnywhere({ name: "fold 1 here", text: "fold 1", target: point(box.right, box.top + panelHeight * 0.8), end: "arrow", directions: [330, 340, 320, 350, 310], reach: left + 5 }),
        leaderAnywhere({ name: "boards", text: `${words.part("boards")}: front, inside`, target: point(width - Math.max(0.3, left / 2), Math.max(0.3, top * 0.5)), directions: [30, 40, 20, 50], reach: 6 }),
      ],
    };
  });
  return { items, scaleName: scale.name };
}
