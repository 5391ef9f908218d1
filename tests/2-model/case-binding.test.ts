// The case binding's model: the rounded back by numeric integration, joints, coverings, the thread, and what cannot be made.
import { describe, expect, it } from "vitest";
import { buildModel } from "../../src/2-model/index.ts";
import { addLengths, lengthOf, mm, multiplyLength, sameLength, subtractLength, toMillimetres } from "../../src/units/length.ts";
import { caseDefinition, caseModel } from "../fixtures/case-binding.ts";

const valueOf = (model: ReturnType<typeof caseModel>, name: string): number => toMillimetres(lengthOf(model.values.get(name)!.quantity.value));
const partOf = (model: ReturnType<typeof caseModel>, id: string) => model.parts.find((part) => part.id === id)!;

describe("a rounded back", () => {
  /** Length of the arc of a circle through (0, 0), (T/2, h) and (T, 0), walked in small straight steps over x. */
  function walked(chord: number, rise: number): number {
    const radius = (chord * chord / 4 + rise * rise) / (2 * rise);
    const height = (x: number): number => Math.sqrt(Math.max(0, radius * radius - (x - chord / 2) ** 2)) - (radius - rise);
    const steps = 400_000;
    let length = 0;
    let before = height(0);
    for (let step = 1; step <= steps; step += 1) {
      const now = height((chord * step) / steps);
      length += Math.hypot(chord / steps, now - before);
      before = now;
    }
    expect(height(0)).toBeCloseTo(0, 9);
    expect(height(chord / 2)).toBeCloseTo(rise, 9);
    return length;
  }

  it.each([["20 mm", "1 mm"], ["20 mm", "5 mm"], ["20 mm", "9.5 mm"], ["60 mm", "17 mm"]])("measured %s across that rises %s is as long as its arc walked in small steps", (across, rise) => {
    const model = caseModel({ back: "rounded", "back rise": rise }, { measured: { "back thickness": across } });
    expect(valueOf(model, "spine arc")).toBeCloseTo(walked(Number.parseFloat(across), Number.parseFloat(rise)), 3);
  });

  it("rises a third of a circle when nothing is said: its arc is 120° of its radius", () => {
    const model = caseModel({ back: "rounded" });
    expect(valueOf(model, "spine arc") / valueOf(model, "back radius")).toBeCloseTo((2 * Math.PI) / 3, 3);
  });

  it("stops when it would be more than half a circle, and warns of a strip that does not bend", () => {
    const codes = (book: object, more: object = {}) => buildModel(caseDefinition({ back: "rounded", ...book }, { measured: { "back thickness": "20 mm" }, ...more })).model.findings.map(({ severity, code }) => `${severity} ${code}`);
    expect(codes({ "back rise": "10 mm" })).not.toContain("stop rise-too-high");
    expect(codes({ "back rise": "10.1 mm" })).toContain("stop rise-too-high");
    expect(codes({}, { materials: { "spine strip": { thickness: "1 mm" } } })).not.toContain("warn strip-too-stiff");
    expect(codes({}, { materials: { "spine strip": { thickness: "1.1 mm" } } })).toContain("warn strip-too-stiff");
  });
});

describe("thickness", () => {
  it("counts sections, thread and endpapers in the back, and mull and boards in the strip", () => {
    const model = caseModel({}, { materials: { "text paper": { thickness: "0.1 mm" }, thread: { thickness: "0.6 mm" }, endpaper: { thickness: "0.2 mm" }, mull: { thickness: "0.1 mm" } } });
    // 64 leaves of 0.1; 8 threads of 0.6 at 75 %; two endpapers of two leaves of 0.2; two layers of adhesive of 0.05.
    expect(valueOf(model, "back thickness")).toBeCloseTo(6.4 + 3.6 + 0.8 + 0.1, 9);
    expect(valueOf(model, "spine strip width")).toBe(15.5); // 10.9 + 0.2 + 4 = 15.1, up
    expect(valueOf(caseModel({ "strip covers": "block" }, { measured: { "back thickness": "10.9 mm" } }), "spine strip width")).toBe(11);
  });

  it("lets a measured back govern strip, cloth and linings", () => {
    const model = caseModel({}, { measured: { "back thickness": "14 mm" } });
    expect(valueOf(model, "spine strip width")).toBe(18.5);
    expect(valueOf(model, "mull width")).toBe(64);
    expect(model.values.get("back thickness")!.origin).toBe("measured");
  });
});

