// Every word of every page, on screen and in print, words in drawings included: at least 7 : 1 against what lies behind it (WCAG 2.2, 1.4.6).
import path from "node:path";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startBrowser } from "../../src/6-print/browser.ts";
import { renderDemoPages } from "../fixtures/demo-pages.ts";

let browser: Browser;
let folder: string;
let files: readonly string[];

beforeAll(async () => {
  ({ folder, files } = await renderDemoPages());
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  browser = started.browser;
});

afterAll(() => browser?.close());

/**
 * Runs in the page: the words with too little contrast, and how many were looked at. Behind a word of the page lies the nearest ground of an element round it;
 * behind a word of a drawing the last area drawn before it, looked for at points over its whole box, hatching included. Drawings are the same on
 * screen and in print, and are looked at in print.
 */
const weakWords = `(() => {
  const channels = (colour) => (colour.match(/[\\d.]+/g) ?? []).map(Number);
  const luminance = (colour) => {
    const [r, g, b] = channels(colour).map((value) => value / 255).map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const ratio = (one, other) => {
    const [a, b] = [luminance(one), luminance(other)];
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  };
  const isClear = (colour) => colour === "none" || colour === "transparent" || channels(colour)[3] === 0;
  const groundOf = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const colour = getComputedStyle(at).backgroundColor;
      if (!isClear(colour)) return colour;
    }
    return "rgb(255, 255, 255)";
  };
  const known = new Map();
  const shapesOf = (drawing) => {
    if (!known.has(drawing)) known.set(drawing, [...drawing.querySelectorAll("path, circle, rect, polygon")].map((shape) => ({ shape, box: shape.getBoundingClientRect() })));
    return known.get(drawing);
  };
  const groundsInDrawing = (text) => {
    const around = text.getBoundingClientRect();
    const drawing = shapesOf(text.ownerSVGElement.ownerSVGElement ?? text.ownerSVGElement).filter(({ shape, box }) =>
      box.left <= around.right && box.right >= around.left && box.top <= around.bottom && box.bottom >= around.top && shape.compareDocumentPosition(text) & Node.DOCUMENT_POSITION_FOLLOWING);
    const box = text.getBBox();
    const outward = text.getScreenCTM();
    const grounds = new Set();
    const near = drawing.map(({ shape }) => ({ shape, style: getComputedStyle(shape), inward: shape.getScreenCTM().inverse() })).reverse();
    for (let step = 0; step < 27; step += 1) {
      const at = new DOMPoint(box.x + (box.width * (step % 9 + 0.5)) / 9, box.y + (box.height * (Math.floor(step / 9) + 1)) / 4).matrixTransform(outward);
      let ground = groundOf(text.ownerSVGElement);
      for (const { shape, style, inward } of near) {
        const there = at.matrixTransform(inward);
        if (!isClear(style.fill) && shape.isPointInFill(there)) { ground = style.fill; break; }
        if (shape.classList.contains("hatching") && shape.isPointInStroke(there)) { ground = style.stroke; break; }
      }
      grounds.add(ground);
    }
    return [...grounds];
  };
  const weak = [];
  let count = 0;
  const look = (words, ink, grounds) => {
    count += 1;
    const worst = Math.min(...grounds.map((ground) => ratio(ink, ground)));
    if (worst < 7) weak.push(JSON.stringify(words.trim().slice(0, 40)) + ": " + worst.toFixed(2) + " (" + ink + " on " + grounds.join(", ") + ")");
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const owner = node.parentElement;
    if (node.data.trim() === "" || owner.closest("svg, script, style, .for-reader, .skip") || owner.getClientRects().length === 0) continue;
    look(node.data, getComputedStyle(owner).color, [groundOf(owner)]);
    for (const part of ["::before", "::after", "::marker"]) {
      const style = getComputedStyle(owner, part);
      if (part === "::marker" ? getComputedStyle(owner).display === "list-item" : /^"[^"]/.test(style.content)) look(part + " of " + node.data, style.color, [groundOf(owner)]);
    }
  }
  for (const text of matchMedia("print").matches ? document.querySelectorAll("svg text") : []) if (text.getClientRects().length > 0) look(text.textContent, getComputedStyle(text).fill, groundsInDrawing(text));
  return { weak, count };
})()`;

interface Look {
  readonly weak: readonly string[];
  readonly count: number;
}

async function lookAt(file: string, medium: "screen" | "print", change?: (page: Page) => Promise<unknown>): Promise<Look> {
  const page = await browser.newPage();
  try {
    await page.setViewport({ width: 1000, height: 900 });
    await page.emulateMediaType(medium);
    await page.goto(`file://${path.join(folder, file)}`, { waitUntil: "load" });
    await change?.(page);
    return (await page.evaluate(weakWords)) as Look;
  } finally {
    await page.close();
  }
}

for (const medium of ["screen", "print"] as const) {
  test(`no word has less than 7 : 1 on any ${medium === "screen" ? "page for the screen" : "page for print"}`, async () => {
    const weak: string[] = [];
    let count = 0;
    for (const file of files.filter((name) => name.endsWith("index.html") === (medium === "screen"))) {
      const look = await lookAt(file, medium);
      weak.push(...look.weak.map((words) => `${file}: ${words}`));
      count += look.count;
    }
    expect(weak).toEqual([]);
    expect(count).toBeGreaterThan(10_000);
  });
}

test("a grey word on white, a word on a dark area of a drawing and a word on hatching are found", async () => {
  const { weak } = await lookAt("test-album/handout-a4.html", "print", (page) => page.evaluate(`
    document.querySelector("h1").style.color = "#777";
    document.querySelector("main").insertAdjacentHTML("beforeend", '<svg width="300" height="100" viewBox="0 0 300 100"><path d="M0 0H100V100H0Z" fill="#666"/><text x="10" y="50" font-size="10">on grey</text>' +
      '<path class="hatching" d="M110 46H200M110 48H200M110 50H200" stroke="#555" stroke-width="1"/><text x="110" y="50" font-size="10">on hatching</text><text x="210" y="50" font-size="10">on white</text></svg>')`));
  expect(weak.map((words) => words.split(":")[0])).toEqual(['"Album with eight stubs & one “quoted” <t"', '"on grey"', '"on hatching"']);
});
