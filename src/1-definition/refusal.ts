// Why a schema refuses a value, as data that travels in the schema's issue until a place and words are found for it.
import type { ProblemCode } from "../problems/problem.ts";

/** A refused value. `says` follows the key's name: "stubs" + " is 99, but the most is 60", or "spine" + ": "9x" is no length". */
export interface Refusal {
  readonly kind: "value";
  readonly code: ProblemCode;
  readonly says: string;
  readonly hint: string;
  /** Offsets within the text of the value, where only a part of it is to blame. */
  readonly start?: number;
  readonly end?: number;
}

/** The value is missing or of another kind than `expected` ("a length such as 20 mm"). */
export interface WrongKind {
  readonly kind: "type";
  readonly code: "value-type" | "not-a-mapping";
  readonly expected: string;
  /** What could stand behind the key, as written in a file. */
  readonly example: string;
  readonly isOptional: boolean;
}

/** The key is not one of those known in its mapping. */
export interface UnknownKey {
  readonly kind: "unknown key";
  readonly code: ProblemCode;
  /** What the keys of the mapping are: "key", "step", "measured value". */
  readonly noun: string;
  readonly known: readonly string[];
}

/** What every issue of ours carries in `params.detail`. */
export type IssueDetail = Refusal | WrongKind | UnknownKey;
