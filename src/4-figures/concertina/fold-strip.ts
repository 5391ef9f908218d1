// Figure `fold-strip`: folding along the scores, from the flat strip to the pile that is rubbed down, seen from the head.
import { polyline } from "../../geometry/path.ts";
import { addPoints, point, polar } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { movementArrow, pushArrow } from "../movement.ts";
import { stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { boneFolder } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"concertina">;

/** One panel on paper, and the space between two layers of the pile. */
const panel = 13;
const layer = 1.1;
/** So many panels are drawn of a longer strip. */
const most = 6;

/** Figure `fold-strip`; none where the folds are found by halving. */
export function drawFoldStrip(input: Input): FigureDraft | null {
  const { geometry } = input.model;
  if (geometry.folding !== "scores") return null;
  const longest = Math.max(...geometry.strips.map((strip) => strip.panels + (strip.hasTab ? 1 : 0)));
  const shown = Math.min(most, Math.max(2, longest));
  const words = sectionWords(input);
  const left = longest > shown ? ` Only ${shown} panels are drawn.` : "";
  return {
    id: "fold-strip",
    title: "Folding zigzag",
    caption: `Folding along the scores, seen from the head, front up; not to scale.${left} The first fold is a valley, then mountain and valley in turn. Folded, a panel measures ${words.size(geometry.foldedWidth)} from fold to fold.`,
    alternative: `Four end views of the strip, front up.${left} 1: flat, with a valley at the first fold, a mountain at the second and so on in turn. 2: panel 1 is laid on panel 2, their edges on each other, and the first fold is creased. `
      + "3: every further panel is folded back on the pile, edge to edge. 4: the pile is knocked up against the bench and the folds are rubbed down with the bone folder.",
    items: viewsBelow([
      withHeading("flat", "1  Scored, front up", drawFlat(shown, longest > shown)),
      withHeading("first", shown === 2 ? "2  The fold: edge on edge" : "2  First fold: edge on edge", drawFirst(shown)),
      ...(shown > 2 ? [withHeading("further", "3  Valley and mountain in turn", drawPile(shown, 26))] : []),
      withHeading("pile", `${shown > 2 ? 4 : 3}  Knock up and rub down`, drawKnockedUp(shown)),
    ], 4),
  };
}

function drawFlat(shown: number, goesOn: boolean): readonly SceneItem[] {
  const end = point(shown * panel, 0);
  const folds = Array.from({ length: shown - 1 }, (_, index) => point((index + 1) * panel, 0));
  const fixed: SceneItem[] = [
    stroke(polyline([point(0, 0), end]), "outline"),
    ...folds.map((at, index) => foldSign(at, index % 2 === 0 ? 1 : -1)),
    ...(goesOn ? breakAcross(end.x - panel / 2, -1.6, 1.6) : []),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "valley", text: "valley fold", target: addPoints(folds[0]!, point(0, -2.9)), end: "none", directions: [110, 100, 120, 90], reach: 3.5 }),
    ...(folds[1] ? [preferredLeader({ name: "mountain", text: "mountain fold", target: addPoints(folds[1], point(0, -2.9)), end: "none", directions: [60, 70, 50, 80], reach: 3.5 })] : []),
  ]);
}

/** A small V over a valley, a small peak over a mountain. */
function foldSign(at: Point, rise: 1 | -1): SceneItem {
  return stroke(polyline([point(at.x - 1.1, at.y - 1.9 - rise * 0.8), point(at.x, at.y - 1.9 + rise * 0.8), point(at.x + 1.1, at.y - 1.9 - rise * 0.8)]), "edge");
}

/** Panel 1 swings over onto panel 2. */
function drawFirst(shown: number): readonly SceneItem[] {
  const fold = point(0, 0);
  const lifted = polar(fold, panel, 62);
  const right = point(panel * Math.min(3, shown - 1), 0);
  const fixed: SceneItem[] = [
    stroke(polyline([lifted, fold, right]), "outline"),
    ...movementArrow(addPoints(lifted, point(1.2, 0)), point(panel - 0.4, -1.6), 3),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "edge of panel 1", text: "edge of panel 1", target: lifted, end: "none", directions: [170, 160, 180, 150], reach: 4 }),
    ...(shown > 2 ? [preferredLeader({ name: "second fold", text: "onto fold 2", target: point(panel, 0), end: "arrow" as const, directions: [320, 330, 310, 340], reach: 6 })]
      : [preferredLeader({ name: "second fold", text: "onto the other edge", target: point(panel, 0), end: "arrow" as const, directions: [320, 330, 310, 340], reach: 6 })]),
  ]);
}

/** The zigzag half shut: each panel stands at this angle to the bench. */
function drawPile(shown: number, degrees: number): readonly SceneItem[] {
  const points: Point[] = [point(0, 0)];
  for (let index = 0; index < shown; index += 1) {
    const at = points.at(-1)!;
    points.push(index % 2 === 0 ? polar(at, panel, 180 + degrees) : polar(at, panel, -degrees));
  }
  const fixed: SceneItem[] = [stroke(polyline(points), "outline"), pushArrow(point(points[1]!.x + panel * 0.55, points[0]!.y - 2.5), point(0, 1), 6)];
  return placeEvery(fixed, [
    preferredLeader({ name: "front", text: "front of panel 2", target: point((points[1]!.x + points[2]!.x) / 2, (points[1]!.y + points[2]!.y) / 2 - 0.4), end: "dot", directions: [10, 0, 20, 30], reach: 12 }),
    preferredLeader({ name: "fold 1", text: "fold 1, spine side", target: points[1]!, end: "arrow", directions: [170, 180, 160, 190], reach: 5 }),
    ...(shown > 2 ? [preferredLeader({ name: "fold 2", text: "fold 2, fore-edge", target: points[2]!, end: "arrow" as const, directions: [350, 0, 340, 10], reach: 6 })] : []),
  ]);
}

function drawKnockedUp(shown: number): readonly SceneItem[] {
  const points = Array.from({ length: shown + 1 }, (_, index) => point(index % 2 === 0 ? panel * 1.6 : 0, Math.max(0, index - 0.5) * layer));
  const flat: Point[] = [];
  for (let index = 0; index < shown; index += 1) {
    const y = index * layer;
    flat.push(point(index % 2 === 0 ? panel * 1.6 : 0, y), point(index % 2 === 0 ? 0 : panel * 1.6, y));
  }
  const foot = points.at(-1)!.y + 2;
  const fixed: SceneItem[] = [
    stroke(polyline(flat), "outline"),
    stroke(polyline([point(-1.4, -3), point(-1.4, foot), point(panel * 2.4, foot)]), "edge"),
    ...boneFolder(point(3, -1.2), 32, 22),
    pushArrow(point(panel * 1.6 + 1.5, (shown - 1) * layer / 2), point(-1, 0), 6),
  ];
  return placeEvery(fixed, [
    preferredLeader({ name: "upright", text: "something upright", target: point(-1.4, -2), end: "none", directions: [170, 160, 180], reach: 4 }),
  ]);
}
