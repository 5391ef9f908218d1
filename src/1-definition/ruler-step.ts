// The step of the ruler that sizes are rounded to: one of a few marks that real rulers have.
import { inches, mm, sameLength } from "../units/length.ts";
import type { Length, Unit } from "../units/length.ts";
import { readLength } from "../units/read-length.ts";
import { quoted } from "../units/read-number.ts";
import { leaf, listOf } from "./leaf.ts";
import type { Field, FieldContext } from "./leaf.ts";

const steps: Readonly<Record<Unit, readonly { readonly text: string; readonly length: Length }[]>> = {
  mm: ["0.1", "0.25", "0.5", "1"].map((text) => ({ text: `${text} mm`, length: mm(text) })),
  in: [8, 16, 32, 64].map((denominator) => ({ text: `1/${denominator} in`, length: inches(1, denominator) })),
};

const usualStep: Readonly<Record<Unit, Length>> = { mm: mm("0.5"), in: inches(1, 16) };

/** The schema of `units/step`. */
export function rulerStep(context: FieldContext): Field<Length> {
  const { governing } = context;
  const list = listOf(steps[governing].map((step) => step.text));
  return leaf<Length>({
    about: "Distance between the marks that sizes are rounded to. Default: 0.5 mm, or 1/16 in.",
    expected: `one of ${list}`,
    example: steps[governing][0]!.text,
    json: { enum: [...steps.in, ...steps.mm].map((step) => step.text) },
    fallback: { value: usualStep[governing] },
    read: (node) => {
      const reading = readLength(node.text, context.bareUnitOf(node) ?? governing);
      if (!reading.ok) return { ...reading, says: `: ${reading.message}` };
      const found = steps[governing].find((step) => sameLength(step.length, reading.length));
      if (found) return { ok: true, value: found.length };
      return { ok: false, code: "value-unknown", says: ` is ${quoted(node.text)}, which is not a ruler's mark in a project in ${governing}`, hint: `take one of ${list}` };
    },
  });
}
