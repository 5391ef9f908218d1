// The score map: the flat card from the inside of the book with every score line, measured from the left edge or from the centre.
import type { Score } from "../../2-model/types.ts";
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAlong, wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { drawBalloon, grainArrow } from "../leaders.ts";
import { legendItems } from "../legend.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions, runningPitch } from "../running-dimensions.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, group, label, moveItems, sceneBox, smallestType, stroke, typeFor } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { bandRoom, closestLines, divideIntoBands } from "./score-bands.ts";
import type { ScoreBand } from "./score-bands.ts";
import { centreCrest, centreWords, marksOf } from "./score-marks.ts";
import type { Datum, ScoreMarks } from "./score-marks.ts";

type Input = DrawingInput<"stub-album">;

/** Heights on paper in millimetres: of the whole card when it carries the figures, of the same with the middle of its height left out, of it as an overview, of a band's strip (low when there are many; a mountain fold's dashes still show once). */
const room = { whole: 62, broken: 46, overview: 25, lowOverview: 12, strip: 13, lowStrip: 10 } as const;

/** Figure `score-map`: running dimensions from the left edge. */
export function drawScoreMap(input: Input): FigureDraft {
  return drawMap(input, "left edge", "score-map", "Score lines from the left edge");
}

/** Figure `score-map-from-centre`: the same lines measured from the centre line, a second way to mark them or a check. */
export function drawScoreMapFromCentre(input: Input): FigureDraft {
  return drawMap(input, "centre line", "score-map-from-centre", "Score lines from the centre line");
}

function drawMap(input: Input, datum: Datum, id: string, title: string): FigureDraft {
  const { model } = input;
  const scores = model.scores.filter((score) => score.part === "card");
  const [width, height] = [toMillimetres(model.geometry.cardWidth), toMillimetres(model.geometry.stripHeight)];
  const whole = fittingScale(width, 0, bandRoom.whole, room.whole);
  const [wholeHeight, isBroken] = height * whole.factor <= room.whole ? [height * whole.factor, false] : [room.broken, true];
  const marks = marksOf(input, datum);
  const texts = scores.map((score) => marks.text(score));
  const pitch = runningPitch(texts, typeFor(texts, smallestType)) + 0.05;
  const one = divideIntoBands(scores, width, whole.factor, pitch);
  const isWhole = one.bands.length === 1 && one.scale === whole;
  const { bands, scale } = isWhole ? one : divideIntoBands(scores, width, 1, pitch);
  const isCrowded = bands.length > 3;
  const overview = isWhole ? whole : fittingScale(width, height, bandRoom.whole, isCrowded ? room.lowOverview : room.overview);

  const parts = isWhole
    ? [drawBand(input, datum, marks, bands[0]!, wholeHeight, isBroken ? "broken" : "whole")]
    : [drawOverview(input, scores, overview, datum), ...bands.map((band) => drawBand(input, datum, marks, band, isCrowded ? room.lowStrip : room.strip, "strip"))];
  const stacked = stack(parts, isCrowded ? 2 : 4);
  const foot = sceneBox(stacked)!.bottom + (isCrowded ? 2 : 4);
  const kinds = datum === "centre line" && !centreCrest(scores) ? ["mountain", "valley", "centre"] as const : ["mountain", "valley"] as const;
  const legend = legendItems(kinds, { x: 0, y: foot }, sceneBox(stacked)!.right > 100 ? 2 : 1);
  return {
    id, title,
    caption: `The card, flat, seen from the inside of the book, ${isWhole ? `${whole.name}${isBroken ? ", the middle of its height left out" : ""}` : `${overview.name}, with ${showsAll(scores, overview) ? "all score lines" : "the crests"} as plain lines; the bands below show its head edge, ${scale ? scale.name : "spaces not to scale"}`}. `
      + `Every figure is measured from the ${datum}${datum === "left edge" ? " (the ring at 0)" : " (the ring), to the left and to the right"}, never from the line before it.${datum === "centre line" ? centreWords(scores) : ""} ${input.unitNote}`,
    alternative: `${title} of the flat card, seen from the inside of the book: ${scores.map((score) => `${score.name} ${marks.words(score)}, ${score.fold} fold`).join("; ")}.`,
    items: [...stacked, group("legend", legend)],
  };
}

