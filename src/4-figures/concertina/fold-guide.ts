// Template `fold-guide`: a paper strip that carries every fold of the longest strip at its true place.
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import type { TemplateDraft } from "../template-draft.ts";

/** Length of a fold line on the guide, in millimetres, before its label begins. */
const tick = 14;

/** All strips have their folds at whole panels from the left edge, so that one guide serves them all. */
export function draftFoldGuide(input: DrawingInput<"concertina">): TemplateDraft {
  const { definition, model } = input;
  const { strips } = model.geometry;
  const joined = strips.length > 1;
  const count = (part: string): number => model.scores.filter((score) => score.part === part).length;
  const longest = strips.reduce((most, strip) => (count(strip.part) > count(most.part) ? strip : most));
  const scores = model.scores.filter((score) => score.part === longest.part);
  const part = model.parts.find((each) => each.id === longest.part)!;
  const width = toMillimetres(part.width);
  const text = (index: number, at: string): string => `${joined ? `line ${index + 1}` : `fold ${index + 1}`}: ${at}`;
  const labels = runningDimensions({
    name: "fold guide", side: "below", edge: 0, datum: 0, start: tick, dimensionLine: false, low: 3, high: width - 3,
    marks: scores.map((score, index) => ({ name: score.name, at: toMillimetres(score.at), text: text(index, input.number(score.at)) })),
  });
  if (!labels) throw new Error("internal error: the labels of the fold guide do not fit its length");
  const height = Math.ceil(labels.depth) + 6;
  const items: SceneItem[] = [
    area(rectangle(0, 0, width, height), "none", "cut"),
    // Directions differ from strip to strip: the guide shows places only, unless there is one strip.
    ...scores.map((score) => stroke(line(point(toMillimetres(score.at), 0), point(toMillimetres(score.at), tick)), joined ? "outline" : score.fold, score.name)),
    ...labels.items,
    label("guide words", "left edge", point(2, height - 1.8)),
  ];
  return {
    id: "fold-guide",
    title: joined ? "Fold guide for the strips" : "Fold guide for the strip",
    book: `${definition.title}, revision ${definition.revision}`,
    use: [
      "Cut the guide out along its heavy outline.",
      `Measure the whole guide: it must be ${input.number(part.width)} ${definition.units.governing} long, like the ${part.name}.`,
      "Lay a strip with its front up and the guide on it, left edges flush, the edge with the lines just below the strip’s head edge.",
      "Tick the strip with a sharp pencil at the end of every line.",
      "Slide the guide down until its lower edge lies on the strip’s tail edge, left edges flush, and tick again.",
      ...(joined ? ["Use the same guide for every strip, each from its left edge; a shorter strip simply ends earlier. Which line is a valley and which a mountain stands in the table of the step."] : ["Dashed lines are valley folds, dash-dot-dot lines are mountain folds, seen from the front."]),
    ],
    alternative: `A strip as long as the ${part.name} with a line at every fold: ${scores.map((score, index) => text(index, input.number(score.at))).join("; ")}. ${input.unitNote}`,
    width, height, items,
    marks: scores.map((score) => ({ name: score.name, act: "fold" as const, from: [toMillimetres(score.at), 0] as const, to: [toMillimetres(score.at), tick] as const })),
  };
}
