// Troubleshooting and glossary of the case binding.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a case binding, with this book's numbers in it. */
export function caseTroubles({ model, say }: PlanContext<"case-binding">): readonly DraftTrouble[] {
  const { geometry } = model;
  return [
    { sign: "The cover does not close, or the boards lean outwards at the fore-edge.", cause: `The spine strip is narrower than the book: here the back is ${say.thickness(geometry.backThickness)}. ${geometry.sewing ? "Swell or thick endpapers add" : "Thick leaves or endpapers add"} more than planned.`, repair: "Press the text block harder. If the strip is still too narrow, make the case again to your measure.", steps: ["measure-block", "cut-case"] },
    { sign: "The boards spring up when the book is opened.", cause: `The joint is too narrow: ${say.size(geometry.joint)} are needed between strip and board.`, repair: "Work the joints to and fro over a rod. If they stay stiff, the case must be made again with a wider joint.", steps: ["glue-boards", "press-book"] },
    { sign: "The fore-edge square is smaller than those at head and tail.", cause: "The block sat too far forward in the case, or the groove was pressed in late.", repair: "Nothing helps once it is dry. Next time push the spine against the strip before the first board goes down.", steps: ["case-in"] },
    ...(geometry.sewing ? [
      { sign: "The sections are loose and show gaps.", cause: "The thread was not pulled snug along the fold, or a kettle stitch slipped.", repair: "Before the spine is glued: pull the slack towards the next kettle stitch with the needle, stitch by stitch. Afterwards: glue holds it.", steps: ["sew-first-sections", "sew-sections"] },
      { sign: "The spine is much thicker than the fore-edge.", cause: `Thread swells the spine: here by ${say.thickness(geometry.block.swell)} in all. Thick thread or slack sewing swells it more.`, repair: "Tap the spine down between boards with the hammer before it is glued; next time take thinner thread.", steps: ["sew-sections", "glue-spine"] },
    ] : [
      { sign: "Single leaves come loose.", cause: "The adhesive did not reach between the leaves.", repair: "Tip each loose leaf in with a hair’s breadth of adhesive along its spine edge and press the book shut.", steps: ["fan-glue"] },
    ]),
    { sign: "The endpaper has wrinkled on the board.", cause: "Too much adhesive, or the book was opened while it was wet.", repair: "While it is damp, smooth it towards the fore-edge through paper. Dried in, it stays.", steps: ["case-in", "press-book"] },
    { sign: "The pages stick together near the spine.", cause: `The line of adhesive at the endpaper is wider than ${say.size(geometry.endpaperTip)}.`, repair: "Slide a thin bone folder along it and lift the paper off as far as the line should go.", steps: ["tip-endpapers"] },
    { sign: "A board has warped.", cause: "Grain runs across the height, or the case dried without weight.", repair: "Press the book for some days. If the grain runs across, it will come back.", steps: ["cut-case", "turn-in"] },
  ];
}

/** Words of the trade that a case binding's booklet uses. */
export function caseTerms({ model }: PlanContext<"case-binding">): readonly Term[] {
  const { geometry } = model;
  return [
    ...sharedTerms("board", "bone folder", "endpaper", "fore-edge", "grain", "head, tail", "height, width", "mull", "running dimension", "square", "turn-in"),
    ...(geometry.sewing ? sharedTerms("folio", "kettle station", "kettle stitch", "section", "station", "swell") : []),
    ...(geometry.endband ? sharedTerms("endband") : []),
    { term: "back", meaning: "the spine of the text block, without the case" },
    { term: "case", meaning: "the finished hard cover before the book is in it" },
    { term: "casing in", meaning: "gluing the text block into its case" },
    { term: "groove", meaning: "the furrow between the board and the spine of the finished book" },
    { term: "joint", meaning: "cloth between spine strip and board; it becomes the groove" },
    { term: "pastedown", meaning: "the leaf of an endpaper that is glued to the board" },
    { term: "shoulder", meaning: "the edge where the back meets the first or last leaf" },
    { term: "spine strip", meaning: "the strip in the spine of the case" },
    { term: "text block", meaning: "all pages, held together, with their endpapers" },
    ...(geometry.covering.kind === "full" ? [] : [{ term: "side paper", meaning: "the paper that covers a board beside the cloth" }]),
  ];
}
