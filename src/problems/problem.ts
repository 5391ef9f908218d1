// The record of one thing wrong in an author's file: data first, words and code frame are made from it later.

/** Half-open span of character offsets in a file's text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Where a problem sits. `span` is null when the file as a whole is meant (missing, empty, not text). */
export interface Place {
  readonly file: string;
  readonly span: Span | null;
}

/** An error keeps the project from being built, a warning does not. */
export type ProblemSeverity = "error" | "warning";

/** One problem: what is wrong (with the value shown) and what would do. Wording is lower case, without a full stop. */
export interface Problem {
  readonly code: ProblemCode;
  readonly severity: ProblemSeverity;
  readonly message: string;
  readonly hint: string;
  readonly place: Place;
}

/** The closed list of codes; each has one row in `problemTable` and at least one test. */
export type ProblemCode = (typeof problemCodes)[number];

/** The codes in the order of the table in DEVELOPERS.md: from the file as a whole to the design. */
export const problemCodes = [
  "file-missing", "file-empty", "file-not-text", "file-not-utf8", "file-too-large", "yaml-syntax", "yaml-tab", "yaml-duplicate-key", "yaml-alias-limit", "yaml-nesting",
  "not-a-mapping", "key-unknown", "key-missing", "value-missing", "value-type", "value-unknown", "value-range", "keys-exclude",
  "length-syntax", "length-unit", "length-range", "duration-syntax", "binding-unknown", "version-unknown",
  "picture-outside", "picture-missing", "picture-kind", "step-unknown", "step-file-unknown", "name-unknown", "name-taken", "design-impossible", "class-impossible",
] as const;
