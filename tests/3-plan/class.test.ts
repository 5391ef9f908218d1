// The class of a book: sets, orders, costs and kits add up, every plan passes the independent checkers, and a timetable that does not fit says what would help.
import { describe, expect, it, test } from "vitest";
import type { ClassSettings } from "../../src/1-definition/types.ts";
import { readDefinition } from "../../src/1-definition/index.ts";
import { buildModel } from "../../src/2-model/index.ts";
import { withMargin } from "../../src/3-plan/class/money.ts";
import type { ClassPlan } from "../../src/3-plan/class/types.ts";
import { checkSheetPlan } from "../../src/3-plan/cutting/check-cut-plan.ts";
import { makePlan } from "../../src/3-plan/index.ts";
import type { Plan } from "../../src/3-plan/types.ts";
import { drawFigures } from "../../src/4-figures/index.ts";
import { findCollisions } from "../../src/4-figures/place.ts";
import { drawCutLayout } from "../../src/4-figures/class/cut-layout.ts";
import { labelGrids } from "../../src/catalogue/label-grids.ts";
import { loadLinearSolver } from "../../src/build/linear-solver.ts";
import { mm, toMillimetres } from "../../src/units/length.ts";
import { rational } from "../../src/units/rational.ts";
import { stubAlbumDefinition } from "../fixtures/stub-album.ts";

const solver = await loadLinearSolver();

const session = { minutes: 240, start: 600, daysAfter: 1 };
const settings: ClassSettings = {
  participants: 12, spares: 1, teacherCopy: true, cutBeforehand: true, sessions: [session, session, session, session], breaks: { every: 90, length: 10 },
  setUp: 5, cleanUp: 10, demonstration: rational(1n, 4n), tools: new Map([["holeTool", 4]]), packs: [], currency: "€", kitMargin: rational(2n, 5n),
  labels: { ...labelGrids["a4 2x4"], first: 1, outlines: true },
};

function classOf(change: Partial<ClassSettings>): { readonly own: ClassPlan; readonly plan: Plan; readonly definition: ReturnType<typeof stubAlbumDefinition> } {
  const plain = stubAlbumDefinition();
  const sheet = (price: bigint) => ({ height: mm(700), width: mm(1000), price: rational(price), pack: 10, inHand: 2 });
  const material = (role: string, price: bigint) => ({ ...plain.materials[role]!, grain: "long" as const, sheets: [sheet(price)] });
  const definition = {
    ...plain,
    materials: { ...plain.materials, card: material("card", 12n), cloth: material("cloth", 90n), "page paper": material("page paper", 8n), "strip board": material("strip board", 30n), posts: { ...plain.materials["posts"]!, price: rational(8n), packCount: 20 }, ribbon: { ...plain.materials["ribbon"]!, price: rational(7n), packLength: mm(10_000) } },
    class: { ...settings, ...change },
  };
  const { model } = buildModel(definition);
  const { plan } = makePlan(definition, model, solver);
  return { own: plan.class!, plan, definition };
}

test("a class without prices names no sum, and tells what is cut to a measure in class", () => {
  const plain = stubAlbumDefinition();
  const definition = { ...plain, class: settings };
  const { plan } = makePlan(definition, buildModel(definition).model, solver);
  const { preparation, costs } = plan.class!;
  expect(Object.values(costs).filter((text) => typeof text === "string")).toEqual(["", "", "", ""]);
  const step = plan.steps.find(({ id }) => id === "cut-hinge")!.n;
  expect(preparation.join(" ")).toContain(`Step ${step} stays in the class, because it measures what the class has made before spine strip (C) and hinge cloth (E) are cut. The bags hold them in the sizes printed`);
});

