// Troubleshooting and glossary of the stub album.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a stub album, with this book's numbers in it. */
export function stubAlbumTroubles({ model, say }: PlanContext<"stub-album">): readonly DraftTrouble[] {
  const { geometry } = model;
  return [
    { sign: "The folded floor is wider than the spine strip.", cause: `Each closed stub adds its thickness to the floor: here ${say.thickness(geometry.stubGrowth)} a stub. Thicker card or adhesive than planned adds more.`, repair: "Trim both margins equally, or cut a new spine strip and hinge cloth to the measured floor.", steps: ["cut-hinge", "glue-floor"] },
    { sign: "The book gapes at the fore-edge.", cause: `What is mounted is thicker than the room in the spine: ${say.thickness(geometry.pages.roomPerOpening)} an opening.`, repair: "Take some of it out, or leave every other opening empty.", steps: ["finish"] },
    { sign: "A cover springs back and does not lie flat.", cause: "The joint gap is too narrow, or cloth bridges the joint at head or tail.", repair: "Work the joint to and fro, press the cloth into it with the bone folder; if the gap is narrower than printed, the hinge must be made again.", steps: ["glue-strips", "turn-in"] },
    { sign: "A board or strip has warped.", cause: "Grain runs across the height, or it dried without weight.", repair: "Damp the hollow side lightly and dry it under weight for a night. If the grain runs across, it will come back.", steps: ["cut-parts", "join-boards"] },
    { sign: "A fold has cracked.", cause: "The card was folded across the grain, or the score was cut instead of pressed.", repair: "Glue a strip of thin paper along the inside of the fold.", steps: ["cut-parts", "score-card"] },
    { sign: "A stub opens again.", cause: "Too little adhesive, or the tape ends short of the crest.", repair: "Open it fully, add adhesive up to the crest, press until it has set.", steps: ["close-stubs"] },
    { sign: "Pages stick together at the spine.", cause: "Adhesive reached beyond the stub’s crest.", repair: "Slide a thin bone folder between the pages and lift; keep the adhesive to the printed depth.", steps: ["mount-pages"] },
    { sign: "The posts are loose.", cause: `The posts are longer than the layers${geometry.posts.slack ? ` by ${say.thickness(geometry.posts.slack)}` : ""}, and board and cloth settle with time.`, repair: "Put another washer of card or paper under each cap.", steps: ["fasten-posts"] },
  ];
}

/** Words of the trade that the booklet of this stub album uses. */
export function stubAlbumTerms({ model }: PlanContext<"stub-album">): readonly Term[] {
  return [
    ...sharedTerms("board", "bone folder", "fore-edge", ...(model.geometry.closureLength ? ["closure" as const] : []), ...(model.geometry.lining ? ["lining" as const] : []), "grain", "head, tail", "height, width", "joint gap", "mountain fold, valley fold", "opening", "post", "running dimension", "score", "square", "turn-in"),
    { term: "base line", meaning: "one of the two score lines where a stub rises from the floor" },
    { term: "crest", meaning: "the fold at the top of a stub" },
    { term: "washer", meaning: "a disc with a hole, under the cap of a post that is longer than its layers" },
    { term: "floor", meaning: "the flat part of the card between and beside the stubs; it is glued to the spine strip" },
    { term: "hinge", meaning: "three strips of board covered with cloth that join the two boards and carry the pages" },
    { term: "page paper", meaning: "one of the sheets mounted on the stubs" },
    { term: "side strip", meaning: "the part of the hinge that lies over a board" },
    { term: "spine strip", meaning: "the middle part of the hinge, under the floor" },
    { term: "stub", meaning: "a fin folded from the card; pages are mounted on it" },
  ];
}