describe("the joint", () => {
  // Groove 5 mm, boards 2 mm: V 2·√(2.5² + 2²) = 6.403, U 5 + 4 = 9; the usual joint 7 mm lies between.
  it("of 7 mm for boards of 2 mm lies between the straight way and the way along the walls", () => {
    const { geometry } = caseModel();
    expect(toMillimetres(geometry.joint)).toBe(7);
    expect(toMillimetres(geometry.tightestJoint)).toBeCloseTo(6.403, 3);
    expect(toMillimetres(geometry.loosestJoint)).toBe(9);
  });

  it("warns below and above these, and stops when the board cannot come round", () => {
    const codes = (joint: string, more: object = {}) => caseModel({ joint, ...more }).findings.filter(({ where }) => where === "joint").map(({ severity, code }) => `${severity} ${code}`);
    expect(codes("6.2 mm")).toEqual([]);
    expect(codes("6 mm")).toEqual(["warn joint-gap-too-small"]);
    expect(codes("1.5 mm")).toEqual(["stop joint-gap-too-small"]);
    expect(codes("9.2 mm")).toEqual([]);
    expect(codes("9.5 mm")).toEqual(["warn joint-too-loose"]);
    expect(codes("7 mm", { "strip covers": "block" })).toEqual([]);
  });

  it("holds a rod a little thicker than the board, and says when none fits", () => {
    expect(valueOf(caseModel(), "joint rod")).toBe(3);
    expect(caseModel({ groove: "2 mm" }).findings.map(({ code }) => code)).toContain("groove-too-narrow-for-rods");
  });
});

describe("the covering", () => {
  it("in full cloth is boards, joints, strip and turn-ins", () => {
    const model = caseModel({}, { measured: { "back thickness": "12.7 mm" } });
    const { geometry } = model;
    const sum = addLengths(multiplyLength(geometry.boardWidth, 2), multiplyLength(geometry.joint, 2), geometry.stripWidth, mm(30));
    expect(sameLength(partOf(model, "cloth").width, sum)).toBe(true);
    expect(model.parts.map(({ id }) => id)).not.toContain("side-paper");
  });

  it("in quarter cloth covers the board with cloth, paper and a lap", () => {
    const { geometry } = caseModel({ covering: "quarter" });
    const { clothOnBoards, sides, turnIn } = geometry.covering;
    const covered = subtractLength(addLengths(clothOnBoards!, sides!.width), addLengths(sides!.lap, turnIn));
    expect(sameLength(covered, geometry.boardWidth)).toBe(true);
    expect(geometry.covering.corners).toBeNull();
  });

  it("in half cloth cuts the paper's corners parallel to the cloth's, at least a lap nearer to the corner and less than a mark more", () => {
    const { geometry } = caseModel({ covering: "half" });
    const { corners, sides, turnIn } = geometry.covering;
    // On the board the cloth's edge is x + y = reach; the paper's is x + y = cut − 2 turn-ins.
    const lap = (toMillimetres(corners!.reach) - (toMillimetres(corners!.paperCut) - 2 * toMillimetres(turnIn))) / Math.SQRT2;
    expect(lap).toBeGreaterThanOrEqual(toMillimetres(sides!.lap) - 1e-4);
    expect(lap).toBeLessThan(toMillimetres(sides!.lap) + 0.5);
  });

  it("stops when cloth and corners leave no paper", () => {
    const codes = (book: object) => caseModel({ covering: "half", ...book }).findings.filter(({ severity }) => severity === "stop").map(({ code }) => code);
    expect(codes({ "cloth on boards": "70 mm", "corner reach": "76 mm" })).toEqual([]);
    expect(codes({ "cloth on boards": "70 mm", "corner reach": "77 mm" })).toEqual(["cloth-covers-board"]);
  });
});

