// The holes of the spine: a row for each station, a column for each section; as a figure, and as a template at true size.
import type { Hole } from "../../2-model/types.ts";
import { circle, line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { subtractLength, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawLeader } from "../leaders.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"long-stitch">;

/** Room on paper along the spine and across it; columns are drawn at most so far apart. */
const room = { height: 96, width: 62, pitch: 6 } as const;
/** From one line of words to the next. */
const wordPitch = 4.6;

function coverHoles({ model }: Input): readonly Hole[] {
  return model.holes.filter(({ part }) => part === "cover");
}

/** Figure `spine-layout`: the spine inside up, front cover to the left; wider than it is, so that its columns are told apart. */
export function drawSpineLayout(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { rows, columns, coverHeight, frontWidth, spineWidth, sectionPitch, slits, holeDiameter } = geometry;
  const words = sectionWords(input);
  const holes = coverHoles(input);
  const across = Math.min(room.width / toMillimetres(spineWidth), room.pitch / toMillimetres(sectionPitch));
  const { items, scale } = placeAtScale(scalesThatFit(1, toMillimetres(coverHeight), room.height, room.height, 1), ({ factor }) => {
    const high = toMillimetres(coverHeight) * factor;
    const wide = toMillimetres(spineWidth) * across;
    const x = (length: Length): number => toMillimetres(subtractLength(length, frontWidth)) * across;
    const y = (length: Length): number => toMillimetres(length) * factor;
    const radius = Math.min(0.8, (toMillimetres(sectionPitch) * across) / 3);
    const running = runningDimensions({
      name: "rows from the head", side: "left", edge: -7, datum: 0, low: -30, high: high + 30, start: 1,
      marks: [{ name: "head 0", at: 0, text: "0" }, ...rows.map((along, k) => ({ name: `row ${k + 1}`, at: y(along), text: input.number(along), weight: 600 as const })), { name: "tail edge", at: high, text: input.number(coverHeight) }],
    })!;
    const names = spreadPositions(rows.map(y), wordPitch)!;
    const [first, last] = [x(columns[0]!), x(columns.at(-1)!)];
    return {
      fixed: [
        area(rectangle(-7, 0, wide + 14, high), "face-light", "none"),
        stroke(line(point(-7, 0), point(wide + 7, 0)), "outline"), stroke(line(point(-7, high), point(wide + 7, high)), "outline"),
        ...[0, wide].map((at) => stroke(line(point(at, 0), point(at, high)), "valley")),
        ...slits.map(({ along, from, to }) => stroke(line(point(x(from), y(along)), point(x(to), y(along))), "cut")),
        ...holes.map((hole) => area(circle(point(x(hole.across), y(hole.along)), radius), "plate", "edge")),
        ...running.items,
        ...rows.flatMap((along, k) => drawLeader({ name: `station ${k + 1}`, text: `station ${k + 1}${slits.some(({ station }) => station === k + 1) ? ": slit" : ""}`, target: point(last + radius, y(along)), end: "none" }, point(wide + 12, names[k]!))),
      ],
      labels: [
        dimension({ name: "pitch", from: point(first, -3), to: point(x(columns[1]!), -3), side: "above", text: `section to section ${words.thickness(sectionPitch)}`, offset: 8 }),
        dimension({ name: "spine", from: point(0, high + 3), to: point(wide, high + 3), side: "below", text: `spine ${input.number(spineWidth)}`, offset: 8 }),
        { name: "first section", candidates: [3.4, 4.4, 6].map((up) => drawLeader({ name: "first section", text: "section 1", target: point(first, 0), end: "arrow" }, point(first - 5, -up))) },
        { name: "last section", candidates: [3.4, 4.4, 6].map((up) => drawLeader({ name: "last section", text: `section ${columns.length}`, target: point(last, 0), end: "arrow" }, point(last + 5, -up))) },
        areaLabel("front", "front", [point(-3.5, high * 0.5), point(-3.5, high * 0.4), point(-3.5, high * 0.6)], { angle: 90 }),
        areaLabel("back", "back", [point(wide + 3.5, high * 0.5), ...[0.44, 0.56, 0.36, 0.64, 0.3, 0.7, 0.25, 0.75].map((share) => point(wide + 3.5, high * share))], { angle: 90 }),
      ],
    };
  });
  const slitWords = slits.length === 0 ? "" : ` Heavy lines are slits, cut from the hole of section 1 to that of section ${columns.length}.`;
  return {
    id: "spine-layout", title: "The holes of the spine",
    caption: `The spine inside up, head away from you, front cover to the left; ${scale.name} along it, drawn wider than it is. Measure the rows from the head of the cover (the ring at 0).${slitWords} ${input.unitNote}`,
    alternative: `The spine, ${input.number(spineWidth)} wide between its folds. Rows of holes lie ${rows.map((along, k) => `${input.number(along)} from the head for station ${k + 1}`).join(", ")}. ${columns.length} columns, one for each section, stand ${words.thickness(sectionPitch)} apart, section 1 at the front.${slitWords} Holes are ${words.thickness(holeDiameter)} wide.`,
    items,
  };
}

/** Paper beside the template for words, in millimetres; it is cut off with the rest. */
const wordsRoom = 68;

/** Template `spine-template`: the spine between its folds at true size, a cross at every hole. */
export function draftSpineTemplate(input: Input): TemplateDraft {
  const { definition, model } = input;
  const { rows, columns, coverHeight, spineWidth, frontWidth, slits, holeDiameter } = model.geometry;
  const words = sectionWords(input);
  const [wide, high] = [toMillimetres(spineWidth), toMillimetres(coverHeight)];
  const at = (along: Length, across: Length): Point => point(toMillimetres(subtractLength(across, frontWidth)), toMillimetres(along));
  const heights = spreadPositions(rows.map(toMillimetres), wordPitch, 14, Math.max(high - 4, 14 + rows.length * wordPitch))!;
  const holes = coverHoles(input);
  const reach = Math.min(1.4, toMillimetres(model.geometry.sectionPitch) * 0.42);
  const items: readonly SceneItem[] = [
    area(rectangle(0, 0, wide, high), "none", "cut"),
    ...slits.map(({ along, from, to, station }) => stroke(line(at(along, from), at(along, to)), "edge", `station ${station}`)),
    ...holes.flatMap((hole): readonly SceneItem[] => {
      const { x, y } = at(hole.along, hole.across);
      const name = `station ${hole.id.split("/")[1]}`;
      return [stroke(line(point(x - reach, y), point(x + reach, y)), "edge", name), stroke(line(point(x, y - 1.4), point(x, y + 1.4)), "edge", name)];
    }),
    ...rows.flatMap((along, k) => drawLeader({
      name: `station ${k + 1}`, target: point(at(along, columns.at(-1)!).x + reach, toMillimetres(along)), end: "none",
      text: `station ${k + 1}: ${input.number(along)} from head${slits.some(({ station }) => station === k + 1) ? ", slit" : ""}`,
    }, point(wide + 4, heights[k]!))),
    label("head", `head; left column section 1 (front),`, point(wide + 3, 3)),
    label("head columns", `right column section ${columns.length} (back)`, point(wide + 3, 7)),
    label("tail", `tail; holes ${words.thickness(holeDiameter)} wide`, point(wide + 3, Math.max(high, heights.at(-1)! + 6))),
  ];
  return {
    id: "spine-template", title: "Spine template for the cover", book: `${definition.title}, revision ${definition.revision}`,
    use: [
      `Cut it out along its heavy outline and measure it: it must be ${input.number(spineWidth)} ${definition.units.governing} wide, like the spine between its folds.`,
      "Lay it on the inside of the cover, head to head, its long sides on the spine folds, and fix it with removable tape.",
      "Prick through the middle of every cross.",
      ...(slits.length > 0 ? ["Lines from cross to cross are slits: prick their ends here, cut them later."] : []),
    ],
    alternative: `A strip ${input.number(coverHeight)} high and ${input.number(spineWidth)} wide at true size, with rows of crosses: ${rows.map((along, k) => `station ${k + 1}, ${input.number(along)} from the head`).join("; ")}. ${columns.length} columns, one for each section, ${words.thickness(model.geometry.sectionPitch)} apart. ${input.unitNote}`,
    width: wide + wordsRoom, height: Math.max(high, heights.at(-1)! + 6), items,
    marks: [
      ...holes.map((hole) => {
        const { x, y } = at(hole.along, hole.across);
        return { name: `section ${hole.id.replace("/", ", station ")}`, act: "pierce" as const, from: [x, y] as const, to: [x, y] as const };
      }),
      ...slits.map(({ station, along, from, to }) => ({ name: `slit ${station}`, act: "cut" as const, from: [at(along, from).x, at(along, from).y] as const, to: [at(along, to).x, at(along, to).y] as const })),
    ],
  };
}
