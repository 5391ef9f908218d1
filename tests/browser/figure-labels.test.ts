// Every figure and template sheet in a real browser with the real fonts: no label touches another label or a line that is not its own.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { drawFigures } from "../../src/4-figures/index.ts";
import type { Drawings } from "../../src/4-figures/types.ts";
import { inkOf, measureText } from "../../src/4-figures/text-metrics.ts";
import { startBrowser } from "../../src/6-print/browser.ts";
import { inches, mm } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { stubAlbumInput } from "../fixtures/drawing-input.ts";
import type { StubAlbumOverrides } from "../fixtures/stub-album.ts";

const require = createRequire(import.meta.url);
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  browser = started.browser;
  page = await browser.newPage();
  await page.setContent(`<!doctype html><style>${[400, 600].map(fontFace).join("")} svg { display: block }</style><body></body>`);
  await page.evaluate(async () => {
    await Promise.all([document.fonts.load("400 12px 'Benchleaf Label'"), document.fonts.load("600 12px 'Benchleaf Label'")]);
  });
});

afterAll(async () => {
  await browser?.close();
});

function fontFace(weight: number): string {
  const file = readFileSync(require.resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`));
  return `@font-face { font-family: "Benchleaf Label"; font-weight: ${weight}; src: url(data:font/woff2;base64,${file.toString("base64")}) }`;
}

/** Type size and text of every label, with its place on the page and its owner; and points along every line. */
async function findTouches(svg: string): Promise<readonly string[]> {
  const labels = [...svg.matchAll(/<text class="label"[^>]*>(.*?)<\/text>/g)].map((match) => match[1]!.replace(/<[^>]+>/g, ""));
  const inks = labels.map((text) => inkOf(text.replaceAll("&amp;", "&").replaceAll("&quot;", '"')));
  return page.evaluate((source, inkTable) => {
    document.body.innerHTML = source;
    const root = document.body.querySelector("svg")!;
    const inside = (box: { l: number; t: number; r: number; b: number }, x: number, y: number): boolean => x > box.l && x < box.r && y > box.t && y < box.b;
    const boxes = [...root.querySelectorAll<SVGTextElement>("text.label")].map((text, index) => {
      // Set width as the browser makes it, ink height from the face; corners taken through the turn.
      const length = text.getComputedTextLength();
      const size = Number(text.getAttribute("font-size"));
      const anchor = text.getAttribute("text-anchor") ?? "start";
      const [x, y] = [Number(text.getAttribute("x")), Number(text.getAttribute("y"))];
      const left = anchor === "start" ? x : anchor === "middle" ? x - length / 2 : x - length;
      const ink = inkTable[index]!;
      const matrix = text.getScreenCTM()!;
      const corners = [[left, y - ink.above * size], [left + length, y + ink.below * size]].map(([px, py]) => new DOMPoint(px, py).matrixTransform(matrix));
      const [a, b] = corners as [DOMPoint, DOMPoint];
      return {
        label: text.dataset["label"]!, text: text.textContent ?? "",
        box: { l: Math.min(a.x, b.x), t: Math.min(a.y, b.y), r: Math.max(a.x, b.x), b: Math.max(a.y, b.y) },
      };
    });
    const touches: string[] = [];
    boxes.forEach((one, index) => {
      for (const other of boxes.slice(index + 1)) {
        const [p, q] = [one.box, other.box];
        if (one.label !== other.label && p.l < q.r && q.l < p.r && p.t < q.b && q.t < p.b) touches.push(`"${one.text}" on "${other.text}"`);
      }
    });
    const lines = [...root.querySelectorAll<SVGPathElement>("path[class^='line-'], path.fill-arrow")];
    for (const path of lines) {
      const owner = path.dataset["owner"] ?? "";
      const outer = path.getBoundingClientRect();
      const near = boxes.filter(({ label, box }) => label !== owner && outer.left <= box.r && outer.right >= box.l && outer.top <= box.b && outer.bottom >= box.t);
      if (near.length === 0) continue;
      const matrix = path.getScreenCTM()!;
      // A sheet's window clips what lies beyond it. Its own box would be that of its contents, so its attributes are read.
      const frame = path.ownerSVGElement!;
      const attribute = (name: string): number => Number(frame.getAttribute(name));
      const corner = (px: number, py: number): DOMPoint => new DOMPoint(px, py).matrixTransform(root.getScreenCTM()!);
      const [first, last] = frame === root
        ? [new DOMPoint(-1e6, -1e6), new DOMPoint(1e6, 1e6)]
        : [corner(attribute("x"), attribute("y")), corner(attribute("x") + attribute("width"), attribute("y") + attribute("height"))];
      const window = { l: first.x, t: first.y, r: last.x, b: last.y };
      const length = path.getTotalLength();
      // Half a millimetre: the lowest label is three times as high.
      const steps = Math.max(2, Math.ceil(length / 0.5));
      const hit = new Set<string>();
      for (let step = 0; step <= steps; step += 1) {
        const at = path.getPointAtLength((length * step) / steps).matrixTransform(matrix);
        for (const { text, box } of near) if (inside(window, at.x, at.y) && inside(box, at.x, at.y)) hit.add(`"${text}" on a line (${path.getAttribute("class")}) of ${owner || "the drawing"}`);
      }
      touches.push(...hit);
    }
    return touches;
  }, svg, inks);
}

function boards(height: Length, width: Length): NonNullable<StubAlbumOverrides["book"]> {
  return { boards: { height, width, thickness: mm(2) } };
}

const counts = [1, 2, 3, 7, 12, 20, 30];
const albums: readonly (readonly [name: string, overrides: StubAlbumOverrides])[] = [
  ...counts.map((stubs) => [`${stubs} stubs in millimetres`, { book: { stubs } }] as const),
  ...counts.map((stubs) => [`${stubs} stubs in inches`, { units: "in", book: { stubs } }] as const),
  ["60 × 60 mm", { book: { ...boards(mm(60), mm(60)), stubs: 3, "stub depth": mm(6), "side strip": mm(10), "floor gap": mm(2) } }],
  ["600 × 600 mm", { book: { ...boards(mm(600), mm(600)), stubs: 12, "stub depth": mm(60) } }],
  ["600 × 60 mm", { book: { ...boards(mm(600), mm(60)), stubs: 5, "side strip": mm(20) } }],
  ["60 × 600 mm", { book: { ...boards(mm(60), mm(600)), stubs: 5, "side strip": mm(20) } }],
  ["24 × 18 in", { units: "in", book: { ...boards(inches(24), inches(18)), stubs: 7 } }],
];

describe.each(albums)("a stub album: %s", (_, overrides) => {
  const drawn = (): Drawings => drawFigures(stubAlbumInput(overrides));
  it("has figures whose labels touch nothing foreign", async () => {
    for (const figure of drawn().figures.values()) expect((await findTouches(figure.svg)).map((touch) => `${figure.id}: ${touch}`)).toEqual([]);
  });
  it("has template sheets whose labels touch nothing foreign", async () => {
    const input = stubAlbumInput(overrides);
    const { definition } = input;
    const { sheets } = drawFigures({ ...input, definition: { ...definition, print: { ...definition.print, papers: ["a4", "letter"] } } });
    for (const sheet of [...sheets.get("a4")!.slice(0, 4), ...sheets.get("letter")!.slice(0, 4)]) {
      expect((await findTouches(sheet.svg)).map((touch) => `${sheet.title}: ${touch}`)).toEqual([]);
    }
  });
});

describe("the check itself", () => {
  const wrap = (inner: string): string => `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50" font-family="'Benchleaf Label'">${inner}</svg>`;
  const word = (name: string, x: number): string => `<text class="label" data-label="${name}" x="${x}" y="20" font-size="3">card</text>`;
  it("sees a label on another label", async () => expect(await findTouches(wrap(word("a", 10) + word("b", 12)))).toHaveLength(1));
  it("sees a label on a foreign line and passes its own", async () => {
    const line = (owner: string): string => `<path class="line-edge" d="M0 19L90 19" stroke="#000"${owner}/>`;
    expect(await findTouches(wrap(word("a", 10) + line("")))).toHaveLength(1);
    expect(await findTouches(wrap(word("a", 10) + line(' data-owner="a"')))).toEqual([]);
  });
  it("passes labels that stand apart", async () => expect(await findTouches(wrap(word("a", 10) + word("b", 30)))).toEqual([]));
});

describe("the table of advances", () => {
  it("measures labels as the browser sets them, to 2 %", async () => {
    const samples = ["247.5", "9\u00a03\u20444", "13\u204416", "1\u00a015\u204416", "measure from this edge", "stub 12 right base: 332.5", "mountain fold: ridge towards you", "hinge cloth (E)", "diameter 5.5 mm", "Spine strip"];
    for (const weight of [400, 600] as const) {
      const measured = await page.evaluate((texts, bold) => {
        document.body.innerHTML = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="50mm" viewBox="0 0 400 50">${texts.map((text) =>
          `<text y="20" font-size="10" font-weight="${bold}" font-family="'Benchleaf Label'">${text.replace(/(?:(?<=\d)\u00a0)?\d+\u2044\d+/, (run) => `<tspan style="font-feature-settings:'frac';word-spacing:-0.08em">${run}</tspan>`)}</text>`).join("")}</svg>`;
        return [...document.querySelectorAll("text")].map((text) => text.getComputedTextLength());
      }, samples, weight);
      samples.forEach((text, index) => expect(Math.abs(measureText(text, 10, weight) - measured[index]!) / measured[index]!, `${text} ${weight}`).toBeLessThan(0.02));
    }
  });
});
