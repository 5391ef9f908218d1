// The inside of a board with the closure ribbon at the middle of its fore-edge: shared by the drawings of closure and lining.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { bandAlong } from "../../geometry/band.ts";
import type { Box } from "../../geometry/box.ts";
import { curve, line, pathPoints, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** The back board seen from inside: its spine edge at x = 0, its head at y = 0, in millimetres of paper. */
export interface BoardInside {
  readonly width: number;
  readonly height: number;
  readonly middle: number;
  readonly ribbon: {
    readonly width: number;
    /** How far the glued end reaches from the fore-edge. */
    readonly glued: number;
  };
}

/** The free end of a ribbon is drawn no longer than this on paper, and then broken off. */
export const freeRibbon = 15;

/** The inside of the back board at a factor of millimetres on paper for one of book. */
export function boardInside(geometry: StubAlbumGeometry, factor: number): BoardInside {
  const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
  return {
    width: paper(geometry.boardWidth), height: paper(geometry.boardHeight), middle: paper(geometry.boardHeight) / 2,
    ribbon: { width: paper(geometry.ribbonWidth), glued: paper(geometry.closureGlued) },
  };
}

/** The board itself, filled as the drawing needs it. */
export function boardItems(board: BoardInside, fill: "face-light" | "face-middle"): readonly SceneItem[] {
  return [area(rectangle(0, 0, board.width, board.height), fill, "outline")];
}

/** Outline of the ribbon's glued end. */
export function gluedRibbon({ width, middle, ribbon }: BoardInside): Path {
  return rectangle(width - ribbon.glued, middle - ribbon.width / 2, ribbon.glued, ribbon.width);
}

/** The free end of the ribbon from the fore-edge on, hanging a little, its far end left out. */
export function freeEnd({ width, middle, ribbon }: BoardInside): readonly SceneItem[] {
  const from = point(width, middle);
  const to = point(width + freeRibbon, middle + 2);
  const points = pathPoints(curve(from, point(width + 6, middle), point(width + 8, middle + 3.5), to))[0]!;
  const half = ribbon.width / 2;
  return [
    area(bandAlong(points, ribbon.width), "face-deep", "edge"),
    // A white slip cuts the end off at a slant, so that it reads as "goes on".
    area(bandAlong([point(to.x - 1.4, to.y - half - 1.5), point(to.x + 0.2, to.y + half + 1.5)], 1.2), "plate", "none"),
    stroke(line(point(to.x - 2, to.y - half - 1.2), point(to.x - 0.4, to.y + half + 1.2)), "edge"),
    stroke(line(point(to.x - 0.8, to.y - half - 1.2), point(to.x + 0.8, to.y + half + 1.2)), "edge"),
  ];
}

/** Shortest board on paper that has room for a grain arrow. */
const grainRoom = 20;

/** The grain arrow inside the box, or beside a board that is too low for it. */
export function boardGrain(board: BoardInside, box: Box): Placeable {
  const inside = board.height < grainRoom ? [] : gridCentres(box, 5, 7);
  const beside = [8, 14, 20, 26].flatMap((out) => [point(-out, board.height / 2), point(board.width + freeRibbon + out, board.height / 2)]);
  return grainArrow("grain", "height", [...inside, ...beside]);
}

/** A name inside the box where it fits, else outside with a pointer to `target`. */
export function nameInside(name: string, text: string, box: Box, target: Point): Placeable {
  return firstOf(areaLabel(name, text, gridCentres(box, 5, 9)), leaderAnywhere({ name, text, target, directions: [0, 15, -15, 30, -30, 180, 165, 195] }));
}

/** "head", "tail", "spine edge" and "fore-edge" round the board. */
export function edgeNames({ width, height }: BoardInside): readonly Placeable[] {
  const down = [0.5, 0.35, 0.65, 0.25, 0.75, 0.15, 0.85];
  const beside = (x: number, shares: readonly number[]) => shares.map((share) => point(x, height * share));
  return [
    areaLabel("spine edge", "spine edge", [...beside(-3, down), ...beside(-6, down), ...beside(-10, down)], { angle: 90 }),
    areaLabel("fore-edge", "fore-edge", [3, 6, 10, 14, 18, 22].flatMap((x) => beside(width + x, [0.2, 0.15, 0.25, 0.1, 0.8, 0.85, 0.9, 0])), { angle: 90 }),
    areaLabel("head", "head", [3, 6, 9, 12].flatMap((up) => [0.5, 0.3, 0.7].map((share) => point(width * share, -up)))),
    areaLabel("tail", "tail", [3, 6, 9, 12].flatMap((up) => [0.5, 0.3, 0.7].map((share) => point(width * share, height + up)))),
  ];
}
