// Checks a finished timetable against the class it is for; it shares nothing with the engine but the types.
import type { ClassActivities, ClassStep, TimetableSlot } from "./class-types.ts";

/** One breach, in words, with the slot that shows it where there is one. */
export interface TimetableFault {
  readonly what: "missing" | "repeated" | "unknown" | "length" | "outside-session" | "over-break" | "too-early" | "too-late" | "not-shown-before" | "group-busy" | "tool-overbooked" | "teacher-overbooked" | "break-missing";
  readonly message: string;
}

/** A slot with both ends counted from the start of the first session. */
interface Placed extends TimetableSlot {
  readonly from: number;
  readonly until: number;
}

/** All breaches of a timetable; none means that the class can follow it. */
export function checkTimetable(input: ClassActivities, slots: readonly TimetableSlot[]): readonly TimetableFault[] {
  const known = slots.filter(({ session }) => input.sessions[session] !== undefined);
  const placed = known.map((slot): Placed => ({ ...slot, from: input.sessions[slot.session]!.start + slot.start, until: input.sessions[slot.session]!.start + slot.end }));
  return [
    ...(known.length < slots.length ? [{ what: "unknown", message: "a slot is in a session that does not exist" } as const] : []),
    ...checkCompleteness(input, placed),
    ...placed.flatMap((slot) => checkPlace(input, slot)),
    ...checkNeeds(input, placed),
    ...checkDemonstrations(input, placed),
    ...checkPeople(input, placed),
    ...checkTools(input, placed),
    ...checkBreaks(input, placed),
  ];
}

function say({ kind, step, group, session, start, end }: TimetableSlot): string {
  return `${kind} of ${step ?? "no step"} by ${group === null ? "the class" : `group ${group}`} in session ${session} from ${start} to ${end}`;
}

function workOf(slots: readonly Placed[], step: string, group: number): Placed | undefined {
  return slots.find((slot) => slot.kind === "work" && slot.step === step && slot.group === group);
}

/** Every group does every step once, for as long as it takes. */
function checkCompleteness(input: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  const faults: TimetableFault[] = [];
  for (const step of input.steps) {
    for (let group = 0; group < input.groups; group += 1) {
      const found = slots.filter((slot) => slot.kind === "work" && slot.step === step.id && slot.group === group);
      if (found.length === 0) faults.push({ what: "missing", message: `group ${group} never does ${step.id}` });
      if (found.length > 1) faults.push({ what: "repeated", message: `group ${group} does ${step.id} ${found.length} times` });
      const minutes = Math.ceil(step.minutes * input.pace);
      for (const slot of found) if (slot.until - slot.from !== minutes) faults.push({ what: "length", message: `${say(slot)}: it takes ${minutes} minutes` });
    }
  }
  for (const slot of slots) {
    const isStep = slot.step !== null && input.steps.some(({ id }) => id === slot.step);
    const isGroup = slot.group !== null && Number.isInteger(slot.group) && slot.group >= 0 && slot.group < input.groups;
    const isRight = slot.kind === "break" ? slot.step === null : slot.kind === "demonstration" ? isStep && slot.group === null : isStep && isGroup;
    if (!isRight) faults.push({ what: "unknown", message: `${say(slot)}: there is no such step or group` });
  }
  return faults;
}

/** Hands work within a session, between breaks, before the clean-up. */
function checkPlace({ sessions, cleanUpMinutes }: ClassActivities, slot: Placed): readonly TimetableFault[] {
  if (slot.kind !== "work" && slot.kind !== "demonstration") return [];
  const session = sessions[slot.session]!;
  const faults: TimetableFault[] = [];
  if (slot.start < 0 || slot.end > session.minutes - cleanUpMinutes) faults.push({ what: "outside-session", message: `${say(slot)}: hands work from 0 to ${session.minutes - cleanUpMinutes}` });
  for (const pause of session.breaks) {
    if (slot.start < pause.start + pause.minutes && pause.start < slot.end) faults.push({ what: "over-break", message: `${say(slot)}: there is a break from ${pause.start} to ${pause.start + pause.minutes}` });
  }
  return faults;
}

