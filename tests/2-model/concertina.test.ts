// The concertina's model: join plan, halving, what folds and tabs take up, covers, closure, findings.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { halvingOrder } from "../../src/2-model/concertina/strip.ts";
import { shareOutPanels } from "../../src/2-model/concertina/join-plan.ts";
import { inches, mm, toMillimetres } from "../../src/units/length.ts";
import type { Length } from "../../src/units/length.ts";
import { concertinaDefinition, plainSheet, sheetOf } from "../fixtures/concertina.ts";
import type { ConcertinaOverrides } from "../fixtures/concertina.ts";

function modelOf(overrides: ConcertinaOverrides = {}) {
  const { model, problems } = buildModel(concertinaDefinition(overrides));
  expect(problems).toEqual([]);
  return model;
}

const value = (model: ReturnType<typeof modelOf>, name: string): number => toMillimetres(model.values.get(name)!.quantity.value as Length);
const codesOf = (overrides: ConcertinaOverrides): readonly string[] => buildModel(concertinaDefinition(overrides)).model.findings.map((finding) => `${finding.severity} ${finding.code}`);

describe("the join plan", () => {
  it("ends the first strip after an odd number of panels and every further one after an even number, so that joins lie in valleys", () => {
    // 700 mm hold six panels of 105 mm beside a tab of 12 mm (642 mm), and six without.
    expect(shareOutPanels(16, 6, 6)).toEqual([5, 6, 5]);
    expect(shareOutPanels(6, 6, 6)).toEqual([6]);
    expect(shareOutPanels(7, 6, 6)).toEqual([3, 4]);
    expect(shareOutPanels(11, 6, 6)).toEqual([5, 6]);
    expect(shareOutPanels(12, 6, 6)).toEqual([3, 4, 5]);
  });
  it("joins what one panel and its tab leave, and gives up where a middle strip would need a crest", () => {
    expect(shareOutPanels(2, 1, 1)).toEqual([1, 1]);
    expect(shareOutPanels(3, 1, 1)).toBeNull();
    expect(shareOutPanels(2, 0, 1)).toBeNull();
  });
  it("takes the side of the sheet across the grain, and the sheet that needs the fewest strips", () => {
    const strips = (materials: ConcertinaOverrides["materials"]) => modelOf({ book: { panels: 16 }, materials: materials! }).geometry.strips.map((strip) => strip.panels);
    expect(strips(sheetOf(mm(500), mm(700), "short"))).toEqual([5, 6, 5]);
    expect(strips(sheetOf(mm(500), mm(700), "long"))).toEqual([1, 4, 4, 4, 3]);
    expect(strips({ "panel paper": { grain: "short", sheets: [plainSheet(mm(500), mm(700)), plainSheet(mm(700), mm(1000))] } })).toEqual([7, 9]);
  });
  it("counts the sheets: three strips of 150 mm come out of 500 mm, two out of 400 mm", () => {
    expect(modelOf({ book: { panels: 16 }, materials: sheetOf(mm(500), mm(700)) }).geometry.sheet).toMatchObject({ stripsFromEach: 3, count: 1 });
    expect(modelOf({ book: { panels: 16 }, materials: sheetOf(mm(400), mm(700)) }).geometry.sheet).toMatchObject({ stripsFromEach: 2, count: 2 });
  });
});

it("a strip that rounding would make longer than its sheet gives up a panel", () => {
  // Four panels of 100.1 mm are 400.4 mm, 400.5 on the ruler.
  const panelsOf = (across: Length) => modelOf({ book: { panels: 4, panel: { height: mm(100), width: mm("100.1") } }, materials: sheetOf(mm(300), across) }).geometry.strips.map((strip) => strip.panels);
  expect(panelsOf(mm("400.5"))).toEqual([4]);
  expect(panelsOf(mm("400.4"))).toEqual([1, 3]);
});

