// The timetable of a class: the earliest end that was found, with its bound, or what keeps the class from fitting.
import { findBlame } from "./class-blame.ts";
import { lastMinute, sessionsEnough, withFurtherSessions } from "./class-calendar.ts";
import { classProject, workMinutes } from "./class-project.ts";
import { slotsOf } from "./class-slots.ts";
import type { Blame, ClassActivities, ClassTimetable } from "./class-types.ts";
import { longestStretch } from "./pauses.ts";
import { solveProject } from "./solve-project.ts";
import type { Budget } from "./solve-project.ts";
import { moveLater, startEarlier } from "./tidy-schedule.ts";

/** What a build spends on the timetable of one class. */
export const classBudget: Budget = { schedules: 500, failures: 3_000, seed: 1 };

const ordersToTidy = 400;

/** Schedules the class; the same input has the same timetable everywhere. */
export function makeTimetable(input: ClassActivities, budget: Budget = classBudget): ClassTimetable {
  const tooLong = stepsTooLong(input);
  if (tooLong.length > 0) return { fits: false, slots: [], end: null, lowerBound: 0, proven: true, blame: tooLong, blamedTogether: tooLong.length > 1 };
  // What is shown is done on the same day, unless the class fits only otherwise.
  const fresh = scheduleClass(input, budget, true);
  const isShown = input.steps.some(({ demonstrationMinutes }) => demonstrationMinutes > 0);
  const { end, lowerBound, slots } = isShown && !isWithin(fresh.end, input) ? scheduleClass(input, budget, false) : fresh;
  if (isWithin(end, input)) return { fits: true, slots, end, lowerBound, proven: end === lowerBound, blame: [], blamedTogether: false };
  return { fits: false, slots: [], end, lowerBound, proven: lowerBound > lastMinute(input), ...findBlame(input) };
}

function isWithin(end: number | null, input: ClassActivities): boolean {
  return end !== null && end <= lastMinute(input);
}

/** Schedules the class as if more sessions like the last one followed day by day, so that what does not fit is seen to its end. */
function scheduleClass(input: ClassActivities, budget: Budget, isFresh: boolean): Pick<ClassTimetable, "end" | "lowerBound" | "slots"> {
  const { project, activities } = classProject({ ...input, sessions: withFurtherSessions(input.sessions, sessionsEnough(input)) }, isFresh);
  const { schedule, lowerBound } = solveProject(project, budget);
  if (!schedule) return { end: null, lowerBound, slots: [] };
  const shown = activities.flatMap(({ kind }, index) => (kind === "demonstration" ? [index] : []));
  // Groups wait less, and what is shown is fresh in mind.
  const pleasant = moveLater(project, startEarlier(project, schedule, ordersToTidy, budget.seed), shown);
  return { end: pleasant.makespan, lowerBound, slots: slotsOf(input, activities, pleasant.starts) };
}

/** Steps that fit between no two breaks, or the showing of which does not: parts of a step fit, but it is shown in one go. */
export function stepsTooLong(input: ClassActivities): readonly Extract<Blame, { kind: "step-too-long" }>[] {
  const longest = longestStretch(input);
  return input.steps.flatMap((step) => {
    const work = workMinutes(step, input.pace);
    const minutes = Math.max(work, step.demonstrationMinutes);
    return minutes > longest ? [{ kind: "step-too-long", step: step.part?.of ?? step.id, isShown: work < minutes, minutes, longestStretch: longest } as const] : [];
  });
}
