// Words of the trade that several bindings use, each explained once, in the same words in every booklet.
import type { Term } from "../types.ts";

const meanings = {
  "board": "the stiff front or back cover",
  "endband": "a band at head or tail of the spine that fills the corner between back and cover",
  "endpaper": "a folded sheet at the front or the back; one leaf is glued to the board, the other opens with the pages",
  "folio": "a sheet folded once: two leaves, four pages",
  "kettle station": "the hole near head or tail where the thread climbs from one section to the next",
  "kettle stitch": "the stitch at the end of a section that catches the thread of the sections below",
  "mull": "an open, starched cloth glued over the spine",
  "section": "folded sheets nested in each other and sewn through their fold",
  "station": "a hole in the fold of every section",
  "swell": "what the sewing thread adds to the thickness at the spine",
  "bone folder": "a smooth flat tool for scoring, creasing and rubbing down",
  "closure": "the pair of ribbons that tie the book shut",
  "fold": "where a sheet is bent double; the holes of a sewn section lie in it",
  "fore-edge": "the edge opposite the spine, where the book opens",
  "grain": "the direction in which the fibres of paper or board lie; it bends more easily along the grain",
  "head, tail": "the top and the bottom of the book when it stands on a shelf",
  "height, width": "height is measured along the spine, width across it, whichever is longer",
  "joint gap": "the space between spine strip and side strip in which the cover bends",
  "lining": "paper glued to the inside of a board",
  "mountain fold, valley fold": "a fold whose ridge points towards you, or away from you, when you look at the inside of the book",
  "opening": "two facing pages",
  "post": "a screw with a hollow barrel and a cap that holds layers together",
  "pass": "what the needle does from one stop to the next; each has a small drawing",
  "running dimension": "a position measured from one edge, not from its neighbour, so that errors do not add up",
  "score": "a line pressed into card so that it folds there",
  "spine edge": "the edge along which a book is sewn",
  "square": "how far a board reaches beyond the pages",
  "turn-in": "cloth folded over an edge and glued down inside",
} as const;

/** A word that is explained here. */
export type SharedTerm = keyof typeof meanings;

/** The explanations of the words named. */
export function sharedTerms(...words: readonly SharedTerm[]): readonly Term[] {
  return words.map((term) => ({ term, meaning: meanings[term] }));
}
