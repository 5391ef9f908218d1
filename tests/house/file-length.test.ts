// House rule: a file is split before it reaches 300 lines; data tables may be longer and are listed here.
import { expect, test } from "vitest";
import { projectFiles, readProjectFile } from "./project-files.ts";

const mostLines = 300;

/** Files that may be longer, with the reason. */
const exempt: Readonly<Record<string, string>> = {};

function linesOf(file: string): number {
  return readProjectFile(file).replace(/\n$/, "").split("\n").length;
}

const measured = projectFiles().filter((file) => /\.(?:ts|js|cjs|njk|css)$/.test(file));

test(`no source file, template or style sheet has more than ${mostLines} lines`, () => {
  const long = measured.filter((file) => linesOf(file) > mostLines && !Object.hasOwn(exempt, file));
  expect(long.map((file) => `${file}:${mostLines + 1}: the file has ${linesOf(file)} lines`)).toEqual([]);
});

test("every exemption is still needed", () => {
  expect(Object.keys(exempt).filter((file) => !measured.includes(file) || linesOf(file) <= mostLines)).toEqual([]);
});
