// Stage 3 of the concertina: strips cut square, numbered, folded and joined.
import type { DraftStep, PlanContext } from "../binding.ts";
import { foldHalves, foldScores, markFolds, scoreFolds, stripParts } from "./folds.ts";
import { joinStrips, numberStrips } from "./joins.ts";

/** The steps from the sheet to the folded strip. */
export function foldConcertinaStrip(context: PlanContext<"concertina">): readonly DraftStep[] {
  const { geometry } = context.model;
  const joined = geometry.strips.length > 1;
  return [
    cutStrips(context),
    ...(joined ? [numberStrips(context)] : []),
    ...(geometry.folding === "scores" ? [markFolds(context), scoreFolds(context), foldScores(context)] : [foldHalves(context)]),
    ...(joined ? [joinStrips(context)] : []),
  ];
}

function cutStrips(context: PlanContext<"concertina">): DraftStep {
  const { model, say } = context;
  const { sheet, strips } = model.geometry;
  const one = strips.length === 1;
  const each = one ? "the strip" : "each strip";
  return {
    id: "cut-strips", stage: "The strip", title: one ? "Cut the strip square" : `Cut the ${strips.length} strips square`,
    action: [
      "Find the grain of the sheet: bend it gently both ways; it bends more easily along the grain. Draw an arrow along the grain.",
      `Lay the sheet so that the arrow points away from you: ${each} runs from left to right, and its folds will run along the arrow.`,
      "Cut a true edge along the near side, and from it, with the set square, a true end at the left.",
      `Measure the height from the true edge and the width from the true end, and cut ${each} out.`,
      "Test it: bring the two ends together without creasing. The head edges must lie on each other, and so must the ends.",
    ],
    parts: stripParts(context),
    sizes: [
      { label: "longest strip that the sheet gives", text: say.size(sheet.across) },
      ...(sheet.stripsFromEach > 0 && !sheet.sizeAssumed ? [{ label: "sheets needed", text: `${sheet.count}; a sheet gives ${sheet.stripsFromEach} ${sheet.stripsFromEach === 1 ? "strip" : "strips"}` }] : []),
    ],
    tools: ["pencil", "ruler", "triangle", "knife", "mat"], minutes: 8 + 4 * strips.length,
    cautions: ["knife", "boardCutter", "paperEdge"], cutsParts: {}, figure: "cut-strips",
    check: `With its ends together ${one ? "the strip" : "a strip"} shows one single edge at head and tail.`,
    mistake: { sign: "One edge peeps out at head or tail.", repair: "The end is not square to the long edge. Trim it with the set square laid on the true edge; if the strip then gets too short, cut a new one." },
  };
}
