// Writes the JSON Schemas of definitions and of plan.json into schema/, and the page of all keys; tests fail when a committed file is not what this writes.
import { mkdirSync, writeFileSync } from "node:fs";
import { buildJsonSchema, printJsonSchema } from "../src/1-definition/json-schema.ts";
import { printKeyPage } from "../src/1-definition/key-page.ts";
import { planSchemaText } from "../src/5-pages/plan-schema.ts";

const folder = new URL("../schema/", import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL("project.schema.json", folder), printJsonSchema(buildJsonSchema()));
writeFileSync(new URL("plan.schema.json", folder), planSchemaText());
writeFileSync(new URL("../docs/keys.md", import.meta.url), printKeyPage());
