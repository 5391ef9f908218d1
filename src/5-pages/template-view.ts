// The 1:1 templates as the templates page shows them: one sheet, one page, nothing scaled.
import type { PaperId } from "../1-definition/types.ts";
import { joinSheets } from "../4-figures/template-sheets.ts";
import type { Drawings } from "../4-figures/types.ts";
import { withUniqueIds } from "./inline-figure.ts";

/** A template with its sheets for one paper, ready to show. */
export interface TemplateView {
  readonly id: string;
  readonly title: string;
  readonly use: readonly string[];
  readonly sheets: readonly SheetView[];
}

/** One sheet ready to show. */
export interface SheetView {
  readonly label: string;
  readonly svg: string;
  /** Named page of the stylesheet. */
  readonly page: "upright" | "across";
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
}

/** The templates of one book on one paper. */
export function viewTemplates(drawings: Drawings, paper: PaperId): readonly TemplateView[] {
  return drawings.templates.map((template) => ({
    id: template.id,
    title: template.title,
    use: template.sheets[paper].length > 1 ? [joinSheets, ...template.use] : template.use,
    sheets: template.sheets[paper].map((sheet, index) => ({
      label: sheet.label === "" ? template.title : `${template.title}, ${sheet.label}`,
      svg: withUniqueIds(sheet.svg, `${template.id}-${index + 1}`),
      page: sheet.landscape ? "across" : "upright",
      width: sheet.width,
      height: sheet.height,
    })),
  }));
}
