// The papers a booklet is printed on, as templates and stylesheets want them, and which file each print-out goes to.
import type { Definition, PaperId } from "../1-definition/types.ts";
import { foldedFrom, papers } from "../catalogue/papers.ts";
import type { DocumentId } from "../catalogue/documents.ts";
import { toMillimetres } from "../units/length.ts";

/** A paper as style sheets want it. */
export interface PaperView {
  readonly id: PaperId;
  readonly name: string;
  /** Millimetres, upright. */
  readonly width: number;
  readonly height: number;
  /** Half a sheet: too narrow for tables beside a column of text. */
  readonly isNarrow: boolean;
}

/** The room that a page has for a drawing, in millimetres, and whether drawings are made to fill it. */
export interface FigureRoom {
  readonly width: number;
  readonly height: number;
  readonly isFilled: boolean;
}

/** What the margins of `print.css` leave of a page, in millimetres. */
export type PageRoom = Pick<FigureRoom, "width" | "height">;

/** What the margins of `print.css` and `narrow.css` leave of a page, and the line or two of a caption. */
const margins = { wide: { across: 34, along: 40 }, narrow: { across: 22, along: 38 } } as const;

/** The paper of an id. */
export function viewPaper(id: PaperId): PaperView {
  const { name, width, height } = papers[id];
  return { id, name, width: toMillimetres(width), height: toMillimetres(height), isNarrow: foldedFrom[id] === null };
}

/** The room for drawings on a paper; in large print they are made as large as it. */
export function figureRoom({ width, height, isNarrow }: PaperView, isLarge: boolean): FigureRoom {
  const { across, along } = margins[isNarrow ? "narrow" : "wide"];
  return { width: width - across, height: height - along - (isLarge ? 40 : 0), isFilled: isLarge };
}

/** The room of a whole page between the margins of `print.css`; null on half sheets, whose steps are too long to be shared out. */
export function pageRoom({ width, height, isNarrow }: PaperView): PageRoom | null {
  return isNarrow ? null : { width: width - 34, height: height - 25 };
}

/** File name without ending: the first paper of a project has the plain name, every other one carries its own. */
export function printName(definition: Definition, document: DocumentId, paper: PaperId): string {
  return definition.print.papers[0] === paper ? document : `${document}-${paper}`;
}
