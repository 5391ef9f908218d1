// The legend of line kinds: one entry for each kind that occurs in the booklet's drawings.
import { legendSample } from "../4-figures/legend.ts";
import { lineLooks } from "../4-figures/line-kinds.ts";
import type { Figure, LineKind } from "../4-figures/types.ts";

/** One line kind in the legend. */
export interface LegendEntry {
  readonly words: string;
  /** A sample of the line as SVG: for the eye only, the words stand beside it. */
  readonly svg: string;
}

/** In the order of the table of line kinds, so that every booklet has the same order. */
export function viewLegend(figures: readonly Figure[]): readonly LegendEntry[] {
  const used = new Set(figures.flatMap((figure) => figure.lines));
  const kinds = Object.keys(lineLooks) as LineKind[];
  return kinds.filter((kind) => used.has(kind)).map(legendSample);
}
