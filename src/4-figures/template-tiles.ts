// Cuts a 1:1 template into pieces that fit a sheet of paper: overlapping windows, with named crosses at every seam.
import { boxContains, boxesMeet } from "../geometry/box.ts";
import type { Box } from "../geometry/box.ts";
import { line } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import { placeLabels } from "./place.ts";
import { flatItems, label, sceneBox, stroke, textBox } from "./scene.ts";
import type { PathItem, SceneItem, TextItem } from "./scene.ts";
import { frameHeights } from "./sheet-frame.ts";
import type { TemplateDraft } from "./template-draft.ts";

/** Nothing is printed nearer to the paper's edge than this: office printers keep 4 to 6 mm, and paper slips. */
export const sheetMargin = 10.5;
/** Neighbouring pieces show the same strip of the template, this wide in millimetres. */
export const sheetOverlap = 10;
/** Space round the template: for the width of its outline, and above and below for the crosses of upright seams, in millimetres. */
const bleed = { line: 1, crosses: 8 };

/** A piece of a template, or the whole of a small one. */
export interface Tile {
  readonly draft: TemplateDraft;
  /** "row 1 of 1, column 2 of 3"; empty when the template is in one piece. */
  readonly label: string;
  /** What it shows, in template millimetres. */
  readonly window: Box;
  readonly items: readonly SceneItem[];
  readonly columns: number;
  readonly rows: number;
  /** Which of the pieces it is, rows from the head down, columns from the left. */
  readonly index: number;
  /** Whether a sheet of its own lies across. */
  readonly landscape: boolean;
}

/** The pieces for one paper, rows from the head down, columns from the left; for sheets upright or across, whichever takes fewer. */
export function tilesOf(draft: TemplateDraft, width: number, height: number): readonly Tile[] {
  const [upright, across] = [makeGrid(draft, width, height), makeGrid(draft, height, width)];
  const landscape = across.windows.length < upright.windows.length;
  const grid = landscape ? across : upright;
  const { columns, rows, windows } = grid;
  const items = [...draft.items, ...seamCrosses(draft, grid)];
  return windows.map((window, index) => ({
    draft, window, columns, rows, index, landscape,
    label: windows.length === 1 ? "" : `row ${Math.floor(index / columns) + 1} of ${rows}, column ${(index % columns) + 1} of ${columns}`,
    items: visibleItems(items, window, windows),
  }));
}

/** How a template is divided over sheets of one orientation. All boxes in template millimetres. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly windows: readonly Box[];
}

function makeGrid(draft: TemplateDraft, sheetWidth: number, sheetHeight: number): Grid {
  const [roomWidth, roomHeight] = [sheetWidth - 2 * sheetMargin, sheetHeight - 2 * sheetMargin - frameHeights.head - frameHeights.foot];
  const labels = flatItems(draft.items).flatMap((item) => (item.kind === "text" ? [textBox(item)] : []));
  const across = divideLine(-bleed.line, draft.width + bleed.line, roomWidth, labels.map(({ left, right }) => [left, right]));
  const above = across.length > 1 ? bleed.crosses : bleed.line;
  const down = divideLine(-above, draft.height + above, roomHeight, labels.map(({ top, bottom }) => [top, bottom]));
  const windows = down.flatMap(([top, bottom]) => across.map(([left, right]) => ({ left, top, right, bottom })));
  return { columns: across.length, rows: down.length, windows };
}

type Stretch = readonly [from: number, to: number];

/**
 * Divides a length into overlapping windows no longer than `room`, as even as can be (no last sheet with a sliver on it). A seam moves
 * aside, as far as the room allows, where it would cut a label so that neither sheet shows the whole of it.
 */
function divideLine(from: number, to: number, room: number, labels: readonly Stretch[]): readonly Stretch[] {
  const count = countWindows(to - from, room);
  const even = (to - from - sheetOverlap) / count;
  const half = sheetOverlap / 2;
  const cuts = (seam: number): boolean => labels.some(([low, high]) => low < seam - half && high > seam + half);
  const windows: Stretch[] = [];
  let start = from;
  for (let index = 1; index < count; index += 1) {
    const wished = from + half + index * even;
    // What comes after the seam must still fit the windows that are left.
    const earliest = to - (count - index) * (room - sheetOverlap) - half;
    const latest = start + room - half;
    const tried = Array.from({ length: 81 }, (_, step) => wished + (step % 2 === 0 ? -1 : 1) * Math.ceil(step / 2));
    const seam = tried.find((at) => at >= earliest && at <= latest && at > start + sheetOverlap && !cuts(at)) ?? wished;
    windows.push([start, seam + half]);
    start = seam - half;
  }
  return [...windows, [start, to]];
}

function countWindows(full: number, room: number): number {
  return full <= room ? 1 : Math.ceil((full - sheetOverlap) / (room - sheetOverlap));
}

/** Two crosses at every seam, named A, B, C …; both sheets of a seam print them, and they are laid on each other. */
function seamCrosses(draft: TemplateDraft, { columns, rows, windows }: Grid): readonly SceneItem[] {
  let count = 0;
  let items: readonly SceneItem[] = draft.items;
  const add = (candidates: readonly Point[]): void => {
    const name = crossName(count);
    count += 1;
    const placement = placeLabels(items, [{ name: `cross ${name}`, candidates: candidates.map((at) => drawCross(name, at)) }]);
    // Crowded to the last millimetre: a cross over the drawing is still better than none.
    items = placement.unplaced.length === 0 ? placement.items : [...placement.items, ...drawCross(name, candidates[0]!)];
  };
  windows.forEach((window, index) => {
    const steps = (from: number, to: number): readonly number[] => Array.from({ length: 60 }, (_, step) => from + ((to - from) * step) / 120);
    if (index % columns < columns - 1) {
      const x = window.right - sheetOverlap / 2 - 1;
      add(steps(window.top + 4, window.bottom - 4).map((y) => point(x, y)));
      add(steps(window.bottom - 4, window.top + 4).map((y) => point(x, y)));
    }
    if (index < (rows - 1) * columns) {
      const y = window.bottom - sheetOverlap / 2;
      add(steps(window.left + 4, window.right - 8).map((x) => point(x, y)));
      add(steps(window.right - 8, window.left + 4).map((x) => point(x, y)));
    }
  });
  return items.slice(draft.items.length);
}

function drawCross(name: string, { x, y }: Point): readonly (PathItem | TextItem)[] {
  const owner = `cross ${name}`;
  return [
    stroke(line(point(x - 2.5, y), point(x + 2.5, y)), "edge", owner),
    stroke(line(point(x, y - 2.5), point(x, y + 2.5)), "edge", owner),
    label(owner, name, point(x + 0.8, y - 0.8), { weight: 600, size: 2.5 }),
  ];
}

/** A, B … Z, AA, AB … */
function crossName(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : crossName(Math.floor(index / 26) - 1) + letter;
}

/** What a window shows. A label cut by the window's rim is left out when another sheet shows the whole of it. */
function visibleItems(items: readonly SceneItem[], window: Box, windows: readonly Box[]): readonly SceneItem[] {
  return flatItems(items).filter((item) => {
    const box = item.kind === "text" ? textBox(item) : sceneBox([item]);
    if (!box) return false;
    if (item.kind === "path") return boxesMeet({ left: box.left - 1, top: box.top - 1, right: box.right + 1, bottom: box.bottom + 1 }, window);
    if (boxContains(window, box)) return true;
    return boxesMeet(box, window) && !windows.some((other) => boxContains(other, box));
  });
}
