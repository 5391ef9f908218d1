// The JSON Schema of a definition for editors, built from the very schemas that read it: no key or limit is written down twice.
import { bindingIds, bindings } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import { definitionOf } from "./binding-definition.ts";
import { publishedSchema } from "./field-json.ts";
import type { JsonSchema } from "./field-json.ts";
import { hoistRepeated } from "./hoist-repeated.ts";
import { definitionSchema, variantKeys } from "./shared-keys.ts";

/** Keys whose form depends on the binding. */
const bindingKeys = ["book", "materials", "measured", "adhesives", "steps", "add steps", "variants"] as const;

/**
 * Builds the JSON Schema (draft 7, which editors read best): the keys all definitions share, and for each binding what follows
 * from naming it. It knows less than the reading does (no pictures, no exact lengths), and refuses nothing that the reading accepts as documented.
 */
export function buildJsonSchema(): JsonSchema {
  const all = bindingIds.map((id) => ({ id, schema: schemaOfBinding(id) }));
  const shared = all[0]!.schema;
  const properties = propertiesOf(shared);
  return hoistRepeated({
    $schema: "http://json-schema.org/draft-07/schema#",
    title: "Benchleaf definition",
    description: "One hand-bound book, described for its maker. Made from the sources by npm run schema.",
    type: "object",
    properties: Object.fromEntries(Object.entries(properties).map(([key, schema]) => [key, isBindingKey(key) ? { description: schema["description"] } : schema])),
    required: shared["required"],
    additionalProperties: false,
    allOf: all.map(({ id, schema }) => ({
      if: { properties: { binding: { enum: [...new Set([bindings[id].name, id])] } }, required: ["binding"] },
      then: { properties: Object.fromEntries(bindingKeys.map((key) => [key, propertiesOf(schema)[key]])) },
    })),
  });
}

/** The text of the published file. */
export function printJsonSchema(schema: JsonSchema): string {
  return `${JSON.stringify(schema, null, 1)}\n`;
}

function schemaOfBinding(id: BindingId): JsonSchema {
  const binding = definitionOf(id);
  const schema = publishedSchema(definitionSchema(binding, { governing: "mm", bareUnitOf: () => "mm", files: new Set() }));
  const properties = propertiesOf(schema);
  const book = { ...properties["book"], ...exclusive(binding.exclusiveKeys) };
  const variants = properties["variants"] as JsonSchema & { items: JsonSchema };
  const changes = Object.fromEntries(variantKeys.map((key) => [key, loosen(properties[key]!)]));
  const items = { ...variants.items, properties: { ...propertiesOf(variants.items), ...changes } };
  return { ...schema, properties: { ...properties, book, variants: { ...variants, items } } };
}

/** Of each group of keys only one may be written. */
function exclusive(groups: readonly (readonly string[])[]): JsonSchema {
  return groups.length === 0 ? {} : { allOf: groups.map((keys) => ({ not: { required: keys } })) };
}

/**
 * What a variant may write: nothing is required, and a key with nothing behind it takes the definition's own away.
 * Lists replace the definition's own as a whole, so their entries stay as strict as they are.
 */
function loosen(schema: JsonSchema): JsonSchema {
  const { required: _, ...rest } = schema;
  const properties = rest["properties"] as Record<string, JsonSchema> | undefined;
  if (!properties) return { anyOf: [Array.isArray(rest["anyOf"]) ? { ...rest, anyOf: (rest["anyOf"] as JsonSchema[]).map(loosenMapping) } : rest, { type: "null" }] };
  return { anyOf: [loosenMapping(schema), { type: "null" }] };
}

function loosenMapping(schema: JsonSchema): JsonSchema {
  const properties = schema["properties"] as Record<string, JsonSchema> | undefined;
  if (!properties) return schema;
  const { required: _, ...rest } = schema;
  return { ...rest, properties: Object.fromEntries(Object.entries(properties).map(([key, inner]) => [key, loosen(inner)])) };
}

function propertiesOf(schema: JsonSchema): Record<string, JsonSchema> {
  return schema["properties"] as Record<string, JsonSchema>;
}

function isBindingKey(key: string): boolean {
  return (bindingKeys as readonly string[]).includes(key);
}
