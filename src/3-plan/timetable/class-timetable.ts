// The timetable of a class: the earliest end that was found, with its bound, or what keeps the class from fitting and what would help.
import { sessionsEnough, stretchesOf, withFurtherSessions } from "./class-calendar.ts";
import { classProject, workMinutes } from "./class-project.ts";
import { findRemedies, furtherSessions } from "./class-remedies.ts";
import { slotsOf } from "./class-slots.ts";
import type { Blame, ClassActivities, ClassTimetable, Remedy } from "./class-types.ts";
import { movedForward, solveProject } from "./solve-project.ts";
import type { Budget, Solution } from "./solve-project.ts";

/** What a build spends on the timetable of one class. */
export const classBudget: Budget = { schedules: 1_500, failures: 2_000, seed: 1 };

/** Schedules the class; the same input has the same timetable everywhere. */
export function makeTimetable(input: ClassActivities, budget: Budget = classBudget): ClassTimetable {
  const tooLong = stepsTooLong(input);
  if (tooLong.length > 0) return { fits: false, slots: [], end: null, lowerBound: 0, proven: true, blame: tooLong, remedies: splitRemedies(input, tooLong, budget) };
  const { solution, slots } = scheduleClass(input, budget);
  const end = solution.schedule?.makespan ?? null;
  const fits = end !== null && end <= lastMinute(input);
  const outcome = { end, lowerBound: solution.lowerBound, proven: solution.state !== "open" };
  if (fits) return { fits, slots, ...outcome, blame: [], remedies: [] };
  return { fits, slots: [], ...outcome, proven: solution.lowerBound > lastMinute(input) || outcome.proven, ...findRemedies(input, end, budget) };
}

/** The last minute at which hands may work. */
export function lastMinute({ sessions, cleanUpMinutes }: ClassActivities): number {
  return Math.max(0, ...stretchesOf(sessions, cleanUpMinutes).map(({ end }) => end));
}

/** Schedules the class as if more sessions like the last one followed day by day, so that what does not fit is seen to its end. */
function scheduleClass(input: ClassActivities, budget: Budget): { readonly solution: Solution; readonly slots: ClassTimetable["slots"] } {
  const { project, activities } = classProject({ ...input, sessions: withFurtherSessions(input.sessions, sessionsEnough(input)) });
  const solution = solveProject(project, budget);
  return { solution, slots: solution.schedule ? slotsOf(input, activities, movedForward(project, solution.schedule).starts) : [] };
}

function longestStretch({ sessions, cleanUpMinutes }: ClassActivities): number {
  return Math.max(0, ...stretchesOf(sessions, cleanUpMinutes).map(({ start, end }) => end - start));
}

function stepsTooLong(input: ClassActivities): readonly Extract<Blame, { kind: "step-too-long" }>[] {
  const longest = longestStretch(input);
  return input.steps.flatMap((step) => {
    const minutes = Math.max(workMinutes(step, input.pace), step.demonstrationMinutes);
    return minutes > longest ? [{ kind: "step-too-long", step: step.id, minutes, longestStretch: longest } as const] : [];
  });
}

/** Splits every step that is too long into the fewest equal parts that go between two breaks, and schedules the class again. */
function splitRemedies(input: ClassActivities, tooLong: readonly Extract<Blame, { kind: "step-too-long" }>[], budget: Budget): readonly Remedy[] {
  const longest = longestStretch(input);
  if (longest === 0) return [];
  const steps = tooLong.map(({ step, minutes }) => ({ step, parts: Math.ceil(minutes / longest) }));
  const split = steps.reduce((changed, { step, parts }) => withStepInParts(changed, step, parts), input);
  const end = stepsTooLong(split).length > 0 ? undefined : scheduleClass(split, budget).solution.schedule?.makespan;
  return end === undefined ? [] : [{ kind: "split-steps", steps, furtherSessions: furtherSessions(input, end) }];
}

/** The class with one step done in equal parts one after another; what was shown before it is shown before the first. */
export function withStepInParts(input: ClassActivities, id: string, parts: number): ClassActivities {
  return {
    ...input,
    steps: input.steps.flatMap((step) => {
      if (step.id !== id) return [step];
      return Array.from({ length: parts }, (_, part) => ({
        ...step,
        // The last part keeps the id, because other steps name it.
        id: part === parts - 1 ? id : `${id}, part ${part + 1}`,
        minutes: step.minutes / parts,
        demonstrationMinutes: part === 0 ? step.demonstrationMinutes : 0,
        needs: part === 0 ? step.needs : [{ step: `${id}, part ${part}`, leastMinutes: 0, mostMinutes: null }],
        rest: part === parts - 1 ? step.rest : null,
      }));
    }),
  };
}
