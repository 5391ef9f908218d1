// Cut plans for sheets: from lengths to whole numbers, through the search, and back to layouts with their cuts.
import type { Length } from "../../units/length.ts";
import { noLength } from "../../units/length.ts";
import { addUp, aimedCosts } from "./aim.ts";
import { stepsFor } from "./cut-steps.ts";
import { leavesOf, patternOf } from "./cut-tree.ts";
import type { CutTree, Pattern } from "./cut-tree.ts";
import type { LinearSolver } from "./linear-solver.ts";
import { fewestSheetsBound } from "./plain-bounds.ts";
import { lyingOn } from "./price-sheet.ts";
import { meansForSheets } from "./search-means.ts";
import type { SearchMeans } from "./search-means.ts";
import type { PatternUse, SheetProblem, WholePiece } from "./sheet-problem.ts";
import { solveSheets, usualEffort } from "./solve-sheets.ts";
import type { SearchEffort } from "./solve-sheets.ts";
import { largestRest, tidied } from "./tidy-tree.ts";
import type { CutStep, Offcut, PlacedPiece, SheetCutRequest, SheetCutResult, SheetLayout } from "./types.ts";
import { unitFor } from "./whole-units.ts";
import type { WholeUnit } from "./whole-units.ts";
import { meterFor } from "./work-meter.ts";

/** Everything by which whole numbers are turned back. */
interface Ground {
  readonly request: SheetCutRequest;
  readonly problem: SheetProblem;
  readonly unit: WholeUnit;
  readonly kerf: number;
  readonly trim: number;
}

/** Layouts of more pieces than this are kept as they were found. */
const mostPiecesLaidAnew = 40;

/** The best plan that the effort finds, with the proof of how good it is. */
export function planSheets(request: SheetCutRequest, solver: LinearSolver, effort: SearchEffort = usualEffort): SheetCutResult {
  const ground = groundOf(request);
  const { problem } = ground;
  const tooLarge = problem.pieces.flatMap((piece, index) => (piece.count > 0 && problem.sheets.every((sheet) => lyingOn([piece], sheet.width, sheet.height).length === 0) ? [request.pieces[index]!.id] : []));
  if (tooLarge.length > 0) return { kind: "too-large", pieces: tooLarge };
  const meter = meterFor(effort.work);
  const means = meansForSheets(problem, effort.table, meter);
  const aimed = aimedCosts(request.sheets.map((sheet) => sheet.cost), request.aim === "fewest-sheets" ? "count" : "cost");
  const plan = solveSheets({ ...problem, sheets: problem.sheets.map((sheet, index) => ({ ...sheet, cost: aimed.first[index]!, second: aimed.second[index]! })) }, solver, effort, meter, means);
  if (!plan) return { kind: "too-few-sheets" };
  const uses = mergedUses(plan.uses.map((use) => ({ ...use, pattern: withLargeOffcuts(use.pattern, ground, means) })));
  const sheets = addUp(uses, () => 1);
  const cost = addUp(uses, (sheet) => request.sheets[sheet]!.cost);
  const atLeast = plan.bound * aimed.unit;
  const counts = request.aim === "fewest-sheets" ? "sheets" : "cost";
  return {
    kind: "plan",
    plan: { layouts: uses.map((use) => layoutOf(use, ground)), sheets, cost, bound: { counts, atLeast, mostAbove: (counts === "sheets" ? sheets : cost) - atLeast } },
  };
}

/** How many sheets any plan needs, whatever it costs: of all sizes together, and of each size for the pieces that fit on no other. */
export function leastSheets(request: SheetCutRequest): { readonly together: number; readonly ofSize: readonly number[] } {
  const { problem } = groundOf(request);
  const fits = (piece: WholePiece, sheet: SheetProblem["sheets"][number]): boolean => lyingOn([piece], sheet.width, sheet.height).length > 0;
  const ofSize = problem.sheets.map((sheet) => {
    const pieces = problem.pieces.filter((piece) => piece.count > 0 && problem.sheets.every((other) => other === sheet || !fits(piece, other)));
    return pieces.length === 0 ? 0 : fewestSheetsBound({ pieces, sheets: [sheet] });
  });
  return { together: Math.max(fewestSheetsBound(problem), ofSize.reduce((sum, each) => sum + each, 0)), ofSize };
}

function groundOf(request: SheetCutRequest): Ground {
  const { kerf = noLength, trim = noLength } = request;
  const unit = unitFor([...request.pieces, ...request.sheets].flatMap(({ width, height }) => [width, height]).concat(kerf, trim));
  const lost = unit.toWhole(kerf);
  // The saw's width is part of what is trimmed.
  const trimmed = trim.n === 0n ? 0 : Math.max(unit.toWhole(trim), lost);
  const used = (edge: Length): number => unit.toWhole(edge) - 2 * trimmed + lost;
  return {
    request, unit, kerf: lost, trim: trimmed,
    problem: {
      pieces: request.pieces.map(({ width, height, count, mayTurn }) => ({ width: unit.toWhole(width) + lost, height: unit.toWhole(height) + lost, count, mayTurn })),
      sheets: request.sheets.map(({ width, height, available }) => ({ width: used(width), height: used(height), cost: 1, second: 1, available: available ?? Infinity })),
    },
  };
}

