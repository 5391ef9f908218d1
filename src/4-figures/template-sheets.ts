// Lays the pieces of templates on sheets of paper, small ones together: titles, maps, and a scale check on every sheet.
import type { PaperId } from "../1-definition/types.ts";
import { papers } from "../catalogue/papers.ts";
import { point } from "../geometry/point.ts";
import { toMillimetres } from "../units/length.ts";
import { label, labelType } from "./scene.ts";
import { shareSheets } from "./share-sheets.ts";
import { frameHeights, sheetFrame, sheetMap } from "./sheet-frame.ts";
import { escapeText, writeItems } from "./svg.ts";
import type { TemplateDraft } from "./template-draft.ts";
import { sheetMargin, tilesOf } from "./template-tiles.ts";
import type { Tile } from "./template-tiles.ts";
import { measureText } from "./text-metrics.ts";
import type { TemplateSheet } from "./types.ts";

/** What is done first with a template that comes in several pieces. */
export const joinPieces = "Cut its pieces apart, their crosses left on. Cut the left or upper end of each further piece through the middle of its crosses, lay it on the piece before so that the crosses meet, and tape it down.";

/** Height of the line over each piece that shares a sheet; the topmost begins in the space below the sheet's own words. */
const titleRow = { height: 4.4, intoHead: 3 } as const;

/** A piece on its sheet: the left top corner of its window, in millimetres of the sheet. */
interface LaidTile {
  readonly tile: Tile;
  readonly left: number;
  readonly top: number;
}

/** All sheets for one paper, in the order of the templates. A piece that needs the whole of a sheet has one of its own. */
export function layOutSheets(drafts: readonly TemplateDraft[], paper: PaperId): readonly TemplateSheet[] {
  const [short, long] = [toMillimetres(papers[paper].width), toMillimetres(papers[paper].height)];
  const tiles = drafts.flatMap((draft) => tilesOf(draft, short, long));
  const cells = tiles.map((tile) => ({ width: Math.max(widthOf(tile), measureText(titleOf(tile), labelType, 600) + (tile.label === "" ? 0 : mapWidth(tile) + 3)), height: heightOf(tile) + titleRow.height }));
  const rooms = [roomOf(short, long), roomOf(long, short)];
  const shared = shareSheets(cells, rooms).filter(({ places }) => places.length > 1);
  const sharing = new Set(shared.flatMap(({ places }) => places.map(({ piece }) => piece)));
  const groups = [
    ...shared.map(({ room, places }) => ({
      first: Math.min(...places.map(({ piece }) => piece)), landscape: room === 1,
      laid: places.toSorted((a, b) => a.piece - b.piece).map(({ piece, x, y }): LaidTile => ({ tile: tiles[piece]!, left: sheetMargin + x, top: sheetMargin + frameHeights.head - titleRow.intoHead + titleRow.height + y })),
    })),
    ...tiles.flatMap((tile, first) => (sharing.has(first) ? [] : [{ first, landscape: tile.landscape, laid: [layAlone(tile, tile.landscape ? long : short)] }])),
  ].toSorted((a, b) => a.first - b.first);
  return groups.map(({ landscape, laid }, index) => drawSheet({ laid, landscape, paper, number: index + 1, count: groups.length, width: landscape ? long : short, height: landscape ? short : long }));
}

function roomOf(width: number, height: number): { readonly width: number; readonly height: number } {
  return { width: width - 2 * sheetMargin, height: height - 2 * sheetMargin - frameHeights.head - frameHeights.foot + titleRow.intoHead };
}

/** In the middle of the sheet's width, at the top of its room. */
function layAlone(tile: Tile, sheetWidth: number): LaidTile {
  return { tile, left: (sheetWidth - widthOf(tile)) / 2, top: sheetMargin + frameHeights.head };
}

function widthOf({ window }: Tile): number {
  return window.right - window.left;
}

function heightOf({ window }: Tile): number {
  return window.bottom - window.top;
}

function titleOf({ draft, label: of }: Tile): string {
  return of === "" ? draft.title : `${draft.title}: ${of}`;
}

/** The map beside a title is as high as the row. */
function mapCell({ rows }: Tile): number {
  return Math.min(3.6, 3.6 / rows);
}

function mapWidth(tile: Tile): number {
  return tile.columns * mapCell(tile);
}

interface SheetSpec {
  readonly laid: readonly LaidTile[];
  readonly landscape: boolean;
  readonly paper: PaperId;
  readonly number: number;
  readonly count: number;
  readonly width: number;
  readonly height: number;
}

function drawSheet({ laid, landscape, paper, number, count, width, height }: SheetSpec): TemplateSheet {
  const [first] = laid;
  const title = laid.length === 1 ? titleOf(first!.tile) : [...new Set(laid.map(({ tile }) => tile.draft.title))].join("; ");
  const frame = sheetFrame({
    title, book: `${first!.tile.draft.book} · ${papers[paper].name}${count === 1 ? "" : ` · sheet ${number} of ${count}`}`, sheetWidth: width, sheetHeight: height, margin: sheetMargin,
    map: laid.length === 1 && first!.tile.label !== "" ? first!.tile : null,
  });
  const rows = laid.length === 1 ? [] : laid.flatMap(({ tile, left, top }, index) => {
    const title = label(`piece ${index + 1}`, titleOf(tile), point(left, top - 1.4), { weight: 600 });
    return tile.label === "" ? [title] : [title, ...sheetMap({ ...tile, cell: mapCell(tile), left: left + measureText(title.text, labelType, 600) + 3, top: top - 4.2 })];
  });
  const id = `template-sheet-${paper}-${number}`;
  const alternatives = [...new Set(laid.map(({ tile }) => `${tile.draft.title}. ${tile.draft.alternative}`))].join(" ");
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="template-sheet" width="${three(width)}mm" height="${three(height)}mm" viewBox="0 0 ${three(width)} ${three(height)}" `
    + `role="img" aria-labelledby="${id}-title ${id}-description" fill="none" font-family="'Benchleaf Label', 'Source Sans 3', sans-serif">`,
    `<title id="${id}-title">${escapeText(title)}</title>`,
    `<desc id="${id}-description">${escapeText(alternatives)}</desc>`,
    writeItems([...frame, ...rows], "small"),
    ...laid.map(drawWindow),
    "</svg>",
  ].join("\n");
  return { title, landscape, svg, width, height, pieces: laid.map(({ tile, left, top }) => ({ template: tile.draft.id, label: tile.label, origin: [Number(three(tile.window.left - left)), Number(three(tile.window.top - top))] })) };
}

function drawWindow({ tile, left, top }: LaidTile): string {
  const [width, height] = [widthOf(tile), heightOf(tile)];
  return `<svg x="${three(left)}" y="${three(top)}" width="${three(width)}" height="${three(height)}" viewBox="${[tile.window.left, tile.window.top, width, height].map(three).join(" ")}" overflow="hidden" data-role="window" data-template="${tile.draft.id}">\n`
    + `${writeItems(tile.items, "small")}\n</svg>`;
}

function three(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
