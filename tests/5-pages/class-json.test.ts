// plan.json of a project with a class: against its schema, and against checkers that know nothing but what it says.
import path from "node:path";
import { expect, test } from "vitest";
import { computeProject } from "../../src/build/compute.ts";
import { readContent } from "../../src/build/content.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { checkBarPlan, checkSheetPlan } from "../../src/3-plan/cutting/check-cut-plan.ts";
import type { PartUse, SheetCutPlan } from "../../src/3-plan/cutting/types.ts";
import { planJson } from "../../src/5-pages/plan-json.ts";
import { planSchema } from "../../src/5-pages/plan-schema.ts";
import type { PlanJson } from "../../src/5-pages/plan-schema.ts";
import type { Length } from "../../src/units/length.ts";
import { readLength } from "../../src/units/read-length.ts";
import { walkTimetable } from "../fixtures/walk-timetable.ts";

const demos = await readContent(path.resolve(import.meta.dirname, "../../content"));
const { booklets, fault } = await computeProject(demos.find(({ name }) => name === "harbour-album")!, loadLinearSolver);
const plan = JSON.parse(JSON.stringify(planJson(booklets[0]!))) as PlanJson;

/** The exact length that plan.json tells as text. */
function exact({ exact: text }: { readonly exact: string }): Length {
  const read = readLength(text, null);
  if (!read.ok) throw new Error(`"${text}" is no length`);
  return read.length;
}

const partOf = (id: string): PlanJson["parts"][number] => plan.parts.find((part) => part.id === id)!;
const wanted = (role: string) => plan.parts.filter((part) => part.material === role && !part.ready_made);

/** The layouts of one entry as the checker takes them. */
function sheetPlan({ layouts, sheets, bound }: PlanJson["cutting"][number], cost: number): SheetCutPlan {
  const use = (is: PartUse["kind"], name: string | null): PartUse => (is === "piece" ? { kind: is, piece: name! } : is === "part" ? { kind: is, part: name! } : { kind: is });
  return {
    sheets, cost: cost * sheets,
    bound: { counts: "sheets", atLeast: bound.at_least, mostAbove: bound.most_above },
    layouts: layouts.map((layout) => ({
      sheet: "stock", times: layout.count,
      pieces: layout.pieces.map((piece) => ({ piece: piece.part, x: exact(piece.x), y: exact(piece.y), width: exact(piece.width), height: exact(piece.height), turned: piece.turned })),
      cuts: layout.cuts.map((cut) => ({
        number: cut.n, part: cut.part, measured: cut.from === "left edge" ? "from-left" : "from-below", marks: cut.marks.map(exact),
        parts: cut.gives.map(({ from, to, is, name }) => ({ from: exact(from), to: exact(to), use: use(is, name) })),
      })),
      offcuts: layout.offcuts.map((offcut) => ({ x: exact(offcut.x), y: exact(offcut.y), width: exact(offcut.width), height: exact(offcut.height), holds: offcut.holds })),
    })),
  };
}

test("the project is computed, and its plan.json keeps to the schema", () => {
  expect(fault).toBeNull();
  expect(planSchema.parse(plan)).toEqual(plan);
  expect(plan.class!.sets).toBe(plan.class!.makers + 1);
});

test("its cut plans can be carried out from plan.json alone: every piece of every set, within its sheet, without turning against the grain", () => {
  expect(plan.cutting.length).toBeGreaterThan(3);
  for (const entry of plan.cutting) {
    const grainless = plan.parts.filter((part) => part.material === entry.role).every((part) => part.grain === "none");
    const pieces = wanted(entry.role).map((part) => ({ id: part.id, width: exact(part.width), height: exact(part.height), count: part.count * plan.class!.sets, mayTurn: grainless }));
    const sheets = [{ id: "stock", width: exact(entry.stock.width), height: exact(entry.stock.height), cost: 1, available: null }];
    expect(checkSheetPlan({ pieces, sheets, aim: "fewest-sheets" }, sheetPlan(entry, 1)), entry.material).toEqual([]);
    expect(entry.layouts.reduce((sum, layout) => sum + layout.count, 0)).toBe(entry.sheets);
    expect(entry.lower_bound).toBeLessThanOrEqual(entry.sheets);
    const { planned, at_least: atLeast } = entry.sheets_of_all_sizes;
    expect(plan.cutting.filter(({ role }) => role === entry.role).reduce((sum, { sheets: each }) => sum + each, 0)).toBe(planned);
    expect(atLeast).toBeGreaterThan(0);
    expect(atLeast).toBeLessThanOrEqual(planned);
  }
});

test("the checker sees a piece that plan.json puts elsewhere", () => {
  const entry = plan.cutting[0]!;
  const moved = { ...entry, layouts: entry.layouts.map((layout, index) => (index > 0 ? layout : { ...layout, pieces: layout.pieces.map((piece) => ({ ...piece, x: { mm: 1, exact: "1 mm" } })) })) };
  const pieces = wanted(entry.role).map((part) => ({ id: part.id, width: exact(part.width), height: exact(part.height), count: part.count * plan.class!.sets, mayTurn: false }));
  const sheets = [{ id: "stock", width: exact(entry.stock.width), height: exact(entry.stock.height), cost: 1, available: null }];
  expect(checkSheetPlan({ pieces, sheets, aim: "fewest-sheets" }, sheetPlan(moved, 1))).not.toEqual([]);
});

