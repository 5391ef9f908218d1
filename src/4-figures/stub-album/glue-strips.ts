// Figure: the cloth, wrong side up, with the strips being laid on their placement lines, and the same seen from the tail.
import type { PlacementLine } from "../../2-model/types.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { balloon, drawBalloon, grainArrow, gridCentres, leaderAnywhere } from "../leaders.ts";
import { pushArrow } from "../movement.ts";
import { placementLines } from "../placement-lines.ts";
import type { Placeable } from "../place.ts";
import { runningDimensions } from "../running-dimensions.ts";
import { scalesThatFit } from "../scale.ts";
import { area, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { fromHeadToTail, hingeEdges, middleOf } from "./hinge-edges.ts";
import type { Extent, HingeEdges } from "./hinge-edges.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the cloth itself on paper: beside it stand the sizes. */
const room = { width: 42, height: 72 } as const;
/** Narrowest strip on paper that has room for its number. */
const numberRoom = 5.6;
/** Thickness of what is seen from the tail, on paper: too thick, so that layers can be told apart. */
const layers = { cloth: 0.9, adhesive: 0.7, strip: 2.6, lifted: 7.5 } as const;

/** Figure `glue-strips`. */
export function drawGlueStrips(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.clothWidth), toMillimetres(geometry.clothHeight), room.width, room.height), ({ factor }) => {
    const edges = hingeEdges(geometry, factor);
    const plan = planItems(input, edges);
    const viewTop = edges.cloth.height + 19;
    return {
      fixed: [...plan, ...tailView(edges, viewTop)],
      labels: [...orderNumbers(edges), ...partLabels(input, edges, words.part)],
    };
  });
  const sizes = [geometry.sideStripWidth, geometry.jointGap, geometry.spineStripWidth].map(words.size);
  return {
    id: "glue-strips",
    title: "Gluing the strips to the hinge cloth",
    caption: `Hinge cloth with its wrong side up, ${scale.name}. Lay the spine strip first (1), then the side strips (2, 3), each adhesive down on its placement lines. Positions are measured from the ring at 0. Below, the same seen from the tail; thickness is not to scale. ${input.unitNote}`,
    alternative: `${words.part("hinge-cloth")}, ${words.size(geometry.clothHeight)} high × ${words.size(geometry.clothWidth)} wide, wrong side up. `
      + `Placement lines from its left edge: ${positions(input, "vertical")}. From its head edge: ${positions(input, "horizontal")}. `
      + `The spine strip (${sizes[2]} wide) is laid first in the middle, then a side strip (${sizes[0]}) on either side, each ${sizes[1]} from the spine strip. `
      + "Seen from the tail: strips 1 and 2 lie in their adhesive on the cloth, strip 3 comes down with adhesive on its underside.",
    items,
  };
}

function clothLines(input: DrawingInput<"stub-album">, direction: PlacementLine["direction"]): readonly PlacementLine[] {
  return placementLines(input.model.parts, "hinge-cloth", direction);
}

function positions(input: DrawingInput<"stub-album">, direction: "vertical" | "horizontal"): string {
  const { size } = sectionWords(input);
  return clothLines(input, direction).map((mark) => `${mark.name} ${size(mark.at)}`).join("; ");
}

function planItems(input: DrawingInput<"stub-album">, edges: HingeEdges): readonly SceneItem[] {
  const { geometry } = input.model;
  const { width, height } = edges.cloth;
  const scaleOf = width / toMillimetres(geometry.clothWidth);
  const across = clothLines(input, "vertical").map((mark) => ({ name: mark.name, at: toMillimetres(mark.at) * scaleOf, text: input.number(mark.at) }));
  const down = clothLines(input, "horizontal").map((mark) => ({ name: mark.name, at: toMillimetres(mark.at) * scaleOf, text: input.number(mark.at) }));
  const above = runningDimensions({
    name: "from the left edge", side: "above", edge: 0, datum: 0, low: -15, high: width + 15,
    marks: [{ name: "left edge", at: 0, text: "0" }, ...across, { name: "right edge", at: width, text: input.number(geometry.clothWidth) }],
  })!;
  const beside = runningDimensions({
    name: "from the head edge", side: "left", edge: 0, datum: 0, low: -15, high: height + 15,
    marks: [{ name: "head edge", at: 0, text: "0" }, ...down, { name: "tail edge", at: height, text: input.number(geometry.clothHeight) }],
  })!;
  return [
    area(rectangle(0, 0, width, height), "face-light", "outline"),
    ...across.map(({ at }) => stroke(line(point(at, 0), point(at, height)), "placement")),
    ...down.map(({ at }) => stroke(line(point(0, at), point(width, at)), "placement")),
    area(fromHeadToTail(edges.spineStrip, edges), "face-middle", "outline"),
    area(fromHeadToTail(edges.leftStrip, edges), "face-middle", "outline"),
    ...above.items, ...beside.items,
  ];
}

