// The papers that booklets and templates are printed on.
import { inches, mm } from "../units/length.ts";
import type { Length } from "../units/length.ts";

/** A sheet in the reader's printer, upright. */
export interface PrintPaper {
  /** As printed in the booklet. */
  readonly name: string;
  readonly height: Length;
  readonly width: Length;
  readonly source: string;
}

/** The papers by the id that a definition uses. */
export const papers = {
  a4: { name: "A4", height: mm(297), width: mm(210), source: "ISO 216" },
  letter: { name: "US Letter", height: inches(11), width: inches("8.5"), source: "ANSI/ASME Y14.1, size A" },
  a5: { name: "A5", height: mm(210), width: mm(148), source: "ISO 216" },
  "half-letter": { name: "half Letter", height: inches("8.5"), width: inches("5.5"), source: "half of ANSI/ASME Y14.1, size A" },
} as const satisfies Readonly<Record<string, PrintPaper>>;

/** A paper by its id. */
export type PaperId = keyof typeof papers;

/** The ids in the order in which they are offered. */
export const paperIds = Object.keys(papers) as readonly PaperId[];

/** The paper that a sheet has the size of once it is folded or cut in half; null for sheets that are small already. */
export const foldedFrom: Readonly<Record<PaperId, PaperId | null>> = { a4: "a5", letter: "half-letter", a5: null, "half-letter": null };
