// Troubleshooting and glossary of the link stitch.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a link stitch, with this book's numbers in it. */
export function linkStitchTroubles({ model, say }: PlanContext<"link-stitch">): readonly DraftTrouble[] {
  const { geometry } = model;
  const { text } = geometry;
  const board = geometry.covered ? [{ sign: "A board has warped.", cause: "Grain runs across the height, or it dried without weight.", repair: "Damp the hollow side lightly and dry it under weight for a night. If the grain runs across, it will come back.", steps: ["cut-parts", "turn-in"] }] : [];
  return [
    { sign: "The spine is thicker than printed.", cause: `The sections were not pressed, or the thread is thicker than ${say.thickness(text.threadThickness)}: each section adds its thread to the spine.`, repair: "Nothing has to be changed: the boards do not depend on it. Press the shut book overnight.", steps: ["fold-sections", "cut-thread"] },
    { sign: "Pages stick out of the boards at the fore-edge.", cause: `The folds do not lie level with the boards’ spine edges, or the leaves of a section creep more than counted: ${say.thickness(text.creep)}.`, repair: "Ease the stitches over the boards and push the sections back; draw the slack to the end.", steps: ["sew-first-section", "sew-last-section"] },
    { sign: "The sections are not level at the head.", cause: "One section lay with its head at the tail when it was pierced.", repair: "It shows by the thickness of a pencil line and does no harm; a section that stands out more must be pierced anew.", steps: ["pierce-sections"] },
    { sign: "The chains of links run askew.", cause: "The needle went behind the stitch now from one side, now from the other.", repair: "It holds as well. Draw each link upright with the eye of the needle.", steps: ["sew-later-sections"] },
    { sign: "The thread frays or breaks.", cause: "The needleful is too long, the holes too narrow, or the thread is not waxed.", repair: "Go back to the last fold, tie on a new length there, inside, and sew on.", steps: ["cut-thread", "pierce-boards"] },
    ...board,
  ];
}

/** Words of the trade that this booklet uses. */
export function linkStitchTerms({ model }: PlanContext<"link-stitch">): readonly Term[] {
  const { covered, lining, text } = model.geometry;
  return [
    ...sharedTerms("board", "bone folder", "fore-edge", "grain", "head, tail", "height, width", ...(lining ? ["lining"] as const : []), "opening", "running dimension", "square", ...(covered ? ["turn-in"] as const : [])),
    ...(covered ? [{ term: "covering", meaning: "the paper or cloth that is glued over a board" }] : []),
    { term: "climb", meaning: "the thread’s way straight up from one section to the next" },
    ...(text.foldedSheets > 1 ? [{ term: "creep", meaning: "how far the inner leaves of a section stand out beyond the outer ones" }] : []),
    { term: "folio", meaning: "a sheet folded once: two leaves" },
    { term: "link", meaning: "a loop of thread caught under the stitch between the two sections before" },
    { term: "needleful", meaning: "a length of thread that is sewn with at one time" },
    { term: "section", meaning: "folios laid into each other and sewn through one fold" },
    { term: "station", meaning: "a place along the fold where the thread goes through it" },
  ];
}
