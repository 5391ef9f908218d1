// What every template sheet carries besides the template: title, sheet label, map of the sheets, and the scale check.
import { line, polyline, rectangle } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import { area, group, label, labelType, stroke } from "./scene.ts";
import type { SceneItem } from "./scene.ts";
import type { TemplateDraft } from "./template-draft.ts";
import { measureText } from "./text-metrics.ts";
import type { FontWeight } from "./text-metrics.ts";

/** Height in millimetres kept for the words above the window and for the scale check below it. */
export const frameHeights = { head: 15, foot: 17 } as const;

interface FrameSpec {
  readonly draft: TemplateDraft;
  readonly paper: string;
  readonly sheetLabel: string;
  readonly sheetWidth: number;
  readonly sheetHeight: number;
  readonly margin: number;
  readonly columns: number;
  readonly rows: number;
  readonly index: number;
}

/** Head and foot of a sheet, in millimetres of the sheet. */
export function sheetFrame(spec: FrameSpec): readonly SceneItem[] {
  const { draft, margin, sheetWidth, sheetHeight, sheetLabel } = spec;
  const map = sheetLabel === "" ? [] : drawMap(spec);
  const room = sheetWidth - 2 * margin - (map.length === 0 ? 0 : mapRoom.width + 4);
  const words = (name: string, text: string, line: number, weight: FontWeight = 400): SceneItem =>
    label(name, shorten(text, room, weight), point(margin, margin + line * 4), { weight });
  return [
    words("sheet title", sheetLabel ? `${draft.title}: ${sheetLabel}` : draft.title, 0.8, 600),
    words("sheet book", `${draft.book} · ${spec.paper}`, 1.8),
    words("sheet scale", "Print at 100 %, not “fit to page”. Measure both check lines below before you use this sheet.", 2.8),
    ...map,
    ...scaleCheck(margin, sheetHeight - margin - 5.5),
  ];
}

const mapRoom = { width: 40, height: 12 };

/** The sheets in small, this one dark. */
function drawMap({ columns, rows, index, margin, sheetWidth }: FrameSpec): readonly SceneItem[] {
  const cell = Math.min(6, mapRoom.width / columns, mapRoom.height / rows);
  const left = sheetWidth - margin - columns * cell;
  return [group("map of the sheets", Array.from({ length: columns * rows }, (_, at) =>
    area(rectangle(left + (at % columns) * cell, margin + Math.floor(at / columns) * cell, cell, cell), at === index ? "metal" : "none", "edge")))];
}

/** A line of 100 mm over a line of 4 in, both with ticks, for a ruler of either kind. */
function scaleCheck(left: number, y: number): readonly SceneItem[] {
  const inch = 25.4;
  return [
    group("scale check 100 mm", [...ruler("scale check 100 mm", left, y - 6.5, 100, 10), words("check mm", "exactly 100 mm", left + 104, y - 6.5)]),
    group("scale check 4 in", [...ruler("scale check 4 in", left, y + 2.5, 4 * inch, inch / 2), words("check in", "exactly 4 in", left + 4 * inch + 3, y + 2.5)]),
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
