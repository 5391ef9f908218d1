// A folder with projects and an output of its own, and the command line run on it in this process.
import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { register } from "tsx/esm/api";
import { vi } from "vitest";
import { run } from "../../src/cli.ts";

// Eleventy loads its configuration by itself, past the test runner: the sources must be readable for plain Node too.
register();

const root = path.resolve(import.meta.dirname, "../..");

/** A demo project that the tests copy and spoil. */
export const demo = "harbour-album";

export interface Workshop {
  readonly content: string;
  readonly output: string;
  /** Changes the text of a project's definition. */
  edit(project: string, change: (text: string) => string): Promise<void>;
  /** Copies a demo project under another name. */
  add(project: string, from?: string): Promise<void>;
  /** Runs the command line on this content and output. */
  run(...given: string[]): Promise<{ readonly status: number; readonly said: string; readonly wrote: string }>;
  read(file: string): Promise<string>;
  /** All files of the output, relative, with forward slashes. */
  files(): Promise<readonly string[]>;
}

/** A new workshop below the system's temporary folder, with the projects named. */
export async function openWorkshop(...projects: string[]): Promise<Workshop> {
  const folder = await mkdtemp(path.join(os.tmpdir(), "benchleaf-build-"));
  const [content, output] = [path.join(folder, "content"), path.join(folder, "dist")];
  await mkdir(content);
  const workshop: Workshop = {
    content,
    output,
    add: (project, from = demo) => cp(path.join(root, "content", from), path.join(content, project), { recursive: true }),
    edit: async (project, change) => {
      const file = path.join(content, project, "project.yaml");
      await writeFile(file, change(await readFile(file, "utf8")));
    },
    run: async (...given) => {
      const said: string[] = [];
      const wrote: string[] = [];
      const error = vi.spyOn(process.stderr, "write").mockImplementation((text) => said.push(String(text)) > 0);
      const out = vi.spyOn(process.stdout, "write").mockImplementation((text) => wrote.push(String(text)) > 0);
      try {
        const status = await run([...given, "--content", content, "--output", output]);
        return { status, said: said.join(""), wrote: wrote.join("") };
      } finally {
        error.mockRestore();
        out.mockRestore();
      }
    },
    read: (file) => readFile(path.join(output, file), "utf8"),
    files: async () => {
      const found = await readdir(output, { recursive: true, withFileTypes: true });
      return found.filter((entry) => entry.isFile()).map((entry) => path.relative(output, path.join(entry.parentPath, entry.name)).split(path.sep).join("/")).sort();
    },
  };
  for (const project of projects) await workshop.add(project);
  return workshop;
}
