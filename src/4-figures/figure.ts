// From a drawn scene with its words to a finished Figure; and the loop that draws larger until every label has its place.
import type { Box } from "../geometry/box.ts";
import { lineLooks } from "./line-kinds.ts";
import type { Pen } from "./line-kinds.ts";
import { lineKindsUsed } from "./scene.ts";
import type { SceneItem } from "./scene.ts";
import { placeLabels } from "./place.ts";
import type { Placeable, Placement, PlaceOptions } from "./place.ts";
import { writeSvg } from "./svg.ts";
import type { Figure } from "./types.ts";

/** What a figure's own function gives: the scene in millimetres of paper, and the words. */
export interface FigureDraft {
  readonly id: string;
  readonly title: string;
  readonly caption: string;
  readonly alternative: string;
  readonly items: readonly SceneItem[];
  /** Default small (0.5 / 0.25 mm). */
  readonly pen?: Pen;
}

/** Writes a figure's scene as SVG and notes which line kinds it uses. */
export function finishFigure(draft: FigureDraft): Figure {
  const drawing = writeSvg(draft.items, { id: `figure-${draft.id}`, title: draft.title, description: draft.alternative, pen: draft.pen ?? "small" });
  return {
    id: draft.id, title: draft.title, caption: draft.caption, alternative: draft.alternative,
    svg: drawing.svg, width: drawing.width, height: drawing.height,
    lines: lineKindsUsed(draft.items).filter((kind) => lineLooks[kind] !== undefined),
  };
}

/** How often, at each scale, the labels that found no place are moved to the front. */
const reorderings = 6;

/**
 * Draws at each scale in turn, the wished one first, until every label has its place. Where none suits, what found no place goes first,
 * at each scale again; then, at the largest scale first, the last resorts are let in.
 * `draw` gives the fixed items, the things to place and, where they depend on the scale, the bounds that labels stay in.
 * @throws Error when labels collide in all of these ways: a mistake of ours in the figure.
 */
export function placeAtScale<Scale>(
  scales: readonly Scale[],
  draw: (scale: Scale) => { readonly fixed: readonly SceneItem[]; readonly labels: readonly Placeable[]; readonly bounds?: Box },
  options: PlaceOptions = {},
): { readonly items: readonly SceneItem[]; readonly scale: Scale } {
  const placeAt = (scale: Scale, more: PlaceOptions): Placement => {
    const { fixed, labels, bounds } = draw(scale);
    return placeLabels(fixed, labels, { ...options, ...(bounds ? { bounds } : {}), ...more });
  };
  for (const scale of scales) {
    const { items, unplaced } = placeAt(scale, {});
    if (unplaced.length === 0) return { items, scale };
  }
  for (const [order, desperate] of [[scales, false], [scales.toReversed(), true]] as const) {
    for (const scale of order) {
      let first: readonly string[] = [];
      for (let round = 0; round <= reorderings; round += 1) {
        const { items, unplaced } = placeAt(scale, { first, desperate });
        if (unplaced.length === 0) return { items, scale };
        first = [...new Set([...unplaced, ...first])];
      }
    }
  }
  throw new Error(`internal error: no place for the labels ${placeAt(scales.at(-1)!, {}).unplaced.join(", ")}`);
}

/**
 * Places labels in a view that has only one scale.
 * @throws Error when one finds no place: a mistake of ours in the figure.
 */
export function placeEvery(fixed: readonly SceneItem[], labels: readonly Placeable[], options: PlaceOptions = {}): readonly SceneItem[] {
  return placeAtScale([null], () => ({ fixed, labels }), options).items;
}
