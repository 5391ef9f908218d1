// Phase 4: model and plan become figures and 1:1 templates as SVG text.
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Plan } from "../3-plan/types.ts";
import { bindingIds } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import { printNumberOnly } from "../units/print-length.ts";
import type { BindingDrawings, DrawingInput } from "./binding.ts";
import { finishFigure } from "./figure.ts";
import { drawBagLabels } from "./class/bag-labels.ts";
import { drawClass } from "./class/draw-class.ts";
import { drawPart } from "./part.ts";
import { finishTemplate } from "./template.ts";
import { layOutSheets } from "./template-sheets.ts";
import type { Drawings, Figure } from "./types.ts";

const drawers = new Map<BindingId, BindingDrawings<BindingId>>();
for (const id of bindingIds) {
  const file = (await import(/* @vite-ignore */ `./${id}.ts`)) as { drawings: BindingDrawings<BindingId> };
  drawers.set(id, file.drawings);
}

/** Draws everything one book needs. Throws only for mistakes of ours. */
export function drawFigures(given: { readonly definition: Definition; readonly model: Model; readonly plan: Plan }): Drawings {
  const input = drawingInput(given);
  const { figures, templates } = drawers.get(given.definition.binding)!;
  const drawn = new Map<string, Figure>();
  for (const part of given.model.parts) {
    const figure = finishFigure(drawPart(input, part));
    drawn.set(figure.id, figure);
  }
  for (const draw of Object.values(figures)) {
    const draft = draw(input);
    if (draft) drawn.set(draft.id, finishFigure(draft));
  }
  const drafts = Object.values(templates).flatMap((draw) => draw(input) ?? []);
  return { figures: drawn, templates: drafts.map(finishTemplate), sheets: new Map(given.definition.print.papers.map((paper) => [paper, layOutSheets(drafts, paper)])), classFigures: drawClass(input), bagLabels: drawBagLabels(given.definition, given.plan.class) };
}

/** The input of a single figure: also for tests that draw one figure alone. */
export function drawingInput<B extends BindingId>(given: { readonly definition: Definition<B>; readonly model: Model<B>; readonly plan: Plan }): DrawingInput<B> {
  const { units } = given.definition;
  const letters = new Map(given.plan.cutList.map((item) => [item.part.id, item.letter]));
  return {
    ...given,
    number: (length) => printNumberOnly(length, units),
    unitNote: units.governing === "mm" ? "All sizes in millimetres." : "All sizes in inches.",
    letter: (partId) => letters.get(partId) ?? "",
  };
}
