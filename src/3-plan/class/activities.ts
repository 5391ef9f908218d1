// What a class does, for the scheduler: its groups, shared tools, waits, open times and the presses that hold work while it dries.
import type { ClassSettings, Definition } from "../../1-definition/types.ts";
import { holdingTools } from "../../catalogue/tools.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import { rationalToNumber } from "../../units/rational.ts";
import type { DraftStep } from "../binding.ts";
import { latestAfter, waitAfter } from "../steps.ts";
import type { ClassActivities, ClassNeed, ClassSession, ClassStep, ToolUse } from "../timetable/class-types.ts";
import { divideLongSteps } from "../timetable/pauses.ts";
import type { Step } from "../types.ts";
import { shareOutSteps } from "./class-steps.ts";

const minutesPerDay = 24 * 60;

/** More groups than this are more than a teacher keeps in mind. */
const mostGroups = 5;

/** How long work is left in which tools. */
interface Rest {
  readonly minutes: number;
  readonly tools: readonly ToolId[];
}

/** The steps of a book, as printed and as drafted. */
export interface BookSteps {
  readonly drafts: readonly DraftStep[];
  readonly steps: readonly Step[];
}

/** All that a timetable is made of. */
export interface TimetableInput extends BookSteps {
  readonly definition: Definition;
  readonly settings: ClassSettings;
}

/** Everybody who makes a book: the participants, and the teacher where one is made along with the class. */
export function makersOf({ participants, teacherCopy }: ClassSettings): number {
  return participants + (teacherCopy ? 1 : 0);
}

/** The class's activities as the scheduler takes them, long steps that may pause in parts. */
export function activitiesOf(input: TimetableInput): ClassActivities {
  const { settings, definition, drafts } = input;
  const makers = makersOf(settings);
  const steps = shareOutSteps(input.steps, drafts, settings).inClass;
  const shared = sharedTools(settings, makers);
  const groups = groupCount(steps, shared, makers, (id) => restAfter(id, drafts, definition));
  const perGroup = Math.ceil(makers / groups);
  const turns = (ids: readonly string[]): number => turnsOf(ids, shared, perGroup);
  const uses = (ids: readonly string[]): readonly ToolUse[] => [...shared.keys()].filter((id) => ids.includes(id)).map((id) => ({ tool: id, count: 1 }));
  const restOf = (step: Step): ClassStep["rest"] => {
    const rest = restAfter(step.id, drafts, definition);
    return rest && uses(rest.tools).length > 0 ? { minutes: rest.minutes * turns(rest.tools), tools: uses(rest.tools) } : null;
  };
  return divideLongSteps({
    groups, teachers: 1, pace: 1, sessions: sessionsOf(settings), cleanUpMinutes: settings.cleanUp,
    tools: [...shared].map(([id, count]) => ({ id, count: groupsAtOnce(count, perGroup) })),
    steps: steps.map((step, index): ClassStep => ({
      id: step.id, minutes: step.minutes * turns(step.tools), needsTeacher: false,
      demonstrationMinutes: Math.ceil(step.minutes * rationalToNumber(settings.demonstration)),
      tools: uses(step.tools),
      needs: needsOf(step, steps.slice(0, index), input, (id) => restOf(steps.find((each) => each.id === id)!)),
      rest: restOf(step),
      mayPause: mayPause(step.id, input),
      part: null,
    })),
  });
}

/** Nothing is spoilt when a step is left half done in which nothing is glued, or with an adhesive that is in no hurry. */
function mayPause(id: string, { drafts, definition }: TimetableInput): boolean {
  const job = drafts.find((draft) => draft.id === id)?.glueing?.job;
  return job === undefined || definition.adhesives[job]!.openMinutes === null;
}

/** Tools of which there are fewer than makers. */
function sharedTools({ tools }: ClassSettings, makers: number): ReadonlyMap<string, number> {
  return new Map([...tools].filter(([, count]) => count < makers));
}

/** How often a shared tool goes round within a group until everybody has had it. */
function turnsOf(ids: readonly string[], shared: ReadonlyMap<string, number>, perGroup: number): number {
  return Math.max(1, ...ids.map((id) => (shared.has(id) ? Math.ceil(perGroup / shared.get(id)!) : 1)));
}

/** Groups that can have a tool at the same time; a group larger than there are tools takes turns within itself. */
function groupsAtOnce(count: number, perGroup: number): number {
  return Math.max(1, Math.floor(count / perGroup));
}

