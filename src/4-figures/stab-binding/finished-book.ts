// The finished stab binding, pictorial: lying on its back with the pattern on the front, the spine edge and the tail; plain, and with its parts named.
import { patterns } from "../../2-model/stab-binding/patterns.ts";
import type { StabHole } from "../../2-model/stab-binding/geometry.ts";
import { line } from "../../geometry/path.ts";
import { cos30, isometric, spacePoint } from "../../geometry/project.ts";
import type { Point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { boxOutline, prism } from "../bench/solid.ts";
import { sectionWords } from "../bench/section-words.ts";
import { scaleWords } from "../scale.ts";

interface LyingBook {
  readonly items: readonly SceneItem[];
  readonly targets: Readonly<Record<"cover" | "leaves" | "spine" | "wrap" | "line" | "head" | "fore-edge", Point>>;
  readonly factor: number;
}


/** x along the spine from the head, y from the spine edge to the fore-edge, z up. */
function drawLyingBook(input: DrawingInput<"stab-binding">, room: { readonly width: number; readonly height: number }): LyingBook {
  const { height, width, thickness, holes, runs } = input.model.geometry;
  const [high, wide, thick] = [height, width, thickness].map(toMillimetres) as [number, number, number];
  const factor = Math.min(room.width / ((high + wide) * cos30), room.height / ((high + wide) / 2 + thick));
  const [long, deep, top] = [high * factor, wide * factor, Math.max(thick * factor, 2.2)];
  const at = (id: string): StabHole => holes.find((hole) => hole.id === id)!;
  const onTop = (hole: StabHole): Point => isometric(spacePoint(toMillimetres(hole.along) * factor, toMillimetres(hole.across) * factor, top));
  const threads = runs.flatMap(({ ends, edge }): readonly SceneItem[] => {
    const hole = at(ends[0].place);
    const [x, y] = [toMillimetres(hole.along) * factor, toMillimetres(hole.across) * factor];
    if (!edge) return ends[0].side === "front" ? [stroke(line(onTop(hole), onTop(at(ends[1].place))), "outline")] : [];
    const from = edge === "spine" ? spacePoint(x, 0, top) : spacePoint(edge === "head" ? 0 : long, y, top);
    // The wrap around the head lies on a face that is turned away.
    const down = edge === "head" ? [] : [stroke(line(isometric(from), isometric({ ...from, z: 0 })), "outline")];
    return [stroke(line(onTop(hole), isometric(from)), "outline"), ...down];
  });
  const main = holes.filter(({ kind }) => kind === "main");
  const second = main[1]!;
  return {
    factor,
    items: [
      ...prism(boxOutline(0, 0, long, deep), 0, top, { top: "face-light", left: "face-middle", right: "face-dark" }, "outline"),
      stroke(line(isometric(spacePoint(0, 0, top * 0.88)), isometric(spacePoint(long, 0, top * 0.88))), "edge"), stroke(line(isometric(spacePoint(0, 0, top * 0.12)), isometric(spacePoint(long, 0, top * 0.12))), "edge"),
      stroke(line(isometric(spacePoint(long, 0, top * 0.88)), isometric(spacePoint(long, deep, top * 0.88))), "edge"), stroke(line(isometric(spacePoint(long, 0, top * 0.12)), isometric(spacePoint(long, deep, top * 0.12))), "edge"),
      ...threads,
    ],
    targets: {
      cover: isometric(spacePoint(long * 0.45, deep * 0.6, top)), leaves: isometric(spacePoint(long, deep * 0.6, top * 0.5)), spine: isometric(spacePoint(long * 0.58, 0, top * 0.5)),
      wrap: isometric(spacePoint(toMillimetres(second.along) * factor, 0, top * 0.5)), line: isometric(spacePoint(((toMillimetres(main[0]!.along) * 2 + toMillimetres(second.along)) / 3) * factor, toMillimetres(second.across) * factor, top)),
      head: isometric(spacePoint(0, deep * 0.5, top)), "fore-edge": isometric(spacePoint(long * 0.6, deep, top)),
    },
  };
}

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: DrawingInput<"stab-binding">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawLyingBook(input, { width: 126, height: 120 });
  const { english, look } = patterns[geometry.pattern];
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.thickness(finished.thickness)} thick`;
  return {
    id: "finished-book", title: "The finished book",
    caption: `The finished book lying on its back, spine edge to the lower left (isometric view, ${scaleWords(factor)} along the edges). It is ${sizes}.`,
    alternative: `The book lies on its back; along the spine edge its sewing shows: ${geometry.pattern} (${english}), ${look}. It is ${sizes}.`,
    items,
  };
}

/** Rooms for the book on paper, the wished one first: labels stand round it. */
const rooms = [{ width: 100, height: 76 }, { width: 110, height: 92 }, { width: 116, height: 120 }] as const;

/** Figure `named-parts`. */
export function drawNamedParts(input: DrawingInput<"stab-binding">): FigureDraft {
  const { part } = sectionWords(input);
  const { items, scale } = placeAtScale(rooms.map((room) => ({ book: drawLyingBook(input, room), name: scaleWords(drawLyingBook(input, room).factor) })), ({ book: { items: fixed, targets } }) => ({
    fixed,
    labels: [
      leaderAnywhere({ name: "cover", text: part("cover"), target: targets.cover, directions: [80, 90, 70, 100], reach: 30 }),
      leaderAnywhere({ name: "leaves", text: part("leaf"), target: targets.leaves, directions: [-20, 0, -40], reach: 10 }),
      leaderAnywhere({ name: "spine", text: "spine edge", target: targets.spine, directions: [250, 240, 260], reach: 12 }),
      leaderAnywhere({ name: "wrap", text: "wrap", target: targets.wrap, end: "arrow", directions: [230, 240, 220], reach: 14 }),
      leaderAnywhere({ name: "line", text: "line of main holes", target: targets.line, end: "arrow", directions: [150, 170, 130], reach: 22 }),
      leaderAnywhere({ name: "head", text: "head", target: targets.head, end: "arrow", directions: [130, 150, 110], reach: 8 }),
      leaderAnywhere({ name: "fore-edge", text: "fore-edge", target: targets["fore-edge"], end: "arrow", directions: [40, 20, 60], reach: 8 }),
    ],
  }));
  return {
    id: "named-parts", title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scale.name} along the edges.`,
    alternative: `The finished book lying on its back, its parts named: ${part("cover")}, ${part("leaf")}, spine edge, fore-edge and head, the line of main holes and a wrap around the spine edge.`,
    items,
  };
}
