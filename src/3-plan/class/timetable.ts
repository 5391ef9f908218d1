// The timetable of a class: from the steps and the class's sessions to a clock for the wall, or the reason why it cannot fit and what would help.
import type { ClassSettings, Definition } from "../../1-definition/types.ts";
import { tools } from "../../catalogue/tools.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import { printClock, printDuration } from "../../units/duration.ts";
import { rationalToNumber } from "../../units/rational.ts";
import type { DraftStep } from "../binding.ts";
import { waitAfter } from "../steps.ts";
import { shareOutSteps } from "./class-steps.ts";
import { checkTimetable } from "../timetable/check-timetable.ts";
import { makeTimetable } from "../timetable/class-timetable.ts";
import type { Blame, ClassActivities, ClassNeed, ClassSession, ClassTimetable, Remedy } from "../timetable/class-types.ts";
import type { Plan, Step } from "../types.ts";
import { listInWords } from "../wording.ts";
import type { PrintedTimetable, Slot, SlotKind, TimetableRow } from "./printed-timetable.ts";

const minutesPerDay = 24 * 60;

/** All that a timetable is made of. */
export interface TimetableInput {
  readonly definition: Definition;
  readonly settings: ClassSettings;
  readonly drafts: readonly DraftStep[];
  readonly steps: Plan["steps"];
  readonly makers: number;
}

/** The class's activities as the scheduler takes them; groups are as many as the scarcest shared tool asks for. */
export function activitiesOf({ definition, settings, drafts, steps: all, makers }: TimetableInput): ClassActivities {
  const steps = shareOutSteps(all, drafts, settings).inClass;
  const groups = groupCount(settings, steps, makers);
  const shared = [...settings.tools].filter(([, count]) => count < makers);
  const perGroup = Math.ceil(makers / groups);
  const ids = new Set(steps.map((step) => step.id));
  return {
    groups, teachers: 1, pace: 1,
    sessions: sessionsOf(settings),
    cleanUpMinutes: settings.cleanUp,
    tools: shared.map(([id, count]) => ({ id, count: Math.max(1, Math.floor(count / Math.min(perGroup, count))) })),
    steps: steps.map((step) => ({
      id: step.id, minutes: step.minutes, needsTeacher: false,
      demonstrationMinutes: Math.ceil(step.minutes * rationalToNumber(settings.demonstration)),
      tools: shared.filter(([id]) => step.tools.includes(id)).map(([id]) => ({ tool: id, count: 1 })),
      needs: needsOf(step, steps, drafts, definition).filter((need) => ids.has(need.step)),
      rest: null,
    })),
  };
}

/** One step after the other, as printed; a glued one that another waits for keeps that one waiting. */
function needsOf(step: Step, steps: readonly Step[], drafts: readonly DraftStep[], definition: Definition): readonly ClassNeed[] {
  const before = steps.findLast((each) => each.n < step.n);
  const glued = (drafts.find((draft) => draft.id === step.id)?.needs ?? []).map((need): ClassNeed => ({ step: need.step, leastMinutes: waitAfter(need.step, need.until, drafts, definition), mostMinutes: null }));
  return [...(before && !glued.some((need) => need.step === before.id) ? [{ step: before.id, leastMinutes: 0, mostMinutes: null }] : []), ...glued];
}

/** Groups take turns at what is scarce: as many groups as the scarcest tool of any step needs turns, at most four. */
function groupCount(settings: ClassSettings, steps: readonly Step[], makers: number): number {
  const turns = [...settings.tools].filter(([id, count]) => count < makers && steps.some((step) => step.tools.includes(id))).map(([, count]) => Math.ceil(makers / count));
  return Math.min(4, makers, Math.max(1, ...turns));
}

function sessionsOf({ sessions, breaks, setUp }: ClassSettings): readonly ClassSession[] {
  let day = 0;
  const first = sessions[0]!.start;
  return sessions.map((session, index) => {
    if (index > 0) day += session.daysAfter;
    const own = breaksIn(session.minutes, breaks, setUp);
    return { start: day * minutesPerDay + session.start - first, minutes: session.minutes, breaks: own };
  });
}

/** Setting up counts as a break at the session's beginning: nobody works yet. */
function breaksIn(minutes: number, { every, length }: ClassSettings["breaks"], setUp: number): ClassSession["breaks"] {
  const own = setUp > 0 ? [{ start: 0, minutes: setUp }] : [];
  if (length === 0) return own;
  for (let at = setUp + every; at + length < minutes - every / 3; at += length + every) own.push({ start: at, minutes: length });
  return own;
}

/** The timetable as printed. */
export function printTimetable(input: TimetableInput): PrintedTimetable {
  const activities = activitiesOf(input);
  const made = makeTimetable(activities);
  const faults = made.fits ? checkTimetable(activities, made.slots) : [];
  if (faults.length > 0) throw new Error(`internal error: the timetable is wrong: ${JSON.stringify(faults[0])}`);
  const slots = made.slots.map((slot) => slotOf(slot, input));
  const { settings, steps, makers } = input;
  return {
    fits: made.fits,
    verdict: verdictOf(made, activities, settings),
    advice: made.fits ? [] : [...made.blame.map((blame) => blameInWords(blame, steps)), ...made.remedies.map((remedy) => remedyInWords(remedy, steps))],
    groups: activities.groups,
    groupWords: groupWords(activities, makers),
    sessions: made.fits ? settings.sessions.map((session, index) => ({
      n: index + 1,
      heading: `Session ${index + 1}, ${printClock(session.start)} to ${printClock(session.start + session.minutes)}${index === 0 ? "" : `, ${session.daysAfter === 0 ? "the same day" : session.daysAfter === 1 ? "the next day" : `${session.daysAfter} days later`}`}`,
      rows: rowsOf(slots.filter((slot) => slot.session === index + 1), session, settings, steps, activities.groups),
    })) : [],
    slots: made.fits ? slots : [],
  };
}

