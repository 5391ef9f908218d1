// Reads the tags of a PDF as a screen reader gets them: the whole tree in order of reading, with the text that each element holds.
import { VerbosityLevel, getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString } from "pdf-lib";
import type { PDFObject } from "pdf-lib";

/** An element of the structure tree, all pages together. */
export interface Tag {
  readonly role: string;
  /** Alternative of a figure; null when there is none. */
  readonly alternative: string | null;
  /** Scope of a header cell; null when it has none. */
  readonly scope: string | null;
  /** How many columns a cell takes. */
  readonly columns: number;
  /** Elements, text, and the addresses of link annotations, in order of reading. */
  readonly kids: readonly (Tag | string | LinkAnnotation)[];
}

/** A link as its annotation says it. */
export interface LinkAnnotation {
  readonly target: string;
  /** What a reader says for it. */
  readonly contents: string;
}

/** Everything that the tests ask of one document. */
export interface TaggedDocument {
  readonly top: Tag;
  readonly pages: number;
  /** Text painted outside of the tree, by page. */
  readonly untagged: readonly string[];
  /** Annotations of all pages. */
  readonly links: number;
  readonly outline: readonly string[];
  readonly title: string;
  readonly language: string;
  readonly conformance: string;
  readonly xmpTitle: string;
  readonly showsTitle: boolean;
  readonly isMarked: boolean;
  /** Pages with annotations that are not visited in the order of the structure. */
  readonly pagesInOtherOrder: number;
  /** Marks in the order in which pdfjs walks each page's tree, and in which the whole tree holds them: they must agree. */
  readonly walked: readonly string[];
  readonly listed: readonly string[];
}

/** Reads a PDF. The tree comes from its objects, the text from pdfjs; `walked` and `listed` let a test hold the two against each other. */
export async function readTags(bytes: Uint8Array): Promise<TaggedDocument> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const reader = await getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS, isEvalSupported: false }).promise;
  try {
    const texts = new Map<string, string>();
    const untagged: string[] = [];
    const walked: string[] = [];
    for (let number = 1; number <= reader.numPages; number += 1) {
      const page = await reader.getPage(number);
      const { items } = await page.getTextContent({ includeMarkedContent: true });
      untagged.push(collectTexts(items as readonly TextPart[], texts));
      walked.push(...marksIn((await page.getStructTree()) as TreePart | null));
    }
    const listed: string[] = [];
    const root = document.catalog.lookup(PDFName.of("StructTreeRoot"), PDFDict);
    const top = kidsOf(document, root).map((kid) => readKid(document, kid, null, texts, listed))[0];
    if (top === undefined || typeof top === "string" || !("role" in top)) throw new Error("a PDF without a tree");
    const metadata = await reader.getMetadata();
    const information = metadata.info as { readonly Title?: string; readonly Language?: string };
    const xmp = (name: string): string => String((metadata.metadata as { get(name: string): unknown } | null)?.get(name) ?? "");
    const preferences = (await reader.getViewerPreferences()) as { readonly DisplayDocTitle?: boolean } | null;
    return {
      top, pages: reader.numPages, untagged, walked: inPageOrder(walked), listed: inPageOrder(listed),
      links: document.getPages().reduce((sum, page) => sum + (page.node.Annots()?.size() ?? 0), 0),
      outline: outlineOf((await reader.getOutline()) as readonly OutlinePart[] | null),
      title: information.Title ?? "", language: information.Language ?? "",
      conformance: xmp("pdfuaid:part"), xmpTitle: xmp("dc:title"),
      showsTitle: preferences?.DisplayDocTitle === true,
      isMarked: (await reader.getMarkInfo())?.Marked === true,
      pagesInOtherOrder: document.getPages().filter((page) => page.node.has(PDFName.of("Annots")) && page.node.get(PDFName.of("Tabs")) !== PDFName.of("S")).length,
    };
  } finally {
    await reader.destroy();
  }
}

/** All elements below (and with) the one given. */
export function tagsOf(tag: Tag): readonly Tag[] {
  return [tag, ...tag.kids.flatMap((kid) => (typeof kid === "object" && "role" in kid ? tagsOf(kid) : []))];
}

/** All text below an element, in order. */
export function textOf(tag: Tag): string {
  return tag.kids.map((kid) => (typeof kid === "string" ? kid : "role" in kid ? textOf(kid) : "")).join(" ").replace(/\s+/g, " ").trim();
}

const kept = /^(?:H[1-6]|L|LI|Lbl|LBody|Table|TR|TD|Caption|Link)$/;

/** Elements that say what something is, and text without spaces; paragraphs and groups are left out. */
export function tokensOf(tag: Tag): readonly string[] {
  const inner = (): readonly string[] => tag.kids.flatMap((kid) => (typeof kid === "string" ? kid.replace(/[\s\u00ad]+/g, "") : "role" in kid ? tokensOf(kid) : []));
  if (tag.role === "Figure") return [`<Figure ${(tag.alternative ?? "without").replace(/\s+/g, " ").trim()}>`];
  if (tag.role === "TH") return [`<TH ${tag.scope ?? "without"}>`, ...inner(), `</TH ${tag.scope ?? "without"}>`];
  return kept.test(tag.role) ? [`<${tag.role}>`, ...inner(), `</${tag.role}>`] : inner();
}

