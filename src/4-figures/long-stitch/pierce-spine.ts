// Figures of piercing the spine across one row, and of cutting a slit from hole to hole; not to scale.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd } from "../breaks.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, leaderAnywhere } from "../leaders.ts";
import { movementArrow, pushArrow } from "../movement.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { uprightAwl } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"long-stitch">;

/** Figure `pierce-spine`: across the spine at one row: cork mat, cover, strip, the awl upright. */
export function drawPierceSpine(input: Input): FigureDraft {
  const { strip, holeDiameter } = input.model.geometry;
  const words = sectionWords(input);
  const [half, coverThick, stripThick] = [44, 3.4, 3];
  const top = strip ? -stripThick : 0;
  const [done, awlAt, marked] = [[-15, -5], 5, [15]] as const;
  const gap = (x: number): readonly SceneItem[] => [area(rectangle(x - 1.1, top - 0.1, 2.2, coverThick - top + 0.2), "plate", "none"), ...[-1.1, 1.1].map((by) => stroke(line(point(x + by, top), point(x + by, coverThick)), "edge"))];
  const fixed: readonly SceneItem[] = [
    area(rectangle(-half, coverThick, 2 * half, 9), "face-middle", "edge"),
    area(rectangle(-half, 0, 2 * half, coverThick), "card", "outline"),
    ...(strip ? [area(rectangle(-22, -stripThick, 44, stripThick), "strip", "outline")] : []),
    ...done.flatMap(gap), ...gap(awlAt),
    ...marked.map((x) => stroke(line(point(x, top - 2.4), point(x, top - 0.3)), "edge")),
    ...uprightAwl(point(awlAt, coverThick + 3)), pushArrow(point(awlAt + 7, top - 14), point(0, 1), 9),
    ...raggedEnd(-half, top - 1, coverThick + 10, -1), ...raggedEnd(half, top - 1, coverThick + 10, 1),
  ];
  const items = placeEvery(fixed, [
    leaderAnywhere({ name: "awl", text: "awl, straight down", target: point(awlAt - 1.6, top - 22), directions: [160, 170, 150, 180], reach: 12 }),
    ...(strip ? [leaderAnywhere({ name: "strip", text: words.part("spine-strip"), target: point(-19, -1.5), directions: [120, 135, 105, 150], reach: 10 })] : []),
    leaderAnywhere({ name: "cover", text: [`${words.part("cover")},`, "inside up"], target: point(32, 1.6), directions: [60, 75, 45], reach: 12 }),
    leaderAnywhere({ name: "mat", text: "cork mat or waste board", target: point(28, coverThick + 5), directions: [300, 315, 290], reach: 9 }),
    leaderAnywhere({ name: "hole", text: "pierced", target: point(done[0], coverThick * 0.4), end: "arrow", directions: [250, 240, 260], reach: 16 }),
    leaderAnywhere({ name: "mark", text: "mark", target: point(marked[0], top - 1.6), end: "arrow", directions: [60, 45, 75], reach: 9 }),
  ]);
  return {
    id: "pierce-spine", title: "Piercing the spine",
    caption: `Across the spine at one station, not to scale: one hole for each section, ${words.thickness(holeDiameter)} wide. Your other hand lies flat beside the spine, never under it.`,
    alternative: `Section across the spine: the cover lies inside up on a cork mat${strip ? ", the spine strip on it" : ""}. Two holes are pierced; an awl stands upright in the third and goes into the mat; a mark shows the next.`,
    items,
  };
}

/** Figure `cut-slits`: one row in plan, the ruler on its two holes; none for a spine with holes only. */
export function drawCutSlits(input: Input): FigureDraft | null {
  const { slits, columns } = input.model.geometry;
  if (slits.length === 0) return null;
  const [half, hole] = [44, 24];
  const fixed: readonly SceneItem[] = [
    area(rectangle(-half, -18, 2 * half, 36), "face-light", "none"),
    ...[-32, 32].map((x) => stroke(line(point(x, -18), point(x, 18)), "valley")),
    area(rectangle(-half - 8, -10.5, 2 * half + 16, 10), "metal", "edge"),
    ...[-hole, hole].map((x) => area(circle(point(x, 0), 1.2), "plate", "outline")),
    stroke(line(point(-hole + 1.2, 0.2), point(hole - 1.2, 0.2)), "cut"),
    ...movementArrow(point(-hole + 2, 4.6), point(-3, 4.6), -0.6), ...movementArrow(point(hole - 2, 4.6), point(3, 4.6), 0.6),
  ];
  const items = placeEvery(fixed, [
    leaderAnywhere({ name: "ruler", text: "steel ruler", target: point(-10, -6), directions: [120, 110, 135], reach: 16 }),
    leaderAnywhere({ name: "first", text: ["hole of", "section 1"], target: point(-hole - 0.8, 0.9), end: "arrow", directions: [240, 225, 255], reach: 21 }),
    leaderAnywhere({ name: "last", text: ["hole of", `section ${columns.length}`], target: point(hole + 0.8, 0.9), end: "arrow", directions: [300, 315, 285], reach: 21 }),
    areaLabel("fold front", "front", [point(-half + 5, 12), point(-half + 5, 15)]), areaLabel("fold back", "back", [point(half - 5, 12), point(half - 5, 15)]),
  ]);
  return {
    id: "cut-slits", title: "Cutting a slit",
    caption: "One station of the spine, inside up, not to scale. Begin at each hole and end in the middle; the holes at both ends keep the slit from tearing further.",
    alternative: `A row of the spine with two holes, of section 1 and of section ${columns.length}. A steel ruler lies along them; two arrows show the cut, from each hole to the middle. Dashed lines are the spine folds.`,
    items,
  };
}
