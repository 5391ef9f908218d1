// The spine as it stands before the sewer: head to the right, front cover below, the sections behind it one above the other.
import type { LongStitchGeometry } from "../../2-model/long-stitch/geometry.ts";
import { placeId } from "../../2-model/long-stitch/sewing.ts";
import type { Move, Place, ThreadPath } from "../../2-model/sewing/types.ts";
import { circle, curve, line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import { placeEvery } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { area, centredLabel, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawPass, placeOrder } from "../sewing/pass-view.ts";

/** On paper, not to scale: from one section to the next, and what is shown of a cover. */
const paper = { section: 8, face: 7 } as const;

/** What is shown of the spine, and which pass is heavy. */
export interface SpineStage {
  /** Sections shown, counted from the front. */
  readonly from: number;
  readonly to: number;
  readonly pass: number;
}

interface View extends SpineStage {
  readonly geometry: LongStitchGeometry;
  /** Head and tail edge of the cover, and the stations, on paper. */
  readonly left: number;
  readonly right: number;
  readonly stations: readonly number[];
  y(section: number): number;
  readonly bottom: number;
  readonly top: number;
}

/** Draws a stage of the sewing, `factor` millimetres of paper for one along the spine. */
export function drawSpineStage(geometry: LongStitchGeometry, path: ThreadPath, stage: SpineStage, factor: number): readonly SceneItem[] {
  const view = layOut(geometry, stage, factor);
  const { items, order } = threadOf(view, path);
  const end = endOf(view, path);
  return placeEvery(placeOrder([...body(view), ...items, ...end.items, ...rowNames(view), ...stationNames(view)], order), end.labels);
}

function layOut(geometry: LongStitchGeometry, stage: SpineStage, factor: number): View {
  const height = toMillimetres(geometry.coverHeight) * factor;
  const y = (section: number): number => -(section - stage.from + 0.5) * paper.section;
  return {
    ...stage, geometry, left: 0, right: height, stations: geometry.rows.map((along) => height - toMillimetres(along) * factor),
    y, bottom: paper.section * 0.1, top: y(stage.to) - paper.section * 0.6,
  };
}

/** The spine between its folds; where sections are left out it ends in a wavy line. Beyond a fold a cover is shown folded flat. */
function body(view: View): readonly SceneItem[] {
  const { left, right, top, bottom, from, to, geometry, stations } = view;
  const face = (side: "front" | "back", at: number, way: 1 | -1): readonly SceneItem[] => [
    area(rectangle(left, Math.min(at, at + way * paper.face), right - left, paper.face), "face-middle", "none"),
    ...[left, right].map((x) => stroke(line(point(x, at), point(x, at + way * paper.face)), "edge")),
    stroke(wavyLine(point(left, at + way * paper.face), point(right, at + way * paper.face)), "edge"),
    stroke(line(point(left, at), point(right, at)), "outline"),
    label(`${side} cover`, `${side} cover`, point(left - 4, at + way * paper.face * 0.55 + 1), { anchor: "end" }),
  ];
  const open = (at: number): SceneItem => stroke(wavyLine(point(left, at), point(right, at)), "edge");
  return [
    area(rectangle(left, top, right - left, bottom - top), "face-light", "none"),
    ...[left, right].map((x) => stroke(line(point(x, top), point(x, bottom)), "edge")),
    ...geometry.slits.map(({ station }) => slitOf(stations[station - 1]!, from === 1 ? view.y(1) : bottom, to === geometry.text.sections ? view.y(to) : top)),
    ...(from === 1 ? face("front", bottom, 1) : [open(bottom)]),
    ...(to === geometry.text.sections ? face("back", top, -1) : [open(top)]),
  ];
}

function slitOf(x: number, from: number, to: number): SceneItem {
  return area(rectangle(x - 0.55, to, 1.1, from - to), "plate", "edge");
}

/** The thread as far as its places are shown. In a slit there is no hole to draw. */
function threadOf(view: View, path: ThreadPath): Pick<ReturnType<typeof drawPass>, "items" | "order"> {
  const { from, to, pass } = view;
  const isShown = (id: string): boolean => sectionOf(id) >= from && sectionOf(id) <= to;
  const places = new Map([...path.places].filter(([id]) => isShown(id)).map(([id, place]) => [id, place.hole === null ? { ...place, kind: "edge" as const } : place]));
  // A link that catches a stitch below what is shown is drawn as the climb that it ends with.
  const moves = path.moves.filter((move) => isShown(move.from.place) && isShown(move.to.place) && move.pass <= pass)
    .map((move): Move => (move.kind === "kettle" && sectionOf(move.from.place) - 2 < from ? { ...move, kind: "run" } : move));
  const at = (place: Place): Point => point(view.stations[stationOf(place.id) - 1]!, view.y(sectionOf(place.id)));
  const drawing = drawPass({
    path: { ...path, places, moves }, pass, at, facing: "outside", aside: point(0, 1.5), name: `pass ${pass}`,
    edgeOf: (_, hole) => hole,
    catchOf: (move) => caught(move, path, at),
  });
  return drawing;
}

/** In the middle of the stitch between the two sections before. */
function caught(move: Move, path: ThreadPath, at: (place: Place) => Point): Point {
  const from = at(path.places.get(move.from.place)!);
  return point(from.x, from.y + paper.section * 1.5);
}

/** The end that hangs outside while section 1 is sewn; the knot that ties it once section 2 is; the knot inside at the very end. */
function endOf(view: View, path: ThreadPath): { readonly items: readonly SceneItem[]; readonly labels: Parameters<typeof placeEvery>[1] } {
  const first = point(view.stations[0]!, view.y(1));
  if (view.pass === 1) {
    const tip = point(first.x + 7, first.y + 12);
    return {
      items: [stroke(curve(first, point(first.x + 4, first.y + 1), point(first.x + 2, first.y + 8), tip), "thread-before")],
      labels: [leaderAnywhere({ name: "end", text: ["end left", "hanging outside"], target: tip, directions: [240, 225, 255, 210, 195], reach: 5 })],
    };
  }
  if (view.pass === 2) {
    const knot = point(first.x, first.y + 0.1);
    return { items: [area(circle(knot, 1.3), "arrow", "none")], labels: [leaderAnywhere({ name: "knot", text: ["tied here to", "its own end"], target: point(knot.x + 1.2, knot.y + 0.8), end: "none", directions: [300, 315, 285, 330, 270], reach: 12 })] };
  }
  if (view.pass !== path.passes.length) return { items: [], labels: [] };
  const last = path.moves.at(-1)!;
  const at = point(view.stations[stationOf(last.to.place) - 1]!, view.y(sectionOf(last.to.place)));
  return { items: [], labels: [leaderAnywhere({ name: "knot", text: "in again, tied inside", target: at, end: "none", directions: at.x > (view.left + view.right) / 2 ? [45, 30, 60, 20, 75] : [135, 150, 120, 160, 105], reach: paper.face + 9 })] };
}

function rowNames(view: View): readonly SceneItem[] {
  return Array.from({ length: view.to - view.from + 1 }, (_, k) => view.from + k).map((section) => label(`section ${section}`, `section ${section}`, point(view.left - 4, view.y(section) + 1), { anchor: "end" }));
}

/** The stations' numbers in a row above, with a line down where they are set aside. */
function stationNames(view: View): readonly SceneItem[] {
  const above = view.to === view.geometry.text.sections ? view.top - paper.face : view.top;
  const order = [...view.stations].reverse();
  const places = [...spreadPositions(order, 4.6)!].reverse();
  return [
    ...view.stations.flatMap((x, k) => {
      const name = `station ${k + 1}`;
      return [
        stroke(polyline([point(x, above - 1.2), point(places[k]!, above - 3)]), "dimension", name),
        centredLabel(name, `${k + 1}`, point(places[k]!, above - 5), { weight: 600 }),
      ];
    }),
    label("head", "head", point(view.right + 3, (view.top + view.bottom) / 2 + 1), { weight: 600 }),
    label("tail", "tail", point(view.left - 4, above - 4.6), { anchor: "end", weight: 600 }),
  ];
}

function sectionOf(id: string): number {
  return Number(id.slice(placeId(0, 0).indexOf("0"), id.indexOf("/")));
}

function stationOf(id: string): number {
  return Number(id.slice(id.indexOf("/") + 1));
}
