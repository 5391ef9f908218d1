// A class as a scheduling project: what each group, the teacher and each shared tool does is an activity, a lag or a resource.
import { stretchesOf, windowsFor } from "./class-calendar.ts";
import type { ClassActivities, ClassStep, ToolUse } from "./class-types.ts";
import type { Lag, Project } from "./project.ts";

/** What an activity of the project is in the class. */
export interface ClassActivity {
  readonly kind: "work" | "demonstration" | "rest";
  readonly step: ClassStep;
  /** Null for the whole class. */
  readonly group: number | null;
  readonly minutes: number;
}

/** The project with the meaning of its activities. */
export interface ClassProject {
  readonly project: Project;
  readonly activities: readonly ClassActivity[];
}

/** Hands-on minutes of a step at the pace of the class. */
export function workMinutes(step: ClassStep, pace: number): number {
  return Math.ceil(step.minutes * pace);
}

/** A demonstration is fresh in mind for so long: at a second session on the same day, not on the next. */
const freshMinutes = 12 * 60;

/** Builds the project; with `isFresh` the first of the groups does what is shown on the same day. Groups are alike, so the first of their steps may be taken to begin in the order of the groups: that leaves out mere renamings. */
export function classProject(input: ClassActivities, isFresh = false): ClassProject {
  const activities = activitiesOf(input);
  const numbers = new Map(activities.map((activity, index) => [keyOf(activity.kind, activity.step.id, activity.group), index]));
  const find = (kind: ClassActivity["kind"], step: string, group: number | null): number | undefined => numbers.get(keyOf(kind, step, group));
  const lags: Lag[] = [];
  activities.forEach((activity, index) => {
    if (activity.kind === "rest") {
      const work = find("work", activity.step.id, activity.group)!;
      const { minutes } = activities[work]!;
      lags.push({ from: work, to: index, lag: minutes }, { from: index, to: work, lag: -minutes });
    }
    if (activity.kind !== "work") return;
    for (const need of activity.step.needs) {
      const before = find("work", need.step, activity.group)!;
      const { minutes } = activities[before]!;
      lags.push({ from: before, to: index, lag: minutes + need.leastMinutes });
      if (need.mostMinutes !== null) lags.push({ from: index, to: before, lag: -(minutes + need.mostMinutes) });
    }
    const shown = find("demonstration", activity.step.id, null);
    if (shown !== undefined) lags.push({ from: shown, to: index, lag: activities[shown]!.minutes });
    if (shown !== undefined && isFresh && activity.group === 0) lags.push({ from: index, to: shown, lag: -freshMinutes });
  });
  const first = input.steps[0];
  for (let group = 1; first && group < input.groups; group += 1) lags.push({ from: find("work", first.id, group - 1)!, to: find("work", first.id, group)!, lag: 0 });

  const stretches = stretchesOf(input.sessions, input.cleanUpMinutes);
  return {
    activities,
    project: {
      durations: activities.map(({ minutes }) => minutes),
      ...resourcesOf(input, activities),
      lags,
      windows: activities.map(({ kind, minutes }) => (kind === "rest" ? null : windowsFor(stretches, minutes))),
      isRest: activities.map(({ kind }) => kind === "rest"),
    },
  };
}

function keyOf(kind: string, step: string, group: number | null): string {
  return `${kind} ${group ?? "all"} ${step}`;
}

function activitiesOf({ steps, groups, pace }: ClassActivities): readonly ClassActivity[] {
  return steps.flatMap((step): readonly ClassActivity[] => [
    ...(step.demonstrationMinutes > 0 ? [{ kind: "demonstration", step, group: null, minutes: step.demonstrationMinutes } as const] : []),
    ...Array.from({ length: groups }, (_, group) => ({ kind: "work", step, group, minutes: workMinutes(step, pace) } as const)),
    ...(step.rest && step.rest.minutes > 0 ? Array.from({ length: groups }, (_, group) => ({ kind: "rest", step, group, minutes: step.rest!.minutes } as const)) : []),
  ]);
}

/** Each group, all teachers together, and every tool of which there are too few for all groups at once. */
function resourcesOf(input: ClassActivities, activities: readonly ClassActivity[]): Pick<Project, "capacities" | "demands"> {
  const uses = ({ kind, step }: ClassActivity): readonly ToolUse[] => (kind === "work" ? step.tools : kind === "rest" ? step.rest!.tools : []);
  const used = (activity: ClassActivity, tool: string): number => uses(activity).reduce((sum, use) => (use.tool === tool ? sum + use.count : sum), 0);
  const scarce = input.tools.filter(({ id, count }) => activities.reduce((sum, activity) => sum + used(activity, id), 0) > count);
  return {
    capacities: [...Array.from({ length: input.groups }, () => 1), input.teachers, ...scarce.map(({ count }) => count)],
    demands: activities.map((activity) => [
      ...Array.from({ length: input.groups }, (_, group) => (activity.kind !== "rest" && (activity.group === null || activity.group === group) ? 1 : 0)),
      activity.kind === "demonstration" || (activity.kind === "work" && activity.step.needsTeacher) ? 1 : 0,
      ...scarce.map(({ id }) => used(activity, id)),
    ]),
  };
}
