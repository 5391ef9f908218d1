// Prints pages in one tab of a running browser; the PDFs are as the browser made them.
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "puppeteer";
import { fillPages, stepWays } from "./fill-pages.ts";
import { firstLine } from "./first-line.ts";
import { hyphenatePage } from "./hyphenate.ts";
import { boxesCutOff, measureSteps, preparePage, setSteps } from "./page-script.ts";
import type { PageWords } from "./page-script.ts";
import { describeRefusals, refuseRequests } from "./page-requests.ts";

const loadMilliseconds = 60_000;
const printMilliseconds = 180_000;

/** The PDF as the browser made it, with what it cannot say itself. */
export interface TabPrint {
  /** The files that the page loaded, below the output folder. */
  readonly loaded: readonly string[];
  readonly pdf: Uint8Array;
  readonly words: PageWords;
}

/** A tab that prints one page after the other: opening a new one for each page costs a fifth of the printing. */
export interface PrintTab {
  /** Prints the page. Throws, with the reasons in words, when it cannot be loaded whole or asks for what it may not have; the tab is then best closed. */
  print(html: string): Promise<TabPrint>;
  close(): Promise<void>;
}

/** Opens a tab whose pages may load files below `folder` and nothing else. */
export async function openTab(browser: Browser, folder: string): Promise<PrintTab> {
  const page = await browser.newPage();
  const requests = await refuseRequests(page, folder);
  return {
    print: async (html) => {
      requests.forget();
      // A refused page often fails in other ways too, and asks for more while printing: the refusals are looked at last and named first.
      const print = await loadAndPrint(page, html).catch((cause: unknown) => new Error(describeRefusals(requests) ?? firstLine(cause), { cause }));
      if (print instanceof Error) throw print;
      const refusals = describeRefusals(requests);
      if (refusals !== null) throw new Error(refusals);
      return { ...print, loaded: [...requests.loaded].toSorted() };
    },
    close: () => page.close().catch(() => undefined),
  };
}

async function loadAndPrint(page: Page, html: string): Promise<Omit<TabPrint, "loaded">> {
  // Pages for print hold no scripts; were there any, they could look at the clock.
  await page.setJavaScriptEnabled(false);
  await page.emulateMediaType("print");
  await page.goto(pathToFileURL(path.resolve(html)).href, { waitUntil: "load", timeout: loadMilliseconds });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const cutOff = await page.evaluate(boxesCutOff);
  if (cutOff.length > 0) throw new Error(`${cutOff.join(", ")}: does not hold what stands on it`);
  const words = await page.evaluate(preparePage);
  await layOut(page);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true, timeout: printMilliseconds });
  return { pdf, words };
}

/** Divides long words, and then, because every hyphen may change the height of a step, shares the steps out to pages. */
export async function layOut(page: Page): Promise<void> {
  await hyphenatePage(page);
  const measures = await page.evaluate(measureSteps, stepWays.map((way) => (way === "usual" ? 1 : way === "close" ? null : way)));
  if (measures) await page.evaluate(setSteps, fillPages(measures));
}
