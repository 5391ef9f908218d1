// The build as its user meets it: exit statuses, what is written, what is kept, what is said.
import { rm } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { openWorkshop } from "./workshop.ts";

const spoil = (text: string): string => text.replace("stubs: 10", "stubs: ten");

test("two sound projects: status 0, pages, data and templates of both, and a list of both", async () => {
  const workshop = await openWorkshop("first", "second");
  const { status, wrote } = await workshop.run("build", "--html-only");
  expect(status).toBe(0);
  const files = await workshop.files();
  expect(files).toEqual(expect.arrayContaining(["index.html", "first/index.html", "first/handout.html", "first/templates.html", "first/plan.json", "second/plan.json", "assets/fonts.css"]));
  expect(files.some((file) => file.startsWith("first/templates/") && file.endsWith(".svg"))).toBe(true);
  const list = await workshop.read("index.html");
  expect(list).toContain('href="first/index.html"');
  expect(list).toContain('href="second/index.html"');
  expect(wrote).toMatch(/first\/index\.html +\d+ kB\n/);
  expect(wrote).toMatch(/\d+ files in [\d.]+ s\n$/);
});

test("a project with problems: status 1, its problem with place and caret, and the other project is built all the same", async () => {
  const workshop = await openWorkshop("sound", "spoiled");
  await workshop.edit("spoiled", spoil);
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toMatch(/content\/spoiled\/project\.yaml:\d+:\d+: error: /);
  expect(said).toContain("^");
  expect(said).toContain("spoiled: not built; there are no pages of an earlier build");
  expect(said).not.toMatch(/\n\s+at /);
  expect(await workshop.files()).toContain("sound/index.html");
  expect(await workshop.files()).not.toContain("spoiled/index.html");
  expect(await workshop.read("index.html")).toContain("Not built.");
});

test("all problems of all projects are reported in one run", async () => {
  const workshop = await openWorkshop("a", "b");
  await workshop.edit("a", (text) => spoil(text).replace("units: mm", "units: cubits"));
  await workshop.edit("b", spoil);
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toContain("3 errors in 2 files");
});

test("pages of an earlier build are kept when problems come up, byte for byte, and named as stale in the terminal and on the list", async () => {
  const workshop = await openWorkshop("album");
  await workshop.run("build", "--html-only");
  const before = await workshop.read("album/index.html");
  await workshop.edit("album", spoil);
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toContain("stale pages of an earlier build are kept: album/");
  expect(await workshop.read("album/index.html")).toBe(before);
  const list = await workshop.read("index.html");
  expect(list).toContain("Stale.");
  expect(list).toContain('href="album/index.html"');
});

test("building one project leaves the others' output untouched and still lists them", async () => {
  const workshop = await openWorkshop("first", "second");
  await workshop.run("build", "--html-only");
  const before = await workshop.read("second/index.html");
  await workshop.edit("first", (text) => text.replace("title: Harbour album", "title: Renamed album"));
  await workshop.edit("second", (text) => text.replace("title: Harbour album", "title: Not yet asked for"));
  const { status, wrote } = await workshop.run("build", "first", "--html-only");
  expect(status).toBe(0);
  expect(wrote).not.toContain("second/");
  expect(await workshop.read("first/index.html")).toContain("Renamed album");
  expect(await workshop.read("second/index.html")).toBe(before);
  expect(await workshop.read("index.html")).toContain('href="second/index.html"');
});

test("a problem in a project that was not asked for is neither reported nor counted, but the list calls it stale", async () => {
  const workshop = await openWorkshop("first", "second");
  await workshop.run("build", "--html-only");
  await workshop.edit("second", spoil);
  const { status, said } = await workshop.run("build", "first", "--html-only");
  expect([status, said.includes("error:")]).toEqual([0, false]);
  expect(await workshop.read("index.html")).toContain("Stale.");
});

test("the same content gives the same bytes again", async () => {
  const workshop = await openWorkshop("album");
  await workshop.run("build", "--html-only");
  const files = (await workshop.files()).filter((file) => !file.endsWith(".woff2"));
  const first = await Promise.all(files.map((file) => workshop.read(file)));
  await rm(workshop.output, { recursive: true });
  await workshop.run("build", "--html-only");
  expect((await workshop.files()).filter((file) => !file.endsWith(".woff2"))).toEqual(files);
  expect(await Promise.all(files.map((file) => workshop.read(file)))).toEqual(first);
});

test("a project taken out of the content and a variant that is gone leave no pages behind", async () => {
  const workshop = await openWorkshop("gone", "stays");
  await workshop.edit("stays", (text) => `${text}\nvariants:\n  - {name: small, book: {stubs: 4}}\n`);
  await workshop.run("build", "--html-only");
  expect(await workshop.files()).toEqual(expect.arrayContaining(["gone/index.html", "stays-small/index.html"]));
  await rm(path.join(workshop.content, "gone"), { recursive: true });
  await workshop.edit("stays", (text) => text.slice(0, text.indexOf("\nvariants:")));
  await workshop.run("build", "--html-only");
  const files = await workshop.files();
  expect(files.filter((file) => /^(?:gone|stays-small)\//.test(file))).toEqual([]);
  expect(files).toContain("stays/index.html");
});

test("a variant and a project that would share a folder are a problem of the later one", async () => {
  const workshop = await openWorkshop("album", "album-small");
  await workshop.edit("album", (text) => `${text}\nvariants:\n  - {name: small, book: {stubs: 4}}\n`);
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toContain('both make the folder "album-small"');
});

test("a folder without a definition is a problem that says what to do", async () => {
  const workshop = await openWorkshop("album");
  await rm(path.join(workshop.content, "album/project.yaml"));
  const { status, said } = await workshop.run("build", "--html-only");
  expect(status).toBe(1);
  expect(said).toContain("content/album/project.yaml: error: there is no project.yaml [file-missing]");
});

test("an empty content folder builds a list that says so", async () => {
  const workshop = await openWorkshop();
  expect((await workshop.run("build", "--html-only")).status).toBe(0);
  expect(await workshop.read("index.html")).toContain("There is no project yet.");
});

test("without a browser the pages are built, the missing print-outs are named, and the status is 3", async () => {
  const workshop = await openWorkshop("album");
  const before = process.env["PUPPETEER_EXECUTABLE_PATH"];
  process.env["PUPPETEER_EXECUTABLE_PATH"] = "/nowhere/browser";
  try {
    const { status, wrote } = await workshop.run("build");
    expect(status).toBe(3);
    expect(wrote).toMatch(/album\/handout\.pdf +missing: no browser to print with/);
    expect(wrote).toContain("6 print-outs missing");
    expect(await workshop.files()).toContain("album/handout.html");
  } finally {
    if (before === undefined) delete process.env["PUPPETEER_EXECUTABLE_PATH"];
    else process.env["PUPPETEER_EXECUTABLE_PATH"] = before;
  }
});
