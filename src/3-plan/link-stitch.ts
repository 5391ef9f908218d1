// The steps of a link stitch: covers first, so that they dry while the sections are folded and pierced.
import type { PlanBinding } from "./binding.ts";
import { checkPrint, cutParts } from "./bench/preparation.ts";
import { coverBoards, pierceBoards } from "./link-stitch/covers.ts";
import { sewBook } from "./link-stitch/sewing.ts";
import { linkStitchTerms, linkStitchTroubles } from "./link-stitch/words.ts";
import { makeSections } from "./sewing/sections.ts";

export const plan: PlanBinding<"link-stitch"> = (context) => {
  const { model } = context;
  const folios = model.parts.find(({ id }) => id === "folio")!.count;
  const others = model.parts.filter(({ id }) => id !== "folio").reduce((sum, part) => sum + part.count, 0);
  return {
    steps: [
      cutParts(context, {
        agree: "The folios lie edge to edge in one pile.", spoils: "A board that is short lets the pages stick out.",
        // Folios are cut several at a time.
        minutes: 15 + 3 * others + Math.ceil(folios / 3),
      }),
      checkPrint(context, "boards"),
      ...coverBoards(context), ...makeSections({ ...model.geometry, say: context.say }), ...pierceBoards(context), ...sewBook(context),
    ],
    troubles: linkStitchTroubles(context),
    terms: linkStitchTerms(context),
    supervision:
      "Adults new to the craft: one teacher who has sewn this book, in sight of everyone while knives, awls, punches or drills are out. Under 16: an adult at each table for those steps, or the pieces cut and pierced beforehand.",
  };
};
