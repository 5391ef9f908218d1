// Prints sample pages once and looks at everything a reader, a ruler or a screen reader would notice.
import { existsSync } from "node:fs";
import { readFile, rm } from "node:fs/promises";
import path from "node:path";
import { PDFArray, PDFBool, PDFDict, PDFDocument, PDFHexString, PDFName, PDFRawStream, PDFString, decodePDFRawStream } from "pdf-lib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../../src/6-print/browser.ts";
import { printPages } from "../../src/6-print/index.ts";
import { openTab } from "../../src/6-print/print-tab.ts";
import { divideWord } from "../../src/6-print/hyphenate.ts";
import type { PrintResult } from "../../src/6-print/types.ts";
import { drawnLines, drawnPaths, lineLength, marksOf, pageSizes, pageTexts, structureOf } from "./measure-pdf.ts";
import type { DrawnLine, StructureStep } from "./measure-pdf.ts";
import { readTags, tokensOf } from "./read-tags.ts";
import { makeSampleFolder, sampleJob } from "./sample-folder.ts";

/** A template line may be off by so much: what a good ruler and a pin can show. */
const tolerance = 0.05;

let folder = "";
let results: readonly PrintResult[] = [];
let mixed: Uint8Array = new Uint8Array();
let template: Uint8Array = new Uint8Array();
let shrunk: Uint8Array = new Uint8Array();
const progress: number[] = [];
let oneTab: readonly PrintResult[] = [];

