// The timetable of a class as printed: a clock for the wall, or the reason why it cannot fit and what would help.
import type { ClassSettings } from "../../1-definition/types.ts";
import type { Finding } from "../../2-model/types.ts";
import { shortToolName } from "../../catalogue/tools.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import { printClock, printDuration } from "../../units/duration.ts";
import { checkTimetable } from "../timetable/check-timetable.ts";
import { makeTimetable } from "../timetable/class-timetable.ts";
import type { ClassActivities, ClassTimetable } from "../timetable/class-types.ts";
import type { Step } from "../types.ts";
import { capital, listInWords } from "../wording.ts";
import { activitiesOf, makersOf } from "./activities.ts";
import type { TimetableInput } from "./activities.ts";
import { findClassFindings } from "./findings.ts";
import type { PrintedTimetable, Slot, SlotKind, TimetableRow } from "./printed-timetable.ts";
import { findRemedies } from "./remedies.ts";
import type { Remedy, Replan } from "./remedies.ts";
import { blameInWords, momentInWords, remedyInWords } from "./time-words.ts";

/** The timetable as printed; `replan` gives the book's steps under another definition, for remedies. */
export function printTimetable(input: TimetableInput, replan: Replan): PrintedTimetable {
  const activities = activitiesOf(input);
  const made = makeTimetable(activities);
  const faults = made.fits ? checkTimetable(activities, made.slots) : [];
  if (faults.length > 0) throw new Error(`internal error: the timetable is wrong: ${JSON.stringify(faults[0])}`);
  const slots = slotsAsPrinted(made.slots, activities, input);
  const { settings } = input;
  const remedies = made.fits ? [] : findRemedies(input, activities, made, replan);
  const findings = findClassFindings(input, activities, made, remedies);
  return {
    fits: made.fits,
    verdict: verdictOf(made, activities, settings),
    advice: adviceOf(made, remedies, findings, input),
    findings, remedies,
    groups: activities.groups,
    groupWords: groupWords(activities, makersOf(settings)),
    sessions: made.fits ? settings.sessions.map((session, index) => ({
      n: index + 1,
      heading: `Session ${index + 1}, ${printClock(session.start)} to ${printClock(session.start + session.minutes)}${index === 0 ? "" : `, ${session.daysAfter === 0 ? "the same day" : session.daysAfter === 1 ? "the next day" : `${session.daysAfter} days later`}`}`,
      rows: rowsOf(slots.filter((slot) => slot.session === index + 1), session, input, activities),
    })) : [],
    slots: made.fits ? slots : [],
    activities, made,
  };
}

/** Slots with the numbers that are printed; parts of a step that follow each other without a break are one. */
function slotsAsPrinted(slots: ClassTimetable["slots"], activities: ClassActivities, { settings, steps }: TimetableInput): readonly Slot[] {
  const printed: Slot[] = [];
  for (const slot of slots) {
    const part = activities.steps.find(({ id }) => id === slot.step)?.part ?? null;
    const step = steps.find(({ id }) => id === (part?.of ?? slot.step))?.n ?? null;
    const kind: SlotKind = slot.kind === "break" && slot.start === 0 && settings.setUp > 0 ? "set up" : slot.kind;
    const own = { session: slot.session + 1, start: slot.start, end: slot.end, group: slot.group === null ? null : slot.group + 1, step, kind };
    const parts = kind === "work" && part ? { from: part.n, to: part.n, of: part.count } : null;
    const before = parts ? printed.findIndex((each) => each.kind === "work" && each.group === own.group && each.step === step && each.session === own.session && each.end === own.start && each.parts?.to === parts.from - 1) : -1;
    if (before < 0) printed.push({ ...own, parts });
    else printed[before] = { ...printed[before]!, end: own.end, parts: { ...printed[before]!.parts!, to: parts!.to } };
  }
  return printed;
}

