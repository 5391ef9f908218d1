// Reads the structure tree of a PDF into plain nodes and writes it back (ISO 32000-1, 14.7).
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString } from "pdf-lib";
import type { PDFContext, PDFDocument, PDFObject } from "pdf-lib";

/** An element of the structure: a heading, a list, a figure. The mending changes it in place. */
export interface StructureNode {
  type: string;
  /** The element's own object; outline entries point to it. */
  readonly ref: PDFRef;
  /** Everything else that the element's dictionary holds: alternative, language, attributes, identifier. */
  readonly properties: Map<PDFName, PDFObject>;
  kids: StructureKid[];
}

/** A piece of a page's content. */
export interface ContentLeaf {
  readonly page: number;
  /** Its mark as the browser wrote it: the number, and in a group (form XObject) the group's object before it. */
  readonly mark: string;
  /** The numbers of its marks on the page after mending. */
  readonly marks: number[];
}

/** A link annotation. */
export interface AnnotationLeaf {
  readonly page: number;
  readonly annotation: PDFRef;
}

/** Anything an element of the structure may hold. */
export type StructureKid = StructureNode | ContentLeaf | AnnotationLeaf;

/** Whether the kid is an element. */
export function isNode(kid: StructureKid): kid is StructureNode {
  return "kids" in kid;
}

/** Whether the kid is page content. */
export function isContent(kid: StructureKid): kid is ContentLeaf {
  return "mark" in kid;
}

/** All elements below (and with) the node, in order of reading. */
export function nodesOf(node: StructureNode): readonly StructureNode[] {
  return [node, ...node.kids.filter(isNode).flatMap(nodesOf)];
}

/** All content and annotations below the node, in order of reading. */
export function leavesOf(node: StructureNode): readonly (ContentLeaf | AnnotationLeaf)[] {
  return node.kids.flatMap((kid): readonly (ContentLeaf | AnnotationLeaf)[] => (isNode(kid) ? leavesOf(kid) : [kid]));
}

/** Reads the tree; its root is the element that stands for the whole document. Throws when the PDF has no tree. */
export function readStructure(document: PDFDocument): StructureNode {
  const root = document.catalog.lookupMaybe(PDFName.of("StructTreeRoot"), PDFDict);
  if (root === undefined) throw new Error("the browser made a PDF without structure");
  const pages = new Map(document.getPages().map((page, index) => [page.ref, index] as const));
  const tops = kidsOf(document.context, root).map((kid) => readKid(document.context, pages, kid, null)).filter((kid) => kid !== null);
  const top = tops[0];
  if (tops.length === 1 && top !== undefined && isNode(top)) return top;
  return { type: "Document", ref: document.context.nextRef(), properties: new Map(), kids: tops };
}

const ownKeys = new Set(["Type", "S", "P", "K", "Pg"]);

function readKid(context: PDFContext, pages: ReadonlyMap<PDFRef, number>, kid: PDFObject, parentPage: number | null): StructureKid | null {
  const object = kid instanceof PDFRef ? context.lookup(kid) : kid;
  if (object instanceof PDFNumber) return parentPage === null ? null : { page: parentPage, mark: String(object.asNumber()), marks: [] };
  if (!(object instanceof PDFDict)) return null;
  const pageRef = object.get(PDFName.of("Pg"));
  const page = pageRef instanceof PDFRef ? (pages.get(pageRef) ?? parentPage) : parentPage;
  const type = object.lookupMaybe(PDFName.of("Type"), PDFName)?.decodeText();
  if (type === "MCR") {
    const group = object.get(PDFName.of("Stm"));
    const number = object.lookup(PDFName.of("MCID"), PDFNumber).asNumber();
    return page === null ? null : { page, mark: group instanceof PDFRef ? groupMark(group, number) : String(number), marks: [] };
  }
  if (type === "OBJR") {
    const annotation = object.get(PDFName.of("Obj"));
    return annotation instanceof PDFRef && page !== null ? { page, annotation } : null;
  }
  return {
    type: object.lookup(PDFName.of("S"), PDFName).decodeText(),
    ref: kid instanceof PDFRef ? kid : context.nextRef(),
    properties: new Map(object.entries().filter(([key]) => !ownKeys.has(key.decodeText()))),
    kids: kidsOf(context, object).map((inner) => readKid(context, pages, inner, page)).filter((inner) => inner !== null),
  };
}

/** How a mark inside a group is named. */
export function groupMark(group: PDFRef, number: number): string {
  return `${group.tag} ${number}`;
}

