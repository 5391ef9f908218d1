// The steps of a concertina: the covers first, so that they dry while the strip is folded.
import { makeConcertinaCovers } from "./concertina/covers.ts";
import { foldConcertinaStrip } from "./concertina/strip.ts";
import { joinBookAndCovers } from "./concertina/assembly.ts";
import { concertinaTerms, concertinaTroubles } from "./concertina/words.ts";
import { cutParts } from "./bench/preparation.ts";
import { checkBoards } from "./concertina/check-boards.ts";
import type { PlanBinding } from "./binding.ts";

export const plan: PlanBinding<"concertina"> = (context) => {
  const { model } = context;
  // The strips are cut in a step of their own, where the paper is squared.
  const withoutStrips = { ...context, model: { ...model, parts: model.parts.filter((part) => part.material !== "panel paper") } };
  const cut = cutParts(withoutStrips, { agree: "The two boards have the same height and width.", spoils: "A board out of square shows beside the folded strip." });
  return {
    steps: [
      { ...cut, action: [...cut.action, "Leave the paper for the strip: it is cut in a step of its own."] },
      checkBoards(context),
      ...makeConcertinaCovers(context), ...foldConcertinaStrip(context), ...joinBookAndCovers(context),
    ],
    troubles: concertinaTroubles(context),
    terms: concertinaTerms(context),
    supervision:
      "Adults new to the craft: one teacher who has made this book, in sight of everyone while knives are out. Under 16: an adult at each table while knives are used, or boards and strips cut beforehand.",
  };
};
