// Troubleshooting and glossary of the post album.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a post album, with this book's numbers in it. */
export function postAlbumTroubles({ model, say }: PlanContext<"post-album">): readonly DraftTrouble[] {
  const { geometry } = model;
  const { posts } = geometry;
  return [
    { sign: "The album gapes at the fore-edge.", cause: `What is mounted between two leaves is thicker than the guards there, ${say.thickness(geometry.guardThickness)}.`, repair: "Put one guard more into the openings that carry most; longer posts or extensions may be needed.", steps: ["stack-leaves", "finish"] },
    { sign: "The leaves sag towards the fore-edge.", cause: "The guards are thicker than what is mounted; a new album is like that until it is filled.", repair: "Fill it evenly, or take guards out where little is mounted.", steps: ["stack-leaves"] },
    { sign: "A cover does not fold back.", cause: `The lining bridges the joint, or the joint gap is narrower than ${say.thickness(geometry.leastJointGap)}.`, repair: "Damp the lining and press it to the bottom of the joint; if the gap is too narrow, the cover must be made again.", steps: ["glue-boards", "line-hinge"] },
    { sign: "A leaf breaks at the hinge.", cause: "It bends at the edge of the guards in place of its score, or the grain runs across.", repair: "Score it again at the printed place; mend the crack with a strip of thin paper on the back.", steps: ["cut-parts", "score-leaves"] },
    { sign: "The leaves slide about.", cause: `The holes are wider than the posts by more than ${say.thickness(model.values.get("hole clearance")!.quantity.value as typeof posts.barrel)}, or the posts are longer than the layers, ${say.thickness(posts.stack)}.`, repair: "Put a washer of card under each cap, or one guard more into the middle of the album.", steps: ["pierce-leaves", "fasten-posts"] },
    { sign: "The heads of the posts stand out.", cause: "The stack is thinner than planned.", repair: "Put washers of card under the caps.", steps: ["fasten-posts"] },
    { sign: "A cover has warped.", cause: "Grain runs across the height, or it dried without weight, or only one side is lined.", repair: "Damp the hollow side lightly and dry it under weight for a night. If the grain runs across, it will come back.", steps: ["cut-parts", "line-boards"] },
  ];
}

/** Words of the trade that a post album's booklet uses. */
export const postAlbumTerms: readonly Term[] = [
  ...sharedTerms("board", "bone folder", "fore-edge", "grain", "head, tail", "height, width", "lining", "opening", "post", "running dimension", "score", "square", "turn-in"),
  { term: "extension", meaning: "a piece that screws into a post and makes it longer" },
  { term: "guard", meaning: "a strip between two leaves at the hinge, as thick as what is mounted there, so that the album does not gape" },
  { term: "hinge lining", meaning: "the cloth inside a cover that goes down into the joint and joins hinge strip and board" },
  { term: "hinge strip", meaning: "the narrow piece of board at the spine edge of a cover, through which the posts go" },
  { term: "joint, joint gap", meaning: "the space between hinge strip and board in which the cover bends" },
  { term: "lap", meaning: "how far one material lies over the edge of another" },
  { term: "leaf", meaning: "a single sheet of the album; its two sides are pages" },
];
