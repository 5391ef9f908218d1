// The hole template: the side strip at true size with a cross at every post hole.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { areaLabel, drawLeader } from "../leaders.ts";
import { placeLabels } from "../place.ts";
import { area, label, sceneBox, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { placeName, stripHoles } from "./hole-layout.ts";

export function draftHoleTemplate(input: DrawingInput<"stub-album">): TemplateDraft {
  const { definition, model } = input;
  const { geometry } = model;
  const holes = stripHoles(input);
  const [width, height] = [toMillimetres(geometry.sideStripWidth), toMillimetres(geometry.stripHeight)];
  const at = (hole: (typeof holes)[number]) => point(toMillimetres(hole.across), toMillimetres(hole.along));
  const wished = holes.map((hole) => at(hole).y);
  const labelHeights = spreadPositions(wished, 4.2, 12, height - 6) ?? wished;
  const fixed: SceneItem[] = [
    area(rectangle(0, 0, width, height), "none", "cut"),
    ...holes.flatMap((hole, index): readonly SceneItem[] => {
      const { x, y } = at(hole);
      const [arm, radius] = [toMillimetres(hole.diameter) / 2 + 2, toMillimetres(hole.diameter) / 2];
      const name = `${placeName(hole)} hole`;
      return [
        stroke(circle(point(x, y), radius), "outline", name),
        stroke(line(point(x - arm, y), point(x + arm, y)), "edge", name),
        stroke(line(point(x, y - arm), point(x, y + arm)), "edge", name),
        ...drawLeader({ name, target: point(x + arm, y), end: "none", text: `${name}: ${input.number(hole.along)} from head` }, point(Math.max(width, x + arm) + 3, labelHeights[index]!)),
      ];
    }),
  ];
  const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9].map((part) => height * part);
  // The words stay on the piece; on a very short or narrow strip with many holes they stand beside it.
  const ends = [["head", 3.4], ["tail", height - 3.4]] as const;
  const inside = placeLabels(fixed, [
    ...ends.map(([end, y]) => areaLabel(end, end, [point(5, y), point(width / 2, y), point(width - 5, y), point(width + 7, y)])),
    areaLabel("spine edge", "spine edge", places.map((y) => point(2.6, y)), { angle: 90 }),
  ]);
  const diameter = printThickness(holes[0]!.diameter, { ...definition.units, dual: false });
  const every = `every hole: diameter ${diameter}, ${input.number(holes[0]!.across)} from spine edge${inside.unplaced.includes("spine edge") ? " (to the left)" : ""}`;
  const items = [...inside.items, label("every hole", every, point(width + 3, 7.5))];
  const labelRoom = sceneBox(items)!.right - width + 1;
  return {
    id: "hole-template",
    title: "Hole template for side strip and board",
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the template out along its heavy outline; the words beside it fall away. Then turn it over and write “head”, “tail” and “spine edge” on its back where they are on its front.",
      `Measure it: it must be ${input.number(geometry.stripHeight)} × ${input.number(geometry.sideStripWidth)} ${definition.units.governing}, like the side strip.`,
      "Lay it on the covered side strip of the front cover, words up, spine edge to the spine edge, head to head, and tape it down.",
      "Prick through the middle of every cross with an awl, lightly, just through the cloth.",
      "For the back cover turn the template over, its words up that you wrote, spine edge to the spine edge, head to head; the pricked holes show the places.",
    ],
    alternative: `The side strip at true size. ${holes.map((hole) => `${placeName(hole)} hole, diameter ${printThickness(hole.diameter, definition.units)}, ${input.number(hole.along)} from the head and ${input.number(hole.across)} from the spine edge`).join("; ")}. ${input.unitNote}`,
    width: width + labelRoom, height, items,
    marks: model.holes.filter((hole) => hole.part === "side-strip").map((hole) => {
      const { x, y } = at(hole);
      return { name: hole.id, act: "pierce" as const, from: [x, y] as const, to: [x, y] as const };
    }),
  };
}
