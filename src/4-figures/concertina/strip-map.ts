// Figure `fold-map`: every kind of strip, flat and front up, with its folds measured from the left edge.
import type { Score } from "../../2-model/types.ts";
import type { Strip } from "../../2-model/concertina/geometry.ts";
import { line, polygon, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, drawGrainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { legendItems } from "../legend.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions, runningPitch } from "../running-dimensions.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, group, label, sceneBox, smallestType, stroke, typeFor } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { measureText } from "../text-metrics.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";
import { numbersInWords } from "./zigzag.ts";

type Input = DrawingInput<"concertina">;

/** Room on paper: of a strip, lower where there are several kinds, so that table and drawing share a page; and of the figures over it. */
const room = { width: 136, heights: [34, 28, 21], figures: 152 } as const;

/** Figure `fold-map`. */
export function drawFoldMap(input: Input): FigureDraft {
  const { geometry, scores } = input.model;
  const kinds = geometry.strips.filter((strip, index) => geometry.strips.findIndex((each) => each.part === strip.part) === index);
  const widest = Math.max(...kinds.map((strip) => toMillimetres(partOf(input, strip).width)));
  const scale = fittingScale(widest, toMillimetres(geometry.panelHeight), room.width, room.heights[Math.min(kinds.length, room.heights.length) - 1]!);
  const views = kinds.map((strip) => withHeading(strip.part, headingOf(input, strip), drawStrip(input, strip, scale)));
  const drawn = viewsBelow(views, 4);
  const foot = sceneBox(drawn)!.bottom + 3;
  const fold = scores.filter((score) => partIds(input).has(score.part));
  const lines = legendItems(fold.some((score) => score.fold === "mountain") ? ["valley", "mountain"] : ["valley"], { x: 0, y: foot }, 2);
  const isTab = geometry.strips.length > 1;
  return {
    id: "fold-map",
    title: isTab ? "Folds of the strips" : "Folds of the strip",
    caption: `${isTab ? "Each kind of strip" : "The strip"}, flat and front up, ${scale.name}. Every figure is measured from the left edge (the ring at 0), never from the line before it.${isTab ? " The tinted field is the tab." : ""} ${input.unitNote}`,
    alternative: `${kinds.map((strip) => `${headingOf(input, strip)}: ${fold.filter((score) => score.part === strip.part).map((score) => `${score.name} at ${input.number(score.at)}, ${score.fold} fold`).join("; ")}`).join(". ")}. All are measured from the left edge, front up.`,
    items: [...drawn, group("legend", lines)],
  };
}

function partIds({ model }: Input): ReadonlySet<string> {
  return new Set(model.geometry.strips.map((strip) => strip.part));
}

function partOf({ model }: Input, strip: Strip) {
  return model.parts.find((part) => part.id === strip.part)!;
}

function headingOf(input: Input, strip: Strip): string {
  const { strips } = input.model.geometry;
  const words = sectionWords(input).part(strip.part);
  if (strips.length === 1) return words;
  return `${words}: ${numbersInWords(strips.filter((each) => each.part === strip.part).map((each) => each.n))}`;
}

/** One stretch of a strip that is drawn in one piece. */
interface Band { readonly scores: readonly Score[]; readonly from: number; readonly to: number; readonly first: boolean; readonly last: boolean }

/** In as many bands as its figures need. */
function drawStrip(input: Input, strip: Strip, { factor }: Scale): readonly SceneItem[] {
  const part = partOf(input, strip);
  const scores = input.model.scores.filter((score) => score.part === strip.part);
  const width = toMillimetres(part.width) * factor;
  const texts = [...scores.map((score) => input.number(score.at)), input.number(part.width), "0"];
  const pitch = runningPitch(texts, typeFor(texts, smallestType)) + 0.05;
  const most = Math.max(1, Math.floor(room.figures / pitch) - 2);
  const count = Math.max(1, Math.ceil(scores.length / most));
  const each = Math.ceil(scores.length / count);
  const at = (score: Score): number => toMillimetres(score.at) * factor;
  const bands = Array.from({ length: count }, (_, index): Band => {
    const own = scores.slice(index * each, (index + 1) * each);
    const [before, after] = [scores[index * each - 1], scores[(index + 1) * each]];
    return {
      scores: own, first: index === 0, last: index === count - 1,
      from: before ? (at(before) + at(own[0]!)) / 2 : 0, to: after ? (at(own.at(-1)!) + at(after)) / 2 : width,
    };
  });
  return viewsBelow(bands.map((band) => drawBand(input, strip, band, factor)), 2.5);
}

