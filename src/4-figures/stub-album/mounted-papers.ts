// Page papers on their stubs in section: up the face of the stub, then in to the middle plane of the page.
import { polygon, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { halfStub } from "./folded-card.ts";
import type { RibbonSizes } from "./folded-card.ts";

/** Everything in millimetres of paper; the inside of the floor lies at y = 0. */
export interface MountingSizes extends RibbonSizes {
  readonly adhesive: number;
  readonly paper: number;
  /** Depth of the adhesive, from the floor. */
  readonly zone: number;
  /** Where the drawing of the pages ends (negative y). */
  readonly top: number;
  readonly backToBack: boolean;
}

/** The papers of the stubs at `xs`, with their adhesive. */
export function mountedPapers(xs: readonly number[], sizes: MountingSizes): readonly SceneItem[] {
  const sides: readonly (1 | -1)[] = sizes.backToBack ? [-1, 1] : [1];
  return xs.flatMap((x) => sides.flatMap((side) => mountedPaper(x, side, sizes)));
}

function mountedPaper(x: number, side: 1 | -1, sizes: MountingSizes): readonly SceneItem[] {
  const { adhesive, paper, zone } = sizes;
  const face = halfStub(sizes);
  const lines = paperLines(x, side, sizes);
  const back = [...lines.outer].reverse();
  return [
    area(rectangle(side > 0 ? x + face : x - face - adhesive, -zone, adhesive, zone), "adhesive", "none"),
    area(polygon([...lines.inner, ...back]), paper > 0 ? "paper" : "none", "edge"),
  ];
}

/** Both faces of one paper, from the floor up. A single paper goes on in the middle plane; of two, each lies half a layer of adhesive off it. */
export function paperLines(x: number, side: 1 | -1, sizes: MountingSizes): { readonly inner: readonly Point[]; readonly outer: readonly Point[] } {
  const { adhesive, paper, depth, top, backToBack } = sizes;
  const near = halfStub(sizes) + adhesive;
  const far = backToBack ? adhesive / 2 : -paper / 2;
  const levels = [0, -depth + halfStub(sizes), -depth - bendHeight(sizes), top];
  const inside = [near, near, far, far];
  const face = (out: number): readonly Point[] => levels.map((y, index) => point(x + side * (inside[index]! + out), y));
  return { inner: face(0), outer: face(paper) };
}

/** A paper comes in to the middle plane within this height above the crest. */
function bendHeight(sizes: MountingSizes): number {
  return Math.max(1, halfStub(sizes));
}
