// Reads published scheduling instances as the engine wants them, with what was published about them.
import { plainProject } from "../src/3-plan/timetable/project.ts";
import type { Lag, Project } from "../src/3-plan/timetable/project.ts";

/** An instance as it stands in a file: `succ` for plain precedence, `arcs` for lags from start to start. */
interface Row {
  readonly id: string;
  readonly dur: readonly number[];
  readonly req: readonly (readonly number[])[];
  readonly cap: readonly number[];
  readonly succ?: readonly (readonly number[])[];
  readonly arcs?: readonly (readonly [number, number, number])[];
  readonly best: { readonly opt?: number; readonly ub?: number; readonly lb?: number; readonly feasible?: boolean };
}

/** An instance with its published optimum, or best known makespan and lower bound. */
export interface Instance {
  readonly id: string;
  readonly project: Project;
  readonly isPossible: boolean;
  readonly best: number | null;
  readonly bound: number | null;
}

/** The instances of a file. Where there are maximum lags, the first activity is the origin and starts at 0. */
export function readInstances(text: string): readonly Instance[] {
  const { instances } = JSON.parse(text) as { readonly instances: readonly Row[] };
  return instances.map(({ id, dur, req, cap, succ, arcs, best }) => {
    const lags: readonly Lag[] = arcs ? arcs.map(([from, to, lag]) => ({ from, to, lag })) : (succ ?? []).flatMap((followers, from) => followers.map((to) => ({ from, to, lag: dur[from]! })));
    const project = plainProject({ durations: dur, demands: req, capacities: cap, lags });
    return {
      id, project: arcs ? { ...project, windows: project.windows.map((windows, activity) => (activity === 0 ? [{ first: 0, last: 0 }] : windows)) } : project,
      isPossible: best.feasible !== false, best: best.opt ?? best.ub ?? null, bound: best.opt ?? best.lb ?? null,
    };
  });
}
