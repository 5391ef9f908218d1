// The drawings of a class plan: its sheets as they are cut, and its timetable as bars.
import { printLength } from "../../units/print-length.ts";
import type { DrawingInput } from "../binding.ts";
import { finishFigure } from "../figure.ts";
import type { Figure } from "../types.ts";
import { drawCutLayout } from "./cut-layout.ts";
import { drawTimetable } from "./timetable-chart.ts";

/** By id; empty for a book without a class. */
export function drawClass({ definition, plan, letter }: DrawingInput): ReadonlyMap<string, Figure> {
  const own = plan.class;
  if (!own || !definition.class) return new Map();
  const style = { ...definition.units, dual: false };
  const drafts = [
    ...own.cutPlans.flatMap((of) => of.plan.layouts.map((layout, index) => drawCutLayout({ of, layout, n: index + 1, letter, size: (length) => printLength(length, style) }))),
    drawTimetable(own.timetable, definition.class.sessions),
  ];
  return new Map(drafts.filter((draft) => draft !== null).map((draft) => [draft.id, finishFigure(draft)]));
}
