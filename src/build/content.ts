// Reads the projects under content/ from disk: the only place where a definition's files are opened.
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import type { DefinitionSource } from "../1-definition/types.ts";
import type { Problem } from "../problems/problem.ts";

/** One folder under `content/`. */
export interface ProjectFolder {
  readonly name: string;
  /** Absolute path. */
  readonly folder: string;
  /** Null when the folder has no definition. */
  readonly source: DefinitionSource | null;
  readonly problems: readonly Problem[];
}

const definitionFile = "project.yaml";

/** The folders with a project, by name. Folders that begin with a dot or an underscore are the author's own. */
export async function readContent(content: string): Promise<readonly ProjectFolder[]> {
  const entries = await readdir(content, { withFileTypes: true }).catch(() => []);
  const names = entries.filter((entry) => entry.isDirectory() && !/^[._]/.test(entry.name)).map((entry) => entry.name);
  return Promise.all(names.sort().map((name) => readProject(content, name)));
}

async function readProject(content: string, name: string): Promise<ProjectFolder> {
  const folder = path.resolve(content, name);
  const shown = `${path.basename(path.resolve(content))}/${name}`;
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = found.filter((entry) => entry.isFile()).map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"));
  const file = `${shown}/${definitionFile}`;
  if (!files.includes(definitionFile)) {
    const near = files.find((candidate) => /^[^/]*\.ya?ml$/i.test(candidate));
    const hint = near ? `rename ${near} to ${definitionFile}` : `write a definition called ${definitionFile}, or take the folder out of ${path.basename(path.resolve(content))}/`;
    return { name, folder, source: null, problems: [{ code: "file-missing", severity: "error", message: `there is no ${definitionFile}`, hint, place: { file, span: null } }] };
  }
  const prose = files.filter((candidate) => /^prose\/[^/]+\.md$/.test(candidate)).sort();
  const proseBytes = await Promise.all(prose.map(async (candidate) => [candidate, await readFile(path.join(folder, candidate))] as const));
  const source = { project: name, file, bytes: await readFile(path.join(folder, definitionFile)), files: new Set(files), prose: new Map(proseBytes) };
  return { name, folder, source, problems: [] };
}
