// Holes seen pictorially on top of what is pierced: marks, the sign for "upright", and names along the near edge.
import { circle, line, polyline, transformPath } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { drawLeader, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** A hole in millimetres of paper: x runs from the head of the row to its tail, y away from the spine edge. */
export interface PiercedHole {
  readonly along: number;
  readonly across: number;
  readonly radius: number;
}

/** A hole's cross and dot on a level surface at height `z`. */
export function holeMark({ along, across, radius }: PiercedHole, z: number): readonly SceneItem[] {
  const plane = isometricPlane(spacePoint(along, across, z), spacePoint(1, 0, 0), spacePoint(0, 1, 0));
  const arm = radius + 1.4;
  return [
    stroke(transformPath(plane, line(point(-arm, 0), point(arm, 0))), "edge"), stroke(transformPath(plane, line(point(0, -arm), point(0, arm))), "edge"),
    area(transformPath(plane, circle(point(0, 0), radius)), "arrow", "none"),
  ];
}

/** The little angle that says "upright": along the strip and up the tool. */
export function squareMark({ along, across, radius }: PiercedHole, z: number): readonly SceneItem[] {
  const at = (x: number, up: number): Point => isometric(spacePoint(along + radius + x, across, z + up));
  return [stroke(polyline([at(4.5, 0), at(4.5, 4.5), at(0.4, 4.5)]), "edge")];
}

/** Distance from one hole's name to the next, down the page. */
const namePitch = 4.4;

/**
 * The holes' names along the near edge, in the order of the holes, so that no pointer crosses another.
 * `beside` is how far the work reaches out on the near side of the spine edge, `top` the height of the holes.
 * Wished is the place straight across the edge from each hole; crowded names spread along the edge.
 */
export function holeNames(holes: readonly PiercedHole[], { beside, top }: { readonly beside: number; readonly top: number }, named: readonly { readonly id: string; readonly text: string }[]): readonly Placeable[] {
  const wished = holes.map(({ along }) => isometric(spacePoint(along, -beside - 4, top)));
  const heights = spreadPositions(wished.map((at) => at.y), namePitch)!;
  return named.map(({ id, text }, index) => {
    const { along, across } = holes[index]!;
    const spec = { name: id, text, target: isometric(spacePoint(along, across, top)) };
    // The edge falls at 30°: a name that is moved down moves right by √3 as much.
    const knee = point(wished[index]!.x + (heights[index]! - wished[index]!.y) * Math.sqrt(3), heights[index]!);
    return firstOf({ name: id, candidates: [drawLeader(spec, point(Math.min(knee.x, spec.target.x - 0.1), knee.y))] }, leaderAnywhere(spec));
  });
}

