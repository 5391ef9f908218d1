// The punching cradle seen from its end, a section open in it and the awl upright in the fold: one drawing for every sewn binding.
import { polygon, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { placeEvery } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { uprightAwl } from "./bench-tools.ts";

/** The words at what lies in the cradle; what has none is not drawn. */
export interface CradleWords {
  readonly section: string;
  /** The folded strip with the marks. */
  readonly guide: string;
  /** The cover under the section, where both are pierced together. */
  readonly cover?: string;
}

/** Half the opening of the cradle, half its gap, and how steep its sides are; millimetres of paper. */
const cradle = { half: 30, gap: 1.4, slope: 0.8, foot: 9 } as const;

/** Not to scale; the point of the awl is in the gap, the sheets lie on the sides. */
export function drawPunchingCradle({ section, guide, cover }: CradleWords): readonly SceneItem[] {
  const { half, gap, slope, foot } = cradle;
  const fold = (reach: number, lift: number) => polyline([point(-reach, -reach * slope - lift), point(0, -lift), point(reach, -reach * slope - lift)]);
  const side = (way: 1 | -1): SceneItem => area(polygon([point(way * gap, 1 - gap * slope), point(way * half, 1 - half * slope), point(way * (half + 4), 1 - half * slope), point(way * (half + 4), foot), point(way * gap, foot)]), "board", "outline");
  const lowest = cover ? 1.6 : 0.2;
  const sheets = [0, 1, 2].map((k) => stroke(fold(26 + k * 0.4, lowest + k * 1.1), "edge"));
  return placeEvery([
    side(-1), side(1), area(rectangle(-half - 4, foot, 2 * half + 8, 2.4), "face-dark", "edge"),
    ...(cover ? [stroke(fold(28, 0.2), "outline")] : []),
    ...sheets, stroke(fold(14, lowest + 3.8), "placement"),
    ...uprightAwl(point(0, 4.5)), pushArrow(point(7, -19), point(0, 1), 9),
  ], [
    leaderAnywhere({ name: "awl", text: "awl, straight down", target: point(-1.6, -25), directions: [160, 150, 170, 140], reach: 14 }),
    leaderAnywhere({ name: "section", text: section, target: point(22, -22 * slope - lowest - 2.2), end: "arrow", directions: [30, 40, 20, 50], reach: 12 }),
    leaderAnywhere({ name: "guide", text: guide, target: point(-11, -11 * slope - lowest - 3.8), end: "arrow", directions: [150, 140, 160, 130], reach: 14 }),
    ...(cover ? [leaderAnywhere({ name: "cover", text: cover, target: point(27, -27 * slope - 0.2), end: "arrow", directions: [0, 10, -10, 20], reach: 12 })] : []),
    leaderAnywhere({ name: "cradle", text: "punching cradle", target: point(27, 3), directions: [0, -10, 10], reach: 10 }),
    leaderAnywhere({ name: "gap", text: "gap for the point", target: point(0, 7), directions: [250, 240, 260, 290], reach: 9 }),
  ]);
}
