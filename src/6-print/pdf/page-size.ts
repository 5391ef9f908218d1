// Gives pages of a known paper their exact size; the browser rounds sizes down to whole hundredths of an inch-pixel.
import { PDFName } from "pdf-lib";
import type { PDFPage } from "pdf-lib";
import { papers } from "../../catalogue/papers.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Operation } from "./content-stream.ts";

/** 1 pt = 1/72 in = 25.4/72 mm. */
const pointsPerMillimetre = 72 / 25.4;
/** Chromium's rounding was seen to be at most 0.32 pt off (A4: 594.96 for 595.276); half a point tells any two papers apart. */
const roundingPoints = 0.5;

/**
 * Sets the page to its paper's exact size and moves the drawing so that the distance to the top left corner stays. A page of another size is left
 * as it is. Returns the operators to use.
 */
export function setExactSize(page: PDFPage, operations: readonly Operation[]): readonly Operation[] {
  const { width, height } = page.getSize();
  const exact = exactSize(width, height);
  if (exact === null) return operations;
  page.node.set(PDFName.of("MediaBox"), page.doc.context.obj([0, 0, exact.width, exact.height]));
  for (const box of ["CropBox", "TrimBox", "BleedBox", "ArtBox"]) page.node.delete(PDFName.of(box));
  const [first, ...rest] = operations;
  // The browser's first operator turns the page upside down, from the old upper edge.
  if (first?.operator === "cm" && Math.abs(Number(first.operands[5]) - height) < 0.01) {
    return [{ operator: "cm", operands: [...first.operands.slice(0, 5), String(exact.height)] }, ...rest];
  }
  return [{ operator: "cm", operands: ["1", "0", "0", "1", "0", String(round(exact.height - height))] }, ...operations];
}

function exactSize(width: number, height: number): { readonly width: number; readonly height: number } | null {
  for (const paper of Object.values(papers)) {
    const upright = [toMillimetres(paper.width), toMillimetres(paper.height)].map((size) => round(size * pointsPerMillimetre)) as [number, number];
    for (const [w, h] of [upright, upright.toReversed() as [number, number]]) {
      if (Math.abs(w - width) < roundingPoints && Math.abs(h - height) < roundingPoints) return { width: w, height: h };
    }
  }
  return null;
}

function round(points: number): number {
  return Math.round(points * 10_000) / 10_000;
}
