// The steps of a case binding: text block, lined spine, case, casing in.
import { blockPartIds } from "../2-model/case-binding/parts.ts";
import { checkPrint, cutParts } from "./bench/preparation.ts";
import type { PlanBinding } from "./binding.ts";
import { makeBlock } from "./case-binding/block.ts";
import { caseIn } from "./case-binding/casing-in.ts";
import { coverCase } from "./case-binding/covering.ts";
import { makeCase } from "./case-binding/case.ts";
import { lineSpine } from "./case-binding/spine.ts";
import { caseTerms, caseTroubles } from "./case-binding/words.ts";

export const plan: PlanBinding<"case-binding"> = (context) => {
  const { geometry } = context.model;
  const dangers = ["knives", "awls", ...(geometry.sewing ? ["needles"] : []), ...(geometry.round ? ["hammers"] : [])];
  return {
    steps: [
      checkPrint(context, "boards", "before cutting"),
      cutParts(context, {
        agree: `${geometry.sewing ? "Folios" : "Leaves"} and endpapers have the same height.`, spoils: "A sheet that is out of square shows at the head of the book.",
        only: { id: "cut-block", stage: "Prepare", title: "Cut the paper and what goes on the spine", parts: blockPartIds, first: ["Boards, spine strip, cloth and sides are cut later, once the text block has been measured."] },
      }),
      ...makeBlock(context), ...lineSpine(context), ...makeCase(context), ...coverCase(context), ...caseIn(context),
    ],
    troubles: caseTroubles(context),
    terms: caseTerms(context),
    supervision: `Adults new to the craft: one teacher who has made this book, in sight of everyone while ${dangers.join(", ")} or presses are in use. `
      + `Under 16: an adult at each table for those steps, or the pieces cut${geometry.sewing ? " and pierced" : ""} beforehand.`,
  };
};
