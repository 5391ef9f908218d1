// Moments, blame and remedies of a timetable in words.
import { shortToolName } from "../../catalogue/tools.ts";
import type { ToolId } from "../../catalogue/tools.ts";
import { printClock, printDuration } from "../../units/duration.ts";
import { sessionAt } from "../timetable/class-calendar.ts";
import type { Blame, ClassActivities } from "../timetable/class-types.ts";
import type { Step } from "../types.ts";
import { uncapital } from "../wording.ts";
import type { Remedy } from "./remedies.ts";

/** "in session 2 at 12:40"; `firstStart` is the time of day at which the first session begins. */
export function momentInWords(end: number, { sessions }: ClassActivities, firstStart: number): string {
  return `in session ${sessionAt(sessions, Math.max(0, end - 1)) + 1} at ${printClock(firstStart + end)}`;
}

/** What keeps the class from fitting, with its numbers; no full stop. */
export function blameInWords(blame: Blame, steps: readonly Step[]): string {
  switch (blame.kind) {
    case "wait": return `the wait of ${printDuration(blame.minutes)} after ${stepInWords(blame.step, steps)}`;
    case "queue": return `the queue at the ${shortToolName(blame.tool as ToolId)}, in use for ${printDuration(blame.minutes)} by one group after another`;
    case "teacher": return "too many steps need the teacher";
    case "step-too-long": return `${blame.isShown ? "showing " : ""}${stepInWords(blame.step, steps)}${blame.isShown ? "," : ""} takes ${printDuration(blame.minutes)} and cannot pause, the longest time between two breaks is ${printDuration(blame.longestStretch)}`;
    case "hands-on": return `there is ${printDuration(blame.minutes)} of work for everybody, demonstrations included, more than the sessions hold`;
  }
}

/** "It fits with 5 in place of 4 (hollow punch and mallet); the class then ends in session 2 at 12:40." */
export function remedyInWords({ words, activities, end, firstStart }: Remedy): string {
  return `It fits ${words}; the class then ends ${momentInWords(end, activities, firstStart)}.`;
}

/** "step 12, glue the floor". */
export function stepInWords(id: string, steps: readonly Step[]): string {
  const step = steps.find((each) => each.id === id);
  return step ? `step ${step.n}, ${uncapital(step.title)}` : id;
}
