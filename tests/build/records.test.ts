// Everything that can change a result is in the key of its record.
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { expect, test } from "vitest";
import { readContent } from "../../src/build/content.ts";
import { digestOf } from "../../src/build/digest.ts";
import { printingRooms, readProgramDigests } from "../../src/build/program-digest.ts";
import { printKey, projectKey } from "../../src/build/records.ts";
import type { PrintJob } from "../../src/6-print/types.ts";
import { loadedWith, parseSource, sourceFiles } from "../house/source-file.ts";

const program = { whole: "1", printing: "1" };

test("where one part ends and the next begins counts", () => {
  expect(digestOf(["ab", "c"])).not.toBe(digestOf(["a", "bc"]));
  expect(digestOf(["a", ""])).not.toBe(digestOf(["", "a"]));
  expect(digestOf([new TextEncoder().encode("ab")])).toBe(digestOf(["ab"]));
});

test("a project's key changes with any name and any byte in its folder and with the program, and with nothing else", async () => {
  const content = await mkdtemp(path.join(os.tmpdir(), "benchleaf-records-"));
  const place = (file: string): string => path.join(content, "album", file);
  await mkdir(place("prose"), { recursive: true });
  const keyOf = async (given = program): Promise<string> => projectKey(given, (await readContent(content))[0]!);
  const keys: string[] = [];
  for (const [file, text] of [["project.yaml", "benchleaf: 1"], ["project.yaml", "benchleaf: 1 "], ["prose/closing.md", ""], ["prose/closing.md", "Well done."], ["a.png", ""], ["b.png", ""], ["b.png", "1"]] as const) {
    await writeFile(place(file), text);
    keys.push(await keyOf());
  }
  keys.push(await keyOf({ ...program, whole: "2" }));
  expect(new Set(keys).size).toBe(keys.length);
  expect(await keyOf()).toBe(keys.at(-2));
  expect(await keyOf({ ...program, printing: "2" })).toBe(keys.at(-2));
});

test("a print-out's key changes with the page, each file it loads, what is asked, the browser and the printing code, and not with the folder", async () => {
  const keysIn = async (output: string): Promise<readonly string[]> => {
    await mkdir(path.join(output, "album"));
    const write = (file: string, text: string): Promise<void> => writeFile(path.join(output, file), text);
    await write("album/a.html", "<p>");
    await write("style.css", "p {}");
    const job: PrintJob = { html: path.join(output, "album/a.html"), pdf: path.join(output, "album/a.pdf"), title: "A", author: "B", language: "en", purpose: "document", fold: null };
    const printing = { output, browser: "shipped 143", program };
    const keys = [
      await printKey(job, ["style.css"], printing),
      await printKey(job, ["style.css", "gone.css"], printing),
      await printKey({ ...job, title: "C" }, ["style.css"], printing),
      await printKey({ ...job, purpose: "template" }, ["style.css"], printing),
      await printKey({ ...job, ...{ thickness: { above: 1n, below: 10n } } }, ["style.css"], printing),
      await printKey({ ...job, ...{ thickness: { above: 2n, below: 10n } } }, ["style.css"], printing),
      await printKey(job, ["style.css"], { ...printing, browser: "shipped 144" }),
      await printKey(job, ["style.css"], { ...printing, program: { ...program, printing: "2" } }),
    ];
    await write("style.css", "p { color: black }");
    keys.push(await printKey(job, ["style.css"], printing));
    await write("album/a.html", "<p>b");
    keys.push(await printKey(job, ["style.css"], printing));
    return keys;
  };
  const folders = await Promise.all(["one-", "other-"].map((name) => mkdtemp(path.join(os.tmpdir(), `benchleaf-${name}`))));
  const keys = await keysIn(folders[0]!);
  expect(new Set(keys).size).toBe(keys.length);
  expect(await keysIn(folders[1]!)).toEqual(keys);
});

test("the rooms of printing are all that phase 6 loads of ours", async () => {
  const rooms = new Set<string>();
  const visit = (room: string): void => {
    if (rooms.has(room)) return;
    rooms.add(room);
    for (const target of sourceFiles(`src/${room}/`).flatMap(loadedWith)) if (target.startsWith("src/")) visit(target.split("/")[1]!);
  };
  visit("6-print");
  expect([...rooms].sort()).toEqual([...printingRooms].sort());
  expect(loadedWith(parseSource("src/a.ts", 'import "./b.ts";'))).toEqual(["src/b.ts"]);
});

test("the program's own fingerprints are there, differ, and are the same when read again", async () => {
  const read = await readProgramDigests();
  expect(read.whole).toMatch(/^[0-9a-f]{64}$/);
  expect(read.whole).not.toBe(read.printing);
  expect(await readProgramDigests()).toEqual(read);
});
