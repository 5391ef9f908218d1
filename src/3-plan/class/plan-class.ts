// The teacher's half of a plan: everything a class needs besides the booklet. Computed once for each book that has a class.
import type { Definition } from "../../1-definition/types.ts";
import type { Caution } from "../../catalogue/cautions.ts";
import type { Model } from "../../2-model/types.ts";
import type { DraftStep } from "../binding.ts";
import type { LinearSolver } from "../cutting/linear-solver.ts";
import type { Plan } from "../types.ts";
import { wordingFor } from "../wording.ts";
import { amountsOf } from "./adhesive-amounts.ts";
import { makersOf } from "./activities.ts";
import { shareOutSteps } from "./class-steps.ts";
import { planCuts } from "./cut-plans.ts";
import { addUpCosts, listOrders } from "./orders.ts";
import { listHazards, questionsToAsk } from "./hazard-sheet.ts";
import { listPreparation } from "./preparation.ts";
import type { Replan } from "./remedies.ts";
import { listBags, listKit, listMistakes, listRoom, toolsBeforehand, wordsOnBags } from "./room.ts";
import { listNotes } from "./teacher-notes.ts";
import { printTimetable } from "./timetable.ts";
import type { ClassPlan } from "./types.ts";

/** What the class is planned from: the finished plan of one book, and the drafts of its steps with what they need. */
export interface ClassInput {
  readonly definition: Definition;
  readonly model: Model;
  readonly plan: Plan;
  readonly drafts: readonly DraftStep[];
  /** Solves the programs of the cut plans. */
  readonly solver: LinearSolver;
  /** The book's steps under another definition. */
  readonly replan: Replan;
}

/** Plans the class of a definition; null when it has none. */
export function planClass({ definition, model, plan, drafts, solver, replan }: ClassInput): ClassPlan | null {
  const settings = definition.class;
  if (!settings) return null;
  // The teacher shops and cuts in one unit.
  const say = wordingFor({ ...definition.units, dual: false });
  const makers = makersOf(settings);
  const sets = makers + settings.spares;
  const cuts = planCuts(definition, model, sets, solver, say);
  const steps = shareOutSteps(plan.steps, drafts, settings);
  const room = listRoom(plan, steps, settings, makers);
  const adhesives = amountsOf(definition, drafts, sets);
  const orders = listOrders({ definition, model, plan, adhesives, cuts, sets }, say);
  return {
    participants: settings.participants, makers, sets, orders, adhesives,
    costs: addUpCosts(orders, definition, settings.participants, sets),
    cutPlans: cuts.sheets, lengthPlans: cuts.lengths, unplanned: cuts.unplanned,
    kit: listKit(plan, say),
    bags: listBags(settings),
    onBags: wordsOnBags(plan),
    room,
    toolsBeforehand: toolsBeforehand(steps),
    preparation: listPreparation({ definition, plan, drafts, steps, makers, sets }),
    cuttingCautions: cautionsOfCutting(plan, drafts),
    questions: questionsToAsk(plan.safety.hazards),
    hazards: listHazards({ plan, steps, room, settings, makers }),
    mistakes: listMistakes(plan),
    notes: listNotes(model, say),
    timetable: printTimetable({ definition, settings, drafts, steps: plan.steps }, replan),
  };
}

/** The cautions of every step that cuts parts, each once: they stand before the cut plans. */
function cautionsOfCutting(plan: Plan, drafts: readonly DraftStep[]): readonly Caution[] {
  const cutting = plan.steps.filter((step) => drafts.find((draft) => draft.id === step.id)?.cutsParts);
  return [...new Set(cutting.flatMap((step) => step.cautions))];
}
