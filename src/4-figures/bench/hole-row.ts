// A row of post holes in a plan view: the holes themselves and a column of names beside the drawing.
import { circle, line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { drawLeader } from "../leaders.ts";
import type { LeaderSpec } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** Names in a column beside the drawing, each level with what it points at unless they crowd. */
export function nameColumn(labels: readonly LeaderSpec[], x: number): readonly SceneItem[] {
  const inOrder = [...labels].sort((a, b) => a.target.y - b.target.y);
  const heights = spreadPositions(inOrder.map((each) => each.target.y), 4.2)!;
  return inOrder.flatMap((each, index) => drawLeader(each, point(x, heights[index]!)));
}

/** A hole with its centre line across the row. */
export function drawHole(centre: Point, radius: number): readonly SceneItem[] {
  const arm = radius + 1.5;
  return [area(circle(centre, Math.max(radius, 0.6)), "plate", "outline"), stroke(line(point(centre.x - arm, centre.y), point(centre.x + arm, centre.y)), "centre")];
}

