// Figure: piercing strip and board together, pictorial: template taped on, waste board below, tool upright, the other hand away.
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
import { placeName, stripHoles } from "./hole-layout.ts";
import { sectionWords } from "../bench/section-words.ts";
import { boxOutline, face, prism } from "../bench/solid.ts";

/** Room on paper for strip and board, without the tool. */
const room = { width: 63, height: 46 } as const;
/** Rim of the waste board round the work, and its thickness, on paper. */
const waste = { rim: 4, thickness: 2.2 } as const;

/** Figure `pierce-holes`: the front cover, head to the left, its spine edge nearest. */
export function drawPierceHoles(input: DrawingInput<"stub-album">): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const holes = stripHoles(input);
  const shown = Math.min(toMillimetres(geometry.boardWidth), toMillimetres(geometry.sideStripWidth) * 2.4);
  const reach = toMillimetres(geometry.boardHeight) + shown;
  const { items, scale } = placeAtScale(scalesThatFit(reach * cos30, reach / 2, room.width, room.height), ({ factor }) => {
    const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
    const bench: Bench = {
      length: paper(geometry.stripHeight), strip: paper(geometry.sideStripWidth), inset: paper(geometry.stripInset), board: shown * factor,
      gap: paper(geometry.jointGap), spine: Math.min(paper(geometry.spineStripWidth), 6),
      boardTop: Math.max(paper(geometry.boardThickness), 0.8), stripTop: Math.max(paper(geometry.boardThickness), 0.8) + Math.max(paper(geometry.stripThickness), 0.8),
      holes: holes.map((hole) => ({ along: paper(hole.along), across: paper(hole.across), radius: Math.max(paper(hole.diameter) / 2, 0.4) })),
      isBroken: shown < toMillimetres(geometry.boardWidth),
    };
    return { fixed: benchItems(bench), labels: labelsOf(bench, input) };
  });
  const names = holes.map(placeName);
  const diameter = words.thickness(geometry.posts.holeDiameter);
  return {
    id: "pierce-holes",
    title: "Piercing strip and board together",
    caption: `The front cover with its outside up on a waste board, pictorial view, ${scale.name} along the edges; board and hinge are broken off. Pierce straight down through side strip and board, ${diameter} wide. Keep the other hand in the dashed ring, away from the tool.`,
    alternative: `A cover lies outside up on a waste board. The hole template is taped on the side strip; its marks show the holes from head to tail: ${names.join(", ")}. `
      + `The tool stands upright, at a right angle to the board, over the ${names[0]} hole; every hole is ${diameter} wide. The other hand holds the board far from the tool, beyond the strip.`,
    items,
  };
}

/** In millimetres of paper along the axes: x from the strip's head to its tail, y from its spine edge to the fore-edge, z up from the waste board. */
interface Bench {
  readonly length: number;
  readonly strip: number;
  readonly inset: number;
  readonly board: number;
  readonly gap: number;
  readonly spine: number;
  readonly boardTop: number;
  readonly stripTop: number;
  readonly holes: readonly PiercedHole[];
  readonly isBroken: boolean;
}

function benchItems(bench: Bench): readonly SceneItem[] {
  const { length, strip, inset, board, boardTop, stripTop, holes } = bench;
  const wasteOutline = boxOutline(-inset - waste.rim, -waste.rim * 0.5, length + 2 * inset + 2 * waste.rim, board + waste.rim * 0.5);
  return [
    ...prism(wasteOutline, -waste.thickness, 0, { top: "paper", left: "face-middle", right: "face-dark" }),
    ...prism(boxOutline(-inset, 0, length + 2 * inset, board), 0, boardTop, { top: "face-light", left: "face-middle", right: "face-dark" }, "edge"),
    ...farEdge(bench),
    ...handRing(bench),
    ...prism(boxOutline(0, 0, length, strip), boardTop, stripTop, { top: "face-dark", left: "face-deep", right: "face-deep" }, "edge"),
    ...restOfHinge(bench),
    ...template(bench),
    ...holes.flatMap((hole) => holeMark(hole, stripTop)),
    ...uprightPunch(isometric(spacePoint(holes[0]!.along, holes[0]!.across, stripTop)), holes[0]!.radius * 2),
    ...squareMark(holes[0]!, stripTop),
  ];
}

