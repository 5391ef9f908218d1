// Figure `spine-section`: the shut book cut across at a station, spine to the left: boards, sections and what each adds.
import { arc, curve, line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { raggedEnd } from "../breaks.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room on paper for the thickness, and how much of the width is shown. */
const room = { height: 62, shown: 52 } as const;

/** The shut book at a station. */
export function drawSpineSection(input: DrawingInput<"link-stitch">): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { text } = geometry;
  const total = toMillimetres(geometry.coverThickness) * 2 + toMillimetres(text.spineThickness);
  const { items, scale } = placeAtScale(scalesThatFit(1, total, room.height, room.height, 4), ({ factor }) => {
    const paper = (length: Length): number => toMillimetres(length) * factor;
    const [cover, spine, pitch, hole] = [paper(geometry.coverThickness), paper(text.spineThickness), paper(geometry.sectionPitch), paper(geometry.holeDistance)];
    const shown = Math.max(room.shown, hole * 1.6);
    const backTop = cover + spine;
    const middle = cover + pitch * (Math.floor(text.sections / 2) + 0.5);
    return {
      fixed: [
        ...Array.from({ length: text.sections }, (_, k) => bar(cover + k * pitch, pitch, shown)).flat(),
        ...[0, backTop].flatMap((y) => board(y, cover, hole, paper(geometry.holeDiameter), shown)),
        ...thread(cover, spine, hole),
        ...raggedEnd(shown, -1, backTop + cover + 1, 1),
      ],
      labels: [
        dimension({ name: "cover", from: point(shown, 0), to: point(shown, cover), side: "right", text: words.thickness(geometry.coverThickness), offset: 6, outside: "before" }),
        dimension({ name: "spine", from: point(shown, cover), to: point(shown, backTop), side: "right", text: words.thickness(text.spineThickness), offset: 6 }),
        dimension({ name: "finished", from: point(shown, 0), to: point(shown, backTop + cover), side: "right", text: words.size(finished.thickness), offset: 17 }),
        dimension({ name: "hole distance", from: point(0, 0), to: point(hole, 0), side: "above", text: words.size(geometry.holeDistance), offset: 6 }),
        leaderAnywhere({ name: "front board", text: geometry.covered ? `front board ${input.letter("boards")}, covered` : `front board ${input.letter("boards")}`, target: point(hole + (shown - hole) * 0.45, cover / 2), directions: [60, 75, 45, 90], reach: cover / 2 + 7 }),
        leaderAnywhere({ name: "section", text: [`${text.sections} sections,`, `${words.thickness(geometry.sectionPitch)} each`], target: point(3, middle), directions: [180, 170, 190, 160, 200], reach: 14 }),
        leaderAnywhere({ name: "thread", text: "thread", target: point(hole * 0.5, backTop + cover + 0.6), end: "arrow", directions: [260, 250, 280, 240], reach: 7 }),
        leaderAnywhere({ name: "back board", text: "back board", target: point(hole + (shown - hole) * 0.45, backTop + cover / 2), directions: [300, 285, 315, 270], reach: cover / 2 + 7 }),
      ],
    };
  });
  return {
    id: "spine-section", title: "The finished spine",
    caption: `The shut book cut across at a station, ${scale.name}, spine to the left; the right-hand part is left out. ${text.sections} sections with their thread take ${words.thickness(text.spineThickness)} at the spine, of which the thread is ${words.thickness(text.swell)}; with both boards the book is ${words.size(finished.thickness)} thick.`,
    alternative: `Section across the spine at ${scale.name}: ${text.sections} sections, each ${words.thickness(geometry.sectionPitch)} thick with its thread, lie between two boards of ${words.thickness(geometry.coverThickness)}. The boards’ spine edges are level with the folds; thread runs round the edges to holes ${words.size(geometry.holeDistance)} in. The book is ${words.size(finished.thickness)} thick.`,
    items,
  };
}

/** One section: a rounded fold at the left, its middle opening as a thin line. */
function bar(top: number, pitch: number, shown: number): readonly SceneItem[] {
  const radius = pitch / 2;
  return [
    area([{ kind: "move", to: point(shown, top) }, { kind: "line", to: point(radius, top) }, { kind: "arc", to: point(radius, top + pitch), radius, large: false, clockwise: false }, { kind: "line", to: point(shown, top + pitch) }], "paper", "none"),
    stroke(line(point(shown, top), point(radius, top)), "edge"), stroke(arc(point(radius, top), point(radius, top + pitch), radius, false), "edge"), stroke(line(point(radius, top + pitch), point(shown, top + pitch)), "edge"),
    stroke(line(point(radius * 0.8, top + radius), point(shown, top + radius)), "hidden"),
  ];
}

function board(y: number, cover: number, hole: number, bore: number, shown: number): readonly SceneItem[] {
  return [
    area(rectangle(0, y, shown, cover), "board", "outline"),
    area(rectangle(hole - bore / 2, y - 0.05, bore, cover + 0.1), "plate", "none"),
    ...[-1, 1].map((side) => stroke(line(point(hole + (side * bore) / 2, y), point(hole + (side * bore) / 2, y + cover)), "edge")),
  ];
}

/** Round both boards' edges and down the folds, the links as scallops. */
function thread(cover: number, spine: number, hole: number): readonly SceneItem[] {
  const bottom = cover * 2 + spine;
  return [
    stroke(polyline([point(hole, cover + 0.3), point(hole, -0.6), point(-0.9, -0.6), point(-0.9, cover)]), "thread-before"),
    stroke(polyline([point(hole, bottom - cover - 0.3), point(hole, bottom + 0.6), point(-0.9, bottom + 0.6), point(-0.9, bottom - cover)]), "thread-before"),
    stroke(curve(point(-0.9, cover), point(-1.6, cover + spine * 0.3), point(-1.6, cover + spine * 0.7), point(-0.9, cover + spine)), "thread-before"),
  ];
}