describe.each([1, 7, 12, 40])("a class of %i", (participants) => {
  const { own, plan, definition } = classOf({ participants });
  const sets = participants + 2;

  it("has one set for everybody, the teacher and what is spoilt", () => {
    expect([own.makers, own.sets]).toEqual([participants + 1, sets]);
  });

  it("cuts every piece of every set out of the sheets that are ordered", () => {
    expect(own.cutPlans.map((each) => each.role).sort()).toEqual(["card", "cloth", "page paper", "strip board"]);
    for (const { role, request, plan: cut, verdict } of own.cutPlans) {
      expect(checkSheetPlan(request, cut)).toEqual([]);
      const wanted = plan.cutList.filter(({ part }) => part.material === role).reduce((sum, { part }) => sum + part.count * sets, 0);
      expect(cut.layouts.reduce((sum, layout) => sum + layout.times * layout.pieces.length, 0)).toBe(wanted);
      expect(own.orders.find((line) => line.role === role)!.needed).toBe(cut.sheets);
      expect(verdict).toMatch(new RegExp(`^${cut.sheets} sheets?: (proven minimum|at most \\d+ above the minimum)$`));
      // Nothing is turned against its grain.
      expect(cut.layouts.flatMap((layout) => layout.pieces).some((piece) => piece.turned)).toBe(false);
      const area = (pieces: readonly { readonly width: ReturnType<typeof mm>; readonly height: ReturnType<typeof mm> }[]): number => pieces.reduce((sum, piece) => sum + toMillimetres(piece.width) * toMillimetres(piece.height), 0);
      expect(cut.sheets * 700 * 1000).toBeGreaterThanOrEqual(cut.layouts.reduce((sum, layout) => sum + layout.times * area(layout.pieces), 0));
    }
  });

  it("buys whole packs, no more than needed beside what is in hand, and says what is over", () => {
    for (const line of own.orders.filter((each) => each.isCounted)) {
      const there = line.inHand + line.packs * line.packSize;
      expect(there - line.needed).toBe(line.over);
      expect(there).toBeGreaterThanOrEqual(line.needed);
      if (line.packs > 0) expect(there - line.packSize).toBeLessThan(line.needed);
    }
    const posts = own.orders.find((line) => line.role === "posts")!;
    expect(posts.needed).toBe(4 * sets);
  });

  it("adds up its costs by hand", () => {
    const spend = own.orders.reduce((sum, line) => sum + (line.price ?? 0), 0);
    expect(own.costs.toSpend).toBe(`€\u00a0${Math.floor(spend / 100)}.${String(spend % 100).padStart(2, "0")}`);
    expect(own.costs.unpriced).not.toContain(definition.materials["card"]!.name);
    expect(own.costs.unpriced).toContain(definition.materials["boards"]!.name);
  });

  it("puts every part of the cut list into the bag", () => {
    expect(own.kit.filter((line) => line.letter !== "").map((line) => [line.letter, line.count])).toEqual(plan.cutList.map((item) => [item.letter, item.part.count]));
  });

  it("has a timetable that can be walked, or says what would make it fit", () => {
    const { timetable } = own;
    if (!timetable.fits) {
      expect(timetable.advice.some((line) => line.startsWith("It fits"))).toBe(true);
      return;
    }
    const worked = new Set(timetable.slots.filter((slot) => slot.kind === "work").map((slot) => `${slot.group ?? 1} ${slot.step}`));
    const steps = plan.steps.filter((step) => !["cut-card", "cut-parts"].includes(step.id));
    for (let group = 1; group <= timetable.groups; group += 1) for (const step of steps) expect(worked.has(`${group} ${step.n}`), `group ${group}, step ${step.n}`).toBe(true);
    for (const slot of timetable.slots) if (slot.kind !== "wait") expect(slot.end).toBeLessThanOrEqual(240);
  });

  it("draws each layout with labels that touch nothing", () => {
    for (const of of own.cutPlans) of.plan.layouts.forEach((layout, index) => {
      const figure = drawCutLayout({ of, layout, n: index + 1, letter: (piece) => piece[0]!.toUpperCase(), size: (length) => `${toMillimetres(length)} mm` });
      expect(findCollisions(figure.items)).toEqual([]);
    });
  });
});

