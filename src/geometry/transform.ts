// Affine transforms of the plane: move, turn, scale, mirror and the slants of an isometric view.
import type { Point } from "./point.ts";

/** x' = a·x + c·y + e, y' = b·x + d·y + f, the order SVG's `matrix(a b c d e f)` uses. */
export interface Transform {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Leaves everything where it is. */
export const identity: Transform = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Moves everything by so much. */
export function translation(dx: number, dy: number): Transform {
  return { ...identity, e: dx, f: dy };
}

/** Scaling about the origin; a negative factor mirrors. */
export function scaling(factorX: number, factorY: number = factorX): Transform {
  return { ...identity, a: factorX, d: factorY };
}

/** Turning about `centre`; positive angles turn against the clock as seen on the page. */
export function rotation(angleDegrees: number, centre: Point = { x: 0, y: 0 }): Transform {
  const angle = (angleDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turn: Transform = { a: cos, b: -sin, c: sin, d: cos, e: 0, f: 0 };
  return compose(translation(-centre.x, -centre.y), turn, translation(centre.x, centre.y));
}

/** Does the transforms one after the other, the first one first. */
export function compose(...transforms: readonly Transform[]): Transform {
  return transforms.reduce((done, next) => ({
    a: next.a * done.a + next.c * done.b,
    b: next.b * done.a + next.d * done.b,
    c: next.a * done.c + next.c * done.d,
    d: next.b * done.c + next.d * done.d,
    e: next.a * done.e + next.c * done.f + next.e,
    f: next.b * done.e + next.d * done.f + next.f,
  }), identity);
}

/** Where a transform takes a point. */
export function transformPoint(transform: Transform, { x, y }: Point): Point {
  return { x: transform.a * x + transform.c * y + transform.e, y: transform.b * x + transform.d * y + transform.f };
}

/** The factor by which areas grow; negative when the transform mirrors. */
export function determinant(transform: Transform): number {
  return transform.a * transform.d - transform.b * transform.c;
}

/** Whether circles stay circles (move, turn, even scale, mirror). */
export function isSimilarity(transform: Transform): boolean {
  const { a, b, c, d } = transform;
  const size = Math.hypot(a, b);
  return Math.abs(a * c + b * d) < 1e-9 * size * size && Math.abs(Math.hypot(c, d) - size) < 1e-9 * size;
}
