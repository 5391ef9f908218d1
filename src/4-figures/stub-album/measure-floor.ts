// Figure `measure-floor`: the folded card pressed upright, where its floor is measured, and the spine strip that must hold it.
import type { Box } from "../../geometry/box.ts";
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { breakAcross } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { halfStub, layOutOnStrip, ribbonPath, scaleForFloor, shownStubs, slotPaths, someStubsDrawn } from "./folded-card.ts";
import { sectionWords } from "../bench/section-words.ts";

const room = { width: 50, height: 26 } as const;
/** The figure stands beside the text of its step; so much of its width lies to the right of the floor. */
const widest = 81.5;
const besideRight = 24;
/** From the underside of the floor down to the spine strip: room for the floor's dimension, in millimetres of paper. */
const stripBelow = 13;

export const drawMeasureFloor: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const largest = scaleForFloor(geometry, shownStubs, room, 4);
  const { items, scale } = placeAtScale(scales.filter(({ factor }) => factor <= largest.factor), (each) => drawFloor(input, each));
  const [floor, strip] = [words.thickness(geometry.foldedFloor), words.size(geometry.spineStripWidth)];
  const some = someStubsDrawn(geometry);
  return {
    id: "measure-floor",
    title: "Measuring the folded floor",
    caption: `The folded card seen from its end, widths ${scale.name}, card drawn thicker than it is.${some} Press the stubs together and measure the floor from edge to edge; below it the spine strip, into which it must go.`,
    alternative: `The folded card seen from its end, its stubs pressed upright.${some} Its floor is planned ${floor} wide from edge to edge; the spine strip under it, drawn apart, is ${strip} wide.`,
    items,
  };
};

function drawFloor(input: DrawingInput<"stub-album">, { factor }: Scale): { readonly fixed: readonly SceneItem[]; readonly labels: readonly Placeable[]; readonly bounds: Box } {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { layers, floor, rest, stripHeight, xs } = layOutOnStrip(geometry, factor);
  const stripTop = layers.card + stripBelow;
  const stripBottom = stripTop + stripHeight;
  const half = halfStub(layers);
  const pinch = -layers.depth * 0.7;
  const fixed: SceneItem[] = [
    ...slotPaths(xs, layers).map((path) => area(path, "adhesive", "none")),
    area(ribbonPath(xs, 0, floor.width, layers), "card", "edge"),
    area(rectangle(-rest, stripTop, floor.width + 2 * rest, stripHeight), "strip", "outline"),
    ...(floor.breakAt === null ? [] : [...breakAcross(floor.breakAt, -1.5, layers.card + 1.5), ...breakAcross(floor.breakAt, stripTop - 1.5, stripBottom + 1.5)]),
    pushArrow(point(xs[0]! - half - 0.6, pinch), point(1, 0), 6),
    pushArrow(point(xs.at(-1)! + half + 0.6, pinch), point(-1, 0), 6),
  ];
  const labels = [
    dimension({ name: "floor", from: point(0, layers.card), to: point(floor.width, layers.card), side: "below", text: words.thickness(geometry.foldedFloor), offset: 5.5 }),
    dimension({ name: "strip", from: point(-rest, stripBottom), to: point(floor.width + rest, stripBottom), side: "below", text: words.size(geometry.spineStripWidth), offset: 5.5 }),
    preferredLeader({ name: "stub", text: "stub", target: point(xs.at(-1)! + half - layers.card / 2, -layers.depth * 0.4), directions: [10, 0, 20, 350], reach: 9 }),
    firstOf(
      preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(1.2, layers.card / 2), directions: [160, 150, 170], reach: 5 }),
      preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(floor.width - 1.2, layers.card / 2), directions: [20, 10, 30, 0], reach: 7 }),
    ),
    preferredLeader({ name: "spine strip", text: words.part("spine-strip"), target: point(floor.width - 1.5, stripTop + stripHeight / 2), directions: [10, 20, 0, 350], reach: 8 }),
  ];
  const right = floor.width + rest + besideRight;
  return { fixed, labels, bounds: { left: right - widest, right, top: -200, bottom: 200 } };
}
