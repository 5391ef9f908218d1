// How many pieces a parent sheet gives in rows and columns, and which way they lie so that the grain is kept.
import type { Material, SheetGrain } from "../../1-definition/types.ts";
import { isLess, ratioOf } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { compareRational, divideRational, floorRational, multiplyRational, rational } from "../../units/rational.ts";
import type { Ledger } from "../ledger.ts";
import type { Part, PartGrain } from "../types.ts";

/** A piece as cut; grain `none` may lie either way. */
export interface Piece {
  readonly height: Length;
  readonly width: Length;
  readonly grain: PartGrain;
}

/** A sheet as sold. */
export interface ParentSheet {
  readonly height: Length;
  readonly width: Length;
}

/** Pieces out of one sheet, all lying the same way: `rows` along the sheet's height, `columns` along its width. */
export interface SheetYield {
  readonly sheet: ParentSheet;
  readonly rows: number;
  readonly columns: number;
  /** rows × columns; 0 when the piece does not fit with its grain. */
  readonly perSheet: number;
  /** Whether the pieces lie with their height along the sheet's width. */
  readonly turned: boolean;
  /** Whether turning was free to choose; false where the grain decides. */
  readonly mayTurn: boolean;
}

/** Whether the grain of a sheet runs along its height; null when it has none or nobody knows. */
export function grainRunsAlongHeight(sheet: ParentSheet, grain: SheetGrain): boolean | null {
  if (grain === "none" || grain === "unknown") return null;
  return (grain === "long") === !isLess(sheet.height, sheet.width);
}

/**
 * The yield of one sheet. A piece with grain may not turn where the sheet's grain is known. Where it is not, the way that gives fewer pieces
 * counts, so that what is bought is enough whichever way the grain turns out; a way that gives none is left out, because such a sheet would not be bought.
 */
export function yieldOf(piece: Piece, sheet: ParentSheet, grain: SheetGrain): SheetYield {
  const way = (turned: boolean, mayTurn: boolean): SheetYield => {
    const rows = Number(floorRational(ratioOf(sheet.height, turned ? piece.width : piece.height)));
    const columns = Number(floorRational(ratioOf(sheet.width, turned ? piece.height : piece.width)));
    return { sheet, rows, columns, perSheet: rows * columns, turned, mayTurn };
  };
  const along = grainRunsAlongHeight(sheet, grain);
  if (piece.grain !== "none" && along !== null) return way(along !== (piece.grain === "height"), false);
  const isFree = piece.grain === "none" || grain === "none";
  const [fewer, more] = [way(false, isFree), way(true, isFree)].sort((a, b) => a.perSheet - b.perSheet) as [SheetYield, SheetYield];
  return isFree || fewer.perSheet === 0 ? more : fewer;
}

/** The sheet among those of a material that wastes least, with its yield; null when none is named or none gives a piece. */
export function bestYield(piece: Piece, material: Pick<Material, "grain" | "sheets">): SheetYield | null {
  const yields = material.sheets.map((sheet) => yieldOf(piece, sheet, material.grain)).filter(({ perSheet }) => perSheet > 0);
  const areaPerPiece = ({ sheet, perSheet }: SheetYield) => divideRational(multiplyRational(sheet.height, sheet.width), rational(perSheet));
  return [...yields].sort((a, b) => compareRational(areaPerPiece(a), areaPerPiece(b)))[0] ?? null;
}

/** Enters "folios per sheet" and "sheets of text paper" for a part; null when the author names no sheet that gives one. */
export function giveSheetYield(part: Part, material: Pick<Material, "grain" | "sheets">, ledger: Ledger): SheetYield | null {
  const best = bestYield(part, material);
  if (!best) return null;
  ledger.give(`${part.name}s per sheet`, best.perSheet, "computed",
    { meaning: `${best.rows} along the sheet's height × ${best.columns} along its width${best.mayTurn ? "" : ", grain along the spine"}`, source: "geometry" });
  ledger.give(`sheets of ${part.material}`, Math.ceil(part.count / best.perSheet), "computed", { meaning: `for ${part.count} ${part.name}s`, source: "geometry" });
  return best;
}
