// Takes out the soft hyphens at which no line ends, and tells the hyphens that the browser painted for the others.
import type { Operation } from "./content-stream.ts";
import type { PaintedUnit, Unit } from "./drawing-units.ts";

/**
 * The browser writes each soft hyphen as an invisible blank with U+00AD as its text, and where a line ends at one, paints a hyphen as a text of its own.
 * The soft hyphen stays there, so that a reader joins the word again (ISO 32000-1, 14.8.2.2.3); the painted hyphen then is no part of the text.
 */
export function settleHyphens(units: readonly Unit[]): readonly Unit[] {
  const settled: Unit[] = [];
  let endsInHyphen = false;
  for (const unit of units) {
    if (unit.kind !== "text") {
      settled.push(unit);
      if (unit.kind !== "state") endsInHyphen = false;
      continue;
    }
    settled.push(endsInHyphen && showsOneGlyph(unit) ? { ...unit, mark: null } : { ...unit, operations: withoutInnerHyphens(unit.operations) });
    endsInHyphen = softHyphenEnds(unit.operations);
  }
  return settled;
}

function isSoftHyphen({ operator, operands }: Operation): boolean {
  return operator === "BDC" && operands.includes("/ActualText") && operands.some((operand) => /^<feff00ad>$/i.test(operand));
}

/** The text ends with `BDC … EMC ET`. */
function softHyphenEnds(operations: readonly Operation[]): boolean {
  const begin = operations.findLastIndex((operation) => operation.operator === "BDC");
  return begin >= 0 && isSoftHyphen(operations[begin]!) && operations.findIndex(({ operator }, index) => index > begin && operator === "EMC") === operations.length - 2;
}

function showsOneGlyph({ operations }: PaintedUnit): boolean {
  const shown = operations.filter(({ operator }) => operator === "Tj" || operator === "TJ");
  return shown.length === 1 && shown[0]!.operator === "Tj" && /^<[0-9A-Fa-f]{4}>$/.test(shown[0]!.operands[0] ?? "");
}

/** Without the marks and blanks of inner soft hyphens; the movement between them stays. */
function withoutInnerHyphens(operations: readonly Operation[]): readonly Operation[] {
  if (!operations.some(isSoftHyphen)) return operations;
  const last = softHyphenEnds(operations) ? operations.findLastIndex(isSoftHyphen) : -1;
  const kept: Operation[] = [];
  let within = false;
  operations.forEach((operation, index) => {
    if (index !== last && isSoftHyphen(operation)) within = true;
    else if (within && operation.operator === "EMC") within = false;
    else if (!within || operation.operator !== "Tj") kept.push(operation);
  });
  return kept;
}
