// Figure: the front cover folded right back over the post heads, cut through: what the joint gap is for.
import { bandAlong } from "../../geometry/band.ts";
import { arc, pathPoints, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isLess, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { raggedEnd, raggedTop } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { fittingScale, scales } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";
import { coveringId } from "./cover-plan.ts";

type Input = DrawingInput<"post-album">;

/** Board shown beyond the spine edge, and the height of what is shown of leaves and guards, on paper. */
const shown = { beyondSpine: 16, stack: 8 } as const;

/** Figure `open-cover`. */
export function drawOpenCover(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const wished = fittingScale(toMillimetres(geometry.hingeWidth) + toMillimetres(geometry.jointGap), toMillimetres(geometry.boardThickness) * 3, 72, 20, 4);
  const { items, scale } = placeAtScale([wished, ...scales.filter(({ factor }) => factor > wished.factor && factor <= wished.factor * 2).toReversed()], ({ factor }) => {
    const view = layOut(input, factor);
    return { fixed: sectionItems(input, view), labels: labelsOf(input, view) };
  });
  const narrow = isLess(geometry.jointGap, geometry.leastJointGap);
  const result = narrow ? `This joint, ${words.size(geometry.jointGap)}, is narrower than that: the cover will not lie back as far as drawn` : `This joint is ${words.size(geometry.jointGap)}`;
  return {
    id: "open-cover",
    title: "The cover folded right back",
    caption: `Section through the hinge, ${scale.name}, the front cover folded back until it lies on the post heads, adhesive left out. Its joint turns through half a circle round the heads, which needs ${words.thickness(geometry.foldGap)}, and the lining needs ${words.thickness(geometry.leastJointGap)} to reach the bottom of the joint. ${result}.`,
    alternative: `The hinge strip of the front cover lies on the leaves, a post head on it. The board is folded back over it, its outside down on the post head, and reaches beyond the spine edge. Cloth and lining of the joint run from the hinge strip in half a circle up to the board. ${result}.`,
    items,
  };
}

/** On paper: x from the spine edge, y down from the outer face of the hinge strip's cloth. */
interface View {
  readonly strip: number;
  readonly board: number;
  readonly cloth: number;
  readonly head: number;
  readonly straight: number;
  readonly boardWidth: number;
  readonly lap: number;
  readonly leaf: number;
  readonly guard: number;
  readonly axis: number;
  readonly barrel: number;
}

function layOut({ model: { geometry } }: Input, factor: number): View {
  const mm = (length: Length): number => toMillimetres(length) * factor;
  return {
    strip: mm(geometry.hingeWidth), board: mm(geometry.boardThickness), cloth: mm(geometry.clothThickness), head: Math.max(mm(geometry.posts.head), 0.6),
    straight: Math.max(0, (mm(geometry.jointGap) - mm(geometry.foldGap)) / 2), boardWidth: mm(geometry.boardWidth), lap: mm(geometry.clothLap),
    leaf: Math.max(mm(geometry.leafThickness), 0.4), guard: mm(geometry.guardThickness), axis: mm(geometry.posts.across), barrel: mm(geometry.posts.barrel) / 2,
  };
}

/** A line of the joint, `out` outside of the heads' half circle: along the strip, round, and back along the board. */
function roundTheHeads({ strip, straight, head }: View, out: number, from: number, to: number): readonly Point[] {
  const [right, radius] = [strip + straight, head / 2 + out];
  const turn = pathPoints(arc(point(right, out), point(right, -head - out), radius, false, false), 0.02)[0]!;
  return [point(from, out), ...turn, point(to, -head - out)];
}

function sectionItems(input: Input, view: View): readonly SceneItem[] {
  const { strip, board, cloth, head, boardWidth, lap, axis, barrel } = view;
  const left = Math.max(strip - boardWidth, -shown.beyondSpine);
  const isBroken = strip - boardWidth < left;
  const end = isBroken ? left - 1 : left;
  const top = -head - 2 * cloth - board;
  const inside = cloth + board;
  const covered = bandAlong(roundTheHeads(view, cloth / 2, 0, end), cloth);
  const around: readonly Point[] = [point(strip * 0.45, inside + cloth / 2), point(strip + cloth / 2, inside + cloth / 2), ...roundTheHeads(view, cloth * 1.5, strip + cloth / 2, strip + cloth / 2), point(strip + cloth / 2, -head - cloth - board - cloth / 2), point(Math.max(strip - lap, end), -head - cloth - board - cloth / 2)];
  return [
    ...stackBelow(input, view, inside + cloth),
    area(bandAlong(around, cloth), "tape", "edge"),
    area(covered, "cloth", "edge"),
    area(rectangle(0, cloth, strip, board), "strip", "outline"),
    area(rectangle(end, -head - cloth - board, strip - end, board), "board", "outline"),
    ...(isBroken ? raggedEnd(left, top - 1, -head + 1, -1) : []),
    area(rectangle(axis - barrel, 0, barrel * 2, inside + cloth + shown.stack), "metal", "outline"),
    area(rectangle(axis - barrel * 2, -head, barrel * 4, head), "metal", "outline"),
    ...raggedTop(inside + cloth + shown.stack, -1, strip + view.straight + 16, 1),
    ...movementArrow(point(strip + view.straight + 16, -2), point(strip + view.straight + 4, top - 4), 5),
  ];
}

/** The first leaves and guards under the front cover. */
function stackBelow({ model: { geometry } }: Input, { strip, straight, leaf, guard }: View, top: number): readonly SceneItem[] {
  const right = strip + straight + 14;
  const foot = top + shown.stack + 1.5;
  const clipped = (y: number, height: number): number => Math.max(0, Math.min(height, foot - y));
  const items: SceneItem[] = [];
  for (let y = top, index = 0; y < foot && index < geometry.leaves; index += 1, y += leaf + guard) {
    if (guard > 0 && clipped(y + leaf, guard) > 0) items.push(area(rectangle(0, y + leaf, strip, clipped(y + leaf, guard)), "face-middle", "edge"));
    items.push(area(rectangle(0, y, right, clipped(y, leaf)), "card", "edge"));
  }
  return [...items, stroke([{ kind: "move", to: point(0, top) }, { kind: "line", to: point(0, top + shown.stack) }], "edge"), ...raggedEnd(right - 1, top - 0.6, top + shown.stack + 4, 1)];
}

function labelsOf(input: Input, view: View): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { strip, board, cloth, head, straight, axis, barrel, leaf } = view;
  const top = -head - 2 * cloth - board;
  const round = strip + straight + head / 2 + cloth;
  return [
    dimension({ name: "head", from: point(axis - barrel * 2, -head), to: point(axis - barrel * 2, 0), side: "left", text: words.thickness(geometry.posts.head), offset: axis - barrel * 2 + shown.beyondSpine + 4 }),
    leaderAnywhere({ name: "post head", text: "head of the post", target: point(axis + barrel * 1.6, -head / 2), directions: [75, 90, 60, 105], reach: 12 + board }),
    leaderAnywhere({ name: "board", text: [words.part("boards"), "folded back"], target: point(Math.max(strip * 0.1, 2), -head - cloth - board / 2), directions: [100, 110, 90, 120], reach: 10 }),
    leaderAnywhere({ name: "joint", text: [`joint, ${words.size(geometry.jointGap)} of`, `${words.part(coveringId(geometry))} and lining`], target: point(round + cloth * 0.3, -head / 2), directions: [0, 15, -15, 30, 45], reach: 14 }),
    leaderAnywhere({ name: "lining", text: words.part("hinge-lining"), target: point(strip * 0.7, top + cloth / 2), directions: [60, 75, 45, 90], reach: 8 }),
    leaderAnywhere({ name: "hinge strip", text: words.part("hinge-strip"), target: point(strip * 0.12, cloth + board / 2), directions: [200, 190, 210, 180], reach: 12 }),
    leaderAnywhere({ name: "leaf", text: words.part("leaf"), target: point(strip + straight + 9, 2 * cloth + board + leaf / 2), directions: [-20, -10, 10, -30], reach: 12 }),
  ];
}
