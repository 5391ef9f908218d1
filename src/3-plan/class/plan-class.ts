// The teacher's half of a plan: everything a class needs besides the booklet. Computed once for each book that has a class.
import type { Definition } from "../../1-definition/types.ts";
import type { Model } from "../../2-model/types.ts";
import type { DraftStep } from "../binding.ts";
import type { LinearSolver } from "../cutting/linear-solver.ts";
import type { Plan } from "../types.ts";
import type { Wording } from "../wording.ts";
import { planCuts } from "./cut-plans.ts";
import { addUpCosts, listOrders } from "./orders.ts";
import { listHazards, listKit, listMistakes, listRoom } from "./room.ts";
import { printTimetable } from "./timetable.ts";
import type { ClassPlan } from "./types.ts";

/** What the class is planned from: the finished plan of one book, and the drafts of its steps with what they need. */
export interface ClassInput {
  readonly definition: Definition;
  readonly model: Model;
  readonly plan: Plan;
  readonly drafts: readonly DraftStep[];
  readonly say: Wording;
  /** Solves the programs of the cut plans. */
  readonly solver: LinearSolver;
}

/** Plans the class of a definition; null when it has none. */
export function planClass({ definition, model, plan, drafts, say, solver }: ClassInput): ClassPlan | null {
  const settings = definition.class;
  if (!settings) return null;
  const makers = settings.participants + (settings.teacherCopy ? 1 : 0);
  const sets = makers + settings.spares;
  const cuts = planCuts(definition, model, sets, solver, say);
  const orders = listOrders(definition, model, plan, cuts, sets, say);
  return {
    participants: settings.participants, makers, sets, orders,
    costs: addUpCosts(orders, definition, settings.participants, sets),
    cutPlans: cuts.sheets, lengthPlans: cuts.lengths, unplanned: cuts.unplanned,
    kit: listKit(plan),
    room: listRoom(definition, plan, makers),
    hazards: listHazards(plan),
    mistakes: listMistakes(plan),
    timetable: printTimetable({ definition, settings, drafts, steps: plan.steps, makers }),
  };
}
