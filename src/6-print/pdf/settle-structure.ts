// Turns the structure that the browser writes into one that screen readers understand: no empty shells, whole lists, plain figures.
import { PDFName } from "pdf-lib";
import { isContent, isNode, leavesOf } from "./structure-tree.ts";
import type { StructureKid, StructureNode } from "./structure-tree.ts";

/**
 * What may stand directly in an element: only blocks (text of its own gets a paragraph), blocks or text, only text, or the parts of a
 * table. ISO 32000-1, 14.8.4 names the kinds of elements.
 */
type Inside = "blocks" | "either" | "text" | "parts";

/** Elements of PDF 2.0 and of HTML alone, by their like in ISO 32000-1, which PDF/UA-1 allows. */
const renamed: ReadonlyMap<string, string> = new Map([["Em", "Span"], ["Strong", "Span"], ["Sub", "Span"], ["Title", "P"], ["FENote", "Note"], ["H", "H1"]]);
/** Shells that say nothing: their contents take their place. */
const shells = new Set(["NonStruct", "Div", "Aside", "Sect", "Private"]);
const textTypes = new Set(["Span", "Link", "Code", "Quote", "Note", "Reference", "Lbl"]);
const insides: ReadonlyMap<string, Inside> = new Map([
  ...["Document", "Part", "Art", "BlockQuote"].map((type) => [type, "blocks"] as const),
  ...["LBody", "TD", "TH", "Caption"].map((type) => [type, "either"] as const),
  ...["Table", "TR", "THead", "TBody", "TFoot"].map((type) => [type, "parts"] as const),
]);

/** The settled tree. Elements that go on keep their objects; the given tree must not be used after. */
export function settleStructure(top: StructureNode, makeNode: (type: string) => StructureNode): StructureNode {
  return { ...top, type: "Document", kids: settle(top.kids, "blocks", makeNode) };
}

type MakeNode = (type: string) => StructureNode;

function settle(kids: readonly StructureKid[], inside: Inside, make: MakeNode): StructureKid[] {
  const textBeside = kids.some((kid) => !isNode(kid) || isTextRun(kid));
  const settled = kids.flatMap((kid): StructureKid[] => {
    if (!isNode(kid)) return [kid];
    if (!shells.has(kid.type)) return settleNode(kid, make);
    const inner = settle(kid.kids, inside === "blocks" ? "either" : inside, make);
    if (isTextRun(kid) || inner.length === 0 || !inner.every(isText)) return inner;
    // Between text, a shell is something like an abbreviation; between other shells, in a cell or an item, it is a paragraph.
    const isParagraph = inside === "blocks" || (inside === "either" && !textBeside && kids.length > 1);
    return isParagraph ? [{ ...kid, type: "P", kids: inner }] : inner;
  });
  return inside === "blocks" ? wrapStrayText(settled, make) : settled;
}

function settleNode(node: StructureNode, make: MakeNode): StructureNode[] {
  const type = renamed.get(node.type) ?? node.type;
  if (type === "L") return [{ ...node, kids: settleItems(node.kids, make) }];
  if (type === "Figure") return settleFigure(node, make);
  return [{ ...node, type, kids: settle(node.kids, insides.get(type) ?? "text", make) }];
}

/** A list holds items only, an item a label and a body only. A space between items belongs to the one before. */
function settleItems(kids: readonly StructureKid[], make: MakeNode): StructureKid[] {
  const items: StructureKid[] = [];
  for (const kid of kids) {
    const before = items.at(-1);
    const body = before && isNode(before) ? before.kids.at(-1) : undefined;
    if (body && isNode(body) && body.type === "LBody" && (!isNode(kid) || isTextRun(kid))) body.kids.push(...(isNode(kid) ? kid.kids : [kid]));
    else items.push(...settleItem(kid, make));
  }
  return items;
}

