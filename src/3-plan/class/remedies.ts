// What would make a class fit: one change at a time, from little to much, and the class is planned again with each.
import type { ClassSettings, Definition } from "../../1-definition/types.ts";
import { findAdhesive } from "../../catalogue/adhesives.ts";
import { shortToolName } from "../../catalogue/tools.ts";
import { printClock, printDuration } from "../../units/duration.ts";
import { doesFit, furtherSessions, stepsWithWaits, withWaitAtMost } from "../timetable/class-blame.ts";
import { withFurtherSessions } from "../timetable/class-calendar.ts";
import { makeTimetable, stepsTooLong } from "../timetable/class-timetable.ts";
import type { ClassActivities, ClassTimetable } from "../timetable/class-types.ts";
import { withStepInParts } from "../timetable/pauses.ts";
import { listInWords } from "../wording.ts";
import { activitiesOf, makersOf } from "./activities.ts";
import type { BookSteps, TimetableInput } from "./activities.ts";

/** A change with which the class was planned again and did fit. */
export interface Remedy {
  /** "with 5 in place of 4 (hollow punch and mallet)": to be put behind "It fits". */
  readonly words: string;
  /** The class as changed, and the minute at which it ends. */
  readonly activities: ClassActivities;
  readonly end: number;
  /** Time of day at which the first session begins. */
  readonly firstStart: number;
}

/** A class with a change made to it. */
type Change = Omit<Remedy, "end">;

/** A change that was found to do, and how much it was. */
interface Attempt {
  readonly amount: number;
  readonly change: Change;
}

/** The same change made little or much. */
interface Family {
  /** Of several families of a kind only the one that needs the least is told. */
  readonly kind: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly at: (amount: number) => Change | null;
}

/** Drafts and steps of the book as another definition would have them. */
export type Replan = (definition: Definition) => BookSteps;

const stepOfMinutes = 15;
const mostMinutes = 120;
const stepOfWaits = 5;

/** The least of each kind of change that makes a class fit. `made` is the timetable that does not. */
export function findRemedies(input: TimetableInput, activities: ClassActivities, made: ClassTimetable, replan: Replan): readonly Remedy[] {
  const withTape = tapeFamilies(input, replan);
  const families = [
    ...toolFamilies(input), ...withTape.families, ...waitFamilies(input, activities, withTape.steps), ...sessionFamilies(input),
    furtherSessionFamily(input, activities, made), ...moreOfBothFamilies(input, activities, made), fewerPeople(input),
  ];
  return [...new Set(families.map(({ kind }) => kind))].flatMap((kind) => {
    const found = families.filter((family) => family.kind === kind).flatMap((family) => leastThatFits(family) ?? []);
    return found.length === 0 ? [] : planAgain(found.reduce((best, each) => (each.amount < best.amount ? each : best)).change);
  });
}

/** What was tried in little time is planned as the class itself is, so that the end that is told is the one that would come out. */
function planAgain(change: Change): readonly Remedy[] {
  const { fits, end } = makeTimetable(change.activities);
  return fits ? [{ ...change, end: end! }] : [];
}

/** Tries the most first; if that does, halves its way down. Null when the most does not do either. */
function leastThatFits({ least, most, step, at }: Family): Attempt | null {
  const attempt = (amount: number): Attempt | null => {
    const change = at(amount);
    return change && doesFit(change.activities) ? { amount, change } : null;
  };
  let high = Math.floor((most - least) / step);
  let best = high < 0 ? null : attempt(least + high * step);
  for (let low = 0; best && low < high;) {
    const middle = (low + high) >> 1;
    const found = attempt(least + middle * step);
    if (found) [best, high] = [found, middle];
    else low = middle + 1;
  }
  return best;
}

function changed(input: TimetableInput, settings: Partial<ClassSettings>, words: string): Change {
  const all = { ...input.settings, ...settings };
  return { words, activities: activitiesOf({ ...input, settings: all }), firstStart: all.sessions[0]!.start };
}

function firstStartOf({ settings }: TimetableInput): number {
  return settings.sessions[0]!.start;
}

