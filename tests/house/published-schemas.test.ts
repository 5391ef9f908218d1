// House rule: the schemas in schema/ are the ones that the sources make; npm run schema writes them anew.
import { expect, test } from "vitest";
import { buildJsonSchema, printJsonSchema } from "../../src/1-definition/json-schema.ts";
import { planSchemaName, planSchemaText } from "../../src/5-pages/plan-schema.ts";
import { readProjectFile } from "./project-files.ts";

test("schema/project.schema.json is what the fields of a definition publish", () => {
  expect(readProjectFile("schema/project.schema.json")).toBe(printJsonSchema(buildJsonSchema()));
});

test("schema/plan.schema.json is the schema of plan.json, and DEVELOPERS.md gives its version", () => {
  expect(readProjectFile("schema/plan.schema.json")).toBe(planSchemaText());
  expect(readProjectFile("DEVELOPERS.md")).toContain(`"schema": "${planSchemaName}"`);
});
