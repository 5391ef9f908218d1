// Figure `glue-floor`: the folded card glued to the spine strip, pressed down between the stubs.
import { capital } from "../../3-plan/wording.ts";
import type { Box } from "../../geometry/box.ts";
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import { breakAcross } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { halfStub, layOutOnStrip, ribbonPath, scaleForFloor, shownStubs, slotPaths, someStubsDrawn } from "./folded-card.ts";
import type { FloorLayout, VisibleLayers } from "./folded-card.ts";
import { sectionWords } from "../bench/section-words.ts";

const room = { width: 49, height: 36 } as const;

/** The drawing with its labels stands beside the text of its step; so much of its width lies to the right of the spine strip. */
const widest = 81.5;
const besideRight = 30;

export const drawGlueFloor: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const largest = scaleForFloor(geometry, shownStubs, room, 4);
  const { items, scale } = placeAtScale(scales.filter(({ factor }) => factor <= largest.factor), (each) => drawFloor(input, each));
  const [margin, strip, floor] = [words.size(geometry.margin), words.size(geometry.spineStripWidth), words.thickness(geometry.foldedFloor)];
  const some = someStubsDrawn(geometry);
  return {
    id: "glue-floor",
    title: "Glueing the floor to the spine strip",
    caption: `Section, widths and depth ${scale.name}, layers drawn thicker than they are.${some} ${capital(words.adhesive("floor"))} over the whole floor; the floor lies in the middle of the spine strip, its two margins alike. `
      + "Pressing strips between the stubs carry the weight down to the floor.",
    alternative: `Section across the spine. From below: ${words.part("hinge-cloth")}, ${words.part("spine-strip")}, ${words.adhesive("floor")}, floor of ${words.part("card")} with its stubs standing up.${some} `
      + `The spine strip is ${strip} wide, the folded floor ${floor}; it lies in the middle, with a margin of ${margin} outside the first stub and the same outside the last. `
      + "Pressing strips, higher than the stubs, stand on the floor between the stubs and on both margins; a board with a weight on it lies on the strips.",
    items,
  };
};

function drawFloor(input: DrawingInput<"stub-album">, { factor }: Scale): { readonly fixed: readonly SceneItem[]; readonly labels: readonly Placeable[]; readonly bounds: Box } {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { layers, floor, rest, stripHeight, xs } = layOutOnStrip(geometry, factor);
  const [left, right] = [-rest, floor.width + rest];
  const stripTop = layers.card + layers.adhesive;
  const clothTop = stripTop + stripHeight;
  const bottom = clothTop + layers.cloth;
  const presses = pressingStrips(floor, layers);
  const pressTop = -layers.depth - 4;
  const boardTop = pressTop - 3;
  const fixed: SceneItem[] = [
    area(rectangle(left - 4, clothTop, right - left + 8, layers.cloth), "cloth", "edge"),
    area(rectangle(left, stripTop, right - left, stripHeight), "strip", "outline"),
    area(rectangle(0, layers.card, floor.width, layers.adhesive), "adhesive", "none"),
    ...slotPaths(xs, layers).map((path) => area(path, "adhesive", "none")),
    area(ribbonPath(xs, 0, floor.width, layers), "card", "edge"),
    ...presses.map(({ from, to }) => area(rectangle(from, pressTop, to - from, -pressTop), "none", "edge")),
    area(rectangle(0, boardTop, floor.width, 3), "plate", "edge"),
    ...(floor.breakAt === null ? [] : breakAcross(floor.breakAt, boardTop - 1.5, bottom + 1.5)),
    pushArrow(point(floor.width / 2, boardTop - 0.5), point(0, 1)),
  ];
  const first = floor.stubs[0]!.x - (toMillimetres(geometry.stubGrowth) * factor) / 2;
  const last = floor.stubs.at(-1)!.x + (toMillimetres(geometry.stubGrowth) * factor) / 2;
  const press = presses.at(-1);
  const labels = [
    dimension({ name: "margin left", from: point(0, bottom), to: point(first, bottom), side: "below", text: words.size(geometry.margin), offset: 5, outside: "before" }),
    dimension({ name: "margin right", from: point(last, bottom), to: point(floor.width, bottom), side: "below", text: words.size(geometry.margin), offset: 5 }),
    preferredLeader({ name: "weight", text: "weight", target: point(floor.width / 2, boardTop - 5), end: "none", directions: [20, 0, 30, 45], reach: 5 }),
    ...(press ? [preferredLeader({ name: "press", text: "pressing strip", target: point((press.from + press.to) / 2, pressTop * 0.75), directions: [20, 0, 30, 10], reach: 6 })] : []),
    preferredLeader({ name: "stub", text: "stub", target: point(xs.at(-1)! + halfStub(layers) - layers.card / 2, -layers.depth * 0.5), directions: [10, 0, 20, 350], reach: 12 }),
    preferredLeader({ name: "floor", text: `${words.part("card")}, floor`, target: point(floor.width - 1.2, layers.card / 2), directions: [40, 30, 50, 20], reach: 7 }),
    preferredLeader({ name: "adhesive", text: words.adhesiveLines("floor"), target: point(floor.width - 0.4, layers.card + layers.adhesive / 2), directions: [10, 0, 20, 350], reach: 8 }),
    preferredLeader({ name: "strip", text: [`${words.part("spine-strip")},`, `${words.size(geometry.spineStripWidth)} wide`], target: point(right - 1, stripTop + stripHeight / 2), directions: [340, 330, 350, 320], reach: 9 }),
    preferredLeader({ name: "cloth", text: words.part("hinge-cloth"), target: point(right + 3, clothTop + layers.cloth / 2), directions: [310, 300, 320], reach: 8 }),
  ];
  return { fixed, labels, bounds: { left: right + besideRight - widest, right: right + besideRight, top: -200, bottom: 200 } };
}

/** Where pressing strips stand: in every drawn gap and on both margins, a little clear of the stubs; none where a gap is too narrow to draw one. */
function pressingStrips(floor: FloorLayout, layers: VisibleLayers): readonly { readonly from: number; readonly to: number }[] {
  const half = halfStub(layers) + 0.6;
  const edges = [0.6 - half, ...floor.stubs.map(({ x }) => x), floor.width - 0.6 + half];
  return edges.slice(1).flatMap((to, index) => {
    const from = edges[index]!;
    const crossesBreak = floor.breakAt !== null && from < floor.breakAt && floor.breakAt < to;
    const strip = { from: from + half, to: to - half };
    return crossesBreak || strip.to - strip.from < 1 ? [] : [strip];
  });
}
