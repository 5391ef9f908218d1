// How score positions are put into figures: measured from the left edge or from the centre line of the card.
import type { Score } from "../../2-model/types.ts";
import { divideLength, lengthOf, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { printNumberOnly } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";

/** Where score positions are measured from. */
export type Datum = "left edge" | "centre line";

/** How positions are printed from this datum. */
export interface ScoreMarks {
  /** The figure alone. */
  text(score: Score): string;
  /** The figure with its side, for the text alternative. */
  words(score: Score): string;
  /** Where the datum lies, in millimetres from the card's left edge. */
  readonly datumAt: number;
}

/** How this book's score positions are printed from a datum. */
export function marksOf(input: DrawingInput<"stub-album">, datum: Datum): ScoreMarks {
  const { units } = input.definition;
  const cardWidth = toMillimetres(input.model.geometry.cardWidth);
  if (datum === "left edge") {
    const text = (score: Score): string => input.number(score.at);
    return { text, words: text, datumAt: 0 };
  }
  // Positions from the centre may lie on half marks: the centre itself does.
  const style = { ...units, step: divideLength(units.step, 2) };
  const text = ({ fromCentre }: Score): string => printNumberOnly(withoutSign(fromCentre), style);
  const words = (score: Score): string => `${text(score)}${score.fromCentre.n === 0n ? "" : score.fromCentre.n < 0n ? " to the left" : " to the right"}`;
  return { text, words, datumAt: cardWidth / 2 };
}

function withoutSign(length: Length): Length {
  return length.n < 0n ? lengthOf({ n: -length.n, d: length.d }) : length;
}

/** With an odd number of stubs the middle crest lies on the centre line, or beside it by rounding: then no second line is drawn over it. */
export function centreCrest(scores: readonly Score[]): Score | undefined {
  return scores.find((score) => Math.abs(toMillimetres(score.fromCentre)) < 1.2);
}

/** A sentence for the caption; empty when no crest lies there. */
export function centreWords(scores: readonly Score[]): string {
  const crest = centreCrest(scores);
  return crest ? ` The centre line ${crest.fromCentre.n === 0n ? "is" : "lies beside"} the ${crest.name}.` : "";
}
