// Steps that may pause: one that is long is done in parts, between which a break or a night may fall.
import { stretchesOf } from "./class-calendar.ts";
import { workMinutes } from "./class-project.ts";
import type { ClassActivities, ClassStep } from "./class-types.ts";

/** The longest time between two breaks. */
export function longestStretch({ sessions, cleanUpMinutes }: ClassActivities): number {
  return Math.max(0, ...stretchesOf(sessions, cleanUpMinutes).map(({ start, end }) => end - start));
}

/** Every step that may pause and is longer than half the longest stretch is put into the fewest parts of at most that length; the others stay whole. */
export function divideLongSteps(input: ClassActivities): ClassActivities {
  const most = Math.floor(longestStretch(input) / 2);
  if (most < 1) return input;
  return input.steps.reduce((changed, step) => {
    const minutes = workMinutes(step, input.pace);
    return step.mayPause && step.part === null && minutes > most ? withStepInParts(changed, step.id, Math.ceil(minutes / most)) : changed;
  }, input);
}

/** The class with one step done in parts one after another, as equal as whole minutes allow; what was shown before it is shown before the first. */
export function withStepInParts(input: ClassActivities, id: string, parts: number): ClassActivities {
  return { ...input, steps: input.steps.flatMap((step) => (step.id === id ? partsOf(step, parts) : [step])) };
}

function partsOf(step: ClassStep, count: number): readonly ClassStep[] {
  // The last part keeps the id, because other steps name it.
  const idOf = (n: number): string => (n === count ? step.id : `${step.id}, part ${n}`);
  return Array.from({ length: count }, (_, index): ClassStep => ({
    ...step,
    id: idOf(index + 1),
    minutes: Math.floor((step.minutes * (index + 1)) / count) - Math.floor((step.minutes * index) / count),
    demonstrationMinutes: index === 0 ? step.demonstrationMinutes : 0,
    needs: index === 0 ? step.needs : [{ step: idOf(index), leastMinutes: 0, mostMinutes: null }],
    rest: index === count - 1 ? step.rest : null,
    part: { of: step.id, n: index + 1, count },
  }));
}
