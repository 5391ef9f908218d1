// A link from near by: behind the stitch below and back, or on up to the next section as a kettle stitch.
import { circle, curve, line, pathPoints, rectangle } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point, subtractPoints } from "../../geometry/point.ts";
import { area, centredLabel, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { threadArrow } from "./thread-lines.ts";

/** Sections of the link's detail, in millimetres of paper. */
const face = { width: 44, section: 9 } as const;

/** Words for the numbers in the link's drawing. */
export const linkWords = "1 out, 2 behind the stitch below, 3 in again where you came out.";

/** How a link goes on, and what it catches. */
export interface LinkDetailSpec {
  /** Up to the section above, and not back into its own. */
  readonly climbs: boolean;
  /** Name of that section. */
  readonly above?: string;
  /** The stitch that it catches: the two legs of a link, or the one strand of a step. */
  readonly strands: 1 | 2;
}

/** From outside at one station: the new thread comes out of the upper section and goes behind the stitch that the section below it hangs on. */
export function drawLinkDetail(names: readonly [upper: string, middle: string, lower: string], { climbs, strands, above = "next section" }: LinkDetailSpec): readonly SceneItem[] {
  const x = face.width / 2;
  const y = (k: number): number => face.section * (k + 0.5);
  const behind = face.section * 2;
  const down = curve(point(x + 0.9, y(0)), point(x + 5.4, y(0) + 4), point(x + 7.6, behind - 3), point(x + 3.2, behind));
  const up = curve(point(x - 3.2, behind), point(x - 7.6, behind - 3), climbs ? point(x - 6, y(-1) + 9) : point(x - 5.4, y(0) + 4), climbs ? point(x - 0.9, y(-1)) : point(x - 0.9, y(0)));
  const hidden = line(point(x + 3.2, behind), point(x - 3.2, behind));
  const legs = strands === 1 ? [stroke(line(point(x, y(1)), point(x, y(2))), "thread-before")]
    : [-0.8, 0.8].map((by) => stroke(line(point(x + by, y(1)), point(x + by * 2.2, behind + face.section * 0.7)), "thread-before"));
  const first = climbs ? -1 : 0;
  const rows = climbs ? [above, ...names] : names;
  const head = (path: Path): SceneItem => {
    const points = pathPoints(path, 0.1)[0]!;
    const [tip, tail] = [Math.floor(points.length * 0.62), Math.floor(points.length * 0.4)];
    return threadArrow(points[tip]!, subtractPoints(points[tip]!, points[tail]!));
  };
  return [
    ...rows.flatMap((name, k) => [
      area(rectangle(0, face.section * (first + k), face.width, face.section), "paper", "edge"),
      label(`detail ${name}`, name, point(face.width + 2, y(first + k) + 1)),
    ]),
    stroke(hidden, "thread-hidden"), ...legs, stroke(down, "thread"), stroke(up, "thread"), head(down), head(up),
    ...(strands === 1 ? rows : rows.slice(0, -1)).map((_, k) => area(circle(point(x, y(first + k)), 0.9), "plate", "edge")),
    centredLabel("link 1", "1", point(x + 6.8, y(0) + 1.6), { weight: 600 }), centredLabel("link 2", "2", point(x + 5, behind + 3.4), { weight: 600 }), centredLabel("link 3", "3", point(x - 8.4, y(0) + 1.6), { weight: 600 }),
  ];
}
