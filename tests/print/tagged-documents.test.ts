// The print-outs of two demos as a screen reader gets them: the tags of each PDF say what its page says, in the same order, with the same words.
import { execFile } from "node:child_process";
import { mkdtemp, readFile, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startBrowser } from "../../src/6-print/browser.ts";
import { layOut } from "../../src/6-print/print-tab.ts";
import { marksOf, millimetresPerPoint, withPages } from "./measure-pdf.ts";
import { readPageTags } from "./page-tags.ts";
import type { PageTags } from "./page-tags.ts";
import { mergedTokens, readTags, tagsOf, textOf, tokensOf } from "./read-tags.ts";
import type { LinkAnnotation, TaggedDocument } from "./read-tags.ts";

const root = path.resolve(import.meta.dirname, "../..");
/** In millimetres with a class, and in inches with fractions: between them every kind of document. */
const projects = ["harbour-album", "tide-tables"];

interface Print {
  /** `harbour-album/handout`. */
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly pdf: TaggedDocument;
  readonly page: PageTags;
}

let output = "";
let prints: readonly Print[] = [];
let spoiled: PageTags;

beforeAll(async () => {
  output = await mkdtemp(path.join(tmpdir(), "tagged-documents-"));
  await promisify(execFile)(process.execPath, ["--import", "tsx", path.join(root, "src/cli.ts"), "build", ...projects, "--output", output], { cwd: root });
  const files = (await readdir(output, { recursive: true })).map((file) => file.split(path.sep).join("/"));
  // A print-out without a page of its own is made from one that has: an imposed handout.
  const names = files.filter((file) => file.endsWith(".pdf") && files.includes(file.replace(/\.pdf$/, ".html"))).map((file) => file.slice(0, -4)).toSorted();
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  try {
    const tab = await started.browser.newPage();
    await tab.emulateMediaType("print");
    const read: Print[] = [];
    for (const name of names) {
      await tab.goto(`file://${output}/${name}.html`, { waitUntil: "load" });
      await tab.evaluate(() => document.fonts.ready.then(() => undefined));
      await layOut(tab);
      const bytes = new Uint8Array(await readFile(`${output}/${name}.pdf`));
      read.push({ name, bytes, pdf: await readTags(bytes), page: await readPageTags(tab) });
    }
    prints = read;
    await tab.goto(`file://${output}/harbour-album/kit-slips.html`, { waitUntil: "load" });
    await tab.evaluate(`document.querySelector("td").textContent += "!"`);
    spoiled = await readPageTags(tab);
  } finally {
    await started.browser.close();
  }
});

afterAll(() => rm(output, { recursive: true, force: true }));

/** What is found in each print-out; the name stands before each finding. */
function findings(look: (print: Print) => readonly string[]): readonly string[] {
  return prints.flatMap((print) => look(print).map((words) => `${print.name}: ${words}`));
}

test("no page of a long handout but the last is more than half empty", async () => {
  // A4 between margins of 11 and 14 mm; the foot of the page stands below.
  const shares = await withPages(prints.find(({ name }) => name === "harbour-album/handout")!.bytes, async (page) => {
    const { items } = await page.getTextContent();
    const baselines = items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [(item.transform[5] as number) * millimetresPerPoint] : []));
    return (297 - 11 - Math.min(...baselines.filter((y) => y > 14))) / 272;
  });
  expect(shares.length).toBeGreaterThan(20);
  expect(shares.slice(0, -1).filter((share) => share < 0.48)).toEqual([]);
});

