// Which addresses count as files of the output folder.
import { mkdir, mkdtemp, realpath, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { describeRefusals, isFileBelow } from "../../src/6-print/page-requests.ts";

let outside = "";
let folder = "";

beforeAll(async () => {
  outside = await realpath(await mkdtemp(path.join(tmpdir(), "requests-")));
  folder = path.join(outside, "dist");
  await mkdir(folder);
  await writeFile(path.join(outside, "secret.txt"), "secret");
  await writeFile(path.join(folder, "page.html"), "page");
  await symlink(path.join(outside, "secret.txt"), path.join(folder, "link.txt"));
  await symlink(path.join(folder, "page.html"), path.join(folder, "inner.html"));
});

afterAll(async () => {
  await rm(outside, { recursive: true });
});

function address(...parts: string[]): string {
  return pathToFileURL(path.join(folder, ...parts)).href;
}

test("files below the folder may be read, whether they exist or not, also through a link that stays inside", () => {
  for (const file of ["page.html", "inner.html", "assets/missing.css"]) expect(isFileBelow(address(file), folder)).toBe(true);
});

test("a file beside the folder, one reached by going up, and a link that leads out may not be read", () => {
  for (const file of ["../secret.txt", "../dist-2/page.html", "link.txt"]) expect(isFileBelow(address(file), folder)).toBe(false);
  expect(isFileBelow(`${address("")}/..%2Fsecret.txt`, folder)).toBe(false);
});

test("addresses of the network, of other kinds and with a host may not be read", () => {
  for (const other of ["https://example.org/", "http://127.0.0.1/", "data:text/html,x", "file://host/share/x.png", "not an address"]) expect(isFileBelow(other, folder)).toBe(false);
});

test("refusals are described in the same words, whichever request came first", () => {
  const described = (refused: string[]): string | null => describeRefusals({ refused: new Set(refused), missing: new Set(["a.png (gone)"]) });
  expect(described(["http://b/", "http://a/"])).toBe(described(["http://a/", "http://b/"]));
  expect(described([])).toBe("the page needs a.png (gone): cannot be read");
  expect(describeRefusals({ refused: new Set(), missing: new Set() })).toBeNull();
});
