// The finished pamphlet, pictorial: standing open with the thread in its fold; plain for the cover page, and with its parts named.
import { isometric, spacePoint } from "../../geometry/project.ts";
import type { SpacePoint } from "../../geometry/project.ts";
import { midpoint } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { polyline } from "../../geometry/path.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { face } from "../bench/solid.ts";
import { sectionWords } from "../bench/section-words.ts";
import { scaleWords } from "../scale.ts";

interface OpenBook {
  readonly items: readonly SceneItem[];
  readonly targets: Readonly<Record<"cover" | "sheets" | "stitch" | "fold" | "fore-edge" | "head" | "tail", Point>>;
  readonly factor: number;
}

/** Stands open towards the reader: the halves lead to both sides, the fold upright in the middle. */
function drawOpenBook(input: DrawingInput<"pamphlet">, room: { readonly width: number; readonly height: number }): OpenBook {
  const { geometry, thread } = input.model;
  const [wide, high, square] = [geometry.textWidth, geometry.pageHeight, geometry.square].map(toMillimetres) as [number, number, number];
  const reach = (wide + square) * 1.07;
  const factor = Math.min(room.width / (2 * reach), room.height / (high + 2 * square + reach * 0.4));
  const leaf = (angle: number, long: number, bottom: number, top: number): readonly [SpacePoint, SpacePoint, SpacePoint, SpacePoint] => {
    const [x, y] = [Math.cos((angle * Math.PI) / 180) * long * factor, Math.sin((angle * Math.PI) / 180) * long * factor];
    return [spacePoint(0, 0, bottom * factor), spacePoint(x, y, bottom * factor), spacePoint(x, y, top * factor), spacePoint(0, 0, top * factor)];
  };
  const leaves = Math.min(geometry.sheets, 8);
  const spread = Math.min(2.2, 12 / leaves);
  const halves = ([[18, -1], [-108, 1]] as const).flatMap(([cover, inwards]) => [
    face(leaf(cover, wide + square, 0, high + 2 * square), cover > 0 ? "face-dark" : "face-middle", "outline"),
    ...Array.from({ length: leaves }, (_, i) => face(leaf(cover + inwards * (1.5 + (i + 1) * spread), wide, square, square + high), "paper", i === leaves - 1 ? "outline" : "edge")),
  ]);
  const at = (along: number): Point => isometric(spacePoint(0, 0, (square + high - along) * factor));
  const inside = thread!.paths[0]!.moves.filter((move) => move.kind === "run" && move.to.side === "inside");
  const along = (id: string): number => toMillimetres(thread!.paths[0]!.places.get(id)!.along);
  const stitches = inside.map((move) => [along(move.from.place), along(move.to.place)] as const);
  const middle = along(thread!.paths[0]!.start.at.place);
  const ends = geometry.tiedInside ? [stroke(polyline([at(middle), { x: at(middle).x - 3, y: at(middle).y + 5 }]), "thread-before"), stroke(polyline([at(middle), { x: at(middle).x + 3, y: at(middle).y + 5 }]), "thread-before")] : [];
  const right = leaf(18 - 1.5 - leaves * spread, wide, square, square + high).map(isometric);
  const cover = leaf(-108, wide + square, 0, high + 2 * square).map(isometric);
  return {
    factor,
    items: [...halves, ...stitches.map(([from, to]) => stroke(polyline([at(from), at(to)]), "thread")), ...ends],
    targets: {
      cover: midpoint(cover[1]!, cover[2]!), sheets: midpoint(midpoint(right[0]!, right[2]!), right[1]!), stitch: at((stitches[0]![0] + stitches[0]![1]) / 2 - high * 0.03),
      fold: at(high * 0.04), "fore-edge": midpoint(right[1]!, right[2]!), head: midpoint(right[2]!, right[3]!), tail: midpoint(right[0]!, right[1]!),
    },
  };
}

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: DrawingInput<"pamphlet">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawOpenBook(input, { width: 122, height: 140 });
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.thickness(finished.thickness)} thick`;
  return {
    id: "finished-book",
    title: "The finished pamphlet",
    caption: `The finished book standing open in the middle (isometric view, ${scaleWords(factor)} along the edges). Shut, it is ${sizes}.`,
    alternative: `The finished pamphlet stands open in the middle: two halves of ${geometry.sheets * 2} leaves each in a soft cover, and along the fold the thread${geometry.tiedInside ? " with its knot at the middle hole" : ""}. Shut, the book is ${sizes}.`,
    items,
  };
}

/** Rooms for the book on paper, the wished one first: labels stand round it. */
const rooms = [{ width: 84, height: 84 }, { width: 100, height: 104 }, { width: 110, height: 130 }] as const;

/** Figure `named-parts`. */
export function drawNamedParts(input: DrawingInput<"pamphlet">): FigureDraft {
  const { part } = sectionWords(input);
  const { tiedInside } = input.model.geometry;
  const { items, scale } = placeAtScale(rooms.map((room) => ({ book: drawOpenBook(input, room), name: scaleWords(drawOpenBook(input, room).factor) })), ({ book: { items: fixed, targets } }) => ({
    fixed,
    labels: [
      leaderAnywhere({ name: "cover", text: part("cover"), target: targets.cover, directions: [180, 160, 200], reach: 6 }),
      leaderAnywhere({ name: "sheets", text: part("text-sheet"), target: targets.sheets, directions: [-30, -50, 0], reach: 16 }),
      leaderAnywhere({ name: "stitch", text: tiedInside ? ["long stitch,", "the ends tied over it"] : ["thread", "inside the fold"], target: targets.stitch, end: "arrow", directions: [250, 230, 270, 290], reach: 30 }),
      leaderAnywhere({ name: "fold", text: "fold", target: targets.fold, directions: [90, 110, 70], reach: 12 }),
      leaderAnywhere({ name: "fore-edge", text: "fore-edge", target: targets["fore-edge"], end: "arrow", directions: [0, 20, -20], reach: 8 }),
      leaderAnywhere({ name: "head", text: "head", target: targets.head, end: "arrow", directions: [70, 90, 50], reach: 8 }),
      leaderAnywhere({ name: "tail", text: "tail", target: targets.tail, end: "arrow", directions: [-70, -90, -50], reach: 8 }),
    ],
  }));
  return {
    id: "named-parts",
    title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scale.name} along the edges.`,
    alternative: `The finished book standing open, its parts named: ${part("cover")}, ${part("text-sheet")}, the fold with the thread in it, fore-edge, head and tail.`,
    items,
  };
}
