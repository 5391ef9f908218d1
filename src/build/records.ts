// Records of what a build wrote and from what, so that the next one makes only what has changed. They only say what may be left as it is: nothing that is written depends on them.
import { mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import type { PrintJob, PrintResult } from "../6-print/types.ts";
import type { ProjectFolder } from "./content.ts";
import { digestOf, digestOfFile } from "./digest.ts";
import type { ProjectOutcome } from "./outcome.ts";
import type { ProgramDigests } from "./program-digest.ts";

/** Files below the output folder with their fingerprints. */
export type FileDigests = Readonly<Record<string, string>>;

/** One print-out and what it was printed from. */
export interface PrintRecord {
  /** Path below the output folder. */
  readonly pdf: string;
  /** Of the page, all that it loaded, what was asked of the printing, and the browser. */
  readonly key: string;
  /** The files that the page loaded, below the output folder. */
  readonly loaded: readonly string[];
  /** Of the PDF. */
  readonly digest: string;
  readonly pages: number;
}

/** One project as it was built. */
export interface ProjectRecord {
  /** Of the program and everything in the project's folder; empty when not everything could be printed. */
  readonly key: string;
  /** The browser that printed; null when only pages were built. */
  readonly browser: string | null;
  readonly outcome: ProjectOutcome;
  readonly files: FileDigests;
  readonly prints: readonly PrintRecord[];
}

/** What stands beside the projects: the list of books, style sheets and fonts. */
export interface SiteRecord {
  readonly key: string;
  readonly files: FileDigests;
}

/** Below the output folder; hidden, so that nobody takes it for a book. */
const folderName = ".benchleaf";
const siteFile = "site.json";
const projectFile = (name: string): string => `projects/${name}.json`;

/** The record of a project, or of a file of the site; null when there is none that can be read. */
export async function readProjectRecord(output: string, name: string): Promise<ProjectRecord | null> {
  return (await readRecord(output, projectFile(name))) as ProjectRecord | null;
}

/** The record of what stands beside the projects. */
export async function readSiteRecord(output: string): Promise<SiteRecord | null> {
  return (await readRecord(output, siteFile)) as SiteRecord | null;
}

/** Replaces a project's record. */
export function writeProjectRecord(output: string, record: ProjectRecord): Promise<void> {
  return writeRecord(output, projectFile(record.outcome.name), record);
}

/** Replaces the record of what stands beside the projects. */
export function writeSiteRecord(output: string, record: SiteRecord): Promise<void> {
  return writeRecord(output, siteFile, record);
}

/** Removes the records of projects that are not there any more. */
export async function removeOldRecords(output: string, names: ReadonlySet<string>): Promise<void> {
  const folder = path.join(output, folderName, "projects");
  for (const file of await readdir(folder).catch(() => [])) if (!names.has(file.replace(/\.json$/, ""))) await rm(path.join(folder, file), { force: true });
}

/** What a project is made from: the program, and name and bytes of everything in the project's folder. */
export async function projectKey(program: ProgramDigests, { folder, source }: ProjectFolder): Promise<string> {
  if (!source) return "";
  const files = [...source.files].sort();
  const bytes = await Promise.all(files.map((file) => readFile(path.join(folder, file))));
  return digestOf([program.whole, source.file, ...files.flatMap((file, index) => [file, bytes[index]!])]);
}

/** What a print-out is made from. */
export async function printKey(job: PrintJob, loaded: readonly string[], printing: { readonly output: string; readonly browser: string | null; readonly program: ProgramDigests }): Promise<string> {
  const { output, browser, program } = printing;
  const asked = { ...job, html: relativeTo(output, job.html), pdf: relativeTo(output, job.pdf) };
  const files = [asked.html, ...loaded];
  const digests = await Promise.all(files.map(async (file) => `${file} ${await digestOfFile(path.join(output, file))}`));
  // Exact lengths hold whole numbers of any size, which JSON does not know.
  const words = JSON.stringify(asked, (_, value: unknown) => (typeof value === "bigint" ? `${value}n` : value));
  return digestOf([program.printing, browser ?? "", words, ...digests]);
}

/** Fingerprints of files below the output folder. */
export async function digestsOf(output: string, files: readonly string[]): Promise<FileDigests> {
  return Object.fromEntries(await Promise.all(files.map(async (file) => [file, (await digestOfFile(path.join(output, file))) ?? ""] as const)));
}

/** Whether all files are there and as they were written. */
export async function areUntouched(output: string, files: FileDigests): Promise<boolean> {
  const same = await Promise.all(Object.entries(files).map(async ([file, digest]) => (await digestOfFile(path.join(output, file))) === digest));
  return same.every(Boolean);
}

/** The record of a print-out that was just made. */
export async function recordPrint({ job, pages, loaded }: PrintResult, printing: Parameters<typeof printKey>[2]): Promise<PrintRecord> {
  const digest = (await digestOfFile(job.pdf)) ?? "";
  return { pdf: relativeTo(printing.output, job.pdf), key: await printKey(job, loaded, printing), loaded, digest, pages };
}

/** A path below the output folder, with forward slashes. */
export function relativeTo(output: string, file: string): string {
  return path.relative(output, file).split(path.sep).join("/");
}

async function readRecord(output: string, file: string): Promise<unknown> {
  try {
    return JSON.parse(await readFile(path.join(output, folderName, file), "utf8"));
  } catch {
    // Missing or spoilt: everything is made anew.
    return null;
  }
}

async function writeRecord(output: string, file: string, record: unknown): Promise<void> {
  const target = path.join(output, folderName, file);
  await mkdir(path.dirname(target), { recursive: true });
  await writeFile(`${target}.unfinished`, `${JSON.stringify(record)}\n`);
  await rename(`${target}.unfinished`, target);
}