describe("halving", () => {
  it("finds eight panels in three rounds, mountains first, valleys in the last round", () => {
    expect(halvingOrder(8).map(({ fold, round, from, onto, direction }) => [fold, round, from, onto, direction])).toEqual([
      [4, 1, 0, 8, "mountain"], [2, 2, 0, 4, "mountain"], [6, 2, 4, 8, "mountain"],
      [1, 3, 0, 2, "valley"], [3, 3, 2, 4, "valley"], [5, 3, 4, 6, "valley"], [7, 3, 6, 8, "valley"],
    ]);
    expect(halvingOrder(2)).toHaveLength(1);
    expect(halvingOrder(12)).toEqual([]);
  });
  it("is chosen for a power of two in one piece of paper below 0.30 mm, else scores", () => {
    const folding = (overrides: ConcertinaOverrides) => modelOf(overrides).geometry.folding;
    const whole = sheetOf(mm(700), mm(1000));
    const thick = (thickness: string) => ({ "panel paper": { ...whole["panel paper"], thickness: mm(thickness) } });
    expect(folding({ materials: whole })).toBe("halving");
    expect(folding({ materials: thick("0.29") })).toBe("halving");
    expect(folding({ materials: thick("0.3") })).toBe("scores");
    expect(folding({ book: { panels: 6 }, materials: whole })).toBe("scores");
    expect(folding({ materials: sheetOf(mm(500), mm(700)) })).toBe("scores");
  });
  it("through all layers would put the outermost crease off by π/2 for each layer beyond the first", () => {
    // Eight panels: four layers at the last halving, three beyond the first, 0.2 mm each.
    expect(value(modelOf({ materials: sheetOf(mm(700), mm(1000)) }), "stacked take-up")).toBeCloseTo((Math.PI / 2) * 3 * 0.2, 4);
  });
});

describe("thickness", () => {
  const model = modelOf({ book: { panels: 16 }, materials: sheetOf(mm(500), mm(700)) });
  it("of the folded strip counts every panel, and a layer of paper and of adhesive for every tab", () => {
    expect(value(model, "folded stack")).toBeCloseTo(16 * 0.2 + 2 * (0.2 + 0.05), 9);
    expect(value(model, "shut thickness")).toBeCloseTo(3.7 + 2 * (2 + 2 * (0.12 + 0.05) + 0.05), 9);
  });
  it("makes a folded panel (2 − π/2) t wider than it is flat, which a thick one passes on to the board", () => {
    const thick = modelOf({ materials: { "panel paper": { thickness: mm(1) } } });
    expect(value(thick, "folded width")).toBeCloseTo(105 + 2 - Math.PI / 2, 4);
    expect(toMillimetres(thick.geometry.boardWidth)).toBe(111.5);
    expect(toMillimetres(model.geometry.boardWidth)).toBe(111);
  });
  it("keeps the next strip back from the fold of a join by π/4 of the distance of the mid-planes, on a fine mark", () => {
    expect(value(model, "least set back")).toBeCloseTo((Math.PI / 4) * (2 * 0.2 + 0.05), 4);
    expect(toMillimetres(model.geometry.setBack)).toBe(0.5);
    expect(toMillimetres(modelOf({ units: "in", book: { panels: 16 } }).geometry.setBack)).toBeCloseTo(25.4 / 64, 9);
  });
  it("that is measured governs over what is calculated, and everything after it follows", () => {
    const measured = modelOf({ book: { panels: 16 }, materials: sheetOf(mm(500), mm(700)), measured: { "folded stack": mm("4.1") } });
    expect(value(measured, "shut thickness") - value(model, "shut thickness")).toBeCloseTo(0.4, 9);
    expect(value(measured, "ribbon long end")).toBeGreaterThan(value(model, "ribbon long end") - 0.001);
  });
});

describe("the closure", () => {
  it("of ribbon goes across the board, and from both edges round the book to its tie", () => {
    const { geometry } = modelOf({ materials: sheetOf(mm(700), mm(1000)) });
    // Stack 1.6 mm, covers 2 × (2.34 + 0.05): 6.38 mm; the board 111 mm; ties 200 mm.
    expect(geometry.closure).toMatchObject({ kind: "ribbon", longEnd: mm("317.5"), shortEnd: mm("206.5"), length: mm(635) });
  });
  it("of a band fits round the shut book on its mid-plane, with its ease", () => {
    const { geometry, values } = modelOf({ book: { closure: "band" }, materials: sheetOf(mm(700), mm(1000)) });
    if (geometry.closure?.kind !== "band") throw new Error("no band");
    const girth = 2 * (111 + 0.34 + 6.38) + 8 * (0.12 / 2) + 2;
    expect(toMillimetres(geometry.closure.length)).toBe(Math.ceil(2 * (girth + 20)) / 2);
    expect(toMillimetres(geometry.closure.folds.at(-1)!)).toBeCloseTo(girth, 0);
    expect(values.has("ribbon length")).toBe(false);
  });
});

