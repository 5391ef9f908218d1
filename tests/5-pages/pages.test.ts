// The rendered pages as a reader and a validator see them.
import { printOn } from "../fixtures/print.ts";
import { access } from "node:fs/promises";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import { beforeAll, expect, test } from "vitest";
import { fixtureBooklet } from "./fixture.ts";
import { renderSite } from "./render.ts";
import type { RenderedSite } from "./render.ts";

let site: RenderedSite;
const pages: [file: string, html: string][] = [];
const handout = (): string => pages.find(([file]) => file === "test-album/handout.html")![1];
const howTo = (): string => pages.find(([file]) => file === "test-album/index.html")![1];

/** The text of a piece of HTML, spaces run together. */
function textOf(html: string): string {
  return html.replace(/<(script|style|title|desc)\b[\s\S]*?<\/\1>/g, " ").replace(/<[^>]+>/g, " ").replaceAll("&#39;", "'").replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&amp;", "&").replace(/\s+/g, " ");
}

/** The HTML of one step in the handout. */
function stepHtml(html: string, n: number): string {
  const start = html.indexOf(`id="step-step-name-${n}"`);
  return html.slice(start, html.indexOf("</article>", start));
}

beforeAll(async () => {
  site = await renderSite({
    booklets: [fixtureBooklet()],
    listed: [
      { project: "test-album", title: "Album & co.", summary: "Fresh one.", state: "fresh" },
      { project: "old-album", title: "Old album", summary: "Old one.", state: "stale" },
      { project: "new-album", title: "New album", summary: "", state: "missing" },
    ],
    withPrints: true,
  });
  for (const file of site.files.filter((name) => name.endsWith(".html"))) pages.push([file, await site.read(file)]);
});

test("a project on two papers has its page, both print-outs for each paper, its data, its drawings and its pictures", () => {
  expect(site.files).toEqual([
    "index.html", "test-album/bench-cards-a4.html", "test-album/bench-cards.html", "test-album/handout-a4.html", "test-album/handout.html", "test-album/index.html", "test-album/pictures/fold.png",
    "test-album/plan.json", "test-album/templates-a4.html", "test-album/templates.html", "test-album/templates/score-guide.dxf", "test-album/templates/score-guide.svg",
  ]);
  expect(site.jobs.map((job) => [path.relative(site.folder, job.pdf), job.purpose])).toEqual([
    ["test-album/handout.pdf", "document"], ["test-album/handout-a4.pdf", "document"], ["test-album/bench-cards.pdf", "document"], ["test-album/bench-cards-a4.pdf", "document"], ["test-album/templates.pdf", "template"], ["test-album/templates-a4.pdf", "template"],
  ]);
});

test("every page is valid HTML", async () => {
  const validator = new HtmlValidate({
    extends: ["html-validate:recommended"],
    rules: {
      // Sizes of drawings are data of the drawing and stand in its style attribute.
      "no-inline-style": "off",
      "long-title": "off",
      // Trailing spaces come from the templates' own lines.
      "no-trailing-whitespace": "off",
      "require-sri": "off",
    },
  });
  const reports = await Promise.all(pages.map(async ([file, html]) => [file, await validator.validateString(html, file)] as const));
  const messages = reports.flatMap(([file, report]) =>
    report.results.flatMap((result) => result.messages.map((message) => `${file}:${message.line}:${message.column} ${message.ruleId}: ${message.message}`)));
  expect(messages).toEqual([]);
});

