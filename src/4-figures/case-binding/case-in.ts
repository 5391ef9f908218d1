// Figure: casing in, three views from the head: the block in the open case, the glued endpaper, the board folded over.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow, pushArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;

/** On paper, not to scale in thickness: half of the open case, its spine, the text block. */
const view = { board: 50, joint: 4, strip: 9, thick: 2.4, cloth: 0.8, block: 10, square: 2 } as const;
/** x of the open case from the left end of the front board: board, joint, strip, joint, board. */
const frontRight = view.board;
const stripLeft = frontRight + view.joint;
const backLeft = stripLeft + view.strip + view.joint;
const caseRight = backLeft + view.board;
/** The text block lies on the back board, its back at the joint. */
const blockLeft = backLeft - view.joint + 0.6;
const blockRight = caseRight - view.square;

/** Figure `case-in`. */
export const drawCaseIn: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const flaps = geometry.sewing ? "mull and tapes" : "mull";
  return {
    id: "case-in",
    title: "Casing in",
    caption: `Seen from the head, not to scale. 1: the text block on the back board, squares of ${words.size(geometry.square)} all round. 2: ${flaps} laid down, adhesive on the upper leaf of the endpaper, a barrier sheet under that leaf. 3: the front board folded over and pressed down. Then turn the book over and do the other side.`,
    alternative: `Three views from the head. 1: the case lies open, inside up, the text block on its back board with its spine at the strip. 2: the ${flaps} lies on the upper endpaper; waste paper and a barrier sheet lie between the two leaves of the endpaper; the upper leaf is covered with adhesive. 3: the front board with the spine strip is folded over the text block and pressed down.`,
    items: viewsBelow([
      withHeading("one", "1  Try it dry", placeEvery([...openCase(false), ...blockItems()], dryLabels(input))),
      withHeading("two", "2  Adhesive on the upper endpaper", placeEvery([...openCase(true), ...blockItems(), ...gluedItems()], gluedLabels(input))),
      withHeading("three", "3  Fold the front board over", placeEvery([...foldedCase(), ...blockItems()], foldedLabels(input))),
    ], 6),
  };
};

/** The case flat on the bench, its inside up at y = 0; broken off at the left in the views that need less of it. */
function openCase(_short: boolean): readonly SceneItem[] {
  const board = (left: number, width: number): SceneItem => area(rectangle(left, 0, width, view.thick), "board", "edge");
  return [
    board(0, view.board), area(rectangle(stripLeft, view.thick - 1.2, view.strip, 1.2), "strip", "edge"), board(backLeft, view.board),
    area(rectangle(-view.cloth, view.thick, caseRight + 2 * view.cloth, view.cloth), "face-deep", "none"),
    area(rectangle(-view.cloth, 0, view.cloth, view.thick), "face-deep", "none"), area(rectangle(caseRight, 0, view.cloth, view.thick), "face-deep", "none"),
  ];
}

function blockItems(): readonly SceneItem[] {
  const leaves = Array.from({ length: 7 }, (_, index) => -view.block + 1 + (index * (view.block - 2)) / 6);
  return [
    area(rectangle(blockLeft, -view.block, blockRight - blockLeft, view.block), "paper", "outline"),
    ...leaves.map((y) => stroke(line(point(blockLeft, y), point(blockRight, y)), "edge")),
  ];
}

/** Mull on the endpaper, adhesive over all, barrier and waste sheets under the upper leaf. */
function gluedItems(): readonly SceneItem[] {
  const top = -view.block;
  return [
    area(rectangle(blockLeft, top - 0.5, 17, 0.5), "tape", "edge"),
    area(rectangle(blockLeft, top - 1.5, blockRight - blockLeft, 1), "adhesive", "none"),
    stroke(polyline([point(blockLeft + 8, top + 0.9), point(blockRight + 8, top + 0.9)]), "placement"),
  ];
}

/** The front board and the strip folded over the block. */
function foldedCase(): readonly SceneItem[] {
  const top = -view.block - 0.3;
  const left = blockLeft - 3.2;
  return [
    area(rectangle(backLeft, 0, view.board, view.thick), "board", "edge"), area(rectangle(backLeft, top - view.thick, view.board, view.thick), "board", "edge"),
    area(rectangle(left, -view.block - view.thick + 0.6, 1.4, view.block + 2 * view.thick - 1.2), "strip", "edge"),
    stroke([
      { kind: "move", to: point(caseRight + view.cloth, view.thick + 0.4) }, { kind: "line", to: point(backLeft, view.thick + 0.4) },
      { kind: "curve", control1: point(backLeft - 1.4, 0.6), control2: point(backLeft - 2, 0.4), to: point(left - 0.4, view.thick) },
      { kind: "line", to: point(left - 0.4, top - view.thick) },
      { kind: "curve", control1: point(backLeft - 2, top - 0.6), control2: point(backLeft - 1.4, top - 0.8), to: point(backLeft, top - view.thick - 0.4) },
      { kind: "line", to: point(caseRight + view.cloth, top - view.thick - 0.4) },
    ], "outline"),
    ...movementArrow(point(backLeft - 26, top - 4), point(backLeft + 12, top - view.thick - 4), 9),
    pushArrow(point(backLeft + view.board * 0.6, top - view.thick - 1), point(0, 1), 6),
  ];
}

function pointer(name: string, text: string | readonly string[], x: number, y: number, directions: readonly number[], reach = 7): Placeable {
  return leaderAnywhere({ name, text, target: point(x, y), directions, reach });
}

function dryLabels(input: Input): readonly Placeable[] {
  const { part, size } = sectionWords(input);
  return [
    pointer("front board", `${part("boards")}, front`, 20, view.thick / 2, [60, 45, 75], 8),
    pointer("strip", part("spine-strip"), stripLeft + view.strip / 2, view.thick - 0.6, [115, 105, 125, 90], 12),
    pointer("block", "text block", blockRight - 14, -view.block / 2, [20, 10, 30, 45], 22),
    pointer("square", `square, ${size(input.model.geometry.square)}`, caseRight - view.square / 2, 0.4, [10, 0, 20, -10], 8),
  ];
}

function gluedLabels(input: Input): readonly Placeable[] {
  const { adhesive, part } = sectionWords(input);
  return [
    pointer("adhesive", adhesive("pastedowns"), blockRight - 12, -view.block - 1, [45, 60, 30], 8),
    pointer("mull", input.model.geometry.sewing ? `${part("mull")} and tapes` : part("mull"), blockLeft + 7, -view.block - 0.3, [120, 135, 105], 9),
    pointer("barrier", "barrier and waste sheet", blockRight + 5, -view.block + 0.9, [0, 15, -15, 30], 7),
  ];
}

function foldedLabels(input: Input): readonly Placeable[] {
  const { part } = sectionWords(input);
  const thickness = toMillimetres(input.model.geometry.backThickness) > 0;
  return thickness ? [
    pointer("folded board", `${part("boards")}, front`, caseRight - 6, -view.block - 1.5, [20, 10, 35, 0], 9),
    pointer("groove", ["cloth worked into", "the joint"], backLeft - 2, -view.block - 0.8, [170, 160, 180, 190], 16),
  ] : [];
}
