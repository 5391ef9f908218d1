// Why a class does not fit, and what would make it fit: each change is tried by scheduling the changed class.
import { sessionAt, sessionsEnough, stretchesOf, withFurtherSessions } from "./class-calendar.ts";
import { classProject, workMinutes } from "./class-project.ts";
import type { Blame, ClassActivities, ClassStep, Remedy } from "./class-types.ts";
import { findScheduleWithin } from "./solve-project.ts";
import type { Budget } from "./solve-project.ts";

/** Waits shorter than this are no adhesive's fault. */
const shortestWaitToBlame = 5;
const stepOfWaits = 5;
const stepOfSessions = 15;
const longestExtension = 120;

/** One thing that may keep the class from fitting: the class without it, and how little of a change would do. */
interface Suspect {
  readonly blame: Blame;
  readonly without: (input: ClassActivities) => ClassActivities;
  readonly remedy: (fits: (changed: ClassActivities) => boolean) => Remedy;
}

/** Blame and remedies of a class that was scheduled with an end beyond its sessions; null if no schedule was found at all. */
export function findRemedies(input: ClassActivities, end: number | null, budget: Budget): { readonly blame: readonly Blame[]; readonly remedies: readonly Remedy[] } {
  const small: Budget = { ...budget, schedules: Math.ceil(budget.schedules / 3), failures: Math.ceil(budget.failures / 4) };
  const fits = (changed: ClassActivities): boolean => fitsSessions(changed, small);
  const suspects = suspectsOf(input);
  const culprits = suspects.filter(({ without }) => fits(without(input)));
  const remedies = culprits.map(({ remedy }) => remedy(fits));
  const extension = smallest(stepOfSessions, longestExtension + stepOfSessions, stepOfSessions, (minutes) => fits(withLongerSessions(input, minutes)));
  if (extension <= longestExtension) remedies.push({ kind: "longer-sessions", minutes: extension });
  const further = end === null ? 0 : furtherSessions(input, end);
  if (further > 0) remedies.push({ kind: "more-sessions", sessions: further });
  return { blame: culprits.length > 0 ? culprits.map(({ blame }) => blame) : blameTogether(input, suspects, fits), remedies };
}

function suspectsOf(input: ClassActivities): readonly Suspect[] {
  const { groups, teachers, steps } = input;
  const queues = scarceTools(input).map(({ id, count, wanted }): Suspect => ({
    blame: { kind: "queue", tool: id },
    without: (changed) => withTool(changed, id, wanted),
    remedy: (fits) => ({ kind: "more-tools", tool: id, count: smallest(count + 1, wanted, 1, (each) => fits(withTool(input, id, each))) }),
  }));
  const waits = stepsWithWaits(input).map(({ step, minutes }): Suspect => ({
    blame: { kind: "wait", step: step.id, minutes },
    without: (changed) => withWaitAtMost(changed, step.id, 0),
    remedy: (fits) => ({ kind: "shorter-wait", step: step.id, mostMinutes: longestWait(input, step, minutes, fits) }),
  }));
  const teacher: Suspect = {
    blame: { kind: "teacher" },
    without: (changed) => ({ ...changed, teachers: groups }),
    remedy: (fits) => ({ kind: "more-teachers", teachers: smallest(teachers + 1, groups, 1, (each) => fits({ ...input, teachers: each })) }),
  };
  return [...queues, ...(groups > teachers && steps.some(({ needsTeacher }) => needsTeacher) ? [teacher] : []), ...waits];
}

/** How many more sessions, each like the last one and a day later, it takes to reach an end. */
export function furtherSessions(input: ClassActivities, end: number): number {
  return sessionAt(withFurtherSessions(input.sessions, sessionsEnough(input)), end - 1) - input.sessions.length + 1;
}

/** Without a single culprit: a smallest set of suspects that must all go for the class to fit; or there is too much to do by hand. */
function blameTogether(input: ClassActivities, suspects: readonly Suspect[], fits: (changed: ClassActivities) => boolean): readonly Blame[] {
  const fitsWithout = (some: readonly Suspect[]): boolean => fits(some.reduce((changed, { without }) => without(changed), input));
  if (!fitsWithout(suspects)) return [{ kind: "hands-on", minutes: input.steps.reduce((sum, step) => sum + workMinutes(step, input.pace) + step.demonstrationMinutes, 0) }];
  let culprits = suspects;
  for (const suspect of suspects) {
    const others = culprits.filter((other) => other !== suspect);
    if (fitsWithout(others)) culprits = others;
  }
  return culprits.map(({ blame }) => blame);
}

function fitsSessions(input: ClassActivities, budget: Budget): boolean {
  const within = Math.max(0, ...stretchesOf(input.sessions, input.cleanUpMinutes).map(({ end }) => end));
  const { project } = classProject({ ...input, sessions: withFurtherSessions(input.sessions, sessionsEnough(input)) });
  return findScheduleWithin(project, within, budget).schedule !== null;
}

/** The smallest of evenly spaced numbers that will do, the last one if none before it does. */
function smallest(first: number, last: number, step: number, does: (number: number) => boolean): number {
  let number = first;
  while (number < last && !does(number)) number += step;
  return number;
}

/** The longest wait, in steps of five minutes, with which the class fits; that it fits with none is known. */
function longestWait(input: ClassActivities, step: ClassStep, minutes: number, fits: (changed: ClassActivities) => boolean): number {
  let most = 0;
  let tooMuch = Math.ceil(minutes / stepOfWaits);
  while (tooMuch - most > 1) {
    const middle = (most + tooMuch) >> 1;
    if (fits(withWaitAtMost(input, step.id, middle * stepOfWaits))) most = middle;
    else tooMuch = middle;
  }
  return most * stepOfWaits;
}

/** Tools that groups may have to queue for, with the count at which they never would. */
function scarceTools({ tools, steps, groups }: ClassActivities): readonly { readonly id: string; readonly count: number; readonly wanted: number }[] {
  return tools.flatMap(({ id, count }) => {
    const uses = steps.map((step) => [step.tools, step.rest?.tools ?? []].map((list) => list.reduce((sum, use) => (use.tool === id ? sum + use.count : sum), 0)));
    const resting = uses.reduce((sum, [, rest]) => sum + rest!, 0);
    const wanted = groups * (Math.max(0, ...uses.map(([work]) => work!)) + resting);
    return wanted > count ? [{ id, count, wanted }] : [];
  });
}

function stepsWithWaits({ steps }: ClassActivities): readonly { readonly step: ClassStep; readonly minutes: number }[] {
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

/** The class with every session longer, as far as the one after it allows. */
export function withLongerSessions(input: ClassActivities, minutes: number): ClassActivities {
  const { sessions } = input;
  return { ...input, sessions: sessions.map((session, index) => ({ ...session, minutes: Math.min(session.minutes + minutes, (sessions[index + 1]?.start ?? Infinity) - session.start) })) };
}
