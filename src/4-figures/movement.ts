// Arrows of movement: a hollow block arrow for pushing and pressing, a thin bent one for turning and drawing along.
import { curve, polygon } from "../geometry/path.ts";
import { addPoints, midpoint, quarterLeft, scalePoint, subtractPoints, unitVector } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { arrowhead } from "./arrows.ts";
import { area, stroke } from "./scene.ts";
import type { PathItem } from "./scene.ts";

/** A hollow arrow with its tip at `tip`, pushing in `direction`; lengths in millimetres of paper. */
export function pushArrow(tip: Point, direction: Point, length = 7): PathItem {
  const forward = unitVector(direction);
  const side = quarterLeft(forward);
  const at = (back: number, out: number): Point => addPoints(tip, addPoints(scalePoint(forward, -back), scalePoint(side, out)));
  return area(polygon([tip, at(2.6, 1.9), at(2.6, 0.8), at(length, 0.8), at(length, -0.8), at(2.6, -0.8), at(2.6, -1.9)]), "plate", "edge");
}

/** A thin arrow from one point to another, bent by `bulge` millimetres to the left of its way (to the right when negative). */
export function movementArrow(from: Point, to: Point, bulge: number): readonly PathItem[] {
  const way = subtractPoints(to, from);
  const bent = addPoints(midpoint(from, to), scalePoint(quarterLeft(unitVector(way)), bulge * (4 / 3)));
  const control1 = midpoint(from, bent);
  const control2 = midpoint(to, bent);
  return [
    stroke(curve(from, control1, control2, to), "edge", ""),
    arrowhead(to, subtractPoints(to, control2), "", 2.6),
  ];
}
