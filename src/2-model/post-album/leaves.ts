// The leaves: their scores, and the guards that make the hinge as thick as what will be mounted.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, isLess, mm, multiplyLength, ratioOf, subtractLength } from "../../units/length.ts";
import { floorRational, nearestWhole } from "../../units/rational.ts";
import { runningMarks } from "../../units/rounding.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Score } from "../types.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

type LeafGeometry = Pick<PostAlbumGeometry,
  "leaves" | "leafHeight" | "leafWidth" | "leafThickness" | "pageWidth" | "scores" | "scoreSpacing" | "inserts" | "guardLayers" | "guardCardThickness" | "guardThickness"
  | "guardStrips" | "wedge" | "leafStack" | "lots">;

/** Card pierced in one go where the author names no drill: a hollow punch goes through this much and stays upright. Common practice, no source. */
const usualLot = mm(4);

/**
 * Guards: between two leaves as many strips as come nearest to what will be mounted there, so that the book is as thick at the hinge as at the
 * fore-edge. (Adam, ch. I: strips as thick as the plate, or a little less.) The first and the last page have no guard beside them and stay empty.
 *
 * Score: guards and hinge strip end at the hinge width, so a leaf is free from there on; over the middle of the joint gap it bends where the cover does.
 */
export function layOutLeaves(definition: Definition<"post-album">, ledger: Ledger): { readonly geometry: LeafGeometry; readonly scores: readonly Score[] } {
  const { book, units } = definition;
  const guardCard = ledger.length("guard card thickness");
  const nearest = Number(nearestWhole(ratioOf(ledger.length("inserts"), guardCard)));
  const layers = book["guard layers"] ?? nearest;
  ledger.give("guard layers", layers, book["guard layers"] === null ? "computed" : "given",
    { meaning: "strips of guard card between two leaves", source: book["guard layers"] === null ? "nearest whole number to inserts ÷ guard card thickness; Adam 1903, ch. I: as thick as the plate" : "" });
  ledger.compute("guard pack", "guard layers * guard card thickness", { meaning: "all strips between two leaves", source: "geometry", shownAs: "thickness" });
  ledger.give("guard strips", (book.leaves - 1) * layers, "computed", { meaning: "guard layers for every opening: one opening fewer than leaves", source: "geometry" });
  ledger.compute("leaf stack", "leaves * leaf card thickness + (leaves - 1) * guard pack",
    { meaning: "all leaves and guards, pressed together at the hinge", source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.compute("wedge", "(leaves - 1) * (inserts - guard pack)",
    { meaning: "full: how much thicker the leaves are at the fore-edge than at the hinge", source: "geometry", shownAs: "thickness" });

  ledger.give("scores per leaf", book.scores.count, originAt(definition, "book/scores/count"), { meaning: "score lines on each leaf", source: "" });
  ledger.give("score spacing", book.scores.spacing, originAt(definition, "book/scores/spacing"), { meaning: "from one score to the next", source: "" });
  if (book.scores.first) ledger.give("first score", book.scores.first, "given", { meaning: "spine edge of the leaf to its first score", source: "" });
  else ledger.compute("first score", "nearest(hinge width + joint gap / 2)", { meaning: "spine edge of the leaf to its first score: over the middle of the joint gap", source: "geometry" });
  const exact = Array.from({ length: book.scores.count }, (_, k) => addLengths(ledger.length("first score"), multiplyLength(book.scores.spacing, k)));
  ledger.compute("page width", "leaf width - (first score + (scores per leaf - 1) * score spacing)", { meaning: "what turns: last score to fore-edge", source: "geometry" });

  const marks = runningMarks(exact, units.step);
  const geometry: LeafGeometry = {
    leaves: book.leaves, leafHeight: ledger.length("leaf height"), leafWidth: ledger.length("leaf width"), leafThickness: ledger.length("leaf card thickness"),
    pageWidth: ledger.length("page width"), scores: marks, scoreSpacing: book.scores.spacing,
    inserts: ledger.length("inserts"), guardLayers: layers, guardCardThickness: guardCard, guardThickness: ledger.length("guard pack"),
    guardStrips: (book.leaves - 1) * layers, wedge: ledger.length("wedge"), leafStack: ledger.length("leaf stack"), lots: lotsOf(definition, ledger),
  };
  const centre = divideLength(geometry.leafWidth, 2);
  const names = ["first score", "second score", "third score"];
  return {
    geometry,
    scores: marks.map((at, k) => ({ name: names[k]!, part: "leaf", at, exactAt: exact[k]!, fromCentre: subtractLength(at, centre), fold: "valley" })),
  };
}

/** As many as the tool goes through in one go, at least one. */
function lotsOf(definition: Definition<"post-album">, ledger: Ledger): LeafGeometry["lots"] {
  const { drillDepth } = definition.tools;
  const isNamed = drillDepth !== null && !isLess(drillDepth, ledger.length("leaf card thickness"));
  const thickness = isNamed ? drillDepth : usualLot;
  const inALot = (card: string): number => Math.max(1, Number(floorRational(ratioOf(thickness, ledger.length(card)))));
  const source = isNamed ? "the drill depth under tools" : "common practice, no source: 4 mm of card in one go";
  const leaves = Math.min(definition.book.leaves, inALot("leaf card thickness"));
  const guards = inALot("guard card thickness");
  ledger.give("leaves in a lot", leaves, "computed", { meaning: "leaves pierced in one go", source });
  ledger.give("guards in a lot", guards, "computed", { meaning: "guard strips pierced in one go", source });
  return { leaves, guards, thickness };
}
