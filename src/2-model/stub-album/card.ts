// The card: developed width, score lines, and the floor that it folds into.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, multiplyLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import type { Ledger } from "../ledger.ts";
import type { Score } from "../types.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

type CardGeometry = Pick<StubAlbumGeometry,
  "stubs" | "stubDepth" | "closedStubDepth" | "floorGap" | "margin" | "cardThickness" | "cardWidth" | "stubGrowth" | "foldedFloor" | "pitch" | "stubCentres" | "clearGap" | "spineIsGiven" | "spineStripWidth" | "stripHeight">;

/**
 * Computes the card. Either the margin is given and the spine strip follows, or the spine strip is given and the margin follows.
 *
 * Thickness: the floor and the two leaves of a stub are flat pieces that meet in their mid-planes. A closed stub is two leaves of
 * card and one layer of adhesive, so the mid-planes of its leaves, and with them its base scores, stand one card thickness plus one
 * layer apart. Flat, those two scores were joined by the stub itself; folded, they lie that far apart on the floor. The floor
 * therefore grows by that much for each stub.
 * Ease: real folds come out a little fuller than planned, so the spine strip is wider than the floor by the ease, before rounding.
 * Crest: the card turns through half a circle whose mid-plane diameter is the same growth g. Each leaf gives a quarter circle,
 * π/4 · g, to a rise of g/2, so the stub stands (π/4 − 1/2) · g, about 0.2854 g, lower than its depth.
 */
export function foldCard(definition: Definition<"stub-album">, ledger: Ledger): { readonly geometry: CardGeometry; readonly scores: readonly Score[] } {
  const { book, units } = definition;
  ledger.compute("closed stub", "2 * card thickness + stub adhesive thickness",
    { meaning: "thickness of one stub glued shut: two leaves and the adhesive between", source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.compute("closed stubs together", "stubs * closed stub",
    { meaning: "all closed stubs pressed into one bundle, which a ruler can measure", source: "geometry", shownAs: "thickness" });
  ledger.compute("stub growth", "closed stub - card thickness",
    { meaning: "what each closed stub adds to the folded floor", source: "geometry: mid-planes of the two leaves", shownAs: "thickness" });
  ledger.compute("closed stub depth", "stub depth - 0.2854 * stub growth",
    { meaning: "height of a stub above the floor once folded", source: "geometry: the crest bends in half a circle, which takes 0.2854 of the growth", shownAs: "thickness" });
  ledger.compute("strip height", "down(board height - height clearance)",
    { meaning: "height of the card, of the hinge's strips and of the hinge tape", source: "common practice, no source" });

  if (book.spine) {
    ledger.give("spine strip width", book.spine, "given", { meaning: "width of the spine strip, fixed by the author", source: "" });
    ledger.compute("margin", "down((spine strip width - floor ease - (stubs - 1) * floor gap - stubs * stub growth) / 2)",
      { meaning: "floor outside the first and the last stub: what the spine leaves once the stubs have grown and the ease is taken off", source: "geometry" });
  }
  ledger.compute("flat floor", "(stubs - 1) * floor gap + 2 * margin", { meaning: "the floor if the card had no thickness", source: "geometry" });
  ledger.compute("folded floor", "flat floor + stubs * stub growth",
    { meaning: "the floor of the folded card, edge to edge", source: "geometry", shownAs: "thickness", measureYours: true });
  if (!book.spine) {
    ledger.compute("spine strip width", "up(folded floor + floor ease)", { meaning: "width of the spine strip: it must hold the folded floor with a little ease", source: "geometry" });
  }
  ledger.compute("card width", "nearest(2 * stubs * stub depth + (stubs - 1) * floor gap + 2 * margin)",
    { meaning: "developed width of the card, flat", source: "geometry" });
  ledger.compute("pitch", "floor gap + stub growth", { meaning: "middle of one stub to the middle of the next on the folded floor", source: "geometry", shownAs: "thickness" });

  ledger.compute("clear gap", "floor gap - card thickness", { meaning: "free floor between two closed stubs", source: "geometry: each of the two leaves takes half a card", shownAs: "thickness" });

  const geometry: CardGeometry = {
    stubs: book.stubs,
    stubDepth: ledger.length("stub depth"),
    closedStubDepth: ledger.length("closed stub depth"),
    floorGap: ledger.length("floor gap"),
    margin: ledger.length("margin"),
    cardThickness: ledger.length("card thickness"),
    cardWidth: ledger.length("card width"),
    stubGrowth: ledger.length("stub growth"),
    foldedFloor: ledger.length("folded floor"),
    pitch: ledger.length("pitch"),
    stubCentres: stubCentres(ledger, book.stubs),
    clearGap: ledger.length("clear gap"),
    spineIsGiven: book.spine !== null,
    spineStripWidth: ledger.length("spine strip width"),
    stripHeight: ledger.length("strip height"),
  };
  return { geometry, scores: scoresOf(geometry, units.step) };
}

function stubCentres(ledger: Ledger, stubs: number): readonly Length[] {
  const first = addLengths(ledger.length("margin"), divideLength(ledger.length("stub growth"), 2));
  return Array.from({ length: stubs }, (_, i) => addLengths(first, multiplyLength(ledger.length("pitch"), i)));
}

/**
 * The 3n score lines from the left edge, as seen from the inside of the book. Stub i has its base scores at m + i(2f + c) and
 * m + i(2f + c) + 2f and its crest at m + i(2f + c) + f. All three sizes lie on ruler marks, so every line does; rounding once from the datum is what guards it.
 */
function scoresOf(card: CardGeometry, step: Length): readonly Score[] {
  const advance = addLengths(multiplyLength(card.stubDepth, 2), card.floorGap);
  const centre = divideLength(card.cardWidth, 2);
  const lines: readonly (readonly [name: string, depths: number, fold: Score["fold"]])[] = [
    ["left base", 0, "valley"], ["crest", 1, "mountain"], ["right base", 2, "valley"],
  ];
  const exact = Array.from({ length: card.stubs }, (_, i) =>
    lines.map(([, depths]) => addLengths(card.margin, multiplyLength(advance, i), multiplyLength(card.stubDepth, depths)))).flat();
  return runningMarks(exact, step).map((at, index) => {
    const [name, , fold] = lines[index % lines.length]!;
    return { name: `stub ${Math.floor(index / lines.length) + 1} ${name}`, part: "card", at, exactAt: exact[index]!, fromCentre: subtractLength(at, centre), fold };
  });
}
