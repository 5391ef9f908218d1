// The best value that one sheet can give: an exact table over all edge-to-edge layouts in which each piece may be used at will.
import { cutAt, restOfSheet } from "./cut-tree.ts";
import type { CutTree } from "./cut-tree.ts";
import { lastUpTo, rasterPoints } from "./raster-points.ts";

/** One piece as it may lie on a sheet. */
export interface Lying {
  readonly piece: number;
  readonly turned: boolean;
  readonly width: number;
  readonly height: number;
}

/** A sheet prepared for pricing. */
export interface SheetTable {
  /** Whether the value found is the greatest that any edge-to-edge layout has. */
  readonly isExact: boolean;
  /** Rough number of looks into the table for one pricing. */
  readonly effort: number;
  /** The best value, and a layout that has it. The values are whole numbers of at most 2^40, none negative. */
  price(values: ArrayLike<number>): { readonly value: number; readonly tree: CutTree };
}

/** Ways in which the pieces may lie on a sheet; those that do not fit are left out. */
export function lyingOn(pieces: readonly { readonly width: number; readonly height: number; readonly mayTurn: boolean }[], width: number, height: number): readonly Lying[] {
  return pieces.flatMap((each, piece) => {
    const straight = { piece, turned: false, width: each.width, height: each.height };
    const ways = each.mayTurn && each.width !== each.height ? [straight, { piece, turned: true, width: each.height, height: each.width }] : [straight];
    return ways.filter((way) => way.width <= width && way.height <= height);
  });
}

/** Prepares the exact table; `null` when it would be larger than the effort allowed. */
export function exactTable(width: number, height: number, lying: readonly Lying[], mostEffort: number): SheetTable | null {
  const xs = rasterPoints(lying.map((way) => way.width), width);
  const ys = rasterPoints(lying.map((way) => way.height), height);
  if (!xs || !ys || effortOf(xs.length, ys.length) > mostEffort) return null;
  return tableOver(width, height, lying, xs, ys, true);
}

function effortOf(columns: number, rows: number): number {
  return (columns * rows * (columns + rows)) / 4;
}

/** The table over given cutting positions; layouts are sound for any positions, and best when these are all that matter. */
export function tableOver(width: number, height: number, lying: readonly Lying[], xPoints: readonly number[], yPoints: readonly number[], isExact: boolean): SheetTable {
  const xs = Float64Array.from(xPoints);
  const ys = Float64Array.from(yPoints);
  const [nx, ny] = [xs.length, ys.length];
  const restX = restIndexes(xs);
  const restY = restIndexes(ys);
  const halfX = halfIndexes(xs);
  const halfY = halfIndexes(ys);
  const cells = lying.map((way) => ({ ...way, i: firstFrom(xs, way.width), j: firstFrom(ys, way.height) }));
  const byRow = new Float64Array(nx * ny);
  const byColumn = new Float64Array(nx * ny);
  const base = new Float64Array(nx * ny);
  const stepsX = new Int32Array(nx * ny);
  const stepsY = new Int32Array(nx * ny);
  const stepCountX = new Int32Array(ny);
  const stepCountY = new Int32Array(nx);

  const fill = (values: ArrayLike<number>): void => {
    base.fill(0);
    for (const { piece, i, j } of cells) if (i < nx && j < ny) base[j * nx + i] = Math.max(base[j * nx + i]!, values[piece]!);
    stepCountX.fill(0);
    stepCountY.fill(0);
    for (let j = 0; j < ny; j++) {
      const row = j * nx;
      let steps = 0;
      for (let i = 0; i < nx; i++) {
        const column = i * ny;
        const left = i > 0 ? byRow[row + i - 1]! : 0;
        const below = j > 0 ? byColumn[column + j - 1]! : 0;
        let best = base[row + i]!;
        if (left > best) best = left;
        if (below > best) best = below;
        const rests = i * nx;
        const lastX = halfX[i]!;
        for (let s = 0; s < steps; s++) {
          const k = stepsX[row + s]!;
          if (k > lastX) break;
          const value = byRow[row + k]! + byRow[row + restX[rests + k]!]!;
          if (value > best) best = value;
        }
        const restsY = j * ny;
        const lastY = halfY[j]!;
        const stepsHere = stepCountY[i]!;
        for (let s = 0; s < stepsHere; s++) {
          const k = stepsY[column + s]!;
          if (k > lastY) break;
          const value = byColumn[column + k]! + byColumn[column + restY[restsY + k]!]!;
          if (value > best) best = value;
        }
        byRow[row + i] = best;
        byColumn[column + j] = best;
        if (best > left) stepsX[row + steps++] = i;
        if (best > below) stepsY[column + stepCountY[i]!++] = j;
      }
      stepCountX[j] = steps;
    }
  };

  const read = (values: ArrayLike<number>, i: number, j: number, regionWidth: number, regionHeight: number): CutTree => {
    const best = byRow[j * nx + i]!;
    if (best === 0) return restOfSheet;
    if (i > 0 && byRow[j * nx + i - 1] === best) return read(values, i - 1, j, regionWidth, regionHeight);
    if (j > 0 && byRow[(j - 1) * nx + i] === best) return read(values, i, j - 1, regionWidth, regionHeight);
    for (const { piece, turned, i: atX, j: atY } of cells) if (atX <= i && atY <= j && values[piece] === best) return { kind: "piece", piece, turned };
    for (let k = 1; k <= halfX[i]!; k++) {
      const rest = restX[i * nx + k]!;
      if (byRow[j * nx + k]! + byRow[j * nx + rest]! !== best) continue;
      return cutAt("x", xs[k]!, regionWidth, read(values, k, j, xs[k]!, regionHeight), read(values, rest, j, regionWidth - xs[k]!, regionHeight));
    }
    for (let k = 1; k <= halfY[j]!; k++) {
      const rest = restY[j * ny + k]!;
      if (byRow[k * nx + i]! + byRow[rest * nx + i]! !== best) continue;
      return cutAt("y", ys[k]!, regionHeight, read(values, i, k, regionWidth, ys[k]!), read(values, i, rest, regionWidth, regionHeight - ys[k]!));
    }
    throw new Error("internal error: the pricing table has a value that no layout gives");
  };

  return {
    isExact,
    effort: effortOf(nx, ny),
    price: (values) => {
      fill(values);
      return { value: byRow[nx * ny - 1]!, tree: read(values, nx - 1, ny - 1, width, height) };
    },
  };
}

/** For a point i and a smaller point k: the last point that fits into what is left beside k. */
function restIndexes(points: Float64Array): Int32Array {
  const count = points.length;
  const rests = new Int32Array(count * count);
  for (let i = 0; i < count; i++) {
    let rest = i;
    for (let k = 0; k <= i; k++) {
      while (points[rest]! > points[i]! - points[k]!) rest--;
      rests[i * count + k] = rest;
    }
  }
  return rests;
}

/** For each point, the last one that is not above its half. */
function halfIndexes(points: Float64Array): Int32Array {
  return Int32Array.from(points, (point) => lastUpTo(points, point / 2));
}

/** Index of the first point that is not below a value; the number of points when there is none. */
function firstFrom(points: Float64Array, value: number): number {
  const index = lastUpTo(points, value);
  return points[index] === value ? index : index + 1;
}
