// Turns the PDF that the browser made into the one we give away: true size, whole structure, metadata, the same bytes every time.
import { PDFDocument } from "pdf-lib";
import type { PDFPage } from "pdf-lib";
import { drawingMarkOpacity } from "../page-script.ts";
import type { PageWords } from "../page-script.ts";
import { writeCanonical } from "./canonical-pdf.ts";
import { groupUnits } from "./drawing-units.ts";
import type { PaintedUnit, Unit } from "./drawing-units.ts";
import { markContent, placeKey, placeLeaves } from "./mark-content.ts";
import type { LeafPlaces } from "./mark-content.ts";
import { mendFontText } from "./mend-font-text.ts";
import { mendLinks } from "./mend-links.ts";
import type { LinkPlaces } from "./mend-links.ts";
import { mendOutline } from "./mend-outline.ts";
import { writeMetadata } from "./metadata.ts";
import type { PdfMetadata } from "./metadata.ts";
import { fillOpacity, readPage, unmarkGroups, writePage } from "./page-content.ts";
import { setExactSize } from "./page-size.ts";
import { keepFirstHeads } from "./repeated-heads.ts";
import { settleHyphens } from "./soft-hyphens.ts";
import { hasAlternative, pruneStructure, settleStructure } from "./settle-structure.ts";
import { leavesOf, nodesOf, readStructure, writeStructure } from "./structure-tree.ts";
import type { StructureNode } from "./structure-tree.ts";

/** A CSS pixel is 1/96 in, a point 1/72 in. */
const pointsPerPixel = 0.75;

/**
 * Mends the browser's PDF. Throws, with words for the author, when the print cannot be used: the browser shrank it, or a figure has no alternative.
 */
export async function mendPdf(raw: Uint8Array, metadata: PdfMetadata, links: LinkPlaces, words: PageWords): Promise<{ readonly pdf: Uint8Array; readonly pages: number }> {
  const document = await PDFDocument.load(raw, { updateMetadata: false });
  const { context } = document;
  const makeNode = (type: string): StructureNode => ({ type, ref: context.nextRef(), properties: new Map(), kids: [] });
  const top = settleStructure(readStructure(document), makeNode);
  mendLinks(document, top, links, words.links);
  const pages = document.getPages();
  const units = groupPages(pages, placeLeaves(top));
  keepFirstHeads(top, new Set(units.flatMap((onPage, index) => onPage.flatMap((unit) => (unit.kind === "state" || unit.mark === null ? [] : [placeKey(index, unit.mark)])))));
  const places = placeLeaves(top);
  let scale = 0;
  pages.forEach((page, index) => {
    scale = units[index]!.reduce((largest, unit) => Math.max(largest, textScale(unit)), scale);
    writePage(page, markContent(units[index]!, index, places, (unit) => isDrawingMark(unit, page), () => makeNode("Lbl")));
  });
  refuseShrunkPrint(scale);
  const pruned = pruneStructure(top);
  refuseSilentFigures(pruned);
  writeStructure(document, pruned);
  mendOutline(document, pruned, words.headings);
  mendFontText(document, words.characters);
  writeMetadata(document, metadata);
  return { pdf: await writeCanonical(document), pages: pages.length };
}

/** What each page paints. */
function groupPages(pages: readonly PDFPage[], places: LeafPlaces): readonly (readonly Unit[])[] {
  return pages.map((page, index) => {
    const groups = unmarkGroups(page);
    return settleHyphens(groupUnits(setExactSize(page, readPage(page)))).map((unit) => withGroupMark(unit, groups, (mark) => places.has(placeKey(index, mark))));
  });
}

/** A group that held marks counts as marked with the first of them that the structure knows. */
function withGroupMark(unit: Unit, groups: ReadonlyMap<string, readonly string[]>, isKnown: (mark: string) => boolean): Unit {
  if (unit.kind !== "object" || unit.mark !== null) return unit;
  return { ...unit, mark: groups.get(unit.operations[0]?.operands[0] ?? "")?.find(isKnown) ?? null };
}

function isDrawingMark(unit: PaintedUnit, page: PDFPage): boolean {
  return unit.kind === "path" && unit.state !== "" && fillOpacity(page, unit.state) < drawingMarkOpacity * 1.5;
}

/** Points for one unit of a text of the page itself (margin boxes are never shrunk); 0 for anything else. */
function textScale(unit: Unit): number {
  return unit.kind === "text" && unit.clip !== null ? unit.scale : 0;
}

/** When a box is wider than its page, the browser lays everything out larger and prints it smaller, on every page. */
function refuseShrunkPrint(scale: number): void {
  // The browser's numbers have four to eight digits; a shrink that matters (0.05 mm in 200 mm) is 0.025 %.
  if (scale === 0 || scale > pointsPerPixel * 0.9998) return;
  const percent = Math.round((scale / pointsPerPixel) * 1000) / 10;
  throw new Error(`something is wider than its page, so the browser printed every page at ${percent} %; nothing in this print would measure true (see templates/assets/print-guard.css)`);
}

function refuseSilentFigures(top: StructureNode): void {
  const silent = nodesOf(top).filter((node) => node.type === "Figure" && !hasAlternative(node));
  if (silent.length === 0) return;
  const pages = [...new Set(silent.map((node) => (leavesOf(node)[0]?.page ?? 0) + 1))];
  throw new Error(`a figure has no alternative text (page ${pages.join(", ")})`);
}
