// House rule: a phase imports only leaves and phases with a lower number; the leaves know next to nothing of each other.
import { expect, test } from "vitest";
import { importsOf, parseSource, sourceFiles } from "./source-file.ts";
import type { SourceFile } from "./source-file.ts";

const leaves = ["units", "geometry", "problems", "catalogue"];
const phases = ["1-definition", "2-model", "3-plan", "4-figures", "5-pages", "6-print"];

/** Rooms that each room may import besides itself. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ["units"],
  problems: ["units"],
  catalogue: ["units"],
  ...Object.fromEntries(phases.map((phase, index) => [phase, [...leaves, ...phases.slice(0, index)]])),
};

/** The folder below src that a file is in; "" for what stands beside the rooms and wires them (build, preview, command line). */
function roomOf(file: string): string {
  const room = file.split("/")[1] ?? "";
  return Object.hasOwn(allowed, room) ? room : "";
}

function breachesIn(file: SourceFile): readonly string[] {
  const room = roomOf(file.path);
  return importsOf(file).flatMap(({ target, from, at }) => {
    if (target === null) return [];
    if (!target.startsWith("src/")) return [`${at}: ${from} lies outside src`];
    const other = roomOf(target);
    if (room === "" || other === room || allowed[room]!.includes(other)) return [];
    return [`${at}: ${room} may not import ${other === "" ? target : other}`];
  });
}

test("no file under src imports a higher phase, a forbidden leaf or a test", () => {
  expect(sourceFiles("src/").flatMap(breachesIn)).toEqual([]);
});

test("every folder under src is a known room, or the one of the build", () => {
  const folders = new Set(sourceFiles("src/").map((file) => file.path.split("/")).filter((parts) => parts.length > 2).map((parts) => parts[1]!));
  expect([...folders].filter((folder) => !Object.hasOwn(allowed, folder) && folder !== "build")).toEqual([]);
});

test("the rule finds a higher phase, a leaf that knows a phase, a test and an import() upwards", () => {
  const sample = (path: string, text: string): readonly string[] => breachesIn(parseSource(path, text));
  expect(sample("src/2-model/a.ts", 'import type { Plan } from "../3-plan/types.ts";')).toEqual(["src/2-model/a.ts:1: 2-model may not import 3-plan"]);
  expect(sample("src/geometry/a.ts", '\nexport { nearestOf } from "../problems/nearest.ts";')).toEqual(["src/geometry/a.ts:2: geometry may not import problems"]);
  expect(sample("src/5-pages/a.ts", 'import { a } from "../../tests/a.ts";')).toEqual(["src/5-pages/a.ts:1: ../../tests/a.ts lies outside src"]);
  expect(sample("src/3-plan/a.ts", "await import(`../4-figures/${id}.ts`);")).toHaveLength(1);
  expect(sample("src/3-plan/a.ts", 'import { build } from "../build.ts";')).toHaveLength(1);
  expect(sample("src/3-plan/a.ts", 'import { mm } from "../units/length.ts"; import { z } from "zod";')).toEqual([]);
});