describe("findings", () => {
  const whole = sheetOf(mm(700), mm(1000));
  it.each<readonly [string, ConcertinaOverrides]>([
    ["note panels-odd", { book: { panels: 7 } }],
    ["note strips-assumed", {}],
    ["note closure-missing", { book: { closure: "none" } }],
    ["stop halving-impossible", { book: { panels: 6, folding: "halving" }, materials: whole }],
    ["stop halving-impossible", { book: { folding: "halving" }, materials: sheetOf(mm(500), mm(700)) }],
    ["warn halving-thick", { book: { folding: "halving" }, materials: { "panel paper": { ...whole["panel paper"], thickness: mm("0.3") } } }],
    ["stop strips-too-short", { book: { panels: 5, panel: { height: mm(150), width: mm(300) } }, materials: sheetOf(mm(500), mm(500)) }],
    ["stop larger-than-sheet", { book: { panel: { height: mm(600), width: mm(100) } }, materials: sheetOf(mm(500), mm(500)) }],
    ["warn grain-across", { book: { panel: { height: mm(600), width: mm(100) } }, materials: sheetOf(mm(500), mm(700), "short") }],
    ["stop tab-too-wide", { book: { panels: 30, panel: { height: mm(150), width: mm(60) }, join: { tab: mm(30) } } }],
    ["warn tab-too-narrow", { book: { panels: 30, join: { tab: mm(7) } } }],
    ["warn join-pinched", { book: { panels: 30, join: { "set back": mm("0.3") } } }],
    ["warn tabs-swell", { book: { panels: 40 } }],
    ["warn scores-too-close", { book: { panels: 30, join: { tab: mm(3) } }, materials: { "panel paper": { thickness: mm("1.1") } } }],
    ["warn turn-in-too-narrow", { book: { "turn in": mm(8), square: mm(6) } }],
    ["stop turn-in-too-deep", { book: { panel: { height: mm(60), width: mm(60) }, "turn in": mm(40) } }],
    ["warn corner-cut-too-far", { book: { "turn in": mm(8) }, materials: { boards: { thickness: mm(6) } } }],
    ["stop closure-too-high", { book: { closure: "band", band: { height: mm(160) } } }],
    ["warn longer-than-tool", { materials: whole, rest: { tools: { rulerLength: mm(600), cutterLength: null, punchReach: null, drillDepth: null } } }],
    ["warn stack-too-thick", { book: { panels: 60, panel: { height: mm(60), width: mm(30) } }, materials: { "panel paper": { thickness: mm("0.6") } } }],
  ])("%s", (code, overrides) => {
    expect(codesOf(overrides)).toContain(code);
  });
  it("are none for a sound book on a named sheet with known grain", () => {
    const known = { grain: "long" } as const;
    expect(codesOf({ materials: { ...whole, boards: known, "cover paper": known } })).toEqual([]);
  });
  it("are not raised at their limits", () => {
    expect(codesOf({ book: { panels: 30, join: { tab: mm(8), "set back": mm("0.36") } } })).not.toContain("warn tab-too-narrow");
    expect(codesOf({ book: { panels: 30, join: { "set back": mm("0.36") } } })).not.toContain("warn join-pinched");
    expect(codesOf({ book: { panels: 30, panel: { height: mm(150), width: mm(61) }, join: { tab: mm(30) } } })).not.toContain("stop tab-too-wide");
  });
  it("say nothing of joins for a strip in one piece", () => {
    expect(codesOf({ book: { join: { tab: mm(3) } }, materials: whole }).filter((code) => /tab|join/.test(code))).toEqual([]);
  });
});

it("an inch book comes out on sixteenths: panels of 4 × 2 3/4 in in covers of 4 1/4 × 3 in", () => {
  const { geometry } = modelOf({ units: "in", book: { panel: { height: inches(4), width: inches(11, 4) } } });
  expect([geometry.boardHeight, geometry.boardWidth]).toEqual([inches(17, 4), inches(3)]);
});
