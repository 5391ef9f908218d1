// Arrowheads, dots and datum circles: the ends of dimension lines and leaders.
import { circle, polygon } from "../geometry/path.ts";
import { addPoints, quarterLeft, scalePoint, subtractPoints, unitVector } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { area } from "./scene.ts";
import type { PathItem } from "./scene.ts";

/** Length of an arrowhead in millimetres. It is three times as long as wide: 18.9° included, at least 15° asked (stored chapter "Dimensioning"). */
export const arrowLength = 2.1;

/** A filled arrowhead with its tip at `tip`, flying in `direction`. */
export function arrowhead(tip: Point, direction: Point, owner: string, length = arrowLength): PathItem {
  const forward = unitVector(direction);
  const tail = subtractPoints(tip, scalePoint(forward, length));
  const half = scalePoint(quarterLeft(forward), length / 6);
  return area(polygon([tip, addPoints(tail, half), subtractPoints(tail, half)]), "arrow", "none", owner);
}

/** A dot that ends a leader inside an area. */
export function dot(at: Point, owner: string, radius = 0.5): PathItem {
  return area(circle(at, radius), "arrow", "none", owner);
}

/** The ring that marks the edge or line from which running dimensions are measured. */
export function datumRing(at: Point, owner: string): PathItem {
  return area(circle(at, 0.9), "plate", "dimension", owner);
}
