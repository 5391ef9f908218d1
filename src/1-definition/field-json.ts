// What the published JSON Schema says about each field, kept beside the field's own check.
import { z } from "zod";

/** A piece of JSON Schema. */
export type JsonSchema = { [key: string]: unknown };

/** Turns what zod derives for a field into what is published. */
export type JsonShape = (derived: JsonSchema) => JsonSchema;

/** Fields read texts with a meaning of their own (`9 3/4 in`), which zod cannot express; this says it for it. */
export const fieldJson = z.registry<{ readonly shape: JsonShape }>();

/** Registers the published form of a field and hands the field back. */
export function published<T extends z.ZodType>(field: T, shape: JsonShape): T {
  fieldJson.add(field, { shape });
  return field;
}

/** JSON Schema of a zod schema as an author writes it (not as it is after reading). */
export function publishedSchema(schema: z.ZodType): JsonSchema {
  return z.toJSONSchema(schema, {
    io: "input",
    unrepresentable: "any",
    target: "draft-7",
    override: ({ zodSchema, jsonSchema }) => {
      const registered = fieldJson.get(zodSchema as unknown as z.ZodType);
      if (!registered) return;
      const replaced = registered.shape({ ...jsonSchema });
      for (const key of Object.keys(jsonSchema)) delete (jsonSchema as JsonSchema)[key];
      Object.assign(jsonSchema, replaced);
    },
  }) as JsonSchema;
}
