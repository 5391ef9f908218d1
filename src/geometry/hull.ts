// The convex hull: the contour of a body as it is seen.
import type { Point } from "./point.ts";

/** The smallest convex polygon round some points, clockwise on the page, by Andrew's monotone chain. */
export function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const turn = (o: Point, a: Point, b: Point): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
  const chain = (along: readonly Point[]): readonly Point[] => {
    const hull: Point[] = [];
    for (const at of along) {
      while (hull.length >= 2 && turn(hull.at(-2)!, hull.at(-1)!, at) <= 0) hull.pop();
      hull.push(at);
    }
    return hull.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}
