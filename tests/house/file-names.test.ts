// House rule: files and folders are kebab-case and named for what is in them.
import { expect, test } from "vitest";
import { projectFiles } from "./project-files.ts";

/** Names that other programs ask for. */
const namesGivenByOthers = new Set(["README.md", "DEVELOPERS.md", "LICENSE", ".eleventy.js", ".gitignore", ".npmrc", ".puppeteerrc.cjs", ".ci"]);

const kebab = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.[a-z0-9]+)*$/;
const vague = /(?:^|-)(?:utils?|helpers?|common|misc|shared|stuff|lib)(?:-|\.|$)/;

/** A file in the folder of phase 1 that says which keys bindings share: `shared` is its subject. */
const notVague = new Set(["shared-keys.ts"]);

function breachesIn(file: string): readonly string[] {
  return file.split("/").flatMap((part) => {
    if (namesGivenByOthers.has(part)) return [];
    if (!kebab.test(part)) return [`${file}: ${part} is not kebab-case`];
    return vague.test(part) && !notVague.has(part) ? [`${file}: ${part} does not say what is in it`] : [];
  });
}

test("every file and folder is kebab-case, and none has a name that could hold anything", () => {
  expect(projectFiles().flatMap(breachesIn)).toEqual([]);
});

test("the rule finds capitals, underscores and vague names", () => {
  for (const file of ["src/Units/a.ts", "src/units/read_length.ts", "src/units/utils.ts", "src/helpers/a.ts", "src/length-helpers.ts", "tests/common/a.ts"]) expect(breachesIn(file), file).toHaveLength(1);
  expect(breachesIn("src/1-definition/stub-album/a2.test.ts")).toEqual([]);
});
