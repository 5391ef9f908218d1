// Phase 5: booklets to pages. Eleventy gets the results as data and writes the HTML; plan.json and drawings go beside it.
import path from "node:path";
import { copyAssets } from "./assets.ts";
import { makeDocuments, printJobs } from "./documents.ts";
import { openSite } from "./site.ts";
import type { PagesTask, RenderedPages } from "./types.ts";
import { copyPictures, removeLeftovers, writeResults } from "./write-results.ts";

/**
 * Renders every page of the booklets given and the list of all projects; other projects' files are left alone.
 * Call with the package's folder as working folder.
 * @throws Error when a page cannot be rendered, which is a mistake of ours.
 */
export async function renderPages({ booklets, listed, output, withPrints }: PagesTask): Promise<RenderedPages> {
  const documents = makeDocuments(booklets, { withPrints });
  const [, pages] = await openSite({ output, data: () => ({ ...documents, listed }) }).write();
  const written = pages.map((page) => path.relative(output, page.outputPath).split(path.sep).join("/"));
  const assets = await copyAssets(output);
  const jobs = withPrints ? printJobs(documents, output) : [];
  const files = [...written, ...(await writeResults(booklets, output)), ...(await copyPictures(booklets, output))];
  await removeLeftovers(booklets, output, new Set([...files, ...jobs.map((job) => path.relative(output, job.pdf).split(path.sep).join("/"))]));
  return { files: files.sort(), assets, jobs };
}