test("lengths are cut from their rolls from end to end", () => {
  expect(plan.length_cutting.map(({ role }) => role)).toEqual(expect.arrayContaining(["hinge tape", "ribbon"]));
  for (const entry of plan.length_cutting) {
    const pieces = wanted(entry.role).map((part) => ({ id: part.id, length: exact(part.height), count: part.count * plan.class!.sets }));
    const bars = [{ id: "roll", length: exact(entry.stock.length), cost: 0, available: null }];
    const layouts = entry.layouts.map((layout) => ({ bar: "roll", times: layout.count, pieces: layout.pieces.map(({ part, from, to }) => ({ piece: part, from: exact(from), to: exact(to) })), rest: exact(layout.rest) }));
    expect(checkBarPlan({ pieces, bars, aim: "fewest-bars" }, { layouts, bars: entry.lengths, cost: 0, bound: { counts: "bars", atLeast: entry.lower_bound, mostAbove: entry.bound.most_above } })).toEqual([]);
  }
});

test("what is ordered covers what is cut, in whole packs, and the sums agree", () => {
  const { orders, sets } = plan.class!;
  for (const { role, sheets } of plan.cutting) expect(orders.filter((line) => line.role === role).reduce((sum, line) => sum + line.needed, 0)).toBeGreaterThanOrEqual(sheets);
  for (const line of orders) {
    expect(line.in_hand + line.packs * line.pack_size - line.needed).toBe(line.over);
    if (line.pack_price !== null) expect(line.cost).toBeCloseTo(line.pack_price * line.packs, 6);
  }
  const posts = plan.materials.find(({ role }) => role === "posts")!;
  expect(posts.per_class).toBe(posts.per_book! * sets);
  expect(posts).toMatchObject({ unit: "pieces", packs: Math.ceil(posts.per_class! / 20) });
  expect(plan.materials.find(({ role }) => role === "adhesive")).toMatchObject({ per_class: null, cost: null });
  expect(partOf("card").material).toBe("card");
  const { adhesives } = plan.class!;
  // The tape of the joints is a part itself, cut to size.
  expect([...adhesives.map(({ adhesive }) => adhesive), "self-adhesive tape"].sort()).toEqual([...new Set(plan.steps.flatMap(({ adhesive }) => (adhesive ? [adhesive.name] : [])))].sort());
  for (const { adhesive, steps, brushed, taped } of adhesives) {
    expect([brushed, taped].filter((each) => each !== null)).toHaveLength(1);
    for (const number of steps) expect(plan.steps[number - 1]!.adhesive!.name).toBe(adhesive);
    if (brushed) expect(brushed.grams).toBe(10 * Math.ceil((brushed.square_centimetres * brushed.grams_per_square_metre * 2) / 100_000));
  }
});

test("its timetable can be walked minute by minute", () => {
  expect(plan.timetable!.fits).toBe(true);
  expect(walkTimetable(plan.timetable!)).toEqual([]);
  expect(plan.timetable!.lower_bound).toBeLessThanOrEqual(plan.timetable!.end!);
});

test("the walk stumbles over work that comes too early, a tool too few, an open time that is over, and a break worked through", () => {
  const timetable = plan.timetable!;
  const glue = timetable.rules.find((rule) => rule.after.some(({ most }) => most !== null))!;
  const wet = { ...timetable, rules: timetable.rules.map((rule) => (rule === glue ? { ...rule, after: rule.after.map((need) => ({ ...need, most: need.most === null ? null : 0 })) } : rule)) };
  expect(walkTimetable(wet)).toEqual(expect.arrayContaining([expect.stringContaining("no longer wet")]));
  const dry = { ...timetable, rules: timetable.rules.map((rule) => ({ ...rule, after: rule.after.map((need) => ({ ...need, least: need.least + 7 * 24 * 60 })) })) };
  expect(walkTimetable(dry)).toEqual(expect.arrayContaining([expect.stringContaining("are needed")]));
  const held = { ...timetable, rules: timetable.rules.map((rule) => (rule.tools.length > 0 ? { ...rule, rest: { minutes: 30, tools: rule.tools } } : rule)) };
  expect(walkTimetable(held)).toEqual(expect.arrayContaining([expect.stringContaining("are taken")]));
  const pause = { ...timetable.slots.find(({ kind }) => kind === "break")!, start: 10, end: 20 };
  expect(walkTimetable({ ...timetable, slots: [...timetable.slots, pause] })).toEqual(expect.arrayContaining([expect.stringContaining("in a break")]));
  expect(walkTimetable({ ...timetable, slots: timetable.slots.filter(({ kind, step }) => kind !== "work" || step !== 20) })).toEqual(expect.arrayContaining([expect.stringContaining("never does")]));
});
