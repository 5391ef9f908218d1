// Figures of the text block in section across its spine: measuring it, rounding it, pressing the finished book.
import { circle, line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale, placeEvery } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { movementArrow, pushArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { fittingScale, scalesThatFit } from "../scale.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { weight } from "../bench/bench-tools.ts";
import { sectionWords } from "../bench/section-words.ts";
import { backAt, grooveOf, layOutSection, leftOf, liningsOf, pagesOf, wholeBook } from "./book-section.ts";
import type { BookSection } from "./book-section.ts";

type Input = DrawingInput<"case-binding">;

/** Paper for the thickness of the text block, and how much of it is drawn to the right of the shoulders. */
const room = { thickness: 44, shown: 30 } as const;
const largest = 4;

/** Figure `spine-section`: the lined text block with the sizes to be measured. */
export const drawSpineSection: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { round } = geometry;
  const { items, scale } = placeAtScale(scalesThatFit(1, toMillimetres(geometry.backThickness), Infinity, room.thickness, largest), ({ factor }) => {
    const section = layOutSection(geometry, factor, room.shown);
    const { back, end } = section;
    return {
      fixed: [...pagesOf(section), ...liningsOf(section)],
      labels: [
        dimension({ name: "back thickness", from: point(end * 0.72, 0), to: point(end * 0.72, back), side: "right", text: words.thickness(geometry.backThickness), offset: end * 0.28 + 7 }),
        ...layerLabels(input, section),
        ...(round ? [dimension({ name: "back rise", from: point(backAt(section, back / 2), back / 2), to: point(0, back), side: "below", text: words.thickness(round.rise), offset: 9 })] : []),
      ],
    };
  });
  return {
    id: "spine-section",
    title: "Measuring the text block",
    caption: `The lined text block cut across its spine, ${scale.name}; linings are drawn as lines. Measure straight across, from endpaper to endpaper: ${words.thickness(geometry.backThickness)}.`
      + (round ? ` Along the curve, from shoulder to shoulder, with a strip of paper: ${words.thickness(round.arc)}. The back rises ${words.thickness(round.rise)}.` : ""),
    alternative: `Section across the spine of the text block, spine at the left. ${geometry.sewing ? `${geometry.block.sections} sections` : `${geometry.block.leaves} leaves`} lie between two folded endpapers. In all ${words.thickness(geometry.backThickness)} thick. `
      + (round ? `The back is an arc of ${words.thickness(round.arc)} that rises ${words.thickness(round.rise)} above its shoulders.` : "The back is flat."),
    items,
  };
};

function layerLabels(input: Input, section: BookSection): readonly Placeable[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { back, end, layers } = section;
  const at = (name: string, text: string, x: number, y: number, directions: readonly number[], reach: number, end_: "dot" | "arrow"): Placeable => leaderAnywhere({ name, text, target: point(x, y), directions, reach, end: end_ });
  return [
    at("mull", words.part("mull"), end * 0.4, -layers.mull / 2, [70, 60, 80, 100], 8, "arrow"),
    at("endpaper", words.part("endpaper"), end * 0.66, 0.3, [60, 50, 70, 40], 8, "dot"),
    ...(geometry.lining ? [at("lining", words.part("spine-lining"), backAt(section, back * 0.4, layers.lining), back * 0.4, [180, 170, 190], 8, "arrow")] : []),
    at("sections", geometry.sewing ? "sections" : "leaves", end * 0.5, back * 0.6, [290, 280, 300, 270], back * 0.45 + 5, "dot"),
    at("shoulder", "shoulder", 0, back, [235, 245, 225, 215], 8, "arrow"),
  ];
}

/** Figure `round-back`: the flat back and the rounded one, with the hammer's blows. */
export const drawRoundBack: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const { round } = geometry;
  if (!round) return null;
  const words = sectionWords(input);
  const scale = fittingScale(1, toMillimetres(geometry.backThickness), Infinity, 36, largest);
  const rounded = layOutSection(geometry, scale.factor, 22);
  const flat: BookSection = { ...rounded, rise: 0 };
  const { back, end } = rounded;
  const before = placeEvery([...pagesOf(flat), ...movementArrow(point(end - 4, -4), point(6, -4), 2)], [
    dimension({ name: "flat back", from: point(0, 0), to: point(0, back), side: "left", text: words.thickness(geometry.backThickness), offset: 7 }),
    leaderAnywhere({ name: "drawn", text: "upper sections drawn back", target: point(end * 0.5, -5.4), end: "none", directions: [80, 60, 100], reach: 5 }),
  ]);
  const blow = (share: number): SceneItem => {
    const y = back * share;
    const tip = point(backAt(rounded, y) - 1, y);
    return pushArrow(tip, point(1, share < 0.5 ? -0.6 : 0.6), 6);
  };
  const after = placeEvery([...pagesOf(rounded), ...[0.42, 0.2].map(blow)], [
    leaderAnywhere({ name: "shoulder", text: "shoulder", target: point(0, back), end: "arrow", directions: [300, 310, 290, 320], reach: 8 }),
    leaderAnywhere({ name: "radius", text: `radius ${words.thickness(round.radius)}`, target: point(backAt(rounded, back * 0.7), back * 0.7), end: "arrow", directions: [190, 180, 200, 210], reach: 9 }),
    leaderAnywhere({ name: "blows", text: "glancing blows", target: point(backAt(rounded, back * 0.2) - 4.4, back * 0.2 + 1.6), end: "none", directions: [140, 120, 160, 180], reach: 7 }),
    dimension({ name: "rise", from: point(backAt(rounded, back / 2), back / 2), to: point(0, back), side: "below", text: words.thickness(round.rise), offset: 11 }),
  ]);
  return {
    id: "round-back",
    title: "Rounding the back",
    caption: `The back seen from the head, ${scale.name}. 1: draw the upper sections towards you. 2: tap from the middle towards the shoulder, turn over, and go on until the back rises ${words.thickness(round.rise)}.`,
    alternative: `Two views from the head. First the back is flat, ${words.thickness(geometry.backThickness)} across; the upper sections are drawn towards the spine. Then it is an arc with a radius of ${words.thickness(round.radius)} that rises ${words.thickness(round.rise)} above the shoulders; arrows show hammer blows glancing from the middle to the upper shoulder.`,
    items: viewsBeside([withHeading("one", "1  Draw it over", before), withHeading("two", "2  Tap it round", after)], 9),
  };
};

