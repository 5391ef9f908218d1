// The head left corner of a covering from near by, wrong side up, with the board or strip on it: flat, cut, turned in.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import { cornerReach } from "../corner-cut.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** What the corner depends on: the turn-in, the corner rule, and what lies on the covering from its head edge and left edge inwards. */
export interface CornerGeometry {
  readonly turnIn: Length;
  /** From the corner of what is covered to the 45° cut, square to it. */
  readonly cornerDistance: Length;
  /** The board or strip nearest to the corner. */
  readonly sideStripWidth: Length;
  readonly stripThickness: Length;
  /** To the next board or strip; null when there is none. */
  readonly jointGap: Length | null;
}

/** The corner in millimetres of paper; the cloth's own corner would be at (0, 0), the strip's corner at (turnIn, turnIn). */
export interface CornerView {
  readonly turnIn: number;
  /** Along the cloth's edge from its corner to the 45° cut; zero when nothing is cut off. */
  readonly cutReach: number;
  /** From the strip's corner to the cut, square to it. */
  readonly distance: number;
  readonly turnedIn: number;
  readonly stripRight: number;
  readonly spineLeft: number;
  /** The view ends here, right and below. */
  readonly end: number;
}

/** The corner at a factor of millimetres on paper for one of cloth, seen as far as `end`. */
export function cornerView(geometry: CornerGeometry, factor: number, end: number): CornerView {
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const turnIn = paper(geometry.turnIn);
  const distance = paper(geometry.cornerDistance);
  const stripRight = turnIn + paper(geometry.sideStripWidth);
  return {
    turnIn, distance, end, stripRight,
    cutReach: Math.max(0, cornerReach(point(turnIn, turnIn), distance)),
    turnedIn: Math.max(0, turnIn - paper(geometry.stripThickness)),
    spineLeft: geometry.jointGap ? stripRight + paper(geometry.jointGap) : Infinity,
  };
}

/** The cloth with its corner cut off; `head` and `side` are still flat or already folded away along the strip's edge. */
export function flatCloth(view: CornerView, flat: { readonly head: boolean; readonly side: boolean }): readonly SceneItem[] {
  const { cutReach, turnIn, end } = view;
  const past = cutReach - turnIn;
  const corner: readonly Point[] = flat.head
    ? [point(0, cutReach), point(cutReach, 0), point(end, 0)]
    : flat.side ? [point(0, cutReach), point(Math.max(0, past), Math.min(turnIn, cutReach)), point(end, turnIn)] : [point(turnIn, turnIn), point(end, turnIn)];
  const left = flat.side ? 0 : turnIn;
  return [
    area(polygon([point(left, end), ...corner, point(end, end)]), "face-light", "none"),
    ...edgeChain([point(left, end), ...corner]),
  ];
}

/** The strips lying on the cloth, as far as the view goes. */
export function stripsIn(view: CornerView): readonly SceneItem[] {
  const strip = (left: number, right: number): readonly SceneItem[] => {
    if (left >= view.end) return [];
    const ends = Math.min(right, view.end);
    const chain = [point(left, view.end), point(left, view.turnIn), point(ends, view.turnIn), ...(right < view.end ? [point(ends, view.end)] : [])];
    return [area(polygon([point(left, view.turnIn), point(ends, view.turnIn), point(ends, view.end), point(left, view.end)]), "face-middle", "none"), ...edgeChain(chain)];
  };
  return [...strip(view.turnIn, view.stripRight), ...strip(view.spineLeft, Infinity)];
}

/** The head's turn-in lying on the strips: its cut end slants, and a little cloth stands past the strip's edge until it is nipped in. */
export function headFlap(view: CornerView, nipped: boolean): readonly SceneItem[] {
  const { turnIn, turnedIn, cutReach, end } = view;
  const past = nipped ? turnIn : Math.max(0, cutReach - turnIn);
  return flap([point(past, turnIn), point(end, turnIn)], [point(end, turnIn + turnedIn), point(cutReach, turnIn + turnedIn)], [point(cutReach, turnIn + turnedIn), point(past, turnIn), point(end, turnIn)], [point(end, turnIn + turnedIn), point(cutReach, turnIn + turnedIn)]);
}

/** The side's turn-in lying over the end of the head's. */
export function sideFlap(view: CornerView): readonly SceneItem[] {
  const { turnIn, turnedIn, cutReach, end } = view;
  const right = turnIn + turnedIn;
  return flap([point(turnIn, turnIn), point(right, cutReach)], [point(right, end), point(turnIn, end)], [point(turnIn, end), point(turnIn, turnIn), point(right, cutReach), point(right, end)]);
}

/** Wavy lines where the view ends. */
export function viewEnds(view: CornerView, left: number, top: number): readonly SceneItem[] {
  return [stroke(wavyLine(point(view.end, top), point(view.end, view.end)), "edge"), stroke(wavyLine(point(left, view.end), point(view.end, view.end)), "edge")];
}

function flap(first: readonly Point[], second: readonly Point[], ...edges: readonly (readonly Point[])[]): readonly SceneItem[] {
  return [area(polygon([...first, ...second]), "cloth", "none"), ...edges.flatMap(edgeChain)];
}

function edgeChain(points: readonly Point[]): readonly SceneItem[] {
  return points.slice(1).map((to, index) => stroke(line(points[index]!, to), "outline"));
}
