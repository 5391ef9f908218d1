// Lengths and sheet sizes as schemas: read exactly, kept within limits, with a default for each unit.
import { compareLengths, mm, noLength } from "../units/length.ts";
import type { Length, Unit } from "../units/length.ts";
import { quoted } from "../units/read-number.ts";
import { readLength, readSizes } from "../units/read-length.ts";
import { findSheetSize, sheetSizeNames } from "../catalogue/sheet-sizes.ts";
import { nearestOf } from "../problems/nearest.ts";
import { leaf } from "./leaf.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { lengthWithUnit, printLimit } from "./limits.ts";

/** Written in the options of a length: millimetres as decimals for the limits, both units for the default. */
export interface LengthOptions {
  readonly about: string;
  readonly least: string;
  readonly most: string;
  /** A default for each unit, an exact length for both, or null when the model works it out. Without it the key is required. */
  readonly default?: { readonly mm: Length; readonly in: Length } | null;
  /** How the default is described to authors: "20 mm, or 3/4 in". */
  readonly defaultText?: string;
  readonly example: string;
}

/** The pattern of a length for editors: rough on purpose, the exact reading is ours. */
const lengthPattern = "^\\s*[0-9.¼-¾⅐-⅟⁰-⁹₀-₉].*$";

function lengthLeaf<T>(context: FieldContext, options: LengthOptions, fallback: { value: T } | undefined): Field<Length | T> {
  const least = mm(options.least);
  const most = mm(options.most);
  const limits = `Between ${options.least} mm and ${options.most} mm.`;
  const byDefault = options.defaultText ? ` Default: ${options.defaultText}.` : "";
  return leaf<Length | T>({
    about: `${options.about} ${limits}${byDefault}`,
    expected: `a length such as ${options.example}`,
    example: options.example,
    json: { type: ["string", "number"], pattern: lengthPattern, minimum: 0, examples: [options.example] },
    ...(fallback ? { fallback } : {}),
    read: (node) => {
      const bareUnit = context.bareUnitOf(node);
      const reading = readLength(node.text, bareUnit ?? context.governing);
      if (!reading.ok) return { ...reading, says: `: ${reading.message}` };
      // Units that cannot be read are a problem of their own; whether a bare number fits can only be said after it is solved.
      if (bareUnit === null && !readLength(node.text, null).ok) return { ok: true, value: noLength };
      const shown = lengthWithUnit(node.text, reading.writtenUnit);
      const from = printLimit(least, reading.writtenUnit, "up");
      const to = printLimit(most, reading.writtenUnit, "down");
      const range = `give a length from ${from} to ${to}`;
      const hint = otherUnitHint(node.text, reading.writtenUnit, least, most) ?? range;
      if (reading.length.n < 0n) return { ok: false, code: "length-range", says: ` is ${shown}, but a length is never negative`, hint };
      if (compareLengths(reading.length, least) < 0) return { ok: false, code: "length-range", says: ` is ${shown}, but at least ${from} is needed`, hint };
      if (compareLengths(reading.length, most) > 0) return { ok: false, code: "length-range", says: ` is ${shown}, but ${to} is the most`, hint };
      return { ok: true, value: reading.length };
    },
  });
}

/** A bare number that only makes sense in the unit that the project does not use was probably meant in that unit. */
function otherUnitHint(text: string, unit: Unit, least: Length, most: Length): string | null {
  if (readLength(text, null).ok) return null;
  const other: Unit = unit === "mm" ? "in" : "mm";
  const reading = readLength(text, other);
  if (!reading.ok || compareLengths(reading.length, least) < 0 || compareLengths(reading.length, most) > 0) return null;
  return `a number without a unit is in ${unit} here; if ${other} is meant, write ${text.trim()} ${other}`;
}

/** A length that is always known after reading: required, or with a default for the project's unit. */
export function length(context: FieldContext, options: LengthOptions & { readonly default?: { readonly mm: Length; readonly in: Length } }): Field<Length> {
  return lengthLeaf<Length>(context, options, options.default ? { value: options.default[context.governing] } : undefined);
}

/** A length that is null when it is not written. */
export function optionalLength(context: FieldContext, options: Omit<LengthOptions, "default">): Field<Length | null> {
  return lengthLeaf<null>(context, options, { value: null });
}

/** A sheet as named or measured by the author. */
export interface SheetInHand {
  readonly height: Length;
  readonly width: Length;
}

/** A sheet by name ("A3") or size ("500 mm x 700 mm"). */
export function sheet(context: FieldContext, options: { readonly about: string; readonly least: string; readonly most: string }): Field<SheetInHand> {
  const least = mm(options.least);
  const most = mm(options.most);
  return leaf<SheetInHand>({
    about: options.about,
    expected: "a sheet such as 500 mm x 700 mm or A3",
    example: "500 mm x 700 mm",
    json: { type: "string", examples: ["500 mm x 700 mm", "A3"] },
    read: (node) => {
      const named = findSheetSize(node.text);
      if (named) return { ok: true, value: { height: named.height, width: named.width } };
      const hint = "write height x width with a unit, such as 500 mm x 700 mm, or a name such as A3 or Letter";
      if (!/^[\s\d.¼-¾⅐-⅟⁰-⁹+-]/u.test(node.text)) {
        const near = nearestOf(node.text, sheetSizeNames);
        return { ok: false, code: "value-unknown", says: `: ${quoted(node.text)} is not a sheet that is known by name`, hint: near ? `did you mean ${near}?` : hint };
      }
      const bareUnit = context.bareUnitOf(node);
      const reading = readSizes(node.text, bareUnit ?? context.governing);
      if (!reading.ok) return { ...reading, says: `: ${reading.message}` };
      if (bareUnit === null) return { ok: true, value: reading };
      for (const side of [reading.height, reading.width]) {
        if (compareLengths(side, least) < 0 || compareLengths(side, most) > 0) {
          const range = `sides from ${printLimit(least, reading.writtenUnit, "up")} to ${printLimit(most, reading.writtenUnit, "down")}`;
          return { ok: false, code: "length-range", says: `: ${quoted(node.text)} is no sheet that is made`, hint: `give ${range}` };
        }
      }
      return { ok: true, value: { height: reading.height, width: reading.width } };
    },
  });
}
