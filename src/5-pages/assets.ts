// Style sheets, fonts and the icon, which all pages share.
import { mkdir, readdir, readFile, rename, writeFile } from "node:fs/promises";
import path from "node:path";
import { fontFiles } from "../catalogue/font-files.ts";

/** Where our own assets lie, below the package's folder. */
export const assetFolder = "templates/assets";

/**
 * Puts the assets into the output. What is there already is left alone, so that a page that is being printed never reads half a font.
 * Call with the package's folder as working folder. Returns the paths below the output folder.
 */
export async function copyAssets(output: string): Promise<readonly string[]> {
  const own = (await readdir(assetFolder)).map((name) => ({ from: `${assetFolder}/${name}`, file: `assets/${name}` }));
  const all = [...own, ...fontFiles.map((font) => ({ from: `node_modules/${font.package}`, file: font.dist }))];
  for (const { from, file } of all) await copyChanged(from, path.join(output, file));
  return all.map(({ file }) => file);
}

async function copyChanged(from: string, to: string): Promise<void> {
  const [bytes, there] = await Promise.all([readFile(from), readFile(to).catch(() => null)]);
  if (there?.equals(bytes)) return;
  await mkdir(path.dirname(to), { recursive: true });
  await writeFile(`${to}.unfinished`, bytes);
  await rename(`${to}.unfinished`, to);
}
