// The steps of a pamphlet: fold and trim the section, fit the cover, pierce, sew, tie.
import { checkPrint, cutParts } from "./bench/preparation.ts";
import { preparePamphlet } from "./pamphlet/prepare.ts";
import { sewPamphlet } from "./pamphlet/sew.ts";
import { pamphletTerms, pamphletTroubles } from "./pamphlet/words.ts";
import type { PlanBinding } from "./binding.ts";

export const plan: PlanBinding<"pamphlet"> = (context) => ({
  steps: [
    cutParts(context, { agree: "All sheets have the same size.", spoils: "A sheet that is short by more than a pencil line shows at head or tail." }),
    checkPrint(context, "text-sheet"),
    ...preparePamphlet(context), ...sewPamphlet(context),
  ],
  troubles: pamphletTroubles(context),
  terms: pamphletTerms,
  supervision:
    "Adults new to the craft: one teacher who has sewn through a fold before, in sight of everyone while knives, awls and needles are out. Under 12: an adult at each table, and the holes pierced beforehand.",
});
