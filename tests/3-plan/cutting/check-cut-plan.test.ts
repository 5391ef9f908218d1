// The independent check finds each kind of fault: one sound plan, broken in one place at a time.
import { describe, expect, it } from "vitest";
import { checkBarPlan, checkSheetPlan } from "../../../src/3-plan/cutting/check-cut-plan.ts";
import type { BarCutPlan, BarCutRequest, SheetCutPlan, SheetCutRequest, SheetLayout } from "../../../src/3-plan/cutting/types.ts";
import { mm } from "../../../src/units/length.ts";

const request: SheetCutRequest = {
  pieces: [{ id: "board", width: mm(40), height: mm(60), count: 4, mayTurn: false }, { id: "strip", width: mm(10), height: mm(100), count: 2, mayTurn: true }],
  sheets: [{ id: "card", width: mm(100), height: mm(70), cost: 3, available: 5 }],
  kerf: mm(2),
  aim: "fewest-sheets",
};

/** Two boards side by side and a strip lying on its side above them: 40 + 2 + 40 wide, 60 high; the strip needs 10 − 2 more than is there, so it stays off. */
const layout: SheetLayout = {
  sheet: "card",
  times: 2,
  pieces: [{ piece: "board", x: mm(0), y: mm(0), width: mm(40), height: mm(60), turned: false }, { piece: "board", x: mm(42), y: mm(0), width: mm(40), height: mm(60), turned: false }],
  cuts: [
    { number: 1, part: "sheet", measured: "from-below", marks: [mm(60)], parts: [{ from: mm(0), to: mm(60), use: { kind: "part", part: "1a" } }, { from: mm(62), to: mm(70), use: { kind: "offcut" } }] },
    { number: 2, part: "1a", measured: "from-left", marks: [mm(40), mm(82)], parts: [{ from: mm(0), to: mm(40), use: { kind: "piece", piece: "board" } }, { from: mm(42), to: mm(82), use: { kind: "piece", piece: "board" } }, { from: mm(84), to: mm(100), use: { kind: "offcut" } }] },
  ],
  offcuts: [{ x: mm(84), y: mm(0), width: mm(16), height: mm(60), holds: [] }, { x: mm(0), y: mm(62), width: mm(100), height: mm(8), holds: [] }],
};

const strips: SheetLayout = {
  sheet: "card",
  times: 1,
  pieces: [{ piece: "strip", x: mm(0), y: mm(0), width: mm(100), height: mm(10), turned: true }, { piece: "strip", x: mm(0), y: mm(12), width: mm(100), height: mm(10), turned: true }],
  cuts: [{ number: 1, part: "sheet", measured: "from-below", marks: [mm(10), mm(22)], parts: [{ from: mm(0), to: mm(10), use: { kind: "piece", piece: "strip" } }, { from: mm(12), to: mm(22), use: { kind: "piece", piece: "strip" } }, { from: mm(24), to: mm(70), use: { kind: "offcut" } }] }],
  offcuts: [{ x: mm(0), y: mm(24), width: mm(100), height: mm(46), holds: ["strip"] }],
};

const plan: SheetCutPlan = { layouts: [layout, strips], sheets: 3, cost: 9, bound: { counts: "sheets", atLeast: 3, mostAbove: 0 } };

function faultsWith(changed: Partial<SheetLayout>, also: Partial<SheetCutPlan> = {}): string {
  return checkSheetPlan(request, { ...plan, layouts: [{ ...layout, ...changed }, strips], ...also }).join("; ");
}

