// The timetable of a class in the published shape of plan.json, with the rules that it keeps to.
import type { ClassPlan } from "../3-plan/class/types.ts";
import type { ToolUse } from "../3-plan/timetable/class-types.ts";
import { printClock } from "../units/duration.ts";
import type { PlanJson } from "./plan-schema.ts";

type Timetable = NonNullable<PlanJson["timetable"]>;

const minutesPerDay = 24 * 60;

/** Sessions, shared tools, rules and slots; `stepNumber` gives the number of a step as printed. */
export function timetableJson({ timetable }: ClassPlan, firstStart: number, stepNumber: (id: string) => number): Timetable {
  const { activities, made } = timetable;
  const uses = (tools: readonly ToolUse[]): ToolUse[] => tools.map(({ tool, count }) => ({ tool, count }));
  const named = (id: string): { step: number; part: number | null } => {
    const { part } = activities.steps.find((step) => step.id === id)!;
    return { step: stepNumber(part ? part.of : id), part: part && part.n };
  };
  return {
    fits: made.fits, verdict: timetable.verdict,
    sessions: activities.sessions.map(({ start, minutes }, index) => ({
      n: index + 1, day: Math.floor((firstStart + start) / minutesPerDay), starts: printClock(firstStart + start), minutes, clean_up: activities.cleanUpMinutes,
    })),
    groups: activities.groups, teachers: activities.teachers,
    tools: activities.tools.map(({ id, count }) => ({ tool: id, count })),
    rules: activities.steps.map((step) => ({
      ...named(step.id), minutes: Math.ceil(step.minutes * activities.pace), demonstration: step.demonstrationMinutes, tools: uses(step.tools),
      after: step.needs.map((need) => ({ ...named(need.step), least: need.leastMinutes, most: need.mostMinutes })),
      rest: step.rest && { minutes: step.rest.minutes, tools: uses(step.rest.tools) },
    })),
    slots: made.slots.map(({ session, start, end, group, step, kind }) => ({
      session: session + 1, start, end, group: group === null ? null : group + 1, ...(step === null ? { step: null, part: null } : named(step)), kind,
    })),
    end: made.end, lower_bound: made.lowerBound, proven: made.proven,
    advice: [...timetable.advice],
  };
}
