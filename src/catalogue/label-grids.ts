// Sheets of labels as a grid: how many, how large, and how far from the edges of the paper. Sizes of our own; a box of labels says its own.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";
import type { papers } from "./papers.ts";

/** Where the labels of a sheet lie, from the upper left corner of the upright paper. */
export interface LabelGrid {
  readonly paper: keyof typeof papers;
  readonly columns: number;
  readonly rows: number;
  readonly width: Length;
  readonly height: Length;
  /** From the left and the upper edge of the paper to the first label. */
  readonly left: Length;
  readonly top: Length;
  /** From one label to the next. */
  readonly columnGap: Length;
  readonly rowGap: Length;
}

const touching = { columnGap: mm(0), rowGap: mm(0) } as const;
const a4 = { paper: "a4", ...touching } as const;
const letter = { paper: "letter", ...touching } as const;

/**
 * Grids by the name that a definition uses: paper, columns and rows. They fill the paper but for a margin that printers can print.
 * Common practice, no source: made by dividing the paper.
 */
export const labelGrids = {
  "a4 2x3": { ...a4, columns: 2, rows: 3, width: mm(95), height: mm(90), left: mm(10), top: mm("13.5") },
  "a4 2x4": { ...a4, columns: 2, rows: 4, width: mm(95), height: mm(67), left: mm(10), top: mm("14.5") },
  "a4 2x5": { ...a4, columns: 2, rows: 5, width: mm(95), height: mm(54), left: mm(10), top: mm("13.5") },
  "a4 2x7": { ...a4, columns: 2, rows: 7, width: mm(95), height: mm(38), left: mm(10), top: mm("15.5") },
  "a4 3x7": { ...a4, columns: 3, rows: 7, width: mm(64), height: mm(38), left: mm(9), top: mm("15.5") },
  "letter 2x3": { ...letter, columns: 2, rows: 3, width: inches("3.75"), height: inches("3.25"), left: inches("0.5"), top: inches("0.625") },
  "letter 2x4": { ...letter, columns: 2, rows: 4, width: inches("3.75"), height: inches("2.5"), left: inches("0.5"), top: inches("0.5") },
  "letter 2x5": { ...letter, columns: 2, rows: 5, width: inches("3.75"), height: inches("2"), left: inches("0.5"), top: inches("0.5") },
  "letter 3x6": { ...letter, columns: 3, rows: 6, width: inches("2.5"), height: inches("1.625"), left: inches("0.5"), top: inches("0.625") },
  "a5 1x3": { paper: "a5", ...touching, columns: 1, rows: 3, width: mm(128), height: mm(62), left: mm(10), top: mm(12) },
  "half-letter 1x3": { paper: "half-letter", ...touching, columns: 1, rows: 3, width: inches("4.5"), height: inches("2.5"), left: inches("0.5"), top: inches("0.5") },
} as const satisfies Readonly<Record<string, LabelGrid>>;

/** Name of a grid in the catalogue. */
export type LabelGridName = keyof typeof labelGrids;

/** The names in the order in which they are offered. */
export const labelGridNames = Object.keys(labelGrids) as readonly LabelGridName[];

/** The grid of a class that names none. */
export const usualLabelGrid = { a4: "a4 2x4", letter: "letter 2x4", a5: "a5 1x3", "half-letter": "half-letter 1x3" } as const satisfies Readonly<Record<keyof typeof papers, LabelGridName>>;