describe("sewing", () => {
  it("goes through every hole of every section once, over every tape, and climbs by kettle stitches", () => {
    const model = caseModel();
    const { moves, passes } = model.thread!.paths[0]!;
    expect(passes).toHaveLength(8);
    expect(moves.filter(({ kind }) => kind === "hole")).toHaveLength(8 * 8);
    expect(moves.filter(({ kind }) => kind === "tape")).toHaveLength(8 * 3);
    expect(moves.filter(({ kind }) => kind === "kettle")).toHaveLength(5);
    expect(model.holes).toHaveLength(8);
  });

  it("takes at least a kettle span for each section, and its own sum", () => {
    const model = caseModel();
    const span = valueOf(model, "kettle span");
    const sewn = toMillimetres(model.thread!.sewn);
    expect(sewn).toBeGreaterThan(8 * span);
    // 64 holes through 4 leaves of 0.125; 24 tapes of 2 × 0.3 more than flat; two steps up, five kettles, a link and two knots.
    const pitch = valueOf(model, "spine thickness") / 8;
    const extra = 64 * 0.5 + 24 * 0.6 + 2 * pitch + 5 * (3 * pitch + 1) + (2 * pitch + 1) + 2 * pitch + 2;
    expect(sewn).toBeCloseTo(8 * span + extra, 6);
  });

  it("kettles catch the step between the two sections below", () => {
    const { moves, places } = caseModel().thread!.paths[0]!;
    const sectionOf = (id: string): number => Number(id.slice(8, id.indexOf("/")));
    for (const move of moves) {
      if (move.kind !== "kettle") continue;
      const step = moves[move.under! - 1]!;
      expect([sectionOf(step.from.place), sectionOf(step.to.place)]).toEqual([sectionOf(move.from.place) + 2, sectionOf(move.from.place) + 1]);
      expect(places.get(step.to.place)!.name).toBe(places.get(move.from.place)!.name);
    }
  });

  it("is left out of a glued block of single leaves, which has no swell and stops being safe beyond 2 in", () => {
    const model = caseModel({ "held by": "glue" });
    expect(model.thread).toBeNull();
    expect(partOf(model, "leaf").count).toBe(64);
    expect(valueOf(model, "spine thickness")).toBe(8);
    const codes = (sections: number) => caseModel({ "held by": "glue", "text block": { sections, "folded sheets": 8 } }, { materials: { "text paper": { thickness: "0.2 mm" } } }).findings.map(({ code }) => code);
    // 16 leaves of 0.2 mm are 3.2 mm: 15 are 48 mm, 16 are 51.2 mm; 2 in is 50.8 mm.
    expect(codes(15)).not.toContain("glued-block-too-thick");
    expect(codes(16)).toContain("glued-block-too-thick");
  });
});

describe("what cannot be made", () => {
  const stops = (book: object, more: object = {}) => caseModel(book as never, more as never).findings.filter(({ severity }) => severity === "stop").map(({ code }) => code);

  it("tapes that meet, turn-ins that meet, mull without height, boards without width", () => {
    expect(stops({})).toEqual([]);
    expect(stops({ sewing: { tapes: 7, "tape width": "30 mm" } })).toContain("stations-too-close");
    expect(stops({ "turn in": "60 mm", "text block": { page: { height: "110 mm", width: "148 mm" } } })).toContain("turn-in-too-deep");
    expect(stops({ mull: { "short at ends": "40 mm" }, "text block": { page: { height: "80 mm", width: "148 mm" } }, sewing: { tapes: 2 } })).toContain("linings-vanish");
    expect(stops({ "text block": { page: { height: "110 mm", width: "30 mm" } }, groove: "15 mm" })).toContain("boards-too-narrow");
  });

  it("warns of tapes longer than a board and of boards without squares", () => {
    const codes = (book: object): readonly string[] => caseModel(book as never).findings.map(({ code }) => code);
    expect(codes({ sewing: { "tape on boards": "80 mm" }, "text block": { page: { height: "110 mm", width: "70 mm" } } })).toContain("tapes-too-long");
    expect(codes({ square: "0.5 mm" })).toContain("square-too-small");
  });
});

