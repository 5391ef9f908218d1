// Points and vectors on paper: millimetres as floats, x to the right, y down the page.

/** A position or a direction in millimetres; y grows downwards, as on a page and in SVG. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A point from its coordinates. */
export function point(x: number, y: number): Point {
  return { x, y };
}

/** The sum of two vectors. */
export function addPoints(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The vector that leads from `b` to `a`. */
export function subtractPoints(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** A vector so many times as long. */
export function scalePoint(a: Point, factor: number): Point {
  return { x: a.x * factor, y: a.y * factor };
}

/** The point `fraction` of the way from `a` to `b` (0 is `a`, 1 is `b`). */
export function between(a: Point, b: Point, fraction: number): Point {
  return { x: a.x + (b.x - a.x) * fraction, y: a.y + (b.y - a.y) * fraction };
}

/** The point halfway between two. */
export function midpoint(a: Point, b: Point): Point {
  return between(a, b, 0.5);
}

/** The distance between two points. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The vector of length 1 in the direction of `a`; a zero vector points right, so that nothing becomes NaN. */
export function unitVector(a: Point): Point {
  const size = Math.hypot(a.x, a.y);
  return size === 0 ? { x: 1, y: 0 } : { x: a.x / size, y: a.y / size };
}

/** `a` turned a quarter to the left as seen on the page (right becomes up). */
export function quarterLeft(a: Point): Point {
  return { x: a.y, y: -a.x };
}

/** The point at `length` from `from` in the direction of `towards`. */
export function along(from: Point, towards: Point, length: number): Point {
  return addPoints(from, scalePoint(unitVector(subtractPoints(towards, from)), length));
}

/** The point at `radius` from `centre`; 0° is to the right, 90° is up the page. */
export function polar(centre: Point, radius: number, angleDegrees: number): Point {
  const angle = (angleDegrees * Math.PI) / 180;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y - radius * Math.sin(angle) };
}
