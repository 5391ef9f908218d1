// What a template's own function gives: a scene in true millimetres, its named marks and how to use it.
import type { SceneItem } from "./scene.ts";
import type { Template } from "./types.ts";

/** A template before it is cut into sheets. Origin at the top left; the drawing lies between 0 and `width`, 0 and `height`. */
export interface TemplateDraft extends Pick<Template, "id" | "title" | "use" | "width" | "height" | "marks"> {
  /** Printed on every sheet, so that sheets of different books are not mixed up: title and revision. */
  readonly book: string;
  /** Says what the drawing says, for a reader who cannot see it. */
  readonly alternative: string;
  readonly items: readonly SceneItem[];
}
