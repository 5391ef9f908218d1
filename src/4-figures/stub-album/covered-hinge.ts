// Figure: the covered hinge from the inside, its turn-ins, strips and joints, and the tape over both joints.
import { line, polygon } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { fromHeadToTail, hingeEdges, middleOf } from "./hinge-edges.ts";
import type { Extent, HingeEdges } from "./hinge-edges.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for the covered hinge on paper. */
const room = { width: 50, height: 76 } as const;

/** Figure `covered-hinge`. */
export function drawCoveredHinge(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { items, scale } = placeAtScale(scalesThatFit(toMillimetres(geometry.clothWidth), toMillimetres(geometry.clothHeight), room.width, room.height), ({ factor }) => {
    const edges = hingeEdges(geometry, factor);
    const tapes = hingeTapes(edges, toMillimetres(geometry.hingeTapeWidth) * factor);
    return { fixed: [...insideOfHinge(edges), ...tapeItems(edges, tapes)], labels: labelsOf(input, edges, tapes) };
  });
  const [side, gap, spine, tape] = [geometry.sideStripWidth, geometry.jointGap, geometry.spineStripWidth, geometry.hingeTapeWidth].map(words.size);
  return {
    id: "covered-hinge",
    title: "The covered hinge, inside",
    caption: `The covered hinge from the inside, ${scale.name}. The tape lies over each joint, as far on one strip as on the other; the strips’ edges under it are drawn as hidden. ${input.unitNote}`,
    alternative: `Inside of the hinge, ${words.size(geometry.stripHeight)} high. From left to right: side strip ${side}, joint gap ${gap}, spine strip ${spine}, joint gap ${gap}, side strip ${side}. `
      + `The cloth is turned in along all four edges, its corners meet in slanting lines. Two pieces of hinge tape, each ${tape} wide and as high as the strips, cover the joints; the middle of the tape lies over the middle of the joint.`,
    items,
  };
}

/** Where the two pieces of tape lie: each centred on its joint. */
export function hingeTapes(edges: HingeEdges, width: number): readonly [Extent, Extent] {
  const over = (left: number, right: number): Extent => ({ left: (left + right) / 2 - width / 2, right: (left + right) / 2 + width / 2 });
  return [over(edges.leftStrip.right, edges.spineStrip.left), over(edges.spineStrip.right, edges.rightStrip.left)];
}

/** Strips, cloth in the joints and the four turn-ins, as one looks into the hinge. */
export function insideOfHinge(edges: HingeEdges): readonly SceneItem[] {
  const { head, tail, turnedIn } = edges;
  const [left, right] = [edges.leftStrip.left, edges.rightStrip.right];
  // Half the cloth is left on either side when the strips are too narrow for two turn-ins.
  const deep = Math.min(turnedIn, (right - left) / 2, (tail - head) / 2);
  const around = [point(left, head), point(right, head), point(right, tail), point(left, tail)] as const;
  const within = [point(left + deep, head + deep), point(right - deep, head + deep), point(right - deep, tail - deep), point(left + deep, tail - deep)] as const;
  const flaps = [0, 1, 2, 3].map((side) => {
    const next = (side + 1) % 4;
    return area(polygon([around[side]!, around[next]!, within[next]!, within[side]!]), "cloth", "edge");
  });
  return [
    area(polygon(around), "face-light", "none"),
    ...[edges.leftStrip, edges.spineStrip, edges.rightStrip].map((strip) => area(fromHeadToTail(strip, edges), "face-middle", "edge")),
    ...flaps,
    stroke(polygon(around), "outline"),
  ];
}

function tapeItems(edges: HingeEdges, tapes: readonly Extent[]): readonly SceneItem[] {
  const stripEdges = [edges.leftStrip.right, edges.spineStrip.left, edges.spineStrip.right, edges.rightStrip.left];
  return [
    ...tapes.map((tape) => area(fromHeadToTail(tape, edges), "plate", "outline")),
    ...stripEdges.map((x) => stroke(line(point(x, edges.head), point(x, edges.tail)), "hidden")),
  ];
}

function labelsOf(input: DrawingInput<"stub-album">, edges: HingeEdges, tapes: readonly [Extent, Extent]): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { head, tail, leftStrip, spineStrip, rightStrip } = edges;
  const below = (name: string, from: number, to: number, text: string): Placeable =>
    dimension({ name, from: point(from, tail), to: point(to, tail), side: "below", text, offset: 5 });
  const at = (share: number): number => head + (tail - head) * share;
  const pointing = (name: string, text: string | readonly string[], x: number, share: number): Placeable =>
    leaderAnywhere({ name, text, target: point(x, at(share)), reach: rightStrip.right - x + 3, directions: [0, 12, -12, 25, -25] });
  return [
    below("spine strip width", spineStrip.left, spineStrip.right, input.number(geometry.spineStripWidth)),
    below("side strip width", leftStrip.left, leftStrip.right, input.number(geometry.sideStripWidth)),
    below("joint gap width", spineStrip.right, rightStrip.left, input.number(geometry.jointGap)),
    dimension({ name: "hinge tape width", from: point(tapes[0].left, head), to: point(tapes[0].right, head), side: "above", text: input.number(geometry.hingeTapeWidth), offset: 5 }),
    dimension({ name: "strip height", from: point(leftStrip.left, head), to: point(leftStrip.left, tail), side: "left", text: input.number(geometry.stripHeight), offset: 5 }),
    pointing("hinge cloth", [words.part("hinge-cloth"), "turned in"], rightStrip.right - Math.min(1, edges.turnedIn / 2), 0.12),
    pointing("hinge tape", [words.part("hinge-tape"), "over the joint"], tapes[1].right - Math.min(1, (tapes[1].right - rightStrip.left) / 2), 0.35),
    pointing("side strip", words.part("side-strip"), middleOf({ left: tapes[1].right, right: rightStrip.right - edges.turnedIn }), 0.6),
    pointing("spine strip", words.part("spine-strip"), middleOf(spineStrip), 0.78),
  ];
}