/** The same pieces on the same sheet, laid so that the largest leftover is as large as can be found. */
function withLargeOffcuts(pattern: Pattern, { problem }: Ground, means: SearchMeans): Pattern {
  const { width, height } = problem.sheets[pattern.sheet]!;
  const count = pattern.counts.reduce((sum, each) => sum + each, 0);
  const wanted = problem.pieces.map((piece, index) => ({ ...piece, piece: index, count: pattern.counts[index]! }));
  const others = count > mostPiecesLaidAnew ? [] : means.attempts.flatMap((attempt) => attempt(pattern.sheet, wanted, 10, 1) ?? []);
  const trees = [pattern.tree, ...others].map((tree) => fullyTidied(tree, problem.pieces, width, height));
  const tree = trees.reduce((a, b) => (largestRest(b, width, height) > largestRest(a, width, height) ? b : a));
  return patternOf(pattern.sheet, tree, problem.pieces.length);
}

/** Tidies until nothing moves any more; each pass can give the next one something to join. */
function fullyTidied(tree: CutTree, pieces: readonly WholePiece[], width: number, height: number): CutTree {
  const once = tidied(tree, pieces, width, height);
  const twice = tidied(once, pieces, width, height);
  return largestRest(twice, width, height) > largestRest(once, width, height) ? fullyTidied(twice, pieces, width, height) : once;
}

/** Equal patterns become one; those cut most often come first. */
function mergedUses(uses: readonly PatternUse[]): readonly PatternUse[] {
  const merged = new Map<string, PatternUse>();
  for (const use of uses) {
    const key = `${use.pattern.sheet}:${use.pattern.counts.join(",")}`;
    const known = merged.get(key);
    merged.set(key, known ? { ...known, times: known.times + use.times } : use);
  }
  return [...merged.values()].sort((a, b) => b.times - a.times || b.pattern.counts.reduce((sum, each) => sum + each, 0) - a.pattern.counts.reduce((sum, each) => sum + each, 0));
}

function layoutOf({ pattern, times }: PatternUse, ground: Ground): SheetLayout {
  const { request, problem, unit, kerf, trim } = ground;
  const { width, height } = problem.sheets[pattern.sheet]!;
  const leaves = leavesOf(pattern.tree, width, height);
  const pieces = leaves.flatMap(({ leaf, x, y, ...size }): readonly PlacedPiece[] => (leaf.kind === "piece"
    ? [{ piece: request.pieces[leaf.piece]!.id, x: unit.toLength(x + trim), y: unit.toLength(y + trim), width: unit.toLength(size.width - kerf), height: unit.toLength(size.height - kerf), turned: leaf.turned }]
    : []));
  const offcuts = leaves.filter(({ leaf, ...size }) => leaf.kind === "rest" && size.width > kerf && size.height > kerf).sort((a, b) => b.width * b.height - a.width * a.height)
    .map(({ x, y, ...size }): Offcut => ({ x: unit.toLength(x + trim), y: unit.toLength(y + trim), width: unit.toLength(size.width - kerf), height: unit.toLength(size.height - kerf), holds: problem.pieces.flatMap((piece, index) => (lyingOn([piece], size.width, size.height).length > 0 ? [request.pieces[index]!.id] : [])) }));
  return { sheet: request.sheets[pattern.sheet]!.id, times, pieces, cuts: allSteps(pattern.tree, pattern.sheet, ground), offcuts };
}

/** The edges first, where they are trimmed, then the tree. */
function allSteps(tree: CutTree, sheet: number, { request, problem, unit, kerf, trim }: Ground): readonly CutStep[] {
  const { width, height } = problem.sheets[sheet]!;
  const steps = { pieces: request.pieces, toLength: unit.toLength, kerf };
  if (trim === 0) return stepsFor(tree, width, height, "sheet", steps, 1);
  const trimStep = (number: number, part: string, measured: CutStep["measured"], size: number, use: CutStep["parts"][number]["use"]): CutStep => ({
    number, part, measured,
    marks: [trim - kerf, trim + size - kerf].map(unit.toLength),
    parts: [{ from: unit.toLength(trim), to: unit.toLength(trim + size - kerf), use }],
  });
  const whole = tree.kind === "piece" ? { kind: "piece", piece: request.pieces[tree.piece]!.id } as const : { kind: "part", part: "2a" } as const;
  return [trimStep(1, "sheet", "from-left", width, { kind: "part", part: "1a" }), trimStep(2, "1a", "from-below", height, whole), ...stepsFor(tree, width, height, "2a", steps, 3)];
}