function slotOf(slot: ClassTimetable["slots"][number], { settings, steps }: TimetableInput): Slot {
  const isSetUp = slot.kind === "break" && slot.start === 0 && settings.setUp > 0;
  const kind: SlotKind = isSetUp ? "set up" : slot.kind;
  const step = steps.find((each) => each.id === slot.step)?.n ?? null;
  return { session: slot.session + 1, start: slot.start, end: slot.end, group: slot.group === null ? null : slot.group + 1, step, kind };
}

function rowsOf(slots: readonly Slot[], session: ClassSettings["sessions"][number], settings: ClassSettings, steps: readonly Step[], groups: number): readonly TimetableRow[] {
  const clock = (minute: number): string => printClock(session.start + minute);
  const cleanUp: readonly Slot[] = settings.cleanUp > 0 ? [{ session: 0, start: session.minutes - settings.cleanUp, end: session.minutes, group: null, step: null, kind: "clean up" }] : [];
  const shown = [...slots.filter((slot) => slot.kind !== "wait"), ...cleanUp];
  // Groups that do the same at the same time share a line.
  const lines = new Map<string, { readonly slot: Slot; readonly groups: number[] }>();
  for (const slot of [...shown].sort((a, b) => a.start - b.start || (a.group ?? 0) - (b.group ?? 0))) {
    const key = `${slot.start} ${slot.end} ${slot.kind} ${slot.step}`;
    const line = lines.get(key) ?? { slot, groups: [] };
    if (slot.group !== null) line.groups.push(slot.group);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ slot, groups: own }) => ({
    time: `${clock(slot.start)}–${clock(slot.end)}`,
    who: slot.kind === "demonstration" ? "teacher shows" : own.length === 0 || own.length === groups ? "everybody" : `${own.length === 1 ? "group" : "groups"} ${listInWords(own.map(String))}`,
    what: whatInWords(slot, steps),
    kind: slot.kind,
  }));
}

function whatInWords(slot: Slot, steps: readonly Step[]): string {
  if (slot.kind === "break") return "Break";
  if (slot.kind === "set up") return "Lay out tools and materials";
  if (slot.kind === "clean up") return "Clear away; put glued work under weights";
  const step = steps.find((each) => each.n === slot.step)!;
  const wait = slot.kind === "work" && step.wait ? ` Then it rests: ${printDuration(step.wait.minutes)} at least.` : "";
  return `Step ${step.n}: ${step.title}.${wait}`;
}

function groupWords({ groups, tools: shared }: ClassActivities, makers: number): string {
  if (groups === 1) return "Everybody works at the same time.";
  const names = shared.map(({ id }) => tools[id as ToolId].name);
  return `${makers} people in ${groups} groups of ${Math.floor(makers / groups)}${makers % groups === 0 ? "" : ` or ${Math.ceil(makers / groups)}`}, who take turns at the ${listInWords(names)}.`;
}

function verdictOf(made: ClassTimetable, { sessions }: ClassActivities, settings: ClassSettings): string {
  if (!made.fits) return made.proven ? `It does not fit into ${sessions.length === 1 ? "the session" : `the ${sessions.length} sessions`}` : "No timetable was found that fits";
  const last = sessions.findLastIndex((session) => session.start < made.end!);
  const ends = `Ends in session ${last + 1} at ${printClock(settings.sessions[last]!.start + made.end! - sessions[last]!.start)}`;
  return made.proven ? `${ends}, proven the earliest end` : `${ends}, at most ${printDuration(made.end! - made.lowerBound)} later than need be`;
}

function blameInWords(blame: Blame, steps: readonly Step[]): string {
  const name = (id: string): string => nameOf(id, steps);
  switch (blame.kind) {
    case "wait": return `To blame: the wait of ${printDuration(blame.minutes)} after ${name(blame.step)}.`;
    case "queue": return `To blame: the queue at the ${tools[blame.tool as ToolId].name}.`;
    case "teacher": return "To blame: too many steps need the teacher.";
    case "step-too-long": return `To blame: ${name(blame.step)} takes ${printDuration(blame.minutes)}, the longest stretch without a break is ${printDuration(blame.longestStretch)}.`;
    case "hands-on": return `To blame: there is ${printDuration(blame.minutes)} of work, more than the sessions hold.`;
  }
}

function remedyInWords(remedy: Remedy, steps: readonly Step[]): string {
  switch (remedy.kind) {
    case "more-tools": return `It fits with ${remedy.count} of the ${tools[remedy.tool as ToolId].name} at a time for the groups.`;
    case "more-teachers": return `It fits with ${remedy.teachers} teachers.`;
    case "shorter-wait": return `It fits with an adhesive for ${nameOf(remedy.step, steps)} that is ready within ${printDuration(remedy.mostMinutes)}, such as double-sided tape.`;
    case "more-sessions": return `It fits with ${remedy.sessions} more ${remedy.sessions === 1 ? "session" : "sessions"} like the last.`;
    case "longer-sessions": return `It fits when every session is ${printDuration(remedy.minutes)} longer.`;
    case "split-steps": return `It fits when ${listInWords(remedy.steps.map((each) => `${nameOf(each.step, steps)} is done in ${each.parts} parts`))}${remedy.furtherSessions === 0 ? "" : ` and with ${remedy.furtherSessions} more ${remedy.furtherSessions === 1 ? "session" : "sessions"}`}.`;
  }
}

function nameOf(id: string, steps: readonly Step[]): string {
  const step = steps.find((each) => each.id === id);
  return step ? `step ${step.n}, ${step.title.toLowerCase()}` : id;
}
