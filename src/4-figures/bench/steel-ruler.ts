// A steel ruler lying along a line: graduated from its very end, its far end left out.
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { inches, mm, toMillimetres } from "../../units/length.ts";
import type { Unit } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import { area, label, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";

/** Where a ruler lies and what is shown of it. */
export interface RulerSpec {
  /** Left end of the graduated edge on paper: the ruler's zero. */
  readonly x: number;
  readonly y: number;
  /** Where the body lies as seen from the graduated edge. */
  readonly body: "above" | "below";
  /** Whole centimetres or inches that are shown. */
  readonly shown: number;
  readonly unit: Unit;
  /** Millimetres of paper for one millimetre. */
  readonly factor: number;
  /** The figure set heavy: what must be read here, in millimetres or inches. */
  readonly reading: number;
}

/** Width of a common pocket ruler and how far the shown piece goes on behind the last figure, in millimetres. */
const body = { width: 18, rest: 6 } as const;

/** One numbered division: its length, what its figure counts, and its parts with their tick lengths on paper, coarse to fine. */
const divisions = {
  mm: { length: toMillimetres(mm(10)), counts: 10, parts: 10, tick: (part: number) => (part === 0 ? 3.4 : part === 5 ? 2.6 : 1.7) },
  in: { length: toMillimetres(inches(1)), counts: 1, parts: 8, tick: (part: number) => (part === 0 ? 3.4 : part === 4 ? 2.6 : part % 2 === 0 ? 2 : 1.4) },
} as const;

/** Reach of the ruler on paper: the body's depth and the shown length. */
export function rulerSize({ shown, unit, factor }: Pick<RulerSpec, "shown" | "unit" | "factor">): { readonly width: number; readonly length: number } {
  return { width: body.width * factor, length: (shown * divisions[unit].length + body.rest) * factor };
}

/** The ruler as scene items; figures are the labels `ruler 10`, `ruler 20` …; the zero bears none, it is the ruler's end. */
export function steelRuler(spec: RulerSpec): readonly SceneItem[] {
  const { x, y, unit, factor, shown } = spec;
  const { width, length } = rulerSize(spec);
  const outward = spec.body === "below" ? 1 : -1;
  const { length: division, counts, parts, tick } = divisions[unit];
  const [left, right, near, far] = [x, x + length, y, y + outward * width];
  const end = wavyLine(point(right, near), point(right, far));
  return [
    area([...end, { kind: "line", to: point(left, far) }, { kind: "line", to: point(left, near) }, { kind: "close" }], "face-light", "none"),
    stroke([{ kind: "move", to: point(right, near) }, { kind: "line", to: point(left, near) }, { kind: "line", to: point(left, far) }, { kind: "line", to: point(right, far) }], "outline"),
    stroke(end, "edge"),
    ...Array.from({ length: shown * parts }, (_, index) => index + 1).map((index) => {
      const at = x + (index / parts) * division * factor;
      return stroke(line(point(at, y), point(at, y + outward * tick(index % parts))), "edge");
    }),
    ...Array.from({ length: shown }, (_, index) => index + 1).map((index) => {
      const baseline = spec.body === "below" ? y + 4.2 + smallestType * 0.68 : y - 4.2;
      return label(`ruler ${index * counts}`, String(index * counts), point(x + index * division * factor, baseline), {
        anchor: "middle", size: smallestType, weight: index * counts === spec.reading ? 600 : 400,
      });
    }),
  ];
}
