// Tools and weights as plain outlines in millimetres of paper, each placed by its working point.
import { polygon, polyline, rectangle, transformPath } from "../../geometry/path.ts";
import type { Path, PathStep } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { compose, rotation, translation } from "../../geometry/transform.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** A bone folder with its point at `tip`, lying in the direction `angleDegrees` from there (0 right, 90 up). */
export function boneFolder(tip: Point, angleDegrees: number, length = 24): readonly SceneItem[] {
  const half = 1.7;
  const to = (x: number, y: number): Point => point(x, y);
  const outline: Path = [
    { kind: "move", to: to(0, 0) },
    { kind: "curve", control1: to(2.5, -0.3), control2: to(5, -half), to: to(9, -half) },
    { kind: "line", to: to(length - half, -half) },
    { kind: "arc", radius: half, large: false, clockwise: true, to: to(length - half, half) },
    { kind: "line", to: to(9, half) },
    { kind: "curve", control1: to(5, half), control2: to(2.5, 0.3), to: to(0, 0) },
    { kind: "close" },
  ];
  const place = compose(rotation(angleDegrees), translation(tip.x, tip.y));
  return [area(transformPath(place, outline), "paper", "outline"), stroke(transformPath(place, polyline([to(6, 0), to(length - 4, 0)])), "edge")];
}

/** A hollow punch or drill bit in its handle, upright, its end at `tip`. `bore` is the diameter it makes, on paper. */
export function uprightPunch(tip: Point, bore: number, length = 34): readonly SceneItem[] {
  const half = Math.max(bore / 2, 0.5);
  const shank = length * 0.42;
  return [area(rectangle(tip.x - half, tip.y - shank, 2 * half, shank), "metal", "outline"), ...uprightHandle(tip, half, shank, length)];
}

/** An awl, upright, its point at `tip`. */
export function uprightAwl(tip: Point, length = 34): readonly SceneItem[] {
  const half = 0.7;
  const shank = length * 0.45;
  return [area(polygon([tip, point(tip.x - half, tip.y - shank * 0.6), point(tip.x - half, tip.y - shank), point(tip.x + half, tip.y - shank), point(tip.x + half, tip.y - shank * 0.6)]), "metal", "edge"), ...uprightHandle(tip, half, shank, length)];
}

/** The handle of a tool that stands upright, over a shank of half a width `half`, with two rings at its foot. */
function uprightHandle(tip: Point, half: number, shank: number, length: number): readonly SceneItem[] {
  const grip = half + 1.5;
  const bottom = tip.y - shank;
  const top = tip.y - length;
  const handle: readonly PathStep[] = [
    { kind: "move", to: point(tip.x - half - 0.4, bottom) },
    { kind: "curve", control1: point(tip.x - grip, bottom - 1), control2: point(tip.x - grip, bottom - 3), to: point(tip.x - grip, bottom - 5) },
    { kind: "line", to: point(tip.x - grip, top + 3) },
    { kind: "curve", control1: point(tip.x - grip, top), control2: point(tip.x + grip, top), to: point(tip.x + grip, top + 3) },
    { kind: "line", to: point(tip.x + grip, bottom - 5) },
    { kind: "curve", control1: point(tip.x + grip, bottom - 3), control2: point(tip.x + grip, bottom - 1), to: point(tip.x + half + 0.4, bottom) },
    { kind: "close" },
  ];
  return [
    area(handle, "face-light", "outline"),
    stroke(polyline([point(tip.x - grip, bottom - 6.5), point(tip.x + grip, bottom - 6.5)]), "edge"),
    stroke(polyline([point(tip.x - grip, bottom - 7.8), point(tip.x + grip, bottom - 7.8)]), "edge"),
  ];
}

/** A weight with a handle, standing with the middle of its foot at `foot`. */
export function weight(foot: Point, width = 20, height = 8): readonly SceneItem[] {
  const top = foot.y - height;
  const loop: Path = [
    { kind: "move", to: point(foot.x - 4, top) },
    { kind: "line", to: point(foot.x - 4, top - 2) },
    { kind: "arc", radius: 1.6, large: false, clockwise: true, to: point(foot.x - 2.4, top - 3.6) },
    { kind: "line", to: point(foot.x + 2.4, top - 3.6) },
    { kind: "arc", radius: 1.6, large: false, clockwise: true, to: point(foot.x + 4, top - 2) },
    { kind: "line", to: point(foot.x + 4, top) },
  ];
  return [stroke(loop, "outline"), area(rectangle(foot.x - width / 2, top, width, height), "face-dark", "outline")];
}
