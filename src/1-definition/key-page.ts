// The page of all keys, docs/keys.md: every key of every binding with its values and defaults, read off the schemas that read them.
import { bindingIds, bindings } from "../catalogue/bindings.ts";
import type { BindingId } from "../catalogue/bindings.ts";
import { toMillimetres } from "../units/length.ts";
import { definitionOf } from "./binding-definition.ts";
import { publishedSchema } from "./field-json.ts";
import type { JsonSchema } from "./field-json.ts";
import { definitionSchema } from "./shared-keys.ts";

/** Keys that have tables of their own for each binding, or for all of them together. */
const apart = new Set(["book", "materials", "measured", "adhesives", "steps", "add steps", "variants"]);

/** The text of docs/keys.md. */
export function printKeyPage(): string {
  const all = bindingIds.map((id) => ({ id, schema: schemaOf(id) }));
  const shared = all[0]!.schema;
  const materials = all.flatMap(({ schema }) => Object.values(propertiesOf(propertiesOf(schema)["materials"]!)));
  const oneMaterial = Object.assign({}, ...materials.map(propertiesOf)) as Readonly<Record<string, JsonSchema>>;
  const steps = Object.values(propertiesOf(propertiesOf(shared)["steps"]!));
  return [
    "# The keys of a definition",
    "",
    "Every key with the values that it takes and what stands for it when it is left out.",
    "The page is made from the sources by `npm run schema`; what the keys are for is told in [README.md](../README.md), and a commented example of each binding is in [examples/](../examples).",
    "A key within a key is written `cover: square`. Lengths are written with their unit; limits are given in millimetres.",
    "",
    `- [Keys of all bindings](#keys-of-all-bindings)`,
    ...all.map(({ id }) => `- [${capital(bindings[id].name)}](#${bindings[id].name.replaceAll(" ", "-")}): ${bindings[id].about}`),
    "",
    "## Keys of all bindings",
    "",
    ...table(rowsOf(shared, (key) => !apart.has(key))),
    "",
    "### One material",
    "",
    "Each material of a binding takes those of these keys that make sense for it; what has no sheets is sold by length or by the piece.",
    "",
    ...table(rowsOf({ properties: oneMaterial })),
    "",
    "### A change to a step",
    "",
    "Under `steps`, with the name of the step as the key.",
    "",
    ...table(rowsOf(steps[0]!)),
    "",
    "### A step of your own",
    "",
    "In the list `add steps`.",
    "",
    ...table(rowsOf(propertiesOf(shared)["add steps"]!["items"] as JsonSchema)),
    "",
    ...all.flatMap(({ id, schema }) => printBinding(id, schema)),
  ].join("\n").trimEnd() + "\n";
}

function schemaOf(id: BindingId): JsonSchema {
  return publishedSchema(definitionSchema(definitionOf(id), { governing: "mm", bareUnitOf: () => "mm", files: new Set() }));
}

