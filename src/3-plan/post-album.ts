// The steps of a post album: the covers first, so that they dry while the leaves are scored and pierced.
import { checkPrint, cutParts } from "./bench/preparation.ts";
import { assembleAlbum } from "./post-album/assembly.ts";
import { coverBoards, finishCovers } from "./post-album/covers.ts";
import { makeLeaves } from "./post-album/leaves.ts";
import { postAlbumTerms, postAlbumTroubles } from "./post-album/words.ts";
import type { PlanBinding } from "./binding.ts";

export const plan: PlanBinding<"post-album"> = (context) => ({
  steps: [
    cutParts(context, { agree: "Boards and hinge strips have the same height, leaves and guards too.", spoils: "A leaf that is not square shows at the fore-edge of the whole album.", inStrips: ["guard"] }),
    checkPrint(context, "boards"),
    ...coverBoards(context), ...makeLeaves(context), ...finishCovers(context), ...assembleAlbum(context),
  ],
  troubles: postAlbumTroubles(context),
  terms: postAlbumTerms,
  supervision:
    "Adults new to the craft: one teacher who has made this book, in sight of everyone while knives, awls, punches or drills are out. Under 16: an adult at each table for those steps, or the pieces cut and pierced beforehand.",
});
