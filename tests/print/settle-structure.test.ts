// What becomes of the browser's structure, on small trees made by hand.
import { PDFContext, PDFName, PDFString } from "pdf-lib";
import { expect, test } from "vitest";
import { pruneStructure, settleStructure } from "../../src/6-print/pdf/settle-structure.ts";
import { isContent, isNode } from "../../src/6-print/pdf/structure-tree.ts";
import type { StructureKid, StructureNode } from "../../src/6-print/pdf/structure-tree.ts";

const context = PDFContext.create();
let count = 0;

function node(type: string, ...kids: StructureKid[]): StructureNode {
  return { type, ref: context.nextRef(), properties: new Map(), kids };
}

/** The browser puts each run of text into a shell of its own. */
function text(): StructureNode {
  count += 1;
  return node("NonStruct", { page: 0, mark: String(count), marks: [count] });
}

function drawing(alternative: string, ...kids: StructureKid[]): StructureNode {
  return { ...node("Figure", ...kids), properties: new Map([[PDFName.of("Alt"), PDFString.of(alternative)]]) };
}

/** `P(. Span(.))`: a dot for content. */
function shape(kid: StructureKid): string {
  if (!isNode(kid)) return isContent(kid) ? "." : "link";
  return kid.kids.length === 0 ? kid.type : `${kid.type}(${kid.kids.map(shape).join(" ")})`;
}

function settled(...kids: StructureKid[]): string {
  return shape(settleStructure(node("Document", ...kids), (type) => node(type)));
}

test("shells go, their blocks stay", () => {
  expect(settled(node("NonStruct", node("H2", text()), node("Div", node("P", text(), text()))))).toBe("Document(H2(.) P(. .))");
});

test("text that stands among blocks becomes a paragraph, each block of text one of its own", () => {
  expect(settled(node("NonStruct", text()), node("NonStruct", text()), node("H1", text()))).toBe("Document(P(.) P(.) H1(.))");
  expect(settled(text(), node("H1", text()), text(), node("Em", text()))).toBe("Document(P(.) H1(.) P(. Span(.)))");
});

test("in a cell a lone run of text stays bare, several blocks of text become paragraphs, and an abbreviation between words stays in line", () => {
  const row = (...kids: StructureKid[]): string => settled(node("Table", node("TR", node("TD", ...kids))));
  expect(row(text())).toBe("Document(Table(TR(TD(.))))");
  expect(row(node("NonStruct", text()), node("NonStruct", text()))).toBe("Document(Table(TR(TD(P(.) P(.)))))");
  expect(row(text(), node("NonStruct", text()), text())).toBe("Document(Table(TR(TD(. . .))))");
});

test("list items get a body, whether their label is there or not, and a list in a list lies in the body", () => {
  expect(settled(node("L", node("LI", text(), node("L", node("LI", text())))))).toBe("Document(L(LI(LBody(. L(LI(LBody(.)))))))");
  expect(settled(node("L", node("LI", node("Lbl", text()), text())))).toBe("Document(L(LI(Lbl(.) LBody(.))))");
});

test("a figure around a drawing becomes a plain group with the drawing and its caption", () => {
  expect(settled(node("Figure", drawing("a line", node("Div", text())), node("NonStruct", text())))).toBe("Document(Div(Figure(.) Caption(.)))");
  expect(settled(node("Figure", drawing("a line", text()), node("Caption", text())))).toBe("Document(Div(Figure(.) Caption(.)))");
});

test("a figure that has the alternative itself swallows the drawing in it", () => {
  expect(settled(drawing("whole", node("Figure", text())))).toBe("Document(Figure(.))");
});

test("a figure around a table is no figure", () => {
  expect(settled(node("Figure", node("Table", node("TR", node("TD", text())))))).toBe("Document(Table(TR(TD(.))))");
});

test("elements without contents are pruned, but not the cells of a table", () => {
  const bare = node("Document", node("P", { page: 0, mark: "x", marks: [] }), node("Table", node("TR", node("TD"), node("TD", { page: 0, mark: "y", marks: [4] }))));
  expect(shape(pruneStructure(bare))).toBe("Document(Table(TR(TD TD(.))))");
});
