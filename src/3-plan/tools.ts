// The tools of a book: each tool that a step names, once, in order of first use.
import { tools } from "../catalogue/tools.ts";
import type { ToolId } from "../catalogue/tools.ts";
import type { Step, Tool } from "./types.ts";

/** The tools of all steps, each once. */
export function gatherTools(steps: readonly Step[]): readonly Tool[] {
  const ids = [...new Set(steps.flatMap((step) => step.tools))];
  return ids.map((id) => ({ id, ...tools[id as ToolId] }));
}
