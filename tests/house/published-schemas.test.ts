// House rule: the schemas in schema/ and the page of all keys are the ones that the sources make; npm run schema writes them anew.
import { expect, test } from "vitest";
import { buildJsonSchema, printJsonSchema } from "../../src/1-definition/json-schema.ts";
import { printKeyPage } from "../../src/1-definition/key-page.ts";
import { planSchemaName, planSchemaText } from "../../src/5-pages/plan-schema.ts";
import { readProjectFile } from "./project-files.ts";

test("schema/project.schema.json is what the fields of a definition publish", () => {
  expect(readProjectFile("schema/project.schema.json")).toBe(printJsonSchema(buildJsonSchema()));
});

test("schema/plan.schema.json is the schema of plan.json, and DEVELOPERS.md gives its version", () => {
  expect(readProjectFile("schema/plan.schema.json")).toBe(planSchemaText());
  expect(readProjectFile("DEVELOPERS.md")).toContain(`"schema": "${planSchemaName}"`);
});

test("docs/keys.md lists the keys of all bindings as their fields publish them", () => {
  const page = printKeyPage();
  expect(readProjectFile("docs/keys.md")).toBe(page);
  expect(page).toContain("| `sheets` | Number of sheets, folded once and laid into each other; each makes four pages. | whole number, 1 to 20 | must be written |");
  expect(page).not.toContain("undefined");
});
