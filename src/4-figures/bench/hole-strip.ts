// A template of holes at true size: a strip along an edge or a fold, with a cross at every hole and its name beside it; one for every binding.
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { sameLength, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { areaLabel, drawLeader } from "../leaders.ts";
import { placeLabels } from "../place.ts";
import { area, label, sceneBox, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** A hole of the strip. */
export interface StripHole {
  /** As the steps call it: "head hole", "hole 3". */
  readonly name: string;
  readonly along: Length;
  /** From the strip's left edge. */
  readonly across: Length;
  readonly diameter: Length;
}

/** What a template of holes shows. */
export interface HoleStrip {
  readonly id: string;
  readonly title: string;
  readonly use: readonly string[];
  /** What the strip is: "The side strip". */
  readonly what: string;
  /** The strip: along the spine, and across it. */
  readonly height: Length;
  readonly width: Length;
  /** The fold that goes into the fold of a section, from the left edge; null where the left edge lies on the spine edge. */
  readonly fold: Length | null;
  readonly holes: readonly StripHole[];
  /** Whose head the positions are measured from, where there are several: " of cover". */
  readonly headOf?: string;
  /** Lines across the strip on which edges of something else will lie, and the words for them. */
  readonly edges?: { readonly words: string; readonly at: readonly { readonly name: string; readonly along: Length }[] };
}

/** From one line of words to the next; fractions are set larger. */
const wordPitch = 4.6;
/** Holes from here on are drawn with a heavy line, in millimetres: a thin one of a post hole would be lost under the awl. */
const heavyFrom = 3;
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9];

/** Draws the template. */
export function draftHoleStrip(input: DrawingInput, strip: HoleStrip): TemplateDraft {
  const { definition } = input;
  const { fold, edges } = strip;
  const [wide, high] = [toMillimetres(strip.width), toMillimetres(strip.height)];
  const at = (hole: StripHole) => point(toMillimetres(hole.across), toMillimetres(hole.along));
  const holes = [...strip.holes].sort((a, b) => at(a).y - at(b).y || at(a).x - at(b).x);
  const first = holes[0]!;
  const inOneLine = holes.every((hole) => sameLength(hole.across, first.across));
  const across = (hole: StripHole): string => (fold || inOneLine ? "" : `, ${input.number(hole.across)} from spine edge`);
  const top = edges ? 16 : 12;
  // The words beside a short strip with many holes reach further down than the strip.
  const pitch = Math.max(3.4, Math.min(wordPitch, (high - top - 6) / holes.length));
  const heights = spreadPositions(holes.map((hole) => at(hole).y), pitch, top, Math.max(high - 6, top + holes.length * pitch))!;
  const fixed: SceneItem[] = [
    area(rectangle(0, 0, wide, high), "none", "cut"),
    ...(fold ? [stroke(line(point(toMillimetres(fold), 0), point(toMillimetres(fold), high)), "valley")] : []),
    ...(edges?.at ?? []).map((edge) => stroke(line(point(0, toMillimetres(edge.along)), point(wide, toMillimetres(edge.along))), "placement")),
    ...holes.flatMap((hole, index): readonly SceneItem[] => {
      const { x, y } = at(hole);
      const diameter = toMillimetres(hole.diameter);
      const arm = diameter / 2 + (diameter < heavyFrom ? 1.2 : 2);
      return [
        stroke(circle(point(x, y), diameter / 2), diameter < heavyFrom ? "edge" : "outline", hole.name),
        stroke(line(point(x - arm, y), point(x + arm, y)), "edge", hole.name),
        stroke(line(point(x, y - arm), point(x, y + arm)), "edge", hole.name),
        ...drawLeader({ name: hole.name, target: point(x + arm, y), end: "none", text: `${hole.name}: ${input.number(hole.along)} from head${strip.headOf ?? ""}${across(hole)}` }, point(Math.max(wide, x + arm) + 3, heights[index]!)),
      ];
    }),
  ];
  const edge = fold ? "fold" : "spine edge";
  const lines = fold ? [toMillimetres(fold) - 2.4, toMillimetres(fold) - 4] : [2.6, 1.9, 3.4];
  const ends = [["head", 3.4], ["tail", high - 3.4]] as const;
  // The words stay on the piece; on a very short or narrow strip with many holes they stand beside it.
  const inside = placeLabels(fixed, [
    ...ends.map(([end, y]) => areaLabel(end, end, [point(5, y), point(wide / 2, y), point(wide * 0.75, y), point(wide - 5, y), point(wide + 7, y)])),
    areaLabel("edge", edge, lines.flatMap((x) => shares.map((share) => point(x, high * share))), { angle: 90 }),
  ]);
  const where = inside.unplaced.includes("edge") ? ` (${edge}: ${fold ? "in the middle" : "to the left"})` : "";
  const diameter = printThickness(first.diameter, { ...definition.units, dual: false });
  const every = `every hole: diameter ${diameter}${fold || !inOneLine ? "" : `, ${input.number(first.across)} from spine edge`}${where}`;
  const items = [
    ...inside.items, label("every hole", every, point(wide + 3, 7.5)),
    ...(edges ? [label("edges", edges.words, point(wide + 3, 11.7))] : []),
  ];
  const drawn = sceneBox(items)!;
  return {
    id: strip.id, title: strip.title, book: `${definition.title}, revision ${definition.revision}`, use: strip.use,
    alternative: `${strip.what} at true size, ${input.number(strip.height)} high. ${holes.map((hole) => `${hole.name[0]!.toUpperCase()}${hole.name.slice(1)}: ${input.number(hole.along)} from the head${strip.headOf ?? ""}${fold ? " on the fold" : ` and ${input.number(hole.across)} from the spine edge`}`).join("; ")}; every hole ${diameter} wide.`
      + `${edges ? ` Lines across it: ${edges.at.map(({ name, along }) => `${name}, ${input.number(along)} from the head`).join("; ")}.` : ""} ${input.unitNote}`,
    width: Math.ceil(drawn.right) + 1, height: Math.max(high, Math.ceil(drawn.bottom)), items,
    marks: [
      ...(fold ? [{ name: "fold", act: "fold" as const, from: [toMillimetres(fold), 0] as const, to: [toMillimetres(fold), high] as const }] : []),
      ...holes.map((hole) => ({ name: hole.name, act: "pierce" as const, from: [at(hole).x, at(hole).y] as const, to: [at(hole).x, at(hole).y] as const, diameter: toMillimetres(hole.diameter) })),
      ...(edges?.at ?? []).map(({ name, along }) => ({ name, act: "place" as const, from: [0, toMillimetres(along)] as const, to: [wide, toMillimetres(along)] as const })),
    ],
  };
}
