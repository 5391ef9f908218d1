// Solids of the pictorial views: flat-sided bodies standing on an outline, drawn as the three kinds of face a reader sees.
import { isometric, spacePoint } from "../../geometry/project.ts";
import type { SpacePoint } from "../../geometry/project.ts";
import { convexHull } from "../../geometry/hull.ts";
import { polygon } from "../../geometry/path.ts";
import { subtractPoints } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { FillKind } from "../fill-kinds.ts";
import type { LineKind } from "../types.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** Tones by the way a face looks: up, to the lower left of the page, to the lower right. */
export interface FaceTones {
  readonly top: FillKind;
  readonly left: FillKind;
  readonly right: FillKind;
}

/** A flat shape in space, projected. */
export function face(corners: readonly SpacePoint[], fill: FillKind, line: LineKind | "none" = "edge"): SceneItem {
  return area(polygon(corners.map(isometric)), fill, line);
}

/**
 * A body between two heights over a convex outline given in plan (x, y); faces turned away from the reader are left out.
 * `contour` is the line round the whole body; its inner edges are narrow.
 */
export function prism(outline: readonly Point[], bottom: number, top: number, tones: FaceTones, contour: LineKind = "edge"): readonly SceneItem[] {
  const middle = outline.reduce((sum, at) => ({ x: sum.x + at.x / outline.length, y: sum.y + at.y / outline.length }), { x: 0, y: 0 });
  const sides = outline.flatMap((from, index): readonly SceneItem[] => {
    const to = outline[(index + 1) % outline.length]!;
    const way = subtractPoints(to, from);
    // The normal that leads away from the middle of the outline.
    const normal = { x: way.y, y: -way.x };
    const outward = normal.x * (from.x - middle.x) + normal.y * (from.y - middle.y) < 0 ? { x: -normal.x, y: -normal.y } : normal;
    // The reader looks from +x, −y, +z.
    if (outward.x - outward.y <= 1e-9) return [];
    const tone = -outward.y > outward.x ? tones.left : tones.right;
    return [face([spacePoint(from.x, from.y, bottom), spacePoint(to.x, to.y, bottom), spacePoint(to.x, to.y, top), spacePoint(from.x, from.y, top)], tone)];
  });
  const faces = [...sides, face(outline.map(({ x, y }) => spacePoint(x, y, top)), tones.top)];
  if (contour === "edge") return faces;
  const corners = outline.flatMap(({ x, y }) => [isometric(spacePoint(x, y, bottom)), isometric(spacePoint(x, y, top))]);
  return [...faces, stroke(polygon(convexHull(corners)), contour)];
}

/** The outline of an upright box in plan. */
export function boxOutline(left: number, near: number, width: number, depth: number): readonly Point[] {
  return [{ x: left, y: near }, { x: left + width, y: near }, { x: left + width, y: near + depth }, { x: left, y: near + depth }];
}

/**
 * A bar of even section along x, from `from` to `to`: the section is given in the plane of y and z and must be convex.
 * `contour` is the line round the whole bar; its inner edges are narrow.
 */
export function bar(section: readonly { readonly y: number; readonly z: number }[], from: number, to: number, tones: FaceTones, contour: LineKind = "edge"): readonly SceneItem[] {
  const middle = section.reduce((sum, at) => ({ y: sum.y + at.y / section.length, z: sum.z + at.z / section.length }), { y: 0, z: 0 });
  const sides = section.flatMap((a, index): readonly SceneItem[] => {
    const b = section[(index + 1) % section.length]!;
    const normal = { y: b.z - a.z, z: a.y - b.y };
    const outward = normal.y * (a.y - middle.y) + normal.z * (a.z - middle.z) < 0 ? { y: -normal.y, z: -normal.z } : normal;
    // The reader looks from +x, −y, +z.
    if (outward.z - outward.y <= 1e-9) return [];
    return [face([spacePoint(from, a.y, a.z), spacePoint(to, a.y, a.z), spacePoint(to, b.y, b.z), spacePoint(from, b.y, b.z)], outward.z >= -outward.y ? tones.top : tones.left)];
  });
  const faces = [...sides, face(section.map(({ y, z }) => spacePoint(to, y, z)), tones.right)];
  if (contour === "edge") return faces;
  const corners = section.flatMap(({ y, z }) => [isometric(spacePoint(from, y, z)), isometric(spacePoint(to, y, z))]);
  return [...faces, stroke(polygon(convexHull(corners)), contour)];
}
