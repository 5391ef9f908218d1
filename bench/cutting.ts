// Scores the cut plans: ours, what is published, what general packers make of the same orders, and how long it takes.
import { loadLinearSolver } from "../src/build/linear-solver.ts";
import { checkBarPlan, checkSheetPlan } from "../src/3-plan/cutting/check-cut-plan.ts";
import type { LinearSolver } from "../src/3-plan/cutting/linear-solver.ts";
import { planBars } from "../src/3-plan/cutting/plan-bars.ts";
import { planSheets } from "../src/3-plan/cutting/plan-sheets.ts";
import { exactTable, lyingOn } from "../src/3-plan/cutting/price-sheet.ts";
import type { BarCutRequest, SheetCutRequest } from "../src/3-plan/cutting/types.ts";
import { mm } from "../src/units/length.ts";
import { packerNames, runPacker } from "./general-packers.ts";
import type { PackedPiece } from "./general-packers.ts";
import { readSet } from "./published-sets.ts";
import type { Instance } from "./published-sets.ts";

/** How one instance went. */
interface Score {
  readonly id: string;
  readonly value: number;
  readonly bound: number;
  readonly published: number | null;
  readonly seconds: number;
  readonly faults: readonly string[];
  readonly packers: readonly string[];
  /** The best of the general packers whose plans can be cut. */
  readonly bestPacker: number;
}

/** How a set is read: whether pieces may be turned, and which published figures stand beside ours, the first one compared. */
interface SheetSet {
  readonly mayTurn: (item: readonly number[]) => boolean;
  readonly published: readonly string[];
  readonly aim?: SheetCutRequest["aim"];
}

/** Orders of more pieces than this are not given to the general packers: some of them would take minutes. */
const mostPacked = 400;

const never = (): boolean => false;
const always = (): boolean => true;

const sheetSets: Readonly<Record<string, SheetSet>> = {
  "workshop": { mayTurn: (item) => item[3] === 0, published: [] },
  "gcutd_csp": { mayTurn: never, published: ["O_3hom"] },
  "classic_csp": { mayTurn: never, published: ["O_3homV"] },
  "imahori_csp": { mayTurn: never, published: ["O_3hom"] },
  "atp_csp": { mayTurn: never, published: ["O_3homV"] },
  "bwmv": { mayTurn: never, published: ["O_free", "O_3st"] },
  "bwmv-turned": { mayTurn: always, published: ["R_free", "R_3st"] },
  "gcutd_vsbp": { mayTurn: never, published: ["O_2st"], aim: "lowest-cost" },
  "gcutd_vsbp-turned": { mayTurn: always, published: ["R_2st"], aim: "lowest-cost" },
};

/** Runs all sets, or those named; `bwmv/10` takes every tenth instance of a set. */
export async function benchCutting(chosen: readonly string[]): Promise<void> {
  const solver = await loadLinearSolver();
  for (const choice of chosen.length > 0 ? chosen : [...Object.keys(sheetSets), "cut1d", "sheet_knap"]) {
    const [name = "", every = "1"] = choice.split("/");
    const instances = readSet(name.replace(/-turned$/, ""), Number(every));
    if (!instances) continue;
    if (name === "sheet_knap") scorePricing(instances);
    else if (name === "cut1d") summarise(name, instances.map((each) => scored(each.id, () => scoreBars(each, solver))));
    else if (sheetSets[name]) scoreSheets(name, sheetSets[name], instances, solver);
    else console.log(`${name}: no such set`);
  }
}

function scored(id: string, run: () => Omit<Score, "id" | "seconds">): Score {
  const start = process.cpuUsage();
  const result = run();
  const used = process.cpuUsage(start);
  const score = { id, ...result, seconds: (used.user + used.system) / 1e6 };
  const state = score.value === score.bound ? "proven" : `at most ${score.value - score.bound} above the minimum`;
  console.log(`  ${id}: ${score.value}, ${state}; published ${score.published ?? "–"}; ${score.packers.join("")}${score.seconds.toFixed(1)} s${score.faults.map((fault) => `; FAULT: ${fault}`).join("")}`);
  return score;
}

function scoreSheets(name: string, set: SheetSet, instances: readonly Instance[], solver: LinearSolver): void {
  const scores = instances.map((instance) => scored(instance.id, () => scoreInstance(instance, set, solver)));
  summarise(name, scores);
  for (const figure of set.published) console.log(`  against ${figure}: ${comparison(scores, instances.map((instance) => instance.best[figure] ?? null))}`);
}