/** Neighbouring texts put together, because a page and its print-out divide them elsewhere. */
export function mergedTokens(tokens: readonly string[]): readonly string[] {
  const list: string[] = [];
  for (const token of tokens.filter((each) => each !== "")) {
    const last = list.at(-1);
    if (last !== undefined && !token.startsWith("<") && !last.startsWith("<")) list[list.length - 1] = last + token;
    else list.push(token);
  }
  return list;
}

interface TextPart {
  readonly type?: string;
  readonly id?: string;
  readonly str?: string;
  readonly hasEOL?: boolean;
}

interface TreePart {
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly TreePart[];
}

interface OutlinePart {
  readonly title: string;
  readonly items: readonly OutlinePart[];
}

/** Adds the text of each mark; returns what stands in none. */
function collectTexts(parts: readonly TextPart[], texts: Map<string, string>): string {
  const open: string[] = [];
  let outside = "";
  for (const { type, id, str = "", hasEOL } of parts) {
    if (type?.startsWith("beginMarkedContent")) open.push(id ?? "");
    else if (type === "endMarkedContent") open.pop();
    else {
      const mark = open.findLast((name) => name !== "");
      const text = str + (hasEOL ? "\n" : "");
      if (mark === undefined) outside += text;
      else texts.set(mark, (texts.get(mark) ?? "") + text);
    }
  }
  return outside.trim();
}

function marksIn(part: TreePart | null): readonly string[] {
  const own = part?.type === "content" && part.id !== undefined ? [part.id] : [];
  return [...own, ...(part?.children ?? []).flatMap(marksIn)];
}

/** pdfjs walks page by page; an element that goes on over pages would else come in another order. */
function inPageOrder(marks: readonly string[]): readonly string[] {
  const pages = [...new Set(marks.map((mark) => mark.split("_")[0]!))].toSorted();
  return pages.flatMap((page) => marks.filter((mark) => mark.startsWith(`${page}_`)));
}

function outlineOf(parts: readonly OutlinePart[] | null): readonly string[] {
  return (parts ?? []).flatMap(({ title, items }) => [title, ...outlineOf(items)]);
}

function readKid(document: PDFDocument, kid: PDFObject, parentPage: PDFRef | null, texts: ReadonlyMap<string, string>, listed: string[]): Tag["kids"][number] {
  const object = kid instanceof PDFRef ? document.context.lookup(kid) : kid;
  const content = (page: PDFRef | null, number: number): string => {
    const mark = `p${page?.objectNumber ?? 0}R_mc${number}`;
    listed.push(mark);
    return texts.get(mark) ?? "";
  };
  if (object instanceof PDFNumber) return content(parentPage, object.asNumber());
  if (!(object instanceof PDFDict)) throw new Error("the tree holds what is no element");
  const own = object.get(PDFName.of("Pg"));
  const page = own instanceof PDFRef ? own : parentPage;
  const type = object.lookupMaybe(PDFName.of("Type"), PDFName)?.decodeText();
  if (type === "MCR") return content(page, object.lookup(PDFName.of("MCID"), PDFNumber).asNumber());
  if (type === "OBJR") return readLink(object.lookup(PDFName.of("Obj"), PDFDict));
  return {
    role: object.lookup(PDFName.of("S"), PDFName).decodeText(),
    alternative: wordsOf(object, "Alt"),
    scope: attributeOf(object, "Scope", PDFName)?.decodeText() ?? null,
    columns: attributeOf(object, "ColSpan", PDFNumber)?.asNumber() ?? 1,
    kids: kidsOf(document, object).map((inner) => readKid(document, inner, page, texts, listed)),
  };
}

function readLink(annotation: PDFDict): LinkAnnotation {
  const address = annotation.lookupMaybe(PDFName.of("A"), PDFDict);
  const destination = annotation.get(PDFName.of("Dest"));
  const target = address ? wordsOf(address, "URI") : destination instanceof PDFName ? `#${destination.decodeText()}` : null;
  return { target: target ?? "", contents: wordsOf(annotation, "Contents") ?? "" };
}

function kidsOf(document: PDFDocument, element: PDFDict): readonly PDFObject[] {
  const kids = element.get(PDFName.of("K"));
  const object = kids instanceof PDFRef ? document.context.lookup(kids) : kids;
  return object instanceof PDFArray ? object.asArray() : kids === undefined ? [] : [kids];
}

function wordsOf(element: PDFDict, key: string): string | null {
  return element.lookupMaybe(PDFName.of(key), PDFString, PDFHexString)?.decodeText() ?? null;
}

function attributeOf(element: PDFDict, key: string, type: typeof PDFName): PDFName | undefined;
function attributeOf(element: PDFDict, key: string, type: typeof PDFNumber): PDFNumber | undefined;
function attributeOf(element: PDFDict, key: string, type: typeof PDFName | typeof PDFNumber): PDFName | PDFNumber | undefined {
  const attributes = element.lookup(PDFName.of("A"));
  const all = attributes instanceof PDFArray ? Array.from({ length: attributes.size() }, (_, index) => attributes.lookup(index)) : [attributes];
  return all.flatMap((each) => (each instanceof PDFDict ? each.lookup(PDFName.of(key)) : undefined)).find((value): value is PDFName | PDFNumber => value instanceof type);
}
