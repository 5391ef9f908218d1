// The keys of the packs in which a class buys its adhesives: what a pack costs, and how much is in it.
import type { CatalogueAdhesive } from "../catalogue/adhesives.ts";
import type { Problem } from "../problems/problem.ts";
import type { Length } from "../units/length.ts";
import type { Rational } from "../units/rational.ts";
import { adhesiveName } from "./adhesive-keys.ts";
import { listWithDefault, mapping } from "./collections.ts";
import { optionalCount } from "./fields.ts";
import { optionalLength } from "./length-fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { price } from "./material-keys.ts";
import type { AdhesivePack } from "./types.ts";

/** A pack as written. */
export interface WrittenPack {
  readonly adhesive: CatalogueAdhesive;
  readonly price: Rational | null;
  readonly grams: number | null;
  readonly length: Length | null;
}

/** The schema of the packs; empty when none is written. */
export function packKeys(context: FieldContext): Field<readonly WrittenPack[]> {
  return listWithDefault(mapping({
    adhesive: adhesiveName({ about: "Which adhesive it is.", usual: null }),
    price: price("Price of a pack."),
    grams: optionalCount({ about: "Grams in a pack of what is brushed on.", least: 1, most: 100_000, example: 500 }),
    length: optionalLength(context, { about: "Length on a roll of tape.", least: "1000", most: "1000000", example: "50 m" }),
  }, { about: "A pack of an adhesive.", example: "{adhesive: PVA, grams: 500, price: 9.80}" }),
  [], { about: "Packs in which adhesives are bought.", most: 20, oneMayStandAlone: false, mayBeEmpty: true });
}

/** Why a pack cannot be counted in; `key` is where to look. */
export type PackProblem = Pick<Problem, "code" | "message" | "hint"> & { readonly index: number; readonly key: keyof WrittenPack };

/** The packs as the plan uses them: each adhesive once, by weight if it is brushed on, else by length. */
export function settlePacks(written: readonly WrittenPack[]): { readonly packs: readonly AdhesivePack[]; readonly problems: readonly PackProblem[] } {
  const problems = written.flatMap(({ adhesive, grams, length }, index): readonly PackProblem[] => {
    const { name } = adhesive;
    if (written.findIndex((each) => each.adhesive.name === name) < index) return [{ index, key: "adhesive", code: "keys-exclude", message: `a pack of ${name} is written already`, hint: "keep one of the two" }];
    if (adhesive.gramsPerSquareMetre !== null && grams === null) return [{ index, key: "adhesive", code: "key-missing", message: `the pack of ${name} has no grams`, hint: "write what is in it, such as grams: 500" }];
    if (adhesive.gramsPerSquareMetre === null && length === null) return [{ index, key: "adhesive", code: "key-missing", message: `the pack of ${name} has no length`, hint: "write what is on the roll, such as length: 50 m" }];
    return [];
  });
  return { packs: written.map(({ adhesive, price: each, grams, length }) => ({ name: adhesive.name, price: each, grams, length })), problems };
}
