// A folded section from its head: sheets lying around each other in half circles, the fold to the left, drawn too thick.
import type { PathStep } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** The drawn section. */
export interface NestedSheets {
  readonly items: readonly SceneItem[];
  /** Distance between two layers on paper. */
  readonly pitch: number;
  /** x of the back of the fold, and of the fore-edges of the outermost and the innermost sheet; y of both faces. */
  readonly back: number;
  readonly outerEdge: number;
  readonly innerEdge: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The centre of all folds is at 0, 0. Every leaf is as long on paper, so that creep shows as it is, as much enlarged as the thickness.
 * `trimmedAt` cuts all sheets at one x; null leaves the steps.
 */
export function nestedSheets(sheets: number, length: number, trimmedAt: number | null = null): NestedSheets {
  const pitch = Math.min(2, Math.max(0.8, 20 / (2 * sheets)));
  const radius = (i: number): number => (i + 0.5) * pitch;
  const edge = (i: number): number => length - (Math.PI / 2) * radius(i);
  const items = Array.from({ length: sheets }, (_, i) => {
    const [r, end] = [radius(i), trimmedAt ?? edge(i)];
    const path: readonly PathStep[] = [
      { kind: "move", to: point(end, -r) }, { kind: "line", to: point(0, -r) },
      { kind: "arc", radius: r, large: false, clockwise: false, to: point(0, r) }, { kind: "line", to: point(end, r) },
    ];
    return stroke(path, i === 0 || i === sheets - 1 ? "outline" : "edge");
  });
  return { items, pitch, back: -sheets * pitch, outerEdge: edge(sheets - 1), innerEdge: edge(0), top: -sheets * pitch, bottom: sheets * pitch };
}

/** A cover around the section, `beyond` its fore-edge at `edge`. */
export function coverAround(section: NestedSheets, edge: number): readonly SceneItem[] {
  const r = section.bottom + 1.4;
  return [stroke([
    { kind: "move", to: point(edge, -r) }, { kind: "line", to: point(0, -r) },
    { kind: "arc", radius: r, large: false, clockwise: false, to: point(0, r) }, { kind: "line", to: point(edge, r) },
  ], "cut")];
}
