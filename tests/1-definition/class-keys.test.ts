// The class of a definition: what is written, what is assumed, and what is wrong with it.
import { describe, expect, it } from "vitest";
import { readDefinition } from "../../src/1-definition/index.ts";
import { labelGrids } from "../../src/catalogue/label-grids.ts";
import { mm } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";

const sound = "benchleaf: 1\nbinding: stub album\ntitle: T\nsummary: S\nauthor: {name: A}\nunits: mm\nbook: {stubs: 8, boards: {height: 300 mm, width: 220 mm}}\n";

function read(written: string) {
  return readDefinition({ project: "invented", file: "content/invented/project.yaml", bytes: new TextEncoder().encode(sound + written), files: new Set(["project.yaml"]), prose: new Map() });
}

describe("a class", () => {
  it("is none when nothing is written", () => {
    expect(read("").definitions[0]!.class).toBeNull();
  });

  it("has a default for everything but who comes and when", () => {
    const { definitions, problems } = read("class: {participants: 7, sessions: 3 h}\n");
    expect(problems).toEqual([]);
    expect(definitions[0]!.class).toEqual({
      participants: 7, spares: 1, teacherCopy: true, cutBeforehand: true, sessions: [{ minutes: 180, start: 600, daysAfter: 7 }], breaks: { every: 90, length: 10 },
      setUp: 5, cleanUp: 10, demonstration: rational(1n, 4n), tools: new Map(), packs: [], currency: "€", kitMargin: rational(0),
      labels: { ...labelGrids["a4 2x4"], first: 1, outlines: true },
    });
  });

  it("takes sessions with their hour, and shared tools by name", () => {
    const { definitions } = read("class: {participants: 12, sessions: [{length: 2 h 30 min, start: \"18:05\"}, {length: 3 h, days after: 1}], tools: {hole tool: 3, bone folder: 6}}\n");
    const { sessions, tools } = definitions[0]!.class!;
    expect(sessions).toEqual([{ minutes: 150, start: 18 * 60 + 5, daysAfter: 7 }, { minutes: 180, start: 600, daysAfter: 1 }]);
    expect([...tools]).toEqual([["boneFolder", 6], ["holeTool", 3]]);
  });

  it("takes packs of adhesives, by weight or by length", () => {
    const { definitions, problems } = read("class: {participants: 3, sessions: 3 h, adhesives: [{adhesive: white glue, grams: 500, price: 9.80}, {adhesive: tape, length: 50 m}]}\n");
    expect(problems).toEqual([]);
    expect(definitions[0]!.class!.packs).toEqual([
      { name: "PVA", price: rational(98n, 10n), grams: 500, length: null },
      { name: "double-sided tape", price: null, grams: null, length: mm(50_000) },
    ]);
  });

  it.each([
    ["class: {participants: 3, sessions: 3 h, adhesives: [{adhesive: PVA, length: 5 m}]}", "key-missing", "grams"],
    ["class: {participants: 3, sessions: 3 h, adhesives: [{adhesive: tape, grams: 5}]}", "key-missing", "length"],
    ["class: {participants: 3, sessions: 3 h, adhesives: [{adhesive: PVA, grams: 5}, {adhesive: white glue, grams: 9}]}", "keys-exclude", "written already"],
    ["class: {participants: 3, sessions: 3 h, adhesives: [{grams: 5}]}", "key-missing", "adhesive"],
    ["class: {participants: 0, sessions: 3 h}", "value-range", "at least 1"],
    ["class: {sessions: 3 h}", "key-missing", "participants"],
    ["class: {participants: 3}", "key-missing", "sessions"],
    ["class: {participants: 3, sessions: []}", "value-range", "empty"],
    ["class: {participants: 3, sessions: [{length: 3 h, start: \"25:00\"}]}", "value-type", "time of day"],
    ["class: {participants: 3, sessions: 3 h, tools: {hole tol: 2}}", "key-unknown", "hole tol"],
    ["class: {participants: 3, sessions: 10 min}", "value-range", "too short"],
  ])("with a fault is a problem: %s", (written, code, words) => {
    const { problems } = read(`${written}\n`);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(`${problems[0]!.message} ${problems[0]!.hint}`).toContain(words);
    expect(problems[0]!.place.span).not.toBeNull();
  });
});
