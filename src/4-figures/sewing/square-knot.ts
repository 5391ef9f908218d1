// The square knot in three small drawings: right over left, left over right, and cut.
import { bandAlong } from "../../geometry/band.ts";
import { line, pathPoints, rectangle } from "../../geometry/path.ts";
import type { PathStep } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { FillKind } from "../fill-kinds.ts";
import { area, label, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";

/** Width of a drawn strand in millimetres. */
const strand = 1.8;

/** One strand from below the stitch upwards; `side` is 1 for the one that comes from the right. It crosses over once or twice. */
function strandItem(side: 1 | -1, halves: 1 | 2, top: number, fill: FillKind): SceneItem {
  const steps: readonly PathStep[] = [
    { kind: "move", to: point(5 * side, 12) },
    { kind: "curve", control1: point(4 * side, 6), control2: point(-5 * side, 4), to: point(-5 * side, -2) },
    ...(halves === 2 ? [{ kind: "curve" as const, control1: point(-5 * side, -7), control2: point(5 * side, -7), to: point(6 * side, -13) }] : []),
    { kind: "line", to: point((halves === 2 ? 6.6 : -5.6) * side, top) },
  ];
  return area(bandAlong(pathPoints(steps, 0.05)[0]!, strand), fill, "edge");
}

/**
 * The views beside each other; `round` is what the knot is tied round: "long stitch". The end that goes over first goes over again: it starts
 * right, lies left after the first half, and is crossed over from there.
 */
export function squareKnot(round: string | null): readonly SceneItem[] {
  const stitch: readonly SceneItem[] = round ? [area(rectangle(-16, 9.6, 32, 1.5), "face-middle", "edge")] : [];
  const name = (id: string, text: string, x: number, y: number): SceneItem => label(id, text, point(x, y), { anchor: "middle", size: smallestType });
  const knot = (halves: 1 | 2, top: number): readonly SceneItem[] => [...stitch, strandItem(-1, halves, top, "paper"), strandItem(1, halves, top, "face-dark")];
  const first = [...knot(1, -6), name("knot 1 left", "right end", -8, -8.5), name("knot 1 right", "left end", 8, -8.5), ...(round ? [name("knot 1 stitch", round, 11.5, 14.6)] : [])];
  const second = [...knot(2, -17), name("knot 2 left", "left end", -9, -19.5), name("knot 2 right", "right end", 9, -19.5)];
  const cut = [...knot(2, -15), stroke(line(point(-10, -15.4), point(-3.4, -15.4)), "cut"), stroke(line(point(3.4, -15.4), point(10, -15.4)), "cut")];
  return viewsBeside([withHeading("knot 1", "1  Right over left", first), withHeading("knot 2", "2  Left over right", second), withHeading("knot 3", "3  Cut", cut)], 12);
}
