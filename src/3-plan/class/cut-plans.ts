// The cut plans of a class: every sheet material and every material sold by length, for all sets together.
import type { Definition, Material } from "../../1-definition/types.ts";
import { piecesToCut } from "../../2-model/sewing/thread.ts";
import type { Thread } from "../../2-model/sewing/types.ts";
import type { Model, Part } from "../../2-model/types.ts";
import { isLess } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { checkBarPlan, checkSheetPlan } from "../cutting/check-cut-plan.ts";
import type { LinearSolver } from "../cutting/linear-solver.ts";
import { planBars } from "../cutting/plan-bars.ts";
import { leastSheets, planSheets } from "../cutting/plan-sheets.ts";
import type { BarPiece, SheetCutPlan, SheetCutRequest, StockSheet } from "../cutting/types.ts";
import type { Wording } from "../wording.ts";
import { centsPerPiece } from "./money.ts";
import type { CutPlanOfMaterial, LengthPlanOfMaterial } from "./types.ts";

/** All plans, and what could not be planned. */
export interface CutPlans {
  readonly sheets: readonly CutPlanOfMaterial[];
  readonly lengths: readonly LengthPlanOfMaterial[];
  readonly unplanned: readonly { readonly material: string; readonly reason: string }[];
}

/** A plan, or the reason why there is none. */
type Planned<Of> = { readonly plan: Of } | { readonly reason: string };

/** Plans every material of the model for `sets` books. Materials without sheet sizes or pack lengths are named as unplanned. */
export function planCuts(definition: Definition, model: Model, sets: number, solver: LinearSolver, say: Wording): CutPlans {
  const sheets: CutPlanOfMaterial[] = [];
  const lengths: LengthPlanOfMaterial[] = [];
  const unplanned: { material: string; reason: string }[] = [];
  const keep = <Of>(material: Material, planned: Planned<Of>, kept: Of[]): void => {
    if ("plan" in planned) kept.push(planned.plan);
    else unplanned.push({ material: material.name, reason: planned.reason });
  };
  for (const role of new Set(model.parts.map((part) => part.material))) {
    const material = definition.materials[role]!;
    const parts = model.parts.filter((part) => part.material === role && !part.readyMade);
    if (parts.length === 0) continue;
    if (material.packLength) keep(material, planLengths(material, material.packLength, piecesOf(parts, sets), solver, say), lengths);
    else if (material.sheets.length > 0) keep(material, planSheetsOf(material, parts, sets, solver), sheets);
    else unplanned.push({ material: material.name, reason: "no sheet size and no pack length is given" });
  }
  const thread = definition.materials["thread"];
  if (model.thread && thread?.packLength) keep(thread, planLengths(thread, thread.packLength, threadPieces(model.thread, sets), solver, say), lengths);
  return { sheets, lengths, unplanned };
}

function piecesOf(parts: readonly Part[], sets: number): readonly BarPiece[] {
  return parts.map((part) => ({ id: part.id, length: part.height, count: part.count * sets }));
}

/** The lengths that go on a needle, for all books. */
function threadPieces(thread: Thread, sets: number): readonly BarPiece[] {
  return piecesToCut(thread).map(({ length }, index) => ({ id: `thread ${index + 1}`, length, count: sets }));
}

function planSheetsOf(material: Material, parts: readonly Part[], sets: number, solver: LinearSolver): Planned<CutPlanOfMaterial> {
  const request = requestFor(material, parts, sets);
  const result = planSheets(request, solver);
  if (result.kind === "too-large") return { reason: `${parts.filter((part) => result.pieces.includes(part.id)).map((part) => part.name).join(", ")} fits no sheet` };
  if (result.kind === "too-few-sheets") return { reason: "no plan was found on the sheets that there are" };
  assertSound(checkSheetPlan(request, result.plan), material);
  return { plan: { role: material.role, material: material.name, verdict: verdictOf(result.plan.sheets, "sheet", result.plan.bound), grainNote: grainNote(material, parts), request, plan: result.plan, leastSheets: leastSheetsOf(request, result.plan) } };
}

