// What general packers make of the same orders; a sheet that cannot be cut from edge to edge makes a plan a failure.
import { pack2D } from "binpackingjs/2d";
import guillotine from "guillotine-packer";
// The package names a main file that Node cannot load; this is the same code in a form it can.
import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import ShelfPack from "shelf-pack";

/** A piece on a sheet. */
interface Placed {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece to be packed once. */
export interface PackedPiece {
  readonly width: number;
  readonly height: number;
  readonly mayTurn: boolean;
}

/** What came of one packer: its sheets, or that it has no plan that can be cut. */
export type PackerResult = { readonly sheets: number } | "cannot be cut" | "no plan";

type Packer = (pieces: readonly PackedPiece[], width: number, height: number) => readonly (readonly Placed[])[];

/** Packers by the name of their package. Those that turn all pieces or none turn none where one may not be turned. */
const packers: Readonly<Record<string, Packer>> = {
  "guillotine-packer": (pieces, width, height) => (guillotine.packer({ binWidth: width, binHeight: height, items: pieces.map((piece) => ({ ...piece, name: "" })) }, { kerfSize: 0, allowRotation: pieces.every((piece) => piece.mayTurn) }) ?? []),
  "shelf-pack": (pieces, width, height) => {
    const sheets: Placed[][] = [];
    let left = [...pieces].sort((a, b) => b.height - a.height || b.width - a.width);
    while (left.length > 0) {
      const shelf = new ShelfPack(width, height, { autoResize: false });
      const placed = left.map((piece) => ({ piece, at: shelf.packOne(piece.width, piece.height) }));
      sheets.push(placed.flatMap(({ at, piece }) => (at ? [{ x: at.x, y: at.y, width: piece.width, height: piece.height }] : [])));
      if (sheets.at(-1)!.length === 0) return [];
      left = placed.filter(({ at }) => !at).map(({ piece }) => piece);
    }
    return sheets;
  },
  "maxrects-packer": (pieces, width, height) => {
    const packer = new MaxRectsPacker(width, height, 0, { smart: false, pot: false, square: false, allowRotation: pieces.every((piece) => piece.mayTurn) });
    packer.addArray(pieces.map((piece) => ({ width: piece.width, height: piece.height, x: 0, y: 0 })));
    return packer.bins.map((bin) => bin.rects.map((each) => (each.rot ? { x: each.x, y: each.y, width: each.height, height: each.width } : each)));
  },
  "binpackingjs": (pieces, width, height) => pack2D({ bins: pieces.map(() => ({ width, height })), boxes: pieces.map((piece) => ({ width: piece.width, height: piece.height, constrainRotation: !piece.mayTurn })) }).packedBins.map((bin: { readonly boxes: readonly Placed[] }) => bin.boxes).filter((boxes: readonly Placed[]) => boxes.length > 0),
};

/** The names of the packers. */
export const packerNames: readonly string[] = Object.keys(packers);

/** Runs one packer. */
export function runPacker(name: string, pieces: readonly PackedPiece[], width: number, height: number): PackerResult {
  let sheets: readonly (readonly Placed[])[];
  try {
    sheets = packers[name]!(pieces, width, height);
  } catch {
    return "no plan";
  }
  if (sheets.reduce((sum, sheet) => sum + sheet.length, 0) !== pieces.length || !sheets.flat().every((each) => each.x >= 0 && each.y >= 0 && each.x + each.width <= width && each.y + each.height <= height)) return "no plan";
  return sheets.every(canBeParted) ? { sheets: sheets.length } : "cannot be cut";
}

/** Whether cuts from edge to edge can part the pieces. */
function canBeParted(pieces: readonly Placed[]): boolean {
  if (pieces.length < 2) return true;
  for (const [start, size] of [["x", "width"], ["y", "height"]] as const) {
    const ordered = [...pieces].sort((a, b) => a[start] - b[start]);
    let end = ordered[0]![start] + ordered[0]![size];
    for (let index = 1; index < ordered.length; index++) {
      if (ordered[index]![start] >= end) return canBeParted(ordered.slice(0, index)) && canBeParted(ordered.slice(index));
      end = Math.max(end, ordered[index]![start] + ordered[index]![size]);
    }
  }
  return false;
}
