// A shut strip seen from its head, as one line: layers a little apart, folds as short turns.
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";

/** The chain of points of so many layers from y = 0 downwards, entering at the left or the right of the first layer. */
export function pileLine(layers: number, width: number, apart: number, enters: "left" | "right", left = 0): readonly Point[] {
  return Array.from({ length: layers }, (_, index) => {
    const fromLeft = (index % 2 === 0) === (enters === "left");
    const y = index * apart;
    return fromLeft ? [point(left, y), point(left + width, y)] : [point(left + width, y), point(left, y)];
  }).flat();
}
