// What every template sheet carries besides the template: title, sheet label, map of the sheets, and the scale check.
import { line, polyline, rectangle } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import { area, group, label, labelType, stroke } from "./scene.ts";
import type { SceneItem } from "./scene.ts";
import { measureText } from "./text-metrics.ts";
import type { FontWeight } from "./text-metrics.ts";

/** Height in millimetres kept for the words above the window and for the scale check below it. */
export const frameHeights = { head: 15, foot: 17 } as const;

interface FrameSpec {
  readonly title: string;
  /** Printed on every sheet, so that sheets of different books are not mixed up. */
  readonly book: string;
  readonly sheetWidth: number;
  readonly sheetHeight: number;
  readonly margin: number;
  /** Where the only piece of the sheet lies in its template; null when there is nothing to show. */
  readonly map: MapSpec | null;
}

/** How a template is divided, and which of its pieces is meant. */
export interface MapSpec {
  readonly columns: number;
  readonly rows: number;
  readonly index: number;
}

/** Head and foot of a sheet, in millimetres of the sheet. */
export function sheetFrame(spec: FrameSpec): readonly SceneItem[] {
  const { margin, sheetWidth, sheetHeight } = spec;
  const map = spec.map === null ? [] : drawMap(spec.map, margin, sheetWidth);
  const room = sheetWidth - 2 * margin - (map.length === 0 ? 0 : mapRoom.width + 4);
  const words = (name: string, text: string, line: number, weight: FontWeight = 400): SceneItem =>
    label(name, shorten(text, room, weight), point(margin, margin + line * 4), { weight });
  return [
    words("sheet title", spec.title, 0.8, 600),
    words("sheet book", spec.book, 1.8),
    words("sheet scale", scaleWords.find((text) => measureText(text, labelType, 400) <= room) ?? scaleWords.at(-1)!, 2.8),
    ...map,
    ...scaleCheck(margin, sheetHeight - margin - 5.5, sheetWidth - margin),
  ];
}

/** What to do before the sheet is used, in as many words as there is room for. */
const scaleWords = [
  "Print at 100 %, not “fit to page”. Measure both check lines below before you use this sheet.",
  "Print at 100 %. Measure both check lines below before use.",
  "Print at 100 %. Measure both lines below.",
] as const;

const mapRoom = { width: 40, height: 12 };

function drawMap(map: MapSpec, margin: number, sheetWidth: number): readonly SceneItem[] {
  const cell = Math.min(6, mapRoom.width / map.columns, mapRoom.height / map.rows);
  return sheetMap({ ...map, cell, left: sheetWidth - margin - map.columns * cell, top: margin });
}

/** The pieces of a template in small, this one dark. */
export function sheetMap({ columns, rows, index, cell, left, top }: MapSpec & { readonly cell: number; readonly left: number; readonly top: number }): readonly SceneItem[] {
  return [group("map of the sheets", Array.from({ length: columns * rows }, (_, at) =>
    area(rectangle(left + (at % columns) * cell, top + Math.floor(at / columns) * cell, cell, cell), at === index ? "metal" : "none", "edge")))];
}

/** A line of 100 mm over a line of 4 in, both with ticks, for a ruler of either kind. */
function scaleCheck(left: number, y: number, right: number): readonly SceneItem[] {
  const inch = 25.4;
  const said = (length: string, x: number): string => (x + measureText(`exactly ${length}`, labelType) <= right ? `exactly ${length}` : length);
  return [
    group("scale check 100 mm", [...ruler("scale check 100 mm", left, y - 6.5, 100, 10), words("check mm", said("100 mm", left + 104), left + 104, y - 6.5)]),
    group("scale check 4 in", [...ruler("scale check 4 in", left, y + 2.5, 4 * inch, inch / 2), words("check in", said("4 in", left + 4 * inch + 3), left + 4 * inch + 3, y + 2.5)]),
  ];
}

function words(name: string, text: string, x: number, y: number): SceneItem {
  return label(name, text, point(x, y + 0.3), {});
}

function ruler(name: string, left: number, y: number, length: number, tick: number): readonly SceneItem[] {
  const ends = polyline([point(left, y - 3), point(left, y), point(left + length, y), point(left + length, y - 3)]);
  const count = Math.round(length / tick);
  return [
    stroke(ends, "outline", name),
    ...Array.from({ length: count - 1 }, (_, index) => {
      const x = left + (index + 1) * tick;
      return stroke(line(point(x, y), point(x, y - (index + 1 === count / 2 ? 2.4 : 1.6))), "edge", name);
    }),
  ];
}

function shorten(text: string, room: number, weight: FontWeight): string {
  let kept = text;
  while (kept.length > 1 && measureText(kept === text ? text : `${kept}…`, labelType, weight) > room) kept = kept.slice(0, -1).trimEnd();
  return kept === text ? text : `${kept}…`;
}
