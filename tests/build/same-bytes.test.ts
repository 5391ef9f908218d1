// A build gives the same bytes on another day, in another folder, language and time zone, with another start of the browser.
import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");
const day = 86_400_000;
const folders: string[] = [];
let builds: ReadonlyMap<string, Buffer>[] = [];

/** Loaded before everything else: all that asks this process for the time is told another one. */
const otherClock = (shift: number): string => `data:text/javascript,${encodeURIComponent(`
  const Real = Date;
  globalThis.Date = class extends Real {
    constructor(...given) { super(...(given.length > 0 ? given : [Real.now() + ${shift}])); }
    static now() { return Real.now() + ${shift}; }
  };`)}`;

/** Builds a small demo with a class, without its variant, in a process of its own, and returns every file that was written. */
async function buildIn(name: string, shift: number, environment: Readonly<Record<string, string>>): Promise<ReadonlyMap<string, Buffer>> {
  const folder = await mkdtemp(path.join(os.tmpdir(), name));
  folders.push(folder);
  const [content, output] = [path.join(folder, "content"), path.join(folder, "made")];
  await mkdir(content);
  await cp(path.join(root, "content/tide-tables"), path.join(content, "tables"), { recursive: true });
  const file = path.join(content, "tables/project.yaml");
  const text = await readFile(file, "utf8");
  await writeFile(file, text.slice(0, text.indexOf("\nvariants:")));
  const given = ["--import", "tsx", "--import", otherClock(shift), path.join(root, "src/cli.ts"), "build", "--content", content, "--output", output];
  await promisify(execFile)(process.execPath, given, { cwd: root, env: { ...process.env, ...environment } });
  const files = (await readdir(output, { recursive: true, withFileTypes: true })).filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  return new Map(await Promise.all(files.sort().map(async (each) => [path.relative(output, each), await readFile(each)] as const)));
}

beforeAll(async () => {
  builds = await Promise.all([
    buildIn("benchleaf-", 0, { TZ: "UTC", LANG: "C.UTF-8", LC_ALL: "C.UTF-8" }),
    buildIn("another place, with ümlaut-", 400 * day, { TZ: "Pacific/Kiritimati", LANG: "tr_TR.UTF-8", LC_ALL: "tr_TR.UTF-8", LANGUAGE: "tr" }),
  ]);
});

afterAll(async () => {
  for (const folder of folders) await rm(folder, { recursive: true });
});

test("all files of two builds are the same, byte for byte: pages, data, drawings, print-outs, records", () => {
  const [one, other] = builds as [ReadonlyMap<string, Buffer>, ReadonlyMap<string, Buffer>];
  expect([...other.keys()]).toEqual([...one.keys()]);
  expect([...one.keys()].filter((file) => file.endsWith(".pdf")).length).toBeGreaterThanOrEqual(4);
  for (const kind of [".html", ".json", ".svg", ".css", ".woff2"]) expect([...one.keys()].some((file) => file.endsWith(kind)), kind).toBe(true);
  expect([...one].filter(([file, bytes]) => !other.get(file)?.equals(bytes)).map(([file]) => file)).toEqual([]);
});

test("no file that can be read as text names a folder of this computer or the day", () => {
  const today = new Date().toISOString().slice(0, 10);
  for (const [file, bytes] of builds[0]!) {
    const text = bytes.toString("latin1");
    for (const word of [os.tmpdir(), root, today]) expect(text.includes(word), `${file}: ${word}`).toBe(false);
  }
});
