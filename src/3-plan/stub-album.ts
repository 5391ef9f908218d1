// The steps of a stub album: the hinge first, so that it dries while the stubs and the boards are made.
import { assembleAlbum } from "./stub-album/assembly.ts";
import { makeBoards } from "./stub-album/boards.ts";
import { makeHinge } from "./stub-album/hinge.ts";
import { checkPrint, cutParts } from "./bench/preparation.ts";
import { makeStubs } from "./stub-album/stubs.ts";
import { stubAlbumTerms, stubAlbumTroubles } from "./stub-album/words.ts";
import type { PlanBinding } from "./binding.ts";

export const plan: PlanBinding<"stub-album"> = (context) => ({
  steps: [
    checkPrint(context, "boards"),
    cutParts(context, { agree: "Card and strips have the same height.", spoils: "A strip that is short by more than a pencil line shows in the finished hinge." }),
    ...makeHinge(context), ...makeStubs(context), ...makeBoards(context), ...assembleAlbum(context),
  ],
  troubles: stubAlbumTroubles(context),
  terms: stubAlbumTerms,
  supervision:
    "Adults new to the craft: one teacher who has made this book, in sight of everyone while knives, awls, punches or drills are out. Under 16: an adult at each table for those steps, or the pieces cut and pierced beforehand.",
});
