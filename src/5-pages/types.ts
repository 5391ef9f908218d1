// What phase 5 is given and what it gives back.
import type { Definition, PaperId } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Plan } from "../3-plan/types.ts";
import type { Drawings } from "../4-figures/types.ts";
import type { Length } from "../units/length.ts";

/** All results for one project or variant: what its pages, print-outs and data are made from. */
export interface Booklet {
  readonly definition: Definition;
  readonly model: Model;
  readonly plan: Plan;
  readonly drawings: Drawings;
  /** Name of the folder under `content/`; a variant has the same folder as its project. */
  readonly folder: string;
  /** Absolute path of that folder: where the author's pictures are copied from. */
  readonly pictures: string;
}

/** One line of the list of projects on `dist/index.html`. */
export interface ListedBooklet {
  readonly project: string;
  readonly title: string;
  readonly summary: string;
  /** `fresh`: built from the definition as it stands; `stale`: left from an earlier build; `missing`: nothing to show. */
  readonly state: "fresh" | "stale" | "missing";
}

/** What is to be rendered. */
export interface PagesTask {
  readonly booklets: readonly Booklet[];
  readonly listed: readonly ListedBooklet[];
  /** Folder of the output, relative to the working folder or absolute. */
  readonly output: string;
  /** Whether the pages are printed too, and so may link to the print-outs. */
  readonly withPrints: boolean;
}

/** How the pages of a print-out are put on sheets that are folded in half and sewn. */
export interface FoldJob {
  /** The sheet that goes through the printer; a page is half of it. */
  readonly sheet: PaperId;
  /** Of one sheet of this paper: the inner sheets of a section are pushed outwards by those around them. */
  readonly thickness: Length;
}

/** A page that phase 6 is asked to print. */
export interface PrintJob {
  /** Absolute path of the HTML page. */
  readonly html: string;
  /** Absolute path of the PDF to write. */
  readonly pdf: string;
  readonly title: string;
  readonly author: string;
  readonly language: string;
  /** A finished document for a screen reader, or a sheet meant for paper only (templates). */
  readonly purpose: "document" | "template";
  /** Null for pages that are printed in the order of reading. */
  readonly fold: FoldJob | null;
}

/** What was rendered: files relative to the output folder, and what is left to print (nothing when the pages are not printed). */
export interface RenderedPages {
  /** Pages, data, drawings and pictures of the booklets, and the list of all projects. */
  readonly files: readonly string[];
  /** Style sheets and fonts. */
  readonly assets: readonly string[];
  readonly jobs: readonly PrintJob[];
}
