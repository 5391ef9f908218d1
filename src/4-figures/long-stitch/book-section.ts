// The shut book cut across, spine to the left: the cover folded round the sections, and the finished spine with its thread.
import { arc, line, polyline } from "../../geometry/path.ts";
import type { PathStep } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { addLengths, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { breakAcross, raggedEnd } from "../breaks.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { firstOf } from "../place.ts";
import type { Placeable } from "../place.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

type Input = DrawingInput<"long-stitch">;

/** Room on paper for the thickness, and how much of the width is shown at the spine and at the fore-edge. */
const room = { height: 44, spine: 48, fore: 34 } as const;

/** A layer of even thickness bent round corners whose inner edges are sharp: from its inner line to its outer. */
interface Sheet {
  readonly c: number;
  /** Inside of the spine, of the front and of the back. */
  readonly x: number;
  readonly front: number;
  readonly back: number;
}

/** The cover in section: front, spine and back, its spine corners rounded outside; with a flap on at the fore-edge. */
function coverPath({ c, x, front, back }: Sheet, right: number, flap: { readonly wall: number; readonly to: number } | null): readonly PathStep[] {
  const corner = (to: Point): PathStep => ({ kind: "arc", radius: c, large: false, clockwise: false, to });
  const straight = (to: Point): PathStep => ({ kind: "line", to });
  const outer: readonly PathStep[] = [
    { kind: "move", to: point(right, front - c) }, straight(point(x, front - c)), corner(point(x - c, front)), straight(point(x - c, back)), corner(point(x, back + c)),
  ];
  if (!flap) return [...outer, straight(point(right, back + c)), straight(point(right, back)), straight(point(x, back)), straight(point(x, front)), straight(point(right, front)), { kind: "close" }];
  const over = front - c;
  return [
    ...outer, straight(point(flap.wall, back + c)), corner(point(flap.wall + c, back)), straight(point(flap.wall + c, over)), corner(point(flap.wall, over - c)), straight(point(flap.to, over - c)),
    straight(point(flap.to, over)), straight(point(flap.wall, over)), straight(point(flap.wall, back)), straight(point(x, back)), straight(point(x, front)), straight(point(right, front)), { kind: "close" },
  ];
}

/** One section lying: a rounded fold at the left, its middle opening as a thin line. */
function sectionItems(left: number, top: number, pitch: number, right: number): readonly SceneItem[] {
  const radius = pitch / 2;
  return [
    area([{ kind: "move", to: point(right, top) }, { kind: "line", to: point(left + radius, top) }, { kind: "arc", to: point(left + radius, top + pitch), radius, large: false, clockwise: false }, { kind: "line", to: point(right, top + pitch) }, { kind: "close" }], "paper", "none"),
    stroke(line(point(right, top), point(left + radius, top)), "edge"), stroke(arc(point(left + radius, top), point(left + radius, top + pitch), radius, false), "edge"), stroke(line(point(left + radius, top + pitch), point(right, top + pitch)), "edge"),
    stroke(line(point(left + radius * 0.8, top + radius), point(right, top + radius)), "hidden"),
  ];
}

/** Figure `fold-cover`: before sewing, seen from the head, the middle of its width left out. */
export function drawFoldCover(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { text, coverThickness, ease, flap, spineWidth, square } = geometry;
  const words = sectionWords(input);
  const inner = toMillimetres(text.spineThickness) + toMillimetres(ease);
  const { items, scale } = placeAtScale(scalesThatFit(1, inner + 3 * toMillimetres(coverThickness), room.height, room.height, 4), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const c = Math.max(paper(coverThickness), 0.5);
    const total = room.spine + room.fore;
    const [front, back] = [c, c + inner * factor];
    const pages = total - paper(square);
    const pitch = paper(text.blockThickness) / text.sections;
    const start = front + (back - front - paper(text.blockThickness)) / 2;
    const wall = flap ? { wall: total, to: room.spine + 8 } : null;
    const top = flap ? -c : 0;
    return {
      fixed: [
        area(coverPath({ c, x: c, front, back }, total, wall), "card", "edge"),
        ...Array.from({ length: text.sections }, (_, k) => sectionItems(c, start + k * pitch, pitch, pages)).flat(),
        stroke(line(point(pages, start), point(pages, start + pitch * text.sections)), "edge"),
        ...breakAcross(room.spine + 3, top - 1.5, back + c + 1.5),
      ],
      labels: [
        dimension({ name: "inside", from: point(c, front), to: point(c, back), side: "left", text: words.thickness(addLengths(text.spineThickness, ease)), offset: c + 8 }),
        leaderAnywhere({ name: "front fold", text: "front spine fold", target: point(c * 0.3, front - c * 0.7), end: "arrow", directions: [110, 125, 95, 140], reach: 9 }),
        leaderAnywhere({ name: "back fold", text: "back spine fold", target: point(c * 0.3, back + c * 0.7), end: "arrow", directions: [250, 235, 265, 220], reach: 9 }),
        leaderAnywhere({ name: "front", text: "front cover", target: point(room.spine * 0.6, front - c / 2), directions: [75, 60, 90, 105], reach: 9 }),
        leaderAnywhere({ name: "sections", text: [`${text.sections} sections,`, `${words.thickness(text.blockThickness)} pressed`], target: point(total - paper(square) - 6, start + paper(text.blockThickness) / 2), directions: [0, 345, 15, 330, 30], reach: 16 + c }),
        ...(flap ? [
          leaderAnywhere({ name: "flap", text: "flap", target: point(room.spine + room.fore * 0.5, -c / 2), directions: [75, 60, 90, 105], reach: 8 }),
          leaderAnywhere({ name: "wall fold", text: "fore-edge fold", target: point(total + c * 0.7, back + c * 0.7), end: "arrow", directions: [310, 295, 325, 280], reach: 8 }),
          leaderAnywhere({ name: "flap fold", text: "flap fold", target: point(total + c * 0.7, -c * 0.7), end: "arrow", directions: [50, 35, 65, 20], reach: 8 }),
        ] : []),
      ],
    };
  });
  return {
    id: "fold-cover", title: "The cover folded round the sections",
    caption: `The shut cover seen from the head, spine to the left, ${scale.name}, the middle of its width left out. The sections lie loosely: the spine is as wide as they will be with their thread, and ${words.thickness(ease)} more.`,
    alternative: `Seen from the head, the cover goes from the front cover round the front spine fold, down the spine, round the back spine fold and along the back cover${flap ? ", up the wall at the fore-edge and over the front as the flap" : ""}. ${text.sections} sections lie inside, folds to the spine. The spine is ${words.size(spineWidth)} wide between its folds when flat.`,
    items,
  };
}

