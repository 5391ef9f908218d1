// The steps of a stub album: the stubs first, so that strip and cloth of the hinge are cut to the floor that was really folded.
import { assembleAlbum } from "./stub-album/assembly.ts";
import { makeBoards } from "./stub-album/boards.ts";
import { cutHinge, cutOtherParts } from "./stub-album/cutting.ts";
import { makeHinge } from "./stub-album/hinge.ts";
import { checkPrint } from "./bench/preparation.ts";
import { makeStubs } from "./stub-album/stubs.ts";
import { toolNotesOf } from "./stub-album/tools.ts";
import { stubAlbumTerms, stubAlbumTroubles } from "./stub-album/words.ts";
import type { PlanBinding } from "./binding.ts";

/**
 * The card is folded and closed while nothing else depends on it. Every other part is cut while wet stubs set; then the floor is measured,
 * and only then spine strip and hinge cloth are cut to it. The hinge sets while the boards are lined.
 */
export const plan: PlanBinding<"stub-album"> = (context) => ({
  steps: [
    checkPrint(context, "boards"),
    ...makeStubs(context), cutOtherParts(context), cutHinge(context), ...makeHinge(context), ...makeBoards(context), ...assembleAlbum(context),
  ],
  troubles: stubAlbumTroubles(context),
  terms: stubAlbumTerms(context),
  toolNotes: toolNotesOf(context),
  supervision:
    "Adults new to the craft: one teacher who has made this book, in sight of everyone while knives, awls, punches or drills are out. Under 16: an adult at each table for those steps, or the pieces cut and pierced beforehand.",
});
