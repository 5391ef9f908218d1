// The shape of a binding's file in this phase: it exports `drawings`, its figures and templates by id.
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Plan } from "../3-plan/types.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import type { Length } from "../units/length.ts";
import type { FigureDraft } from "./figure.ts";
import type { TemplateDraft } from "./template-draft.ts";

/** What every figure and template is drawn from. */
export interface DrawingInput<B extends BindingId = BindingId> {
  readonly definition: Definition<B>;
  readonly model: Model<B>;
  readonly plan: Plan;
  /** A size as it stands in a figure: the number alone, on the project's marks ("247.5", "9 3⁄4"). */
  number(length: Length): string;
  /** "All sizes in millimetres." or "All sizes in inches.": for captions of figures that print bare numbers. */
  readonly unitNote: string;
  /** The letter of a part in the cut list; empty when the part is not in it. */
  letter(partId: string): string;
}

/** Gives null when this book has nothing to show (no bookmark, no closure). */
export type DrawFigure<B extends BindingId> = (input: DrawingInput<B>) => FigureDraft | null;
/** Gives null when this book has no use for the template. */
export type DrawTemplate<B extends BindingId> = (input: DrawingInput<B>) => TemplateDraft | null;

/** The figures and templates of one binding, in the order in which they are drawn. */
export interface BindingDrawings<B extends BindingId> {
  /** By figure id, as steps name them. The drawings of single parts (`part-<id>`) come by themselves. */
  readonly figures: Readonly<Record<string, DrawFigure<B>>>;
  readonly templates: Readonly<Record<string, DrawTemplate<B>>>;
}
