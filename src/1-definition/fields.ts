// Numbers, choices, switches, durations and weights as schemas.
import { compareLengths, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { rationalFromDecimal } from "../units/rational.ts";
import type { Rational } from "../units/rational.ts";
import { readDuration } from "../units/duration.ts";
import { readGrammage } from "../units/grammage.ts";
import { nearestOf } from "../problems/nearest.ts";
import { defaultSentence, fallbackOf, leaf, listOf, shownValue } from "./leaf.ts";
import type { Common, Field } from "./leaf.ts";
import type { Refusal } from "./refusal.ts";

/** A whole number. */
export function count(options: Common<number> & CountLimits): Field<number> {
  return countLeaf<number>(options);
}

/** A whole number that is null when it is not written. */
export function optionalCount(options: { readonly about: string } & CountLimits): Field<number | null> {
  return countLeaf<number | null>({ ...options, default: null });
}

interface CountLimits {
  readonly least: number;
  readonly most: number;
  readonly example: number;
}

function countLeaf<T extends number | null>(options: Common<T> & CountLimits): Field<number | T> {
  const { least, most } = options;
  const hint = `give a whole number from ${least} to ${most}`;
  return leaf<number | T>({
    about: `${options.about}${defaultSentence(options.default)}`,
    expected: `a whole number such as ${options.example}`,
    example: String(options.example),
    json: { type: "integer", minimum: least, maximum: most, examples: [options.example] },
    ...fallbackOf<number | T>(options),
    read: ({ text }) => {
      const written = text.trim();
      if (!/^-?\d{1,400}$/.test(written)) return { ok: false, code: "value-type", says: ` is ${shownValue(text)}, but a whole number is needed`, hint };
      const value = Number(written);
      if (value < least) return { ok: false, code: "value-range", says: ` is ${written}, but at least ${least} is needed`, hint };
      if (value > most) return { ok: false, code: "value-range", says: ` is ${written.length > 20 ? `a number of ${written.length} digits` : written}, but ${most} is the most`, hint };
      return { ok: true, value };
    },
  });
}

/** A decimal number, exact. */
export function decimal<D extends Rational | null>(options: Common<D> & { readonly least: string; readonly most: string; readonly example: string }): Field<Rational | D> {
  const least = mm(options.least);
  const most = mm(options.most);
  const hint = `give a number from ${options.least} to ${options.most}`;
  return leaf<Rational | D>({
    about: options.about,
    expected: `a number such as ${options.example}`,
    example: options.example,
    json: { type: "number", minimum: Number(options.least), maximum: Number(options.most), examples: [Number(options.example)] },
    ...fallbackOf<Rational | D>(options),
    read: ({ text }) => {
      const value = text.length > 40 ? null : rationalFromDecimal(text.trim());
      if (!value) {
        const comma = /^\s*\d+,\d+\s*$/.test(text);
        return { ok: false, code: "value-type", says: ` is ${shownValue(text)}, but a number such as ${options.example} is needed`, hint: comma ? `write a decimal point: ${text.trim().replace(",", ".")}` : hint };
      }
      const size = value as Length;
      if (compareLengths(size, least) < 0) return { ok: false, code: "value-range", says: ` is ${text.trim()}, but at least ${options.least} is needed`, hint };
      if (compareLengths(size, most) > 0) return { ok: false, code: "value-range", says: ` is ${text.trim()}, but ${options.most} is the most`, hint };
      return { ok: true, value };
    },
  });
}

/** Yes or no; YAML's own `true` and `false` mean the same. */
export function yesOrNo(options: Common<boolean>): Field<boolean> {
  return leaf<boolean>({
    about: `${options.about}${options.default === undefined ? "" : ` Default: ${options.default ? "yes" : "no"}.`}`,
    expected: "yes or no",
    example: "yes",
    json: { enum: [true, false, "yes", "no"] },
    ...fallbackOf(options),
    read: ({ text }) => {
      const word = text.trim().toLowerCase();
      if (word === "yes" || word === "true") return { ok: true, value: true };
      if (word === "no" || word === "false") return { ok: true, value: false };
      return { ok: false, code: "value-type", says: ` is ${shownValue(text)}, but yes or no is needed`, hint: "write yes or no" };
    },
  });
}

interface ChoiceOptions<T extends string> extends Common<T> {
  readonly of: readonly T[];
  /** Other spellings that are accepted and published, with the word they stand for. */
  readonly also?: Readonly<Record<string, T>>;
  readonly code?: Refusal["code"];
}

/** One of a few words. */
export function choice<const T extends string>(options: ChoiceOptions<T>): Field<T> {
  return choiceLeaf<T, T>(options, options.default === undefined ? undefined : { value: options.default });
}

function choiceLeaf<T extends string, R extends T | null>(options: ChoiceOptions<T>, fallback: { value: R } | undefined): Field<R> {
  const also = options.also ?? {};
  const words = [...options.of, ...Object.keys(also)];
  const list = listOf(options.of);
  return leaf<R>({
    about: `${options.about}${defaultSentence(options.default)}`,
    expected: options.of.length > 1 ? `one of ${list}` : list,
    example: options.of[0]!,
    json: { enum: words },
    ...(fallback ? { fallback } : {}),
    read: ({ text }) => {
      const written = text.trim();
      const found = options.of.find((word) => word === written) ?? (Object.hasOwn(also, written) ? also[written] : undefined);
      if (found !== undefined) return { ok: true, value: found as R };
      const near = nearestOf(written, words);
      const hint = near ? `did you mean ${near}?${options.of.length > 1 ? ` To choose from: ${list}` : ""}` : `take ${options.of.length > 1 ? `one of ${list}` : list}`;
      return { ok: false, code: options.code ?? "value-unknown", says: ` is ${shownValue(text)}, ${options.of.length > 1 ? "which is not one of those to choose from" : `but only ${list} is known`}`, hint };
    },
  });
}

/** One of a few words, null when it is not written. */
export function optionalChoice<const T extends string>(options: Omit<ChoiceOptions<T>, "default">): Field<T | null> {
  return choiceLeaf<T, T | null>(options, { value: null });
}

/** A duration, in whole minutes. */
export function duration(options: Common<number> & { readonly least: number; readonly most: number; readonly limits: string; readonly example: string; readonly defaultText?: string }): Field<number> {
  return durationLeaf<number>(options);
}

/** A duration in whole minutes, null when it is not written. */
export function optionalDuration(options: { readonly about: string; readonly least: number; readonly most: number; readonly limits: string; readonly example: string }): Field<number | null> {
  return durationLeaf<number | null>({ ...options, default: null });
}

function durationLeaf<T extends number | null>(options: Common<T> & { readonly least: number; readonly most: number; readonly limits: string; readonly example: string; readonly defaultText?: string }): Field<number | T> {
  return leaf<number | T>({
    about: `${options.about}${options.defaultText ? ` Default: ${options.defaultText}.` : ""}`,
    expected: `a duration such as ${options.example}`,
    example: options.example,
    json: { type: ["string", "number"], minimum: options.least, maximum: options.most, examples: [options.example] },
    ...fallbackOf<number | T>(options),
    read: ({ text }) => {
      const reading = readDuration(text);
      if (!reading.ok) return { ...reading, says: `: ${reading.message}` };
      const hint = `give a duration ${options.limits}`;
      if (reading.minutes < options.least) return { ok: false, code: "value-range", says: ` is ${text.trim()}, which is too short`, hint };
      if (reading.minutes > options.most) return { ok: false, code: "value-range", says: ` is ${text.trim()}, which is too long`, hint };
      return { ok: true, value: reading.minutes };
    },
  });
}

/** A weight of paper in g/m², null when it is not written. */
export function optionalGrammage(options: { readonly about: string; readonly least: number; readonly most: number }): Field<Rational | null> {
  const { least, most } = options;
  return leaf<Rational | null>({
    about: options.about,
    expected: "a weight such as 300 or 65 lb cover",
    example: "300",
    json: { type: ["string", "number"], minimum: least, maximum: most, examples: [300, "65 lb cover"] },
    fallback: { value: null },
    read: ({ text }) => {
      const reading = readGrammage(text);
      if (!reading.ok) return { ...reading, says: `: ${reading.message}` };
      const size = reading.grammage as Length;
      const hint = `give a weight from ${least} to ${most} g/m²`;
      if (compareLengths(size, mm(least)) < 0) return { ok: false, code: "value-range", says: ` is ${text.trim()}, but at least ${least} g/m² is needed`, hint };
      if (compareLengths(size, mm(most)) > 0) return { ok: false, code: "value-range", says: ` is ${text.trim()}, but ${most} g/m² is the most`, hint };
      return { ok: true, value: reading.grammage };
    },
  });
}