function rowsOf(slots: readonly Slot[], session: ClassSettings["sessions"][number], input: TimetableInput, activities: ClassActivities): readonly TimetableRow[] {
  const clock = (minute: number): string => printClock(session.start + minute);
  const { cleanUp } = input.settings;
  const end: readonly Slot[] = cleanUp > 0 ? [{ session: 0, start: session.minutes - cleanUp, end: session.minutes, group: null, step: null, kind: "clean up", parts: null }] : [];
  const shown = [...slots.filter((slot) => slot.kind !== "wait"), ...end];
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
    who: slot.kind === "demonstration" ? "teacher shows" : own.length === 0 || own.length === activities.groups ? "everybody" : `${own.length === 1 ? "group" : "groups"} ${listInWords(own.map(String))}`,
    what: whatInWords(slot, input.steps, activities),
    kind: slot.kind,
  }));
}

function whatInWords(slot: Slot, steps: readonly Step[], activities: ClassActivities): string {
  if (slot.kind === "break") return "Break";
  if (slot.kind === "set up") return "Lay out tools and materials";
  if (slot.kind === "clean up") return "Clear away; put glued work under weights";
  const step = steps.find((each) => each.n === slot.step)!;
  const titled = `Step ${step.n}: ${step.title}`;
  if (slot.kind === "demonstration") return `${titled}.`;
  const { parts } = slot;
  if (parts && parts.to < parts.of) return `${titled}, ${partsInWords(parts)}: it goes on after the pause.`;
  const follower = activities.steps.flatMap(({ id, needs }) => needs.flatMap((need) => (need.step === step.id && need.mostMinutes !== null ? [{ id, most: need.mostMinutes }] : [])))[0];
  const rest = activities.steps.find(({ id }) => id === step.id)?.rest;
  return [
    `${titled}${parts && parts.from > 1 ? `, ${partsInWords(parts)}` : ""}.`,
    ...(follower ? [follower.most === 0 ? `Go on at once with step ${numberOf(follower.id, steps)}.` : `Go on with step ${numberOf(follower.id, steps)} within ${printDuration(follower.most)}.`] : []),
    ...(step.wait ? [`Then it rests: ${printDuration(step.wait.minutes)} at least.`] : []),
    ...(rest ? [`Free again after ${printDuration(rest.minutes)}: ${listInWords(rest.tools.map(({ tool }) => shortToolName(tool as ToolId)))}.`] : []),
  ].join(" ");
}

function partsInWords({ from, to, of }: NonNullable<Slot["parts"]>): string {
  return from === to ? `part ${from} of ${of}` : `parts ${from} to ${to} of ${of}`;
}

function numberOf(id: string, steps: readonly Step[]): string {
  return String(steps.find((step) => step.id === id)!.n);
}

/** What is to blame and what would help, then what else the teacher should know. */
function adviceOf(made: ClassTimetable, remedies: readonly Remedy[], findings: readonly Finding[], { steps }: TimetableInput): readonly string[] {
  return [
    ...(made.blamedTogether ? [`To blame, all together: ${listInWords(made.blame.map((blame) => blameInWords(blame, steps)))}.`] : made.blame.map((blame) => `To blame: ${blameInWords(blame, steps)}.`)),
    ...remedies.map(remedyInWords),
    ...findings.filter(({ severity }) => severity === "note").map(({ where, message, consequence, remedy }) => `${capital(where)}: ${message}. ${capital(consequence)}: ${remedy}.`),
  ];
}

function groupWords({ groups, tools: shared }: ClassActivities, makers: number): string {
  if (groups === 1) return "Everybody works at the same time.";
  const names = shared.map(({ id }) => shortToolName(id as ToolId));
  return `${makers} people in ${groups} groups of ${Math.floor(makers / groups)}${makers % groups === 0 ? "" : ` or ${Math.ceil(makers / groups)}`}, who take turns at the ${listInWords(names)}.`;
}

function verdictOf(made: ClassTimetable, activities: ClassActivities, settings: ClassSettings): string {
  const { sessions } = activities;
  if (!made.fits) return made.proven ? `It does not fit into ${sessions.length === 1 ? "the session" : `the ${sessions.length} sessions`}` : "No timetable was found that fits";
  const ends = `Ends ${momentInWords(made.end!, activities, settings.sessions[0]!.start)}`;
  return made.proven ? `${ends}, proven the earliest end` : `${ends}, at most ${printDuration(made.end! - made.lowerBound)} later than need be`;
}
