// House rule: every package is pinned to one version, explained in DEVELOPERS.md, and locked without a host to fetch it from.
import { expect, test } from "vitest";
import { lineOf, readProjectFile } from "./project-files.ts";

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly scripts: Readonly<Record<string, string>>;
}

interface Lock {
  readonly packages: Readonly<Record<string, { readonly version?: string; readonly resolved?: string }>>;
}

const manifest = JSON.parse(readProjectFile("package.json")) as Manifest;
const pinned = { ...manifest.dependencies, ...manifest.devDependencies };

test("package.json gives every package one exact version", () => {
  expect(Object.entries(pinned).filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
});

test("package-lock.json locks the very versions of package.json", () => {
  const lock = JSON.parse(readProjectFile("package-lock.json")) as Lock;
  expect(Object.fromEntries(Object.keys(pinned).map((name) => [name, lock.packages[`node_modules/${name}`]?.version]))).toEqual(pinned);
});

test("package-lock.json names no place to fetch a package from", () => {
  const text = readProjectFile("package-lock.json");
  const places = [...text.matchAll(/"resolved":.*|https?:\/\/[^"]*\.tgz[^"]*/g)];
  expect(places.map((match) => `package-lock.json:${lineOf(text, match.index)}: ${match[0]}`)).toEqual([]);
});

test("DEVELOPERS.md says of every package why it and not another, and of none that is not there", () => {
  const text = readProjectFile("DEVELOPERS.md");
  const section = text.slice(text.indexOf("\n## Dependencies"), text.indexOf("\n## ", text.indexOf("\n## Dependencies") + 1));
  const rows = [...section.matchAll(/^\| `([^`]+)` \| ([^|]+) \| ([^|]+) \|$/gm)].map((match) => ({ name: match[1]!, what: match[2]!.trim(), why: match[3]!.trim() }));
  expect(rows.map((row) => row.name).sort()).toEqual(Object.keys(pinned).sort());
  expect(rows.filter((row) => row.what === "" || row.why.length < 15)).toEqual([]);
});
