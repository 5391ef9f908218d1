// Pages in a browser: accessibility rules, narrow windows, overlapping text, the keyboard, and drawings at true size in print.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import type { Browser, Page } from "puppeteer";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startBrowser } from "../../src/6-print/browser.ts";
import { renderDemoPages } from "../fixtures/demo-pages.ts";

const axeSource = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

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

async function onPage<Result>(file: string, width: number, look: (page: Page) => Promise<Result>): Promise<Result> {
  const page = await browser.newPage();
  try {
    await page.setViewport({ width, height: 900 });
    await page.goto(`file://${path.join(folder, file)}`, { waitUntil: "load" });
    await page.evaluate("document.fonts.ready.then(() => true)");
    return await look(page);
  } finally {
    await page.close();
  }
}

/** Every page with its breaches; an empty list is the wish. */
async function breaches(width: number, look: (page: Page) => Promise<readonly string[]>, among: readonly string[] = files): Promise<readonly string[]> {
  const found: string[][] = among.map(() => []);
  let next = 0;
  const work = async (): Promise<void> => {
    for (let index = next++; index < among.length; index = next++) {
      const file = among[index]!;
      found[index] = (await onPage(file, width, look)).map((words) => `${file} at ${width} px: ${words}`);
    }
  };
  await Promise.all([work(), work()]);
  return found.flat();
}

for (const width of [360, 1280]) {
  test(`no page breaks an accessibility rule of WCAG 2.2 AA at ${width} px, and contrast is at least 7 : 1`, async () => {
    const found = await breaches(width, async (page) => {
      await page.evaluate(axeSource);
      return (await page.evaluate(`axe.run(document, {
        runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
        resultTypes: ["violations"],
        rules: { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } },
      }).then((result) => result.violations.flatMap((rule) => rule.nodes.map((node) => rule.id + ": " + node.target.join(" ") + ": " + (node.failureSummary ?? "").split("\\n")[1])))`)) as string[];
    // Print-outs are for paper: only the pages for readers are looked at on a phone.
    }, width > 500 ? files : files.filter((file) => file.endsWith("index.html")));
    expect(found).toEqual([]);
  });
}

/** Pairs of lines of text that lie on each other. Lines are taken at three fifths of their height: ascenders of one may enter the leading of another. */
const overlappingText = `(() => {
  const lines = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const owner = node.parentElement;
    if (node.data.trim() === "" || owner.closest("svg, script, style, .for-reader, .skip, thead")) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width < 1 || box.height < 1) continue;
      lines.push({ left: box.left + 0.5, right: box.right - 0.5, top: box.top + box.height * 0.2, bottom: box.bottom - box.height * 0.2, words: node.data.trim().slice(0, 40) });
    }
  }
  lines.sort((a, b) => a.top - b.top);
  const found = [];
  lines.forEach((line, index) => {
    for (let next = index + 1; next < lines.length && lines[next].top < line.bottom; next += 1) {
      const other = lines[next];
      if (other.left < line.right && line.left < other.right) found.push(JSON.stringify(line.words) + " lies on " + JSON.stringify(other.words));
    }
  });
  return found;
})()`;

test("no text lies on other text, and no page scrolls sideways in a narrow window", async () => {
  expect(await breaches(1280, async (page) => {
    const found = (await page.evaluate(overlappingText)) as string[];
    for (const width of [700, 320]) {
      await page.setViewport({ width, height: 900 });
      found.push(...((await page.evaluate(overlappingText)) as string[]).map((words) => `in a window of ${width} px ${words}`));
    }
    const wide = (await page.evaluate("document.documentElement.scrollWidth")) as number;
    return wide > 320 ? [...found, `${wide} px wide in a window of 320 px`] : found;
  })).toEqual([]);
});

test("the rule finds text that lies on other text", async () => {
  const found = await onPage("index.html", 700, async (page) => {
    await page.evaluate(`document.querySelector("h2").style.marginBottom = "-1.2em"`);
    return (await page.evaluate(overlappingText)) as string[];
  });
  expect(found.length).toBeGreaterThan(0);
});

test("the first stop of the keyboard leads past the contents to the instructions", async () => {
  await onPage("test-album/index.html", 1280, async (page) => {
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.textContent")).toBe("Skip to the instructions");
    const box = (await page.evaluate("(({ left, top }) => ({ left, top }))(document.activeElement.getBoundingClientRect())")) as { left: number; top: number };
    expect(box.left).toBeGreaterThanOrEqual(0);
    await page.keyboard.press("Enter");
    expect(await page.evaluate("document.activeElement.id")).toBe("content");
  });
});

test("the other unit is hidden and shown without any script", async () => {
  await onPage("test-album/index.html", 1280, async (page) => {
    const shown = `getComputedStyle(document.querySelector(".behind-mm")).display !== "none"`;
    expect(await page.evaluate(shown)).toBe(true);
    await page.click("#other-unit");
    expect(await page.evaluate(shown)).toBe(false);
  });
});

test("in print every drawing of a handout has its true size, and nothing is wider than the paper's text", async () => {
  for (const file of files.filter((name) => name.includes("/handout"))) {
    const textWidth = file === "test-album/handout-a4.html" || file === "harbour-album/handout.html" ? 174 : 179.9;
    const page = await browser.newPage();
    await page.setViewport({ width: Math.floor((textWidth * 96) / 25.4), height: 1000 });
    await page.emulateMediaType("print");
    await page.goto(`file://${path.join(folder, file)}`, { waitUntil: "load" });
    const wrong = (await page.evaluate(`[...document.querySelectorAll(".drawing")].flatMap((drawing) => {
      const box = drawing.querySelector("svg").getBoundingClientRect();
      const wanted = ["width", "height"].map((side) => parseFloat(drawing.style.getPropertyValue("--drawing-" + side)) * 96 / 25.4);
      return Math.abs(box.width - wanted[0]) > 0.5 || Math.abs(box.height - wanted[1]) > 0.5 ? [drawing.querySelector("title").textContent + ": " + [box.width, box.height, ...wanted].join(" ")] : [];
    })`)) as string[];
    expect(wrong, file).toEqual([]);
    expect(await page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"), file).toBe(0);
    await page.close();
  }
});
