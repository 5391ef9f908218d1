// Words of the section drawings: sizes and thicknesses with their unit, parts as the cut list prints them.
import { printLength, printThickness } from "../../units/print-length.ts";
import { lengthOf } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";

/** Puts sizes and part names into the words that section drawings print. */
export interface SectionWords {
  /** A size with its unit; the other unit is left to text and tables, so that dimensions stay short. */
  size(length: Length): string;
  thickness(length: Length): string;
  /** A named length of the model. */
  value(name: string): Length;
  /** "C card": letter and name as in the cut list. */
  part(id: string): string;
  /** A size in two lines where it says the other unit in brackets, for narrow places. */
  inLines(text: string): readonly string[];
  /** Name of the adhesive for a job: "double-sided tape". */
  adhesive(job: string): string;
  /** The same for a label: a long name in two lines. */
  adhesiveLines(job: string): readonly string[];
}

/** The words for one book. */
export function sectionWords({ definition, model, letter }: DrawingInput): SectionWords {
  const style = { ...definition.units, dual: false };
  const nameOf = (job: string): string => {
    const adhesive = definition.adhesives[job];
    if (!adhesive) throw new Error(`internal error: no adhesive for "${job}"`);
    return adhesive.name;
  };
  return {
    size: (length) => printLength(length, style),
    thickness: (length) => printThickness(length, style),
    value(name) {
      const value = model.values.get(name);
      if (value?.quantity.dimension !== 1) throw new Error(`internal error: no length is called "${name}"`);
      return lengthOf(value.quantity.value);
    },
    part(id) {
      const part = model.parts.find((candidate) => candidate.id === id);
      if (!part) throw new Error(`internal error: no part is called "${id}"`);
      return letter(id) === "" ? part.name : `${letter(id)}\u00a0${part.name}`;
    },
    inLines: (text) => text.split(/ (?=\()/),
    adhesive: nameOf,
    adhesiveLines: (job) => twoLines(nameOf(job)),
  };
}

/** Longer names are set in two lines, in characters. */
const longestLine = 18;

/** Breaks a long text at the space nearest to its middle. */
function twoLines(text: string): readonly string[] {
  if (text.length <= longestLine) return [text];
  const spaces = [...text.matchAll(/ /g)].map((match) => match.index);
  if (spaces.length === 0) return [text];
  const middle = spaces.reduce((best, at) => (Math.abs(at - text.length / 2) < Math.abs(best - text.length / 2) ? at : best));
  return [text.slice(0, middle), text.slice(middle + 1)];
}