/** Figure `spine-section`: the finished spine, cut at a station. */
export function drawSpineSection(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const { text, coverThickness, ease, strip, sectionPitch, flap } = geometry;
  const words = sectionWords(input);
  const inner = toMillimetres(text.spineThickness) + toMillimetres(ease);
  const { items, scale } = placeAtScale(scalesThatFit(1, inner + 3 * toMillimetres(coverThickness), room.height + 12, room.height + 12, 5), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [c, layer, pitch] = [Math.max(paper(coverThickness), 0.5), strip ? Math.max(paper(strip.thickness), 0.5) : 0, paper(sectionPitch)];
    const [front, back] = [c, c + inner * factor];
    const shown = 54;
    const top = flap ? -c : 0;
    const start = front + paper(ease) / 2;
    const out = -0.9;
    const thread = polyline([point(c + layer + pitch * 0.7, start + pitch / 2), point(out, start + pitch / 2), point(out, start + pitch * (text.sections - 0.5)), point(c + layer + pitch * 0.7, start + pitch * (text.sections - 0.5))]);
    const middle = start + pitch * (Math.floor(text.sections / 2) + 0.5);
    const sized = (name: string, from: number, to: number, size: string, what: string): Placeable => firstOf(
      dimension({ name, from: point(shown, from), to: point(shown, to), side: "right", text: size, offset: 6 }),
      leaderAnywhere({ name, text: `${what}, ${size}`, target: point(shown - 4, (from + to) / 2), directions: [300, 315, 285, 45, 60], reach: 10 }),
    );
    return {
      fixed: [
        area(coverPath({ c, x: c, front, back }, shown + 1, null), "card", "edge"),
        ...(flap ? [area([{ kind: "move", to: point(shown + 1, -c) }, { kind: "line", to: point(shown * 0.62, -c) }, { kind: "line", to: point(shown * 0.62, 0) }, { kind: "line", to: point(shown + 1, 0) }, { kind: "close" }], "card", "edge")] : []),
        ...(strip ? [area([{ kind: "move", to: point(c, front + 0.2) }, { kind: "line", to: point(c + layer, front + 0.2) }, { kind: "line", to: point(c + layer, back - 0.2) }, { kind: "line", to: point(c, back - 0.2) }, { kind: "close" }], "strip", "edge")] : []),
        ...Array.from({ length: text.sections }, (_, k) => sectionItems(c + layer, start + k * pitch, pitch, shown + 1)).flat(),
        stroke(thread, "thread-before"),
        ...raggedEnd(shown, top - 1, back + c + 1, 1),
      ],
      labels: [
        sized("sections", start, start + pitch * text.sections, words.thickness(text.spineThickness), "the sections"),
        dimension({ name: "finished", from: point(shown, top), to: point(shown, back + c), side: "right", text: words.size(finished.thickness), offset: 17 }),
        leaderAnywhere({ name: "cover", text: [words.part("cover"), words.thickness(coverThickness)], target: point(shown * 0.45, back + c / 2), directions: [285, 270, 300, 255], reach: 8 }),
        ...(strip ? [leaderAnywhere({ name: "strip", text: words.part("spine-strip"), target: point(c + layer / 2, back - 0.6), directions: [240, 230, 250, 220], reach: 12 + c })] : []),
        leaderAnywhere({ name: "section", text: ["one section", `with its thread ${words.thickness(sectionPitch)}`], target: point(c + layer + 8, middle), directions: [75, 90, 60, 105], reach: middle + 8 }),
        leaderAnywhere({ name: "thread", text: "thread", target: point(out - 0.3, middle), end: "arrow", directions: [180, 165, 195], reach: 8 }),
        ...(flap ? [leaderAnywhere({ name: "flap", text: "flap", target: point(shown * 0.8, -c / 2), directions: [75, 60, 90], reach: 8 })] : []),
      ],
    };
  });
  return {
    id: "spine-section", title: "The finished spine",
    caption: `The shut book cut across at an end station, ${scale.name}, spine to the left; the right-hand part is left out. The sections with their thread take ${words.thickness(text.spineThickness)}, of which the thread is ${words.thickness(text.swell)}; the spine has ${words.thickness(ease)} of ease.`,
    alternative: `Section across the spine at ${scale.name}: ${text.sections} sections, each ${words.thickness(sectionPitch)} thick with its thread, lie with their folds against ${strip ? "the spine strip inside the spine" : "the spine"}. Thread goes through every fold and the spine and lies outside along the row. The cover is ${words.thickness(coverThickness)} thick, the book ${words.size(finished.thickness)}.`,
    items,
  };
}