/** The whole card in small: where the stubs are, its height and width, grain and letter. */
function drawOverview(input: Input, scores: readonly Score[], { factor }: Scale, datum: Datum): readonly SceneItem[] {
  const { geometry } = input.model;
  const [width, height] = [toMillimetres(geometry.cardWidth) * factor, toMillimetres(geometry.stripHeight) * factor];
  // Too small for folds in the wide pen: crests only, as plain lines.
  const crests = scores.filter((score) => score.fold === "mountain").map((score) => toMillimetres(score.at) * factor);
  const shown = showsAll(scores, { factor }) ? scores.map((score) => toMillimetres(score.at) * factor) : crests;
  const fixed: SceneItem[] = [
    area(rectangle(0, 0, width, height), "none", "outline"),
    ...shown.map((x) => stroke(line(point(x, 0), point(x, height)), "edge")),
    ...(datum === "centre line" && !centreCrest(scores) ? [centreLine(width / 2, -3, height + 3)] : []),
  ];
  return [group("the whole card", placeEvery(fixed, sizeLabels(input, width, height, 0)))];
}

/** The card's width under the stubs' numbers; where the outer numbers crowd its extension lines, these begin below the numbers. */
function cardWidth(input: Input, width: number, height: number, depthBelow: number): Placeable {
  const at = (start: number): Placeable => dimension({
    name: "card width", from: point(0, height + start), to: point(width, height + start), side: "below",
    text: input.number(input.model.geometry.cardWidth), offset: depthBelow + 5 - start,
  });
  return { name: "card width", candidates: [...at(0).candidates, ...at(depthBelow - 2).candidates] };
}

/** Whether all lines can be told apart in the overview. */
function showsAll(scores: readonly Score[], { factor }: Pick<Scale, "factor">): boolean {
  return closestLines(scores) * factor >= 0.9;
}

function sizeLabels(input: Input, width: number, height: number, depthBelow: number): readonly Placeable[] {
  const { geometry } = input.model;
  const letter = input.letter("card");
  const beside = [0, 4, 8, 12, 16].map((step) => point(width + 5 + step, height / 2));
  return [
    dimension({ name: "card height", from: point(0, 0), to: point(0, height), side: "left", text: input.number(geometry.stripHeight), offset: 9 }),
    cardWidth(input, width, height, depthBelow),
    grainArrow("grain", "height", beside),
    ...(letter ? [{ name: "card letter", candidates: [4, 8, 12, 16, 20].map((step) => drawBalloon("card letter", letter, point(width + step + 3, height / 2 + (height > 30 ? 16 : 0)))) }] : []),
  ];
}

