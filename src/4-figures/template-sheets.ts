// Cuts a 1:1 template into sheets of paper: overlapping windows, named crosses at every seam, a map, a scale check on each.
import { boxContains, boxesMeet } from "../geometry/box.ts";
import type { Box } from "../geometry/box.ts";
import { line } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import type { Point } from "../geometry/point.ts";
import type { PaperId } from "../1-definition/types.ts";
import { papers } from "../catalogue/papers.ts";
import { toMillimetres } from "../units/length.ts";
import { placeLabels } from "./place.ts";
import { flatItems, label, sceneBox, stroke, textBox } from "./scene.ts";
import type { PathItem, SceneItem, TextItem } from "./scene.ts";
import { sheetFrame, frameHeights } from "./sheet-frame.ts";
import { escapeText, writeItems } from "./svg.ts";
import type { TemplateDraft } from "./template-draft.ts";
import type { TemplateSheet } from "./types.ts";

/** Nothing is printed nearer to the paper's edge than this: office printers keep 4 to 6 mm, and paper slips. */
export const sheetMargin = 10.5;
/** Neighbouring sheets show the same strip of the template, this wide in millimetres. */
export const sheetOverlap = 10;
/** Space round the template: for the width of its outline, and above and below for the crosses of upright seams, in millimetres. */
const bleed = { line: 1, crosses: 8 };

/** What is done first with a template that comes on several sheets. */
export const joinSheets = "Cut each further sheet through the middle of its crosses, lay it on the one before so that the crosses meet, and tape it down.";

/** The sheets for one paper, rows from the head down, columns from the left; upright or across, whichever takes fewer. */
export function layOutSheets(draft: TemplateDraft, paper: PaperId): readonly TemplateSheet[] {
  const [width, height] = [toMillimetres(papers[paper].width), toMillimetres(papers[paper].height)];
  const [upright, across] = [makeGrid(draft, width, height), makeGrid(draft, height, width)];
  const landscape = across.windows.length < upright.windows.length;
  const grid = landscape ? across : upright;
  const items = [...draft.items, ...seamCrosses(draft, grid)];
  return grid.windows.map((window, index) => drawSheet(draft, paper, grid, items, window, index, landscape));
}

/** How a template is divided over sheets of one orientation. All boxes in template millimetres. */
interface Grid {
  readonly sheetWidth: number;
  readonly sheetHeight: number;
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
  return { sheetWidth, sheetHeight, columns: across.length, rows: down.length, windows };
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

function drawSheet(draft: TemplateDraft, paper: PaperId, grid: Grid, items: readonly SceneItem[], window: Box, index: number, landscape: boolean): TemplateSheet {
  const { sheetWidth, sheetHeight, columns, rows } = grid;
  const [width, height] = [window.right - window.left, window.bottom - window.top];
  // In the middle of the sheet's width, at the top of its window.
  const left = (sheetWidth - width) / 2;
  const top = sheetMargin + frameHeights.head;
  const sheetLabel = grid.windows.length === 1 ? "" : `row ${Math.floor(index / columns) + 1} of ${rows}, column ${(index % columns) + 1} of ${columns}`;
  const frame = sheetFrame({ draft, paper: papers[paper].name, sheetLabel, sheetWidth, sheetHeight, margin: sheetMargin, columns, rows, index });
  const title = sheetLabel ? `${draft.title}, ${sheetLabel}` : draft.title;
  const id = `template-${draft.id}-${paper}-${index + 1}`;
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="template-sheet" width="${three(sheetWidth)}mm" height="${three(sheetHeight)}mm" viewBox="0 0 ${three(sheetWidth)} ${three(sheetHeight)}" `
    + `role="img" aria-labelledby="${id}-title ${id}-description" fill="none" font-family="'Benchleaf Label', 'Source Sans 3', sans-serif">`,
    `<title id="${id}-title">${escapeText(title)}</title>`,
    `<desc id="${id}-description">${escapeText(draft.alternative)}</desc>`,
    writeItems(frame, "small"),
    `<svg x="${three(left)}" y="${three(top)}" width="${three(width)}" height="${three(height)}" viewBox="${[window.left, window.top, width, height].map(three).join(" ")}" overflow="hidden" data-role="window">`,
    writeItems(visibleItems(items, window, grid.windows), "small"),
    "</svg>",
    "</svg>",
  ].join("\n");
  return { label: sheetLabel, landscape, svg, width: sheetWidth, height: sheetHeight, origin: [Number(three(window.left - left)), Number(three(window.top - top))] };
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

function three(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