/** Figure `pressing`: the finished book between pressing boards, with a rod in each joint. */
export const drawPressing: DrawFigure<"case-binding"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const hasRods = toMillimetres(geometry.rod) >= toMillimetres(geometry.boardThickness);
  const { items, scale } = placeAtScale(scalesThatFit(1, toMillimetres(input.model.finished.thickness), Infinity, 34, 2), ({ factor }) => {
    const section = layOutSection(geometry, factor, 40);
    return { fixed: pressedItems(section, input, hasRods), labels: pressLabels(section, input, hasRods) };
  });
  return {
    id: "pressing",
    title: "Pressing the book",
    caption: `The book in section between pressing boards, ${scale.name}; barrier sheets lie between the leaves of the endpapers. ${hasRods ? `A rod of ${words.size(geometry.rod)} lies in each joint.` : "The boards’ edges lie along the joints."} Weight is set in the middle.`,
    alternative: `The finished book lies flat between two pressing boards, a weight on top. ${hasRods ? `In each groove, above and below, a rod of ${words.size(geometry.rod)} is pressed in by the edge of the pressing board.` : "The pressing boards end at the grooves; the spine stands outside."}`,
    items,
  };
};

/** Upper edge of the upper pressing board and lower edge of the lower one leave this much for the boards themselves. */
const pressing = { board: 3.4, beyond: 4 } as const;

function rodOf(section: BookSection, input: Input): { readonly radius: number; readonly x: number; readonly top: number } {
  const { bottom, corner } = grooveOf(section);
  const radius = (toMillimetres(input.model.geometry.rod) * section.factor) / 2;
  return { radius, x: section.groove / 2, top: Math.min(bottom.y - 0.3 - 2 * radius, corner.y - 0.4) };
}

function pressedItems(section: BookSection, input: Input, hasRods: boolean): readonly SceneItem[] {
  const { back, end } = section;
  const { corner, bottom } = grooveOf(section);
  const rod = rodOf(section, input);
  const face = hasRods ? Math.min(rod.top, corner.y - 0.3) : corner.y - 0.3;
  const left = hasRods ? rod.x - rod.radius - 3 : section.groove;
  const width = end + pressing.beyond - left;
  return [
    ...wholeBook(section),
    ...(hasRods ? [bottom.y - 0.3 - rod.radius, back - bottom.y + 0.3 + rod.radius].map((y) => area(circle(point(rod.x, y), rod.radius), "metal", "outline")) : []),
    area(rectangle(left, face - pressing.board, width, pressing.board), "face-light", "outline"),
    area(rectangle(left, back - face, width, pressing.board), "face-light", "outline"),
    ...weight(point(left + width * 0.55, face - pressing.board), 20, 7),
    stroke(polyline([point(left - 8, back - face + pressing.board), point(end + pressing.beyond + 8, back - face + pressing.board)]), "edge"),
    stroke(line(point(section.groove + 3, 0.6), point(end, 0.6)), "placement"),
  ];
}

function pressLabels(section: BookSection, input: Input, hasRods: boolean): readonly Placeable[] {
  const words = sectionWords(input);
  const { back, end } = section;
  const { corner, bottom } = grooveOf(section);
  const rod = rodOf(section, input);
  const face = hasRods ? Math.min(rod.top, corner.y - 0.3) : corner.y - 0.3;
  const right = [0, 12, -12, 25, -25, 40];
  return [
    leaderAnywhere({ name: "pressing board", text: "pressing board", target: point(end + 2, face - pressing.board / 2), directions: right, reach: 8 }),
    leaderAnywhere({ name: "barrier", text: "barrier sheet", target: point(end - 3, 0.6), directions: right, reach: 14, end: "arrow" }),
    ...(hasRods ? [leaderAnywhere({ name: "rod", text: `rod, ${words.size(input.model.geometry.rod)}`, target: point(rod.x, bottom.y - 0.3 - rod.radius), directions: [150, 165, 135, 180, 120], reach: 12 })] : []),
    leaderAnywhere({ name: "weight", text: "weight", target: point(end * 0.7, face - pressing.board - 3.5), directions: right, reach: 16 }),
    leaderAnywhere({ name: "spine", text: "spine stays free", target: point(leftOf(section), back * 0.6), end: "arrow", directions: [190, 180, 200, 210], reach: 7 }),
  ];
}
