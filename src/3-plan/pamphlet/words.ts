// Troubleshooting and glossary of the pamphlet.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a pamphlet, with this book's numbers in it. */
export function pamphletTroubles({ model, say }: PlanContext<"pamphlet">): readonly DraftTrouble[] {
  const { creep, sheets } = model.geometry;
  return [
    ...(sheets > 1 ? [{ sign: "The middle pages stand out at the fore-edge.", cause: `Creep: every sheet around them needs a little more width for its fold, ${say.thickness(creep)} in all.`, repair: "Trim the fore-edge once the section is folded and pressed.", steps: ["fold-sheets", "trim-fore-edge", "trim-together"] }] : []),
    { sign: "A page tears at a hole.", cause: "The thread was pulled away from the fold in place of along it.", repair: "Glue a narrow strip of thin strong paper along the fold of that sheet, pierce it and sew again.", steps: ["pierce-holes", "sew"] },
    { sign: "The stitches are loose.", cause: "The ends were tied before every stitch had been pulled tight.", repair: "Open the knot, tighten stitch by stitch from the middle, and tie again.", steps: ["sew", "tie"] },
    { sign: "The fold has cracked.", cause: "The paper was folded across its grain, or the cover was not scored.", repair: "Cut new parts with the grain along the fold. A cracked cover can be lined inside with a strip of thin paper.", steps: ["cut-parts", "fold-sheets", "fold-cover"] },
    { sign: "The cover does not reach over the pages.", cause: "The section is thicker than planned and takes more of the cover’s width.", repair: "Trim the fore-edge of the pages once more, or cut a new cover to the measured section.", steps: ["fold-cover", "trim-fore-edge"] },
  ];
}

/** Words of the trade that a pamphlet's booklet uses. */
export const pamphletTerms: readonly Term[] = [
  ...sharedTerms("bone folder", "fold", "fore-edge", "grain", "head, tail", "height, width", "mountain fold, valley fold", "pass", "running dimension", "score", "section", "square"),
  { term: "creep", meaning: "how far the inner leaves of a section stand out beyond the outer ones" },
  { term: "long stitch", meaning: "the one stitch that runs past the middle hole; the ends are tied over it" },
  { term: "square knot", meaning: "two half knots crossed opposite ways; it lies flat and does not slip" },
];
