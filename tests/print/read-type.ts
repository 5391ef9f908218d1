// Reads the type and the colours of a PDF: how large each run of text is, and what is painted in which colour.
import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import { colourOf, millimetresPerPoint, withPages } from "./measure-pdf.ts";
import type { StructureItem } from "./measure-pdf.ts";

/** A run of text as painted: where it begins in millimetres from the page's upper left corner, and how large it is. */
export interface PieceOfText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly points: number;
  /** Whether the structure has it in a figure. */
  readonly inFigure: boolean;
}

/** The runs of text of each page with their sizes. */
export async function typeOf(pdfBytes: Uint8Array): Promise<readonly (readonly PieceOfText[])[]> {
  return withPages(pdfBytes, async (page) => {
    const figures = new Set(figureIds((await page.getStructTree()) as StructureItem, false));
    const [left = 0, , , high = 0] = page.view;
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const open: boolean[] = [];
    return items.flatMap((item): PieceOfText[] => {
      if (!("str" in item)) {
        if (item.type === "endMarkedContent") open.pop();
        else open.push("id" in item && figures.has(item.id));
        return [];
      }
      const [, , c, d, e, f] = item.transform as [number, number, number, number, number, number];
      if (item.str.trim() === "") return [];
      return [{ text: item.str, x: (e - left) * millimetresPerPoint, y: (high - f) * millimetresPerPoint, points: Math.hypot(c, d), inFigure: open.includes(true) }];
    });
  });
}

/** Every colour that a PDF paints with, as `#rrggbb`: fills, strokes, and the dots of its pictures. */
export async function coloursOf(pdfBytes: Uint8Array): Promise<ReadonlySet<string>> {
  const perPage = await withPages(pdfBytes, async (page) => {
    const { fnArray, argsArray } = await page.getOperatorList();
    const colours = fnArray.map((operator, index): string[] | Promise<string[]> => {
      const args = (argsArray[index] ?? []) as readonly unknown[];
      if (operator === OPS.setStrokeRGBColor || operator === OPS.setFillRGBColor) return [colourOf(args)];
      if (operator === OPS.paintImageXObject) return coloursOfImage(page, args[0] as string);
      return paintedElsewise.has(operator) ? [`#unread${operator}`] : [];
    });
    return (await Promise.all(colours)).flat();
  });
  return new Set(perPage.flat());
}

/** The names of all content within figures. */
function figureIds(item: StructureItem | null, inFigure: boolean): readonly string[] {
  const isInside = inFigure || item?.role === "Figure";
  const own = isInside && item?.type === "content" && item.id !== undefined ? [item.id] : [];
  return [...own, ...(item?.children ?? []).flatMap((child) => figureIds(child, isInside))];
}

/** Paints in ways that `coloursOf` does not look into; met, they must be dealt with there. */
const paintedElsewise = new Set([OPS.shadingFill, OPS.setFillColorN, OPS.setStrokeColorN, OPS.paintInlineImageXObject]);

async function coloursOfImage(page: PDFPageProxy, name: string): Promise<string[]> {
  const image = await new Promise<{ readonly data: Uint8Array; readonly kind: number }>((resolve) => void page.objs.get(name, resolve));
  const size = image.kind === 2 ? 3 : 4;
  const dots = Array.from({ length: Math.floor(image.data.length / size) }, (_, index) => image.data.subarray(index * size, index * size + 3));
  return [...new Set(dots.map((dot) => colourOf([dot])))];
}
