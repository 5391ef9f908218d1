// One project through the phases that compute: definition, model, plan, drawings, for itself and each of its variants.
import { readDefinition } from "../1-definition/index.ts";
import type { Definition } from "../1-definition/types.ts";
import { buildModel } from "../2-model/index.ts";
import type { LinearSolver } from "../3-plan/cutting/linear-solver.ts";
import { makePlan } from "../3-plan/index.ts";
import { drawFigures } from "../4-figures/index.ts";
import type { Booklet } from "../5-pages/types.ts";
import type { Problem } from "../problems/problem.ts";
import type { ProjectFolder } from "./content.ts";

/** What became of one project. */
export interface ComputedProject {
  readonly project: ProjectFolder;
  /** The definitions as read, the project itself first; empty when the file has problems. */
  readonly definitions: readonly Definition[];
  /** Empty when anything is wrong: a project is built whole or not at all. */
  readonly booklets: readonly Booklet[];
  readonly problems: readonly Problem[];
  readonly texts: ReadonlyMap<string, string>;
  /** A mistake of ours that was met on the way; null when there was none. */
  readonly fault: Error | null;
}

/**
 * Takes a project as far as its problems allow. `loadSolver` is asked only where there is a class to plan; without it none is planned.
 * Never throws: a mistake of ours comes back as `fault`, so that the other projects are built.
 */
export async function computeProject(project: ProjectFolder, loadSolver: (() => Promise<LinearSolver>) | null = null): Promise<ComputedProject> {
  if (!project.source) return { project, definitions: [], booklets: [], problems: project.problems, texts: new Map(), fault: null };
  try {
    const { definitions, problems: written, texts } = readDefinition(project.source);
    const solver = loadSolver && definitions.some((definition) => definition.class) ? await loadSolver() : null;
    const computed = definitions.map((definition) => computeBooklet(definition, project, solver));
    const problems = [...project.problems, ...written, ...eachOnce(computed.map((one) => one.problems), definitions)];
    const booklets = hasErrors(problems) ? [] : computed.flatMap((one) => (one.booklet ? [one.booklet] : []));
    return { project, definitions, booklets, problems, texts, fault: null };
  } catch (cause) {
    const fault = cause instanceof Error ? cause : new Error(String(cause));
    return { project, definitions: [], booklets: [], problems: project.problems, texts: new Map(), fault };
  }
}

/** What a variant shares with the definition is told once; what only the variant has is told with its name. */
function eachOnce(problems: readonly (readonly Problem[])[], definitions: readonly Definition[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.flatMap((own, index) => own.flatMap((problem) => {
    const key = JSON.stringify([problem.code, problem.message, problem.place]);
    if (seen.has(key)) return [];
    seen.add(key);
    return index === 0 ? [problem] : [{ ...problem, message: `in ${definitions[index]!.project}: ${problem.message}` }];
  }));
}

/** Whether anything in the list keeps a project from being built; warnings do not. */
export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === "error");
}

function computeBooklet(definition: Definition, project: ProjectFolder, solver: LinearSolver | null): { readonly booklet: Booklet | null; readonly problems: readonly Problem[] } {
  const { model, problems: impossible } = buildModel(definition);
  if (hasErrors(impossible)) return { booklet: null, problems: impossible };
  const { plan, problems: unknown } = makePlan(definition, model, solver);
  const problems = [...impossible, ...unknown];
  if (hasErrors(problems)) return { booklet: null, problems };
  const drawings = drawFigures({ definition, model, plan });
  return { booklet: { definition, model, plan, drawings, folder: project.name, pictures: project.folder }, problems };
}
