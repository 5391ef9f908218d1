// What became of a project, in plain data: enough to list it, to report it and to know it again at the next build.
import { runningTitle } from "../5-pages/running-title.ts";
import type { Problem } from "../problems/problem.ts";
import type { ComputedProject } from "./compute.ts";

/** One booklet of a project that can be built. */
export interface BuiltBook {
  /** Its folder in the output. */
  readonly project: string;
  /** As lists print it. */
  readonly title: string;
  readonly summary: string;
  /** Codes of the warnings about the design. */
  readonly warnings: readonly string[];
}

/** A project after computing, whether this build computed it or an earlier one. */
export interface ProjectOutcome {
  /** Its folder under `content/`. */
  readonly name: string;
  /** The definition's file as shown; null when there is none. */
  readonly file: string | null;
  /** The folders of the output that its definitions name. */
  readonly makes: readonly string[];
  readonly title: string;
  readonly summary: string;
  /** Empty when anything is wrong: a project is built whole or not at all. */
  readonly books: readonly BuiltBook[];
  readonly problems: readonly Problem[];
  /** The texts that problems point into, by file. */
  readonly texts: readonly (readonly [file: string, text: string])[];
  /** A mistake of ours in words; null when there was none. */
  readonly fault: Error | null;
}

/** The outcome of a project that was just computed. */
export function outcomeOf({ project, definitions, booklets, problems, texts, fault }: ComputedProject): ProjectOutcome {
  return {
    name: project.name,
    file: project.source?.file ?? null,
    makes: definitions.map((definition) => definition.project),
    title: definitions[0]?.title ?? project.name,
    summary: definitions[0]?.summary ?? "",
    books: booklets.map(({ definition, plan }) => ({
      project: definition.project,
      title: runningTitle(definition, definitions),
      summary: definition.summary,
      warnings: plan.findings.filter((finding) => finding.severity === "warn").map((finding) => finding.code),
    })),
    problems,
    texts: problems.length === 0 ? [] : [...texts],
    fault,
  };
}
