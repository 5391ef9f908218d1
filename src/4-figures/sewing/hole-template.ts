// A template of sewing holes at true size: a strip along the fold or the spine edge, with a cross at every hole and its name beside it.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { areaLabel, drawLeader } from "../leaders.ts";
import { placeLabels } from "../place.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** What a template of sewing holes shows. */
export interface HoleTemplate {
  readonly title: string;
  readonly use: readonly string[];
  /** The strip: along the spine, and across it. */
  readonly height: Length;
  readonly width: Length;
  /** The fold that goes into the fold of a section; null where the left edge lies on the spine edge. */
  readonly fold: Length | null;
  /** Across from the left edge of the strip. */
  readonly holes: readonly { readonly name: string; readonly along: Length; readonly across: Length; readonly diameter: Length }[];
}

/** Paper right of the strip for the labels, in millimetres; it is cut off with the rest. */
const labelRoom = 62;

/** Template `hole-template`. */
export function draftHoles(input: DrawingInput, { title, use, height, width, fold, holes }: HoleTemplate): TemplateDraft {
  const { definition } = input;
  const [wide, high] = [toMillimetres(width), toMillimetres(height)];
  const at = (hole: HoleTemplate["holes"][number]) => point(toMillimetres(hole.across), toMillimetres(hole.along));
  const inOrder = [...holes].sort((a, b) => at(a).y - at(b).y || at(a).x - at(b).x);
  const pitch = Math.min(4.2, (high - 14) / Math.max(1, holes.length));
  const heights = spreadPositions(inOrder.map((hole) => at(hole).y), pitch, 12, high - 5) ?? inOrder.map((hole) => at(hole).y);
  const fixed: SceneItem[] = [
    area(rectangle(0, 0, wide, high), "none", "cut"),
    ...(fold ? [stroke(line(point(toMillimetres(fold), 0), point(toMillimetres(fold), high)), "valley")] : []),
    ...inOrder.flatMap((hole, index): readonly SceneItem[] => {
      const { x, y } = at(hole);
      const [radius, name] = [toMillimetres(hole.diameter) / 2, `hole ${hole.name}`];
      const arm = radius + 1.2;
      const position = fold ? `${input.number(hole.along)} from head` : `${input.number(hole.along)} from head, ${input.number(hole.across)} from spine edge`;
      return [
        stroke(circle(point(x, y), radius), "edge", name),
        stroke(line(point(x - arm, y), point(x + arm, y)), "edge", name),
        stroke(line(point(x, y - arm), point(x, y + arm)), "edge", name),
        ...drawLeader({ name, target: point(x + arm, y), end: "none", text: `${hole.name}: ${position}` }, point(wide + 4, heights[index]!)),
      ];
    }),
    label("tail", "tail", point(wide + 3, high - 0.5)),
  ];
  const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9];
  const edge = fold ? "fold" : "spine edge";
  const across = fold ? [toMillimetres(fold) - 2.4, toMillimetres(fold) - 4] : [2.4, 1.9, 3.4];
  const inside = placeLabels(fixed, [areaLabel("edge", edge, across.flatMap((x) => shares.map((share) => point(x, high * share))), { angle: 90 })]);
  const head = inside.unplaced.length === 0 ? "head" : `head; ${edge}${fold ? " in the middle" : " to the left"}`;
  const every = `holes ${printThickness(holes[0]!.diameter, definition.units)} wide`;
  return {
    id: "hole-template", title, book: `${definition.title}, revision ${definition.revision}`, use,
    alternative: `A strip ${input.number(height)} high at true size. ${inOrder.map((hole) => `Hole ${hole.name}, ${input.number(hole.along)} from the head${fold ? " on the fold" : ` and ${input.number(hole.across)} from the spine edge`}`).join("; ")}; every hole ${printThickness(holes[0]!.diameter, definition.units)} wide. ${input.unitNote}`,
    width: wide + labelRoom, height: high,
    items: [...inside.items, label("head", head, point(wide + 3, 3)), label("every hole", every, point(wide + 3, 7.5))],
    marks: holes.map((hole) => ({ name: hole.name, act: "pierce" as const, from: [at(hole).x, at(hole).y] as const, to: [at(hole).x, at(hole).y] as const })),
  };
}
