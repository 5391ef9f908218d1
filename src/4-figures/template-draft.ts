// What a template's own function gives: a scene in true millimetres, its named marks and how to use it.
import type { SceneItem } from "./scene.ts";
import type { TemplateMark } from "./types.ts";

/** A template before it is cut into sheets. Origin at the top left; the drawing lies between 0 and `width`, 0 and `height`. */
export interface TemplateDraft {
  readonly id: string;
  readonly title: string;
  /** Printed on every sheet, so that sheets of different books are not mixed up: title and revision. */
  readonly book: string;
  /** How to use it, one imperative sentence a line. */
  readonly use: readonly string[];
  /** Says what the drawing says, for a reader who cannot see it. */
  readonly alternative: string;
  readonly width: number;
  readonly height: number;
  readonly items: readonly SceneItem[];
  readonly marks: readonly TemplateMark[];
}
