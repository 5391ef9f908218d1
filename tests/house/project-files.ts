// The project's own files, as the house rules read them: everything that git would keep, found without asking git.
import { existsSync, readFileSync, readdirSync } from "node:fs";
import path from "node:path";

/** Absolute path of the project's folder. */
export const root = path.resolve(import.meta.dirname, "../..");

/** Text files by their endings; pictures and fonts have no lines to complain about. */
const textEndings = /\.(?:ts|js|cjs|mjs|json|ya?ml|md|njk|css|svg|txt|toml|sh)$|(?:^|\/)(?:\.gitignore|\.npmrc|\.nvmrc|\.editorconfig|LICENSE|run)$/;

/** Paths of all files with forward slashes, in order; what `.gitignore` names is left out. */
export function projectFiles(): readonly string[] {
  const rules = readFileSync(path.join(root, ".gitignore"), "utf8").split("\n").map((line) => line.trim()).filter((line) => line !== "" && !line.startsWith("#"));
  const folders = new Set([".git", ...rules.filter((rule) => rule.endsWith("/")).map((rule) => rule.replaceAll("/", ""))]);
  const endings = rules.filter((rule) => rule.startsWith("*")).map((rule) => rule.slice(1));
  const visit = (folder: string): readonly string[] =>
    readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((entry) => {
      const file = folder === "" ? entry.name : `${folder}/${entry.name}`;
      // By name alone: what is left out may be a link, and `.git` a file.
      if (folders.has(entry.name)) return [];
      if (entry.isDirectory()) return visit(file);
      return endings.some((ending) => file.endsWith(ending)) ? [] : [file];
    });
  return [...visit("")].sort();
}

/** The files whose text can be read line by line. */
export function textFiles(): readonly string[] {
  return projectFiles().filter((file) => textEndings.test(file));
}

/** The text of a file of the project. */
export function readProjectFile(file: string): string {
  return readFileSync(path.join(root, file), "utf8");
}

/** Whether a file or folder of the project exists. */
export function isThere(file: string): boolean {
  return existsSync(path.join(root, file));
}

/** The line, from 1, on which an offset of a text stands. */
export function lineOf(text: string, offset: number): number {
  return text.slice(0, offset).split("\n").length;
}
