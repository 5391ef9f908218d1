// House rule: README.md explains every key of a definition, with the limits and defaults that the published schema gives.
import { expect, test } from "vitest";
import { usualMaterials } from "../../src/catalogue/materials.ts";
import { toMillimetres } from "../../src/units/length.ts";
import { readProjectFile } from "./project-files.ts";

interface Schema {
  readonly $ref?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly allOf?: readonly { readonly then?: Schema }[];
  readonly definitions?: Readonly<Record<string, Schema>>;
}

const readme = readProjectFile("README.md");
const published = JSON.parse(readProjectFile("schema/project.schema.json")) as Schema;

function resolved(schema: Schema): Schema {
  if (schema.$ref === undefined) return schema;
  const { $ref, ...rest } = schema;
  return { ...resolved(published.definitions![$ref.split("/").at(-1)!]!), ...rest };
}

/** The mapping among the forms in which a key may be written. */
function keysOf(schema: Schema): Readonly<Record<string, Schema>> {
  const whole = resolved(schema);
  return whole.properties ?? (whole.anyOf ?? []).map(resolved).find((form) => form.properties)?.properties ?? {};
}

/** The part of the schema that belongs to a path; what depends on the binding stands in the first binding's branch. */
function schemaAt(path: readonly string[]): Schema {
  const ofBinding = published.allOf![0]!.then!;
  const [first, ...rest] = path;
  const start = first === undefined ? published : (ofBinding.properties?.[first] ?? published.properties![first]!);
  return rest.reduce((schema, key) => keysOf(schema)[key]!, start);
}

interface Row {
  readonly key: string;
  readonly limits: string;
  readonly leftOut: string;
}

/** The rows of the table under `<!-- keys of name -->`; keys within a key are written `boards: height`. */
function rowsOf(name: string): readonly Row[] {
  const [, table] = new RegExp(`^<!-- keys of ${name} -->\\n((?:\\|.*\\n)+)`, "m").exec(readme) ?? [];
  if (table === undefined) throw new Error(`README.md has no table of the keys of ${name}`);
  const cells = table.trimEnd().split("\n").slice(2).map((line) => line.split("|").map((cell) => cell.trim()));
  return cells.map((row) => ({ key: row[1]!.replaceAll("`", ""), limits: row[3]!, leftOut: row[4]! }));
}

/** Keys of a mapping, and of the mappings in it, as the table writes them. */
function writtenKeys(path: readonly string[], before: readonly string[] = []): readonly string[] {
  return Object.keys(keysOf(schemaAt(path))).flatMap((key) => {
    // The shared tools of a class are those of the catalogue; the commented examples list them.
    const within = path.join() === "class" && key === "tools" ? [] : writtenKeys([...path, key], [...before, key]);
    return within.length > 0 ? within : [[...before, key].join(": ")];
  });
}

/** Limits as the table writes them; of a duration, which is published in minutes, none. */
function limitsIn({ description = "", type, minimum, maximum }: Schema): string {
  const lengths = /Between ([\d.]+) mm and ([\d.]+) mm\./.exec(description);
  if (lengths) return `${lengths[1]} to ${lengths[2]} mm`;
  return typeof type === "string" && minimum !== undefined && maximum !== undefined ? `${minimum} to ${maximum}` : "";
}

const tables: readonly (readonly [name: string, path: readonly string[]])[] = [["book", ["book"]], ["bench", ["bench"]], ["tools", ["tools"]], ["measured", ["measured"]], ["adhesives", ["adhesives"]], ["units", ["units"]], ["class", ["class"]], ["print", ["print"]], ["documents", ["documents"]]];

for (const [name, path] of tables) {
  const ownKeys = (): readonly string[] => (name === "adhesives" ? Object.keys(keysOf(schemaAt(path))) : writtenKeys(path));

  test(`README.md lists the keys of ${name}, all of them and no other`, () => {
    expect(rowsOf(name).map((row) => row.key)).toEqual(ownKeys());
  });

  test(`README.md gives the true limits and defaults of ${name}`, () => {
    const wrong = rowsOf(name).flatMap(({ key, limits, leftOut }) => {
      const schema = resolved(schemaAt([...path, ...key.split(": ")]));
      const fallback = /Default: (.+?)\.$/.exec(schema.description ?? resolved(schema.anyOf?.[0] ?? {}).description ?? "")?.[1];
      const trueLimits = limitsIn(schema);
      return [
        ...(trueLimits !== "" && limits !== trueLimits ? [`${key}: the limits are ${trueLimits}, README.md says ${limits}`] : []),
        ...(fallback !== undefined && leftOut !== fallback ? [`${key}: the default is ${fallback}, README.md says ${leftOut}`] : []),
      ];
    });
    expect(wrong).toEqual([]);
  });
}

test("README.md lists the top keys of a definition, all of them and no other", () => {
  expect(rowsOf("a definition").map((row) => row.key)).toEqual(Object.keys(published.properties!));
});

test("README.md lists the materials of a stub album with their usual names and thicknesses, and the keys of a material", () => {
  const roles = Object.keys(keysOf(schemaAt(["materials"])));
  expect(rowsOf("materials").map((row) => row.key)).toEqual(roles);
  const usual = Object.entries(usualMaterials).filter(([key]) => roles.includes(key)).map(([key, { name, thickness }]) => ({ key, leftOut: thickness ? `${name}, ${toMillimetres(thickness)} mm` : name }));
  expect(rowsOf("materials").map(({ key, leftOut }) => ({ key, leftOut }))).toEqual(usual);
  expect(rowsOf("one material").map((row) => row.key)).toEqual(Object.keys(keysOf(schemaAt(["materials", "card"]))));
});

test("README.md lists the keys of a change to a step and of a step of one's own", () => {
  expect(rowsOf("a change to a step").map((row) => row.key)).toEqual(writtenKeys(["steps", "fold card"]));
  const own = Object.keys(keysOf(resolved(schemaAt(["add steps"])).items!));
  expect(rowsOf("a step of your own").map((row) => row.key)).toEqual(own);
});
