// Reads back what a PDF draws and says, page by page, in millimetres from the page's upper left corner.
import { OPS, VerbosityLevel, getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { PDFDocumentProxy, PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A straight stroke or edge. `width` is that of the stroke, 0 for the edge of a filled shape. x runs right, y down. */
export interface DrawnLine {
  /** Counted from 1. */
  readonly page: number;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly width: number;
  /** `#rrggbb`. */
  readonly colour: string;
}

/** One painted path as a whole, with the box around its points; a circle's box is as wide as the circle. A dashed line comes as one filled path. */
export interface DrawnPath {
  readonly page: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly painted: "stroke" | "fill" | "both";
  readonly width: number;
  readonly colour: string;
}

/** A figure, a heading, a paragraph: a node of the structure tree as a reader walks it. */
export interface StructureStep {
  readonly role: string;
  readonly alternative: string | null;
  readonly children: readonly StructureStep[];
}

type Matrix = readonly [number, number, number, number, number, number];
type Point = readonly [number, number];

interface Pen {
  readonly matrix: Matrix;
  readonly width: number;
  readonly stroke: string;
  readonly fill: string;
}

interface PaintedPath {
  readonly page: number;
  readonly lines: readonly (readonly [Point, Point])[];
  readonly points: readonly Point[];
  readonly painted: "stroke" | "fill" | "both";
  readonly width: number;
  readonly colour: string;
}

/** Every straight line painted in the PDF: segments of strokes, sides of rectangles, edges of filled shapes. Clips and curves are left out. */
export async function drawnLines(pdfBytes: Uint8Array): Promise<readonly DrawnLine[]> {
  return (await paintedPaths(pdfBytes)).flatMap(({ page, lines, width, colour }) =>
    lines.map(([[x1, y1], [x2, y2]]) => ({ page, x1, y1, x2, y2, width, colour })),
  );
}

/** Every path painted in the PDF with the box around it. */
export async function drawnPaths(pdfBytes: Uint8Array): Promise<readonly DrawnPath[]> {
  return (await paintedPaths(pdfBytes)).map(({ page, points, painted, width, colour }) => {
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    return { page, left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys), painted, width, colour };
  });
}

/** Length of a line in millimetres. */
export function lineLength({ x1, y1, x2, y2 }: DrawnLine): number {
  return Math.hypot(x2 - x1, y2 - y1);
}

/** The text of each page, in the order in which it is painted, lines joined by a space. */
export async function pageTexts(pdfBytes: Uint8Array): Promise<readonly string[]> {
  return withPages(pdfBytes, async (page) => {
    const { items } = await page.getTextContent();
    return items.map((item) => ("str" in item ? item.str + (item.hasEOL ? " " : "") : "")).join("");
  });
}

/** Width and height of each page in millimetres. */
export async function pageSizes(pdfBytes: Uint8Array): Promise<readonly (readonly [width: number, height: number])[]> {
  return withPages(pdfBytes, (page) => {
    const [left = 0, low = 0, right = 0, high = 0] = page.view;
    return Promise.resolve([(right - left) * millimetresPerPoint, (high - low) * millimetresPerPoint] as const);
  });
}

/** The structure of each page. */
export async function structureOf(pdfBytes: Uint8Array): Promise<readonly StructureStep[]> {
  return withPages(pdfBytes, async (page) => readStep((await page.getStructTree()) as StructureItem));
}

/** Marks of the structure on each page, and what is painted outside of any mark. */
export async function marksOf(pdfBytes: Uint8Array): Promise<readonly { readonly inTree: readonly number[]; readonly onPage: readonly number[]; readonly unmarked: number }[]> {
  return withPages(pdfBytes, async (page) => {
    const tree = (await page.getStructTree()) as StructureItem;
    const { fnArray, argsArray } = await page.getOperatorList();
    const open: boolean[] = [];
    const onPage: number[] = [];
    let unmarked = 0;
    fnArray.forEach((operator, index) => {
      const args = argsArray[index] as readonly unknown[] | null;
      if (operator === OPS.beginMarkedContent) open.push(tagOf(args) === "Artifact");
      else if (operator === OPS.beginMarkedContentProps) {
        const mark = args?.[1];
        open.push(typeof mark === "number" || tagOf(args) === "Artifact");
        if (typeof mark === "number") onPage.push(mark);
      } else if (operator === OPS.endMarkedContent) open.pop();
      else if (paintings.has(operator) && !open.includes(true)) unmarked += 1;
    });
    return { inTree: contentIds(tree), onPage, unmarked };
  });
}

/** 1 pt = 25.4/72 mm. */
export const millimetresPerPoint = 25.4 / 72;
const strokes = new Set([OPS.stroke, OPS.closeStroke]);
const fills = new Set([OPS.fill, OPS.eoFill]);
const both = new Set([OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke, OPS.closeEOFillStroke]);
const paintings = new Set([...strokes, ...fills, ...both, OPS.showText, OPS.showSpacedText, OPS.paintImageXObject, OPS.paintFormXObjectBegin, OPS.shadingFill]);

async function paintedPaths(pdfBytes: Uint8Array): Promise<readonly PaintedPath[]> {
  const perPage = await withPages(pdfBytes, async (page) => {
    const [left = 0, , , high = 0] = page.view;
    const toMillimetres: Matrix = [millimetresPerPoint, 0, 0, -millimetresPerPoint, -left * millimetresPerPoint, high * millimetresPerPoint];
    const { fnArray, argsArray } = await page.getOperatorList();
    return pathsOf(page.pageNumber, fnArray, argsArray as readonly (readonly unknown[])[], toMillimetres);
  });
  return perPage.flat();
}

function pathsOf(page: number, operators: readonly number[], allArguments: readonly (readonly unknown[])[], toMillimetres: Matrix): readonly PaintedPath[] {
  const painted: PaintedPath[] = [];
  const saved: Pen[] = [];
  let pen: Pen = { matrix: toMillimetres, width: 1, stroke: "#000000", fill: "#000000" };
  let path: { readonly lines: (readonly [Point, Point])[]; readonly points: Point[] } = { lines: [], points: [] };
  operators.forEach((operator, index) => {
    const args = allArguments[index] ?? [];
    if (operator === OPS.save) saved.push(pen);
    else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) pen = saved.pop() ?? pen;
    else if (operator === OPS.transform) pen = { ...pen, matrix: multiply(args as unknown as Matrix, pen.matrix) };
    else if (operator === OPS.paintFormXObjectBegin) {
      saved.push(pen);
      if (args[0]) pen = { ...pen, matrix: multiply(args[0] as Matrix, pen.matrix) };
    } else if (operator === OPS.setLineWidth) pen = { ...pen, width: Number(args[0]) };
    else if (operator === OPS.setGState) pen = { ...pen, width: widthIn(args[0] as readonly (readonly [string, unknown])[]) ?? pen.width };
    else if (operator === OPS.setStrokeRGBColor) pen = { ...pen, stroke: colourOf(args) };
    else if (operator === OPS.setFillRGBColor) pen = { ...pen, fill: colourOf(args) };
    else if (operator === OPS.constructPath) path = addPath(path, args[0] as readonly number[], args[1] as readonly number[], pen.matrix);
    else if (operator === OPS.endPath) path = { lines: [], points: [] };
    else if (strokes.has(operator) || fills.has(operator) || both.has(operator)) {
      const isFill = fills.has(operator);
      const width = isFill ? 0 : pen.width * Math.sqrt(Math.abs(pen.matrix[0] * pen.matrix[3] - pen.matrix[1] * pen.matrix[2]));
      painted.push({ page, ...path, painted: isFill ? "fill" : strokes.has(operator) ? "stroke" : "both", width, colour: isFill ? pen.fill : pen.stroke });
      path = { lines: [], points: [] };
    }
  });
  return painted.filter(({ points }) => points.length > 0);
}

