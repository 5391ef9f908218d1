// The ledger: every named value of a book in the order computed, with the formula that made it.
import { compareRational, rational } from "../units/rational.ts";
import type { Rational } from "../units/rational.ts";
import { lengthOf } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import { evaluateFormula, namesInFormula, parseFormula } from "../units/formula.ts";
import type { Quantity } from "../units/formula.ts";
import type { Value, ValueOrigin } from "./types.ts";

/** What a value means and where its rule comes from. */
export interface ValueNote {
  readonly meaning: string;
  /** "geometry" for a derivation of ours, else the reference or "common practice, no source". */
  readonly source: string;
  readonly shownAs?: Value["shownAs"];
  readonly measureYours?: boolean;
  /** For a chosen value: the names of the values that decided. */
  readonly dependsOn?: readonly string[];
}

/** The named values of one book while they are computed; every name is entered once and may be used from then on. */
export interface Ledger {
  readonly values: ReadonlyMap<string, Value>;
  /** Enters a value that was not computed here. */
  give(name: string, quantity: Length | number, origin: ValueOrigin, note: ValueNote): void;
  /** Computes a value; a measured value of the same name governs in its place, and the calculated one is kept beside it. */
  compute(name: string, formula: string, note: ValueNote): Length;
  /** Enters a value that was chosen from a list, with the rule of the choice in words. */
  choose(name: string, quantity: Length, choice: string, note: ValueNote): Length;
  length(name: string): Length;
  number(name: string): Rational;
}

/**
 * Opens a ledger. `step` is the ruler's step for rounding in formulas; `measured` holds the author's measured values by name.
 * Asking for an unknown name or a wrong dimension throws: a mistake of ours.
 */
export function openLedger(step: Length, measured: Readonly<Record<string, Length>>): Ledger {
  const values = new Map<string, Value>();

  const enter = (value: Value): void => {
    if (values.has(value.name)) throw new Error(`internal error: value "${value.name}" is entered twice`);
    values.set(value.name, value);
  };
  const lookUp = (name: string): Quantity => {
    const value = values.get(name);
    if (!value) throw new Error(`internal error: no value is called "${name}"`);
    return value.quantity;
  };
  const length = (name: string): Length => {
    const quantity = lookUp(name);
    if (quantity.dimension !== 1) throw new Error(`internal error: "${name}" is no length`);
    return lengthOf(quantity.value);
  };
  const shared = (note: ValueNote) => ({
    meaning: note.meaning, source: note.source, shownAs: note.shownAs ?? "size", measureYours: note.measureYours ?? false,
    ...(note.dependsOn ? { dependsOn: note.dependsOn } : {}),
  });

  return {
    values,
    length,
    number: (name) => lookUp(name).value,
    give(name, quantity, origin, note) {
      const isNumber = typeof quantity === "number";
      enter({
        name, ...shared(note), formula: null, choice: "", origin, calculated: null,
        shownAs: isNumber ? "number" : (note.shownAs ?? "size"),
        quantity: isNumber ? { value: rational(quantity), dimension: 0 } : { value: quantity, dimension: 1 },
      });
    },
    compute(name, text, note) {
      const formula = parseFormula(text);
      const calculated = evaluateFormula(formula, { lookUp, step });
      if (calculated.dimension !== 1) throw new Error(`internal error: "${name}" is computed as no length`);
      const governing = measured[name];
      enter({
        name, ...shared(note), formula, choice: "",
        origin: governing ? "measured" : "computed",
        calculated: governing ? calculated : null,
        quantity: governing ? { value: governing, dimension: 1 } : calculated,
      });
      return length(name);
    },
    choose(name, quantity, choice, note) {
      enter({ name, ...shared(note), formula: null, choice, origin: "computed", calculated: null, quantity: { value: quantity, dimension: 1 } });
      return quantity;
    },
  };
}

/** The names of all values that depend, directly or through others, on the value called `name`, in ledger order. */
export function dependentsOf(name: string, values: ReadonlyMap<string, Value>): readonly string[] {
  const touched = new Set([name]);
  for (const value of values.values()) {
    const uses = value.formula ? namesInFormula(value.formula) : (value.dependsOn ?? []);
    if (uses.some((used) => touched.has(used))) touched.add(value.name);
  }
  return [...touched].filter((each) => each !== name);
}

/** How far a measured value lies from the calculated one, as an exact fraction of the calculated; null when none was calculated. */
export function deviationOf(value: Value): Rational | null {
  if (!value.calculated || value.calculated.value.n === 0n) return null;
  const { value: calculated } = value.calculated;
  const difference = rational(
    value.quantity.value.n * calculated.d - calculated.n * value.quantity.value.d,
    value.quantity.value.d * calculated.d,
  );
  const share = rational(difference.n * calculated.d, difference.d * calculated.n);
  return compareRational(share, rational(0)) < 0 ? rational(-share.n, share.d) : share;
}
