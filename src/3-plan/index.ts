// Phase 3: a model becomes a plan, everything a person at the bench is told, in the order in which it is done.
import { bindingIds } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import type { Definition } from "../1-definition/types.ts";
import type { Model } from "../2-model/types.ts";
import type { Problem } from "../problems/problem.ts";
import { listMeasureBoxes, listValues } from "./appendix.ts";
import { problemsOfClass } from "./class/findings.ts";
import { planClass } from "./class/plan-class.ts";
import type { LinearSolver } from "./cutting/linear-solver.ts";
import type { BindingPlan, DraftStep, PlanBinding } from "./binding.ts";
import { listCuts } from "./cut-list.ts";
import { listMaterials } from "./materials.ts";
import { fillProse, findUnprintedProse, openProse } from "./prose.ts";
import type { Prose } from "./prose.ts";
import { gatherSafety } from "./safety.ts";
import { splitIntoSittings } from "./schedule.ts";
import { applyStepChanges } from "./step-changes.ts";
import { finishSteps } from "./steps.ts";
import { findTimeFaults } from "./time-findings.ts";
import { gatherTools } from "./tools.ts";
import type { Plan, Step } from "./types.ts";
import { wordingFor } from "./wording.ts";

const planners = new Map<BindingId, PlanBinding<BindingId>>();
for (const id of bindingIds) {
  const file = (await import(/* @vite-ignore */ `./${id}.ts`)) as { plan: PlanBinding<BindingId> };
  planners.set(id, file.plan);
}

/** Makes the plan of one book, and of its class where there is one and a solver for its cut plans is given. Problems are names in the author's prose that no value bears. Throws only for mistakes of ours. */
export function makePlan(definition: Definition, model: Model, solver: LinearSolver | null = null): { readonly plan: Plan; readonly problems: readonly Problem[] } {
  const say = wordingFor(definition.units);
  const prose = openProse(definition, model, say);
  const cutList = listCuts(definition, model, say);
  const stepsOf = (given: Definition, words: Prose): { readonly draft: BindingPlan; readonly drafts: readonly DraftStep[]; readonly steps: readonly Step[] } => {
    const drafted = planners.get(given.binding)!({ definition: given, model, say });
    return { draft: drafted, drafts: drafted.steps, steps: applyStepChanges(finishSteps(drafted.steps, { definition: given, model, say, cutList }), given, words) };
  };
  const { draft, drafts, steps } = stepsOf(definition, prose);
  const schedule = splitIntoSittings(drafts, steps, definition);
  const stepNumber = (id: string): number => steps.find((step) => step.id === id)!.n;
  const plan: Plan = {
    materials: listMaterials(definition, model, cutList, steps, say, draft.steps),
    cutList,
    tools: gatherTools(steps, draft.toolNotes),
    steps,
    sittings: schedule.sittings,
    handsOnMinutes: steps.reduce((sum, step) => sum + step.minutes, 0),
    longestWaitMinutes: Math.max(0, ...steps.map((step) => step.wait?.longestMinutes ?? 0)),
    idleMinutes: schedule.idleMinutes,
    values: listValues(definition, model),
    measureYours: listMeasureBoxes(definition, model),
    troubleshooting: draft.troubles.map((trouble) => ({
      ...trouble, steps: trouble.steps.filter((id) => steps.some((step) => step.id === id)).map(stepNumber),
    })),
    glossary: [...draft.terms].sort((a, b) => (a.term < b.term ? -1 : 1)),
    safety: gatherSafety(steps, draft.supervision),
    findings: [...model.findings, ...findTimeFaults(drafts, steps, definition)],
    prose: fillProse(definition, prose),
    class: null,
  };
  const own = solver && planClass({ definition, model, plan, drafts, solver, replan: (other) => stepsOf(other, openProse(other, model, say)) });
  return { plan: { ...plan, class: own }, problems: [...prose.problems, ...findUnprintedProse(definition, steps.map((step) => step.id)), ...(own ? problemsOfClass(own.timetable.findings, definition) : [])] };
}
