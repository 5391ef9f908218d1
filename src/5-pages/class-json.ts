// A class in the published shape of plan.json: who comes, cut plans and orders, nothing computed anew.
import type { ClassPlan, CutPlanOfMaterial, LengthPlanOfMaterial, OrderLine } from "../3-plan/class/types.ts";
import type { MaterialNeed } from "../3-plan/types.ts";
import type { BarCutPlan, CutStep, SheetCutPlan, SheetLayout } from "../3-plan/cutting/types.ts";
import type { Length } from "../units/length.ts";
import type { PlanJson } from "./plan-schema.ts";

type Cutting = PlanJson["cutting"][number];
type PutLength = (value: Length) => { mm: number; exact: string };

/** The cut plans of sheet materials, one entry for each size of sheet that is cut. */
export function cuttingJson(plans: readonly CutPlanOfMaterial[], length: PutLength): PlanJson["cutting"] {
  return plans.flatMap(({ material, role, request, plan, leastSheets }) => request.sheets.flatMap((stock, size): readonly Cutting[] => {
    const layouts = plan.layouts.filter((layout) => layout.sheet === stock.id);
    if (layouts.length === 0) return [];
    return [{
      material, role, stock: { height: length(stock.height), width: length(stock.width) },
      sheets: layouts.reduce((sum, layout) => sum + layout.times, 0),
      lower_bound: leastSheets.ofSize[size]!,
      bound: boundJson(plan.bound),
      sheets_of_all_sizes: { planned: plan.sheets, at_least: leastSheets.together },
      layouts: layouts.map((layout) => layoutJson(layout, length)),
    }];
  }));
}

function boundJson({ counts, atLeast, mostAbove }: SheetCutPlan["bound"] | BarCutPlan["bound"]): Cutting["bound"] {
  return { counts: counts === "bars" ? "lengths" : counts, at_least: atLeast, most_above: mostAbove };
}

function layoutJson(layout: SheetLayout, length: PutLength): Cutting["layouts"][number] {
  return {
    count: layout.times,
    pieces: layout.pieces.map(({ piece, x, y, width, height, turned }) => ({ part: piece, x: length(x), y: length(y), width: length(width), height: length(height), turned })),
    cuts: layout.cuts.map((step) => cutJson(step, length)),
    offcuts: layout.offcuts.map(({ x, y, width, height, holds }) => ({ x: length(x), y: length(y), width: length(width), height: length(height), holds: [...holds] })),
  };
}

function cutJson({ number, part, measured, marks, parts }: CutStep, length: PutLength): Cutting["layouts"][number]["cuts"][number] {
  return {
    n: number, part, from: measured === "from-left" ? "left edge" : "lower edge", marks: marks.map(length),
    gives: parts.map(({ from, to, use }) => ({ from: length(from), to: length(to), is: use.kind, name: use.kind === "piece" ? use.piece : use.kind === "part" ? use.part : null })),
  };
}

/** The cut plans of what is sold by length. */
export function lengthCuttingJson(plans: readonly LengthPlanOfMaterial[], length: PutLength): PlanJson["length_cutting"] {
  return plans.map(({ material, role, request, plan }) => ({
    material, role, stock: { length: length(request.bars[0]!.length) },
    lengths: plan.bars, lower_bound: plan.bound.atLeast, bound: boundJson(plan.bound),
    layouts: plan.layouts.map(({ times, pieces, rest }) => ({
      count: times, pieces: pieces.map(({ piece, from, to }) => ({ part: piece, from: length(from), to: length(to) })), rest: length(rest),
    })),
  }));
}

/** Who makes a book, and what is ordered. */
export function classJson(own: ClassPlan, currency: string, length: PutLength, numberOf: (step: string) => number): NonNullable<PlanJson["class"]> {
  return {
    participants: own.participants, makers: own.makers, sets: own.sets, currency,
    orders: own.orders.filter((line) => line.isCounted).map((line) => ({
      role: line.role, material: line.name, unit: line.unit, needed: line.needed, in_hand: line.inHand, packs: line.packs, pack_size: line.packSize,
      pack_price: inCurrency(line.packPrice), cost: inCurrency(line.price), over: line.over, note: line.note,
    })),
    adhesives: own.adhesives.map(({ name, steps, brushed, taped }) => ({
      adhesive: name, steps: steps.map(numberOf),
      brushed: brushed && { square_centimetres: brushed.squareCentimetres, grams_per_square_metre: brushed.gramsPerSquareMetre, grams: brushed.grams },
      taped: taped && length(taped),
    })),
    not_planned: own.unplanned.map(({ material, reason }) => ({ material, reason })),
  };
}

/** What a material's orders come to: for the class, for one of its sets, in packs and in money; nulls without a class or where nothing is counted. */
export function orderedJson({ role, name }: Pick<MaterialNeed, "role" | "name">, own: ClassPlan | null): Pick<PlanJson["materials"][number], "unit" | "per_book" | "per_class" | "packs" | "cost"> {
  const lines = own?.orders.filter((line) => line.isCounted && line.role === role && (role !== "adhesive" || line.name === name)) ?? [];
  if (!own || lines.length === 0) return { unit: null, per_book: null, per_class: null, packs: null, cost: null };
  const needed = sumOf(lines, (line) => line.needed);
  return {
    unit: [...new Set(lines.map((line) => line.unit))].join("; "),
    per_book: Number((needed / own.sets).toFixed(6)), per_class: needed,
    packs: sumOf(lines, (line) => line.packs),
    cost: lines.some((line) => line.price === null) ? null : inCurrency(sumOf(lines, (line) => line.price!)),
  };
}

function sumOf(lines: readonly OrderLine[], amount: (line: OrderLine) => number): number {
  return lines.reduce((sum, line) => sum + amount(line), 0);
}

function inCurrency(cents: number | null): number | null {
  return cents === null ? null : Number((cents / 100).toFixed(2));
}
