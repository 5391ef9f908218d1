// The sheets of bag labels as a page: one sheet of labels, one page, nothing scaled.
import { withUniqueIds } from "./inline-figure.ts";
import { viewPaper } from "./paper.ts";
import type { PaperView } from "./paper.ts";
import type { Booklet } from "./types.ts";

/** The labels of a class, ready to show. */
export interface LabelsView {
  readonly paper: PaperView;
  readonly sheets: readonly { readonly label: string; readonly svg: string; readonly width: number; readonly height: number }[];
}

/** The labels of a booklet; null when it has no class. */
export function viewLabels({ drawings }: Booklet): LabelsView | null {
  if (!drawings.bagLabels) return null;
  const paper = viewPaper(drawings.bagLabels.paper);
  return { paper, sheets: drawings.bagLabels.sheets.map(({ label, svg }, index) => ({ label, svg: withUniqueIds(svg, `sheet-${index + 1}`), width: paper.width, height: paper.height })) };
}
