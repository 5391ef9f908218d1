// The shape of a binding's file in this phase: it exports `plan`, which drafts the steps and what goes with them.
import type { BindingId } from "../catalogue/bindings.ts";
import type { CautionId } from "../catalogue/cautions.ts";
import type { ToolId } from "../catalogue/tools.ts";
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Spread } from "./bench/spread.ts";
import type { StepTable, Term } from "./types.ts";
import type { Wording } from "./wording.ts";

/** What a binding drafts its plan from. */
export interface PlanContext<B extends BindingId> {
  readonly definition: Definition<B>;
  readonly model: Model<B>;
  readonly say: Wording;
}

/** What a binding contributes to the plan. */
export interface BindingPlan {
  readonly steps: readonly DraftStep[];
  readonly troubles: readonly DraftTrouble[];
  readonly terms: readonly Term[];
  /** What this book needs of a tool, printed behind what the catalogue says: how many, how large. */
  readonly toolNotes?: Readonly<Partial<Record<ToolId, string>>>;
  /** Least supervision this binding needs. */
  readonly supervision: string;
}

/** Drafts the plan of one binding. */
export type PlanBinding<B extends BindingId> = (context: PlanContext<B>) => BindingPlan;

/** A step as a binding drafts it; numbers, letters, waits in words and the author's changes are added later. */
export interface DraftStep {
  readonly id: string;
  readonly stage: string;
  readonly title: string;
  readonly action: readonly string[];
  /** Parts whose sizes are repeated in the step. */
  readonly parts: readonly string[];
  readonly sizes?: readonly { readonly label: string; readonly text: string }[];
  readonly table?: StepTable;
  readonly tools: readonly ToolId[];
  /** Hands-on minutes of a median beginner, before the author's pace. Estimates of ours: common practice, no source. */
  readonly minutes: number;
  /** The glueing done here: which job's adhesive, the longest time between laying it on and closing the joint, where it is laid (nowhere for a tape that is a part itself), and whether a dry one is cut into just these strips, so that they are listed. */
  readonly glueing?: { readonly job: string; readonly openMinutes: number; readonly spread: readonly Spread[]; readonly inStrips?: true };
  /** What must have set or dried before this step begins. */
  readonly needs?: readonly { readonly step: string; readonly until: "set" | "dry"; readonly what: string }[];
  /** Steps whose adhesive is still wet when this one must begin: while it is open, or while it is soft, that is before it sets. */
  readonly follows?: readonly { readonly step: string; readonly adhesive: "open" | "soft" }[];
  /** How the work rests while it sets: "under a pressing board and a weight". */
  readonly rest?: string;
  /** Tools that hold the work while it rests; left out, those of the step's tools that can. */
  readonly held?: readonly ToolId[];
  /** The glueing step whose work this one puts to rest; left out where a step rests by itself. */
  readonly pressesFor?: string;
  readonly cautions: readonly CautionId[];
  readonly notices?: readonly { readonly hazard: string; readonly consequence: string; readonly avoid: string }[];
  /** Cuts parts out of their sheets, which a class may have done before it meets: its cut plans take the step's place. */
  readonly cutsParts?: {
    /** The step in which what it cuts to is measured off the work; nothing where the sizes are known from the start. */
    readonly after?: string;
  };
  /** Parts that it cuts to what it measures itself. A class gets them out of its cut plans all the same, in the sizes printed. */
  readonly cutsMeasured?: readonly string[];
  readonly figure: string;
  readonly check: string;
  readonly mistake: { readonly sign: string; readonly repair: string };
}

/** A trouble as a binding drafts it: what is seen, why, and what helps. */
export interface DraftTrouble {
  readonly sign: string;
  readonly cause: string;
  readonly repair: string;
  /** Ids of the steps it goes back to. */
  readonly steps: readonly string[];
}
