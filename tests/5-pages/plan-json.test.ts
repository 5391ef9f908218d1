// plan.json: the published shape, exact lengths, and the demo projects against the published schema.
import { readFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { planJson } from "../../src/5-pages/plan-json.ts";
import { planSchema } from "../../src/5-pages/plan-schema.ts";
import { readLength } from "../../src/units/read-length.ts";
import { sameLength, toMillimetres } from "../../src/units/length.ts";
import { fixtureBooklet } from "./fixture.ts";

const root = path.resolve(import.meta.dirname, "../..");
const demos = await readContent(path.join(root, "content"));

test("there are demo projects", () => {
  expect(demos.length).toBeGreaterThan(1);
});

for (const demo of demos) {
  test(`${demo.name}: what would be written satisfies the schema, after a trip through JSON too`, async () => {
    const { booklets, problems, fault } = await computeProject(demo);
    expect([problems.filter((problem) => problem.severity === "error"), fault]).toEqual([[], null]);
    expect(booklets.length).toBeGreaterThan(0);
    for (const booklet of booklets) {
      const plan = planJson(booklet);
      expect(planSchema.parse(JSON.parse(JSON.stringify(plan)))).toEqual(plan);
    }
  });
}

test("the contract's fields are there under their names", () => {
  const plan = planJson(fixtureBooklet());
  expect(plan.schema).toBe("benchleaf/plan@1");
  expect(Object.keys(plan)).toEqual(expect.arrayContaining(["binding", "finished", "parts", "scores", "holes", "materials", "cutting", "timetable", "steps", "findings"]));
  expect(Object.keys(plan.materials[0]!)).toEqual(expect.arrayContaining(["per_book", "per_class", "packs", "cost"]));
  expect(Object.keys(plan.parts[0]!)).toEqual(expect.arrayContaining(["id", "name", "material", "count", "height", "width", "thickness", "grain", "features"]));
  expect(Object.keys(plan.scores[0]!)).toEqual(expect.arrayContaining(["part", "at", "from", "fold"]));
  expect(Object.keys(plan.holes[0]!)).toEqual(expect.arrayContaining(["part", "id", "along", "across", "diameter"]));
  expect(Object.keys(plan.steps[0]!)).toEqual(expect.arrayContaining(["n", "title", "action", "sizes", "tools", "minutes", "wait", "cautions", "figure", "check"]));
});

test("the exact text of a length reads back as the length that the model holds, and millimetres agree", () => {
  const booklet = fixtureBooklet();
  const plan = planJson(booklet);
  booklet.model.parts.forEach((part, index) => {
    for (const side of ["height", "width", "thickness"] as const) {
      const written = plan.parts[index]![side];
      const read = readLength(written.exact, null);
      expect(read.ok && sameLength(read.length, part[side]), `${part.id} ${side}: ${written.exact}`).toBe(true);
      expect(written.mm).toBeCloseTo(toMillimetres(part[side]), 6);
    }
  });
});

test("the schema refuses a field that it does not know and a length that is a bare number", () => {
  const plan = planJson(fixtureBooklet());
  expect(planSchema.safeParse({ ...plan, drying: [] }).success).toBe(false);
  expect(planSchema.safeParse({ ...plan, finished: { ...plan.finished, height: 300 } }).success).toBe(false);
});

test("the published schema names the format and asks for every field", async () => {
  const schema = JSON.parse(await readFile(path.join(root, "schema/plan.schema.json"), "utf8")) as { required: string[]; properties: Record<string, unknown> };
  expect([...schema.required].sort()).toEqual(Object.keys(planJson(fixtureBooklet())).sort());
  expect(schema.properties["schema"]).toMatchObject({ const: "benchleaf/plan@1" });
});
