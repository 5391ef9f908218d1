// Troubleshooting and glossary of the long-stitch binding.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a long-stitch binding, with this book's numbers in it. */
export function longStitchTroubles({ model, say }: PlanContext<"long-stitch">): readonly DraftTrouble[] {
  const { text, ease, flap, strip } = model.geometry;
  return [
    { sign: "The sections do not fit into the spine.", cause: `The paper is thicker than counted, or the sections were not pressed: with ${text.sections} sections a little in each is soon more than the ${say.thickness(ease)} of ease.`, repair: "Press the sections overnight. If they still do not fit, cut a new cover to the measured pile.", steps: ["fold-sections", "cut-cover"] },
    { sign: "The sections slide in the spine and the covers sag.", cause: "The spine is wider than the sewn sections, or the stitches are slack.", repair: "Pull the slack from the first section to the last with the eye of the needle, and tie the end anew.", steps: ["sew-first-section", "sew-last-section"] },
    { sign: "The spine tears from hole to hole.", cause: `The thread was pulled away from the spine in place of along it${strip ? "" : ", and the spine is not reinforced"}.`, repair: "Glue a strip of thin strong paper or cloth over the row inside before you sew on, and pierce it anew.", steps: ["pierce-spine", "sew-first-section"] },
    { sign: "The rows of stitches run askew.", cause: "A section lay with its head at the tail when it was pierced, or hangs one hole too high or low.", repair: "Draw the thread back to that section. Turn it round or move it until its holes lie behind those of the cover.", steps: ["pierce-sections", "sew-later-sections"] },
    { sign: "Pages stick out at the fore-edge.", cause: `The folds do not lie against the spine, or the leaves of a section creep more than counted: ${say.thickness(text.creep)}.`, repair: "Push the sections against the spine and pull the stitches tight. Trim the fore-edge of the cover no further than the pages allow.", steps: ["fold-cover", "sew-first-section"] },
    { sign: "The thread frays or breaks.", cause: "The needleful is too long, a hole too narrow, or the thread is not waxed.", repair: "Go back to the last fold, tie on a new length there, inside, and sew on.", steps: ["cut-thread", "pierce-spine"] },
    ...(flap ? [{ sign: "The flap lifts the front cover, or stands off it.", cause: "The book is thicker or thinner at the fore-edge than counted.", repair: "Score and fold the flap’s second fold anew beside the first, where it lies of itself.", steps: ["fold-cover"] }] : []),
  ];
}

/** Words of the trade that this booklet uses. */
export function longStitchTerms({ model }: PlanContext<"long-stitch">): readonly Term[] {
  const { text, flap, strip, slits } = model.geometry;
  return [
    ...sharedTerms("bone folder", "folio", "fore-edge", "grain", "head, tail", "height, width", "mountain fold, valley fold", "pass", "running dimension", "score", "section", "station", "swell"),
    { term: "square", meaning: "how far the cover reaches beyond the pages" },
    { term: "climb", meaning: "the thread’s way straight up from one section to the next" },
    ...(text.foldedSheets > 1 ? [{ term: "creep", meaning: "how far the inner leaves of a section stand out beyond the outer ones" }] : []),
    { term: "ease", meaning: "how much wider the spine is than the sewn sections are thick" },
    ...(flap ? [{ term: "flap", meaning: "the part of the cover that wraps round the fore-edge onto the front" }] : []),
    { term: "link", meaning: "a loop of thread caught under the stitch between the two sections before" },
    { term: "long stitch", meaning: "a stitch that lies outside on the spine, from one station to the next" },
    { term: "needleful", meaning: "a length of thread that is sewn with at one time" },
    ...(slits.length > 0 ? [{ term: "slit", meaning: "a cut across the spine through which all sections are sewn at one station" }] : []),
    ...(strip ? [{ term: "spine strip", meaning: "what reinforces the spine inside, so that the thread does not cut through" }] : []),
  ];
}