/** Groups take turns at what is scarce: as many as keep the time short for which the tools are taken, and of these the most, so that others can go on meanwhile. */
function groupCount(steps: readonly Step[], shared: ReadonlyMap<string, number>, makers: number, restOf: (id: string) => Rest | null): number {
  const uses = [...shared].map(([id, count]) => ({
    count, minutes: steps.reduce((sum, step) => sum + (step.tools.includes(id) ? step.minutes : 0) + (restOf(step.id)?.tools.some((tool) => tool === id) ? restOf(step.id)!.minutes : 0), 0),
  })).filter(({ minutes }) => minutes > 0);
  const most = Math.min(mostGroups, makers, Math.max(1, ...uses.map(({ count }) => Math.ceil(makers / count))));
  const minutesTaken = (groups: number): number => {
    const perGroup = Math.ceil(makers / groups);
    return uses.reduce((sum, { count, minutes }) => sum + (minutes * groups * Math.ceil(perGroup / count)) / groupsAtOnce(count, perGroup), 0);
  };
  const counts = Array.from({ length: most }, (_, index) => index + 1).slice(most > 1 ? 1 : 0);
  return counts.reduce((best, groups) => (minutesTaken(groups) <= minutesTaken(best) ? groups : best), counts[0]!);
}

/** The tools in which a step leaves the work, and how long: until the first step that takes it up again may begin, or until it has set. */
function restAfter(id: string, drafts: readonly DraftStep[], definition: Definition): Rest | null {
  const draft = drafts.find((each) => each.id === id);
  if (!draft || (!draft.rest && draft.pressesFor === undefined)) return null;
  const glued = drafts.find((each) => each.id === (draft.pressesFor ?? id))!;
  const waits = drafts.flatMap((later) => (later.needs ?? []).filter((need) => need.step === glued.id).map((need) => waitAfter(glued.id, need.until, drafts, definition))).filter((minutes) => minutes > 0);
  const minutes = waits[0] ?? waitAfter(glued.id, "set", drafts, definition);
  const tools = draft.held ?? draft.tools.filter((tool) => holdingTools.has(tool));
  return minutes > 0 && tools.length > 0 ? { minutes, tools } : null;
}

/** One step after the other, as printed; a glued one that another waits for keeps that one waiting, a wet one does not wait. */
function needsOf(step: Step, before: readonly Step[], { drafts, definition }: TimetableInput, restOf: (id: string) => ClassStep["rest"]): readonly ClassNeed[] {
  const draft = drafts.find((each) => each.id === step.id);
  const needs = new Map<string, ClassNeed>();
  const last = before.at(-1);
  if (last) needs.set(last.id, { step: last.id, leastMinutes: 0, mostMinutes: null });
  for (const { step: id, until } of draft?.needs ?? []) {
    if (!before.some((each) => each.id === id)) continue;
    // Where a group takes turns at what holds its work, the last piece comes out later.
    const inTurns = restOf(id)?.minutes ?? 0;
    needs.set(id, { step: id, leastMinutes: Math.max(waitAfter(id, until, drafts, definition), inTurns), mostMinutes: null });
  }
  for (const { step: id, adhesive } of draft?.follows ?? []) {
    const mostMinutes = latestAfter(id, adhesive, drafts, definition);
    if (mostMinutes !== null && before.some((each) => each.id === id)) needs.set(id, { step: id, leastMinutes: 0, ...needs.get(id), mostMinutes });
  }
  return [...needs.values()];
}

function sessionsOf({ sessions, breaks, setUp }: ClassSettings): readonly ClassSession[] {
  let day = 0;
  const first = sessions[0]!.start;
  return sessions.map((session, index) => {
    if (index > 0) day += session.daysAfter;
    return { start: day * minutesPerDay + session.start - first, minutes: session.minutes, breaks: breaksIn(session.minutes, breaks, setUp) };
  });
}

/** Setting up counts as a break at the session's beginning: nobody works yet. */
function breaksIn(minutes: number, { every, length }: ClassSettings["breaks"], setUp: number): ClassSession["breaks"] {
  const own = setUp > 0 ? [{ start: 0, minutes: setUp }] : [];
  if (length === 0) return own;
  for (let at = setUp + every; at + length < minutes - every / 3; at += length + every) own.push({ start: at, minutes: length });
  return own;
}
