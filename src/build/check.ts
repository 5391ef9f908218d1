// The command `check`: reports the problems of definitions and writes nothing.
import type { ExitStatus } from "../build.ts";
import { printProblems } from "../problems/print-problem.ts";
import { chooseProjects } from "./choose.ts";
import { readContent } from "./content.ts";
import { faultInWords } from "./fault-words.ts";
import type { Progress } from "./progress.ts";

/** What to check. */
export interface CheckOptions {
  readonly projects: readonly string[];
  readonly content: string;
  readonly progress: Progress;
}

/** @throws UsageFault for a project that does not exist. */
export async function check({ projects, content, progress }: CheckOptions): Promise<ExitStatus> {
  const folders = await readContent(content);
  const asked = chooseProjects(projects, folders);
  // The phases are loaded once it is clear that there is something to check.
  const { computeProject } = await import("./compute.ts");
  const computed = await Promise.all(folders.filter((folder) => asked.has(folder.name)).map((project) => computeProject(project)));
  const problems = computed.flatMap((result) => result.problems);
  if (problems.length > 0) progress.say(printProblems(problems, new Map(computed.flatMap((result) => [...result.texts]))));
  for (const { project, fault } of computed) if (fault) progress.say(`${project.name}: ${faultInWords(fault)}`);
  for (const { definition, plan } of computed.flatMap((result) => result.booklets)) {
    for (const { code, where, message, consequence, remedy } of plan.findings.filter(({ severity }) => severity === "warn")) {
      progress.say(`${definition.project}: warning about the design: ${where}: ${message}; ${consequence} [${code}]\n  hint: ${remedy}\n`);
    }
  }
  const sound = computed.filter((result) => result.booklets.length > 0);
  progress.say(`${sound.length} of ${computed.length} projects can be built`);
  if (computed.some((result) => result.fault !== null)) return 3;
  return sound.length === computed.length ? 0 : 1;
}