describe("the check of a sheet plan", () => {
  it("finds nothing in a sound plan", () => {
    expect(checkSheetPlan(request, plan)).toEqual([]);
  });

  it.each<readonly [string, string]>([
    ["a piece over the edge", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, x: mm(61) }] })],
    ["pieces nearer than the kerf", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, x: mm(41) }] })],
    ["overlapping pieces", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, x: mm(30) }] })],
    ["a piece too few", faultsWith({ pieces: [layout.pieces[0]!] })],
    ["a piece too small", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, width: mm(39) }] })],
    ["a piece across the grain", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, width: mm(60), height: mm(40), x: mm(0), turned: true }] })],
    ["an unknown piece", faultsWith({ pieces: [layout.pieces[0]!, { ...layout.pieces[1]!, piece: "lid" }] })],
    ["an unknown sheet", faultsWith({ sheet: "cloth" })],
    ["half a sheet", faultsWith({ times: 1.5 })],
    ["a wrong mark", faultsWith({ cuts: [layout.cuts[0]!, { ...layout.cuts[1]!, marks: [mm(40), mm(81)] }] })],
    ["marks that go back", faultsWith({ cuts: [layout.cuts[0]!, { ...layout.cuts[1]!, marks: [mm(82), mm(40)] }] })],
    ["steps in the wrong order", faultsWith({ cuts: [layout.cuts[1]!, layout.cuts[0]!] })],
    ["a step too few", faultsWith({ cuts: [layout.cuts[0]!] })],
    ["an offcut over a piece", faultsWith({ offcuts: [{ x: mm(60), y: mm(0), width: mm(16), height: mm(60), holds: [] }] })],
    ["an offcut said to hold what it does not", faultsWith({ offcuts: [{ x: mm(84), y: mm(0), width: mm(16), height: mm(60), holds: ["strip"] }] })],
    ["a wrong number of sheets", faultsWith({}, { sheets: 2 })],
    ["a wrong cost", faultsWith({}, { cost: 8 })],
    ["a plan below its own bound", faultsWith({}, { bound: { counts: "sheets", atLeast: 4, mostAbove: 0 } })],
    ["a minimum that is none", faultsWith({}, { bound: { counts: "sheets", atLeast: 2, mostAbove: 0 } })],
    ["more sheets than there are", checkSheetPlan({ ...request, sheets: [{ ...request.sheets[0]!, available: 2 }] }, plan).join("; ")],
  ])("finds %s", (_, faults) => {
    expect(faults).not.toBe("");
  });

  it("finds a pinwheel, which no cut from edge to edge parts", () => {
    const wheel: SheetCutRequest = { pieces: [{ id: "vane", width: mm(20), height: mm(10), count: 4, mayTurn: true }], sheets: [{ id: "card", width: mm(30), height: mm(30), cost: 0, available: null }], aim: "fewest-sheets" };
    const at = (x: number, y: number, turned: boolean): SheetLayout["pieces"][number] => ({ piece: "vane", x: mm(x), y: mm(y), width: mm(turned ? 10 : 20), height: mm(turned ? 20 : 10), turned });
    const pieces = [at(0, 0, false), at(20, 0, true), at(10, 20, false), at(0, 10, true)];
    const faults = checkSheetPlan(wheel, { layouts: [{ sheet: "card", times: 1, pieces, cuts: [], offcuts: [] }], sheets: 1, cost: 0, bound: { counts: "sheets", atLeast: 1, mostAbove: 0 } });
    expect(faults).toContain("layout 1: it cannot be cut from edge to edge");
  });
});

describe("the check of a bar plan", () => {
  const tape: BarCutRequest = { pieces: [{ id: "tape", length: mm(30), count: 3 }], bars: [{ id: "roll", length: mm(100), cost: 2, available: null }], kerf: mm(1), aim: "fewest-bars" };
  const sound: BarCutPlan = { layouts: [{ bar: "roll", times: 1, pieces: [0, 31, 62].map((from) => ({ piece: "tape", from: mm(from), to: mm(from + 30) })), rest: mm(7) }], bars: 1, cost: 2, bound: { counts: "bars", atLeast: 1, mostAbove: 0 } };

  it("finds nothing in a sound plan", () => {
    expect(checkBarPlan(tape, sound)).toEqual([]);
  });

  it.each<readonly [string, BarCutPlan]>([
    ["pieces nearer than the kerf", { ...sound, layouts: [{ ...sound.layouts[0]!, pieces: [0, 30, 62].map((from) => ({ piece: "tape", from: mm(from), to: mm(from + 30) })) }] }],
    ["a piece past the end", { ...sound, layouts: [{ ...sound.layouts[0]!, pieces: [0, 31, 71].map((from) => ({ piece: "tape", from: mm(from), to: mm(from + 30) })) }] }],
    ["a piece too few", { ...sound, layouts: [{ ...sound.layouts[0]!, pieces: sound.layouts[0]!.pieces.slice(1) }] }],
    ["a wrong rest", { ...sound, layouts: [{ ...sound.layouts[0]!, rest: mm(8) }] }],
    ["a wrong number of bars", { ...sound, bars: 2 }],
    ["a plan below its own bound", { ...sound, bound: { counts: "bars", atLeast: 2, mostAbove: 0 } }],
  ])("finds %s", (_, broken) => {
    expect(checkBarPlan(tape, broken)).not.toEqual([]);
  });
});
