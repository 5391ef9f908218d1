// Checks of keys against one another, made on the keys as written: they hold whatever else is wrong.
import type { Problem, Span } from "../problems/problem.ts";
import type { BindingDefinition } from "./binding-definition.ts";
import { nodeAt } from "./tree.ts";
import type { MapNode } from "./tree.ts";
import type { Version } from "./variants.ts";

/** Keys that exclude one another, and keys without the one they belong to. */
export function crossProblems(file: string, { root, variant }: Version, binding: BindingDefinition | null): readonly Problem[] {
  if (!binding) return [];
  return [...exclusiveProblems(file, root, binding, variant !== null), ...bulkProblems(file, root, binding)];
}

/** The later of two keys that exclude each other is the one to point at. */
function exclusiveProblems(file: string, root: MapNode, binding: BindingDefinition, isVariant: boolean): readonly Problem[] {
  const book = nodeAt(root, ["book"]);
  if (book?.kind !== "map") return [];
  const problems: Problem[] = [];
  for (const pair of binding.exclusiveKeys) {
    const written = pair.filter((key) => book.entries.has(key)).map((key) => ({ key, span: book.entries.get(key)!.keySpan }));
    const [first, second] = written.sort((a, b) => a.span.start - b.span.start);
    if (!first || !second) continue;
    problems.push(problem(file, "keys-exclude", second.span, `${second.key} and ${first.key} are both written, but each follows from the other`, isVariant ? `keep one of the two; "${first.key}:" with nothing behind it takes the definition's own away` : "keep one of the two"));
  }
  return problems;
}

function bulkProblems(file: string, root: MapNode, binding: BindingDefinition): readonly Problem[] {
  const problems: Problem[] = [];
  for (const role of Object.keys(binding.materials)) {
    const material = nodeAt(root, ["materials", role]);
    const bulk = material?.kind === "map" ? material.entries.get("bulk") : undefined;
    if (!bulk || material?.kind !== "map" || material.entries.has("grammage")) continue;
    problems.push(problem(file, "key-missing", bulk.keySpan, `${role} has a bulk, but no grammage that it could be applied to`, "write grammage as well, or give the thickness and take bulk out"));
  }
  return problems;
}

function problem(file: string, code: Problem["code"], span: Span, message: string, hint: string): Problem {
  return { code, severity: "error", message, hint, place: { file, span } };
}
