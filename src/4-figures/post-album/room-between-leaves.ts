// Figure: leaves cut through from spine to fore-edge: guards at the hinge as thick as what is mounted on the pages.
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isLess, noLength, toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"post-album">;

/** Across, on paper: the hinge, the score, what is mounted, the fore-edge. */
const across = { hinge: 26, score: 30, mounted: { from: 42, to: 88 }, breakAt: 65, end: 100 } as const;
/** The thicker of guard and inserts on paper, and a leaf. */
const height = { room: 7, leaf: 0.9 } as const;

/** Figure `room-between-leaves`. */
export function drawRoomBetweenLeaves(input: Input): FigureDraft {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const view = layOut(input);
  const [guards, inserts] = [words.thickness(geometry.guardThickness), words.thickness(geometry.inserts)];
  const even = geometry.wedge.n === 0n
    ? "The album is as thick at the fore-edge as at the hinge"
    : `Over all ${geometry.leaves - 1} ${geometry.leaves === 2 ? "opening" : "openings"} the album comes out ${words.thickness(isLess(geometry.wedge, noLength) ? { ...geometry.wedge, n: -geometry.wedge.n } : geometry.wedge)} ${isLess(geometry.wedge, noLength) ? "thinner" : "thicker"} at the fore-edge than at the hinge`;
  return {
    id: "room-between-leaves",
    title: "Room between the leaves",
    caption: `Section through ${view.tops.length} leaves, not to scale: widths shortened, thicknesses drawn larger than they are. What is mounted between two leaves, ${inserts} planned, has its match in the guards at the hinge, ${guards}. ${even}.`,
    alternative: `${view.tops.length} leaves lie on each other. Between them at the hinge ${geometry.guardLayers === 0 ? "lies no guard" : `lie guards, ${guards} for each opening`}; on the pages lies what is mounted, ${inserts} planned for each opening. ${even}.`,
    items: placeEvery(sectionItems(input, view), labelsOf(input, view)),
  };
}

interface View {
  readonly guard: number;
  readonly insert: number;
  /** Top of each leaf at the hinge and at the fore-edge. */
  readonly tops: readonly { readonly hinge: number; readonly page: number }[];
}

function layOut({ model: { geometry } }: Input): View {
  const [guard, insert] = [toMillimetres(geometry.guardThickness), toMillimetres(geometry.inserts)];
  const factor = height.room / Math.max(guard, insert, 0.2);
  const count = Math.min(3, geometry.leaves);
  // The lowest leaf lies flat; each one above it stands one guard higher at the hinge, one opening's contents higher on the page.
  const tops = Array.from({ length: count }, (_, k) => ({ hinge: -(count - 1 - k) * (guard * factor + height.leaf), page: -(count - 1 - k) * (insert * factor + height.leaf) }));
  return { guard: guard * factor, insert: insert * factor, tops };
}

function leafOutline({ hinge, page }: View["tops"][number]): readonly Point[] {
  const upper = [point(0, hinge), point(across.score, hinge), point(across.mounted.from - 2, page), point(across.end, page)];
  return [...upper, ...upper.map(({ x, y }) => point(x, y + height.leaf)).reverse()];
}

function sectionItems({ model: { geometry } }: Input, { guard, insert, tops }: View): readonly SceneItem[] {
  const axis = across.hinge / 2;
  const top = Math.min(...tops.flatMap(({ hinge, page }) => [hinge, page]));
  return [
    ...tops.slice(0, -1).flatMap((leaf): readonly SceneItem[] => [
      ...Array.from({ length: geometry.guardLayers }, (_, k) => area(rectangle(0, leaf.hinge + height.leaf + (k * guard) / geometry.guardLayers, across.hinge, guard / geometry.guardLayers), "strip", "edge")),
      ...(insert > 0 ? [area(rectangle(across.mounted.from, leaf.page + height.leaf, across.mounted.to - across.mounted.from, insert), "tape", "edge")] : []),
    ]),
    ...tops.map((leaf) => area([...polyline(leafOutline(leaf)), { kind: "close" }], "card", "outline")),
    stroke(line(point(axis, top - 5), point(axis, height.leaf + 5)), "centre"),
    ...breakAcross(across.breakAt, top - 1.5, height.leaf + 1.5),
  ];
}

function labelsOf(input: Input, { guard, insert, tops }: View): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const [first, second] = [tops[0]!, tops[1]!];
  const labels: Placeable[] = [
    leaderAnywhere({ name: "leaf", text: words.part("leaf"), target: point(across.end - 4, first.page + height.leaf / 2), directions: [30, 45, 60, 20], reach: 7 }),
    leaderAnywhere({ name: "post axis", text: "post", target: point(across.hinge / 2, Math.min(first.hinge, first.page) - 3), end: "none", directions: [120, 135, 150], reach: 5 }),
    leaderAnywhere({ name: "score", text: "score", target: point(across.score, tops.at(-1)!.hinge + height.leaf), end: "arrow", directions: [280, 290, 270, 300], reach: 7 }),
  ];
  if (guard > 0) {
    labels.push(
      dimension({ name: "guard thickness", from: point(0, first.hinge + height.leaf), to: point(0, second.hinge), side: "left", text: words.thickness(geometry.guardThickness), offset: 6 }),
      leaderAnywhere({ name: "guard", text: geometry.guardLayers === 1 ? words.part("guard") : `${geometry.guardLayers} × ${words.part("guard")}`, target: point(across.hinge - 3, tops.at(-1)!.hinge - guard / 2), directions: [250, 240, 260, 230], reach: guard + 8 }),
    );
  }
  if (insert > 0) {
    labels.push(
      dimension({ name: "inserts", from: point(across.end, first.page + height.leaf), to: point(across.end, second.page), side: "right", text: words.thickness(geometry.inserts), offset: 6 }),
      leaderAnywhere({ name: "mounted", text: "what is mounted", target: point(across.mounted.to - 6, second.page - insert / 2 - (tops.length > 2 ? -insert - height.leaf : 0)), directions: [290, 280, 300, 270, 310], reach: insert + 8 }),
    );
  }
  return labels;
}
