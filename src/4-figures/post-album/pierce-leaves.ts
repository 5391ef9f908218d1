// Figure: piercing a pile of leaves, pictorial: template taped on, clamped on waste board, tool upright, the other hand away.
import { circle, transformPath } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { cos30, isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { wavyLine } from "../breaks.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { uprightPunch } from "../bench/bench-tools.ts";
import { holeMark, holeNames, squareMark } from "../bench/piercing.ts";
import type { PiercedHole } from "../bench/piercing.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxOutline, face, prism } from "../bench/solid.ts";
import { leafHoles } from "./leaf-layout.ts";

/** Room on paper for the pile, without the tool. */
const room = { width: 63, height: 46 } as const;
/** Rim of the waste board round the work, and its thickness, on paper. */
const waste = { rim: 5, thickness: 2.2 } as const;

/** Figure `pierce-leaves`: head to the left, spine edge nearest. */
export function drawPierceLeaves(input: DrawingInput<"post-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const holes = leafHoles(input);
  const shown = Math.min(toMillimetres(geometry.leafWidth), toMillimetres(geometry.hingeWidth) * 2.8);
  const reach = toMillimetres(geometry.leafHeight) + shown;
  const { items, scale } = placeAtScale(scalesThatFit(reach * cos30, reach / 2, room.width, room.height), ({ factor }) => {
    const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
    const pile: Pile = {
      length: paper(geometry.leafHeight), hinge: paper(geometry.hingeWidth), width: shown * factor, top: 3,
      holes: holes.map((hole) => ({ along: paper(hole.along), across: paper(hole.across), radius: Math.max(paper(hole.diameter) / 2, 0.4) })),
      isBroken: shown < toMillimetres(geometry.leafWidth),
    };
    return { fixed: pileItems(pile), labels: labelsOf(pile, input) };
  });
  const diameter = words.thickness(geometry.posts.holeDiameter);
  const { leaves } = geometry.lots;
  const what = geometry.guardStrips > 0 ? "Guards are pierced in the same way. " : "";
  return {
    id: "pierce-leaves",
    title: "Piercing the leaves",
    caption: `A lot of ${leaves} ${leaves === 1 ? "leaf" : "leaves"}, front up on a waste board, spine edge towards you; pictorial view, ${scale.name} along the edges, broken off at the back, the pile higher than it is. Pierce straight down, ${diameter} wide. ${what}Keep the other hand in the dashed ring, away from the tool.`,
    alternative: `A pile of leaves, knocked up at head and spine edge, lies on a waste board, clamped between scraps of board. The hole template is taped on it; its marks show the holes from head to tail: ${holes.map((hole) => hole.id.replace(/-/g, " ")).join(", ")}. `
      + `The tool stands upright over the ${holes[0]!.id} hole; every hole is ${diameter} wide. The other hand holds the pile far from the tool.`,
    items,
  };
}

/** In millimetres of paper along the axes: x from the head to the tail, y from the spine edge to the fore-edge, z up from the waste board. */
interface Pile {
  readonly length: number;
  readonly hinge: number;
  readonly width: number;
  readonly top: number;
  readonly holes: readonly PiercedHole[];
  readonly isBroken: boolean;
}

function pileItems(pile: Pile): readonly SceneItem[] {
  const { length, width, top, holes } = pile;
  return [
    ...prism(boxOutline(-waste.rim, -waste.rim, length + 2 * waste.rim, width + waste.rim), -waste.thickness, 0, { top: "paper", left: "face-middle", right: "face-dark" }),
    ...prism(boxOutline(0, 0, length, width), 0, top, { top: "face-light", left: "paper", right: "paper" }),
    ...leafEdges(pile),
    ...farEdge(pile), ...handRing(pile), ...template(pile), ...clamp(pile),
    ...holes.flatMap((hole) => holeMark(hole, top)),
    ...uprightPunch(isometric(spacePoint(holes[0]!.along, holes[0]!.across, top)), holes[0]!.radius * 2),
    ...squareMark(holes[0]!, top),
  ];
}

/** Single leaves along the near edge and the tail. */
function leafEdges({ length, width, top }: Pile): readonly SceneItem[] {
  return [0.25, 0.5, 0.75].map((share) => {
    const z = top * share;
    const [a, b, c] = [spacePoint(0, 0, z), spacePoint(length, 0, z), spacePoint(length, width, z)].map(isometric) as [Point, Point, Point];
    return stroke([{ kind: "move", to: a }, { kind: "line", to: b }, { kind: "line", to: c }], "edge");
  });
}

/** Pile and waste board go on beyond the view. */
function farEdge({ length, width, top, isBroken }: Pile): readonly SceneItem[] {
  if (!isBroken) return [];
  const at = (x: number, z: number): Point => isometric(spacePoint(x, width, z));
  const [left, right] = [-waste.rim, length + waste.rim];
  const mask = area([...wavyLine(at(left - 1, 0), at(right + 1, 0)), { kind: "line", to: at(right + 1, top + 4) }, { kind: "line", to: at(left - 1, top + 4) }, { kind: "close" }], "plate", "none");
  return [mask, stroke(wavyLine(at(left, 0), at(0, 0)), "edge"), stroke(wavyLine(at(0, top), at(length, top)), "edge")];
}

/** The paper template, spine-side edge on the pile's edge, held by two pieces of tape. */
function template({ length, hinge, top }: Pile): readonly SceneItem[] {
  const level = (x: number, y: number) => spacePoint(x, y, top);
  return [
    face([level(0, 0), level(length, 0), level(length, hinge), level(0, hinge)], "paper"),
    ...[0.3, 0.56].map((share) => face([level(length * share, hinge * 0.85), level(length * share + 4, hinge * 0.85), level(length * share + 4, hinge * 0.85 + 3.4), level(length * share, hinge * 0.85 + 3.4)], "face-middle")),
  ];
}

/** The jaw of a clamp on a scrap of board, at the tail. */
function clamp({ length, hinge, width, top }: Pile): readonly SceneItem[] {
  const y = Math.min(hinge * 1.25, width * 0.6);
  const across = Math.min(5, width * 0.3);
  return [
    ...prism(boxOutline(length - 9, y, 9, across), top, top + 1, { top: "face-middle", left: "face-dark", right: "face-deep" }),
    ...prism(boxOutline(length - 6, y + across * 0.25, 13, across * 0.5), top + 1, top + 2.4, { top: "metal", left: "face-deep", right: "face-deep" }),
  ];
}

function handCentre({ length, hinge, width, top }: Pile) {
  return spacePoint(length * 0.45, (hinge + width) / 2 + width * 0.06, top);
}

/** Where the other hand holds the pile. */
function handRing(pile: Pile): readonly SceneItem[] {
  const plane = isometricPlane(handCentre(pile), spacePoint(pile.length * 0.15, 0, 0), spacePoint(0, (pile.width - pile.hinge) * 0.3, 0));
  return [stroke(transformPath(plane, circle(point(0, 0), 1)), "placement")];
}

function labelsOf(pile: Pile, input: DrawingInput<"post-album">): readonly Placeable[] {
  const { length, hinge, width, top, holes } = pile;
  const words = sectionWords(input);
  const tool = isometric(spacePoint(holes[0]!.along, holes[0]!.across, top));
  const to = (name: string, text: string | readonly string[], x: number, y: number, z: number, directions: readonly number[], reach = 7): Placeable =>
    leaderAnywhere({ name, text, target: isometric(spacePoint(x, y, z)), directions, reach });
  const upperRight = [60, 50, 75, 40, 30, 20, 90];
  return [
    leaderAnywhere({ name: "tool", text: ["punch or drill,", "upright"], target: point(tool.x + 1, tool.y - 26), directions: [0, 15, 30, -15], reach: 6 }),
    ...holeNames(holes, { beside: waste.rim, top }, leafHoles(input).map((hole) => ({ id: hole.id, text: `${hole.id.replace(/-/g, " ")} hole` }))),
    to("hand", ["other hand", "here"], length * 0.45, (hinge + width) / 2 + width * 0.06, top, upperRight, 14),
    to("template", "hole template, taped", length * 0.3 + 2, hinge * 0.85 + 2, top, [65, 75, 55, 85, 45], 18),
    to("leaf", [words.part("leaf"), `${input.model.geometry.lots.leaves} in a lot`], length * 0.86, (hinge + width) / 2, top, upperRight, 12),
    to("clamp", "clamp", length + 5, Math.min(hinge * 1.25, width * 0.6) + 1, top + 2.4, [20, 30, 10, 0, 40, -10], 8),
    to("waste board", "waste board", length + waste.rim * 0.8, -waste.rim * 0.4, 0, [265, 275, 285, 255, 295, 305, 315, 0], 7),
  ];
}