function addPath(
  before: { readonly lines: readonly (readonly [Point, Point])[]; readonly points: readonly Point[] },
  operators: readonly number[],
  coordinates: readonly number[],
  matrix: Matrix,
): { lines: (readonly [Point, Point])[]; points: Point[] } {
  const lines = [...before.lines];
  const points = [...before.points];
  let at = 0;
  let start: Point = [0, 0];
  let here: Point = [0, 0];
  const next = (): Point => apply(matrix, coordinates[at++]!, coordinates[at++]!);
  const lineTo = (to: Point): void => {
    lines.push([here, to]);
    points.push(to);
    here = to;
  };
  for (const operator of operators) {
    if (operator === OPS.moveTo) {
      here = start = next();
      points.push(here);
    } else if (operator === OPS.lineTo) lineTo(next());
    else if (operator === OPS.closePath) {
      if (here[0] !== start[0] || here[1] !== start[1]) lineTo(start);
    } else if (operator === OPS.rectangle) {
      const [x, y, width, height] = coordinates.slice(at, at + 4) as [number, number, number, number];
      at += 4;
      here = start = apply(matrix, x, y);
      points.push(here);
      for (const [dx, dy] of [[width, 0], [width, height], [0, height], [0, 0]] as const) lineTo(apply(matrix, x + dx, y + dy));
    } else {
      // Control points are not on the curve; its end is.
      at += operator === OPS.curveTo ? 4 : 2;
      here = next();
      points.push(here);
    }
  }
  return { lines, points };
}

