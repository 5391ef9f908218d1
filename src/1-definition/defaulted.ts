// Which paths of a definition the author left to the default.
import type { WrittenKeys } from "./shared-keys.ts";
import { nodeAt } from "./tree.ts";
import type { MapNode } from "./tree.ts";

/** Keys that are put together later, with defaults of their own, or that have none. */
const settledLater: readonly string[] = ["materials", "measured", "adhesives", "steps", "add steps", "variants"];

/** Paths such as `book/stub depth` that hold a value although nothing is written there. A value that is null is left to the model, not defaulted. */
export function nothingWrittenFor(root: MapNode, read: WrittenKeys): readonly string[] {
  const paths: string[] = [];
  const visit = (value: unknown, path: readonly string[]): void => {
    if (value === null || value === undefined) return;
    if (isMapping(value)) {
      for (const [key, inner] of Object.entries(value)) visit(inner, [...path, key]);
      return;
    }
    if (!nodeAt(root, path)) paths.push(path.join("/"));
  };
  for (const [key, value] of Object.entries(read)) if (!settledLater.includes(key)) visit(value, [key]);
  // `units: mm` is written in short: its governing unit is not a default.
  return paths.filter((path) => path !== "units/governing");
}

/** Lengths are objects too, but they are values: numerator and denominator are no keys of an author's. */
function isMapping(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value) && !("n" in value && typeof value.n === "bigint");
}