function kidsOf(context: PDFContext, element: PDFDict): readonly PDFObject[] {
  const kids = element.get(PDFName.of("K"));
  const object = kids instanceof PDFRef ? context.lookup(kids) : kids;
  if (object instanceof PDFArray) return object.asArray();
  return kids === undefined ? [] : [kids];
}

/**
 * Writes the tree with everything that points into it: parent tree, identifiers, the pages' keys. Elements keep their objects.
 * Identifiers are numbered anew, because the browser's come from a counter that all its tabs share.
 */
export function writeStructure(document: PDFDocument, top: StructureNode): void {
  const { context, catalog } = document;
  const pages = document.getPages();
  const root = context.nextRef();
  const identifiers = numberIdentifiers(top);
  const owners = pages.map((): PDFRef[] => []);
  const annotations: { readonly annotation: PDFRef; readonly owner: PDFRef }[] = [];

  const write = (node: StructureNode, parent: PDFRef): void => {
    const page = node.kids.flatMap((kid) => (isNode(kid) ? [] : [kid.page]))[0];
    const kids = node.kids.flatMap((kid): PDFObject[] => {
      if (isNode(kid)) {
        write(kid, node.ref);
        return [kid.ref];
      }
      const pageRef = pages[kid.page]!.ref;
      if (!isContent(kid)) {
        annotations.push({ annotation: kid.annotation, owner: node.ref });
        return [context.obj({ Type: "OBJR", Obj: kid.annotation, Pg: pageRef })];
      }
      return kid.marks.map((mark) => {
        owners[kid.page]![mark] = node.ref;
        return kid.page === page ? PDFNumber.of(mark) : context.obj({ Type: "MCR", Pg: pageRef, MCID: mark });
      });
    });
    const element = context.obj({ Type: "StructElem", S: node.type, P: parent, K: kids });
    if (page !== undefined) element.set(PDFName.of("Pg"), pages[page]!.ref);
    for (const [key, value] of node.properties) element.set(key, renameIdentifiers(context, value, identifiers));
    context.assign(node.ref, element);
  };
  write(top, root);

  const parents = context.obj([]);
  pages.forEach((page, index) => {
    page.node.set(PDFName.of("StructParents"), PDFNumber.of(index));
    parents.push(PDFNumber.of(index));
    parents.push(context.obj(owners[index]!));
  });
  annotations.forEach(({ annotation, owner }, index) => {
    context.lookup(annotation, PDFDict).set(PDFName.of("StructParent"), PDFNumber.of(pages.length + index));
    parents.push(PDFNumber.of(pages.length + index));
    parents.push(owner);
  });
  const named = context.obj([]);
  for (const { name, ref } of identifiers.values()) {
    named.push(PDFString.of(name));
    named.push(ref);
  }
  const tree = context.obj({ Type: "StructTreeRoot", K: top.ref, ParentTree: context.obj({ Nums: parents }), ParentTreeNextKey: pages.length + annotations.length });
  if (identifiers.size > 0) tree.set(PDFName.of("IDTree"), context.obj({ Names: named }));
  context.assign(root, tree);
  catalog.set(PDFName.of("StructTreeRoot"), root);
}

/** New name for each identifier, in the order of reading, which is also the order of the names. */
function numberIdentifiers(top: StructureNode): Map<string, { readonly name: string; readonly ref: PDFRef }> {
  const names = new Map<string, { readonly name: string; readonly ref: PDFRef }>();
  for (const node of nodesOf(top)) {
    const identifier = node.properties.get(PDFName.of("ID"));
    if (identifier !== undefined) names.set(keyOf(identifier), { name: `cell-${String(names.size + 1).padStart(5, "0")}`, ref: node.ref });
  }
  return names;
}

/** The value with old identifiers put into new words, wherever they stand in it. */
function renameIdentifiers(context: PDFContext, value: PDFObject, identifiers: ReadonlyMap<string, { readonly name: string }>): PDFObject {
  const object = value instanceof PDFRef ? context.lookup(value) : value;
  if (object instanceof PDFString || object instanceof PDFHexString) {
    const renamed = identifiers.get(keyOf(object));
    return renamed === undefined ? object : PDFString.of(renamed.name);
  }
  if (object instanceof PDFArray) return context.obj(object.asArray().map((item) => renameIdentifiers(context, item, identifiers)));
  if (object instanceof PDFDict) {
    const copy = context.obj({});
    for (const [key, item] of object.entries()) copy.set(key, renameIdentifiers(context, item, identifiers));
    return copy;
  }
  return object ?? value;
}

function keyOf(identifier: PDFObject): string {
  return identifier instanceof PDFString || identifier instanceof PDFHexString ? identifier.decodeText() : identifier.toString();
}