/** The board and the waste board go on beyond the view. */
function farEdge({ length, inset, board, boardTop, isBroken }: Bench): readonly SceneItem[] {
  if (!isBroken) return [];
  const at = (x: number, z: number): Point => isometric(spacePoint(x, board, z));
  const [left, right] = [-inset - waste.rim, length + inset + waste.rim];
  const mask = area([...wavyLine(at(left - 1, 0), at(right + 1, 0)), { kind: "line", to: at(right + 1, boardTop + 4) }, { kind: "line", to: at(left - 1, boardTop + 4) }, { kind: "close" }], "plate", "none");
  return [mask, stroke(wavyLine(at(left, 0), at(-inset, 0)), "edge"), stroke(wavyLine(at(-inset, boardTop), at(length + inset, boardTop)), "edge")];
}

/** Joint and a part of the spine strip, lying over the near edge of the waste board. */
function restOfHinge({ length, gap, spine, stripTop }: Bench): readonly SceneItem[] {
  const z = stripTop;
  const sheet = (from: number, to: number, drop: number, fill: "face-dark" | "face-deep"): SceneItem => face([
    spacePoint(0, from, z), spacePoint(length, from, z), spacePoint(length, to, z - drop), spacePoint(0, to, z - drop),
  ], fill);
  return [sheet(0, -gap, 0, "face-deep"), sheet(-gap, -gap - spine, 0, "face-dark")];
}

/** The paper template, spine-side edge on the strip's edge, held by two pieces of tape. */
function template({ length, strip, stripTop }: Bench): readonly SceneItem[] {
  const sheet = face([spacePoint(0, 0, stripTop), spacePoint(length, 0, stripTop), spacePoint(length, strip * 0.94, stripTop), spacePoint(0, strip * 0.94, stripTop)], "paper");
  const tapes = [0.3, 0.52].map((share) => face([
    spacePoint(length * share, strip * 0.8, stripTop), spacePoint(length * share + 4, strip * 0.8, stripTop), spacePoint(length * share + 4, strip * 0.8 + 3.4, stripTop), spacePoint(length * share, strip * 0.8 + 3.4, stripTop),
  ], "face-middle"));
  return [sheet, ...tapes];
}

function handCentre({ length, strip, board, boardTop }: Bench) {
  return spacePoint(length * 0.74, (strip + board) / 2, boardTop);
}

/** Where the other hand holds the board. */
function handRing(bench: Bench): readonly SceneItem[] {
  const { length, strip, board } = bench;
  const plane = isometricPlane(handCentre(bench), spacePoint(length * 0.17, 0, 0), spacePoint(0, (board - strip) * 0.38, 0));
  return [stroke(transformPath(plane, circle(point(0, 0), 1)), "placement")];
}

function labelsOf(bench: Bench, input: DrawingInput<"stub-album">): readonly Placeable[] {
  const { length, strip, inset, board, gap, spine, boardTop, stripTop, holes } = bench;
  const words = sectionWords(input);
  const tool = isometric(spacePoint(holes[0]!.along, holes[0]!.across, stripTop));
  const to = (name: string, text: string | readonly string[], x: number, y: number, z: number, directions: readonly number[], reach = 7): Placeable =>
    leaderAnywhere({ name, text, target: isometric(spacePoint(x, y, z)), directions, reach });
  const upperRight = [60, 50, 75, 40, 30, 20, 90];
  return [
    leaderAnywhere({ name: "tool", text: ["punch or drill,", "upright"], target: point(tool.x + 1, tool.y - 26), directions: [0, 15, 30, -15], reach: 6 }),
    ...holeNames(holes, { beside: gap + spine, top: stripTop }, stripHoles(input).map((hole) => ({ id: hole.id, text: `${placeName(hole)} hole` }))),
    to("hand", ["other hand", "here"], length * 0.74, (strip + board) / 2, boardTop, upperRight, 12),
    to("boards", words.part("boards"), length * 0.48, (strip + board) / 2, boardTop, upperRight, 12),
    to("template", "hole template, taped", length * 0.3 + 2, strip * 0.8 + 2, stripTop, [65, 75, 55, 85, 45], 14),
    to("spine strip", words.part("spine-strip"), length * 0.3, -gap - spine * 0.6, stripTop, [240, 250, 225, 260, 270, 280, 210, 195, 180, 290, 300], 8),
    to("side strip", [words.part("side-strip"), "under the cloth"], length - 0.5, strip * 0.5, (boardTop + stripTop) / 2, [265, 275, 255, 285, 245], 12),
    to("waste board", "waste board", length + inset + waste.rim * 0.6, board * 0.6, 0, [265, 275, 285, 255, 295, 305, 315, 0], 9),
  ];
}
