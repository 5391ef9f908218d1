// What a class adds to the plan: what to buy and cut, what goes into a kit, what stands in the room, who minds which hazard, and when what is done.
import type { Caution, SignalWord } from "../../catalogue/cautions.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import type { BarCutPlan, BarCutRequest, SheetCutPlan, SheetCutRequest } from "../cutting/types.ts";
import type { AdhesiveAmount } from "./adhesive-amounts.ts";
import type { PrintedTimetable } from "./printed-timetable.ts";

/** The teacher's half of a book's plan. */
export interface ClassPlan {
  readonly participants: number;
  /** Everybody who makes a book: the participants, and the teacher where one is made along with the class. */
  readonly makers: number;
  /** Sets of material to prepare: makers and spares. */
  readonly sets: number;
  readonly orders: readonly OrderLine[];
  readonly adhesives: readonly AdhesiveAmount[];
  readonly costs: Costs;
  readonly cutPlans: readonly CutPlanOfMaterial[];
  readonly lengthPlans: readonly LengthPlanOfMaterial[];
  /** Materials that could not be planned, each with the reason in words. */
  readonly unplanned: readonly { readonly material: string; readonly reason: string }[];
  readonly kit: readonly KitLine[];
  /** One for each set. */
  readonly bags: readonly Bag[];
  /** What every bag says besides its contents: its small parts, for one. */
  readonly onBags: readonly string[];
  readonly room: readonly RoomLine[];
  /** Tools that only whoever prepares the class needs. */
  readonly toolsBeforehand: readonly string[];
  /** What to do before the class, in order. */
  readonly preparation: readonly string[];
  /** Before the first sheet is cut. */
  readonly cuttingCautions: readonly Caution[];
  readonly questions: readonly string[];
  readonly hazards: readonly HazardLine[];
  readonly mistakes: readonly MistakeLine[];
  /** What else a teacher wants to answer about this book. */
  readonly notes: readonly { readonly title: string; readonly text: string }[];
  readonly timetable: PrintedTimetable;
}

/** One thing to order or to bring. */
export interface OrderLine {
  readonly role: string;
  readonly name: string;
  /** "sheets 500 × 700 mm", "pieces", "rolls of 10 m". */
  readonly unit: string;
  readonly needed: number;
  readonly inHand: number;
  /** Whether packs are known; of an adhesive without them only how much is needed is told. */
  readonly isCounted: boolean;
  /** Packs to buy, with what is in each. */
  readonly packs: number;
  readonly packSize: number;
  /** In whole cents; null when no price is given. */
  readonly packPrice: number | null;
  readonly price: number | null;
  /** What is over once all sets are made. */
  readonly over: number;
  /** Value of what the sets use up, in hundredths of a cent so that shares of a pack stay exact enough; null without a price. */
  readonly used: number | null;
  readonly note: string;
}

/** What the class costs, in words; empty texts where no price at all is given. */
export interface Costs {
  readonly toSpend: string;
  readonly perParticipant: string;
  readonly usedPerSet: string;
  readonly kitPrice: string;
  /** Materials without a price. */
  readonly unpriced: readonly string[];
}

/** How a sheet material is cut for the whole class. */
export interface CutPlanOfMaterial {
  readonly role: string;
  readonly material: string;
  /** "11 sheets: proven minimum". */
  readonly verdict: string;
  readonly grainNote: string;
  readonly request: SheetCutRequest;
  readonly plan: SheetCutPlan;
  /** Proven: how many sheets any plan needs, of all sizes together and of each size in the order of the request. */
  readonly leastSheets: { readonly together: number; readonly ofSize: readonly number[] };
}

/** How a material that is sold by length is cut for the whole class. */
export interface LengthPlanOfMaterial {
  readonly role: string;
  readonly material: string;
  readonly verdict: string;
  readonly request: BarCutRequest;
  readonly plan: BarCutPlan;
}

/** One line of the packing list of a kit. */
export interface KitLine {
  readonly letter: string;
  readonly name: string;
  readonly count: number;
  readonly size: string;
}

/** One bag with a set of material in it. */
export interface Bag {
  /** Head of its column in the packing list: "5", "T" for the teacher's, "S1" for a spare one. */
  readonly mark: string;
  /** "kit 5 of 12". */
  readonly words: string;
}

/** A tool and how many of it the room needs. */
export interface RoomLine {
  readonly id: ToolId;
  readonly tool: string;
  readonly count: number;
  readonly shared: boolean;
  /** People who share one. */
  readonly peopleEach: number;
  readonly steps: string;
  readonly note: string;
}

/** One line of the hazard sheet. */
export interface HazardLine {
  readonly signal: SignalWord;
  readonly hazard: string;
  /** In which steps, before the class or in it, and how many people at a time. */
  readonly when: string;
  readonly whoCouldBeHurt: readonly { readonly who: string; readonly how: string }[];
  /** What each maker does, then what the room does. */
  readonly precautions: readonly string[];
  /** Who looks at what, and when. */
  readonly check: string;
  /** Tools to count out and back; may be empty. */
  readonly counted: string;
}

/** A mistake to look out for. */
export interface MistakeLine {
  readonly step: number;
  readonly title: string;
  readonly check: string;
  readonly sign: string;
  readonly repair: string;
}
