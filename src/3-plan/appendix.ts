// The appendix: each value with its formula, the values put in, and where the rule comes from; and the boxes to measure.
import type { Definition } from "../1-definition/types.ts";
import { dependentsOf } from "../2-model/ledger.ts";
import type { Model, Value } from "../2-model/types.ts";
import type { Length } from "../units/length.ts";
import { printFormula } from "../units/formula.ts";
import { printLength, printThickness } from "../units/print-length.ts";
import { rationalToNumber } from "../units/rational.ts";
import type { AppendixRow, MeasureBox } from "./types.ts";

const originWords: Readonly<Record<Value["origin"], string>> = {
  given: "given", default: "our default", measured: "measured", material: "from the material", computed: "computed",
};

/** One row for each named value, in the order computed. */
export function listValues(definition: Definition, model: Model): readonly AppendixRow[] {
  const show = (name: string): string => inFormula(printValue(model.values.get(name)!, definition));
  return [...model.values.values()].map((value) => ({
    name: value.name,
    meaning: value.meaning,
    formula: value.formula ? printFormula(value.formula) : value.choice,
    filled: value.formula ? printFormula(value.formula, show) : "",
    result: value.calculated ? `${printValue(value, definition)} (calculated ${printValue({ ...value, quantity: value.calculated }, definition)})` : printValue(value, definition),
    origin: originWords[value.origin],
    source: value.source,
  }));
}

/** What a binder would measure off the real object, unless a measured value governs already. */
export function listMeasureBoxes(definition: Definition, model: Model): readonly MeasureBox[] {
  return [...model.values.values()].filter((value) => value.measureYours && value.origin !== "measured").map((value) => ({
    name: value.name,
    calculated: printValue(value, definition),
    dependents: dependentsOf(value.name, model.values),
  }));
}

/** Inside a formula a value stands alone: no second unit, no "about"; the appendix says once that values there are shown rounded. */
function inFormula(text: string): string {
  return text.replace(/\s\(about\s[^)]*\)/, "").replace(/^about\s/, "");
}

/** A value as it is put into text: one unit only where it stands in a formula, which would not stay readable else. */
export function printValue(value: Value, definition: Definition, dual = false): string {
  if (value.quantity.dimension === 0) return String(rationalToNumber(value.quantity.value));
  const style = { ...definition.units, dual };
  const length = value.quantity.value as Length;
  return value.shownAs === "thickness" ? printThickness(length, style) : printLength(length, style);
}
