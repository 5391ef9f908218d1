// Why a class does not fit: each suspect is taken away, and the class is scheduled again without it.
import { lastMinute, sessionAt, sessionsEnough, withFurtherSessions } from "./class-calendar.ts";
import { classProject, workMinutes } from "./class-project.ts";
import type { Blame, ClassActivities, ClassStep, ClassTimetable } from "./class-types.ts";
import { findScheduleWithin } from "./solve-project.ts";
import type { Budget } from "./solve-project.ts";

/** What is spent on each changed class. */
export const tryBudget: Budget = { schedules: 80, failures: 250, seed: 1 };

/** Waits shorter than this are no adhesive's fault. */
const shortestWaitToBlame = 5;

/** One thing that may keep the class from fitting, and the class without it. */
interface Suspect {
  readonly blame: Blame;
  readonly without: (input: ClassActivities) => ClassActivities;
}

/** What keeps the class from fitting: each alone, or all of them together. */
export function findBlame(input: ClassActivities): Pick<ClassTimetable, "blame" | "blamedTogether"> {
  const suspects = suspectsOf(input);
  const culprits = suspects.filter(({ without }) => doesFit(without(input)));
  if (culprits.length > 0) return { blame: culprits.map(({ blame }) => blame), blamedTogether: false };
  const together = blameTogether(input, suspects);
  return { blame: together, blamedTogether: together.length > 1 };
}

/** Whether a timetable was found that fits. */
export function doesFit(input: ClassActivities): boolean {
  const { project } = classProject({ ...input, sessions: withFurtherSessions(input.sessions, sessionsEnough(input)) });
  return findScheduleWithin(project, lastMinute(input), tryBudget).schedule !== null;
}

function suspectsOf(input: ClassActivities): readonly Suspect[] {
  const { groups, teachers, steps } = input;
  const queues = scarceTools(input).map(({ id, wanted, minutes }): Suspect => ({ blame: { kind: "queue", tool: id, minutes }, without: (changed) => withTool(changed, id, wanted) }));
  const waits = stepsWithWaits(input).map(({ step, minutes }): Suspect => ({ blame: { kind: "wait", step: step.id, minutes }, without: (changed) => withWaitAtMost(changed, step.id, 0) }));
  const teacher: Suspect = { blame: { kind: "teacher" }, without: (changed) => ({ ...changed, teachers: groups }) };
  return [...queues, ...(groups > teachers && steps.some(({ needsTeacher }) => needsTeacher) ? [teacher] : []), ...waits];
}

/** How many more sessions, each like the last one and a day later, it takes to reach an end. */
export function furtherSessions(input: ClassActivities, end: number): number {
  return sessionAt(withFurtherSessions(input.sessions, sessionsEnough(input)), end - 1) - input.sessions.length + 1;
}

/** Without a single culprit: a smallest set of suspects that must all go for the class to fit; or there is too much to do by hand. */
function blameTogether(input: ClassActivities, suspects: readonly Suspect[]): readonly Blame[] {
  const fitsWithout = (some: readonly Suspect[]): boolean => doesFit(some.reduce((changed, { without }) => without(changed), input));
  if (!fitsWithout(suspects)) return [{ kind: "hands-on", minutes: input.steps.reduce((sum, step) => sum + workMinutes(step, input.pace) + step.demonstrationMinutes, 0) }];
  let culprits = suspects;
  // The small ones go first, so that the large ones are left.
  for (const suspect of [...suspects].sort((a, b) => minutesOf(a.blame) - minutesOf(b.blame))) {
    const others = culprits.filter((other) => other !== suspect);
    if (fitsWithout(others)) culprits = others;
  }
  return culprits.map(({ blame }) => blame);
}

function minutesOf(blame: Blame): number {
  return "minutes" in blame ? blame.minutes : 0;
}

/** Tools that groups may have to queue for, with the count at which they never would, and the minutes for which one of them is in use. */
function scarceTools({ tools, steps, groups, pace }: ClassActivities): readonly { readonly id: string; readonly wanted: number; readonly minutes: number }[] {
  return tools.flatMap(({ id, count }) => {
    const usesOf = (step: ClassStep): readonly [number, number] => [step.tools, step.rest?.tools ?? []].map((list) => list.reduce((sum, use) => (use.tool === id ? sum + use.count : sum), 0)) as [number, number];
    const uses = steps.map(usesOf);
    const wanted = groups * (Math.max(0, ...uses.map(([work]) => work)) + uses.reduce((sum, [, rest]) => sum + rest, 0));
    const inUse = steps.reduce((sum, step, index) => sum + uses[index]![0] * workMinutes(step, pace) + uses[index]![1] * (step.rest?.minutes ?? 0), 0);
    return wanted > count ? [{ id, wanted, minutes: Math.ceil((groups * inUse) / count) }] : [];
  });
}

/** Steps after whose work something must wait, and how long at most. */
export function stepsWithWaits({ steps }: ClassActivities): readonly { readonly step: ClassStep; readonly minutes: number }[] {
  return steps.flatMap((step) => {
    const needs = steps.flatMap((other) => other.needs.filter((need) => need.step === step.id).map(({ leastMinutes }) => leastMinutes));
    const minutes = Math.max(0, step.rest?.minutes ?? 0, ...needs);
    return minutes >= shortestWaitToBlame ? [{ step, minutes }] : [];
  });
}

/** The class with another count of one tool. */
export function withTool(input: ClassActivities, id: string, count: number): ClassActivities {
  return { ...input, tools: input.tools.map((tool) => (tool.id === id ? { ...tool, count } : tool)) };
}

/** The class with an adhesive for one step that sets and dries within a given time. */
export function withWaitAtMost(input: ClassActivities, id: string, minutes: number): ClassActivities {
  return {
    ...input,
    steps: input.steps.map((step) => ({
      ...step,
      needs: step.needs.map((need) => (need.step === id ? { ...need, leastMinutes: Math.min(need.leastMinutes, minutes) } : need)),
      rest: step.rest && step.id === id ? { ...step.rest, minutes: Math.min(step.rest.minutes, minutes) } : step.rest,
    })),
  };
}