/** Drying and open times of every group. */
function checkNeeds(input: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  const faults: TimetableFault[] = [];
  for (const step of input.steps) {
    for (const need of step.needs) {
      for (let group = 0; group < input.groups; group += 1) {
        const before = workOf(slots, need.step, group);
        const work = workOf(slots, step.id, group);
        if (!before || !work) continue;
        const minutes = work.from - before.until;
        if (minutes < need.leastMinutes) faults.push({ what: "too-early", message: `${say(work)}: ${minutes} minutes after ${need.step}, at least ${need.leastMinutes} are needed` });
        if (need.mostMinutes !== null && minutes > need.mostMinutes) faults.push({ what: "too-late", message: `${say(work)}: ${minutes} minutes after ${need.step}, at most ${need.mostMinutes} are allowed` });
      }
    }
  }
  return faults;
}

/** What is to be shown is shown once, before any group begins. */
function checkDemonstrations({ steps }: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  return steps.flatMap(({ id, demonstrationMinutes }): readonly TimetableFault[] => {
    const shown = slots.filter((slot) => slot.kind === "demonstration" && slot.step === id);
    const wanted = demonstrationMinutes > 0 ? 1 : 0;
    if (shown.length !== wanted) return [{ what: shown.length < wanted ? "missing" : "repeated", message: `${id} is shown ${shown.length} times, not ${wanted}` }];
    if (wanted === 0) return [];
    const early = slots.filter((slot) => slot.kind === "work" && slot.step === id && slot.from < shown[0]!.until);
    const length = shown[0]!.until - shown[0]!.from;
    return [
      ...(length === demonstrationMinutes ? [] : [{ what: "length", message: `${say(shown[0]!)}: it takes ${demonstrationMinutes} minutes` } as const]),
      ...early.map((slot) => ({ what: "not-shown-before", message: `${say(slot)}: it is shown until minute ${shown[0]!.end} of session ${shown[0]!.session}` } as const)),
    ];
  });
}

/** Nobody does two things at once: a group works or watches, a teacher shows or stands by. */
function checkPeople(input: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  const faults: TimetableFault[] = [];
  const hands = slots.filter(({ kind }) => kind === "work" || kind === "demonstration");
  for (let group = 0; group < input.groups; group += 1) {
    const own = hands.filter((slot) => slot.group === null || slot.group === group).sort((a, b) => a.from - b.from);
    own.forEach((slot, index) => {
      if (index > 0 && slot.from < own[index - 1]!.until) faults.push({ what: "group-busy", message: `${say(slot)}: group ${group} is still at ${own[index - 1]!.step}` });
    });
  }
  const taught = hands.filter((slot) => slot.kind === "demonstration" || stepOf(input, slot)?.needsTeacher === true);
  for (const slot of taught) {
    const busy = taught.filter((other) => other.from <= slot.from && slot.from < other.until).length;
    if (busy > input.teachers) faults.push({ what: "teacher-overbooked", message: `${say(slot)}: ${busy} teachers are needed, there are ${input.teachers}` });
  }
  return faults;
}

function stepOf(input: ClassActivities, slot: TimetableSlot): ClassStep | undefined {
  return input.steps.find(({ id }) => id === slot.step);
}

/** Tools in hands, and those that hold a piece while it rests. */
function checkTools(input: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  return input.tools.flatMap(({ id, count }) => {
    const held = slots.filter(({ kind }) => kind === "work").flatMap((slot) => {
      const step = stepOf(input, slot);
      const countOf = (uses: ClassStep["tools"]): number => uses.filter(({ tool }) => tool === id).reduce((sum, use) => sum + use.count, 0);
      const inHand = { slot, from: slot.from, until: slot.until, count: step ? countOf(step.tools) : 0 };
      const atRest = { slot, from: slot.until, until: slot.until + (step?.rest?.minutes ?? 0), count: step?.rest ? countOf(step.rest.tools) : 0 };
      return [inHand, atRest].filter((each) => each.count > 0);
    });
    return held.flatMap((each): readonly TimetableFault[] => {
      const taken = held.filter(({ from, until }) => from <= each.from && each.from < until).reduce((sum, other) => sum + other.count, 0);
      return taken > count ? [{ what: "tool-overbooked", message: `${say(each.slot)}: ${taken} of ${id} are taken, there are ${count}` }] : [];
    });
  });
}

/** Every break of the calendar is in the timetable. */
function checkBreaks({ sessions }: ClassActivities, slots: readonly Placed[]): readonly TimetableFault[] {
  return sessions.flatMap(({ breaks }, session) => breaks.flatMap((pause): readonly TimetableFault[] => {
    const isThere = slots.some((slot) => slot.kind === "break" && slot.session === session && slot.start === pause.start && slot.end === pause.start + pause.minutes);
    return isThere ? [] : [{ what: "break-missing", message: `the break at ${pause.start} of session ${session} is not in the timetable` }];
  }));
}
