// Every document of one small book, built as its author would build it, and its PDFs looked at: sizes, type, colour, marks, order.
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { PDFDict, PDFDocument, PDFName } from "pdf-lib";
import { PNG } from "pngjs";
import { register } from "tsx/esm/api";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { build } from "../../src/build.ts";
import { foldMarks } from "../../src/6-print/fold/fold-pdf.ts";
import { drawnLines, drawnPaths, pageSizes, pageTexts, structureOf } from "./measure-pdf.ts";
import type { StructureStep } from "./measure-pdf.ts";
import { coloursOf, typeOf } from "./read-type.ts";
import type { PieceOfText } from "./read-type.ts";

// Eleventy loads its configuration by itself, past the test runner: the sources must be readable for plain Node too.
register();

const root = path.resolve(import.meta.dirname, "../..");
let folder = "";
const pdfs = new Map<string, Uint8Array>();
const messages: string[] = [];

const documents = ["book/handout", "book/handout-half-letter", "book/bench-cards", "book/bench-cards-half-letter", "book/templates", "book/templates-half-letter", "book/booklet", "book-large/handout"] as const;

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), "benchleaf-documents-"));
  const project = path.join(folder, "content/book");
  await mkdir(path.join(folder, "content"));
  await cp(path.join(root, "content/tide-tables"), project, { recursive: true });
  const written = await readFile(path.join(project, "project.yaml"), "utf8");
  const cut = written.slice(0, written.search(/^(?:variants|documents|print|class):/m));
  await mkdir(path.join(project, "pictures"));
  const picture = new PNG({ width: 40, height: 30 });
  picture.data.fill(255);
  for (let at = 0; at < picture.data.length; at += 4) picture.data.set([200, 40, 20, 255], at);
  await writeFile(path.join(project, "pictures/red.png"), PNG.sync.write(picture));
  await writeFile(path.join(project, "project.yaml"), [
    cut,
    "print: {paper: [a4, half letter], ink: grey, thickness: 0.2 mm}",
    "documents: {booklet: yes}",
    "steps:\n  finish: {picture: {file: pictures/red.png, alt: A red field}}",
    "variants:\n  - name: large\n    print: {paper: a4, ink: colour, large print: yes}\n    documents: {booklet: no, bench cards: no, templates: no}\n",
  ].join("\n"));
  const say = (text: string): void => void messages.push(text);
  const status = await build({ projects: [], content: path.join(folder, "content"), output: path.join(folder, "dist"), print: true, tabs: 2, afresh: true, progress: { step: () => undefined, say, done: () => undefined }, write: say });
  if (status !== 0) throw new Error(messages.join("\n"));
  for (const name of documents) pdfs.set(name, new Uint8Array(await readFile(path.join(folder, "dist", `${name}.pdf`))));
}, 240_000);

afterAll(() => rm(folder, { recursive: true }));

function pdf(name: (typeof documents)[number]): Uint8Array {
  return pdfs.get(name)!;
}

/** Whether two lengths in millimetres are the same on paper. */
function isNear(a: number, b: number, within = 0.06): boolean {
  return Math.abs(a - b) <= within;
}

function steps(step: StructureStep): readonly StructureStep[] {
  return [step, ...step.children.flatMap(steps)];
}