describe("every kind of document", () => {
  test("is among the print-outs looked at", () => {
    const kinds = new Set(prints.map(({ name }) => name.split("/")[1]));
    for (const kind of ["handout", "templates", "class-plan", "kit-slips"]) expect(kinds).toContain(kind);
    expect(prints.filter(({ name }) => name.endsWith("/handout")).length).toBeGreaterThan(1);
  });

  test("holds headings, lists with labels and bodies, tables with header cells and their scope, figures with their alternatives, captions and links as its page does, in the same order with the same words", () => {
    expect(findings(({ pdf, page }) => {
      const [given, wanted] = [mergedTokens(tokensOf(pdf.top)), mergedTokens(page.tokens)];
      const at = wanted.findIndex((token, index) => given[index] !== token);
      return at < 0 && given.length === wanted.length ? [] : [`after ${wanted.slice(Math.max(0, at - 3), at).join(" ")} comes ${given[at]}, on the page ${wanted[at]}`];
    })).toEqual([]);
    // Sheets of labels are drawings and nothing else.
    for (const { name, pdf } of prints) expect(tokensOf(pdf.top).length, name).toBeGreaterThan(name.includes("/kit-labels") ? 0 : 50);
  });

  test("is compared by its words: one mark more on the page is seen", () => {
    const { pdf } = prints.find(({ name }) => name === "harbour-album/kit-slips")!;
    expect(mergedTokens(tokensOf(pdf.top))).not.toEqual(mergedTokens(spoiled.tokens));
  });

  test("gives every paragraph of its page an element of its own", () => {
    const bare = (text: string): string => text.replace(/\s+/g, "");
    expect(findings(({ pdf, page }) => {
      const blocks = tagsOf(pdf.top).filter(({ role }) => ["P", "LBody", "TD", "TH", "Caption", "Lbl", "H1", "H2", "H3", "H4"].includes(role)).map((tag) => bare(textOf(tag)));
      return page.paragraphs.filter((text) => text !== "" && !blocks.some((block) => block === text || block.startsWith(text)));
    })).toEqual([]);
  });

  test("has headings that go down one level at a time, and an outline that names exactly these", () => {
    expect(findings(({ pdf, page }) => {
      const levels = tagsOf(pdf.top).flatMap(({ role }) => (/^H\d$/.test(role) ? [Number(role[1])] : []));
      const jumps = levels.flatMap((level, index) => (level > (levels[index - 1] ?? 0) + 1 ? [`a heading of level ${level} after one of ${levels[index - 1] ?? 0}`] : []));
      return [...jumps, ...(pdf.outline.join("\n") === page.headings.join("\n") ? [] : [`outline: ${pdf.outline.join(", ")}`])];
    })).toEqual([]);
  });

  test("has as many columns in each row of a table as in its head", () => {
    expect(findings(({ pdf }) => tagsOf(pdf.top).filter(({ role }) => role === "Table").flatMap((table) => {
      const rows = tagsOf(table).filter(({ role }) => role === "TR").map((row) => row.kids.reduce((sum, kid) => sum + (typeof kid === "object" && "role" in kid ? kid.columns : 0), 0));
      return rows.flatMap((count, index) => (count === rows[0] ? [] : [`row ${index + 1} of “${textOf(table).slice(0, 30)}” has ${count} columns instead of ${rows[0]}`]));
    }))).toEqual([]);
  });

  test("paints nothing that is neither in the tree nor marked as an artifact, and outside the tree no words but running ones, repeated heads of tables and the hyphens of divided words", async () => {
    for (const { name, bytes, pdf } of prints) {
      for (const { inTree, onPage, unmarked } of await marksOf(bytes)) {
        expect(unmarked, name).toBe(0);
        expect([...inTree].sort((a, b) => a - b), name).toEqual(onPage);
      }
      const heads = tagsOf(pdf.top).filter(({ role }) => role === "TH").map(textOf).toSorted((a, b) => b.length - a.length);
      pdf.untagged.forEach((text, index) => {
        const running = /(?:Sizes: height along the spine × width\s+·\s+)?page (\d+) of (\d+)|[^\n]*· revision \S+/g;
        const rest = heads.reduce((words, head) => words.replace(head, ""), text.replace(running, "").replace(/\s+/g, " "));
        expect(rest.trim().replace(/^-(?: -)*$/, ""), `${name} page ${index + 1}`).toBe("");
      });
    }
  });

  test("is walked by pdfjs in the order in which its tree holds it", () => {
    for (const { name, pdf } of prints) {
      expect(pdf.walked, name).toEqual(pdf.listed);
      expect(new Set(pdf.listed).size, name).toBe(pdf.listed.length);
    }
  });

  test("says its title and language, conforms to PDF/UA-1, and shows its title", () => {
    for (const { name, pdf, page } of prints) {
      expect(pdf.title.length, name).toBeGreaterThan(3);
      expect(page.title, name).toContain(pdf.title);
      expect([pdf.xmpTitle, pdf.language, pdf.conformance, pdf.showsTitle, pdf.isMarked], name).toEqual([pdf.title, page.language, "1", true, true]);
    }
  });

  test("has each of its links once in the tree, with words, and visits them in the order of the structure", () => {
    let count = 0;
    for (const { name, pdf } of prints) {
      const links = tagsOf(pdf.top).filter(({ role }) => role === "Link").map((link) => link.kids.filter((kid): kid is LinkAnnotation => typeof kid === "object" && "target" in kid));
      expect(links.flat().length, name).toBe(pdf.links);
      expect(links.every((own) => own.length > 0 && own.every(({ target, contents }) => target !== "" && contents !== "")), name).toBe(true);
      expect(pdf.pagesInOtherOrder, name).toBe(0);
      count += pdf.links;
    }
    expect(count).toBeGreaterThan(0);
  });

  test("that is a set of templates says that it is for print, and points to the document that can be read", () => {
    const sets = prints.filter(({ name }) => name.endsWith("/templates"));
    expect(sets.length).toBeGreaterThan(1);
    for (const { name, pdf } of sets) {
      expect(textOf(pdf.top), name).toContain("These sheets are for print");
      const targets = tagsOf(pdf.top).flatMap(({ kids }) => kids.flatMap((kid) => (typeof kid === "object" && "target" in kid ? [kid.target] : [])));
      expect(targets, name).toContain("handout.pdf");
    }
  });
});
