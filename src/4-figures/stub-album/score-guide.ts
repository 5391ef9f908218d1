// The score guide: a paper strip as long as the card is wide that carries every score line at its true place.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { area, label, labelType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";
import { measureText } from "../text-metrics.ts";

/** Length of a score line on the guide, in millimetres, before its label begins. */
const tick = 14;

export function draftScoreGuide(input: DrawingInput<"stub-album">): TemplateDraft {
  const { definition, model } = input;
  const scores = model.scores.filter((score) => score.part === "card");
  const width = toMillimetres(model.geometry.cardWidth);
  const labels = runningDimensions({
    name: "score guide", side: "below", edge: 0, datum: 0, start: tick, dimensionLine: false, low: 3, high: width - 3,
    marks: scores.map((score) => ({ name: score.name, at: toMillimetres(score.at), text: `${score.name}: ${input.number(score.at)}` })),
  });
  if (!labels) throw new Error("internal error: the labels of the score guide do not fit its length");
  const height = Math.ceil(labels.depth) + 6;
  const items: SceneItem[] = [
    area(rectangle(0, 0, width, height), "none", "cut"),
    ...scores.map((score) => stroke(line(point(toMillimetres(score.at), 0), point(toMillimetres(score.at), tick)), score.fold, score.name)),
    ...labels.items,
    label("guide words", edgeWords(width), point(2, height - 1.8)),
  ];
  return {
    id: "score-guide",
    title: "Score guide for the card",
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the whole guide out along its heavy outline; crosses outside it fall away.",
      `Measure the whole guide: it must be ${input.number(model.geometry.cardWidth)} ${definition.units.governing} long, like the card.`,
      "Lay the card with its inside up and the guide on it, left edges flush, the edge with the lines just below the card’s head edge.",
      "Tick the card with a sharp pencil at the end of every line.",
      "Slide the guide down until its lower edge lies on the card’s tail edge, left edges flush, and tick again at its upper edge.",
      "Lay the ruler through the upper and the lower tick of a line and score the whole height of the card: dashed lines are valley folds, dash-dot-dot lines are mountain folds.",
    ],
    alternative: `A strip as long as the card is wide with a line at every score: ${scores.map((score) => `${score.name} at ${input.number(score.at)}, ${score.fold}`).join("; ")}. ${input.unitNote}`,
    width, height, items,
    marks: scores.map((score) => ({
      name: score.name, act: "score" as const, from: [toMillimetres(score.at), 0] as const, to: [toMillimetres(score.at), tick] as const,
    })),
  };
}

/** The words at the guide's left end, as many as a narrow card has room for. */
function edgeWords(width: number): string {
  return ["left edge of the card", "left edge"].find((words) => measureText(words, labelType) <= width - 4) ?? "left";
}
