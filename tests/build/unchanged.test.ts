// What has not changed since the last build is left as it is; what has changed, in any way, is made anew.
import { readFile, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { openWorkshop } from "./workshop.ts";
import type { Workshop } from "./workshop.ts";

/** A demo that takes little time. */
const light = "tide-tables";
const withoutVariants = (text: string): string => text.slice(0, text.indexOf("\nvariants:"));

async function lightWorkshop(...projects: string[]): Promise<Workshop> {
  const workshop = await openWorkshop();
  for (const project of projects) {
    await workshop.add(project, light);
    await workshop.edit(project, withoutVariants);
  }
  return workshop;
}

/** When each file was last written, and what is in it. */
async function look(workshop: Workshop): Promise<ReadonlyMap<string, { readonly written: number; readonly bytes: Buffer }>> {
  const files = (await workshop.files()).filter((file) => !file.startsWith(".benchleaf/"));
  return new Map(await Promise.all(files.map(async (file) => {
    const place = path.join(workshop.output, file);
    return [file, { written: (await stat(place)).mtimeMs, bytes: await readFile(place) }] as const;
  })));
}

/** Files that were written between two looks. */
function writtenBetween(before: Awaited<ReturnType<typeof look>>, after: typeof before): readonly string[] {
  return [...after].filter(([file, { written }]) => before.get(file)?.written !== written).map(([file]) => file);
}

const bytesOf = (seen: Awaited<ReturnType<typeof look>>): readonly (readonly [string, string])[] => [...seen].map(([file, { bytes }]) => [file, bytes.toString("base64")]);

test("a second build of the same content writes nothing, says so, and reports the same warnings", async () => {
  const workshop = await lightWorkshop("first", "second");
  await workshop.edit("first", (text) => text.replace("grain: short, sheets: [{size: A4", "grain: long, sheets: [{size: A4"));
  const once = await workshop.run("build", "--html-only");
  const before = await look(workshop);
  const again = await workshop.run("build", "--html-only");
  expect([once.status, again.status]).toEqual([0, 0]);
  expect(writtenBetween(before, await look(workshop))).toEqual([]);
  expect(again.wrote).toMatch(/first\/ +unchanged, \d+ files\nsecond\/ +unchanged, \d+ files\n0 files in [\d.]+ s; 2 projects unchanged\n$/);
  const warnings = (said: string): readonly string[] => said.split("\n").filter((line) => line.includes("warning"));
  expect(warnings(once.said)).toEqual([expect.stringContaining("first: ")]);
  expect(warnings(again.said)).toEqual(warnings(once.said));
});

test("a project with errors reports them at every build, the same words each time", async () => {
  const workshop = await lightWorkshop("sound", "spoiled");
  await workshop.edit("spoiled", (text) => text.replace(/^title: .*$/m, "title: [a, b]"));
  const problems = ({ said }: { readonly said: string }): readonly string[] => said.split("\n").filter((line) => /error|\^|not built/.test(line));
  const once = await workshop.run("build", "--html-only");
  const again = await workshop.run("build", "--html-only");
  expect([once.status, again.status]).toEqual([1, 1]);
  expect(problems(once).length).toBeGreaterThan(2);
  expect(problems(again)).toEqual(problems(once));
  expect(again.wrote).toContain("sound/  unchanged");
});

test("one changed definition, text or picture rebuilds its own project only", async () => {
  const workshop = await lightWorkshop("first", "second");
  await workshop.run("build", "--html-only");
  const changes: readonly (() => Promise<void>)[] = [
    () => workshop.edit("first", (text) => text.replace(/^title: .*$/m, "title: Renamed")),
    () => workshop.edit("first", (text) => `${text}\n# a remark\n`),
    () => writeFile(path.join(workshop.content, "first/unused.png"), "not yet shown"),
    () => writeFile(path.join(workshop.content, "first/unused.png"), "changed in place"),
  ];
  for (const change of changes) {
    await change();
    const { wrote } = await workshop.run("build", "--html-only");
    expect(wrote).toMatch(/first\/index\.html +\d+ kB/);
    expect(wrote).toMatch(/second\/ +unchanged/);
  }
  expect(await workshop.read("index.html")).toContain("Renamed");
});

test("output that is missing, changed or without a record is made again, to the same bytes", async () => {
  const workshop = await lightWorkshop("first", "second");
  await workshop.run("build", "--html-only");
  const before = bytesOf(await look(workshop));
  const harms: readonly (() => Promise<void>)[] = [
    () => rm(path.join(workshop.output, "first/index.html")),
    () => writeFile(path.join(workshop.output, "first/plan.json"), "{}"),
    () => writeFile(path.join(workshop.output, ".benchleaf/projects/first.json"), "{\"key\":"),
    () => rm(path.join(workshop.output, "assets/print.css")),
    () => writeFile(path.join(workshop.output, "index.html"), "spoilt"),
    () => rm(path.join(workshop.output, ".benchleaf"), { recursive: true }),
  ];
  for (const harm of harms) {
    await harm();
    expect((await workshop.run("build", "--html-only")).status).toBe(0);
    expect(bytesOf(await look(workshop))).toEqual(before);
  }
});

test("--afresh builds everything anew, to the same bytes", async () => {
  const workshop = await lightWorkshop("album");
  await workshop.run("build", "--html-only");
  const before = await look(workshop);
  const { wrote } = await workshop.run("build", "--html-only", "--afresh");
  const after = await look(workshop);
  expect(wrote).not.toContain("unchanged");
  expect(writtenBetween(before, after)).toEqual(expect.arrayContaining(["album/index.html", "album/plan.json", "index.html"]));
  expect(bytesOf(after)).toEqual(bytesOf(before));
});

test("a variant that takes the folder of an unchanged project is a problem all the same", async () => {
  const workshop = await lightWorkshop("album", "album-small");
  await workshop.run("build", "--html-only");
  await workshop.edit("album", (text) => `${text}\nvariants:\n  - {name: small, summary: A small one.}\n`);
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toContain('both make the folder "album-small"');
});

test("a project may take over the folder of another one's variant that is gone", async () => {
  const workshop = await lightWorkshop("album");
  const before = await readFile(path.join(workshop.content, "album/project.yaml"), "utf8");
  await workshop.edit("album", (text) => `${text}\nvariants:\n  - {name: small, summary: A small one.}\n`);
  await workshop.run("build", "--html-only");
  await workshop.edit("album", () => before);
  await workshop.add("album-small", light);
  await workshop.edit("album-small", withoutVariants);
  expect((await workshop.run("build", "--html-only")).status).toBe(0);
  expect(await workshop.files()).toContain("album-small/index.html");
});

test("building without PDFs after a build with them, and the other way round, is no second build", { timeout: 60_000 }, async () => {
  const workshop = await lightWorkshop("album");
  await workshop.run("build");
  const printed = (await workshop.files()).filter((file) => file.endsWith(".pdf"));
  expect(printed.length).toBeGreaterThan(1);
  expect((await workshop.run("build", "--html-only")).wrote).not.toContain("unchanged");
  expect((await workshop.files()).filter((file) => file.endsWith(".pdf"))).toEqual([]);
  expect((await workshop.run("build")).wrote).not.toContain("unchanged");
  expect((await workshop.files()).filter((file) => file.endsWith(".pdf"))).toEqual(printed);
});

test("of a changed project only the documents that have changed are printed again", { timeout: 60_000 }, async () => {
  const workshop = await lightWorkshop("album");
  const first = await workshop.run("build");
  expect(first.wrote).toMatch(/handout\.pdf .* pages?, [\d.]+ s/);
  const before = await look(workshop);
  expect((await workshop.run("build")).wrote).toMatch(/0 files in [\d.]+ s; 1 project unchanged\n$/);

  await rm(path.join(workshop.output, "album/templates.pdf"));
  const mended = await workshop.run("build");
  expect(mended.wrote).toMatch(/handout\.pdf .* pages?, as before/);
  expect(mended.wrote).toMatch(/templates\.pdf .* pages?, [\d.]+ s/);
  expect(bytesOf(await look(workshop))).toEqual(bytesOf(before));

  await workshop.edit("album", (text) => text.replace(/^summary: .*$/m, "summary: Only the handout says this."));
  const changed = await workshop.run("build");
  expect(changed.wrote).toMatch(/handout\.pdf .* pages?, [\d.]+ s/);
  expect(changed.wrote).toMatch(/templates\.pdf .* pages?, as before/);
});
