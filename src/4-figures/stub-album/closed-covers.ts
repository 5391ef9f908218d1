// The two covers of the shut book in section: boards, side strips, and the cloth and tape that join them to the spine strip.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { polyline, rectangle } from "../../geometry/path.ts";
import { midpoint, point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { raggedTop } from "../breaks.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** The drawn covers and how far they reach. */
export interface CoversDrawing {
  readonly items: readonly SceneItem[];
  /** Outermost cloth on both sides, and its lowest point under the spine strip. */
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  /** What labels point at: side strip, cloth and joint on the left, tape on the right. */
  readonly sideStrip: Point;
  readonly cloth: Point;
  readonly joint: Point;
  readonly tape: Point;
}

/**
 * x from the front end of the spine strip, y up from its outer face (negative on paper), `width` the drawn width of the spine strip.
 * Board and strip stand with their inner face in line with the spine strip's end; the joint's cloth runs straight between the two outer corners.
 */
export function drawCovers(geometry: StubAlbumGeometry, factor: number, width: number, top: number): CoversDrawing {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  const stack = mm(geometry.hingeStack);
  const foot = -mm(geometry.closedRise);
  const head = foot - mm(geometry.sideStripWidth);
  const strip = mm(geometry.stripThickness);
  const board = mm(geometry.boardThickness);
  // The cloth is one wide line (0.5 mm) that keeps its own half width off what it covers.
  const off = Math.max(0.25, mm(geometry.clothThickness) / 2);
  const turned = Math.min(mm(geometry.turnIn), mm(geometry.sideStripWidth));
  const lap = Math.max(0, (mm(geometry.hingeTapeWidth) - mm(geometry.jointGap)) / 2);
  const onSpine = Math.min(lap, width / 2 - 0.4);
  const side = (mirror: (at: Point) => Point, flip: (x: number, wide: number) => number): readonly SceneItem[] => [
    area(rectangle(flip(-board, board), top, board, foot - top), "board", "edge"),
    area(rectangle(flip(-stack, strip), head, strip, foot - head), "strip", "edge"),
    ...raggedTop(top, flip(-board, board) - 0.4, flip(-board, board) + board + 0.4, -1),
    stroke(polyline([point(-stack + strip, head + turned), point(-stack + strip, head - off), point(-stack - off, head - off), point(-stack - off, foot), point(0, off), point(width / 2, off)].map(mirror)), "outline"),
    stroke(polyline([point(onSpine, -strip), point(0, -strip), point(-stack + strip, foot), point(-stack + strip, foot - Math.min(lap, foot - head))].map(mirror)), "edge"),
  ];
  const keep = (at: Point): Point => at;
  const mirror = (at: Point): Point => point(width - at.x, at.y);
  return {
    items: [...side(keep, (x) => x), ...side(mirror, (x, wide) => width - x - wide)],
    left: -stack - off,
    right: width + stack + off,
    bottom: off,
    sideStrip: point(-stack + strip / 2, head + (foot - head) * 0.35),
    cloth: point(-stack - off, head + (foot - head) * 0.75),
    joint: midpoint(point(-stack - off, foot), point(0, off)),
    tape: mirror(midpoint(point(0, -strip), point(-stack + strip, foot))),
  };
}
