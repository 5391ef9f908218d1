// The strip along the spine edge of a block of leaves: spine edge below, head to the left, the fore-edge side broken off.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { wavyLine } from "../breaks.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** From 0, 0 at the head on the broken side to `wide`, `deep` at the tail of the spine edge. */
export function edgeStrip(wide: number, deep: number): readonly SceneItem[] {
  return [
    area(rectangle(0, 0, wide, deep), "face-light", "none"),
    stroke(polyline([point(0, 0), point(0, deep)]), "outline"), stroke(line(point(0, deep), point(wide, deep)), "outline"), stroke(line(point(wide, deep), point(wide, 0)), "outline"),
    stroke(wavyLine(point(0, 0), point(wide, 0)), "edge"),
  ];
}
