// Figure: the case laid open, what goes on the back, and the text block standing on it, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedLayer, LiftedPiece } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

type Input = DrawingInput<"case-binding">;

/** Figure `lifted-parts`. y runs across the back, 0 at the middle of it. */
export function drawCaseParts(input: Input): FigureDraft {
  return drawLiftedParts(input, [...caseLayers(input), ...backLayers(input), ...blockLayers(input)], "the outside of the case");
}

const mm = toMillimetres;

function caseLayers({ model: { geometry } }: Input): readonly LiftedLayer[] {
  const { covering, boardHeight, boardWidth, stripWidth, joint } = geometry;
  const [high, wide, strip, turnIn] = [mm(boardHeight), mm(boardWidth), mm(stripWidth), mm(covering.turnIn)];
  // The spine edges of the boards.
  const start = strip / 2 + mm(joint);
  const cloth: LiftedPiece = { x: (high - mm(covering.clothHeight)) / 2, y: -mm(covering.clothWidth) / 2, height: mm(covering.clothHeight), width: mm(covering.clothWidth), stuff: "cloth" };
  const { sides, corners } = covering;
  const outer = start + wide + turnIn;
  const bothSides = (piece: (side: 1 | -1) => readonly LiftedPiece[]): readonly LiftedPiece[] => [...piece(-1), ...piece(1)];
  return [
    ...(sides ? [{ part: "side-paper", pieces: bothSides((side) => [{ x: (high - mm(sides.height)) / 2, y: side === 1 ? outer - mm(sides.width) : -outer, height: mm(sides.height), width: mm(sides.width), stuff: "card" }]) }] : []),
    ...(corners ? [{ part: "corner-square", remark: "cut across", pieces: bothSides((side) => [-turnIn, high + turnIn].map((x) => corner(x, side * outer, x < 0 ? 1 : -1, -side, mm(corners.square)))) }] : []),
    { part: "cloth", pieces: [cloth] },
    { part: "boards", pieces: bothSides((side) => [{ x: 0, y: side === 1 ? start : -start - wide, height: high, width: wide, stuff: "board" }]) },
    { part: "spine-strip", pieces: [{ x: 0, y: -strip / 2, height: high, width: strip, stuff: "card" }] },
  ];
}

/** A right-angled triangle with its corner at x, y. */
function corner(x: number, y: number, alongX: number, alongY: number, side: number): LiftedPiece {
  const outline = [{ x, y }, { x: x + alongX * side, y }, { x, y: y + alongY * side }];
  return { x: Math.min(x, x + alongX * side), y: Math.min(y, y + alongY * side), height: side, width: side, stuff: "cloth", outline };
}

/** What is glued on the back, the outermost first. */
function backLayers({ model: { geometry, parts } }: Input): readonly LiftedLayer[] {
  const { square, block, mull, lining, sewing } = geometry;
  const [head, page] = [mm(square), mm(block.pageHeight)];
  const centred = (along: number, across: number, middle = head + page / 2): Pick<LiftedPiece, "x" | "y" | "height" | "width"> => ({ x: middle - along / 2, y: -across / 2, height: along, width: across });
  const band = parts.find(({ id }) => id === "endband");
  return [
    ...(lining ? [{ part: "spine-lining", pieces: [{ ...centred(mm(lining.height), mm(lining.width)), stuff: "paper" as const }] }] : []),
    ...(band ? [{ part: band.id, pieces: [head, head + page].map((at): LiftedPiece => ({ ...centred(mm(band.width), mm(band.height), at), stuff: "cloth" })) }] : []),
    { part: "mull", pieces: [{ ...centred(mm(mull.height), mm(mull.width)), stuff: "paper" }] },
    ...(sewing ? [{ part: "tape", pieces: sewing.tapes.map(({ headSide, tailSide }): LiftedPiece => ({ ...centred(mm(sewing.tapeWidth), mm(sewing.tapeLength), head + (mm(headSide) + mm(tailSide)) / 2), stuff: "card" })) }] : []),
  ];
}

/** Block and endpapers stand on the back beside each other, a little apart. */
function blockLayers({ model: { geometry, parts } }: Input): readonly LiftedLayer[] {
  const { block, square, backThickness, endpaperHeight } = geometry;
  const [thick, page, wide, end] = [mm(backThickness), mm(block.pageHeight), mm(block.pageWidth), mm(endpaperHeight)];
  const part = parts.some(({ id }) => id === "folio") ? "folio" : "leaf";
  const endpaper = (side: 1 | -1): LiftedPiece => ({ x: mm(square) + (page - end) / 2, y: side * (thick / 2 + wide * 0.12), height: end, width: 0.3, stuff: "paper", upwards: wide });
  return [
    { part: "endpaper", remark: "back", pieces: [endpaper(1)] },
    { part, remark: part === "folio" ? `${block.sections} sections on their folds` : "on the glued edge", isBeside: true, pieces: [{ x: mm(square), y: -thick / 2, height: page, width: thick, stuff: "paper", upwards: wide }] },
    { part: "endpaper", remark: "front", isBeside: true, pieces: [endpaper(-1)] },
  ];
}
