// The steps of a stab binding: stack the leaves, tie them inside, add the covers, pierce, sew the pattern, hide the end.
import { checkPrint, cutParts } from "./bench/preparation.ts";
import { prepareBlock } from "./stab-binding/prepare.ts";
import { sewPattern } from "./stab-binding/sew.ts";
import { stabBindingTerms, stabBindingTroubles } from "./stab-binding/words.ts";
import type { PlanBinding } from "./binding.ts";

export const plan: PlanBinding<"stab-binding"> = (context) => ({
  steps: [
    cutParts(context, { agree: "Leaves and covers have the same height.", spoils: "A leaf that is short at the spine edge is not caught by the thread." }),
    checkPrint(context, "leaf"),
    ...prepareBlock(context), ...sewPattern(context),
  ],
  troubles: stabBindingTroubles(context),
  terms: stabBindingTerms,
  supervision:
    "Adults new to the craft: one teacher who has sewn this pattern, in sight of everyone while knives, awls, drills and needles are out. Under 14: an adult at each table, and the holes pierced beforehand.",
});
