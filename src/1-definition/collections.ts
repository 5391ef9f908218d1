// Mappings with known keys and lists, as schemas over what was written.
import { z } from "zod";
import type { ProblemCode } from "../problems/problem.ts";
import { published } from "./field-json.ts";
import type { JsonSchema } from "./field-json.ts";
import type { Field } from "./leaf.ts";
import type { IssueDetail } from "./refusal.ts";
import { isScalarNode } from "./tree.ts";

type Shape = Readonly<Record<string, z.ZodType>>;

/** What a mapping of fields gives after reading. */
export type MappingOf<S extends Shape> = { readonly [K in keyof S]: z.output<S[K]> };

interface MappingOptions<S extends Shape = Shape> {
  readonly about: string;
  /** What could stand behind the key, as written in a file. */
  readonly example: string;
  /** What the keys are called in messages, and the code for an unknown one; an ordinary key otherwise. */
  readonly noun?: string;
  readonly unknownCode?: ProblemCode;
  /** One of the keys whose value may be written alone in place of the mapping: `units: mm` for `units: {governing: mm}`. */
  readonly shorthand?: string;
  /** Puts in what follows from several keys together. */
  readonly settle?: (read: MappingOf<S>) => MappingOf<S>;
}

/** A mapping that must be written. */
export function mapping<S extends Shape>(shape: S, options: MappingOptions<S>): Field<MappingOf<S>> {
  return mappingField(shape, options, false);
}

/** A mapping that may be left out, or be left without keys: every key in it has a default. */
export function mappingWithDefaults<S extends Shape>(shape: S, options: MappingOptions<S>): Field<MappingOf<S>> {
  const field = mappingField(shape, options, true).prefault({});
  return published(field as Field<MappingOf<S>>, ({ default: _, ...derived }) => derived);
}

/** A mapping that is null when it is not written. */
export function optionalMapping<S extends Shape>(shape: S, options: MappingOptions<S>): Field<MappingOf<S> | null> {
  return mappingField(shape, options, true).optional().transform((value) => value ?? null) as Field<MappingOf<S> | null>;
}

function mappingField<S extends Shape>(shape: S, options: MappingOptions<S>, isOptional: boolean): Field<MappingOf<S>> {
  const known = Object.keys(shape);
  const { shorthand } = options;
  const wrong: IssueDetail = { kind: "type", code: "not-a-mapping", isOptional, example: options.example, expected: shorthand === undefined ? `keys with values, such as ${options.example}` : `${options.example}, or keys with values: ${known.join(", ")}` };
  const unknown: IssueDetail = { kind: "unknown key", code: options.unknownCode ?? "key-unknown", noun: options.noun ?? "key", known };
  const accept = (written: unknown, context: z.RefinementCtx): unknown => {
    if (isScalarNode(written) && written.isEmpty && isOptional) return {};
    if (isScalarNode(written) && !written.isEmpty && shorthand !== undefined) return { [shorthand]: written };
    if (typeof written === "object" && written !== null && !Array.isArray(written) && !isScalarNode(written)) return written;
    context.addIssue({ code: "custom", params: { detail: wrong } });
    return z.NEVER;
  };
  const nothingElse = z.custom<never>(() => false, { params: { detail: unknown } });
  const inner = published(z.object(shape).catchall(nothingElse), (derived) => ({
    description: options.about, ...derived, ...(isOptional ? { type: ["object", "null"] } : {}), additionalProperties: false,
  }));
  const settled = options.settle ? inner.transform((read) => options.settle!(read as MappingOf<S>)) : inner;
  const field = published(z.preprocess(accept, settled as z.ZodType), (derived) => {
    if (shorthand === undefined) return derived;
    const alone = (derived["properties"] as Record<string, JsonSchema>)[shorthand]!;
    const { description, ...rest } = derived;
    return { description, anyOf: [alone, rest] };
  });
  return field as unknown as Field<MappingOf<S>>;
}

interface ListOptions {
  readonly about: string;
  readonly most: number;
  /** Whether a single value may stand for a list of one. */
  readonly oneMayStandAlone: boolean;
  /** Whether the list may be written without entries: "add steps:" with everything below it commented out. */
  readonly mayBeEmpty: boolean;
}

/** A list that must be written. */
export function list<T>(item: Field<T>, options: ListOptions): Field<readonly T[]> {
  return listField(item, options, false);
}

/** A list with a default for when it is not written. */
export function listWithDefault<T>(item: Field<T>, fallback: readonly NoInfer<T>[], options: ListOptions): Field<readonly T[]> {
  return listField(item, options, true).optional().transform((value) => value ?? fallback) as Field<readonly T[]>;
}

function listField<T>(item: Field<T>, options: ListOptions, isOptional: boolean): Field<readonly T[]> {
  const { about, most, oneMayStandAlone, mayBeEmpty } = options;
  const wrong: IssueDetail = { kind: "type", code: "value-type", isOptional, example: "[…]", expected: "a list, each entry on a line of its own behind a dash" };
  const accept = (written: unknown, context: z.RefinementCtx): unknown => {
    const refuse = (detail: IssueDetail): unknown => {
      context.addIssue({ code: "custom", params: { detail } });
      return z.NEVER;
    };
    if (isScalarNode(written) && written.isEmpty && mayBeEmpty) return [];
    if (!Array.isArray(written)) return oneMayStandAlone && written !== undefined ? [written] : refuse(wrong);
    if (written.length > most) return refuse({ kind: "value", code: "value-range", says: ` has ${written.length} entries, but ${most} is the most`, hint: "shorten the list" });
    if (written.length === 0 && !mayBeEmpty) return refuse({ kind: "value", code: "value-range", says: " is an empty list", hint: "write at least one entry, or take the key out" });
    return written;
  };
  const array = published(z.array(item), (derived) => {
    const lines: JsonSchema = { ...derived, maxItems: most, ...(mayBeEmpty ? { type: ["array", "null"] } : { minItems: 1 }) };
    return oneMayStandAlone ? { description: about, anyOf: [derived["items"], lines] } : { description: about, ...lines };
  });
  return z.preprocess(accept, array) as unknown as Field<readonly T[]>;
}

/** Anything at all, looked at elsewhere. */
export const anything: Field<unknown> = published(z.unknown().optional(), () => ({}));
