// The parts lifted off each other: every demo names each part of its cut list, and the lowest piece has the size that is cut.
import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import { drawingInput } from "../../src/4-figures/index.ts";
import type { BindingDrawings } from "../../src/4-figures/binding.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { flatItems } from "../../src/4-figures/scene.ts";
import type { PathItem } from "../../src/4-figures/scene.ts";
import { bindingIds } from "../../src/catalogue/bindings.ts";
import type { BindingId } from "../../src/catalogue/bindings.ts";
import { distance } from "../../src/geometry/point.ts";
import { pathPoints } from "../../src/geometry/path.ts";
import { toMillimetres } from "../../src/units/length.ts";

const content = new URL("../../content/", import.meta.url);
const books = readdirSync(content).flatMap((project) => {
  const folder = new URL(`${project}/`, content);
  const files = new Set((readdirSync(folder, { recursive: true }) as string[]).map((file) => file.replaceAll("\\", "/")));
  const { definitions } = readDefinition({ project, file: `content/${project}/project.yaml`, bytes: readFileSync(new URL("project.yaml", folder)), files, prose: new Map() });
  return definitions.map((definition) => [definition.project, { ...definition, class: null }] as const);
});

it("is drawn for every binding", () => {
  expect(new Set(books.map(([, { binding }]) => binding))).toEqual(new Set(bindingIds));
});

describe.each(books)("%s", async (_, definition) => {
  const { drawings } = (await import(`../../src/4-figures/${definition.binding}.ts`)) as { drawings: BindingDrawings<BindingId> };
  const { model } = buildModel(definition);
  const input = drawingInput({ definition, model, plan: makePlan(definition, model).plan });
  const figure = drawings.figures["lifted-parts"]!(input)!;

  it("names every part, drawn or not", () => {
    const words = `${figure.alternative} ${figure.caption}`;
    const letters = input.plan.cutList.map(({ letter, part }) => `${letter}\u00a0${part.name}`);
    const joined = / (.) \S+ strip to (.) /.exec(words.replaceAll("\u00a0", " "));
    const isBetween = (name: string): boolean => joined !== null && name[0]! > joined[1]! && name[0]! < joined[2]!;
    expect(letters.filter((name) => !words.includes(name) && !isBetween(name))).toEqual([]);
    expect(findCollisions(figure.items)).toEqual([]);
  });

  it("draws the lowest part as large as it is cut", () => {
    const [, paper, book] = /(\d+(?:\.\d+)?):(\d+(?:\.\d+)?)/.exec(figure.caption)!;
    const lowest = /upwards: (\S+)\u00a0/.exec(figure.alternative)![1];
    const { part } = input.plan.cutList.find(({ letter }) => letter === lowest)!;
    // The faces at the side have upright edges.
    const isLevel = ({ path }: PathItem): boolean => pathPoints(path)[0]!.every((at, index, all) => index === 0 || Math.abs(at.x - all[index - 1]!.x) > 1e-6);
    const top = flatItems(figure.items).find((item): item is PathItem => item.kind === "path" && isLevel(item))!;
    const [a, b, c] = pathPoints(top.path)[0]!;
    // Edges along the axes of an isometric view have their true length.
    const sizes = [distance(a!, b!), distance(b!, c!)].map((edge) => (edge * Number(book)) / Number(paper));
    expect(sizes[0]).toBeCloseTo(toMillimetres(part.height), 6);
    expect(sizes[1]).toBeCloseTo(toMillimetres(part.width), 6);
  });
});