function settleItem(kid: StructureKid, make: MakeNode): StructureKid[] {
  if (isNode(kid) && shells.has(kid.type)) return settleItems(kid.kids, make);
  if (isNode(kid) && kid.type === "Caption") return settleNode(kid, make);
  if (!isNode(kid) || kid.type !== "LI") return [{ ...make("LI"), kids: [{ ...make("LBody"), kids: settle([kid], "either", make) }] }];
  // The term of an explanation comes as an aside; see `preparePage`.
  for (const inner of kid.kids) if (isNode(inner) && inner.type === "Aside") inner.type = "Lbl";
  const labels = kid.kids.filter((inner) => isNode(inner) && inner.type === "Lbl");
  const body = kid.kids.flatMap((inner) => (isNode(inner) && inner.type === "LBody" ? inner.kids : labels.includes(inner) ? [] : [inner]));
  return [{ ...kid, kids: [...settle(labels, "text", make), { ...make("LBody"), kids: settle(body, "either", make) }] }];
}

/**
 * A drawing and its caption come as a figure (no alternative) that holds a figure (the drawing) and the caption. A reader that gives the alternative
 * for a figure skips what is in it, so the caption is put beside the drawing.
 */
function settleFigure(figure: StructureNode, make: MakeNode): StructureNode[] {
  const inner = innerFigures(figure);
  if (hasAlternative(figure) || (inner.length === 0 && !holdsBlocks(figure))) return [{ ...figure, kids: [...leavesOf(figure)] }];
  if (inner.length === 0) return settle(figure.kids, "blocks", make).filter(isNode);
  const drawings = inner.flatMap((drawing) => settleFigure(drawing, make));
  const captions = settle(withoutFigures(figure.kids), "either", make);
  const hasCaption = captions.some((kid) => isNode(kid) && kid.type === "Caption");
  const caption = captions.length === 0 || hasCaption ? captions.filter(isNode) : [{ ...make("Caption"), kids: captions }];
  return [{ ...figure, type: "Div", kids: [...drawings, ...caption] }];
}

function innerFigures(node: StructureNode): readonly StructureNode[] {
  return node.kids.filter(isNode).flatMap((kid) => (kid.type === "Figure" ? [kid] : innerFigures(kid)));
}

function withoutFigures(kids: readonly StructureKid[]): readonly StructureKid[] {
  return kids.flatMap((kid): readonly StructureKid[] => {
    if (!isNode(kid)) return [kid];
    return kid.type === "Figure" ? [] : [{ ...kid, kids: [...withoutFigures(kid.kids)] }];
  });
}

function holdsBlocks(node: StructureNode): boolean {
  return node.kids.filter(isNode).some((kid) => ["P", "L", "Table", "BlockQuote"].includes(kid.type) || holdsBlocks(kid));
}

/** Whether a figure says in words what it shows. */
export function hasAlternative(node: StructureNode): boolean {
  return node.properties.has(PDFName.of("Alt")) || node.properties.has(PDFName.of("ActualText"));
}

/** Text that stands among blocks gets paragraphs. */
function wrapStrayText(kids: readonly StructureKid[], make: MakeNode): StructureKid[] {
  const wrapped: StructureKid[] = [];
  let paragraph: StructureNode | null = null;
  for (const kid of kids) {
    if (!isText(kid)) {
      paragraph = null;
      wrapped.push(kid);
      continue;
    }
    if (paragraph === null) wrapped.push((paragraph = make("P")));
    paragraph.kids.push(kid);
  }
  return wrapped;
}

function isText(kid: StructureKid): boolean {
  return !isNode(kid) || textTypes.has(kid.type);
}

/** The browser puts each run of text into a shell of its own. */
function isTextRun(node: StructureNode): boolean {
  return shells.has(node.type) && node.kids.every(isContent);
}

/**
 * Takes out what has nothing left to say after the decoration has gone: content without marks, elements without contents. Cells stay, a table needs them.
 */
export function pruneStructure(node: StructureNode): StructureNode {
  const kids = node.kids.map((kid) => (isNode(kid) ? pruneStructure(kid) : kid)).filter((kid) => {
    if (isContent(kid)) return kid.marks.length > 0;
    return !isNode(kid) || kid.kids.length > 0 || ["TD", "TH"].includes(kid.type);
  });
  return { ...node, kids };
}