/** More of one shared tool, up to one for everybody. */
function toolFamilies(input: TimetableInput): readonly Family[] {
  const { settings, steps } = input;
  const makers = makersOf(settings);
  return [...settings.tools].filter(([id, count]) => count < makers && steps.some((step) => step.tools.includes(id))).map(([id, has]): Family => ({
    kind: `more of ${id}`, least: has + 1, most: makers, step: 1,
    at: (count) => changed(input, { tools: new Map([...settings.tools, [id, count]]) }, `with ${count} in place of ${has} (${shortToolName(id)})`),
  }));
}

/** Double-sided tape for a job whose steps can be done with it, that is without a brush. */
function tapeFamilies(input: TimetableInput, replan: Replan): { readonly families: readonly Family[]; readonly steps: ReadonlySet<string> } {
  const { aliases: _, ...tape } = findAdhesive("double-sided tape")!;
  const { definition, drafts } = input;
  const jobs = [...new Set(drafts.flatMap(({ glueing }) => (glueing ? [glueing.job] : [])))].filter((job) => definition.adhesives[job]!.setMinutes > 0);
  const done = new Set<string>();
  const families = jobs.flatMap((job): readonly Family[] => {
    const other = { ...definition, adhesives: { ...definition.adhesives, [job]: tape } };
    const book = replan(other);
    const own = book.drafts.filter((draft) => draft.glueing?.job === job);
    if (own.some((draft) => draft.tools.includes("brush"))) return [];
    for (const { id } of own) done.add(id);
    const numbers = input.steps.filter((step) => own.some(({ id }) => id === step.id)).map((step) => String(step.n));
    return [{ kind: `tape for ${job}`, least: 0, most: 0, step: 1, at: () => ({ words: `with double-sided tape in place of ${definition.adhesives[job]!.name} in ${numbers.length === 1 ? "step" : "steps"} ${listInWords(numbers)}`, activities: activitiesOf({ ...input, ...book, definition: other }), firstStart: firstStartOf(input) }) }];
  });
  return { families, steps: done };
}

/** A quicker adhesive, where tape will not do: the longest wait that fits is the least change. */
function waitFamilies(input: TimetableInput, activities: ClassActivities, withTape: ReadonlySet<string>): readonly Family[] {
  return stepsWithWaits(activities).filter(({ step }) => !withTape.has(step.id)).map(({ step, minutes }): Family => ({
    kind: "quicker adhesive", least: stepOfWaits, most: minutes, step: stepOfWaits,
    at: (less) => ({ words: `with an adhesive in ${stepName(step.id, input)} that ${minutes === less ? "needs no wait" : `is ready within ${printDuration(minutes - less)}`} instead of ${printDuration(minutes)}`, activities: withWaitAtMost(activities, step.id, minutes - less), firstStart: firstStartOf(input) }),
  }));
}

/** Sessions that begin earlier, end later, are cut in two, or lie a day further apart. */
function sessionFamilies(input: TimetableInput): readonly Family[] {
  const { sessions } = input.settings;
  const replaced = (index: number, ...others: ClassSettings["sessions"]): ClassSettings["sessions"] => sessions.flatMap((session, each) => (each === index ? others : [session]));
  const which = (index: number): string => (sessions.length === 1 ? "the session" : `session ${index + 1}`);
  const extended = { least: stepOfMinutes, most: mostMinutes, step: stepOfMinutes } as const;
  const once = { least: 0, most: 0, step: 1 } as const;
  return [
    ...sessions.map((session, index): Family => ({ kind: "earlier start", ...extended, at: (minutes) => {
      const start = session.start - minutes;
      const before = sessions[index - 1];
      if (start < 0 || (before && session.daysAfter === 0 && before.start + before.minutes > start)) return null;
      return changed(input, { sessions: replaced(index, { ...session, start, minutes: session.minutes + minutes }) }, `when ${which(index)} begins ${printDuration(minutes)} earlier, at ${printClock(start)}, and ends as before`);
    } })),
    { kind: "later end", ...extended, at: (minutes) => {
      const longer = sessions.map((session) => ({ ...session, minutes: session.minutes + minutes }));
      if (longer.some((session, index) => index > 0 && session.daysAfter === 0 && longer[index - 1]!.start + longer[index - 1]!.minutes > session.start)) return null;
      return changed(input, { sessions: longer }, `when ${sessions.length === 1 ? "the session ends" : "every session ends"} ${printDuration(minutes)} later`);
    } },
    ...sessions.map((session, index): Family => ({ kind: "split", ...once, at: () => {
      const half = Math.floor(session.minutes / 2);
      const next = sessions[index + 1];
      if (next && next.daysAfter === 0) return null;
      // The second half comes a day later; what follows keeps its day, or moves on by one where that day is taken.
      const parts = replaced(index, { ...session, minutes: half }, { ...session, minutes: session.minutes - half, daysAfter: 1 });
      return changed(input, { sessions: parts.map((each, at) => (at === index + 2 ? { ...each, daysAfter: Math.max(1, each.daysAfter - 1) } : each)) }, `when ${which(index)} is held in two halves of ${printDuration(half)} on two days`);
    } })),
    ...sessions.slice(1).map((session, at): Family => ({ kind: "a day later", ...once, at: () => changed(input, { sessions: replaced(at + 1, { ...session, daysAfter: session.daysAfter + 1 }) }, `when session ${at + 2} is held a day later`) })),
  ];
}

