// Small grey images of PDF pages, drawn by pdf.js in the browser that prints, so that nothing else has to be installed.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { PNG } from "pngjs";
import type { Browser, Page } from "puppeteer";

/** Pixels across a page: lines of text can be told apart, letters just so. */
const width = 400;
/** Steps of grey that are kept; fewer make smaller files. */
const greys = 16;

/** What the page in the browser offers after `openReader`. */
interface Reader {
  draw(base64: string, page: number, width: number): Promise<string>;
}

/** A tab with pdf.js loaded into it. */
export async function openReader(browser: Browser): Promise<Page> {
  const require = createRequire(import.meta.url);
  const [reader, worker] = await Promise.all(["pdf", "pdf.worker"].map((name) => readFile(require.resolve(`pdfjs-dist/build/${name}.min.mjs`), "utf8")));
  const tab = await browser.newPage();
  await tab.evaluate(program(reader!, worker!));
  return tab;
}

/** Sent as text: a test runner would write an import() over. pdf.js draws without a worker of its own, which a page without an address may not start. */
function program(reader: string, worker: string): string {
  return `(async () => {
    const load = (source) => import(URL.createObjectURL(new Blob([source], { type: "text/javascript" })));
    globalThis.pdfjsWorker = await load(${JSON.stringify(worker)});
    const { getDocument } = await load(${JSON.stringify(reader)});
    globalThis.reader = {
      draw: async (base64, number, across) => {
        const pdf = await getDocument({ data: Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)), isEvalSupported: false }).promise;
        const page = await pdf.getPage(number);
        const viewport = page.getViewport({ scale: across / page.getViewport({ scale: 1 }).width });
        const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(viewport.width), height: Math.round(viewport.height) });
        await page.render({ canvasContext: canvas.getContext("2d"), viewport }).promise;
        await pdf.destroy();
        return canvas.toDataURL("image/png").slice("data:image/png;base64,".length);
      },
    };
  })()`;
}

/** The page of a PDF, numbered from 1, as a small grey image. */
export async function drawPage(reader: Page, pdf: string, page: number): Promise<PNG> {
  const base64 = (await readFile(pdf)).toString("base64");
  const drawn = await reader.evaluate((...given) => (globalThis as unknown as { reader: Reader }).reader.draw(...given), base64, page, width);
  return inGreys(PNG.sync.read(Buffer.from(drawn, "base64")));
}

/** As a file of few bytes. */
export function packed(image: PNG): Buffer {
  return PNG.sync.write(image, { colorType: 0, deflateLevel: 9 });
}

function inGreys(image: PNG): PNG {
  const { data } = image;
  for (let at = 0; at < data.length; at += 4) {
    const grey = (data[at]! * 0.2126 + data[at + 1]! * 0.7152 + data[at + 2]! * 0.0722) / 255;
    const kept = Math.round((Math.round(grey * (greys - 1)) / (greys - 1)) * 255);
    data.fill(kept, at, at + 3);
    data[at + 3] = 255;
  }
  return image;
}
