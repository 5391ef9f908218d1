// What each problem code means and what would do: the one source of the table in DEVELOPERS.md.
import { problemCodes } from "./problem.ts";
import type { ProblemCode } from "./problem.ts";

/** What a code means and the usual remedy; both lower case, without a full stop. */
export interface ProblemExplanation {
  readonly means: string;
  readonly remedy: string;
}

/** Every code with its explanation; the type makes a forgotten code a compile error. */
export const problemTable: Readonly<Record<ProblemCode, ProblemExplanation>> = {
  "file-missing": { means: "a project's folder has no `project.yaml`", remedy: "write one, starting from the commented example of the binding" },
  "file-empty": { means: "the file is empty or holds only comments", remedy: "start from the commented example of the binding" },
  "file-not-text": { means: "the file holds zero bytes, so it is no text", remedy: "save it as plain text in UTF-8" },
  "file-not-utf8": { means: "the file is saved in another encoding than UTF-8", remedy: "save it as UTF-8" },
  "file-too-large": { means: "the file is larger than any definition needs to be", remedy: "keep pictures and long texts in files of their own" },
  "yaml-syntax": { means: "the text cannot be read as YAML 1.2, or uses a part of YAML that has no meaning here", remedy: "mend the marked place: most often quotes, a colon, or the indentation" },
  "yaml-tab": { means: "a line is indented with a tab", remedy: "indent with spaces" },
  "yaml-duplicate-key": { means: "one mapping holds the same key twice", remedy: "keep one of the two" },
  "yaml-alias-limit": { means: "aliases unfold without end or into too many values", remedy: "write the values out" },
  "yaml-nesting": { means: "brackets, lists or mappings are nested too deeply", remedy: "look for a bracket, brace or dash too many" },
  "not-a-mapping": { means: "a single value or a list stands where keys with values are due", remedy: "write `key: value` lines" },
  "key-unknown": { means: "a key is not known where it stands", remedy: "take the suggested key, or move it to where it belongs" },
  "key-missing": { means: "a key without which the book cannot be made is not written", remedy: "write it" },
  "value-missing": { means: "a key has nothing behind it", remedy: "write a value, or take the key out to have the default" },
  "value-type": { means: "a value is of the wrong kind: text for a number, a list for a text", remedy: "write the kind of value that the hint names" },
  "value-unknown": { means: "a value is not one of those to choose from", remedy: "take one of the values in the hint" },
  "value-range": { means: "a number or text is outside the limits", remedy: "stay within the limits in the hint" },
  "keys-exclude": { means: "two keys are written of which each makes the other impossible", remedy: "keep one of the two" },
  "length-syntax": { means: "a length cannot be read", remedy: "write one number and one unit, such as `247 mm` or `9 3/4 in`" },
  "length-unit": { means: "a length has no unit or an unknown one", remedy: "use mm, cm, m or in" },
  "length-range": { means: "a length is negative, too small or too large to make sense", remedy: "stay within the limits in the hint; check the unit" },
  "duration-syntax": { means: "a duration cannot be read", remedy: "write it as `45 min`, `1 h 30 min`, `12 h` or `2 days`" },
  "binding-unknown": { means: "no binding has this name", remedy: "take a name from the hint" },
  "version-unknown": { means: "the definition is written for a format version that this program does not read", remedy: "write `benchleaf: 1`" },
  "picture-outside": { means: "a picture's path leads out of the project's folder", remedy: "copy the picture into the folder and give its path within it" },
  "picture-missing": { means: "a picture is not in the project's folder", remedy: "check the spelling, capitals included" },
  "picture-kind": { means: "a picture is of a kind that browsers do not all show", remedy: "use png, jpg, jpeg, svg or webp" },
  "step-unknown": { means: "the binding has no such step", remedy: "take the suggested step, or add one of your own under `add steps`" },
  "step-file-unknown": { means: "a file in `prose/` belongs to no step", remedy: "name it introduction.md, closing.md or after a step" },
  "name-unknown": { means: "a name in braces, or under `measured`, is not the name of a value", remedy: "take the suggested name" },
  "name-taken": { means: "two things would have the same name", remedy: "name one of them otherwise" },
  "design-impossible": { means: "every value is sound alone, but the book cannot be made from them", remedy: "change what the message names" },
  "class-impossible": { means: "the steps of a class find no place in its sessions; everything is built all the same", remedy: "take one of the changes in the hint: each was planned and fits" },
};

/** The table as Markdown, one row for each code in the order of the list. */
export function printProblemTable(): string {
  const rows = problemCodes.map((code) => `| \`${code}\` | ${problemTable[code].means} | ${problemTable[code].remedy} |`);
  return ["| code | what it means | what would do |", "| --- | --- | --- |", ...rows].join("\n") + "\n";
}
