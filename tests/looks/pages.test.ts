// The first pages of each binding's handout, and a sheet of templates, look as they did when somebody last looked at them.
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { PNG } from "pngjs";
import type { Page } from "puppeteer";
import { register } from "tsx/esm/api";
import { afterAll, beforeAll, expect, test } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { bindingIds } from "../../src/catalogue/bindings.ts";
import type { Booklet } from "../../src/5-pages/types.ts";
import { renderPages } from "../../src/5-pages/index.ts";
import { startBrowser } from "../../src/6-print/browser.ts";
import { printPages } from "../../src/6-print/index.ts";
import { looksSame, pairOf } from "./compare.ts";
import { drawPage, openReader, packed } from "./page-images.ts";

// Eleventy loads its configuration by itself, past the test runner: the sources must be readable for plain Node too.
register();

const root = path.resolve(import.meta.dirname, "../..");
const references = path.join(import.meta.dirname, "references");
/** Where changed pages are put; `scripts/accept-looks.ts` takes them from here. */
const changedFolder = path.join(root, ".cache/looks");
/** Page 1 is the title; 5 and 6 are most often the cut list and a step. */
const handoutPages = [1, 5, 6];

let folder = "";
let shown: readonly string[] = [];
let reader: Page;

/** The first demo of each binding, without its variants. */
async function demos(): Promise<readonly Booklet[]> {
  const computed: Booklet[] = [];
  for (const project of await readContent(path.join(root, "content"))) {
    const { booklets } = await computeProject(project, loadLinearSolver);
    if (booklets[0] && !computed.some(({ definition }) => definition.binding === booklets[0]!.definition.binding)) computed.push(booklets[0]);
  }
  return computed;
}

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), "benchleaf-looks-"));
  const booklets = await demos();
  expect(booklets.map(({ definition }) => definition.binding).sort()).toEqual([...bindingIds].sort());
  process.chdir(root);
  const { jobs } = await renderPages({ booklets, listed: [], output: folder, withPrints: true });
  const wanted = jobs.filter(({ pdf }) => /\/(?:handout|templates)[^/]*\.pdf$/.test(pdf) && (/\/handout/.test(pdf) || pdf.includes(booklets[0]!.definition.project)));
  const printed = await printPages(wanted, { tabs: 3, folder, onProgress: () => undefined });
  expect(printed.flatMap(({ failure }) => failure ?? [])).toEqual([]);
  shown = printed.map(({ job }) => job.pdf);
  const started = await startBrowser();
  if ("missing" in started) throw new Error(started.missing);
  reader = await openReader(started.browser);
  await rm(changedFolder, { recursive: true, force: true });
});

afterAll(async () => {
  await reader?.browser().close();
  if (folder) await rm(folder, { recursive: true });
});

/** Null when the page looks as before; else in words what to look at. */
async function changeOf(pdf: string, page: number): Promise<string | null> {
  const name = `${path.basename(path.dirname(pdf))}-${path.basename(pdf, ".pdf")}-${page}`;
  const after = await drawPage(reader, pdf, page);
  const reference = await readFile(path.join(references, `${name}.png`)).catch(() => null);
  const before = reference && PNG.sync.read(reference);
  if (before && looksSame(before, after)) return null;
  await mkdir(changedFolder, { recursive: true });
  await writeFile(path.join(changedFolder, `${name}.png`), packed(after));
  if (before) await writeFile(path.join(changedFolder, `${name}-before-after.png`), PNG.sync.write(pairOf(before, after)));
  return `${name}: ${before ? `looks different, see .cache/looks/${name}-before-after.png (before, after, difference)` : `has no reference, see .cache/looks/${name}.png`}`;
}

test("every page looks as it did; if you like the change, run: npx tsx scripts/accept-looks.ts", async () => {
  const changes: string[] = [];
  for (const pdf of shown) {
    for (const page of path.basename(pdf).startsWith("handout") ? handoutPages : [1]) {
      const change = await changeOf(pdf, page);
      if (change) changes.push(change);
    }
  }
  expect(shown.length).toBeGreaterThan(bindingIds.length);
  expect(changes).toEqual([]);
});
