// Renders booklets into a folder of their own, for tests that look at the written pages.
import { mkdtemp, readFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { register } from "tsx/esm/api";
import { renderPages } from "../../src/5-pages/index.ts";
import type { PagesTask, RenderedPages } from "../../src/5-pages/types.ts";

// Eleventy loads its configuration by itself, past the test runner: the sources must be readable for plain Node too.
register();

export interface RenderedSite extends RenderedPages {
  readonly folder: string;
  read(file: string): Promise<string>;
}

/** Renders into a new folder below the system's temporary one. */
export async function renderSite(task: Omit<PagesTask, "output">): Promise<RenderedSite> {
  const folder = await mkdtemp(path.join(os.tmpdir(), "benchleaf-pages-"));
  const rendered = await renderPages({ ...task, output: folder });
  return { ...rendered, folder, read: (file) => readFile(path.join(folder, file), "utf8") };
}
