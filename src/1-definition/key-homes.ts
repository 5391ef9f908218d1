// Under which keys a key belongs: for hints about keys that stand at the wrong level.
import type { BindingDefinition } from "./binding-definition.ts";
import type { JsonSchema } from "./field-json.ts";
import { publishedSchema } from "./field-json.ts";
import { definitionSchema } from "./shared-keys.ts";

/** Every key below the top that belongs under one path only, with that path; keys such as `name` that occur in many places are left out. */
export function keyHomes(binding: BindingDefinition | null): ReadonlyMap<string, readonly string[]> {
  const homes = new Map<string, readonly string[] | null>();
  const visit = (schema: JsonSchema, path: readonly string[]): void => {
    for (const [key, inner] of Object.entries((schema["properties"] ?? {}) as Record<string, JsonSchema>)) {
      if (path.length > 0) homes.set(key, homes.has(key) ? null : path);
      visit(inner, [...path, key]);
    }
    for (const inner of (schema["anyOf"] ?? []) as JsonSchema[]) visit(inner, path);
  };
  visit(publishedSchema(definitionSchema(binding, { governing: "mm", bareUnitOf: () => "mm", files: new Set() })), []);
  return new Map([...homes].flatMap(([key, path]) => (path ? [[key, path]] : [])));
}
