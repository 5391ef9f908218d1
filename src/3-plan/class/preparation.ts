// What a teacher does before a class, in order, with the numbers of this very class.
import type { Definition } from "../../1-definition/types.ts";
import type { DraftStep } from "../binding.ts";
import type { Plan } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { ClassSteps } from "./class-steps.ts";

/** What the list is made from. */
export interface PreparationInput {
  readonly definition: Definition;
  readonly plan: Plan;
  readonly drafts: readonly DraftStep[];
  readonly steps: ClassSteps;
  readonly makers: number;
  readonly sets: number;
}

/** One imperative sentence or two a line. */
export function listPreparation({ definition, plan, drafts, steps, makers, sets }: PreparationInput): readonly string[] {
  const measured = plan.measureYours.map(({ name, calculated }) => `${name} (${calculated})`);
  return [
    "Ask the place that you teach in for its rules, and read the data sheets of the products. Go through the hazard sheet with whoever is responsible there, and write down who checks what.",
    "Ask the class the questions on the hazard sheet.",
    `Make one whole book yourself, along the handout and with the very materials of the class. ${measured.length === 0 ? "" : `Measure on it: ${listInWords(measured)}. Where you measure something else than is printed, write it under “measured” in the definition and build everything anew. `}Change the minutes of a step that took you longer.`,
    "Buy what the list says, with your book before you.",
    ...(steps.beforehand.length === 0 ? [] : [`Cut the parts of all ${sets} sets along the cut plans. They take the place of ${stepsInWords(steps.beforehand.map((step) => step.n))}.`]),
    ...steps.beforehand.flatMap((step) => {
      const after = plan.steps.find((each) => each.id === drafts.find((draft) => draft.id === step.id)?.cutsParts?.after);
      return after ? [`Step ${step.n} cuts to what is measured in step ${after.n}. Cut its parts last, to the measure of your own book. Keep the spare set and one sheet of each material for a book that comes out otherwise.`] : [];
    }),
    ...steps.inClass.flatMap((step) => {
      const cut = drafts.find((draft) => draft.id === step.id)?.cutsMeasured ?? [];
      const names = plan.cutList.filter(({ part }) => cut.includes(part.id)).map(({ part, letter }) => `${part.name} (${letter})`);
      return names.length === 0 || steps.beforehand.length === 0 ? [] : [`Step ${step.n} stays in the class, because it measures what the class has made before ${listInWords(names)} ${names.length === 1 ? "is" : "are"} cut. The bags hold ${names.length === 1 ? "it" : "them"} in the sizes printed: each maker measures and compares, and nobody cuts unless the book came out wider. Keep the spare set for that.`];
    }),
    `Print ${makers} handouts, and ${makers} sets of templates at 100 %. Lay a ruler on the check lines of the first sheet.`,
    `Pack ${sets} bags along the packing list of the kit slips. Enclose a slip, a handout and the templates. Stick on the labels.`,
    `Set out the tools, count them, and write the numbers down. ${definition.class!.setUp > 0 ? `The timetable leaves ${definition.class!.setUp} minutes at the beginning of each session.` : ""}`.trim(),
  ];
}

function stepsInWords(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? "step" : "steps"} ${listInWords(numbers.map(String))}`;
}