beforeAll(async () => {
  folder = await makeSampleFolder("print-pages");
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  shrunk = (await (await openTab(started.browser, folder)).print(path.join(folder, "project/unguarded.html"))).pdf;
  const jobs = [
    sampleJob(folder, "mixed"),
    sampleJob(folder, "asking"),
    sampleJob(folder, "unguarded"),
    sampleJob(folder, "silent-figure"),
    sampleJob(folder, "not-there"),
    { ...sampleJob(folder, "mixed", "template"), pdf: path.join(folder, "project/template.pdf") },
  ];
  results = await printPages(jobs, { tabs: 3, start: () => Promise.resolve(started), onProgress: (done) => void progress.push(done) });
  mixed = new Uint8Array(await readFile(jobs[0]!.pdf));
  const again = ["asking", "mixed", "mixed"].map((page, index) => ({ ...sampleJob(folder, page), pdf: path.join(folder, `project/again-${index}.pdf`) }));
  oneTab = await printPages(again, { tabs: 1, onProgress: () => undefined });
  template = new Uint8Array(await readFile(jobs[5]!.pdf));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

function redLines(lines: readonly DrawnLine[]): readonly DrawnLine[] {
  return lines.filter(({ colour }) => colour === "#cc0000");
}

function failureOf(page: string): string {
  return results.find(({ job }) => job.html.endsWith(`/${page}.html`))?.failure ?? "";
}

function steps(step: StructureStep): readonly StructureStep[] {
  return [step, ...step.children.flatMap(steps)];
}

describe("jobs", () => {
  test("a job that fails does not stop the others, and each is reported", () => {
    expect(results.map(({ failure }) => failure === null)).toEqual([true, false, false, false, false, true]);
    expect(results[0]).toMatchObject({ pages: 4, failure: null });
    expect(progress).toEqual([1, 2, 3, 4, 5, 6]);
  });

  test("one page after the other in the same tab, after a failure too, loads the same files and gives the same bytes", async () => {
    expect(oneTab.map(({ failure }) => failure === null)).toEqual([false, true, true]);
    const [, second, third] = oneTab as [PrintResult, PrintResult, PrintResult];
    expect(second.loaded).toEqual(expect.arrayContaining(["project/mixed.html", "assets/fonts.css", expect.stringMatching(/\.woff2$/)]));
    expect(third.loaded).toEqual(second.loaded);
    expect(results[0]!.loaded).toEqual(second.loaded);
    for (const { job } of [second, third]) expect(Buffer.from(mixed).equals(await readFile(job.pdf))).toBe(true);
  });

  test("a job that fails leaves no PDF behind", () => {
    for (const { job, failure } of results) expect(existsSync(job.pdf)).toBe(failure === null);
  });

  test("a page that is not there is named", () => {
    expect(failureOf("not-there")).toContain("project/not-there.html");
  });

  test("a figure without alternative text is refused with its page", () => {
    expect(failureOf("silent-figure")).toBe("a figure has no alternative text (page 1)");
  });
});

describe("the network and other files", () => {
  test("a page that asks for addresses, files elsewhere and files that are missing gets nothing and each is named", () => {
    for (const refused of ["https://example.org/far.css", "http://127.0.0.1:9/near.png", "file:///etc/hostname"]) expect(failureOf("asking")).toContain(refused);
    expect(failureOf("asking")).toContain("project/gone.png");
  });

  test("scripts do not run", () => {
    expect(failureOf("asking")).not.toContain("from-script");
  });
});

describe("true size", () => {
  test("sheets have exactly the size of their paper, upright and on their side, mixed in one document", async () => {
    const expected = [[210, 297], [297, 210], [215.9, 279.4], [279.4, 215.9]];
    const sizes = await pageSizes(mixed);
    expect(sizes).toHaveLength(expected.length);
    sizes.forEach(([width, height], index) => {
      expect(width).toBeCloseTo(expected[index]![0]!, 4);
      expect(height).toBeCloseTo(expected[index]![1]!, 4);
    });
  });

  test("a line of 100 mm measures 100 mm on every page, the first and the last among them, beside a box that is too wide but guarded", async () => {
    const lines = redLines(await drawnLines(mixed));
    expect(lines.map(({ page }) => page)).toEqual([1, 2, 3, 4]);
    for (const line of lines) {
      expect(Math.abs(lineLength(line) - 100)).toBeLessThan(tolerance);
      expect(Math.abs(line.x1 - 25)).toBeLessThan(0.2);
      expect(line.width).toBeCloseTo(0.3, 3);
    }
  });

  test("a circle of 5 mm measures 5 mm both ways", async () => {
    const circle = (await drawnPaths(mixed)).find(({ colour }) => colour === "#00aa00");
    expect(Math.abs(circle!.right - circle!.left - 5)).toBeLessThan(tolerance);
    expect(Math.abs(circle!.bottom - circle!.top - 5)).toBeLessThan(tolerance);
  });

  test("known effect: without the guard one box that is too wide makes the browser print the line too short", async () => {
    const [line] = redLines(await drawnLines(shrunk));
    expect(lineLength(line!)).toBeLessThan(70);
  });

  test("a print that the browser made smaller is refused, with the scale and the remedy", () => {
    expect(failureOf("unguarded")).toMatch(/wider than its page.* 66\.\d %.*print-guard\.css/);
  });
});

describe("text and fonts", () => {
  test("fractions keep their digits in the text of the PDF, with the fraction slash", async () => {
    const [first = ""] = await pageTexts(mixed);
    expect(first.replace(/\s+/g, " ")).toContain("Cut 7 5⁄16 in × 3 3⁄4 in, no more than 190 mm − 2 · ½ ÷ 1 – for Dvořák.");
  });

  test("a word that a line divides is whole for a reader: a soft hyphen at the end of the line, the painted hyphen no part of the text", async () => {
    const { top } = await readTags(mixed);
    const words = "Considerable understanding of well-turned measurements, unquestionably.";
    expect(tokensOf(top).join("")).toContain(words.replaceAll(" ", ""));
    const document = await PDFDocument.load(mixed, { updateMetadata: false });
    const content = document.context.enumerateIndirectObjects().flatMap(([, object]) => (object instanceof PDFRawStream ? [Buffer.from(decodePDFRawStream(object).decode()).toString("latin1")] : [])).join("\n");
    const ends = content.match(/<feff00ad>\s*>>\s*BDC[^E]*EMC\s*ET\b/gi) ?? [];
    expect(ends.length).toBeGreaterThan(1);
    expect(content.match(/<feff00ad>/gi)).toHaveLength(ends.length);
  });

  test("words are divided between the parts that Liang's patterns find, with three letters on either side; short ones are left", () => {
    expect(["hyphenation", "instructions", "binding", "across"].map((word) => divideWord(word).replaceAll("\u00ad", "-"))).toEqual(["hyphen-a-tion", "instruc-tions", "bind-ing", "across"]);
  });

  test("every font is ours and embedded", async () => {
    const document = await PDFDocument.load(mixed, { updateMetadata: false });
    const dictionaries = document.context.enumerateIndirectObjects().flatMap(([, object]) => (object instanceof PDFDict ? [object] : []));
    const fonts = dictionaries.filter((object) => object.get(PDFName.of("Type")) === PDFName.of("Font"));
    const descriptors = dictionaries.filter((object) => object.get(PDFName.of("Type")) === PDFName.of("FontDescriptor"));
    const names = fonts.map((font) => font.lookup(PDFName.of("BaseFont"), PDFName).decodeText().replace(/^[A-Z]{6}\+/, ""));
    expect(new Set(names.map((name) => name.replace(/-.*/, "")))).toEqual(new Set(["SourceSerif4", "SourceSans3ExtraLight"]));
    for (const style of ["SourceSerif4-Regular", "SourceSerif4-Italic", "SourceSerif4-SemiBold"]) expect(names).toContain(style);
    expect(descriptors.length).toBeGreaterThanOrEqual(4);
    for (const descriptor of descriptors) expect(["FontFile2", "FontFile3"].some((key) => descriptor.has(PDFName.of(key)))).toBe(true);
  });

  test("margin boxes count the pages", async () => {
    (await pageTexts(mixed)).forEach((text, index) => expect(text).toContain(`Page ${index + 1} of 4`));
  });
});

describe("what a screen reader gets", () => {
  test("headings, lists with labels, table, links and figures arrive in the order of reading, and nothing is an empty shell", async () => {
    const roles = (await structureOf(mixed)).map((page) => steps(page).map(({ role }) => role).slice(2).join(" "));
    expect(roles).toEqual([
      "H1 Span P Link Link Link Span P Span Span P Div Figure Caption L LI Lbl LBody LI Lbl LBody L LI LBody",
      "H2 Table TR TH TH TR TH TD TR TH TD Figure",
      "H2 Figure P Link P",
      "H2 Figure P",
    ]);
  });

  test("every figure has its alternative text, whether from a title or a label", async () => {
    const figures = (await structureOf(mixed)).flatMap(steps).filter(({ role }) => role === "Figure");
    expect(figures.map(({ alternative }) => alternative)).toEqual(["A red line of 100 mm", ...Array.from({ length: 3 }, () => "A line of 100 mm")]);
  });

  test("all that is painted is either in the structure, once, or marked as an artifact", async () => {
    for (const { inTree, onPage, unmarked } of await marksOf(mixed)) {
      expect(unmarked).toBe(0);
      expect(inTree.length).toBeGreaterThan(0);
      expect([...inTree].sort((a, b) => a - b)).toEqual(onPage);
    }
  });

  test("every mark leads back to its element through the parent tree", async () => {
    const document = await PDFDocument.load(mixed, { updateMetadata: false });
    const tree = document.catalog.lookup(PDFName.of("StructTreeRoot"), PDFDict);
    const entries = tree.lookup(PDFName.of("ParentTree"), PDFDict).lookup(PDFName.of("Nums"), PDFArray);
    const marks = await marksOf(mixed);
    document.getPages().forEach((page, index) => {
      expect(page.node.get(PDFName.of("StructParents"))?.toString()).toBe(String(index));
      expect(entries.lookup(2 * index + 1, PDFArray).size()).toBe(marks[index]?.onPage.length);
    });
  });
});

describe("links", () => {
  test("links stay when a reader can follow them: within the document, relative in the output, and to the web; each has words", async () => {
    const document = await PDFDocument.load(mixed, { updateMetadata: false });
    const links = document.getPages().flatMap((page) => page.node.Annots()?.asArray().map((ref) => document.context.lookup(ref, PDFDict)) ?? []);
    const targets = links.map((link) => {
      const address = link.lookupMaybe(PDFName.of("A"), PDFDict)?.lookup(PDFName.of("URI"), PDFString).decodeText();
      return [address ?? link.get(PDFName.of("Dest"))?.toString(), link.lookup(PDFName.of("Contents"), PDFHexString).decodeText()];
    });
    expect(targets).toEqual([
      ["/parts", "list of parts"],
      ["../index.html", "other projects"],
      ["https://example.org/leaf", "page elsewhere"],
      ["/parts", "Back to the parts"],
    ]);
  });
});

describe("the document as a whole", () => {
  test("title, author, language and conformance stand in the information and in XMP, without a date", async () => {
    const document = await PDFDocument.load(mixed, { updateMetadata: false });
    expect([document.getTitle(), document.getAuthor(), document.getCreator()]).toEqual(["Mixed sheets & more", "Ångström Invented", "Benchleaf"]);
    expect([document.getCreationDate(), document.getModificationDate()]).toEqual([undefined, undefined]);
    expect(document.catalog.lookup(PDFName.of("Lang"), PDFString).decodeText()).toBe("en");
    const xmp = new TextDecoder().decode((document.catalog.lookup(PDFName.of("Metadata")) as PDFRawStream).contents);
    for (const part of ["Mixed sheets &#38; more", "<dc:creator><rdf:Seq><rdf:li>Ångström Invented", "<dc:language><rdf:Bag><rdf:li>en<", "<pdfuaid:part>1</pdfuaid:part>"]) expect(xmp).toContain(part);
  });

  test("a reader shows the title, knows that the document is tagged, and has an outline of its headings", async () => {
    const { catalog } = await PDFDocument.load(mixed, { updateMetadata: false });
    expect(catalog.lookup(PDFName.of("ViewerPreferences"), PDFDict).lookup(PDFName.of("DisplayDocTitle"))).toBe(PDFBool.True);
    expect(catalog.lookup(PDFName.of("MarkInfo"), PDFDict).lookup(PDFName.of("Marked"))).toBe(PDFBool.True);
    const top = catalog.lookup(PDFName.of("Outlines"), PDFDict).lookup(PDFName.of("First"), PDFDict);
    expect(top.lookup(PDFName.of("Title"), PDFString, PDFHexString).decodeText()).toBe("Mixed sheets");
    expect(top.lookup(PDFName.of("First"), PDFDict).lookup(PDFName.of("Title"), PDFString, PDFHexString).decodeText()).toBe("Parts");
  });

  test("only a template tells the print dialogue to keep its size and the backs empty", async () => {
    const preferences = async (bytes: Uint8Array): Promise<string> => (await PDFDocument.load(bytes)).catalog.lookup(PDFName.of("ViewerPreferences"), PDFDict).toString();
    expect(await preferences(template)).toMatch(/\/Duplex \/Simplex[^]*\/PrintScaling \/None/);
    expect(await preferences(mixed)).not.toContain("PrintScaling");
  });
});
