// Figures: the spine while it is sewn, seen from outside: sections one above the other, the thread over the tapes and up the ends.
import type { Move, Place, ThreadPath } from "../../2-model/sewing/types.ts";
import { wordsForPass } from "../../3-plan/sewing/move-words.ts";
import { circle, curve, line, pathPoints, polyline, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point, subtractPoints } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import { drawBalloon, leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { area, centredLabel, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawLinkDetail } from "../sewing/link-detail.ts";
import { holeRadius } from "../sewing/pass-view.ts";
import { moveLines, threadArrow } from "../sewing/thread-lines.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;

/** On paper: length of the spine, height of a section with its gap, and how far the tapes stand out. */
const spine = { length: 128, pitch: 8, band: 5.6, tapeAbove: 4, tapeBelow: 3.5 } as const;

/** What every figure of the sewing says of itself. */
const passWords = "Heavy: the thread of this section, in the direction of the arrows; thin: sewn before; dashed: inside the fold. Ringed numbers are the stations.";

/** One drawing: the sections that lie there, the lowest first sewn, and the pass that is heavy. */
interface Stage {
  readonly pass: number;
  /** Sections shown: those sewn so far, and one more to which the thread steps up. */
  readonly count: number;
  readonly last: number;
}

/** Figure `sewing`: the first two sections. */
export const drawSewing: DrawFigure<"case-binding"> = (input) => {
  const { geometry, thread } = input.model;
  if (!geometry.sewing || !thread) return null;
  const path = thread.paths[0]!;
  const last = geometry.block.sections;
  const views = [1, 2].map((pass) => withHeading(`section ${pass}`, pass === 1 ? `Section ${last}, the last of the book` : `Section ${last - 1}, sewn back`, drawStage(input, { pass, count: pass + 1, last })));
  return {
    id: "sewing",
    title: "Sewing the first two sections on the tapes",
    caption: `The spine from outside, head at the left, the sections drawn apart, the tapes cut off. ${passWords}`,
    alternative: `Section ${last}, the last of the book, lies at the bottom, section ${last - 1} above it. ${wordsForPass(path, 1)}. Then in section ${last - 1}: ${wordsForPass(path, 2).toLowerCase()}.`,
    items: viewsBelow(views, 5),
  };
};

/** Figure `kettle`: the third section, with the first kettle stitch. */
export const drawKettle: DrawFigure<"case-binding"> = (input) => {
  const { geometry, thread } = input.model;
  if (!geometry.sewing || !thread || geometry.block.sections < 3) return null;
  const path = thread.paths[0]!;
  const last = geometry.block.sections;
  const climbs = last > 3;
  const views = [
    withHeading("third section", `Section ${last - 2}, with the first kettle stitch`, drawStage(input, { pass: 3, count: climbs ? 4 : 3, last })),
    withHeading("kettle", `The kettle stitch at station ${geometry.sewing.stations.length}, from near by`, drawLinkDetail([`section ${last - 2}`, `section ${last - 1}`, `section ${last}`], { climbs, strands: 1, above: `section ${last - 3}` })),
  ];
  return {
    id: "kettle",
    title: "A section with its kettle stitch",
    caption: `Above: the spine from outside, head at the left, the sections drawn apart. ${passWords} Below: 1 out of section ${last - 2}, 2 behind the step between the two sections before, 3 ${climbs ? "up to the next section" : "back, and tied"}; pulled tight upwards, the loop closes.`,
    alternative: `Section ${last - 2} lies above two sewn sections. ${wordsForPass(path, 3)}.`,
    items: viewsBelow(views, 5),
  };
};

interface Ground {
  x(along: number): number;
  /** Middle of a section, the last one of the book at the bottom. */
  y(section: number): number;
  at(place: Place): Point;
  readonly top: number;
  readonly bottom: number;
  isShown(id: string): boolean;
}

function layOut({ model }: Input, { count, last }: Stage): Ground {
  const height = toMillimetres(model.geometry.block.pageHeight);
  const x = (along: number): number => (along / height) * spine.length;
  const sectionOf = (id: string): number => Number(id.slice("section-".length, id.indexOf("/")));
  const y = (section: number): number => (section - last) * spine.pitch;
  return {
    x, y,
    at: ({ id, along }) => point(x(toMillimetres(along)), y(sectionOf(id))),
    top: y(last - count + 1) - spine.band / 2, bottom: spine.band / 2,
    isShown: (id) => id.startsWith("section-") && sectionOf(id) > last - count,
  };
}

function drawStage(input: Input, stage: Stage): readonly SceneItem[] {
  const ground = layOut(input, stage);
  return placeEvery([...bodies(input, stage, ground), ...threadItems(input.model.thread!.paths[0]!, stage, ground)], labelsOf(input, stage, ground));
}

function bodies(input: Input, { count, last }: Stage, { x, y, top, bottom }: Ground): readonly SceneItem[] {
  const tapes = input.model.geometry.sewing!.tapes.map(({ headSide, tailSide }) => [x(toMillimetres(headSide)), x(toMillimetres(tailSide))] as const);
  const [high, low] = [top - spine.tapeAbove, bottom + spine.tapeBelow];
  return [
    ...Array.from({ length: count }, (_, index) => area(rectangle(0, y(last - index) - spine.band / 2, spine.length, spine.band), "face-light", "edge")),
    ...tapes.flatMap(([left, right]) => [
      area(rectangle(left + 0.5, high, right - left - 1, low - high), "face-middle", "none"),
      stroke(line(point(left + 0.5, high), point(left + 0.5, low)), "edge"), stroke(line(point(right - 0.5, high), point(right - 0.5, low)), "edge"),
      stroke(wavyLine(point(left + 0.5, high), point(right - 0.5, high)), "edge"), stroke(wavyLine(point(left + 0.5, low), point(right - 0.5, low)), "edge"),
    ]),
  ];
}

function threadItems(path: ThreadPath, { pass }: Stage, { at, bottom, isShown }: Ground): readonly SceneItem[] {
  const face = { path, at, facing: "outside" as const, edgeOf: (_: Move, from: Point) => from, aside: point(0, 1.3) };
  const placeAt = (id: string): Point => at(path.places.get(id)!);
  const shown = path.moves.filter((move) => move.pass <= pass && isShown(move.from.place) && isShown(move.to.place));
  const start = placeAt(path.start.at.place);
  return [
    ...[...shown].sort((a, b) => Number(a.pass === pass) - Number(b.pass === pass)).flatMap((move) => (move.kind === "kettle" || move.kind === "link"
      ? kettleLoop(placeAt(move.from.place), placeAt(move.to.place), move.pass === pass)
      : moveLines(face, move, move.pass === pass))),
    // The end that hangs at station 1 of the first section sewn.
    stroke(polyline([start, point(start.x - 5.5, bottom + 4)]), pass === 1 ? "thread" : "thread-before"),
    ...[...path.places.values()].filter(({ kind, id }) => kind === "hole" && isShown(id)).map((place) => area(circle(at(place), holeRadius), "plate", "edge")),
    ...(pass === 2 ? [area(circle(placeAt(path.moves.find(({ kind }) => kind === "knot")!.from.place), 1.6), "arrow", "none")] : []),
  ];
}

/** Down beside the step between the two sections below, behind it and up on its other side to the next section. */
function kettleLoop(from: Point, to: Point, isNew: boolean): readonly SceneItem[] {
  const out = from.x < spine.length / 2 ? -1 : 1;
  const foot = point(from.x, from.y + spine.pitch * 1.55);
  const down = curve(from, point(from.x - out * 5, from.y + 3), point(from.x - out * 5, foot.y), foot);
  const up = curve(foot, point(from.x + out * 5, foot.y), point(from.x + out * 5.5, from.y + 2), to);
  const kind = isNew ? "thread" : "thread-before";
  return [stroke(down, kind), stroke(up, kind), ...(isNew ? [midArrow(down), midArrow(up)] : [])];
}

function midArrow(path: Path): SceneItem {
  const points = pathPoints(path, 0.1)[0]!;
  const [tip, tail] = [Math.floor(points.length * 0.6), Math.floor(points.length * 0.4)];
  return threadArrow(points[tip]!, subtractPoints(points[tip]!, points[tail]!));
}

function labelsOf(input: Input, { pass, count, last }: Stage, { x, y, top, bottom }: Ground): readonly Placeable[] {
  const { stations, tapes } = input.model.geometry.sewing!;
  const words = sectionWords(input);
  const middleOf = (index: number): number => (x(toMillimetres(tapes[index]!.headSide)) + x(toMillimetres(tapes[index]!.tailSide))) / 2;
  const start = x(toMillimetres(stations[0]!.at));
  return [
    ...stations.map((station, index): Placeable => {
      const name = `station ${pass}/${index + 1}`;
      const middle = x(toMillimetres(station.at));
      return { name, candidates: [0, 1, 2, 3].flatMap((level) => [0, station.kind === "tape edge" && index % 2 === 0 ? 2 : -2, -3, 3].map((aside) => drawBalloon(name, String(index + 1), point(middle + aside, top - spine.tapeAbove - 3.6 - level * 5.4)))) };
    }),
    ...Array.from({ length: count }, (_, index): Placeable => {
      const name = `section ${last - index}, pass ${pass}`;
      return { name, candidates: [8, 9, 10, 12, 14, 17].map((away) => [centredLabel(name, `section ${last - index}`, point(spine.length + away + 8, y(last - index)))]) };
    }),
    ...(pass === 1 ? [
      leaderAnywhere({ name: "tape", text: `${words.part("tape")}, ${words.size(input.model.geometry.sewing!.tapeWidth)} wide`, target: point(middleOf(tapes.length - 1), bottom + 2), directions: [315, 330, 300, 285], reach: 6 }),
      leaderAnywhere({ name: "tail", text: "tail of the thread", target: point(start - 4.5, bottom + 3.2), end: "arrow", directions: [300, 315, 285, 330], reach: 6 }),
    ] : []),
    ...(pass === 2 ? [leaderAnywhere({ name: "knot", text: "knot: the thread and its tail", target: point(start, y(last - 1) + 1.3), end: "arrow", directions: [300, 315, 285, 330, 340], reach: 14 })] : []),
    ...(pass === 3 ? [leaderAnywhere({ name: "kettle stitch", text: "kettle stitch", target: point(x(toMillimetres(stations.at(-1)!.at)), y(last - 2) + spine.pitch * 1.55 + 0.7), end: "arrow", directions: [300, 285, 315, 330, 270], reach: 12 })] : []),
  ];
}
