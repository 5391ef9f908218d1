// Gives the outline of a PDF the words of its headings and the pages on which they really stand.
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRef } from "pdf-lib";
import type { PDFDocument, PDFObject } from "pdf-lib";
import { isContent, leavesOf, nodesOf } from "./structure-tree.ts";
import type { StructureNode } from "./structure-tree.ts";

/**
 * The browser writes a heading twice into its entry when the heading moved to the next page while the pages were made up. Entries may point to elements that went
 * from the structure; those lose their pointer.
 */
export function mendOutline(document: PDFDocument, top: StructureNode, words: readonly string[]): void {
  const headings = nodesOf(top).filter(({ type }) => /^H\d$/.test(type));
  const wordsOf = new Map(headings.map(({ ref }, index) => [ref, headings.length === words.length ? words[index] : undefined]));
  const nodes = new Map(nodesOf(top).map((node) => [node.ref, node]));
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    const element = object instanceof PDFDict ? object.get(PDFName.of("SE")) : undefined;
    if (!(object instanceof PDFDict) || !(element instanceof PDFRef)) continue;
    const node = nodes.get(element);
    if (node === undefined) object.delete(PDFName.of("SE"));
    else {
      const title = wordsOf.get(element);
      if (title !== undefined) object.set(PDFName.of("Title"), PDFHexString.fromText(title));
      turnToPage(document, object, node);
    }
  }
}

/** An entry's destination is its page and a place on it; on another page than the browser thought, the place is that page's head. */
function turnToPage(document: PDFDocument, entry: PDFDict, node: StructureNode): void {
  const page = leavesOf(node).find(isContent)?.page;
  const destination = entry.lookupMaybe(PDFName.of("Dest"), PDFArray);
  if (page === undefined || destination === undefined) return;
  const ref: PDFObject = document.getPage(page).ref;
  if (destination.get(0) !== ref) entry.set(PDFName.of("Dest"), document.context.obj([ref, "Fit"]));
}
