// The finished concertina standing half open, pictorial and in true proportions: for the cover and for naming its parts.
import type { ConcertinaGeometry } from "../../2-model/concertina/geometry.ts";
import { bandAlong } from "../../geometry/band.ts";
import { curve, line, pathPoints } from "../../geometry/path.ts";
import { addPoints, midpoint, point, quarterLeft, scalePoint, subtractPoints, unitVector } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import { face, prism } from "../bench/solid.ts";
import type { FaceTones } from "../bench/solid.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { factorToFill } from "../views.ts";

/** How far each panel is turned from the line along which the strip is drawn out, and how far the front board stands off panel 2. */
const angles = { panel: 52, front: 13 } as const;

const boardTones: FaceTones = { top: "face-dark", left: "face-dark", right: "face-deep" };

/** The book in millimetres of paper, seen from above: the strip runs to the right of the page, its front towards the reader. */
interface Book {
  readonly boardHeight: number;
  readonly boardWidth: number;
  readonly boardThickness: number;
  readonly panelHeight: number;
  /** Corners of the zigzag in plan; point k is fold k. */
  readonly plan: readonly Point[];
  readonly square: number;
  readonly lastPanelGlued: "back" | "front";
  readonly joins: readonly number[];
  readonly ribbon: { readonly width: number; readonly end: number } | null;
}

/** The drawing and what labels may point at, in millimetres of paper. */
export interface OpenBook {
  readonly items: readonly SceneItem[];
  readonly factor: number;
  readonly targets: {
    readonly frontBoard: Point;
    readonly backBoard: Point;
    readonly panel: Point;
    readonly valley: Point;
    readonly mountain: Point | null;
    readonly join: Point | null;
    readonly ribbon: Point | null;
  };
}

/** The finished book standing half open, as large as the room allows. */
export function drawOpenBook(geometry: ConcertinaGeometry, room: { readonly width: number; readonly height: number }): OpenBook {
  // Drawn once at full size to see how much paper it needs, then at the factor that fills the room.
  const factor = factorToFill(bookItems(bookAt(geometry, 1)), room);
  const book = bookAt(geometry, factor);
  return { items: bookItems(book), factor, targets: targetsOf(book) };
}

function bookAt(geometry: ConcertinaGeometry, factor: number): Book {
  const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
  const { closure } = geometry;
  return {
    boardHeight: paper(geometry.boardHeight), boardWidth: paper(geometry.boardWidth), boardThickness: Math.max(0.35, paper(geometry.coverStack)),
    panelHeight: paper(geometry.panelHeight), plan: planOf(geometry.panels, paper(geometry.panelWidth)), square: paper(geometry.square),
    lastPanelGlued: geometry.lastPanelGlued, joins: geometry.strips.slice(0, -1).map((strip) => strip.firstPanel + strip.panels - 1),
    ribbon: closure?.kind === "ribbon" ? { width: paper(closure.width), end: paper(closure.shortEnd) } : null,
  };
}

