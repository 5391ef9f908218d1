// The 1:1 templates as the templates page shows them: one sheet, one page, nothing scaled.
import type { PaperId } from "../1-definition/types.ts";
import { joinPieces } from "../4-figures/template-sheets.ts";
import type { Drawings } from "../4-figures/types.ts";
import { withUniqueIds } from "./inline-figure.ts";

/** A template and where it lies, ready to show. */
export interface TemplateView {
  readonly id: string;
  readonly title: string;
  readonly use: readonly string[];
  /** "sheet 1", "sheets 2 and 3". */
  readonly where: string;
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
  return drawings.templates.map(({ id, title, use }) => {
    const on = drawings.sheets.get(paper)!.flatMap(({ pieces }, index) => (pieces.some(({ template }) => template === id) ? [index + 1] : []));
    const pieces = drawings.sheets.get(paper)!.flatMap((sheet) => sheet.pieces).filter(({ template }) => template === id).length;
    const numbers = on.length === 1 ? `${on[0]}` : `${on.slice(0, -1).join(", ")} and ${on.at(-1)}`;
    return { id, title, use: pieces > 1 ? [joinPieces, ...use] : use, where: `${on.length === 1 ? "sheet" : "sheets"} ${numbers}${pieces > 1 ? `, in ${pieces} pieces` : ""}` };
  });
}

/** The sheets of one book on one paper, in the order in which they are printed. */
export function viewSheets(drawings: Drawings, paper: PaperId): readonly SheetView[] {
  return drawings.sheets.get(paper)!.map((sheet, index) => ({
    label: `Sheet ${index + 1}: ${sheet.title}`,
    svg: withUniqueIds(sheet.svg, `sheet-${index + 1}`),
    page: sheet.landscape ? "across" : "upright",
    width: sheet.width,
    height: sheet.height,
  }));
}