function printBinding(id: BindingId, schema: JsonSchema): readonly string[] {
  const keys = propertiesOf(schema);
  const part = (key: string, title: string): readonly string[] => {
    const rows = rowsOf(keys[key]!);
    return rows.length === 0 ? [] : [`### ${title}`, "", ...table(rows), ""];
  };
  return [
    `## ${capital(bindings[id].name)}`, "", `${capital(bindings[id].about)}.`, "",
    ...part("book", `\`book\` of a ${bindings[id].name}`),
    `### \`materials\` of a ${bindings[id].name}`, "",
    "| material | what it is | left out |", "| --- | --- | --- |",
    ...Object.entries(definitionOf(id).materials).map(([role, { about, usual }]) => `| \`${role}\` | ${cell(about)} | ${usual.thickness ? `${usual.name}, ${toMillimetres(usual.thickness)} mm` : usual.name} |`), "",
    ...part("measured", `\`measured\` of a ${bindings[id].name}`),
    ...part("adhesives", `\`adhesives\` of a ${bindings[id].name}`),
    `### \`steps\` of a ${bindings[id].name}`, "",
    `${Object.keys(propertiesOf(keys["steps"]!)).map((name) => `\`${name}\``).join(", ")}.`, "",
  ];
}

interface Row {
  readonly key: string;
  readonly words: string;
  readonly value: string;
  readonly leftOut: string;
}

/** The keys of a mapping, and of the mappings in it, each with its path from here. */
function rowsOf(schema: JsonSchema, isWanted: (key: string) => boolean = () => true, before: readonly string[] = []): readonly Row[] {
  const needed = new Set(formsOf(schema).flatMap((form) => (form["required"] as readonly string[] | undefined) ?? []));
  return Object.entries(propertiesOf(schema)).filter(([key]) => isWanted(key)).flatMap(([key, each]) => {
    const path = [...before, key];
    const { words, limits, fallback } = aboutOf(each);
    const value = [...new Set(formsOf(each).map((form) => valueOf(form, limits)).filter((text) => text !== ""))].join(", or ");
    const inner = rowsOf(each, () => true, path);
    return [
      ...(value === "" && inner.length > 0 ? [] : [{ key: path.join(": "), words, value, leftOut: needed.has(key) ? "must be written" : fallback }]),
      ...inner,
    ];
  });
}

/** The forms in which a key may be written: by itself, in short or as a mapping. */
function formsOf(schema: JsonSchema): readonly JsonSchema[] {
  const forms = schema["anyOf"] as readonly JsonSchema[] | undefined;
  return forms ? forms.flatMap(formsOf) : [schema];
}

function propertiesOf(schema: JsonSchema): Readonly<Record<string, JsonSchema>> {
  return Object.assign({}, ...formsOf(schema).map((form) => form["properties"] ?? {})) as Readonly<Record<string, JsonSchema>>;
}

/** What a key is for, without the limits and the default that have columns of their own. */
function aboutOf(schema: JsonSchema): { readonly words: string; readonly limits: string; readonly fallback: string } {
  const full = String(schema["description"] ?? formsOf(schema).find((form) => form["description"])?.["description"] ?? "");
  const limits = /Between ([\d.]+(?: mm)?) and ([\d.]+(?: mm)?)\.(?= |$)/.exec(full);
  const fallback = / ?Default: (.+)\.$/.exec(full);
  const words = full.replace(limits?.[0] ?? "", "").replace(fallback?.[0] ?? "", "").replace(/ {2,}/g, " ").trim();
  return { words, limits: limits ? `${limits[1]!.replace(/ mm$/, "")} to ${limits[2]!}` : "", fallback: fallback?.[1] ?? "" };
}

function valueOf(form: JsonSchema, limits: string): string {
  const words = form["enum"] as readonly unknown[] | undefined;
  // Names of the steps; names with hyphens are accepted beside those with blanks.
  if (words && words.length > 20) return "a name of the binding’s steps";
  if (words) return words.includes(true) ? "yes or no" : words.map(String).filter((word) => !words.includes(word.replaceAll("-", " ")) || !word.includes("-")).map((word) => `\`${word}\``).join(", ");
  const types = [form["type"]].flat().filter((type) => type !== "null") as readonly string[];
  if (types.includes("object")) return "";
  if (types.includes("array")) return "a list of them";
  if (form["pattern"] !== undefined && limits !== "") return `length, ${limits}`;
  const example = (form["examples"] as readonly unknown[] | undefined)?.map((each) => `\`${String(each)}\``).join(" or ");
  if (types.length === 1 && types[0] !== "string" && form["maximum"] !== undefined) return `${types[0] === "integer" ? "whole number" : "number"}, ${String(form["minimum"])} to ${String(form["maximum"])}`;
  if (form["maxLength"] !== undefined) return `text of at most ${String(form["maxLength"])} letters`;
  return example ? `such as ${example}` : "";
}

function table(rows: readonly Row[]): readonly string[] {
  return ["| key | what it is | value | left out |", "| --- | --- | --- | --- |", ...rows.map(({ key, words, value, leftOut }) => `| \`${key}\` | ${cell(words)} | ${cell(value)} | ${cell(leftOut)} |`)];
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