/** Where sheets are what is kept low the search has proven more than is known beforehand. */
function leastSheetsOf(request: SheetCutRequest, { bound }: SheetCutPlan): CutPlanOfMaterial["leastSheets"] {
  const { together, ofSize } = leastSheets(request);
  const proven = bound.counts === "sheets" ? Math.max(together, bound.atLeast) : together;
  return { together: proven, ofSize: ofSize.length === 1 ? [proven] : ofSize };
}

/** Every plan is looked through by the independent checker before anybody buys by it. */
function assertSound(faults: readonly string[], material: Material): void {
  if (faults.length > 0) throw new Error(`internal error: the cut plan of ${material.name} is wrong: ${faults[0]}`);
}

function verdictOf(count: number, noun: string, bound: { readonly counts: string; readonly mostAbove: number }): string {
  const counted = `${count} ${noun}${count === 1 ? "" : "s"}`;
  if (bound.counts === "cost") return bound.mostAbove === 0 ? `${counted}: proven cheapest` : `${counted}: within ${bound.mostAbove} of the cheapest`;
  return bound.mostAbove === 0 ? `${counted}: proven minimum` : `${counted}: at most ${bound.mostAbove} above the minimum`;
}

/** A piece keeps its grain: it may turn only where the material or the part has none. */
function requestFor(material: Material, parts: readonly Part[], sets: number): SheetCutRequest {
  const priced = material.sheets.every((sheet) => sheet.price !== null);
  return {
    pieces: parts.map((part) => ({ id: part.id, width: part.width, height: part.height, count: part.count * sets, mayTurn: material.grain === "none" || part.grain === "none" })),
    sheets: material.sheets.map((sheet, index): StockSheet => ({ id: `sheet-${index + 1}`, ...laid(material, sheet), cost: priced ? centsPerPiece(sheet.price!, sheet.pack) : 0, available: null })),
    aim: priced && material.sheets.length > 1 ? "lowest-cost" : "fewest-sheets",
  };
}

/** The sheet laid so that its grain runs up, along the height of the parts; unknown grain is taken as long, and said. */
function laid(material: Material, sheet: { readonly height: Length; readonly width: Length }): { readonly height: Length; readonly width: Length } {
  if (material.grain === "none") return { height: sheet.height, width: sheet.width };
  const [long, short] = isLess(sheet.height, sheet.width) ? [sheet.width, sheet.height] : [sheet.height, sheet.width];
  return material.grain === "short" ? { height: short, width: long } : { height: long, width: short };
}

function grainNote(material: Material, parts: readonly Part[]): string {
  if (material.grain === "none" || parts.every((part) => part.grain === "none")) return "Pieces may be turned: nothing here has a grain.";
  const along = material.grain === "short" ? "short" : "long";
  return material.grain === "unknown"
    ? "The grain of this material is not given. The plan takes it to run along the long side: find it before you buy."
    : `Grain runs up the drawing, along the ${along} side of the sheet; no piece is turned.`;
}

function planLengths(material: Material, packLength: Length, pieces: readonly BarPiece[], solver: LinearSolver, say: Wording): Planned<LengthPlanOfMaterial> {
  const request = {
    pieces,
    bars: [{ id: "roll", length: packLength, cost: material.price ? centsPerPiece(material.price, 1) : 0, available: null }],
    aim: "fewest-bars",
  } as const;
  const result = planBars(request, solver);
  if (result.kind === "too-long") return { reason: `a piece is longer than the ${say.size(packLength)} on a roll` };
  if (result.kind === "too-few-bars") return { reason: "there are too few rolls" };
  assertSound(checkBarPlan(request, result.plan), material);
  return { plan: { role: material.role, material: material.name, verdict: verdictOf(result.plan.bars, "length", result.plan.bound), request, plan: result.plan } };
}
