// Labels of a plan view of flat cloth, card or board: names in its fields, the words beside the datum, places for the grain arrow.
import type { Box } from "../../geometry/box.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { areaLabel, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { label } from "../scene.ts";

/** How large a plan view is on paper; its head left corner is the origin. */
export interface PlanSize {
  readonly across: { readonly size: number };
  readonly down: { readonly size: number };
}

/** Places in the middle of a field's width at these shares of its height, first in the upper half unless said otherwise: its middle may be left out. */
export function awayFromTheMiddle({ left, right, top, bottom }: Box, shares: readonly number[] = [0.3, 0.4, 0.7, 0.6, 0.2, 0.8, 0.5, 0.12, 0.88]): readonly Point[] {
  return shares.flatMap((share) => [0.5, 0.3, 0.7].map((across) => point(left + (right - left) * across, top + (bottom - top) * share)));
}

/** What the upright lines are measured from, in fewer words on a low cloth. */
export function datumWords(height: number): Placeable {
  const name = "datum words";
  return { name, candidates: ["measure from this edge", "measure from here", "from here"].flatMap((words) => [2.6, 3.4].map((x) => [label(name, words, point(-x, height / 2), { anchor: "middle", angle: 90 })])) };
}

/** Places for the grain arrow of a low cloth: right of it, then under it. */
export function besideThePlan({ across, down }: PlanSize): readonly Point[] {
  const right = [8, 12, 16, 20, 24, 28, 32, 36].flatMap((out) => [0.5, 0.3, 0.7].map((share) => point(across.size + out, down.size * share)));
  const under = [14, 20, 26].flatMap((out) => [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((share) => point(across.size * share, down.size + out)));
  return [...right, ...under];
}

/** A strip's name in its field: upright, or level where it is wide, else outside with a pointer. */
export function nameIn(name: string, text: string, box: Box, leader: { readonly directions: readonly number[]; readonly reach: number }): Placeable {
  const centres = awayFromTheMiddle(box);
  return firstOf(
    areaLabel(name, text, centres),
    areaLabel(name, text, centres, { angle: 90 }),
    ...[0.5, 0.75, 0.25, 0.9, 0.1].flatMap((share) => [0.6, 0.85, 0.3].map((down) =>
      leaderAnywhere({ name, text, target: point(box.left + (box.right - box.left) * share, box.top + (box.bottom - box.top) * down), ...leader }))),
  );
}
