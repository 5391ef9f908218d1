// Where points of the flat hinge cloth lie on paper when long stretches without marks are left out.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { toMillimetres } from "../../units/length.ts";
import { brokenAxis } from "../bench/broken-axis.ts";
import type { BrokenAxis } from "../bench/broken-axis.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";

/** The flat cloth on paper: its scale and both of its directions. */
export interface ClothMap {
  readonly scale: Scale;
  readonly across: BrokenAxis;
  readonly down: BrokenAxis;
}

/** Paper for the cloth in millimetres; what is whole may be larger, so that a break always leaves out a good piece. */
const room = { width: 96, height: { whole: 90, broken: 72 }, spine: { whole: 56, broken: 44 } } as const;

/**
 * The largest scale, up to 1:1, at which the edges of the cloth with all their marks fit. Only the middle of the spine strip and the
 * middle of the height are ever left out: nothing is marked there.
 */
export function mapCloth(geometry: StubAlbumGeometry): ClothMap {
  const [width, height, spine] = [geometry.clothWidth, geometry.clothHeight, geometry.spineStripWidth].map(toMillimetres) as [number, number, number];
  const marked = toMillimetres(geometry.turnIn) * 2;
  const scale = scales.find(({ factor }) => factor <= 1
    && (width - spine) * factor + shownOf(spine * factor, room.spine) <= room.width
    && marked * factor <= room.height.broken * 0.6) ?? scales.at(-1)!;
  const { factor } = scale;
  const shownWidth = (width - spine) * factor + shownOf(spine * factor, room.spine);
  return { scale, across: brokenAxis({ trueSize: width, size: shownWidth, factor }), down: brokenAxis({ trueSize: height, size: shownOf(height * factor, room.height), factor }) };
}

function shownOf(size: number, limits: { readonly whole: number; readonly broken: number }): number {
  return size <= limits.whole ? size : limits.broken;
}