test("no page holds a name that was not filled in", () => {
  for (const [file, html] of pages) expect(textOf(html).match(/\{\{|\}\}|\{%|undefined|NaN|\[object|null\b/), file).toBeNull();
});

test("no id occurs twice on a page, and every reference inside a page leads somewhere", () => {
  for (const [file, html] of pages) {
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]!);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index), file).toEqual([]);
    const wanted = [...html.matchAll(/(?:href="#|url\(#|aria-labelledby="|aria-describedby="|for=")([^")]+)/g)].flatMap((match) => match[1]!.split(" "));
    expect(wanted.filter((id) => !ids.includes(id)), file).toEqual([]);
  }
});

test("every link and asset of a page that is not a print-out leads to a file that was written", async () => {
  const prints = new Set(site.jobs.map((job) => job.pdf));
  for (const [file, html] of pages) {
    const links = [...html.matchAll(/(?:href|src)="([^"#]+)(?:#[^"]*)?"/g)].map((match) => match[1]!).filter((link) => !/^(?:https:|data:)/.test(link));
    for (const link of links) {
      const target = path.resolve(site.folder, path.dirname(file), link);
      if (/old-album/.test(link) || prints.has(target)) continue;
      await expect(access(target), `${file}: ${link}`).resolves.toBeUndefined();
    }
  }
});

test("headings go down one level at a time, with one h1, also through the author's own headings", () => {
  for (const [file, html] of pages) {
    const levels = [...html.matchAll(/<h([1-6])\b/g)].map((match) => Number(match[1]));
    expect(levels.filter((level) => level === 1), file).toHaveLength(1);
    levels.forEach((level, index) => index > 0 && expect(level - levels[index - 1]!, `${file}: heading ${index + 1}`).toBeLessThanOrEqual(1));
  }
});

test("nothing is fetched from elsewhere, and a policy says so", () => {
  for (const [file, html] of pages) {
    expect(html, file).toContain("default-src 'none'");
    expect([...html.matchAll(/(?:src|href)="(?:https?:)?\/\/[^"]*"/g)].map((match) => match[0]).filter((link) => link !== 'href="https://example.org/"'), file).toEqual([]);
    expect([...html.matchAll(/<script\b[^>]*>/g)].map((match) => match[0]).filter((tag) => tag !== '<script type="application/ld+json">'), file).toEqual([]);
  }
});

test("a step shows its cautions before its first instruction, with the alert symbol only where a person may be hurt", () => {
  const warned = stepHtml(handout(), 1);
  expect(warned.indexOf("WARNING")).toBeGreaterThan(-1);
  expect(warned.indexOf("WARNING")).toBeLessThan(warned.indexOf('class="actions"'));
  expect(warned).toContain('class="alert"');
  const noticed = stepHtml(handout(), 4);
  expect(noticed).toContain("NOTICE");
  expect(noticed).not.toContain('class="alert"');
});

test("an author's caution takes the signal word it begins with, and CAUTION when it has none", () => {
  const step = textOf(stepHtml(handout(), 5));
  expect(step).toContain("DANGER never alone.");
  expect(step).toContain("CAUTION Mind the edge.");
});

test("a step prints number, title, minutes, parts, tools, sizes, instructions, check, mistake with repair, and its wait", () => {
  const step = textOf(stepHtml(handout(), 3));
  for (const words of ["3 Do the work of step 3", "Time 12 min", "Parts B card", "Tools steel ruler, awl", "PVA : together within 8 min", "Card A", "Lay the card A", "Right when Head and tail", "Usual mistake A line leans. Repair Measure it again", "Wait 12 h to dry", "Meanwhile Go on with step 9."]) expect(step).toContain(words);
  expect(textOf(stepHtml(handout(), 5))).toContain("Before this step The hinge has set since step 3.");
});

test("every drawing of a booklet is shown on its page and in its handout, a drawing that no step asks for as well", async () => {
  const booklet = fixtureBooklet();
  const more = { ...booklet.drawings.figures.get("narrow")!, id: "more", alternative: "x", svg: '<svg viewBox="0 0 80 62" role="img" aria-labelledby="figure-more-title"><title id="figure-more-title">Nobody asks for it</title></svg>' };
  const figures = new Map([...booklet.drawings.figures, ["more", more]]);
  const shown = await renderSite({ booklets: [{ ...booklet, drawings: { ...booklet.drawings, figures } }], listed: [], withPrints: false });
  for (const page of ["index.html", "handout.html"]) {
    const html = await shown.read(`test-album/${page}`);
    for (const id of figures.keys()) expect(html, `${page}: ${id}`).toContain(`id="figure-${id}-title--`);
  }
});

test("fractions are marked for the font, and sizes in the other unit may be hidden", () => {
  expect(handout()).toContain('<span class="frac">3⁄4</span>');
  expect(handout()).toContain('<span class="behind-mm">(about\u00a09.5\u00a0mm)</span>');
  expect(howTo()).toContain('id="other-unit"');
  expect(howTo()).toContain("behind-are-mm");
});

test("a page without a second unit offers no choice of units", async () => {
  const { units } = fixtureBooklet().definition;
  const plain = await renderSite({ booklets: [fixtureBooklet({ project: "plain", units: { ...units, dual: false } })], listed: [], withPrints: false });
  expect(await plain.read("plain/index.html")).not.toContain("other-unit");
});

test("without prints no page links to a PDF and nothing is left to print", async () => {
  const site = await renderSite({ booklets: [fixtureBooklet()], listed: [], withPrints: false });
  expect(site.jobs).toEqual([]);
  expect(await site.read("test-album/index.html")).not.toContain(".pdf");
});

test("each paper has its own page size, and each template sheet a page of its own without margins", () => {
  const a4 = pages.find(([file]) => file === "test-album/templates-a4.html")![1];
  expect(a4).toMatch(/@page sheet-upright \{ size: 210mm 297mm; margin: 0;/);
  expect(a4).toMatch(/@page sheet-across \{ size: 297mm 210mm; margin: 0;/);
  expect(a4.match(/class="sheet sheet-across"/g)).toHaveLength(2);
  expect(a4.match(/class="sheet sheet-upright"/g)).toHaveLength(1);
  expect(pages.find(([file]) => file === "test-album/handout.html")![1]).toContain("size: 215.9mm 279.4mm");
});

test("the list of projects names what is stale and does not link to what was never built", async () => {
  const html = await site.read("index.html");
  expect(textOf(html)).toContain("Old album Old one. Stale.");
  expect(html).toContain('href="old-album/index.html"');
  expect(html).not.toContain("new-album/index.html");
  expect(textOf(html)).toContain("New album Not built.");
});

test("the data for machines is a HowTo that says what the page says", () => {
  const [, json] = /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(howTo())!;
  const data = JSON.parse(json!) as Record<string, unknown> & { step: { itemListElement: { position: number; itemListElement: unknown[] }[] }[] };
  expect(data).toMatchObject({ "@context": "https://schema.org", "@type": "HowTo", name: "Album with eight stubs & one “quoted” <title>", performTime: "PT252M" });
  expect(data.step.flatMap((section) => section.itemListElement.map((step) => step.position))).toEqual(Array.from({ length: 21 }, (_, index) => index + 1));
  for (const claim of ["totalTime", "estimatedCost", "aggregateRating"]) expect(data).not.toHaveProperty(claim);
});

test("the same booklet gives the same bytes in another folder", async () => {
  const again = await renderSite({ booklets: [fixtureBooklet()], listed: [], withPrints: true });
  for (const file of again.files.filter((name) => name.startsWith("test-album/") && !name.endsWith(".png"))) expect(await again.read(file), file).toBe(await site.read(file));
});

test("a second rendering removes what the first one left and this one does not write", async () => {
  const { units } = fixtureBooklet().definition;
  const { renderPages } = await import("../../src/5-pages/index.ts");
  const first = await renderSite({ booklets: [fixtureBooklet()], listed: [], withPrints: true });
  await renderPages({ booklets: [fixtureBooklet({ print: printOn(["a4"]), units })], listed: [], withPrints: true, output: first.folder });
  await expect(first.read("test-album/handout-a4.html")).rejects.toThrow();
  await expect(first.read("test-album/handout.html")).resolves.toContain("size: 210mm 297mm");
});

test("a step that asks for a drawing nobody draws is a mistake of ours, said with the step", async () => {
  const booklet = fixtureBooklet();
  const drawings = { ...booklet.drawings, figures: new Map([...booklet.drawings.figures].filter(([id]) => id !== "narrow")) };
  await expect(renderSite({ booklets: [{ ...booklet, drawings }], listed: [], withPrints: false })).rejects.toThrow(/internal error: step 1 asks for the drawing "narrow"/);
});
