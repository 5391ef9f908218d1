// The fingerprint of the program itself: whatever is built by other sources, packages or another Node.js is built anew.
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { digestOf } from "./digest.ts";

/** Of everything, and of what turns a page into a PDF. */
export interface ProgramDigests {
  readonly whole: string;
  readonly printing: string;
}

/** The rooms that printing is made of: its own and those it imports anything from that runs. A test keeps the list whole. */
export const printingRooms: readonly string[] = ["6-print", "catalogue", "units"];

const root = path.resolve(import.meta.dirname, "../..");

/** Read from the sources as they stand. */
export async function readProgramDigests(): Promise<ProgramDigests> {
  const [sources, templates, ...alone] = await Promise.all([
    filesBelow("src"),
    filesBelow("templates"),
    // The second list of packages is npm's own, of what is really installed.
    ...[".eleventy.js", "package-lock.json", "node_modules/.package-lock.json"].map(readPart),
  ]);
  const surroundings = [process.version, ...alone.flat()];
  const printing = sources.filter(([file]) => printingRooms.some((room) => file.startsWith(`src/${room}/`)));
  return { whole: digestOf([...surroundings, ...sources.flat(), ...templates.flat()]), printing: digestOf([...surroundings, ...printing.flat()]) };
}

type Part = readonly [file: string, bytes: Uint8Array];

async function filesBelow(folder: string): Promise<readonly Part[]> {
  const entries = await readdir(path.join(root, folder), { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"));
  return Promise.all(files.sort().map(readPart));
}

async function readPart(file: string): Promise<Part> {
  return [file, await readFile(path.join(root, file)).catch(() => new Uint8Array())];
}
