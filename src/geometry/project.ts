// Pictorial views: isometric drawing of points and flat shapes in space.
import type { Point } from "./point.ts";
import type { Transform } from "./transform.ts";

/** A position in space in millimetres: x to the lower right, y to the upper right (away from the reader), z up. */
export interface SpacePoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A point in space from its coordinates. */
export function spacePoint(x: number, y: number, z: number): SpacePoint {
  return { x, y, z };
}

/** Width on paper of a unit along x or y of an isometric view; its height is a half. */
export const cos30 = Math.sqrt(3) / 2;
const sin30 = 0.5;

/** Isometric drawing: lengths along all three axes keep their scale (no foreshortening), axes at 30°. */
export function isometric({ x, y, z }: SpacePoint): Point {
  return { x: (x + y) * cos30, y: (x - y) * sin30 - z };
}

/**
 * The transform that lays a flat drawing (u to the right, v down) into space: its origin at `origin`, u along `uAxis`, v along `vAxis`.
 * Use with `transformPath`; circles become the right ellipses.
 */
export function isometricPlane(origin: SpacePoint, uAxis: SpacePoint, vAxis: SpacePoint): Transform {
  const [at, u, v] = [isometric(origin), isometric(uAxis), isometric(vAxis)];
  return { a: u.x, b: u.y, c: v.x, d: v.y, e: at.x, f: at.y };
}