/** A direction in plan, turned from the line to the right of the page; positive turns away from the reader. */
function direction(degrees: number): Point {
  const angle = ((45 + degrees) * Math.PI) / 180;
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** Fold 1 lies away from the reader; panel 1 stands off panel 2 by the front angle, every further panel is turned by the panel angle. */
function planOf(panels: number, width: number): readonly Point[] {
  const fold = point(0, 0);
  const points: Point[] = [addPoints(fold, scalePoint(direction(-angles.panel - angles.front), width)), fold];
  for (let index = 2; index <= panels; index += 1) points.push(addPoints(points.at(-1)!, scalePoint(direction(index % 2 === 0 ? -angles.panel : angles.panel), width)));
  return points;
}

function bookItems(book: Book): readonly SceneItem[] {
  const last = book.plan.length - 1;
  const strip = Array.from({ length: last - 1 }, (_, index) => panelItems(book, index + 2)).flat();
  const back = boardItems(book, "back");
  return [
    ...(book.lastPanelGlued === "back" ? [...back, ...strip] : [...strip, ...back]),
    ...ribbonItems(book), ...boardItems(book, "front"),
  ];
}

/** One panel upright between its two folds. */
function panelItems({ plan, square, panelHeight, joins }: Book, panel: number): readonly SceneItem[] {
  const [from, to] = [plan[panel - 1]!, plan[panel]!];
  const corners = [spacePoint(from.x, from.y, square), spacePoint(to.x, to.y, square), spacePoint(to.x, to.y, square + panelHeight), spacePoint(from.x, from.y, square + panelHeight)];
  const away = panel % 2 === 0;
  return [
    face(corners, away ? "paper" : "face-light", "outline"),
    // A join is a second edge just beside its fold.
    ...(joins.includes(panel - 1) ? [stroke(line(beside(from, to, square), beside(from, to, square + panelHeight)), "edge")] : []),
  ];
}

function beside(from: Point, to: Point, z: number): Point {
  const at = addPoints(from, scalePoint(unitVector(subtractPoints(to, from)), 0.8));
  return isometric(spacePoint(at.x, at.y, z));
}

/** A board behind the panel it is glued to (in front of it, where the panel is glued with its front). */
function boardItems(book: Book, side: "front" | "back"): readonly SceneItem[] {
  const { plan, square, boardHeight, boardThickness } = book;
  const last = plan.length - 1;
  const [from, to] = side === "front" ? [plan[0]!, plan[1]!] : [plan[last - 1]!, plan[last]!];
  const along = unitVector(subtractPoints(to, from));
  const [near, far] = [addPoints(from, scalePoint(along, -square)), addPoints(to, scalePoint(along, square))];
  // Seen from above with y away from the reader, the back of the strip lies on the left of its way from panel to panel.
  const away = side === "back" && book.lastPanelGlued === "front" ? -1 : 1;
  const out = scalePoint(quarterLeft(along), -boardThickness * away);
  const outline = [near, far, addPoints(far, out), addPoints(near, out)];
  return prism(outline, 0, boardHeight, boardTones, "outline");
}

/** The short end of the ribbon hangs from the back board's fore-edge. */
function ribbonItems({ ribbon, plan, boardHeight, square }: Book): readonly SceneItem[] {
  if (!ribbon) return [];
  const [before, end] = [plan.at(-2)!, plan.at(-1)!];
  const out = addPoints(end, scalePoint(unitVector(subtractPoints(end, before)), square));
  const from = isometric(spacePoint(out.x, out.y, boardHeight / 2));
  const drop = Math.min(ribbon.end * 0.7, boardHeight * 0.42);
  const to = point(from.x + ribbon.width * 1.6, from.y + drop);
  const points = pathPoints(curve(from, point(from.x + ribbon.width * 1.8, from.y + ribbon.width), point(from.x + ribbon.width * 0.6, from.y + drop * 0.6), to), 0.05)[0]!;
  return [area(bandAlong(points, ribbon.width * 0.8), "face-deep", "edge")];
}

function targetsOf(book: Book): OpenBook["targets"] {
  const { plan, square, panelHeight, boardHeight, boardThickness, joins, ribbon } = book;
  const on = (from: Point, to: Point, share: number, z: number): Point => {
    const at = addPoints(from, scalePoint(subtractPoints(to, from), share));
    return isometric(spacePoint(at.x, at.y, z));
  };
  const last = plan.length - 1;
  const shown = Math.min(last, Math.max(3, Math.ceil(last / 2)));
  const join = joins.find((fold) => fold > 1);
  const middleOfBack = midpoint(plan[last - 1]!, plan[last]!);
  return {
    frontBoard: addPoints(on(plan[0]!, plan[1]!, 0.45, boardHeight * 0.6), point(-boardThickness * 0.3, 0)),
    backBoard: isometric(spacePoint(middleOfBack.x, middleOfBack.y, boardHeight - square * 0.4)),
    panel: on(plan[shown - 1]!, plan[shown]!, 0.5, square + panelHeight * 0.25),
    valley: isometric(spacePoint(plan[last > 3 ? 3 : 1]!.x, plan[last > 3 ? 3 : 1]!.y, square + panelHeight)),
    mountain: last > 2 ? isometric(spacePoint(plan[2]!.x, plan[2]!.y, square)) : null,
    join: join === undefined ? null : isometric(spacePoint(plan[join]!.x, plan[join]!.y, square + panelHeight)),
    ribbon: ribbon ? addPoints(isometric(spacePoint(plan[last]!.x, plan[last]!.y, boardHeight / 2)), point(ribbon.width * 1.3, Math.min(ribbon.end * 0.7, boardHeight * 0.42) * 0.5)) : null,
  };
}
