// Makes the text of a PDF that of its page where a font draws two characters with one glyph.
import { PDFDict, PDFName, PDFRawStream, PDFRef, decodePDFRawStream } from "pdf-lib";
import type { PDFDocument } from "pdf-lib";

/** Characters that fonts draw alike; the browser names the first of them, whichever the page has. */
const alike: readonly (readonly [written: string, meant: string])[] = [
  ["\u02bc", "\u2019"], // modifier apostrophe, apostrophe
  ["\u03bc", "\u00b5"], // mu, micro sign
  ["\u2126", "\u03a9"], // ohm sign, omega
  ["\u2206", "\u0394"], // increment, delta
  ["\u2215", "\u2044"], // division slash, fraction slash
  ["\u2219", "\u00b7"], // bullet operator, middle dot
];

/**
 * Corrects the tables by which readers turn glyphs into text, for characters that the page does not hold.
 */
export function mendFontText(document: PDFDocument, characters: string): void {
  const { context } = document;
  const wrong = alike.flatMap((pair) => [pair, pair.toReversed() as [string, string]]).filter(([written, meant]) => !characters.includes(written) && characters.includes(meant));
  if (wrong.length === 0) return;
  for (const [, object] of context.enumerateIndirectObjects()) {
    const ref = object instanceof PDFDict ? object.get(PDFName.of("ToUnicode")) : undefined;
    const stream = ref instanceof PDFRef ? context.lookup(ref) : undefined;
    if (!(ref instanceof PDFRef) || !(stream instanceof PDFRawStream)) continue;
    const table = Buffer.from(decodePDFRawStream(stream).decode()).toString("latin1");
    const mended = wrong.reduce((text, [written, meant]) => replaceTarget(text, codeOf(written), codeOf(meant)), table);
    if (mended !== table) context.assign(ref, context.flateStream(new Uint8Array(Buffer.from(mended, "latin1"))));
  }
}

/** In a line `<glyph> <text>` or `<first> <last> <text>` the text is what stands last. A range of several glyphs is left alone: its next ones would change too. */
function replaceTarget(table: string, written: string, meant: string): string {
  return table.replace(/^((?:<([0-9A-Fa-f]+)> )?<([0-9A-Fa-f]+)> )<([0-9A-Fa-f]{4})>$/gm, (line, before: string, first: string | undefined, last: string, text: string) =>
    text.toUpperCase() === written && (first === undefined || first === last) ? `${before}<${meant}>` : line);
}

function codeOf(character: string): string {
  return character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0");
}
