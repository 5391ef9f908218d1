// The book cut across its spine, lying flat with the spine at the left: sections, endpapers, linings, boards, strip and cloth.
import type { CaseBindingGeometry } from "../../2-model/case-binding/geometry.ts";
import { bandAlong } from "../../geometry/band.ts";
import { polyline, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { raggedEnd } from "../breaks.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** The section in millimetres of paper: x from the shoulders to the fore-edge, y from the outer face of the upper endpaper down. */
export interface BookSection {
  readonly geometry: CaseBindingGeometry;
  readonly factor: number;
  /** Thickness of the text block with its endpapers. */
  readonly back: number;
  /** How far the back rises over its shoulders; 0 when flat. */
  readonly rise: number;
  readonly board: number;
  readonly strip: number;
  readonly groove: number;
  /** Where the drawing ends at the right. */
  readonly end: number;
  /** Distances of the linings' lines from the back, so that they can be told apart. */
  readonly layers: { readonly mull: number; readonly lining: number; readonly strip: number };
}

/** Thinnest drawn layer, and the room between lines that are thinner, on paper. */
const thinnest = 0.45;

/** Lays the section out at a scale; `shown` millimetres of paper of the boards are drawn. */
export function layOutSection(geometry: CaseBindingGeometry, factor: number, shown: number): BookSection {
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const mull = thinnest;
  const lining = mull + (geometry.lining ? thinnest : 0);
  const groove = paper(geometry.groove);
  return {
    geometry, factor, back: paper(geometry.backThickness), rise: geometry.round ? paper(geometry.round.rise) : 0, board: Math.max(paper(geometry.boardThickness), 1),
    strip: Math.max(paper(geometry.stripThickness), 0.8), groove, end: groove + shown, layers: { mull, lining, strip: lining + thinnest },
  };
}

/** The back's x at a height y: an arc that meets the shoulders at 0, moved out by `off`. */
export function backAt({ back, rise }: BookSection, y: number, off = 0): number {
  if (rise === 0) return -off;
  const radius = (back * back) / (8 * rise) + rise / 2;
  const away = Math.min(Math.abs(y - back / 2), radius);
  return -(Math.sqrt(radius * radius - away * away) - (radius - rise)) - off;
}

/** The back as a chain of points from the upper shoulder to the lower one, `off` outside of it. */
export function backLine(section: BookSection, off: number, from = 0, to = section.back): readonly Point[] {
  const count = section.rise === 0 ? 1 : 32;
  return Array.from({ length: count + 1 }, (_, index) => {
    const y = from + ((to - from) * index) / count;
    return point(backAt(section, y, off), y);
  });
}

/** Sections or leaves with the endpapers, their ends at the right left out. */
export function pagesOf(section: BookSection): readonly SceneItem[] {
  const { geometry, back, end } = section;
  const leaf = Math.max(toMillimetres(geometry.endpaperThickness) * section.factor, 0.3);
  const [top, foot] = [2 * leaf, back - 2 * leaf];
  const wanted = geometry.sewing ? geometry.block.sections : geometry.block.leaves;
  const count = Math.max(1, Math.min(wanted, Math.floor((foot - top) / (geometry.sewing ? 0.9 : 0.6))));
  const pitch = (foot - top) / count;
  const sections = Array.from({ length: count }, (_, index): SceneItem => {
    const [upper, lower] = [top + index * pitch, top + (index + 1) * pitch];
    const bend = geometry.sewing ? Math.min(pitch / 2, 1.2) : 0;
    return area(leafShape(section, upper, lower, bend), "paper", "edge");
  });
  const folded = (upper: number): SceneItem => area(leafShape(section, upper, upper + 2 * leaf, leaf), "card", "edge");
  return [...sections, folded(0), folded(foot), ...raggedEnd(end, -0.6, back + 0.6, 1)];
}

/** A bar from the back to the right end whose left end is rounded by `bend`. */
function leafShape(section: BookSection, upper: number, lower: number, bend: number): Path {
  const [high, low] = [backAt(section, upper), backAt(section, lower)];
  const middle = backAt(section, (upper + lower) / 2);
  return [
    { kind: "move", to: point(section.end, upper) },
    { kind: "line", to: point(high + bend, upper) },
    { kind: "curve", control1: point(Math.min(high, middle), upper), control2: point(Math.min(low, middle), lower), to: point(low + bend, lower) },
    { kind: "line", to: point(section.end, lower) },
    { kind: "close" },
  ];
}

/** Mull over the back and onto both endpapers, and the paper lining on it. */
export function liningsOf(section: BookSection): readonly SceneItem[] {
  const { geometry, layers, back, end } = section;
  const reach = Math.min(toMillimetres(geometry.mull.onBoards) * section.factor, end - 2);
  const half = layers.mull / 2;
  const mull = [point(reach, -half), ...backLine(section, half, -half, back + half), point(reach, back + half)];
  return [
    stroke(polyline(mull), "valley"),
    ...(geometry.lining ? [stroke(polyline(backLine(section, layers.lining, 0.3, back - 0.3)), "outline")] : []),
  ];
}

/** Both boards, broken off at the right. */
export function boardsOf(section: BookSection): readonly SceneItem[] {
  const { back, board, groove, end } = section;
  const gap = boardGap(section);
  const slab = (top: number): readonly SceneItem[] => [area(rectangle(groove, top, end - groove, board), "board", "edge"), ...raggedEnd(end, top - 0.5, top + board + 0.5, 1)];
  return [...slab(-gap - board), ...slab(back + gap)];
}

/** From the text block to the board: the mull between. */
function boardGap({ layers }: BookSection): number {
  return layers.mull + 0.1;
}

/** The strip at the back: straight, from board face to board face or over the text block alone, or bent round the back. */
export function stripOf(section: BookSection): readonly SceneItem[] {
  const { layers, strip, rise } = section;
  if (rise > 0) return [area(bandAlong(backLine(section, layers.strip + strip / 2), strip), "strip", "edge")];
  const [top, foot] = stripEnds(section);
  return [area(rectangle(-layers.strip - strip, top, strip, foot - top), "strip", "edge")];
}

/** Head and foot of a straight strip on paper. */
export function stripEnds({ geometry, back, board, layers, rise }: BookSection): readonly [top: number, foot: number] {
  if (rise > 0 || geometry.stripCovers === "block") return [0, back];
  const over = board + layers.mull + 0.1;
  return [-over, back + over];
}

/** The way of the cloth on the upper side: its start on the strip, the bottom of the groove and the outer corner of the board. */
export function grooveOf(section: BookSection): { readonly strip: Point; readonly bottom: Point; readonly corner: Point } {
  const { layers, strip, groove, board } = section;
  const gap = boardGap(section);
  const [top] = stripEnds(section);
  return { strip: point(-layers.strip - strip / 2, top - 0.3), bottom: point(groove * 0.5, -layers.mull - 0.3), corner: point(groove, -gap - board - 0.3) };
}

/** The cloth round boards and strip, as one wide line; the joints dip into the grooves. */
export function clothOf(section: BookSection): readonly SceneItem[] {
  const { back, strip, layers, end, rise } = section;
  const { strip: start, bottom, corner } = grooveOf(section);
  const flip = (at: Point): Point => point(at.x, back - at.y);
  const dip = (place: (at: Point) => Point): Path => {
    const wall = Math.min(0.9, (corner.x - bottom.x) * 0.8);
    const floor = point(Math.max(bottom.x * 0.5, start.x + 1), bottom.y);
    return [
      { kind: "move", to: place(start) },
      { kind: "curve", control1: place(point(start.x + strip / 2 + 0.6, start.y)), control2: place(point(floor.x - 0.8, floor.y)), to: place(floor) },
      { kind: "line", to: place(point(corner.x - wall, bottom.y)) },
      { kind: "curve", control1: place(point(corner.x - 0.2, bottom.y)), control2: place(point(corner.x - 0.3, corner.y)), to: place(point(corner.x + 0.3, corner.y)) },
      { kind: "line", to: place(point(end, corner.y)) },
    ];
  };
  const outer = layers.strip + strip + 0.3;
  const spine = rise > 0 ? backLine(section, outer) : [point(-outer, start.y), point(-outer, back - start.y)];
  const first = spine[0]!;
  return [
    stroke(dip((at) => at), "outline"), stroke(dip(flip), "outline"),
    stroke(polyline([start, first, ...spine.slice(1, -1), spine.at(-1)!, flip(start)]), "outline"),
    ...raggedEnd(end, corner.y - 0.8, corner.y + 0.8, 1), ...raggedEnd(end, back - corner.y - 0.8, back - corner.y + 0.8, 1),
  ];
}

/** The whole finished book in section. */
export function wholeBook(section: BookSection): readonly SceneItem[] {
  return [...pagesOf(section), ...liningsOf(section), ...boardsOf(section), ...stripOf(section), ...clothOf(section)];
}

/** Leftmost point of the finished book on paper. */
export function leftOf({ rise, layers, strip }: BookSection): number {
  return -(rise + layers.strip + strip + 0.3);
}