function drawBand(input: Input, strip: Strip, band: Band, factor: number): readonly SceneItem[] {
  const { geometry } = input.model;
  const part = partOf(input, strip);
  const height = Math.max(4, toMillimetres(geometry.panelHeight) * factor);
  const x = (at: number): number => at - band.from;
  const right = x(band.to);
  const marks = band.scores.map((score) => ({ score, at: x(toMillimetres(score.at) * factor) }));
  const running = runningDimensions({
    name: `${strip.part} ${band.from}`, side: "above", edge: 0, datum: band.first ? 0 : -100, size: smallestType,
    low: Math.min(0, (right - room.figures) / 2), high: Math.max(right, (right + room.figures) / 2),
    marks: [
      ...(band.first ? [{ name: `${strip.part} datum`, at: 0, text: "0" }] : []),
      ...marks.map(({ score, at }) => ({ name: score.name, at, text: input.number(score.at) })),
      ...(band.last ? [{ name: `${strip.part} right edge`, at: right, text: input.number(part.width) }] : []),
    ],
  });
  if (!running) throw new Error(`internal error: no room for the figures of the ${part.name}`);
  const tabAt = strip.hasTab && band.last ? marks.at(-1)!.at : null;
  const fixed: SceneItem[] = [
    ...(tabAt === null ? [] : [area(rectangle(tabAt, 0, right - tabAt, height), "face-middle", "none")]),
    ...outline(band, right, height),
    ...marks.map(({ score, at }) => stroke(line(point(at, 0), point(at, height)), score.fold)),
    ...running.items,
    ...panelNumbers(strip, band, marks.map(({ at }) => at), right, height, geometry.strips.filter((each) => each.part === strip.part).length > 1),
  ];
  return placeEvery(fixed, labelsOf(input, band, tabAt, right, height));
}

function outline(band: Band, right: number, height: number): readonly SceneItem[] {
  if (band.first && band.last) return [area(polygon([point(0, 0), point(right, 0), point(right, height), point(0, height)]), "none", "outline")];
  const end = (at: number, whole: boolean): SceneItem => stroke(whole ? line(point(at, 0), point(at, height)) : wavyLine(point(at, 0), point(at, height)), whole ? "outline" : "edge");
  return [stroke(line(point(0, 0), point(right, 0)), "outline"), stroke(line(point(0, height), point(right, height)), "outline"), end(0, band.first), end(right, band.last)];
}

/** Panel numbers under the strip, where each has room; of strips that occur more than once none, because theirs differ. */
function panelNumbers(strip: Strip, band: Band, folds: readonly number[], right: number, height: number, several: boolean): readonly SceneItem[] {
  if (several || !(band.first && band.last)) return [];
  const edges = [0, ...folds, ...(strip.hasTab ? [] : [right])];
  const widest = measureText(String(strip.firstPanel + strip.panels), smallestType) + 1;
  if (edges.some((edge, index) => index > 0 && edge - edges[index - 1]! < widest)) return [];
  return Array.from({ length: strip.panels }, (_, index) => {
    const panel = strip.firstPanel + index;
    return label(`panel ${panel}`, String(panel), point((edges[index]! + edges[index + 1]!) / 2, height + 3.4), { anchor: "middle", size: smallestType });
  });
}

function labelsOf(input: Input, band: Band, tabAt: number | null, right: number, height: number): readonly Placeable[] {
  const { geometry } = input.model;
  const beside = [7, 11, 15].map((out) => point(right + out, height / 2));
  return [
    ...(band.first ? [dimension({ name: "strip height", from: point(0, 0), to: point(0, height), side: "left" as const, text: input.number(geometry.panelHeight), offset: 8 })] : []),
    ...(tabAt === null ? [] : [firstOf(
      areaLabel("tab", "tab", gridCentres({ left: tabAt, right, top: 0, bottom: height }, 1, 5), { size: smallestType }),
      areaLabel("tab", "tab", gridCentres({ left: tabAt, right, top: 0, bottom: height }, 1, 5), { size: smallestType, angle: 90 }),
      leaderAnywhere({ name: "tab", text: "tab", target: point((tabAt + right) / 2, height * 0.7), directions: [300, 310, 290, 330, 0], reach: 5 }),
    )]),
    ...(band.first ? [{ name: "grain", candidates: beside.map((centre) => drawGrainArrow("grain", "height", centre, 12)) }] : []),
  ];
}
