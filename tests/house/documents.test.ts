// House rule: what README.md and DEVELOPERS.md point to is there: links, paths, commands and names in the code.
import { expect, test } from "vitest";
import { isThere, lineOf, projectFiles, readProjectFile } from "./project-files.ts";
import { exportsOf, sourceFiles } from "./source-file.ts";

const documents = ["README.md", "DEVELOPERS.md"];

/** Paths in the documents that stand for what an author or a build makes, by their beginning. */
const madeByOthers = ["dist/", "plan.json", "content/letters/", "content/<", "prose/", "pictures/", "node_modules/"];

const files = projectFiles();
const exportedNames = new Set([...sourceFiles("src/"), ...sourceFiles("tests/")].flatMap((file) => exportsOf(file).map((each) => each.name)));
const scripts = Object.keys((JSON.parse(readProjectFile("package.json")) as { readonly scripts: Readonly<Record<string, string>> }).scripts);

/** Whether a path exists; `<name>` and `*` in it stand for any one part of a path. */
function leadsSomewhere(path: string): boolean {
  if (!/[<*]/.test(path)) return isThere(path);
  const parts = path.replace(/\/$/, "").split(/(<[^>]*>|\*)/).map((part, index) => (index % 2 === 1 ? "[^/]+" : part.replace(/[.+?^${}()|[\]\\]/g, "\\$&")));
  const pattern = new RegExp(`^${parts.join("")}(?:/|$)`);
  return files.some((file) => pattern.test(file));
}

/** The anchor of a heading, as it is made on the web from its words. */
function anchorOf(heading: string): string {
  return heading.replace(/`/g, "").trim().toLowerCase().replace(/[^\p{L}\p{N} _-]/gu, "").replaceAll(" ", "-");
}

function brokenLinks(file: string, text: string): readonly string[] {
  const prose = text.replace(/```[\s\S]*?```/g, (block) => block.replace(/[^\n]/g, " ")).replace(/`[^`\n]*`/g, (code) => " ".repeat(code.length));
  const anchors = [...text.matchAll(/^#+ (.*)$/gm)].map((match) => anchorOf(match[1]!));
  return [...prose.matchAll(/\]\(([^)\s]+)\)/g)].flatMap((match) => {
    const target = match[1]!;
    const found = target.startsWith("#") ? anchors.includes(target.slice(1)) : /^https?:/.test(target) || isThere(target.split("#")[0]!);
    return found ? [] : [`${file}:${lineOf(text, match.index)}: the link to ${target} leads nowhere`];
  });
}

function brokenCode(file: string, text: string): readonly string[] {
  const spans = [...text.replace(/```[\s\S]*?```/g, (block) => block.replace(/[^\n]/g, " ")).matchAll(/`([^`\n]+)`/g)];
  return spans.flatMap((match) => {
    const why = faultOf(match[1]!, file === "DEVELOPERS.md");
    return why === null ? [] : [`${file}:${lineOf(text, match.index)}: ${why}`];
  });
}

/** What is wrong with a piece of code in a sentence; null when nothing is, or when it is no name that could be looked up. */
function faultOf(code: string, isAboutCode: boolean): string | null {
  const command = /^npm (?:run )?([a-z-]+)/.exec(code)?.[1];
  if (command !== undefined) return ["ci", "install", ...scripts].includes(command) ? null : `there is no command ${code}`;
  const isPath = /^\.?[\w@<>*.-]+(?:\/[\w@<>*.-]+)*\/?$/.test(code) && (code.includes("/") || /\.(?:ts|js|cjs|json|md|njk|css|yaml)$/.test(code));
  if (isPath && !code.startsWith("@") && !madeByOthers.some((start) => code.startsWith(start))) {
    const alone = !code.includes("/") && files.some((file) => file.endsWith(`/${code}`));
    return alone || ["", "src/", "tests/"].some((folder) => leadsSomewhere(folder + code)) ? null : `there is no file or folder ${code}`;
  }
  const name = /^([a-z]+[A-Z]\w*|\w+\(\)|[A-Z][a-z]+(?:[A-Z][a-z]+)*)$/.exec(code)?.[1]?.replace("()", "");
  const isName = name !== undefined && (isAboutCode || !/^[A-Z]/.test(name));
  return isName && !exportedNames.has(name) ? `no name ${name} is exported` : null;
}

for (const file of documents) {
  test(`the links in ${file} lead somewhere`, () => {
    expect(brokenLinks(file, readProjectFile(file))).toEqual([]);
  });

  test(`the paths, commands and names in ${file} exist`, () => {
    expect(brokenCode(file, readProjectFile(file))).toEqual([]);
  });

  test(`the commands in the blocks of ${file} exist, and so do the files they name`, () => {
    const text = readProjectFile(file);
    const lines = [...text.matchAll(/^```sh\n([\s\S]*?)^```/gm)].flatMap((block) => block[1]!.split("\n"));
    const broken = lines.flatMap((line) => {
      const words = line.replace(/#.*$/, "").trim().split(/[\s=]+/);
      const paths = words.filter((word) => /^(?:src|tests|scripts|schema|examples|content)\//.test(word) && !word.startsWith("content/letters"));
      const runs = [...line.matchAll(/npm run ([a-z-]+)/g)].map((match) => match[1]!).filter((script) => !scripts.includes(script));
      return [...paths.filter((path) => !leadsSomewhere(path)), ...runs];
    });
    expect(broken).toEqual([]);
  });
}

test("the rules find a dead link, a dead anchor, a path, a command and a name that are not there", () => {
  expect(brokenLinks("a.md", "# One\n[a](#one) [b](#two) [c](src/nowhere.ts) [d](README.md)")).toHaveLength(2);
  for (const code of ["src/nowhere.ts", "nowhere.ts", "npm run nowhere", "readNowhere", "nowhere()", "src/<phase>/nowhere.ts", "Nowhere"]) expect(faultOf(code, true), code).not.toBeNull();
  for (const code of ["src/units/length.ts", "src/<phase>/stub-album.ts", "units/", "npm run build", "readDefinition", "readDefinition()", "dist/index.html", "9 3/4 in", "Length", "--html-only"]) expect(faultOf(code, true), code).toBeNull();
});
