// One sheet laid flat with its fold line, its right edge carried over to the left.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { placeEvery } from "../figure.ts";
import { grainArrow, gridCentres } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** The sheet in proportion, folded across its middle; `halfWidth` is the width of one leaf. */
export function foldOneSheet(height: Length, halfWidth: Length): readonly SceneItem[] {
  const factor = Math.min(46 / toMillimetres(height), 50 / (2 * toMillimetres(halfWidth)));
  const [high, half] = [toMillimetres(height) * factor, toMillimetres(halfWidth) * factor];
  const fixed = [
    area(rectangle(0, 0, 2 * half, high), "paper", "outline"), stroke(line(point(half, 0), point(half, high)), "valley"),
    ...movementArrow(point(2 * half - 2, high * 0.62), point(3, high * 0.62), Math.min(7, high * 0.3)),
  ];
  return placeEvery(fixed, [grainArrow("grain", "height", [...gridCentres({ left: half * 1.1, top: 0, right: 2 * half, bottom: high * 0.5 }, 5, 5), point(2 * half + 5, high / 2)], Math.min(16, high * 0.4))]);
}
