// The templates of a case binding at true size: piercing guide, case guide, corner template, joint spacer, rounding gauge.
import { line, polygon, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { addLengths, toMillimetres } from "../../units/length.ts";
import { printThickness } from "../../units/print-length.ts";
import { draftCornerTemplate } from "../bench/corner-template.ts";
import type { DrawingInput } from "../binding.ts";
import { drawLeader } from "../leaders.ts";
import { placementLines } from "../placement-lines.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

type Input = DrawingInput<"case-binding">;

function bookOf({ definition }: Input): string {
  return `${definition.title}, revision ${definition.revision}`;
}

/** Half of the folded guide, and the paper beside it for words, in millimetres. */
const guide = { half: 28, words: 46, arm: 3 } as const;

/** Template `piercing-guide`. */
export function draftPiercingGuide(input: Input): TemplateDraft | null {
  const { geometry } = input.model;
  if (!geometry.sewing) return null;
  const height = toMillimetres(geometry.block.folioHeight);
  const fold = guide.half;
  const stations = geometry.sewing.stations.map((station, index) => {
    const at = addLengths(station.at, geometry.headTrim);
    return { name: station.name, number: index + 1, y: toMillimetres(at), text: `${index + 1} ${station.name}: ${input.number(at)}` };
  });
  const heights = spreadPositions(stations.map(({ y }) => y), 4.4, 7, height - 3) ?? stations.map(({ y }) => y);
  const items: SceneItem[] = [
    area(rectangle(0, 0, 2 * guide.half, height), "none", "cut"),
    stroke(line(point(fold, 0), point(fold, height)), "valley"),
    ...stations.flatMap(({ name, y, text }, index) => [
      stroke(line(point(fold - guide.arm, y), point(fold + guide.arm, y)), "edge", name),
      ...drawLeader({ name, target: point(fold + guide.arm, y), end: "none", text }, point(2 * guide.half + 3, heights[index]!)),
    ]),
    label("head", "head", point(2, 4), { weight: 600 }),
    label("tail", "tail", point(2, height - 2)),
  ];
  return {
    id: "piercing-guide", title: "Piercing guide for the sections", book: bookOf(input),
    use: [
      "Cut it out along its heavy outline; the words beside it fall away.",
      `Measure it: it must be ${input.number(geometry.block.folioHeight)} ${input.definition.units.governing} high, like the folio.`,
      "Fold it on the dashed line, words inside.",
      "Lay it into the fold of an open section, head to head, and pierce through the middle of every cross.",
    ],
    alternative: `A strip as high as the folio, folded on its middle line, with a cross at every station: ${stations.map(({ text }) => text).join("; ")}. ${input.unitNote}`,
    width: 2 * guide.half + guide.words, height, items,
    marks: [
      { name: "fold", act: "fold", from: [fold, 0], to: [fold, height] },
      ...stations.map(({ name, y }) => ({ name, act: "pierce" as const, from: [fold, y] as const, to: [fold, y] as const })),
    ],
  };
}

/** Length of a line on the case guide before its label begins. */
const tick = 14;

/** Template `case-guide`. */
export function draftCaseGuide(input: Input): TemplateDraft {
  const { covering } = input.model.geometry;
  const cloth = input.model.parts.find(({ id }) => id === "cloth")!;
  const width = toMillimetres(covering.clothWidth);
  const lines = placementLines(input.model.parts, "cloth", "vertical");
  const labels = runningDimensions({
    name: "case guide", side: "below", edge: 0, datum: 0, start: tick, dimensionLine: false, low: 3, high: width - 3,
    marks: lines.map((mark) => ({ name: mark.name, at: toMillimetres(mark.at), text: `${mark.name}: ${input.number(mark.at)}` })),
  });
  if (!labels) throw new Error("internal error: the labels of the case guide do not fit its length");
  const height = Math.ceil(labels.depth) + 7;
  return {
    id: "case-guide", title: `Case guide for the ${cloth.name}`, book: bookOf(input),
    use: [
      "Cut the guide out along its heavy outline.",
      `Measure it: it must be ${input.number(covering.clothWidth)} ${input.definition.units.governing} long, like the cloth.`,
      "Lay the cloth wrong side up and the guide along its head edge, left edges flush. Tick the cloth at the end of every line.",
      "Do the same along the tail edge, left edges flush again, and join the ticks.",
    ],
    alternative: `A strip as long as the ${cloth.name} is wide with a line at every edge of boards and strip: ${lines.map((mark) => `${mark.name} at ${input.number(mark.at)}`).join("; ")}. ${input.unitNote}`,
    width, height,
    items: [
      area(rectangle(0, 0, width, height), "none", "cut"),
      ...lines.map((mark) => stroke(line(point(toMillimetres(mark.at), 0), point(toMillimetres(mark.at), tick)), "placement", mark.name)),
      ...labels.items, label("guide words", "left edge", point(2, height - 1.8)),
    ],
    marks: lines.map((mark) => ({ name: mark.name, act: "place" as const, from: [toMillimetres(mark.at), 0] as const, to: [toMillimetres(mark.at), tick] as const })),
  };
}

/** Length of the spacer. */
const spacerLength = 120;

/** Template `joint-spacer`. */
export function draftJointSpacer(input: Input): TemplateDraft {
  const { geometry } = input.model;
  const width = toMillimetres(geometry.joint);
  const square = toMillimetres(geometry.square);
  const left = Math.max(square, 0) + 34;
  const items: SceneItem[] = [
    area(rectangle(0, 0, width, spacerLength), "none", "cut"),
    ...drawLeader({ name: "joint", target: point(width, 14), end: "none", text: ["joint spacer:", `${input.number(geometry.joint)} wide`] }, point(width + 4, 14)),
    ...(square > 0 ? [
      area(rectangle(left, 0, square, spacerLength), "none", "cut"),
      ...drawLeader({ name: "square", target: point(left + square, 14), end: "none", text: ["square gauge:", `${input.number(geometry.square)} wide`] }, point(left + square + 4, 14)),
    ] : []),
  ];
  return {
    id: "joint-spacer", title: "Joint spacer and square gauge", book: bookOf(input),
    use: [
      "Glue the sheet to board and cut both pieces out along their heavy outlines, the long edges first.",
      "Stand the joint spacer between strip and board while you glue the boards down; slide it along both joints afterwards.",
      ...(square > 0 ? ["Lay the square gauge on the inside of the boards when you case in: its width is the square."] : []),
    ],
    alternative: `A strip ${input.number(geometry.joint)} wide for the joint${square > 0 ? ` and one ${input.number(geometry.square)} wide for the square` : ""}, both ${spacerLength} mm long. ${input.unitNote}`,
    width: left + square + 34, height: spacerLength, items,
    marks: [
      { name: "joint spacer, left edge", act: "cut", from: [0, 0], to: [0, spacerLength] },
      { name: "joint spacer, right edge", act: "cut", from: [width, 0], to: [width, spacerLength] },
    ],
  };
}

/** Template `rounding-gauge`: a hollow edge that the rounded back must fill. */
export function draftRoundingGauge(input: Input): TemplateDraft | null {
  const { geometry, } = input.model;
  const { round } = geometry;
  if (!round) return null;
  const [chord, rise] = [toMillimetres(geometry.backThickness), toMillimetres(round.rise)];
  const radius = toMillimetres(round.radius);
  const wing = 8;
  const [width, height] = [Math.max(chord + 2 * wing, 60), rise + 30];
  const left = (width - chord) / 2;
  const arc = Array.from({ length: 49 }, (_, index) => {
    const x = (chord * index) / 48;
    const away = x - chord / 2;
    return point(left + x, Math.sqrt(Math.max(0, radius * radius - away * away)) - (radius - rise));
  });
  const text = (length: Parameters<typeof printThickness>[0]): string => printThickness(length, input.definition.units);
  return {
    id: "rounding-gauge", title: "Rounding gauge", book: bookOf(input),
    use: [
      "Glue the sheet to card and cut the gauge out along its heavy outline, the hollow with scissors.",
      "Hold the hollow against the rounded back, square to it, at head, middle and tail: no light should show.",
    ],
    alternative: `A card with a hollow in one edge, ${text(geometry.backThickness)} across and ${text(round.rise)} deep, an arc of radius ${text(round.radius)}.`,
    width, height,
    items: [
      area(polygon([point(0, 0), ...arc, point(width, 0), point(width, height), point(0, height)]), "none", "cut"),
      label("gauge words", `across ${text(geometry.backThickness)}`, point(width / 2, rise + 9), { anchor: "middle" }),
      label("gauge rise", `rise ${text(round.rise)}`, point(width / 2, rise + 14), { anchor: "middle" }),
      label("gauge radius", `radius ${text(round.radius)}`, point(width / 2, rise + 19), { anchor: "middle" }),
    ],
    marks: [{ name: "shoulders", act: "cut", from: [left, 0], to: [left + chord, 0] }],
  };
}

/** What is cut at the corners of the boards: the case cloth, the side papers, or the cloth corners that lie there instead. */
const cornerWork = {
  full: { what: "case cloth", stuff: "cloth", work: "glued-up case", corners: "all four corners" },
  quarter: { what: "side papers", stuff: "paper", work: "board with its side paper", corners: "both fore-edge corners of each board" },
  half: { what: "cloth corners", stuff: "cloth", work: "board with its cloth corner", corners: "all four cloth corners" },
} as const;

/** Template `corner-template`. */
export function draftCaseCorner(input: Input): TemplateDraft {
  const { covering } = input.model.geometry;
  return draftCornerTemplate(input, { ...cornerWork[covering.kind], board: "board", turnIn: covering.turnIn, cornerDistance: covering.cornerDistance });
}
