// Findings about time: adhesive that dries before the joint is closed, steps longer than a sitting.
import type { Definition } from "../1-definition/types.ts";
import type { Finding } from "../2-model/types.ts";
import { printDuration } from "../units/duration.ts";
import type { DraftStep } from "./binding.ts";
import type { Step } from "./types.ts";

/** Joints that cannot be closed within the adhesive's open time, and steps that do not fit into a sitting; both warn. */
export function findTimeFaults(drafts: readonly DraftStep[], steps: readonly Step[], definition: Definition): readonly Finding[] {
  const found: Finding[] = [];
  for (const draft of drafts) {
    if (!draft.glueing) continue;
    const adhesive = definition.adhesives[draft.glueing.job]!;
    const needed = Math.ceil(draft.glueing.openMinutes * definition.bench.pace);
    const step = steps.find((each) => each.id === draft.id);
    if (!step || adhesive.openMinutes === null || needed <= adhesive.openMinutes) continue;
    found.push({
      code: "open-time-too-short", severity: "warn", where: `step ${step.n}, ${step.title}`, path: `adhesives/${draft.glueing.job}`,
      message: `${adhesive.name} stays open for ${printDuration(adhesive.openMinutes)}, laying it on and closing the joint takes about ${printDuration(needed)}`,
      consequence: "the adhesive skins over and the joint does not hold",
      remedy: "glue in smaller stretches, work in pairs, or take an adhesive that stays open longer",
    });
  }
  for (const step of steps) {
    if (step.minutes <= definition.bench.sittingMinutes) continue;
    found.push({
      code: "step-longer-than-sitting", severity: "warn", where: `step ${step.n}, ${step.title}`, path: "bench/sitting",
      message: `the step takes about ${printDuration(step.minutes)}, a sitting has ${printDuration(definition.bench.sittingMinutes)}`,
      consequence: "it will have to be left half done",
      remedy: "plan longer sittings, or prepare part of it beforehand",
    });
  }
  return found;
}