describe("every document", () => {
  test.each([
    ["book/handout", 210, 297], ["book/handout-half-letter", 139.7, 215.9], ["book/bench-cards", 210, 297], ["book/bench-cards-half-letter", 215.9, 139.7],
    ["book/booklet", 297, 210], ["book-large/handout", 210, 297],
  ] as const)("%s has pages of %d × %d mm", async (name, width, height) => {
    for (const [w, h] of await pageSizes(pdf(name))) expect([w.toFixed(2), h.toFixed(2)]).toEqual([width.toFixed(2), height.toFixed(2)]);
  });

  test("templates lie on sheets of half Letter, upright or across", async () => {
    for (const size of await pageSizes(pdf("book/templates-half-letter"))) expect([...size].sort((a, b) => a - b).map((side) => side.toFixed(1))).toEqual(["139.7", "215.9"]);
  });

  test.each(documents)("%s has all fonts embedded, and they are ours", async (name) => {
    const document = await PDFDocument.load(pdf(name), { updateMetadata: false });
    const dictionaries = document.context.enumerateIndirectObjects().flatMap(([, object]) => (object instanceof PDFDict ? [object] : []));
    const descriptors = dictionaries.filter((object) => object.get(PDFName.of("Type")) === PDFName.of("FontDescriptor"));
    expect(descriptors.length).toBeGreaterThan(0);
    for (const descriptor of descriptors) expect(["FontFile2", "FontFile3"].some((key) => descriptor.has(PDFName.of(key)))).toBe(true);
    const simple = dictionaries.filter((object) => object.get(PDFName.of("Type")) === PDFName.of("Font") && object.get(PDFName.of("Subtype")) !== PDFName.of("Type0"));
    for (const font of simple) expect(font.has(PDFName.of("FontDescriptor")) || font.get(PDFName.of("Subtype")) === PDFName.of("Type3")).toBe(true);
  });

  test.each(documents.filter((name) => name !== "book/booklet"))("%s is tagged and has no page without text", async (name) => {
    for (const text of await pageTexts(pdf(name))) expect(text.trim().length).toBeGreaterThan(20);
    for (const page of await structureOf(pdf(name))) expect(steps(page).length).toBeGreaterThan(1);
  });

  test("the how-to page links to each PDF, and switched off documents are not there", async () => {
    const page = await readFile(path.join(folder, "dist/book/index.html"), "utf8");
    for (const name of documents.filter((each) => each.startsWith("book/"))) expect(page).toContain(`href="${name.slice("book/".length)}.pdf"`);
    const large = await readFile(path.join(folder, "dist/book-large/index.html"), "utf8");
    expect([...large.matchAll(/href="([^"]+\.pdf)"/g)].map((match) => match[1])).toEqual(["handout.pdf"]);
  });
});

describe("ink", () => {
  test.each(documents.filter((name) => name.startsWith("book/")))("%s is printed in grey only, its picture too", async (name) => {
    for (const colour of await coloursOf(pdf(name))) expect(new Set([colour.slice(1, 3), colour.slice(3, 5), colour.slice(5)]).size, colour).toBe(1);
  });

  test("without the key there is colour, in type and in the picture", async () => {
    const colours = await coloursOf(pdf("book-large/handout"));
    expect([...colours].filter((colour) => new Set([colour.slice(1, 3), colour.slice(3, 5), colour.slice(5)]).size > 1).length).toBeGreaterThan(1);
    expect(colours).toContain("#c82814");
  });
});

describe("large print", () => {
  test("no type below 18 pt outside of drawings", async () => {
    const pieces = (await typeOf(pdf("book-large/handout"))).flat().filter((piece) => !piece.inFigure);
    expect(pieces.length).toBeGreaterThan(500);
    expect(pieces.filter((piece) => piece.points < 17.95).map((piece) => `${piece.text} (${piece.points})`)).toEqual([]);
  });

  test("what each drawing says stands below it in words", async () => {
    const text = (await pageTexts(pdf("book-large/handout"))).join(" ");
    const figures = (await structureOf(pdf("book-large/handout"))).flatMap(steps).filter((step) => step.role === "Figure" && step.alternative !== "A red field");
    expect(figures.length).toBeGreaterThan(8);
    expect(text.match(/In words/g)).toHaveLength(figures.length);
  });

  test("the ordinary handout is set smaller: the measure can fail", async () => {
    expect(Math.min(...(await typeOf(pdf("book/handout"))).flat().map((piece) => piece.points))).toBeLessThan(10);
  });
});

describe("bench cards", () => {
  test.each(["book/bench-cards", "book/bench-cards-half-letter"] as const)("%s: what is done, its sizes and its check are in type of 18 pt and more", async (name) => {
    const pieces = (await typeOf(pdf(name))).flat();
    const plan = JSON.parse(await readFile(path.join(folder, "dist/book/plan.json"), "utf8")) as { readonly steps: readonly { readonly action: readonly string[]; readonly check: string; readonly title: string }[] };
    const bare = (text: string): string => text.replace(/[\s\u00a0]+/g, "").replace(/'/g, "’");
    const large = bare(pieces.filter((piece) => piece.points >= 17.95).map((piece) => piece.text).join(""));
    for (const { action, check, title } of plan.steps) for (const text of [...action, check, title]) expect(large).toContain(bare(text));
  });

  test("large sheets carry marks on both sides, level with the edge between the two cards", async () => {
    const pages = (await pageSizes(pdf("book/bench-cards"))).length;
    const marks = (await drawnPaths(pdf("book/bench-cards"))).filter((mark) => isNear(mark.top, 148.5, 0.3) && isNear(mark.bottom, 148.5, 0.3));
    for (let page = 1; page <= pages; page += 1) {
      const own = marks.filter((mark) => mark.page === page);
      expect(own.some((mark) => isNear(mark.left, 0, 0.1) && isNear(mark.right, 9, 0.1)), `left of sheet ${page}`).toBe(true);
      expect(own.some((mark) => isNear(mark.left, 201, 0.1) && isNear(mark.right, 210, 0.1)), `right of sheet ${page}`).toBe(true);
    }
  });

  test("each card is a heading for a screen reader", async () => {
    const heads = (await structureOf(pdf("book/bench-cards-half-letter"))).map((page) => steps(page).filter((step) => step.role === "H2").length);
    expect(heads.every((count) => count === 1)).toBe(true);
  });
});

describe("the booklet", () => {
  /** The page number in the footer of each half of each side; null for an empty half. */
  async function halves(): Promise<readonly { readonly left: PieceOfText | null; readonly right: PieceOfText | null }[]> {
    return (await typeOf(pdf("book/booklet"))).map((pieces) => {
      const numbers = pieces.filter((piece) => /^page \d+ of \d+$/.test(piece.text.trim()));
      return { left: numbers.find((piece) => piece.x < 148.5) ?? null, right: numbers.find((piece) => piece.x >= 148.5) ?? null };
    });
  }
  const numberIn = (piece: PieceOfText | null): number | null => (piece === null ? null : Number(/\d+/.exec(piece.text)![0]));

  test("folded, laid into each other and leafed through, its pages are in order", async () => {
    const sides = await halves();
    const sheets = Array.from({ length: sides.length / 2 }, (_, index) => ({ outer: sides[2 * index]!, inner: sides[2 * index + 1]! }));
    const total = Math.max(...sides.flatMap(({ left, right }) => [numberIn(left) ?? 0, numberIn(right) ?? 0]));
    expect(total).toBeGreaterThan(20);
    // A booklet of so few sheets is one section.
    expect(sheets.length).toBeLessThanOrEqual(8);
    const read = [...sheets.flatMap(({ outer, inner }) => [outer.right, inner.left]), ...sheets.toReversed().flatMap(({ outer, inner }) => [inner.right, outer.left])].map(numberIn);
    expect(read).toEqual(Array.from({ length: 4 * sheets.length }, (_, index) => (index < total ? index + 1 : null)));
  });

  test("pages of inner sheets stand nearer to the fold, by one thickness for each sheet around them", async () => {
    const sides = await halves();
    const [first] = sides;
    sides.forEach(({ right }, index) => {
      const shift = 0.2 * Math.floor(index / 2);
      // Numbers are set flush right; those of as many digits begin at the same place.
      if (index % 2 === 0 && right !== null && right.text.length === first!.right!.text.length) expect(isNear(first!.right!.x - right.x, shift, 0.02), `side ${index + 1}`).toBe(true);
    });
    expect(sides.filter(({ right }, index) => index > 0 && index % 2 === 0 && right?.text.length === first!.right!.text.length).length).toBeGreaterThan(1);
  });

  test("the fold is marked at head and foot of every outer side, the holes on the innermost sheet alone", async () => {
    const lines = (await drawnLines(pdf("book/booklet"))).filter((line) => isNear(line.width, foldMarks.line, 0.01));
    const pages = (await pageSizes(pdf("book/booklet"))).length;
    for (let page = 1; page <= pages; page += 1) {
      const upright = lines.filter((line) => line.page === page && isNear(line.x1, 148.5) && isNear(line.x2, 148.5));
      expect(upright.map((line) => Math.abs(Math.round(Math.min(line.y1, line.y2)))).sort((a, b) => a - b)).toEqual(page % 2 === 1 ? [0, 204] : []);
      const stations = lines.filter((line) => line.page === page && isNear(line.y1, line.y2) && isNear((line.x1 + line.x2) / 2, 148.5) && isNear(Math.abs(line.x2 - line.x1), foldMarks.station));
      // 210 / 7 = 30 mm from either end, and the middle.
      expect(stations.map((line) => Math.round(line.y1 * 10) / 10).sort((a, b) => a - b)).toEqual(page === pages ? [30, 105, 180] : []);
    }
  });

  test("dots count the sheet", async () => {
    const { fromFold, size } = foldMarks.tally;
    const dots = (await drawnPaths(pdf("book/booklet"))).filter((path) => path.painted === "fill" && isNear(path.right - path.left, size) && isNear(path.bottom - path.top, size) && isNear((path.left + path.right) / 2, 148.5 + fromFold));
    const pages = (await pageSizes(pdf("book/booklet"))).length;
    for (let page = 1; page <= pages; page += 1) expect(dots.filter((dot) => dot.page === page)).toHaveLength(page % 2 === 1 ? (page + 1) / 2 : 0);
  });

  test("it says that it is for print, what to read instead, and how it is turned; it claims no tags", async () => {
    const document = await PDFDocument.load(pdf("book/booklet"), { updateMetadata: false });
    expect(document.getTitle()).toContain("booklet to print, fold and sew (to read: handout.pdf)");
    expect(document.catalog.lookup(PDFName.of("ViewerPreferences"), PDFDict).get(PDFName.of("Duplex"))?.toString()).toBe("/DuplexFlipShortEdge");
    expect(document.catalog.has(PDFName.of("MarkInfo"))).toBe(false);
    expect(document.catalog.has(PDFName.of("StructTreeRoot"))).toBe(false);
    expect(Buffer.from(pdf("book/booklet")).toString("latin1")).not.toContain("pdfuaid:part");
    const text = (await pageTexts(pdf("book/booklet"))).join(" ").replace(/\s+/g, " ");
    expect(text).toContain("Fold and sew this booklet");
    expect(text).toContain("handout.pdf");
  });
});
