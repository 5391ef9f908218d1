// The steps of a long-stitch binding: sections folded and measured before the cover is cut, everything pierced, then sewn.
import { checkPrint, cutParts } from "./bench/preparation.ts";
import type { PlanBinding } from "./binding.ts";
import { makeCover } from "./long-stitch/cover.ts";
import { pierceSpine } from "./long-stitch/openings.ts";
import { sewBook } from "./long-stitch/sewing.ts";
import { longStitchTerms, longStitchTroubles } from "./long-stitch/words.ts";
import { makeSections } from "./sewing/sections.ts";

export const plan: PlanBinding<"long-stitch"> = (context) => {
  const { model, say } = context;
  const { text } = model.geometry;
  const sections = makeSections({ ...model.geometry, say });
  const isPiercing = ({ id }: { readonly id: string }): boolean => id === "mark-stations" || id === "pierce-sections";
  return {
    steps: [
      cutParts(context, {
        agree: "The folios lie edge to edge in one pile.", spoils: "A folio that is short shows at head or tail.",
        // Folios are cut several at a time.
        minutes: 12 + Math.ceil((text.sections * text.foldedSheets) / 3),
        only: { id: "cut-folios", stage: "Prepare", title: "Cut the folios", parts: ["folio"], first: [] },
      }),
      checkPrint(context, "folio"),
      ...sections.filter((step) => !isPiercing(step)),
      ...makeCover(context),
      // While the reinforcement dries.
      ...sections.filter(isPiercing).map((step) => ({ ...step, stage: "The holes" })),
      ...pierceSpine(context),
      ...sewBook(context),
    ],
    troubles: longStitchTroubles(context),
    terms: longStitchTerms(context),
    supervision:
      "Adults new to the craft: one teacher who has sewn this book, in sight of everyone while knives, awls and needles are out. Under 16: an adult at each table for those steps, or cover and sections cut and pierced beforehand.",
  };
};