function scoreInstance(instance: Instance, set: SheetSet, solver: LinearSolver): Omit<Score, "id" | "seconds"> {
  const request: SheetCutRequest = {
    pieces: instance.items.map((item, index) => ({ id: `${index}`, width: mm(item[0]!), height: mm(item[1]!), count: item[2]!, mayTurn: set.mayTurn(item) })),
    sheets: instance.sheets!.map(({ w, h, cost = 1 }, index) => ({ id: `${index}`, width: mm(w), height: mm(h), cost, available: null })),
    aim: set.aim ?? "fewest-sheets",
  };
  const result = planSheets(request, solver);
  if (result.kind !== "plan") return { value: Infinity, bound: 0, published: null, faults: [result.kind], packers: [], bestPacker: Infinity };
  const { plan } = result;
  const value = plan.bound.counts === "sheets" ? plan.sheets : plan.cost;
  const beside = instance.sheets!.length === 1 ? besides(instance, set) : [];
  const bestPacker = Math.min(Infinity, ...beside.flatMap(([, sheets]) => (typeof sheets === "object" ? [sheets.sheets] : [])));
  return {
    value, bound: plan.bound.atLeast, published: instance.best[set.published[0] ?? ""] ?? null, bestPacker,
    faults: [...checkSheetPlan(request, plan), ...(bestPacker < plan.bound.atLeast ? ["a general packer is below the bound"] : []), ...(bestPacker < value ? ["a general packer needs fewer sheets"] : [])],
    packers: beside.map(([packer, sheets]) => `${packer} ${typeof sheets === "object" ? sheets.sheets : sheets}; `),
  };
}

function besides(instance: Instance, set: SheetSet): readonly (readonly [string, ReturnType<typeof runPacker>])[] {
  const pieces = instance.items.flatMap((item): readonly PackedPiece[] => Array.from({ length: item[2]! }, () => ({ width: item[0]!, height: item[1]!, mayTurn: set.mayTurn(item) })));
  const { w, h } = instance.sheets![0]!;
  return pieces.length > mostPacked ? [] : packerNames.map((packer) => [packer, runPacker(packer, pieces, w, h)] as const);
}

function scoreBars(instance: Instance, solver: LinearSolver): Omit<Score, "id" | "seconds"> {
  const request: BarCutRequest = {
    pieces: instance.items.map(([length, count], index) => ({ id: `${index}`, length: mm(length!), count: count! })),
    bars: [{ id: "bar", length: mm(instance.cap!), cost: 1, available: null }],
    aim: "fewest-bars",
  };
  const result = planBars(request, solver);
  if (result.kind !== "plan") return { value: Infinity, bound: 0, published: null, faults: [result.kind], packers: [], bestPacker: Infinity };
  const { bars, bound } = result.plan;
  const faults = [...checkBarPlan(request, result.plan), ...(bars < instance.best["lb"]! || bound.atLeast > instance.best["ub"]! ? ["a published bound is broken"] : [])];
  return { value: bars, bound: bound.atLeast, published: instance.best["ub"]!, faults, packers: [], bestPacker: Infinity };
}

function summarise(name: string, scores: readonly Score[]): void {
  const sum = (of: (score: Score) => number): number => scores.reduce((total, score) => total + of(score), 0);
  const gaps = scores.map((score) => score.value - score.bound);
  console.log(`${name}: ${scores.length} instances, total ${sum((score) => score.value)}, bound ${sum((score) => score.bound)}, proven ${gaps.filter((gap) => gap === 0).length}, largest gap ${Math.max(...gaps)}, faults ${sum((score) => score.faults.length)}, ${sum((score) => score.seconds).toFixed(0)} s of computing`);
  console.log(`  against published: ${comparison(scores, scores.map((score) => score.published))}`);
  const beside = scores.filter((score) => score.bestPacker < Infinity);
  if (beside.length > 0) console.log(`  against the best general packer that can be cut: ${comparison(beside, beside.map((score) => score.bestPacker))}`);
}

function comparison(scores: readonly Score[], published: readonly (number | null)[]): string {
  const pairs = scores.flatMap((score, index) => (published[index] == null ? [] : [{ ours: score.value, theirs: published[index] }]));
  if (pairs.length === 0) return "nothing published";
  const [ours, theirs] = [pairs.reduce((total, pair) => total + pair.ours, 0), pairs.reduce((total, pair) => total + pair.theirs, 0)];
  return `ours ${ours}, theirs ${theirs}, ${((ours / theirs - 1) * 100).toFixed(2)} %; better on ${pairs.filter((pair) => pair.ours < pair.theirs).length}, worse on ${pairs.filter((pair) => pair.ours > pair.theirs).length}`;
}

/** The pricing table alone: equal to the published optimum where each piece may be used at will. */
function scorePricing(instances: readonly Instance[]): void {
  const priced = instances.filter((instance) => instance.best["O_unlimited_guillotine"] !== undefined);
  const wrong = priced.filter((instance) => {
    const { w, h } = instance.sheets![0]!;
    const table = exactTable(w, h, lyingOn(instance.items.map((item) => ({ width: item[0]!, height: item[1]!, mayTurn: false })), w, h), 1e10);
    const value = table?.price(instance.items.map((item) => item[3]!)).value;
    console.log(`  ${instance.id}: ${value}; published ${instance.best["O_unlimited_guillotine"]}`);
    return value !== instance.best["O_unlimited_guillotine"];
  });
  console.log(`sheet_knap: ${priced.length} optima with unlimited copies are published, ${priced.length - wrong.length} found`);
}
