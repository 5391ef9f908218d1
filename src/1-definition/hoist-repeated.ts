// Moves what a JSON Schema says more than once into its `definitions`, so that the published file stays small enough to read.
import type { JsonSchema } from "./field-json.ts";

/** Shorter pieces are easier to read where they stand. */
const shortestHoisted = 160;

/** Replaces every repeated piece that is long enough by a reference; a definition is named by its title, or after the key it stands under first. */
export function hoistRepeated(schema: JsonSchema): JsonSchema {
  const seen = new Map<string, { times: number; readonly name: string }>();
  count(schema, "schema", seen);
  const names = new Map<string, string>();
  for (const [text, { times, name }] of seen) {
    if (times < 2 || text.length < shortestHoisted) continue;
    const taken = new Set(names.values());
    let free = name;
    for (let number = 2; taken.has(free); number += 1) free = `${name}-${number}`;
    names.set(text, free);
  }
  const definitions: Record<string, unknown> = {};
  const result = replace(schema, names, definitions) as JsonSchema;
  return { ...result, definitions: Object.fromEntries(Object.entries(definitions).sort(([a], [b]) => (a < b ? -1 : 1))) };
}

/** Only what stands as a schema of its own may be replaced: the value of a key of `properties` and the like, not a list of examples. */
function count(node: unknown, name: string, seen: Map<string, { times: number; readonly name: string }>): void {
  if (Array.isArray(node)) return node.forEach((item) => count(item, name, seen));
  if (typeof node !== "object" || node === null) return;
  if (isSchema(node)) {
    const text = JSON.stringify(node);
    const known = seen.get(text);
    if (known) {
      known.times += 1;
      // What is inside a repeated piece is counted once, with the piece.
      return;
    }
    seen.set(text, { times: 1, name: ("title" in node && typeof node.title === "string" ? node.title : name).replaceAll(" ", "-") });
  }
  for (const [key, inner] of Object.entries(node)) count(inner, isKeyword(key) ? name : key, seen);
}

function replace(node: unknown, names: ReadonlyMap<string, string>, definitions: Record<string, unknown>): unknown {
  if (Array.isArray(node)) return node.map((item) => replace(item, names, definitions));
  if (typeof node !== "object" || node === null) return node;
  const name = isSchema(node) ? names.get(JSON.stringify(node)) : undefined;
  const within = (): JsonSchema => Object.fromEntries(Object.entries(node).map(([key, inner]) => [key, replace(inner, names, definitions)]));
  if (name === undefined) return within();
  definitions[name] ??= within();
  return { $ref: `#/definitions/${name}` };
}

function isSchema(node: object): boolean {
  return "description" in node && typeof node.description === "string";
}

function isKeyword(key: string): boolean {
  return ["properties", "patternProperties", "items", "anyOf", "allOf", "not", "if", "then"].includes(key) || key.startsWith("^");
}
