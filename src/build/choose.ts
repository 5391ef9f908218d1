// Which projects a command means, and what is wrong with a command that cannot be carried out.
import { nearestOf } from "../problems/nearest.ts";
import type { Problem } from "../problems/problem.ts";
import type { ProjectFolder } from "./content.ts";
import type { ProjectOutcome } from "./outcome.ts";

/** A command that makes no sense as given: the reader of the command line is told, and the exit status is 2. */
export class UsageFault extends Error {}

/**
 * The names of the folders asked for; all of them when none is named.
 * @throws UsageFault for a name that no folder bears, with the nearest one.
 */
export function chooseProjects(asked: readonly string[], known: readonly ProjectFolder[]): ReadonlySet<string> {
  const names = known.map((project) => project.name);
  if (asked.length === 0) return new Set(names);
  for (const name of asked) {
    if (names.includes(name)) continue;
    const near = nearestOf(name, names);
    const list = names.length === 0 ? "there are none" : `there are: ${names.join(", ")}`;
    throw new UsageFault(`no project is called "${name}"${near ? `; did you mean ${near}?` : ""} (${list})`);
  }
  return new Set(asked);
}

/**
 * Two books that would be written into the same folder: a variant and a project with its name. Asked for one project after the other, in order, it gives
 * the problems of the later one.
 */
export function openClaims(): (project: Pick<ProjectOutcome, "name" | "file" | "makes">) => readonly Problem[] {
  const owners = new Map<string, string>();
  return ({ name, file, makes }) => makes.flatMap((folder): Problem[] => {
    const owner = owners.get(folder);
    owners.set(folder, name);
    return owner === undefined || file === null ? [] : [{
      code: "keys-exclude", severity: "error", place: { file, span: null },
      message: `${name} and ${owner} both make the folder "${folder}"`,
      hint: "rename the variant or the project's folder",
    }];
  });
}
