// A single value as a schema: read from its text, refused with typed details, described for the published JSON Schema.
import { z } from "zod";
import type { Unit } from "../units/length.ts";
import { quoted } from "../units/read-number.ts";
import { published } from "./field-json.ts";
import type { JsonSchema } from "./field-json.ts";
import type { IssueDetail, Refusal } from "./refusal.ts";
import { isScalarNode } from "./tree.ts";
import type { ScalarNode } from "./tree.ts";

/** What a field must know about the definition around it. */
export interface FieldContext {
  /** The project's unit, which chooses between the two defaults of a length. */
  readonly governing: Unit;
  /** The unit of a number written without one, by where it was written; null while the definition's units are unreadable. */
  bareUnitOf(node: ScalarNode): Unit | null;
  /** The files of the project's folder, relative, with forward slashes. */
  readonly files: ReadonlySet<string>;
}

/** A schema for something written; what it makes of it is `T`. */
export type Field<T> = z.ZodType<T>;

/** What became of a text: a value, or why not. */
export type Reading<T> = { readonly ok: true; readonly value: T } | ({ readonly ok: false } & Omit<Refusal, "kind">);

/** Options of a single value. */
export interface LeafOptions<T> {
  readonly about: string;
  /** What is accepted, in words that follow "write": "a whole number such as 8". */
  readonly expected: string;
  /** What could stand behind the key, as written in a file. */
  readonly example: string;
  readonly json: JsonSchema;
  /** The value when nothing is written; without it the key is required. */
  readonly fallback?: { readonly value: T };
  read(node: ScalarNode): Reading<T>;
}

/** A single value read from its text. */
export function leaf<T>(options: LeafOptions<T>): Field<T> {
  const { fallback } = options;
  const detail: IssueDetail = { kind: "type", code: "value-type", expected: options.expected, example: options.example, isOptional: fallback !== undefined };
  const scalar = z.custom<ScalarNode>((written) => isScalarNode(written) && !written.isEmpty, { params: { detail } });
  const read = (node: ScalarNode | undefined, context: z.RefinementCtx): T => {
    if (node === undefined) return fallback!.value;
    const reading = options.read(node);
    if (reading.ok) return reading.value;
    const { ok: _, ...refusal } = reading;
    return refuse(context, { kind: "value", ...refusal });
  };
  const field = fallback ? scalar.optional().transform(read) : scalar.transform(read);
  return published(field as Field<T>, () => ({ description: options.about, ...options.json }));
}

/** Adds an issue of ours; the value given back is never used. */
function refuse(context: z.RefinementCtx, detail: IssueDetail): never {
  context.addIssue({ code: "custom", params: { detail } });
  return z.NEVER as never;
}

/** Options of every kind of field; without a default the key is required. */
export interface Common<T> {
  readonly about: string;
  readonly default?: T;
}

/** The `fallback` of a leaf from the `default` of its options. */
export function fallbackOf<T>(options: { readonly default?: T }): { fallback?: { value: T } } {
  return options.default === undefined ? {} : { fallback: { value: options.default } };
}

/** The sentence about a default in a description. */
export function defaultSentence(value: string | number | null | undefined): string {
  return value === undefined || value === null ? "" : ` Default: ${value}.`;
}

/** Words to choose from, as read in a sentence. */
export function listOf(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)!}`;
}

/** A value as written: numbers bare, words in quotation marks. */
export function shownValue(text: string): string {
  return /^\s*-?[\d.]+\s*$/.test(text) && text.length < 20 ? text.trim() : quoted(text);
}