/** Further sessions like the last, as many as the timetable ran over by; glued steps that are longer than any stretch are done in parts. */
function furtherSessionFamily(input: TimetableInput, activities: ClassActivities, { end }: ClassTimetable): Family {
  const tooLong = stepsTooLong(activities);
  const parts = tooLong.map(({ step, minutes, longestStretch }) => ({ step, count: Math.ceil(minutes / Math.max(1, longestStretch)) }));
  const divided = parts.reduce((changing, { step, count }) => withStepInParts(changing, step, count), activities);
  const most = end === null ? 20 : furtherSessions(activities, end);
  return { kind: "more sessions", least: tooLong.length > 0 ? 0 : 1, most, step: 1, at: (sessions) => ({
    words: [...parts.map(({ step, count }) => `with ${stepName(step, input)} done in ${count} parts`), ...(sessions === 0 ? [] : [`with ${furtherInWords(sessions)}`])].join(" and "),
    activities: { ...divided, sessions: withFurtherSessions(divided.sessions, sessions) }, firstStart: firstStartOf(input),
  }) };
}

/** Where several further sessions are needed: fewer of them, and one of each shared tool for everybody. */
function moreOfBothFamilies(input: TimetableInput, activities: ClassActivities, { end }: ClassTimetable): readonly Family[] {
  const { settings, steps } = input;
  const scarce = [...settings.tools.keys()].filter((id) => settings.tools.get(id)! < makersOf(settings) && steps.some((step) => step.tools.includes(id)));
  const alone = end === null || stepsTooLong(activities).length > 0 ? 0 : furtherSessions(activities, end);
  if (scarce.length === 0 || alone < 2) return [];
  const plenty = changed(input, { tools: new Map([...settings.tools, ...scarce.map((id) => [id, makersOf(settings)] as const)]) }, "").activities;
  return [{ kind: "more of both", least: 0, most: alone - 1, step: 1, at: (sessions) => ({
    words: `with one for everybody (${listInWords(scarce.map(shortToolName))})${sessions === 0 ? "" : ` and ${furtherInWords(sessions)}`}`,
    activities: { ...plenty, sessions: withFurtherSessions(plenty.sessions, sessions) }, firstStart: firstStartOf(input),
  }) }];
}

function furtherInWords(sessions: number): string {
  return `${sessions} more ${sessions === 1 ? "session" : "sessions"} like the last, ${sessions === 1 ? "a day later" : "one a day"}`;
}

/** Fewer participants: the most that can be taken. */
function fewerPeople(input: TimetableInput): Family {
  const { participants } = input.settings;
  return { kind: "fewer people", least: 1, most: participants - 1, step: 1, at: (less) => changed(input, { participants: participants - less }, `with ${participants - less} ${participants - less === 1 ? "participant" : "participants"}`) };
}

function stepName(id: string, { steps }: BookSteps): string {
  const step = steps.find((each) => each.id === id);
  return step ? `step ${step.n}` : id;
}