/** One band: the strip of card, its score lines, the running dimensions above and the stubs' numbers below. */
function drawBand(input: Input, datum: Datum, marks: ScoreMarks, band: ScoreBand, height: number, kind: "whole" | "broken" | "strip"): readonly SceneItem[] {
  const cardWidth = toMillimetres(input.model.geometry.cardWidth);
  const name = `stubs ${band.firstStub} to ${band.lastStub}`;
  const centre = band.place(cardWidth / 2);
  const showsCentre = centre >= 0 && centre <= band.width;
  const running = runningDimensions({
    name, side: "above", edge: 0, datum: band.place(marks.datumAt), size: smallestType,
    low: Math.min(0, (band.width - bandRoom.figures) / 2), high: Math.max(band.width, (band.width + bandRoom.figures) / 2),
    marks: [
      ...(band.showsLeftEdge && datum === "left edge" ? [{ name: `${name} datum`, at: 0, text: "0" }] : []),
      ...band.lines.map(({ score, at }) => ({ name: score.name, at, text: marks.text(score) })),
      ...(band.showsRightEdge && datum === "left edge" ? [{ name: `${name} end`, at: band.width, text: input.number(input.model.geometry.cardWidth) }] : []),
    ],
  });
  if (!running) throw new Error(`internal error: no room for the figures of ${name}`);
  const fixed: SceneItem[] = [
    ...cardStrip(band, height, kind),
    ...band.lines.map(({ score, at }) => stroke(line(point(at, 0), point(at, height)), score.fold)),
    ...(datum === "centre line" && showsCentre && !centreCrest(band.lines.map(({ score }) => score)) ? [centreLine(centre, -2, height + 1)] : []),
    ...running.items,
    ...stubNumbers(band, height),
    ...(kind === "broken" ? breakAlong(height * 0.6, -1, band.width + 1) : []),
  ];
  // Shorter words on a low card, none on a very low one: the caption says it in full.
  const edgeLabel: readonly Placeable[] = band.showsLeftEdge && datum === "left edge" && kind !== "strip"
    ? [{ name: "datum words", candidates: [
      ...["measure from this edge", "measure from here", "from here"].map((words) => [label("datum words", words, point(-2.6, height / 2), { anchor: "middle", angle: 90 })]),
      [],
    ] }]
    : [];
  const labels = kind !== "strip" ? [...sizeLabels(input, band.width, height, 8), ...edgeLabel] : [];
  return [group(name, placeEvery(fixed, labels))];
}

function centreLine(x: number, top: number, bottom: number): SceneItem {
  return stroke(line(point(x, top), point(x, bottom)), "centre");
}

function cardStrip(band: ScoreBand, height: number, kind: "whole" | "broken" | "strip"): readonly SceneItem[] {
  if (kind !== "strip") return [area(rectangle(0, 0, band.width, height), "none", "outline")];
  return [
    stroke(line(point(0, 0), point(band.width, 0)), "outline"),
    stroke(band.showsLeftEdge ? line(point(0, 0), point(0, height)) : wavyLine(point(0, 0), point(0, height)), band.showsLeftEdge ? "outline" : "edge"),
    stroke(band.showsRightEdge ? line(point(band.width, 0), point(band.width, height)) : wavyLine(point(band.width, 0), point(band.width, height)), band.showsRightEdge ? "outline" : "edge"),
  ];
}

/** A bracket under each stub with its number, and the word once at the left. */
function stubNumbers(band: ScoreBand, height: number): readonly SceneItem[] {
  const y = height + 1.6;
  const count = band.lastStub - band.firstStub + 1;
  return [
    label(`stub word ${band.firstStub}`, "stub", point(Math.min(band.lines[0]!.at - 2, -1.5), y + 2.6), { anchor: "end", size: smallestType }),
    ...Array.from({ length: count }, (_, index): readonly SceneItem[] => {
      const [left, crest, right] = [0, 1, 2].map((at) => band.lines[index * 3 + at]!.at) as [number, number, number];
      const name = `stub ${band.firstStub + index}`;
      return [
        stroke(polyline([point(left + 0.3, y - 0.8), point(left + 0.3, y), point(right - 0.3, y), point(right - 0.3, y - 0.8)]), "dimension", name),
        label(name, String(band.firstStub + index), point(crest, y + 2.6), { anchor: "middle", size: smallestType }),
      ];
    }).flat(),
  ];
}

/** Views one under the other, flush left at their outlines. */
function stack(parts: readonly (readonly SceneItem[])[], gap: number): readonly SceneItem[] {
  let top = 0;
  return parts.flatMap((items) => {
    const box = sceneBox(items)!;
    const moved = moveItems(items, 0, top - box.top);
    top += box.bottom - box.top + gap;
    return moved;
  });
}
