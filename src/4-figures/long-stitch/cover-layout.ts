// Figure: the cover laid flat, inside up, every fold measured from its left edge, with the names of what lies between.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { addLengths, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"long-stitch">;

/** Room for the cover on paper. */
const room = { width: 128, height: 62 } as const;

/** What lies between the folds, from the left edge, inside up. */
export function zonesOf({ model }: Pick<Input, "model">): readonly { readonly name: string; readonly from: Length; readonly to: Length }[] {
  const { folds, coverWidth, flap } = model.geometry;
  const ends = [addLengths(), ...folds.map(({ at }) => at), coverWidth];
  return ["front cover", "spine", "back cover", ...(flap ? ["wall", "flap"] : [])].map((name, k) => ({ name, from: ends[k]!, to: ends[k + 1]! }));
}

/** The cover's outline and its folds. */
export function flatCover({ model }: Pick<Input, "model">, factor: number): readonly SceneItem[] {
  const { coverHeight, coverWidth, folds } = model.geometry;
  const [wide, high] = [toMillimetres(coverWidth) * factor, toMillimetres(coverHeight) * factor];
  return [
    area(rectangle(0, 0, wide, high), "face-light", "outline"),
    ...folds.map(({ at }) => stroke(line(point(toMillimetres(at) * factor, 0), point(toMillimetres(at) * factor, high)), "valley")),
  ];
}

/** The name in the zone where it has room, else with a pointer to it. */
export function zoneName(name: string, left: number, right: number, high: number): Placeable {
  const inside = areaLabel(name, name, gridCentres({ left: left + 1, top: 2, right: right - 1, bottom: high - 2 }, 5, 9));
  const upright = areaLabel(name, name, [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => point((left + right) / 2, high * share)), { angle: 90 });
  return firstOf(inside, upright, leaderAnywhere({ name, text: name, target: point((left + right) / 2, high * 0.08), directions: [75, 60, 90, 105, 120], reach: 9 + high * 0.08 }));
}

/** Figure `cover-layout`. */
export function drawCoverLayout(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { coverHeight, coverWidth, folds } = geometry;
  const zones = zonesOf(input);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(coverWidth), toMillimetres(coverHeight), room.width, room.height), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [wide, high] = [paper(coverWidth), paper(coverHeight)];
    const running = runningDimensions({
      name: "across", side: "below", edge: high, datum: 0, low: -12, high: wide + 14,
      marks: [{ name: "left edge 0", at: 0, text: "0" }, ...folds.map(({ name, at }) => ({ name: `${name} across`, at: paper(at), text: input.number(at), weight: 600 as const })), { name: "right edge", at: wide, text: input.number(coverWidth) }],
    })!;
    const back = zones[2]!;
    return {
      fixed: [...flatCover(input, factor), ...running.items],
      labels: [
        dimension({ name: "height", from: point(wide, 0), to: point(wide, high), side: "right", text: input.number(coverHeight), offset: 6 }),
        ...zones.map(({ name, from, to }) => zoneName(name, paper(from), paper(to), high)),
        grainArrow("grain", "height", [...gridCentres({ left: paper(back.from) + 2, top: 2, right: paper(back.to) - 2, bottom: high - 2 }), point(-12, high / 2)], Math.min(16, high * 0.5)),
        areaLabel("head", "head", [point(-7, 2), point(-7, -2), point(wide + 6, -3)]),
        areaLabel("tail", "tail", [point(-7, high - 2), point(-7, high - 5), point(-8, high + 4)]),
      ],
    };
  });
  const sides = zones.map(({ name, from, to }) => `${name} from ${input.number(from)} to ${input.number(to)}`).join(", ");
  return {
    id: "cover-layout", title: "The cover, laid flat",
    caption: `The cover inside up, head away from you, ${scale.name}. Measure every fold from the left edge (the ring at 0); score and fold along the dashed lines. ${input.unitNote}`,
    alternative: `The cover, ${input.number(coverHeight)} high and ${input.number(coverWidth)} wide, inside up, with ${folds.length} valley folds: ${folds.map(({ name, at }) => `${name} ${input.number(at)} from the left edge`).join(", ")}. From the left: ${sides}. Grain along the folds.`,
    items,
  };
}

/** Figure `spine-strip`: where the reinforcement lies; none for a cover without. */
export function drawSpineStrip(input: Input): FigureDraft | null {
  const { geometry } = input.model;
  const { strip, coverHeight, coverWidth, frontWidth, spineWidth } = geometry;
  if (!strip) return null;
  const words = sectionWords(input);
  const zones = zonesOf(input);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(coverWidth), toMillimetres(coverHeight), room.width, room.height), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const high = paper(coverHeight);
    const left = paper(addLengths(frontWidth, strip.inset));
    const middle = left + paper(strip.width) / 2;
    return {
      fixed: [...flatCover(input, factor), area(rectangle(left, 0, paper(strip.width), high), "strip", "outline")],
      labels: [
        dimension({ name: "spine", from: point(paper(frontWidth), 0), to: point(paper(addLengths(frontWidth, spineWidth)), 0), side: "above", text: `spine ${input.number(spineWidth)}`, offset: 6 }),
        dimension({ name: "strip width", from: point(left, high), to: point(left + paper(strip.width), high), side: "below", text: `strip ${input.number(strip.width)}`, offset: 6 }),
        leaderAnywhere({ name: "strip", text: [words.part("spine-strip"), "between the folds"], target: point(middle, high * 0.2), directions: [20, 340, 160, 200], reach: 12 }),
        ...zones.filter(({ name }) => name.endsWith("cover")).map(({ name, from, to }) => zoneName(name, paper(from), paper(to), high)),
        areaLabel("head", "head", [point(-7, 2), point(-7, -2)]), areaLabel("tail", "tail", [point(-7, high - 2), point(-7, high - 5)]),
      ],
    };
  });
  return {
    id: "spine-strip", title: "The spine strip in its place",
    caption: `The cover inside up, ${scale.name}. The strip lies between the two spine folds, ${words.thickness(strip.inset)} from each, level at head and tail. ${input.unitNote}`,
    alternative: `The flat cover, inside up. ${words.part("spine-strip")}, ${input.number(coverHeight)} high and ${input.number(strip.width)} wide, lies in the middle of the spine, which is ${input.number(spineWidth)} wide between its folds.`,
    items,
  };
}
