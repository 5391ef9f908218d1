// House rule: nothing that is kept names a path of one computer, a host that packages come from, or how the work was organised.
import { expect, test } from "vitest";
import { projectFiles, lineOf, readProjectFile, textFiles } from "./project-files.ts";

/** The words are put together here, so that this file does not hold them. */
const joined = (...halves: readonly string[]): string => halves.join("");

const folders = [joined("/wo", "rk/"), joined("/ro", "ot/"), joined("/tm", "p/"), joined("/ho", "me/")];
const hosts = [joined("registry.", "npmjs"), joined("registry.", "yarnpkg"), joined("artif", "actory"), joined("verd", "accio"), joined("npm.", "pkg.")];
const workplace = [
  joined("suba", "gent"), joined("ag", "ents?"), joined("assis", "tants?"), joined("orches", "trat\\w*"), joined("work", "spaces?"),
  joined("(?:this|that|another|earlier|previous|next|parallel|coding|working) sess", "ions?"), joined("hel", "per sess", "ions?"),
  joined("language ", "models?"), joined("L", "LMs?"), joined("chat", "bots?"), joined("cla", "ude"), joined("anth", "ropic"), joined("open", "ai"), joined("co", "pilot"),
  joined("exemp", "lars\\.md"), joined("struct", "ures\\.md"), joined("print-", "facts\\.md"), joined("design", "\\.md"), joined("references", "\\.md"),
];

/** Packages of others have names of their own, which the lock file repeats. */
const namesOfOthers = "package-lock.json";

function patternFor(file: string): RegExp {
  const words = file === namesOfOthers ? [] : workplace.map((word) => `\\b${word}\\b`);
  return new RegExp([...folders.map((folder) => `(?<![\\w.}>*-])${folder}`), ...hosts, ...words].join("|"), "gi");
}

function breachesIn(file: string, text: string): readonly string[] {
  return [...`${file}\n${text}`.matchAll(patternFor(file))].map((match) => `${file}:${Math.max(1, lineOf(`${file}\n${text}`, match.index) - 1)}: ${match[0]}`);
}

test("no file that is kept holds a forbidden word, in its name or its text", () => {
  expect(textFiles().flatMap((file) => breachesIn(file, readProjectFile(file)))).toEqual([]);
  expect(projectFiles().flatMap((file) => breachesIn(file, ""))).toEqual([]);
});

test("the rule finds a path of a computer, a host and a word about the work, with their line", () => {
  expect(breachesIn("a.ts", `first\n"${joined("/ro", "ot/")}x"`)).toHaveLength(1);
  expect(breachesIn("a.json", `\n\nhttps://${joined("registry.", "npmjs")}.org/a`)[0]).toMatch(/^a\.json:3: /);
  expect(breachesIn("a.md", `written by an ${joined("ag", "ent")}`)).toHaveLength(1);
  expect(breachesIn("a.ts", "a reagent; the root of 2; home/ and work/ in a relative path: ../home/x")).toEqual([]);
});
