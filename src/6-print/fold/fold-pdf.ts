// Puts the pages of a PDF on sheets that are folded in half: two pages a side, with the marks by which they are folded, gathered and sewn.
import { PDFDocument, PDFName, PDFRef } from "pdf-lib";
import type { FoldJob } from "../../5-pages/types.ts";
import { papers } from "../../catalogue/papers.ts";
import { toMillimetres } from "../../units/length.ts";
import { writeCanonical } from "../pdf/canonical-pdf.ts";
import { writeMetadata } from "../pdf/metadata.ts";
import type { PdfMetadata } from "../pdf/metadata.ts";
import { foldSheets, foldStations } from "./fold-sheets.ts";
import type { FoldedSheet, SheetSide } from "./fold-sheets.ts";

/** 1 pt = 1/72 in = 25.4/72 mm. */
const pointsPerMillimetre = 72 / 25.4;

/** Sizes of the marks in millimetres: in the margins beside the fold, where no page has text. */
export const foldMarks = { line: 0.25, foldLine: 6, station: 3, bar: { width: 3, height: 6, first: 14 }, tally: { fromFold: 3, fromFoot: 9, pitch: 2, size: 0.8 } } as const;

/** The PDF for the printer: outer and inner side of each sheet in turn, to be printed on both sides and turned on the short edge. */
export async function foldPdf(pages: Uint8Array, { sheet, thickness }: FoldJob, metadata: PdfMetadata): Promise<{ readonly pdf: Uint8Array; readonly pages: number }> {
  const source = await PDFDocument.load(pages, { updateMetadata: false });
  const target = await PDFDocument.create({ updateMetadata: false });
  const embedded = await target.embedPages(source.getPages());
  await target.flush();
  const size = { width: toMillimetres(papers[sheet].height), height: toMillimetres(papers[sheet].width) };
  const sheets = foldSheets(embedded.length, thickness);
  const sections = sheets.at(-1)!.section;
  const stations = foldStations(papers[sheet].width, sections).map(toMillimetres);
  const addSide = (folded: FoldedSheet, side: SheetSide, marks: readonly string[]): void => {
    const page = target.addPage([size.width * pointsPerMillimetre, size.height * pointsPerMillimetre]);
    const shift = toMillimetres(folded.shift);
    const draw = (number: number | null, isLeft: boolean): string => {
      if (number === null) return "";
      const form = embedded[number - 1]!;
      page.node.setXObject(PDFName.of(`Page${number}`), form.ref);
      // The edge of the page that is bound lies on the fold, and beyond it by the shift.
      const x = isLeft ? size.width / 2 + shift - form.width / pointsPerMillimetre : size.width / 2 - shift;
      return `q 1 0 0 1 ${points(x)} ${points((size.height - form.height / pointsPerMillimetre) / 2)} cm /Page${number} Do Q`;
    };
    const content = [draw(side.left, true), draw(side.right, false), "q 0 g 0 G", `${points(foldMarks.line)} w`, ...marks, "Q"].filter((line) => line !== "").join("\n");
    page.node.set(PDFName.of("Contents"), target.context.register(target.context.flateStream(content)));
  };
  for (const folded of sheets) {
    addSide(folded, folded.outer, [...foldLine(size), ...tally(folded, size), ...(folded.place === 1 && sections > 1 ? backMark(folded, sections, size) : [])]);
    addSide(folded, folded.inner, folded.isInnermost ? stations.map((at) => across(size.width / 2, size.height - at, foldMarks.station)) : []);
  }
  target.context.trailerInfo.Info ??= PDFRef.of(target.context.largestObjectNumber + 1);
  writeMetadata(target, metadata);
  return { pdf: await writeCanonical(target), pages: target.getPageCount() };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where to fold: short lines at head and foot. */
function foldLine({ width, height }: Size): readonly string[] {
  return [[height, height - foldMarks.foldLine], [0, foldMarks.foldLine]].map(([from, to]) => `${points(width / 2)} ${points(from!)} m ${points(width / 2)} ${points(to!)} l S`);
}

/** Which sheet it is: upwards from the foot a stroke for each section, then a dot for each sheet from the outside. */
function tally({ section, place }: FoldedSheet, { width }: Size): readonly string[] {
  const { fromFold, fromFoot, pitch, size } = foldMarks.tally;
  const x = width / 2 + fromFold;
  const strokes = Array.from({ length: section }, (_, index) => across(x, fromFoot + index * (pitch / 2), 2 * size));
  const above = fromFoot + section * (pitch / 2) + pitch / 2;
  const dots = Array.from({ length: place }, (_, index) => `${points(x - size / 2)} ${points(above + index * pitch)} ${points(size)} ${points(size)} re f`);
  return [...strokes, ...dots];
}

/** A bar on the back of each section, lower from section to section: gathered rightly they make a stair. */
function backMark({ section }: FoldedSheet, sections: number, size: Size): readonly string[] {
  const { width, height, first } = foldMarks.bar;
  const pitch = Math.min(height + 1, (size.height - 2 * first - height) / Math.max(1, sections - 1));
  const top = size.height - first - (section - 1) * pitch;
  return [`${points(size.width / 2 - width / 2)} ${points(top - height)} ${points(width)} ${points(height)} re f`];
}

function across(x: number, y: number, length: number): string {
  return `${points(x - length / 2)} ${points(y)} m ${points(x + length / 2)} ${points(y)} l S`;
}

/** Millimetres in points, as written into a PDF. */
function points(millimetres: number): string {
  return String(Math.round(millimetres * pointsPerMillimetre * 1000) / 1000);
}