/** Cloth and strips edge-on, under the plan and in line with it. */
function tailView(edges: HingeEdges, top: number): readonly SceneItem[] {
  const { width } = edges.cloth;
  const strip = ({ left, right }: Extent, lift: number): readonly SceneItem[] => [
    area(rectangle(left, top - layers.adhesive - lift, right - left, layers.adhesive), "adhesive", "none"),
    area(rectangle(left, top - layers.adhesive - layers.strip - lift, right - left, layers.strip), "face-middle", "outline"),
  ];
  const third = middleOf(edges.rightStrip);
  return [
    area(rectangle(0, top, width, layers.cloth), "face-deep", "none"),
    ...strip(edges.spineStrip, 0), ...strip(edges.leftStrip, 0), ...strip(edges.rightStrip, layers.lifted),
    pushArrow(point(third, top - 0.6), point(0, 1), layers.lifted - layers.adhesive - 1),
    label("seen from the tail", "seen from the tail", point(0, top + layers.cloth + 4)),
  ];
}

/** The order of laying: a number on each strip, under it where the strip is too narrow on paper. */
function orderNumbers(edges: HingeEdges): readonly Placeable[] {
  const order: readonly (readonly [number: string, extent: Extent])[] = [["1", edges.spineStrip], ["2", edges.leftStrip], ["3", edges.rightStrip]];
  return order.map(([number, extent]) => {
    const name = `strip ${number}`;
    const inside = extent.right - extent.left < numberRoom ? [] : gridCentres({ ...extent, top: edges.head, bottom: edges.tail }, 1, 5);
    const under = balloon({ name, letter: number, target: point(middleOf(extent), edges.tail - 0.8), reach: edges.cloth.height - edges.tail + 2, directions: number === "2" ? [270, 255, 240] : [270, 285, 300] });
    return { name, candidates: [...inside.map((centre) => drawBalloon(name, number, centre)), ...under.candidates] };
  });
}

function partLabels(input: DrawingInput<"stub-album">, edges: HingeEdges, part: (id: string) => string): readonly Placeable[] {
  const at = (share: number): number => edges.head + (edges.tail - edges.head) * share;
  const right = { directions: [0, 15, -15, 30, -30], end: "dot" } as const;
  const reach = (x: number): number => edges.cloth.width - x + 3;
  const clothAt = (edges.rightStrip.right + edges.cloth.width) / 2;
  return [
    leaderAnywhere({ name: "hinge cloth", text: [part("hinge-cloth"), "wrong side up"], target: point(clothAt, at(0.08)), reach: reach(clothAt), ...right }),
    leaderAnywhere({ name: "side strip", text: [part("side-strip"), "goes here"], target: point(edges.rightStrip.right - 1, at(0.32)), reach: reach(edges.rightStrip.right - 1), ...right }),
    leaderAnywhere({ name: "spine strip", text: part("spine-strip"), target: point(edges.spineStrip.right - 1, at(0.6)), reach: reach(edges.spineStrip.right - 1), ...right }),
    leaderAnywhere({ name: "joint gap", text: ["joint gap", `${input.number(input.model.geometry.jointGap)} on each side`], target: point((edges.spineStrip.right + edges.rightStrip.left) / 2, at(0.75)), reach: reach(edges.spineStrip.right), ...right }),
    grainArrow("grain", "height", [...gridCentres({ ...edges.spineStrip, top: edges.head, bottom: edges.tail }, 5, 7), ...besideCloth(edges)]),
  ];
}

/** Places right of the cloth and of its labels, from the tail upwards. */
function besideCloth({ cloth }: HingeEdges): readonly Point[] {
  return [8, 14, 20, 26, 32, 38].flatMap((out) => [0.9, 1, 0.75, 0.6, 0.4, 0.2].map((share) => point(cloth.width + out, cloth.height * share)));
}
