// Troubleshooting and glossary of the stab binding.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a stab binding, with this book's numbers in it. */
export function stabBindingTroubles({ model, say }: PlanContext<"stab-binding">): readonly DraftTrouble[] {
  const { setBack, usableWidth, thickness } = model.geometry;
  return [
    { sign: "Words disappear in the spine.", cause: `A side-sewn book does not open flat: only ${say.size(usableWidth)} of a page can be used.`, repair: "Keep writing and pictures out of the strip beside the spine; turn the leaves over fully, bent along the line of holes.", steps: ["finish"] },
    { sign: "The holes on the back lie crooked.", cause: `The tool was not held upright: over ${say.thickness(thickness)} a small slant becomes a large one.`, repair: "Pierce the last covers and leaves again from the back, with the template.", steps: ["pierce-holes"] },
    { sign: "Thread tears through the paper.", cause: `The holes lie too near to the edge for this paper: here ${say.size(setBack)}. Or a stitch was pulled away from the edge.`, repair: "Line the strip along the spine with thin strong paper and pierce it again.", steps: ["pierce-holes", "sew-1"] },
    { sign: "A line of the pattern is missing at the end.", cause: "A pass was left out.", repair: "Compare front and back with the drawings, draw the thread back to that pass and go on from there.", steps: ["sew-1", "sew-2"] },
    { sign: "The thread is loose at the spine.", cause: "The stack was not clamped while it was sewn, or stitches were not tightened one by one.", repair: "Pull the slack along, stitch by stitch, from the first to the last, before the ends are tied.", steps: ["stack-leaves", "hide-end"] },
  ];
}

/** Words of the trade that a stab binding's booklet uses. */
export const stabBindingTerms: readonly Term[] = [
  ...sharedTerms("bone folder", "fore-edge", "grain", "head, tail", "height, width", "pass", "running dimension", "score", "spine edge"),
  { term: "block", meaning: "all leaves together, without the covers" },
  { term: "flap", meaning: "the strip of a cover that is folded in at the fore-edge" },
  { term: "inner binding", meaning: "two short threads, hidden under the covers, that hold the leaves together" },
  { term: "main hole", meaning: "one of the holes in the line along the spine; they bear numbers, the pattern’s other holes letters" },
  { term: "set-back", meaning: "how far the line of main holes lies from the spine edge" },
  { term: "square knot", meaning: "two half knots crossed opposite ways; it lies flat and does not slip" },
  { term: "wrap", meaning: "thread that goes from a hole around an edge and back to the same hole" },
];
