// The tools of a book: each tool that a step names, once, in order of first use.
import { tools } from "../catalogue/tools.ts";
import type { ToolId } from "../catalogue/tools.ts";
import type { Step, Tool } from "./types.ts";

/** The tools of all steps, each once; `here` holds what this book needs of one: how many, how large. */
export function gatherTools(steps: readonly Step[], here: Readonly<Partial<Record<ToolId, string>>> = {}): readonly Tool[] {
  const ids = [...new Set(steps.flatMap((step) => step.tools))] as readonly ToolId[];
  return ids.map((id) => ({ id, name: tools[id].name, note: [tools[id].note, here[id] ?? ""].filter((note) => note !== "").join("; ") }));
}
