// What earlier builds left in the output: read from the plan.json files there, so that nothing else has to be remembered.
import { readdir, readFile, rm } from "node:fs/promises";
import path from "node:path";
import type { ListedBooklet } from "../5-pages/types.ts";
import type { ProjectOutcome } from "./outcome.ts";

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
export function listBooklets(outcomes: readonly ProjectOutcome[], asked: ReadonlySet<string>, kept: readonly KeptBooklet[]): readonly ListedBooklet[] {
  return outcomes.flatMap(({ name, title, summary, books }): readonly ListedBooklet[] => {
    const before = kept.filter((booklet) => booklet.folder === name);
    if (books.length === 0) {
      if (before.length === 0) return [{ project: name, title, summary, state: "missing" }];
      return before.map((booklet) => ({ project: booklet.project, title: booklet.title, summary: booklet.summary, state: "stale" }));
    }
    return books.map((book) => {
      const isThere = asked.has(name) || before.some((booklet) => booklet.project === book.project);
      return { project: book.project, title: book.title, summary: book.summary, state: isThere ? "fresh" : "missing" };
    });
  });
}

/** Removes the folders that no project makes any more: of projects taken out of `content/` and of variants that are gone. */
export async function removeOrphans(outcomes: readonly ProjectOutcome[], kept: readonly KeptBooklet[], output: string): Promise<void> {
  const folders = new Map(outcomes.map((outcome) => [outcome.name, outcome]));
  const isOrphan = ({ project, folder }: KeptBooklet): boolean => {
    // A project may have taken over the folder that another one's variant had.
    if (outcomes.some(({ name, books }) => name !== folder && books.some((book) => book.project === project))) return false;
    const outcome = folders.get(folder);
    if (!outcome) return true;
    return outcome.books.length > 0 && !outcome.books.some((book) => book.project === project);
  };
  for (const { project } of kept.filter(isOrphan)) await rm(path.join(output, project), { recursive: true });
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
