// Lays out sample pages as a build does: fonts and styles in `assets`, pages in a project's folder.
import { cp, mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { fontFiles } from "../../src/catalogue/font-files.ts";
import type { PrintJob } from "../../src/6-print/types.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** A new output folder with the sample pages in `project/`; `name` becomes part of its path. */
export async function makeSampleFolder(name: string): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), `${name}-`));
  await mkdir(path.join(folder, "assets/fonts"), { recursive: true });
  for (const font of fontFiles) await cp(path.join(root, "node_modules", font.package), path.join(folder, font.dist));
  for (const style of ["fonts.css", "print-guard.css"]) await cp(path.join(root, "templates/assets", style), path.join(folder, "assets", style));
  await cp(path.join(root, "tests/print/samples"), path.join(folder, "project"), { recursive: true });
  await writeFile(path.join(folder, "index.html"), "<!doctype html><title>Projects</title>");
  return folder;
}

/** A job for one of the sample pages. */
export function sampleJob(folder: string, page: string, purpose: PrintJob["purpose"] = "document"): PrintJob {
  return {
    html: path.join(folder, `project/${page}.html`),
    pdf: path.join(folder, `project/${page}.pdf`),
    title: "Mixed sheets & more",
    author: "Ångström Invented",
    language: "en",
    purpose,
    fold: null,
  };
}
