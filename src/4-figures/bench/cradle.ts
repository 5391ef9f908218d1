// The punching cradle seen from its end, a section open in it, the awl upright over the gap in its corner; not to scale.
import { polygon, polyline } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { placeEvery } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** What lies in the cradle, as its labels call it. */
export interface InCradle {
  readonly section: string;
  /** The folded guide in the section's fold; null where the holes are marked otherwise. */
  readonly guide: string | null;
  /** A cover that is pierced together with the section; null without one. */
  readonly cover: string | null;
}

/** The whole view with its labels. */
export function drawCradle({ section, guide, cover }: InCradle): readonly SceneItem[] {
  const corner: Point = point(0, 0);
  const arm = (way: 1 | -1, long: number, lift: number): Point => point(way * long * 0.72, -long * 0.69 - lift);
  const leaf = (long: number, lift: number, kind: "outline" | "edge" | "placement"): SceneItem => stroke(polyline([arm(-1, long, lift), point(0, -lift), arm(1, long, lift)]), kind);
  const sheets = [0, 1, 2].map((k) => leaf(40, k * 1.5 + (cover === null ? 1 : 2.4), k === 2 ? "edge" : "outline"));
  const halves = [-1, 1].map((way) => area(polygon([corner, point(way * 34, -32.6), point(way * 34, 6), point(way * 2, 6)]), "board", "outline"));
  const awl: readonly SceneItem[] = [
    area(polygon([point(0, 1.5), point(-0.5, -14), point(0.5, -14)]), "metal", "edge"),
    area(polygon([point(-1.8, -14), point(1.8, -14), point(3, -20), point(2.6, -30), point(-2.6, -30), point(-3, -20)]), "face-middle", "outline"),
  ];
  const items = placeEvery([
    ...halves, ...(cover === null ? [] : [leaf(43, 0.9, "outline")]), ...sheets, ...(guide === null ? [] : [leaf(22, 6.2, "placement")]), ...awl, ...movementArrow(point(7.5, -33), point(7.5, -22), 0.6),
  ], [
    leaderAnywhere({ name: "awl", text: "awl, straight down", target: point(1.5, -26), directions: [35, 25, 45, 60], reach: 22 }),
    ...(guide === null ? [] : [leaderAnywhere({ name: "guide", text: guide, target: point(-12, -17.7), directions: [150, 140, 160, 120], reach: 30 })]),
    leaderAnywhere({ name: "section", text: section, target: point(24, cover === null ? -24.2 : -25.6), directions: [10, 20, 0, 30], reach: 14 }),
    ...(cover === null ? [] : [leaderAnywhere({ name: "cover", text: cover, target: arm(-1, 41.5, 0.9), directions: [170, 160, 180, 150], reach: 10 })]),
    leaderAnywhere({ name: "cradle", text: "punching cradle", target: point(-26, -6), directions: [190, 180, 200], reach: 12 }),
  ]);
  return [...items, label("gap", "gap", point(0, 11), { anchor: "middle" })];
}
