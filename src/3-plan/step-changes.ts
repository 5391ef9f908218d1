// What the author changes in the steps: tips, cautions, pictures, steps of their own; numbers are given afterwards.
import type { Definition } from "../1-definition/types.ts";
import type { Prose } from "./prose.ts";
import type { Step } from "./types.ts";
import { capital } from "./wording.ts";

/**
 * Puts the author's changes into the steps and numbers them. References to other steps in generated text were made with the binding's own
 * numbers and are renumbered here, so that they stay right when steps are added between.
 */
export function applyStepChanges(steps: readonly Step[], definition: Definition, prose: Prose): readonly Step[] {
  const changed = steps.map((step) => {
    const change = definition.stepChanges.find((each) => each.step === step.id);
    if (!change) return step;
    return { ...step, tip: change.tip ? prose.fill(change.tip) : null, ownCautions: change.cautions.map(prose.fill), picture: change.picture };
  });
  const all = [...changed];
  for (const added of definition.addedSteps) {
    // After the step named and after whatever was added there before it.
    let at = all.findIndex((step) => step.id === added.after) + 1;
    while (at < all.length && all[at]!.ownText !== null) at += 1;
    all.splice(at, 0, {
      id: added.id, n: 0, stage: all[at - 1]!.stage, title: added.title, action: [], sizes: [], table: null, parts: [], tools: [],
      minutes: added.minutes, before: "", adhesive: null, cautions: [], ownCautions: added.cautions.map(prose.fill), figure: null,
      picture: added.picture, check: added.check ? sentence(added.check) : "", mistake: null, wait: null, tip: null, ownText: prose.fill(added.text),
    });
  }
  const newNumber = new Map(all.flatMap((step, index) => (step.n > 0 ? [[step.n, index + 1] as const] : [])));
  return all.map((step, index) => renumber({ ...step, n: index + 1 }, newNumber));
}

/** An author's check as a sentence, like the ones of the binding. */
function sentence(text: string): string {
  return capital(text) + (/[.!?…]$/.test(text) ? "" : ".");
}

function renumber(step: Step, newNumber: ReadonlyMap<number, number>): Step {
  const swap = (text: string): string =>
    text.replace(/\b(steps?) (\d+)(?: to (\d+))?/g, (_, word: string, from: string, to: string | undefined) =>
      `${word} ${newNumber.get(Number(from)) ?? from}${to ? ` to ${newNumber.get(Number(to)) ?? to}` : ""}`);
  return { ...step, before: swap(step.before), wait: step.wait ? { ...step.wait, text: swap(step.wait.text), meanwhile: swap(step.wait.meanwhile) } : null };
}
