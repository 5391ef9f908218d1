// The product of phase 3: everything a person at the bench is told, in the order in which it is done.
import type { Caution } from "../catalogue/cautions.ts";
import type { Finding, Part } from "../2-model/types.ts";

/** All that a booklet says, in words and numbers ready to print. */
export interface Plan {
  readonly materials: readonly MaterialNeed[];
  readonly cutList: readonly CutItem[];
  readonly tools: readonly Tool[];
  readonly steps: readonly Step[];
  readonly sittings: readonly Sitting[];
  /** Hands-on minutes of all steps together. */
  readonly handsOnMinutes: number;
  /** The longest single wait, and the minutes inside sittings in which there is nothing to do but wait. */
  readonly longestWaitMinutes: number;
  readonly idleMinutes: number;
  readonly values: readonly AppendixRow[];
  readonly measureYours: readonly MeasureBox[];
  readonly troubleshooting: readonly Trouble[];
  readonly glossary: readonly Term[];
  /** General cautions for the safety page; never empty: a sheet without hazards says so. */
  readonly safety: SafetySheet;
  readonly findings: readonly Finding[];
  /** Author's prose with every `{name}` filled in, by slot. Markdown. */
  readonly prose: ReadonlyMap<string, string>;
}

/** One material or adhesive in the shopping list. */
export interface MaterialNeed {
  readonly role: string;
  readonly name: string;
  /** "1 piece 247 × 216 mm, grain along 247 mm"; one line for each part cut from it. */
  readonly pieces: readonly string[];
  /** What to buy or have, in words: "at least 1 sheet 500 × 700 mm". */
  readonly quantity: string;
  /** Thickness as printed, empty where it does not matter. */
  readonly thickness: string;
  readonly note: string;
}

/** One line of the cut list. */
export interface CutItem {
  /** A, B, C … as printed on the figure and in the steps. */
  readonly letter: string;
  readonly part: Part;
  readonly material: string;
  readonly heightText: string;
  readonly widthText: string;
  readonly grainText: string;
  readonly note: string;
  /** Id of the drawing beside it. */
  readonly figure: string;
}

/** A tool that some step uses. */
export interface Tool {
  readonly id: string;
  readonly name: string;
  /** Why this tool, or what will do instead. Empty when obvious. */
  readonly note: string;
}

/** One step as printed. */
export interface Step {
  readonly id: string;
  readonly n: number;
  /** Steps are grouped under headings: "The card", "The hinge". */
  readonly stage: string;
  readonly title: string;
  /** What to do, one imperative sentence a line, sizes included, in order. */
  readonly action: readonly string[];
  /** Exact sizes needed here, repeated from the cut list. */
  readonly sizes: readonly { readonly label: string; readonly text: string }[];
  /** Positions and the like, too many for a line of sizes; null when there are none. */
  readonly table: StepTable | null;
  /** Part ids handled in this step. */
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  readonly minutes: number;
  /** What must have set or dried before this step may begin; empty when nothing holds it back. */
  readonly before: string;
  readonly adhesive: { readonly name: string; readonly note: string } | null;
  readonly cautions: readonly Caution[];
  /** Author's cautions, Markdown. */
  readonly ownCautions: readonly string[];
  readonly figure: string | null;
  readonly picture: { readonly file: string; readonly alternative: string } | null;
  readonly check: string;
  readonly mistake: { readonly sign: string; readonly repair: string } | null;
  readonly wait: Wait | null;
  /** Author's tip, Markdown. */
  readonly tip: string | null;
  /** Author's own text, Markdown; only for added steps. */
  readonly ownText: string | null;
}

/** A small table inside a step; every cell is printed as it is. */
export interface StepTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** How long the work must rest after a step. */
export interface Wait {
  /** Until the first later step that depends on it may begin. */
  readonly minutes: number;
  /** Until the last one may. */
  readonly longestMinutes: number;
  readonly kind: "set" | "dry";
  readonly text: string;
  /** What to do meanwhile, in words, naming steps by number where one can be done. */
  readonly meanwhile: string;
}

/** A stretch of steps that one maker does without getting up for long. */
export interface Sitting {
  readonly n: number;
  readonly firstStep: number;
  readonly lastStep: number;
  readonly handsOnMinutes: number;
  /** Minutes from sitting down to getting up, waits inside included. */
  readonly minutes: number;
  /** Why it ends here: "the hinge dries overnight". */
  readonly endsBecause: string;
}

/** One named value with how it came about, as printed. */
export interface AppendixRow {
  readonly name: string;
  readonly meaning: string;
  /** The formula in words and typographic signs; empty for a given value. */
  readonly formula: string;
  /** The same with values put in. */
  readonly filled: string;
  readonly result: string;
  readonly origin: string;
  readonly source: string;
}

/** A value that the maker should measure off the real object, and what follows from it. */
export interface MeasureBox {
  readonly name: string;
  readonly calculated: string;
  readonly dependents: readonly string[];
}

/** What may be found wrong in the finished work, its cause and its repair. */
export interface Trouble {
  readonly sign: string;
  readonly cause: string;
  readonly repair: string;
  readonly steps: readonly number[];
}

/** A word of the trade explained. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
}

/** The safety page: each hazard once, with the steps in which it is met. */
export interface SafetySheet {
  readonly hazards: readonly (Caution & { readonly steps: readonly number[] })[];
  /** Cautions of the author's own, Markdown, with the steps they stand in. */
  readonly own: readonly { readonly markdown: string; readonly steps: readonly number[] }[];
  readonly supervision: string;
  readonly deferral: string;
}
