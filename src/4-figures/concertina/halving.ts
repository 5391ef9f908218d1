// Figure `halving`: round by round, which two places are brought together and which fold that makes.
import { line, polyline } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { HalvingFold } from "../../2-model/concertina/geometry.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";
import { movementArrow } from "../movement.ts";
import { label, labelType, smallestType, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { zigzagPoints } from "./zigzag.ts";

type Input = DrawingInput<"concertina">;

/** Length of the strip on paper, and the highest arrow above it. */
const room = { width: 112, arrow: 9 } as const;

/** Figure `halving`; none where the folds are scored. */
export function drawHalving(input: Input): FigureDraft | null {
  const { geometry } = input.model;
  if (geometry.folding !== "halving" || geometry.halving.length === 0) return null;
  const rounds = Array.from({ length: geometry.halving.at(-1)!.round }, (_, index) => geometry.halving.filter((fold) => fold.round === index + 1));
  const several = rounds.length > 1;
  return {
    id: "halving",
    title: "Folding by halving",
    caption: `Order of the folds; the strip is seen from the head, edge-on, not to scale. Each arrow brings one place onto another; the fold falls midway and bears the number below.${several ? " Mountain folds are made with the back up, and opened again; left and right are then exchanged." : ""}`,
    alternative: `${rounds.map((folds, index) => `Round ${index + 1}, ${sideUp(folds)} up: ${folds.map((fold) => `${placeName(fold.from, geometry.panels)} onto ${placeName(fold.onto, geometry.panels)} makes fold ${fold.fold}, a ${fold.direction} fold`).join("; ")}`).join(". ")}. At the end the strip is folded up zigzag.`,
    items: viewsBelow([
      ...rounds.map((folds, index) => withHeading(`round ${index + 1}`, `Round ${index + 1}, ${sideUp(folds)} up: ${folds.length === 1 ? "fold" : "folds"} ${folds.map((fold) => fold.fold).join(", ")}`, drawRound(geometry.panels, folds, rounds.slice(0, index).flat()))),
      withHeading("folded up", several ? "Then fold it up, front up" : "Folded", foldedUp(geometry.panels)),
    ], 4),
  };
}

function sideUp(folds: readonly HalvingFold[]): "back" | "front" {
  return folds[0]!.direction === "mountain" ? "back" : "front";
}

function placeName(fold: number, panels: number): string {
  return fold === 0 ? "the left edge" : fold === panels ? "the right edge" : `fold ${fold}`;
}

/** The flat strip with the folds that are there (ticks), the new ones (heavy numbers) and an arrow for each. Turned over, its left edge lies right. */
function drawRound(panels: number, folds: readonly HalvingFold[], there: readonly HalvingFold[]): readonly SceneItem[] {
  const turned = sideUp(folds) === "back";
  const x = (fold: number): number => ((turned ? panels - fold : fold) / panels) * room.width;
  const span = Math.abs(x(folds[0]!.onto) - x(folds[0]!.from));
  const bulge = Math.min(room.arrow, span * 0.3);
  const inset = Math.min(0.8, span * 0.08);
  const ends = turned ? ["right", "left"] : ["left", "right"];
  return [
    stroke(line(point(0, 0), point(room.width, 0)), "outline"),
    label("left end", ends[0]!, point(-2, 1), { anchor: "end" }),
    label("right end", ends[1]!, point(room.width + 2, 1)),
    ...there.flatMap((fold) => [stroke(line(point(x(fold.fold), -1.1), point(x(fold.fold), 1.1)), "edge"), label(`fold ${fold.fold} there ${folds[0]!.round}`, String(fold.fold), point(x(fold.fold), 4.6), { anchor: "middle", size: smallestType })]),
    ...folds.flatMap((fold): readonly SceneItem[] => {
      const [from, onto] = [x(fold.from), x(fold.onto)];
      const rightwards = onto > from ? 1 : -1;
      return [
        stroke(line(point(x(fold.fold), -1.6), point(x(fold.fold), 1.6)), "outline"),
        ...movementArrow(point(from + inset * rightwards, -1.4), point(onto - inset * rightwards, -1.4), bulge * rightwards),
        label(`fold ${fold.fold} new`, String(fold.fold), point(x(fold.fold), 4.6), { anchor: "middle", size: smallestType, weight: 600 }),
      ];
    }),
  ];
}

/** The zigzag with the numbers of its folds where they have room. */
function foldedUp(panels: number): readonly SceneItem[] {
  const across = Math.min(9, room.width / panels);
  const points = zigzagPoints(panels, across, 8);
  return [
    stroke(polyline(points), "outline"),
    ...points.slice(1, -1).flatMap((at, index) => {
      const fold = index + 1;
      const below = fold % 2 === 1;
      return [label(`fold ${fold} up`, String(fold), point(at.x, below ? at.y + labelType * 0.72 + 1.4 : at.y - 1.2), { anchor: "middle", size: smallestType })];
    }),
  ];
}
