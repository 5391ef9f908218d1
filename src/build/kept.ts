// What earlier builds left in the output: read from the plan.json files there, so that nothing else has to be remembered.
import { readdir, readFile, rm } from "node:fs/promises";
import path from "node:path";
import { runningTitle } from "../5-pages/running-title.ts";
import type { ListedBooklet } from "../5-pages/types.ts";
import type { ComputedProject } from "./compute.ts";

/** One folder of the output that an earlier build made. */
export interface KeptBooklet {
  readonly project: string;
  /** The folder under `content/` it was made from. */
  readonly folder: string;
  readonly title: string;
  readonly summary: string;
}

/** The booklets that stand in the output, by name. Folders without a plan.json of ours are somebody else's and are left out. */
export async function readKept(output: string): Promise<readonly KeptBooklet[]> {
  const entries = await readdir(output, { withFileTypes: true }).catch(() => []);
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
  const read = await Promise.all(names.map((name) => readPlan(output, name)));
  return read.filter((kept) => kept !== null);
}

/**
 * The lines of the list of projects: everything built now is fresh; what has problems is stale where an earlier build left pages, else missing;
 * what was not asked for this time is listed as it stands.
 */
export function listBooklets(computed: readonly ComputedProject[], asked: ReadonlySet<string>, kept: readonly KeptBooklet[]): readonly ListedBooklet[] {
  return computed.flatMap((result) => {
    const { project, booklets, definitions } = result;
    const before = kept.filter((booklet) => booklet.folder === project.name);
    if (booklets.length === 0) {
      if (before.length === 0) return [listed(project.name, definitions[0]?.title ?? project.name, definitions[0]?.summary ?? "", "missing")];
      return before.map(({ project: name, title, summary }) => listed(name, title, summary, "stale"));
    }
    return booklets.map(({ definition }) => {
      const isThere = asked.has(project.name) || before.some((booklet) => booklet.project === definition.project);
      return listed(definition.project, runningTitle(definition, definitions), definition.summary, isThere ? "fresh" : "missing");
    });
  });
}

/** Removes the folders that no project makes any more: of projects taken out of `content/` and of variants that are gone. */
export async function removeOrphans(computed: readonly ComputedProject[], kept: readonly KeptBooklet[], output: string): Promise<void> {
  const folders = new Map(computed.map((result) => [result.project.name, result]));
  const isOrphan = ({ project, folder }: KeptBooklet): boolean => {
    const result = folders.get(folder);
    if (!result) return true;
    return result.booklets.length > 0 && !result.booklets.some(({ definition }) => definition.project === project);
  };
  for (const { project } of kept.filter(isOrphan)) await rm(path.join(output, project), { recursive: true });
}

function listed(project: string, title: string, summary: string, state: ListedBooklet["state"]): ListedBooklet {
  return { project, title, summary, state };
}

async function readPlan(output: string, name: string): Promise<KeptBooklet | null> {
  const text = await readFile(path.join(output, name, "plan.json"), "utf8").catch(() => null);
  if (text === null) return null;
  try {
    const plan = JSON.parse(text) as Readonly<Record<string, unknown>>;
    const { schema, folder, title, summary } = plan;
    if (typeof schema !== "string" || !schema.startsWith("benchleaf/plan@")) return null;
    if (typeof folder !== "string" || typeof title !== "string" || typeof summary !== "string") return null;
    return { project: name, folder, title, summary };
  } catch {
    return null;
  }
}
