// House rule: what a command may not need is loaded when it is needed; help and a mistyped command answer at once.
import { expect, test } from "vitest";
import { readProjectFile } from "./project-files.ts";
import { loadedWith, parseSource } from "./source-file.ts";

/** Everything that is loaded with a file of ours, packages by their name. */
function closureOf(first: string): ReadonlySet<string> {
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    if (path.startsWith("src/")) loadedWith(parseSource(path, readProjectFile(path))).forEach(visit);
  };
  visit(first);
  return seen;
}

const heavyIn = (first: string): readonly string[] => [...closureOf(first)].filter((path) => /^src\/\d-/.test(path) || !/^(?:src\/|node:)/.test(path));

test("neither a phase nor a package is loaded with the command line", () => {
  expect(heavyIn("src/cli.ts")).toEqual([]);
  expect(closureOf("src/cli.ts").size).toBeGreaterThan(3);
});

test("nor with the command check, before it is clear what is to be checked", () => {
  expect(heavyIn("src/build/check.ts")).toEqual([]);
});

test("nor with a build, before it is clear that anything has changed, but for the titles of lists", () => {
  expect(heavyIn("src/build.ts")).toEqual(["src/5-pages/running-title.ts"]);
});

test("the rule finds a phase behind another file", () => {
  expect(heavyIn("src/build/compute.ts")).toContain("src/4-figures/index.ts");
  expect(loadedWith(parseSource("src/a.ts", 'import type { A } from "./a.ts"; import b from "b"; await import("./c.ts"); export { d } from "./d.ts";'))).toEqual(["b", "src/d.ts"]);
});