describe("a class", () => {
  it("that is too short is told which wait or queue is to blame", () => {
    const { timetable } = classOf({ sessions: [{ ...session, minutes: 120 }] }).own;
    expect(timetable.fits).toBe(false);
    expect(timetable.advice.length).toBeGreaterThan(1);
    expect(timetable.advice[0]).toMatch(/^To blame/);
  });

  it("is none without settings, and none is drawn", () => {
    const plain = stubAlbumDefinition();
    const { model } = buildModel(plain);
    const { plan } = makePlan(plain, model, solver);
    expect(plan.class).toBeNull();
    expect(drawFigures({ definition: plain, model, plan }).classFigures.size).toBe(0);
  });

  it("of 25 with 12 brushes and 5 punches has a brush for two or three people and a punch for five, as printed, and is told of the turns", () => {
    // Bean & Brodhead 1918, "Equipment": for 25 pupils, 12 paste brushes and 5 eyelet punches: one for 2.08 people and one for 5, rounded up.
    const { own } = classOf({ participants: 25, teacherCopy: false, tools: new Map([["holeTool", 5], ["brush", 12]]) });
    const punch = own.room.find((line) => line.tool.startsWith("hollow punch"))!;
    const brush = own.room.find((line) => line.tool === "glue brush")!;
    expect([punch.count, punch.peopleEach, punch.shared]).toEqual([5, 5, true]);
    expect([brush.count, brush.peopleEach, brush.shared]).toEqual([12, 3, true]);
    const queues = own.timetable.findings.filter(({ code }) => code === "queue-outlasts-step").map(({ message }) => message);
    expect(queues.filter((message) => /^5 for 25 people \(hollow punch and mallet\) make 5 turns/u.test(message))).toHaveLength(1);
    expect(queues.filter((message) => /^12 for 25 people \(glue brush\) make 3 turns/u.test(message))).toHaveLength(1);
    // Each group holds as many tools as it has; no more groups have one at the same time than there are tools for.
    const { groups, tools: shared } = own.timetable.activities;
    const perGroup = Math.ceil(25 / groups);
    expect(shared.map(({ id, count }) => [id, count * Math.min(perGroup, id === "brush" ? 12 : 5) <= (id === "brush" ? 12 : 5)])).toEqual([["holeTool", true], ["brush", true]]);
  });
});

describe("a class that sews or screws", () => {
  const planned = (written: string): ClassPlan => {
    const bytes = new TextEncoder().encode(`benchleaf: 1\ntitle: T\nsummary: S\nauthor: {name: A}\nunits: mm\n${written}class: {participants: 4, sessions: [4 h, 4 h]}\n`);
    const { definitions, problems } = readDefinition({ project: "x", file: "content/x/project.yaml", bytes, files: new Set(["project.yaml"]), prose: new Map() });
    expect(problems).toEqual([]);
    const { model } = buildModel(definitions[0]!);
    return makePlan(definitions[0]!, model, solver).plan.class!;
  };
  // Four participants, the teacher and one spare set.
  const sets = 6;
  const pamphlet = "binding: pamphlet\nbook: {sheets: 6, page: {height: 210 mm, width: 148 mm}}\n";

  it("orders thread by the spool, in the lengths that go on a needle, and packs it", () => {
    const own = planned(`${pamphlet}materials: {thread: {pack length: 2 m, price: 3}}\n`);
    const thread = own.lengthPlans.find((each) => each.role === "thread")!;
    expect(thread.request.pieces.map((piece) => piece.count)).toEqual([sets]);
    expect(own.orders.find((line) => line.role === "thread")!.needed).toBe(thread.plan.bars);
    expect(own.kit.filter((line) => line.name.includes("thread"))).toHaveLength(1);
  });

  it("names the thread also when nobody says how much is on a spool", () => {
    const line = planned(pamphlet).orders.find((each) => each.role === "thread")!;
    expect([line.needed, line.note]).toEqual([sets, expect.stringMatching(/^\d+\u00a0mm in all$/)]);
  });

  it("orders the extensions of posts that are too short alone", () => {
    const own = planned("binding: post album\nbook: {leaves: 40, leaf: {height: 250 mm, width: 300 mm}, inserts: 1 mm, posts: {lengths: [10 mm, 20 mm], extensions: [20 mm]}}\n");
    const [posts, extensions] = own.orders.filter((each) => each.role === "posts");
    expect(posts!.needed).toBeGreaterThan(0);
    expect(posts!.needed % sets).toBe(0);
    expect(extensions!.name).toMatch(/^extensions for /);
    expect(extensions!.needed % posts!.needed).toBe(0);
  });
});

describe("money", () => {
  it("with a margin goes up to the next cent", () => {
    expect(withMargin(1000, rational(2n, 5n))).toBe(1400);
    expect(withMargin(1001, rational(1n, 3n))).toBe(1335);
    expect(withMargin(999, rational(0))).toBe(999);
  });
});
