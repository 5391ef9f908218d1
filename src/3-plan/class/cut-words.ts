// A cut plan in words: each cut with its marks, what comes off, and what the offcuts are still good for.
import type { CutStep, Offcut, PartCutOff, SheetLayout } from "../cutting/types.ts";
import { capital, listInWords } from "../wording.ts";
import type { Wording } from "../wording.ts";

/** One numbered cut, in words. */
export interface CutSentence {
  readonly number: number;
  readonly what: string;
  readonly gives: string;
}

/** The cuts of a layout in order; `letterOf` gives the letter of a piece in the cut list. */
export function cutsInWords(layout: SheetLayout, letterOf: (piece: string) => string, say: Wording): readonly CutSentence[] {
  return layout.cuts.map((step) => ({ number: step.number, what: whatIsCut(step, say), gives: whatComesOff(step.parts, letterOf) }));
}

function whatIsCut(step: CutStep, say: Wording): string {
  const from = step.measured === "from-left" ? "left" : "lower";
  const which = step.part === "sheet" ? "the sheet" : `part ${step.part}`;
  const marks = step.marks.map((mark) => say.number(mark));
  return `${capital(which)}: measure from its ${from} edge and cut at ${listInWords(marks)}.`;
}

function whatComesOff(parts: readonly PartCutOff[], letterOf: (piece: string) => string): string {
  const pieces = new Map<string, number>();
  const further: string[] = [];
  let offcuts = 0;
  for (const { use } of parts) {
    if (use.kind === "piece") pieces.set(use.piece, (pieces.get(use.piece) ?? 0) + 1);
    else if (use.kind === "part") further.push(use.part);
    else offcuts += 1;
  }
  return [
    ...[...pieces].map(([piece, count]) => `${count} × ${letterOf(piece)}`),
    ...(further.length === 0 ? [] : [`${further.length === 1 ? "part" : "parts"} ${listInWords(further)} to cut on`]),
    ...(offcuts === 0 ? [] : [offcuts === 1 ? "an offcut" : `${offcuts} offcuts`]),
  ].join("; ");
}

/** "offcut 120 × 340 mm, still good for C or D"; small ones are not worth a word. */
export function offcutsInWords(offcuts: readonly Offcut[], letterOf: (piece: string) => string, say: Wording): readonly string[] {
  return offcuts.filter((offcut) => offcut.holds.length > 0).map((offcut) => `${say.sizes(offcut.height, offcut.width)}, still good for ${offcut.holds.map(letterOf).join(" or ")}`);
}
