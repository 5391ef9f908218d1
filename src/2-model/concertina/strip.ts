// The folded strip: pieces of paper, joins, folds by halving or scores, and what folds and tabs take up.
import type { Definition } from "../../1-definition/types.ts";
import { divideLength, inches, isLess, mm, multiplyLength, subtractLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import { ceilRational, rational } from "../../units/rational.ts";
import { ratioOf } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Fold, Score } from "../types.ts";
import type { ConcertinaGeometry, HalvingFold, Strip } from "./geometry.ts";
import { planStrips } from "./join-plan.ts";

type StripGeometry = Pick<ConcertinaGeometry,
  "panels" | "panelHeight" | "panelWidth" | "paperThickness" | "folding" | "halving" | "stackedTakeUp" | "sheet" | "strips" | "tab" | "setBack" | "leastSetBack"
  | "tabSwell" | "foldedWidth" | "foldedStack" | "lastPanelGlued">;

/** Paper from this thickness on counts as board and is scored before it is folded: Roberts & Etherington, "board" (0.012 in). */
export const scoredFrom = mm("0.3");

/**
 * Computes the strip.
 *
 * Folds: a sheet of thickness t that is folded shut turns through half a circle whose mid-plane diameter is t. Each of a panel's two folds takes a
 * quarter circle, π/4 · t, of its flat width and gives back half a thickness on the mid-plane and half a thickness of paper outside it. Folded, a
 * panel of width w therefore measures w − 2 · π/4 · t + 2 · t = w + (2 − π/2) · t, about 0.4292 t more, over its outer faces. Every inner panel does the
 * same, so nothing gathers along a zigzag.
 * Halving through a stack is different: of n layers folded at once, the outermost runs π/2 · (n − 1) · t farther round the fold on each side than the
 * innermost, and its next crease is off by as much. The last halving of p panels would go through p/2 layers.
 * Join: shut, the panel before the join and the tab hold the next strip's edge between them. Their mid-planes stand 2 t + τ apart (τ is the adhesive), the
 * fold takes π/4 of that on the tab's side, and the next strip's edge must stay that far back from the fold or the join will not shut flat. The edge is
 * trimmed by as much, so that the next fold still comes in line with the others.
 * Thickness: all tabs lie at the spine side, each one more layer of paper and one of adhesive.
 */
export function foldStrip(definition: Definition<"concertina">, ledger: Ledger): { readonly geometry: StripGeometry; readonly scores: readonly Score[]; readonly planned: boolean } {
  const { book, units } = definition;
  const { sheet, strips, planned } = planStrips(definition);
  const joins = strips.length - 1;
  ledger.give("longest strip", sheet.across, sheet.sizeAssumed ? "default" : "material",
    { meaning: sheet.sizeAssumed ? "side of the sheet across the grain; you named no sheet" : "side of the sheet across the grain", source: sheet.sizeAssumed ? "common practice, no source" : "" });
  ledger.give("strips", strips.length, "computed", { meaning: "pieces of paper that are joined; every join in a valley", source: "geometry" });
  ledger.give("joins", joins, "computed", { meaning: "one fewer than the strips", source: "geometry" });
  ledger.give("folds", book.panels - 1, "computed", { meaning: "one fewer than the panels", source: "geometry" });
  ledger.compute("folded width", "panel width + 0.4292 * panel paper thickness",
    { meaning: "fold to fold over the outer faces, once folded", source: "geometry: 2 − π/2 of the paper’s thickness", shownAs: "thickness" });
  if (joins > 0) enterJoin(definition, ledger);
  ledger.compute("folded stack", joins > 0 ? "panels * panel paper thickness + tab swell" : "panels * panel paper thickness",
    { meaning: "the strip folded and pressed, at its spine side", source: "geometry", shownAs: "thickness", measureYours: true });
  const halving = joins === 0 ? halvingOrder(book.panels) : [];
  if (halving.length > 1) {
    ledger.compute("stacked take-up", "1.5708 * (panels / 2 - 1) * panel paper thickness",
      { meaning: "how far the outermost crease would be off if the last halving went through all layers at once", source: "geometry: π/2 for each layer beyond the first", shownAs: "thickness" });
  }
  for (const strip of onePerKind(strips)) {
    ledger.give(`panels of the ${nameOf(strip)}`, strip.panels, "computed", { meaning: "from the join plan", source: "geometry" });
    ledger.compute(`${nameOf(strip)} width`, strip.hasTab ? `nearest(panels of the ${nameOf(strip)} * panel width + tab)` : `nearest(panels of the ${nameOf(strip)} * panel width)`,
      { meaning: strip.hasTab ? "its panels and its tab, flat" : "its panels, flat", source: "geometry" });
  }
  const geometry: StripGeometry = {
    panels: book.panels,
    panelHeight: book.panel.height,
    panelWidth: book.panel.width,
    paperThickness: ledger.length("panel paper thickness"),
    folding: book.folding === "worked out" ? (halving.length > 0 && isLess(ledger.length("panel paper thickness"), scoredFrom) ? "halving" : "scores") : book.folding,
    halving,
    stackedTakeUp: halving.length > 1 ? ledger.length("stacked take-up") : null,
    sheet, strips,
    tab: book.join.tab,
    setBack: joins > 0 ? ledger.length("set back") : mm(0),
    leastSetBack: joins > 0 ? ledger.length("least set back") : mm(0),
    tabSwell: joins > 0 ? ledger.length("tab swell") : mm(0),
    foldedWidth: ledger.length("folded width"),
    foldedStack: ledger.length("folded stack"),
    lastPanelGlued: book.panels % 2 === 0 ? "back" : "front",
  };
  return { geometry, scores: onePerKind(strips).flatMap((strip) => scoresOf(strip, geometry, ledger.length(`${nameOf(strip)} width`), units.step)), planned };
}

