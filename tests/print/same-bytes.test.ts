// The same page gives the same bytes, whatever the day, the folder, the language and the number of tabs.
import { execFile } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { PDFDocument, decodePDFRawStream, PDFRawStream } from "pdf-lib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { makeSampleFolder } from "./sample-folder.ts";

const folders: string[] = [];
let prints: Buffer[] = [];

/** Prints in a new process, so with a new browser, and returns every PDF it made. */
async function printIn(folder: string, tabs: number, environment: Readonly<Record<string, string>>): Promise<Buffer[]> {
  const program = fileURLToPath(new URL("print-samples.ts", import.meta.url));
  await promisify(execFile)(process.execPath, ["--import", "tsx", program, folder, String(tabs)], { env: { ...process.env, ...environment } });
  return Promise.all(Array.from({ length: tabs }, (_, index) => readFile(`${folder}/project/mixed-${index + 1}.pdf`)));
}

beforeAll(async () => {
  folders.push(await makeSampleFolder("leaf"), await makeSampleFolder("another place, with ümlaut"));
  prints = [
    ...(await printIn(folders[0]!, 1, { TZ: "UTC", LANG: "C.UTF-8", LC_ALL: "C.UTF-8" })),
    ...(await printIn(folders[1]!, 3, { TZ: "Asia/Tokyo", LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8", LANGUAGE: "de" })),
    ...(await printIn(folders[0]!, 2, { TZ: "America/St_Johns", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8" })),
  ];
});

afterAll(async () => {
  for (const folder of folders) await rm(folder, { recursive: true });
});

test("three starts of the browser, with one to three tabs, in two folders, time zones and languages, give the same bytes", () => {
  expect(prints).toHaveLength(6);
  for (const print of prints.slice(1)) expect(print.equals(prints[0]!)).toBe(true);
});

test("a PDF holds no path of this computer and no date", async () => {
  const document = await PDFDocument.load(prints[0]!, { updateMetadata: false });
  const text = document.context.enumerateIndirectObjects().map(([, object]) =>
    object instanceof PDFRawStream && !object.dict.toString().includes("FontFile") ? object.dict.toString() + Buffer.from(decodePDFRawStream(object).decode()).toString("latin1") : object.toString(),
  ).join("\n");
  expect(text).toContain("/StructTreeRoot");
  expect(text).not.toMatch(/file:|\/tmp\/|leaf-|D:20\d\d/);
  expect(text).not.toMatch(/CreationDate|ModDate|CreateDate|ModifyDate/);
});
