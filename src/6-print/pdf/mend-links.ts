// Makes the links of a PDF free of this computer's folders and gives each its words.
import path from "node:path";
import { fileURLToPath } from "node:url";
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRef, PDFString } from "pdf-lib";
import type { PDFDocument } from "pdf-lib";
import { isFileBelow } from "../page-requests.ts";
import type { PageWords } from "../page-script.ts";
import type { StructureNode } from "./structure-tree.ts";
import { isContent, isNode, nodesOf } from "./structure-tree.ts";

/** What is needed to make links relative. */
export interface LinkPlaces {
  /** The printed page, the PDF to be written, and the output folder: absolute paths, the folder's with links followed. */
  readonly html: string;
  readonly pdf: string;
  readonly folder: string;
}

/**
 * Links to files of the output folder become relative to the PDF; links to other files, and to names that the page does not have, lead nowhere in
 * print and are taken out, their words stay. Every link that stays gets a description (PDF/UA-1, 7.18.5).
 */
export function mendLinks(document: PDFDocument, top: StructureNode, places: LinkPlaces, texts: PageWords["links"]): void {
  describeLinks(document, top, texts);
  const removed = new Set<PDFRef>();
  for (const page of document.getPages()) {
    const annotations = page.node.lookupMaybe(PDFName.of("Annots"), PDFArray);
    if (annotations === undefined) continue;
    // Readers tab through links in the order of the structure (PDF/UA-1, 7.18.3).
    page.node.set(PDFName.of("Tabs"), PDFName.of("S"));
    const kept = annotations.asArray().filter((ref) => ref instanceof PDFRef && redirect(document.context.lookup(ref, PDFDict), places));
    for (const ref of annotations.asArray()) if (ref instanceof PDFRef && !kept.includes(ref)) removed.add(ref);
    page.node.set(PDFName.of("Annots"), document.context.obj(kept));
  }
  for (const node of nodesOf(top)) {
    node.kids = node.kids.filter((kid) => isNode(kid) || isContent(kid) || !removed.has(kid.annotation));
    if (node.type === "Link" && node.kids.every((kid) => isNode(kid) || isContent(kid))) node.type = "Span";
  }
}

/** The structure has the links in the order of the page, one element each, even when a link runs over two lines. */
function describeLinks(document: PDFDocument, top: StructureNode, texts: PageWords["links"]): void {
  const waiting = [...texts];
  for (const node of nodesOf(top)) {
    const links = node.kids.flatMap((kid) => (isNode(kid) || isContent(kid) ? [] : [document.context.lookup(kid.annotation, PDFDict)]));
    const address = links[0] && addressOf(links[0]);
    if (address === undefined) continue;
    const at = waiting.findIndex(([waitingAddress]) => waitingAddress === address);
    const words = (at < 0 ? "" : waiting.splice(at, 1)[0]?.[1]) || address;
    for (const link of links) link.set(PDFName.of("Contents"), PDFHexString.fromText(words));
  }
}

/** Where the link leads, written like the addresses that the page gives. */
function addressOf(link: PDFDict): string {
  const destination = link.get(PDFName.of("Dest"));
  if (destination instanceof PDFName) return `#${destination.decodeText()}`;
  return safeDecode(uriOf(link) ?? "link");
}

function uriOf(link: PDFDict): string | undefined {
  return link.lookupMaybe(PDFName.of("A"), PDFDict)?.lookupMaybe(PDFName.of("URI"), PDFString, PDFHexString)?.decodeText();
}

/** Gives the link the address that holds for whoever gets the PDF; false when there is none. */
function redirect(link: PDFDict, places: LinkPlaces): boolean {
  const address = uriOf(link);
  if (address === undefined) return true;
  const target = targetOf(address, places);
  if (target !== null) link.lookup(PDFName.of("A"), PDFDict).set(PDFName.of("URI"), PDFString.of(escaped(target)));
  return target !== null;
}

/** The address as the PDF shall hold it; null when it leads nowhere for whoever gets the PDF. */
function targetOf(address: string, { html, pdf, folder }: LinkPlaces): string | null {
  if (!address.toLowerCase().startsWith("file:")) return address;
  if (!isFileBelow(address, folder)) return null;
  const url = new URL(address);
  const file = fileURLToPath(`${url.origin === "null" ? "file://" : url.origin}${url.pathname}`);
  if (path.resolve(file) === path.resolve(html)) return null;
  const relative = path.relative(path.dirname(pdf), file).split(path.sep).map(encodeURIComponent).join("/");
  return relative + url.search + url.hash;
}

/** Brackets and backslashes have a meaning in PDF strings. */
function escaped(text: string): string {
  return text.replace(/[\\()]/g, "\\$&");
}

function safeDecode(address: string): string {
  try {
    return decodeURI(address);
  } catch {
    return address;
  }
}
