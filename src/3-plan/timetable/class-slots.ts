// From start times to the entries of the printed timetable.
import { sessionAt } from "./class-calendar.ts";
import type { ClassActivity } from "./class-project.ts";
import type { ClassActivities, TimetableSlot } from "./class-types.ts";

/** Work and demonstrations as scheduled, waits as far as some step needs them or a tool is held, and the breaks. */
export function slotsOf(input: ClassActivities, activities: readonly ClassActivity[], starts: readonly number[]): readonly TimetableSlot[] {
  const slots: TimetableSlot[] = input.sessions.flatMap(({ breaks }, session) =>
    breaks.map(({ start, minutes }): TimetableSlot => ({ session, start, end: start + minutes, group: null, step: null, kind: "break" })));
  const names = groupsInOrder(input, activities, starts);
  activities.forEach(({ kind, step, group: number, minutes }, index) => {
    if (kind === "rest") return;
    const group = number === null ? null : names.indexOf(number);
    const session = sessionAt(input.sessions, starts[index]!);
    const start = starts[index]! - input.sessions[session]!.start;
    const end = start + minutes;
    slots.push({ session, start, end, group, step: step.id, kind });
    const wait = kind === "work" ? waitAfter(input, step.id) : 0;
    if (wait > 0) slots.push({ session, start: end, end: end + wait, group, step: step.id, kind: "wait" });
  });
  const order = ["break", "demonstration", "work", "wait"];
  return slots.sort((a, b) => a.session - b.session || a.start - b.start || order.indexOf(a.kind) - order.indexOf(b.kind) || (a.group ?? -1) - (b.group ?? -1) || a.end - b.end);
}

/** Groups are alike, so the one that is first where they part is called the first. */
function groupsInOrder({ groups }: ClassActivities, activities: readonly ClassActivity[], starts: readonly number[]): readonly number[] {
  const own = Array.from({ length: groups }, (_, group) => activities.flatMap((activity, index) => (activity.kind === "work" && activity.group === group ? [starts[index]!] : [])));
  const compare = (a: number, b: number): number => own[a]!.map((start, at) => start - own[b]![at]!).find((difference) => difference !== 0) ?? a - b;
  return own.map((_, group) => group).sort(compare);
}

/** The longest wait that follows a step: until the last step that needs it may begin, or until it leaves its press. */
function waitAfter(input: ClassActivities, id: string): number {
  const needs = input.steps.flatMap((step) => step.needs.filter((need) => need.step === id).map((need) => need.leastMinutes));
  const rest = input.steps.find((step) => step.id === id)?.rest?.minutes ?? 0;
  return Math.max(0, rest, ...needs);
}
