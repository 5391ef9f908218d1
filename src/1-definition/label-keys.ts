// The keys of the labels for a class's bags: a grid of the catalogue, or a sheet of one's own.
import { labelGridNames, labelGrids, usualLabelGrid } from "../catalogue/label-grids.ts";
import type { LabelGrid, LabelGridName } from "../catalogue/label-grids.ts";
import { papers, paperIds } from "../catalogue/papers.ts";
import { addLengths, isLess, multiplyLength, noLength } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import type { ProblemCode } from "../problems/problem.ts";
import { mappingWithDefaults } from "./collections.ts";
import { count, optionalChoice, optionalCount, yesOrNo } from "./fields.ts";
import type { Field, FieldContext } from "./leaf.ts";
import { optionalLength } from "./length-fields.ts";
import type { PaperId } from "./types.ts";

/** The sheet of labels that a class prints on. */
export interface LabelSheet extends LabelGrid {
  /** The first free label of a sheet that is begun: 1 for a fresh one. */
  readonly first: number;
  readonly outlines: boolean;
}

/** The labels as written; null for what is not. */
export interface WrittenLabels {
  readonly grid: LabelGridName | null;
  readonly paper: PaperId | null;
  readonly columns: number | null;
  readonly rows: number | null;
  readonly width: Length | null;
  readonly height: Length | null;
  readonly left: Length | null;
  readonly top: Length | null;
  readonly "column gap": Length | null;
  readonly "row gap": Length | null;
  readonly first: number;
  readonly outlines: boolean;
}

const needed = ["columns", "rows", "width", "height", "left", "top"] as const;
const ofOwnSheet = ["paper", ...needed, "column gap", "row gap"] as const;

/** The schema of `class: labels:`. */
export function labelKeys(context: FieldContext): Field<WrittenLabels> {
  const size = (about: string, example: string): Field<Length | null> => optionalLength(context, { about, least: "10", most: "400", example });
  const space = (about: string, example: string): Field<Length | null> => optionalLength(context, { about, least: "0", most: "150", example });
  return mappingWithDefaults({
    grid: optionalChoice({ about: "A sheet of the catalogue: paper, columns and rows.", of: labelGridNames }),
    paper: optionalChoice<PaperId>({ about: "Paper of a label sheet of your own.", of: paperIds, also: { A4: "a4", Letter: "letter" } }),
    columns: optionalCount({ about: "Labels side by side.", least: 1, most: 10, example: 2 }),
    rows: optionalCount({ about: "Labels one below the other.", least: 1, most: 30, example: 6 }),
    width: size("Width of a label.", "97 mm"),
    height: size("Height of a label.", "42 mm"),
    left: space("From the left edge of the paper to the first label.", "7 mm"),
    top: space("From the upper edge of the paper to the first label.", "20 mm"),
    "column gap": space("Between two labels side by side.", "2 mm"),
    "row gap": space("Between two labels one below the other.", "0 mm"),
    first: count({ about: "The first free label, counted along the rows, of a sheet that is begun.", least: 1, most: 300, default: 1, example: 4 }),
    outlines: yesOrNo({ about: "Whether the outlines of the labels are printed, to cut plain paper along.", default: true }),
  }, { about: "The sheet on which labels for the bags are printed.", shorthand: "grid", example: "a4 2x4" }) as Field<WrittenLabels>;
}

/** Why the labels do not go together, or the sheet that they are printed on. */
export type SettledLabels = { readonly ok: true; readonly sheet: LabelSheet } | { readonly ok: false; readonly key: string; readonly code: ProblemCode; readonly message: string; readonly hint: string };

/** The sheet of labels: a grid of the catalogue, or one's own with all that it needs; the usual one for the paper where nothing is written. */
export function settleLabels(written: WrittenLabels, paper: PaperId): SettledLabels {
  const own = ofOwnSheet.filter((key) => written[key] !== null);
  const { first, outlines } = written;
  if (written.grid !== null && own.length > 0) return { ok: false, key: own[0]!, code: "keys-exclude", message: `${own[0]} and grid are both written, but the grid has its own`, hint: "keep the grid, or describe a sheet of your own" };
  if (own.length === 0) return fits({ ...labelGrids[written.grid ?? usualLabelGrid[paper]], first, outlines });
  const missing = needed.find((key) => written[key] === null);
  if (missing) return { ok: false, key: own[0]!, code: "key-missing", message: `a label sheet of your own has no ${missing}`, hint: `write ${needed.join(", ")}, or take a grid: ${labelGridNames.join(", ")}` };
  const { columns, rows, width, height, left, top } = written as { readonly [K in (typeof needed)[number]]: NonNullable<WrittenLabels[K]> };
  return fits({ paper: written.paper ?? paper, columns, rows, width, height, left, top, columnGap: written["column gap"] ?? noLength, rowGap: written["row gap"] ?? noLength, first, outlines });
}

/** Labels that reach beyond the paper, or a first one that is not on the sheet, are the author's slip. */
function fits(sheet: LabelSheet): SettledLabels {
  const { columns, rows, width, height, left, top, columnGap, rowGap, first } = sheet;
  const paper = papers[sheet.paper];
  const reach = (start: Length, each: Length, gap: Length, times: number): Length => addLengths(start, multiplyLength(each, times), multiplyLength(gap, times - 1));
  const refuse = (key: string, message: string, hint: string): SettledLabels => ({ ok: false, key, code: "value-range", message, hint });
  if (isLess(paper.width, reach(left, width, columnGap, columns))) return refuse("width", `${columns} labels side by side reach beyond the right edge of ${paper.name}`, "measure left, width and column gap on the label sheet again");
  if (isLess(paper.height, reach(top, height, rowGap, rows))) return refuse("height", `${rows} rows of labels reach beyond the lower edge of ${paper.name}`, "measure top, height and row gap on the label sheet again");
  if (first > columns * rows) return refuse("first", `first is ${first}, but a sheet has ${columns * rows} labels`, "count along the rows from the upper left label");
  return { ok: true, sheet };
}
