// Figure: the spine while it is sewn, seen from outside: sections one above the other, the thread over the tapes and up the ends.
import type { Move } from "../../2-model/sewing/types.ts";
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { placeEvery } from "../figure.ts";
import { drawBalloon, leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { area, centredLabel, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"case-binding">;

/** On paper: length of the spine, height of a section with its gap, sections drawn at most. */
const spine = { length: 128, pitch: 9, band: 6, most: 4 } as const;

export const drawSewing: DrawFigure<"case-binding"> = (input) => {
  const { geometry, thread } = input.model;
  if (!geometry.sewing || !thread) return null;
  const words = sectionWords(input);
  const count = Math.min(geometry.block.sections, spine.most);
  const more = geometry.block.sections > count ? ` The other ${geometry.block.sections - count} go on in the same way.` : "";
  return {
    id: "sewing",
    title: "Sewing on the tapes",
    caption: `The spine from outside, head at the left, sections drawn apart; along the spine true to scale in itself, the tapes cut off. Wide lines: thread outside; short dashes: thread inside the fold. Numbers are the stations.${more}`,
    alternative: `The last ${count} sections of the book lie one above the other, the last one at the bottom. The thread goes in at station 1 of the lowest section, along the inside, out before each tape, over it and in again, and out at station ${geometry.sewing.stations.length}. `
      + `It steps up to the next section and comes back the same way. At station 1 it is tied to its own end. At the end of every further section it catches the step between the two sections below, a kettle stitch, and steps up. The tapes are ${words.size(geometry.sewing.tapeWidth)} wide.`,
    items: placeEvery(spineItems(input, count), labelsOf(input, count)),
  };
};

function placer({ model }: Input, count: number) {
  const height = toMillimetres(model.geometry.block.pageHeight);
  const x = (along: number): number => (along / height) * spine.length;
  const sections = model.geometry.block.sections;
  const bottom = (count - 1) * spine.pitch;
  /** Middle of a section, the last one of the book at the bottom. */
  const y = (section: number): number => bottom - (sections - section) * spine.pitch;
  return { x, y, bottom, top: y(sections - count + 1) };
}

function spineItems(input: Input, count: number): readonly SceneItem[] {
  const { geometry, thread } = input.model;
  const { x, y, bottom, top } = placer(input, count);
  const path = thread!.paths[0]!;
  const lowest = geometry.block.sections - count + 1;
  const at = (id: string): Point => {
    const place = path.places.get(id)!;
    return point(x(toMillimetres(place.along)), y(Number(id.slice("section-".length, id.indexOf("/")))));
  };
  const shown = (id: string): boolean => Number(id.slice("section-".length, id.indexOf("/"))) >= lowest;
  const tapes = geometry.sewing!.tapes.map(({ headSide, tailSide }) => [x(toMillimetres(headSide)), x(toMillimetres(tailSide))] as const);
  const [high, low] = [top - spine.band / 2 - 7, bottom + spine.band / 2 + 5];
  return [
    ...Array.from({ length: count }, (_, index) => area(rectangle(0, y(lowest + index) - spine.band / 2, spine.length, spine.band), "face-light", "outline")),
    ...tapes.flatMap(([left, right]) => [
      area(rectangle(left + 0.5, high, right - left - 1, low - high), "face-middle", "none"),
      stroke(line(point(left + 0.5, high), point(left + 0.5, low)), "edge"), stroke(line(point(right - 0.5, high), point(right - 0.5, low)), "edge"),
      stroke(wavyLine(point(left + 0.5, high), point(right - 0.5, high)), "edge"), stroke(wavyLine(point(left + 0.5, low), point(right - 0.5, low)), "edge"),
    ]),
    ...path.moves.filter((move) => shown(move.from.place) && shown(move.to.place)).flatMap((move) => drawMove(move, at)),
    // The two ends that are tied together hang out at station 1 of the first section sewn.
    stroke(polyline([at(path.start.at.place), point(at(path.start.at.place).x - 6, bottom + 5)]), "outline"),
    ...path.moves.filter((move) => move.kind === "hole" && shown(move.from.place)).map((move) => area(rectangle(at(move.from.place).x - 0.45, at(move.from.place).y - 0.45, 0.9, 0.9), "arrow", "none")),
  ];
}

/** Thread outside is a wide line, thread inside one of short dashes; a kettle dips under the step below before it goes up. */
function drawMove(move: Move, at: (id: string) => Point): readonly SceneItem[] {
  const [from, to] = [at(move.from.place), at(move.to.place)];
  const out = from.x < spine.length / 2 ? -1 : 1;
  switch (move.kind) {
    case "run": return move.from.side === "inside" ? [stroke(line(from, to), "hidden")] : [stroke(line(from, to), "outline")];
    case "tape": return [stroke(line(from, to), "outline")];
    case "kettle": case "link": {
      // Down beside the step, under it between the two sections below, and up again on its other side.
      const [beside, foot, across] = [point(from.x - out * 2, from.y + spine.pitch * 1.1), point(from.x, from.y + spine.pitch * 1.62), point(from.x + out * 2.2, from.y + spine.pitch)];
      return [stroke([
        { kind: "move", to: from }, { kind: "curve", control1: point(from.x - out, from.y + 1), control2: point(beside.x, beside.y - 3), to: beside },
        { kind: "curve", control1: point(beside.x, beside.y + 2.4), control2: point(foot.x - out * 1.2, foot.y), to: foot },
        { kind: "curve", control1: point(foot.x + out * 1.4, foot.y), control2: point(across.x, across.y + 3), to: across },
        { kind: "curve", control1: point(across.x, across.y - 4), control2: point(to.x + out * 1.6, to.y + 2), to },
      ], "outline")];
    }
    default: return [];
  }
}

function labelsOf(input: Input, count: number): readonly Placeable[] {
  const { geometry } = input.model;
  const { x, y, bottom, top } = placer(input, count);
  const { stations, tapes } = geometry.sewing!;
  const words = sectionWords(input);
  const lowest = geometry.block.sections - count + 1;
  const middleOf = (index: number): number => (x(toMillimetres(tapes[index]!.headSide)) + x(toMillimetres(tapes[index]!.tailSide))) / 2;
  const numbers = stations.map((station, index): Placeable => {
    const name = `station ${index + 1}`;
    const middle = x(toMillimetres(station.at));
    return { name, candidates: [0, 1, 2, 3].flatMap((level) => [0, station.kind === "tape edge" && index % 2 === 0 ? 2 : -2, -3, 3].map((aside) => drawBalloon(name, String(index + 1), point(middle + aside, top - spine.band / 2 - 11.5 - level * 5.4)))) };
  });
  const sectionNames = Array.from({ length: count }, (_, index): Placeable => {
    const section = lowest + index;
    const name = `section ${section}`;
    return { name, candidates: [8, 9, 10, 12, 14].map((away) => [centredLabel(name, `section ${section}${section === geometry.block.sections ? ", the last" : ""}`, point(spine.length + away + 8, y(section)))]) };
  });
  return [
    ...numbers, ...sectionNames,
    leaderAnywhere({ name: "tape", text: `${words.part("tape")}, ${words.size(geometry.sewing!.tapeWidth)} wide`, target: point(middleOf(tapes.length - 1), bottom + spine.band / 2 + 3), directions: [315, 330, 300, 285], reach: 7 }),
    leaderAnywhere({ name: "tail", text: "tail, tied when you come back to 1", target: point(x(toMillimetres(stations[0]!.at)) - 5, bottom + 4.5), end: "arrow", directions: [300, 315, 285, 330], reach: 9 }),
    ...(count > 2 ? [leaderAnywhere({ name: "kettle", text: "kettle stitch", target: point(x(toMillimetres(stations.at(-1)!.at)) + 2.4, y(geometry.block.sections - 2) + spine.pitch * 0.5), end: "arrow", directions: [300, 315, 330, 285, 340], reach: 20 })] : []),
  ];
}
