// What stands beside the pages: plan.json, the templates as files for cutters and the author's pictures.
import { copyFile, mkdir, readdir, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { buyingCsv, buyingFile } from "./buying-csv.ts";
import { planJson } from "./plan-json.ts";
import { projectPictures } from "./project-pictures.ts";
import type { Booklet } from "./types.ts";

/** Writes `plan.json`, `buying.csv` and the templates, as SVG and as DXF, of each booklet. Returns the paths below the output folder. */
export async function writeResults(booklets: readonly Booklet[], output: string): Promise<readonly string[]> {
  const files = booklets.flatMap((booklet) => [
    { file: `${booklet.definition.project}/plan.json`, text: `${JSON.stringify(planJson(booklet), null, 2)}\n` },
    ...tables(booklet),
    ...booklet.drawings.templates.flatMap(({ id, svg, dxf }) => [
      { file: `${booklet.definition.project}/templates/${id}.svg`, text: svgFile(svg) },
      { file: `${booklet.definition.project}/templates/${id}.dxf`, text: dxf },
    ]),
  ]);
  for (const { file, text } of files) {
    await mkdir(path.dirname(path.join(output, file)), { recursive: true });
    await writeFile(path.join(output, file), text);
  }
  return files.map(({ file }) => file);
}

function tables(booklet: Booklet): readonly { readonly file: string; readonly text: string }[] {
  const text = buyingCsv(booklet);
  return text === null ? [] : [{ file: `${booklet.definition.project}/${buyingFile}`, text }];
}

/** Copies the pictures that the booklets show. Returns the paths below the output folder. */
export async function copyPictures(booklets: readonly Booklet[], output: string): Promise<readonly string[]> {
  const copies = booklets.flatMap((booklet) =>
    projectPictures(booklet).map((picture) => ({ from: path.join(booklet.pictures, picture), file: `${booklet.definition.project}/${picture}` })),
  );
  for (const { from, file } of copies) {
    await mkdir(path.dirname(path.join(output, file)), { recursive: true });
    await copyFile(from, path.join(output, file));
  }
  return copies.map(({ file }) => file);
}

/**
 * Removes what an earlier build left in the folders of these booklets and this one neither wrote nor is going to print.
 */
export async function removeLeftovers(booklets: readonly Booklet[], output: string, wanted: ReadonlySet<string>): Promise<void> {
  for (const { definition } of booklets) {
    const found = await readdir(path.join(output, definition.project), { recursive: true, withFileTypes: true });
    for (const entry of found.filter((candidate) => !candidate.isDirectory())) {
      const file = path.join(entry.parentPath, entry.name);
      if (!wanted.has(path.relative(output, file).split(path.sep).join("/"))) await rm(file);
    }
  }
}

/** An SVG file of its own needs the namespace that inline SVG does without, and a size for cutters: 1 unit = 1 mm. */
function svgFile(svg: string): string {
  const withNamespace = /<svg[^>]*\sxmlns=/.test(svg) ? svg : svg.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${withNamespace}\n`;
}
