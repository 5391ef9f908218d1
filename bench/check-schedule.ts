// Checks a schedule of the benchmark minute by minute, without any code of the engine.
import type { Instance } from "./scheduling-instances.ts";

/** Throws if a lag is broken or a resource is asked for more than there is. */
export function checkSchedule({ id, project }: Instance, starts: readonly number[]): void {
  const fail = (what: string): never => {
    throw new Error(`${id}: ${what}`);
  };
  for (const { from, to, lag } of project.lags) if (starts[to]! < starts[from]! + lag) fail(`lag from ${from} to ${to} is broken`);
  if (starts.some((start) => start < 0)) fail("something starts before 0");
  const end = Math.max(...starts.map((start, activity) => start + project.durations[activity]!));
  project.capacities.forEach((capacity, resource) => {
    for (let minute = 0; minute < end; minute += 1) {
      const used = starts.reduce((sum, start, activity) => (start <= minute && minute < start + project.durations[activity]! ? sum + project.demands[activity]![resource]! : sum), 0);
      if (used > capacity) fail(`resource ${resource} is overfull at ${minute}`);
    }
  });
}
