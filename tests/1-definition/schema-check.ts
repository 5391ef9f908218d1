// Checks a value against the part of JSON Schema (draft 7) that the published schema uses; unknown keywords throw, so none is passed over.

type Schema = { readonly [key: string]: unknown };

const annotations = ["$schema", "title", "description", "examples", "definitions"];

/** Why a value does not fit, as paths with reasons; empty when it fits. */
export function faultsBySchema(schema: Schema, value: unknown, root: Schema = schema, path = ""): readonly string[] {
  const inside = (inner: unknown, item: unknown, at = path): readonly string[] => faultsBySchema(inner as Schema, item, root, at);
  const fits = (inner: unknown): boolean => inside(inner, value).length === 0;
  const fault = (is: boolean, reason: string): readonly string[] => (is ? [] : [`${path || "/"}: ${reason}`]);
  const object = typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Record<string, unknown>) : null;
  const faults: string[] = [];
  for (const [keyword, given] of Object.entries(schema)) {
    if (annotations.includes(keyword)) continue;
    switch (keyword) {
      case "$ref": faults.push(...inside((root["definitions"] as Schema)[(given as string).split("/").at(-1)!], value)); break;
      case "type": faults.push(...fault([given].flat().some((type) => isOfType(value, type as string)), `type is not ${[given].flat().join(" or ")}`)); break;
      case "enum": faults.push(...fault((given as unknown[]).includes(value), "not one of those to choose from")); break;
      case "minimum": faults.push(...fault(typeof value !== "number" || value >= (given as number), `below ${given as number}`)); break;
      case "maximum": faults.push(...fault(typeof value !== "number" || value <= (given as number), `above ${given as number}`)); break;
      case "minLength": faults.push(...fault(typeof value !== "string" || [...value].length >= (given as number), "too short")); break;
      case "maxLength": faults.push(...fault(typeof value !== "string" || [...value].length <= (given as number), "too long")); break;
      case "pattern": faults.push(...fault(typeof value !== "string" || new RegExp(given as string, "u").test(value), "does not match the pattern")); break;
      case "minItems": faults.push(...fault(!Array.isArray(value) || value.length >= (given as number), "too few entries")); break;
      case "maxItems": faults.push(...fault(!Array.isArray(value) || value.length <= (given as number), "too many entries")); break;
      case "items": if (Array.isArray(value)) faults.push(...value.flatMap((item, index) => inside(given, item, `${path}/${index}`))); break;
      case "required": for (const key of given as string[]) faults.push(...fault(!object || Object.hasOwn(object, key), `${key} is missing`)); break;
      case "properties": for (const [key, inner] of Object.entries(given as Schema)) if (object && Object.hasOwn(object, key)) faults.push(...inside(inner, object[key], `${path}/${key}`)); break;
      case "patternProperties": for (const [pattern, inner] of Object.entries(given as Schema)) for (const key of Object.keys(object ?? {})) if (new RegExp(pattern, "u").test(key)) faults.push(...inside(inner, object![key], `${path}/${key}`)); break;
      case "additionalProperties": faults.push(...Object.keys(object ?? {}).flatMap((key) => fault(given !== false || isNamed(schema, key), `${key} is not known`))); break;
      case "anyOf": faults.push(...fault((given as unknown[]).some(fits), "fits none of the forms")); break;
      case "allOf": faults.push(...(given as unknown[]).flatMap((inner) => inside(inner, value))); break;
      case "not": faults.push(...fault(!fits(given), "has what must not be together")); break;
      case "if": if (fits(given)) faults.push(...inside(schema["then"], value)); break;
      case "then": break;
      default: throw new Error(`the schema uses a keyword that this check does not know: ${keyword}`);
    }
  }
  return faults;
}

function isOfType(value: unknown, type: string): boolean {
  switch (type) {
    case "null": return value === null;
    case "array": return Array.isArray(value);
    case "object": return typeof value === "object" && value !== null && !Array.isArray(value);
    case "integer": return Number.isInteger(value);
    default: return typeof value === type;
  }
}

function isNamed(schema: Schema, key: string): boolean {
  return Object.hasOwn((schema["properties"] ?? {}) as object, key) || Object.keys((schema["patternProperties"] ?? {}) as object).some((pattern) => new RegExp(pattern, "u").test(key));
}
