// Troubleshooting and glossary of the concertina.
import { sharedTerms } from "../bench/terms.ts";
import type { DraftTrouble, PlanContext } from "../binding.ts";
import type { Term } from "../types.ts";

/** What can be wrong with a concertina, with this book's numbers in it. */
export function concertinaTroubles({ model, say }: PlanContext<"concertina">): readonly DraftTrouble[] {
  const { geometry } = model;
  const joined = geometry.strips.length > 1;
  const foldSteps = ["mark-folds", "score-folds", "fold-strip"];
  return [
    { sign: "The pile leans: head and tail edges climb from panel to panel.", cause: "The strip was not square, or folds are not square to its long edge.", repair: "Fold anew with the head edges on each other at every fold. A strip out of square must be trimmed before it is folded.", steps: ["cut-strips", "fold-strip"] },
    { sign: "Folds stand out of the pile, farther and farther.", cause: "The positions were measured one from the other, or the strip was halved through several layers.", repair: "Fold the first panel that is off anew, edge to edge with the pile.", steps: foldSteps },
    { sign: "A fold has cracked or runs ragged.", cause: "The grain runs across the folds, or the score was cut instead of pressed.", repair: "Glue a strip of thin paper along the back of the fold. Cut the next strip with the grain along the folds.", steps: ["cut-strips", "score-folds"] },
    ...(joined ? [
      { sign: "A join stands open when the book is shut.", cause: `The next strip’s edge is pinched in the fold, which takes up ${say.thickness(geometry.leastSetBack)}.`, repair: "Lift the join while it is soft, trim the edge by a hair and glue it again.", steps: ["join-strips"] },
      { sign: "A tab shows on the front.", cause: "The next strip was laid under the tab instead of on it.", repair: "Pull it off while the adhesive is soft, wipe the tab and join it anew.", steps: ["number-strips", "join-strips"] },
      { sign: "The book is thicker at the spine than at the fore-edge.", cause: `Each tab is one more layer there: together ${say.thickness(geometry.tabSwell)}.`, repair: "Leave it under weight for some days; what is left is the tabs and stays.", steps: ["join-strips"] },
    ] : []),
    { sign: "A cover has warped.", cause: "It dried without weight, or covering and end panel pull unequally.", repair: "Damp the hollow side lightly and dry it under weight for a night. If the grain runs across, it will come back.", steps: ["turn-in", "glue-front", "glue-back"] },
    { sign: "The squares are uneven.", cause: "The end panel was laid down askew, or grew while it was damp.", repair: "Lift it at once, from a corner. Once dry it stays as it is.", steps: ["glue-front", "glue-back"] },
    ...(geometry.closure?.kind === "band" ? [{ sign: "The band does not go over the book.", cause: `The book is thicker than the ${say.size(model.finished.thickness)} calculated.`, repair: "Press the book, or make a new band with its folds moved.", steps: ["make-band"] }] : []),
  ];
}

/** Words of the trade that a concertina's booklet uses. */
export function concertinaTerms({ model }: PlanContext<"concertina">): readonly Term[] {
  const joined = model.geometry.strips.length > 1;
  return [
    ...sharedTerms("board", "bone folder", "fore-edge", "grain", "head, tail", "height, width", "running dimension", "square"),
    { term: "back", meaning: "of the strip: the side that you do not see when you turn the panels like pages" },
    { term: "covering", meaning: "the paper or cloth that is glued over a board" },
    { term: "end panel", meaning: "the first or the last panel, which is glued to a board" },
    { term: "front", meaning: "of the strip: the side that you see when you turn the panels like pages; folds are named from here" },
    { term: "mountain fold, valley fold", meaning: "folded away from you, folded towards you, seen from the front of the strip" },
    { term: "panel", meaning: "the part of the strip between two folds: one page" },
    { term: "spine side", meaning: "where the valley folds lie when the book is shut; a concertina has no glued spine" },
    { term: "strip", meaning: joined ? "a piece of paper from which several panels are folded; the strips are joined" : "the long piece of paper from which all panels are folded" },
    { term: "turn-in", meaning: "covering folded over the edge of a board and glued down inside" },
    ...(model.geometry.folding === "scores" ? sharedTerms("score") : [{ term: "halving", meaning: "bringing two places together and creasing midway between them" }]),
    ...(joined ? [{ term: "tab", meaning: "paper beyond the last fold of a strip, glued behind the next strip" }, { term: "join fold", meaning: "the fold at which two strips are joined; always a valley" }] : []),
    ...(model.geometry.closure?.kind === "band" ? [{ term: "band", meaning: "a ring of paper or cloth that slips over the shut book" }] : []),
  ];
}