/** Chromium sets the width of strokes in a named graphics state. */
function widthIn(state: readonly (readonly [string, unknown])[]): number | null {
  const entry = state.find(([key]) => key === "LW");
  return entry === undefined ? null : Number(entry[1]);
}

/** A colour as the reader gives it, as `#rrggbb`. */
export function colourOf(args: readonly unknown[]): string {
  if (typeof args[0] === "string") return args[0];
  // The reader gives three bytes, in a typed array that cannot hold text.
  const parts = Array.from((args.length === 1 ? args[0] : args) as ArrayLike<number>);
  return `#${parts.slice(0, 3).map((part) => Math.round(part).toString(16).padStart(2, "0")).join("")}`;
}

/** First `m`, then `n`. */
function multiply(m: Matrix, n: Matrix): Matrix {
  const turned: Matrix = [n[0], n[1], n[2], n[3], 0, 0];
  return [...apply(turned, m[0], m[1]), ...apply(turned, m[2], m[3]), ...apply(n, m[4], m[5])];
}

function apply([a, b, c, d, e, f]: Matrix, x: number, y: number): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** The tag of a mark comes as text, or as a name when the mark has no properties. */
function tagOf(args: readonly unknown[] | null): unknown {
  const tag = args?.[0];
  return typeof tag === "object" && tag !== null && "name" in tag ? tag.name : tag;
}

/** A node of the structure tree as the reader gives it. */
export interface StructureItem {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly StructureItem[];
}

function readStep(item: StructureItem | null): StructureStep {
  const children = (item?.children ?? []).filter((child) => child.role !== undefined).map(readStep);
  return { role: item?.role ?? "", alternative: item?.alt ?? null, children };
}

/** The reader names content by page and mark: `p9R_mc12`. */
function contentIds(item: StructureItem | null): readonly number[] {
  const own = item?.type === "content" && item.id !== undefined ? [Number(/mc(\d+)$/.exec(item.id)?.[1])] : [];
  return [...own, ...(item?.children ?? []).flatMap(contentIds)];
}

/** Looks at each page in turn. */
export async function withPages<T>(pdfBytes: Uint8Array, look: (page: PDFPageProxy) => Promise<T>): Promise<readonly T[]> {
  // The reader takes its bytes away; a copy keeps the caller's.
  const document: PDFDocumentProxy = await getDocument({ data: pdfBytes.slice(), verbosity: VerbosityLevel.ERRORS, isEvalSupported: false }).promise;
  try {
    const results: T[] = [];
    for (let number = 1; number <= document.numPages; number += 1) results.push(await look(await document.getPage(number)));
    return results;
  } finally {
    await document.destroy();
  }
}
