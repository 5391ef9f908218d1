// Cut plans for thread, tape, ribbon, strips and roll goods cut to length: from lengths to whole numbers and back.
import { noLength } from "../../units/length.ts";
import { addUp, aimedCosts } from "./aim.ts";
import { leavesOf } from "./cut-tree.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { solveBars } from "./solve-bars.ts";
import { usualEffort } from "./solve-sheets.ts";
import type { SearchEffort } from "./solve-sheets.ts";
import type { BarCutRequest, BarCutResult, BarLayout } from "./types.ts";
import { unitFor } from "./whole-units.ts";

/** The best plan that the effort finds, with the proof of how good it is. */
export function planBars(request: BarCutRequest, solver: LinearSolver, effort: SearchEffort = usualEffort): BarCutResult {
  const { kerf = noLength } = request;
  const unit = unitFor([...request.pieces, ...request.bars].map((each) => each.length).concat(kerf));
  const lost = unit.toWhole(kerf);
  const pieces = request.pieces.map(({ length, count }) => ({ width: unit.toWhole(length) + lost, height: 1, count, mayTurn: false }));
  const lengths = request.bars.map(({ length }) => unit.toWhole(length) + lost);
  const tooLong = pieces.flatMap((piece, index) => (piece.count > 0 && piece.width > Math.max(...lengths) ? [request.pieces[index]!.id] : []));
  if (tooLong.length > 0) return { kind: "too-long", pieces: tooLong };
  const aimed = aimedCosts(request.bars.map((bar) => bar.cost), request.aim === "fewest-bars" ? "count" : "cost");
  const plan = solveBars({ pieces, sheets: request.bars.map((bar, index) => ({ width: lengths[index]!, height: 1, cost: aimed.first[index]!, second: aimed.second[index]!, available: bar.available ?? Infinity })) }, solver, effort);
  if (!plan) return { kind: "too-few-bars" };
  const layouts = plan.uses.map(({ pattern, times }): BarLayout => {
    const length = lengths[pattern.sheet]!;
    const placed = leavesOf(pattern.tree, length, 1).flatMap(({ leaf, x }) => (leaf.kind === "piece" ? [{ piece: leaf.piece, x, end: x + pieces[leaf.piece]!.width }] : []));
    const end = Math.max(0, ...placed.map((each) => each.end));
    return {
      bar: request.bars[pattern.sheet]!.id,
      times,
      pieces: placed.map((each) => ({ piece: request.pieces[each.piece]!.id, from: unit.toLength(each.x), to: unit.toLength(each.end - lost) })),
      rest: unit.toLength(Math.max(0, length - lost - end)),
    };
  });
  const bars = addUp(plan.uses, () => 1);
  const cost = addUp(plan.uses, (bar) => request.bars[bar]!.cost);
  const atLeast = plan.bound * aimed.unit;
  const counts = request.aim === "fewest-bars" ? "bars" : "cost";
  return { kind: "plan", plan: { layouts, bars, cost, bound: { counts, atLeast, mostAbove: (counts === "bars" ? bars : cost) - atLeast } } };
}
