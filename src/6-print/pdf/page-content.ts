// Reads and replaces the content of PDF pages and of the groups (form XObjects) that they draw.
import { deflateSync, inflateSync } from "node:zlib";
import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRawStream, PDFRef, decodePDFRawStream } from "pdf-lib";
import type { PDFContext, PDFPage } from "pdf-lib";
import { readOperations, writeOperations } from "./content-stream.ts";
import type { Operation } from "./content-stream.ts";
import { groupMark } from "./structure-tree.ts";

/** The page's operators. */
export function readPage(page: PDFPage): readonly Operation[] {
  const contents = page.node.get(PDFName.of("Contents"));
  const object = contents instanceof PDFRef ? page.doc.context.lookup(contents) : contents;
  const streams = object instanceof PDFArray ? object.asArray().map((ref) => page.doc.context.lookup(ref)) : object === undefined ? [] : [object];
  return readOperations(streams.map((stream) => decode(stream)).join("\n"));
}

/** Gives the page new contents. */
export function writePage(page: PDFPage, operations: readonly Operation[]): void {
  const { context } = page.doc;
  page.node.set(PDFName.of("Contents"), context.register(packedStream(context, operations)));
}

/**
 * Takes the marks out of the groups that a page draws (half-transparent things), because a group as a whole gets a mark. Returns by the group's name
 * the marks that were in it. Chromium before 150 writes a group's marks into the structure as if they were the page's own.
 */
export function unmarkGroups(page: PDFPage): ReadonlyMap<string, readonly string[]> {
  const marks = new Map<string, readonly string[]>();
  const groups = page.node.Resources()?.lookupMaybe(PDFName.of("XObject"), PDFDict);
  for (const [name, ref] of groups?.entries() ?? []) if (ref instanceof PDFRef) marks.set(name.asString(), unmarkGroup(page.doc.context, ref));
  return marks;
}

/** The opacity that a page's named graphics state sets for fills; 1 when it sets none. */
export function fillOpacity(page: PDFPage, state: string): number {
  const states = page.node.Resources()?.lookupMaybe(PDFName.of("ExtGState"), PDFDict);
  return states?.lookupMaybe(PDFName.of(state), PDFDict)?.lookupMaybe(PDFName.of("ca"), PDFNumber)?.asNumber() ?? 1;
}

function unmarkGroup(context: PDFContext, ref: PDFRef): readonly string[] {
  const stream = context.lookup(ref);
  if (!(stream instanceof PDFRawStream) || stream.dict.lookupMaybe(PDFName.of("Subtype"), PDFName) !== PDFName.of("Form")) return [];
  const inner = stream.dict.lookupMaybe(PDFName.of("Resources"), PDFDict)?.lookupMaybe(PDFName.of("XObject"), PDFDict);
  const innerMarks = (inner?.entries() ?? []).flatMap(([, innerRef]) => (innerRef instanceof PDFRef ? unmarkGroup(context, innerRef) : []));
  const operations = readOperations(decode(stream));
  const numbers = operations.filter(isMark).map(({ operands }) => Number(operands[operands.indexOf("/MCID") + 1]));
  if (numbers.length > 0) {
    const bare = packedStream(context, withoutMarks(operations));
    for (const [key, value] of stream.dict.entries()) if (!["/Length", "/Filter", "/DecodeParms", "/StructParents"].includes(key.asString())) bare.dict.set(key, value);
    context.assign(ref, bare);
  }
  return [...numbers.flatMap((number) => [groupMark(ref, number), String(number)]), ...innerMarks];
}

/** Without numbered marks and their ends; other marks (text for a glyph) nest and stay. */
function withoutMarks(operations: readonly Operation[]): readonly Operation[] {
  const dropped: boolean[] = [];
  return operations.filter((operation) => {
    if (operation.operator === "BDC" || operation.operator === "BMC") {
      dropped.push(isMark(operation));
      return !isMark(operation);
    }
    return operation.operator !== "EMC" || dropped.pop() === false;
  });
}

function isMark({ operator, operands }: Operation): boolean {
  return operator === "BDC" && operands.includes("/MCID");
}

function decode(stream: unknown): string {
  if (!(stream instanceof PDFRawStream)) throw new Error("a page's content is no stream");
  const isPlainFlate = stream.dict.get(PDFName.of("Filter")) === PDFName.of("FlateDecode") && stream.dict.get(PDFName.of("DecodeParms")) === undefined;
  // Node's own zlib takes a fifth of the time that the PDF library's takes.
  return Buffer.from(isPlainFlate ? inflateSync(stream.contents) : decodePDFRawStream(stream).decode()).toString("latin1");
}

function packedStream(context: PDFContext, operations: readonly Operation[]): PDFRawStream {
  const bytes = new Uint8Array(deflateSync(Buffer.from(writeOperations(operations), "latin1")));
  return PDFRawStream.of(context.obj({ Filter: "FlateDecode", Length: bytes.length }), bytes);
}