function enterJoin(definition: Definition<"concertina">, ledger: Ledger): void {
  const { join } = definition.book;
  ledger.give("tab", join.tab, originAt(definition, "book/join/tab"), { meaning: "paper beyond a strip's last fold, glued behind the next strip", source: "common practice, no source" });
  const least = ledger.compute("least set back", "0.7854 * (2 * panel paper thickness + join adhesive thickness)",
    { meaning: "what the fold of a join takes up: nearer than this the next strip's edge is pinched in it", source: "geometry: π/4 of the distance between the mid-planes", shownAs: "thickness" });
  if (join["set back"]) {
    ledger.give("set back", join["set back"], "given", { meaning: "trimmed off the edge that is joined", source: "", shownAs: "thickness" });
  } else {
    const [unit, words] = definition.units.governing === "mm" ? [mm("0.5"), "the fewest half millimetres"] : [inches(1, 64), "the fewest 1/64 in"];
    ledger.choose("set back", multiplyLength(unit, rational(ceilRational(ratioOf(least, unit)))), `${words} that are not less than the least set back`,
      { meaning: "trimmed off the edge that is joined: about the width of a pencil line", source: "geometry", shownAs: "thickness" });
  }
  ledger.compute("tab swell", "joins * (panel paper thickness + join adhesive thickness)",
    { meaning: "what the tabs add to the folded strip at its spine side", source: "geometry", shownAs: "thickness" });
}

/** The strip's name as printed: "first strip". */
export function nameOf(strip: Strip): string {
  return strip.part.replace("-", " ");
}

/** The first strip of each kind: middle strips are all alike. */
export function onePerKind(strips: readonly Strip[]): readonly Strip[] {
  return strips.filter((strip, index) => strips.findIndex((each) => each.part === strip.part) === index);
}

/** Seen from the front, the first fold and every second one from there is a valley. */
export function directionOf(fold: number): Fold {
  return fold % 2 === 1 ? "valley" : "mountain";
}

/** The scores of a strip at whole panels from its left edge, each rounded once. The last one of a strip with a tab is the fold of the join. */
function scoresOf(strip: Strip, { panelWidth, panels }: StripGeometry, width: Length, step: Length): readonly Score[] {
  const count = strip.hasTab ? strip.panels : strip.panels - 1;
  const exact = Array.from({ length: count }, (_, index) => multiplyLength(panelWidth, index + 1));
  const centre = divideLength(width, 2);
  return runningMarks(exact, step).map((at, index) => ({
    name: strip.part === "strip" ? `fold ${index + 1}` : index + 1 === strip.panels ? `${nameOf(strip)} join fold` : `${nameOf(strip)} fold ${index + 1}`,
    part: strip.part, at, exactAt: exact[index]!, fromCentre: subtractLength(at, centre),
    fold: directionOf(Math.min(panels - 1, strip.firstPanel + index)),
  }));
}

/** The folds of a power of two in the order of halving, round by round, each midway between two places that are there already; else none. */
export function halvingOrder(panels: number): readonly HalvingFold[] {
  if (panels < 2 || (panels & (panels - 1)) !== 0) return [];
  const folds: HalvingFold[] = [];
  for (let span = panels, round = 1; span >= 2; span /= 2, round += 1) {
    for (let from = 0; from < panels; from += span) folds.push({ fold: from + span / 2, round, from, onto: from + span, direction: directionOf(from + span / 2) });
  }
  return folds;
}
