// Figures of the folded section: folding and nesting, the steps at the fore-edge and where to trim them, the shut book.
import { line } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";
import { foldOneSheet } from "../sewing/fold-sheet.ts";
import { coverAround, nestedSheets } from "../sewing/nested-sheets.ts";

/** Length of a leaf on paper in the section drawings; how many times too thick they are is said in the caption. */
const leafLength = 84;

/** "about 8 times": how much thicker than true the section is drawn, beside its width. */
function exaggeration(input: DrawingInput<"pamphlet">, pitch: number): string {
  const { paperThickness, pageWidth } = input.model.geometry;
  const times = pitch / (toMillimetres(paperThickness) * (leafLength / toMillimetres(pageWidth)));
  return times < 1.5 ? "to scale" : `about ${Math.round(times)} times too thick`;
}

/** Figure `fold-sheets`. */
export function drawFoldSheets(input: DrawingInput<"pamphlet">): FigureDraft {
  const { sheets, pageHeight, pageWidth, creep } = input.model.geometry;
  const words = sectionWords(input);
  const section = nestedSheets(sheets, leafLength * 0.6);
  const nested = placeEvery(section.items, [
    leaderAnywhere({ name: "back", text: "fold", target: point(section.back, 0), end: "arrow", directions: [180, 150, 210], reach: 5 }),
    ...(sheets > 1 ? [
      leaderAnywhere({ name: "outer", text: "outermost sheet", target: point(14, section.top + section.pitch / 2), directions: [60, 80, 45], reach: 6 }),
      leaderAnywhere({ name: "inner", text: "innermost sheet", target: point(22, section.pitch / 2), directions: [280, 300, 260], reach: section.bottom + 4 }),
      leaderAnywhere({ name: "creep", text: ["inner leaves", "stand out"], target: point(section.innerEdge, section.pitch / 2), end: "arrow", directions: [0, 20, -20], reach: 4 }),
    ] : []),
  ]);
  return {
    id: "fold-sheets",
    title: sheets === 1 ? "Folding the sheet" : "Folding the sheets and laying them into each other",
    caption: `Left: fold right edge to left edge, not to scale. Right: the section seen from its head, drawn ${exaggeration(input, section.pitch)}${sheets > 1 ? `; the innermost leaf stands out by up to ${words.thickness(creep)}` : ""}.`,
    alternative: `A sheet ${words.size(pageHeight)} high lies with its fold line in the middle, ${words.size(pageWidth)} from each edge; an arrow carries the right edge over to the left edge. `
      + (sheets > 1 ? `Seen from the head, ${sheets} folded sheets lie into each other, fold around fold; at the fore-edge the inner leaves stand out beyond the outer ones.` : "Seen from the head, the folded sheet is a narrow loop."),
    items: viewsBeside([withHeading("fold", "1  Fold each sheet", foldOneSheet(pageHeight, pageWidth)), withHeading("nest", sheets === 1 ? "2  Folded" : "2  Lay them into each other", nested)], 9),
  };
}

/** Figure `trim-fore-edge`: before sewing the section alone, or the sewn book with its cover. */
export function drawTrim(input: DrawingInput<"pamphlet">): FigureDraft | null {
  const { isTrimmed, sheets, textWidth, creep, square } = input.model.geometry;
  if (!isTrimmed) return null;
  const words = sectionWords(input);
  const section = nestedSheets(sheets, leafLength);
  const withCover = square.n === 0n;
  const cut = section.outerEdge - 1.2;
  const [top, bottom] = [section.top - (withCover ? 1.4 : 0), section.bottom + (withCover ? 1.4 : 0)];
  const fixed = [
    ...section.items, ...(withCover ? coverAround(section, section.innerEdge + 2) : []),
    stroke(line(point(cut, top - 4), point(cut, bottom + 4)), "centre"),
    ...blade(cut, top - 4.4),
  ];
  const items = placeEvery(fixed, [
    dimension({ name: "text width", from: point(section.back - (withCover ? 1.4 : 0), bottom), to: point(cut, bottom + 4), side: "below", text: words.size(textWidth), offset: 6 }),
    ...(sheets > 1 ? [dimension({ name: "creep", from: point(section.outerEdge, top), to: point(section.innerEdge, top), side: "above", text: `up to ${words.thickness(creep)}`, offset: 9 })] : []),
    leaderAnywhere({ name: "off", text: "falls away", target: point(section.innerEdge - 0.8, -section.pitch / 2), directions: [0, -20, 20, -40], reach: 5 }),
    leaderAnywhere({ name: "back", text: "back of the fold", target: point(section.back - (withCover ? 1.4 : 0), 0), end: "arrow", directions: [150, 210, 180], reach: 4 }),
  ]);
  return {
    id: "trim-fore-edge",
    title: "Trimming the fore-edge",
    caption: `${withCover ? "The sewn book" : "The section"} seen from its head, drawn ${exaggeration(input, section.pitch)}. Cut along the chain line, ${words.size(textWidth)} from the back of the fold; the ruler lies on the pages you keep.`,
    alternative: `The leaves of the ${withCover ? "sewn book" : "section"} end in steps, the innermost ones up to ${words.thickness(creep)} beyond the outermost. A knife stands on a line ${words.size(textWidth)} from the back of the fold; everything beyond it falls away.`,
    items,
  };
}

/** A knife's point on the work. */
function blade(x: number, y: number): readonly SceneItem[] {
  return [area([{ kind: "move", to: point(x, y) }, { kind: "line", to: point(x - 1.6, y - 5) }, { kind: "line", to: point(x - 1.6, y - 12) }, { kind: "line", to: point(x + 1.6, y - 12) }, { kind: "line", to: point(x + 1.6, y - 3) }, { kind: "close" }], "metal", "edge")];
}

/** Figure `section`: the shut book from its head. */
export function drawSection(input: DrawingInput<"pamphlet">): FigureDraft {
  const { model } = input;
  const { sheets, isTrimmed, square, coverThickness, sectionThickness, textWidth, tiedInside } = model.geometry;
  const words = sectionWords(input);
  const whole = nestedSheets(sheets, leafLength);
  const edge = isTrimmed ? whole.outerEdge - 1.2 : whole.innerEdge;
  const section = isTrimmed ? nestedSheets(sheets, leafLength, edge) : whole;
  const coverEdge = edge + (square.n > 0n ? 4 : 0);
  const [outside, bottom] = [section.back - 1.4, section.bottom + 1.4];
  const thread = [stroke(line(point(-0.2, 0), point(outside - 0.6, 0)), "thread")];
  const fixed = [...section.items, ...coverAround(section, coverEdge), ...thread];
  const { finished } = model;
  const items = placeEvery(fixed, [
    dimension({ name: "width", from: point(outside, bottom), to: point(coverEdge, bottom), side: "below", text: words.size(finished.width), offset: 15 }),
    dimension({ name: "pages", from: point(section.back, bottom), to: point(edge, bottom), side: "below", text: `pages ${words.size(textWidth)}`, offset: 6 }),
    dimension({ name: "thickness", from: point(coverEdge, -bottom), to: point(coverEdge, bottom), side: "right", text: words.thickness(finished.thickness), offset: 7 }),
    ...(square.n > 0n ? [dimension({ name: "square", from: point(edge, -section.bottom), to: point(coverEdge, -bottom), side: "above", text: `square ${words.size(square)}`, offset: 6, outside: "before" })] : []),
    leaderAnywhere({ name: "cover", text: words.part("cover"), target: point(24, -bottom), end: "arrow", directions: [60, 80, 100], reach: 6 }),
    leaderAnywhere({ name: "sheets", text: words.part("text-sheet"), target: point(8, -section.bottom + section.pitch * 0.5), directions: [120, 110, 100, 130], reach: 9 }),
    leaderAnywhere({ name: "thread", text: ["thread,", `tied ${tiedInside ? "inside" : "outside"}`], target: point(outside - 0.4, 0), end: "none", directions: [160, 200, 180], reach: 5 }),
  ]);
  return {
    id: "section",
    title: "Section through the finished book",
    caption: `The shut book seen from its head, cut through the middle hole, drawn ${exaggeration(input, section.pitch)}. Section ${words.thickness(sectionThickness)}, cover ${words.thickness(coverThickness)} each side.`,
    alternative: `${sheets} folded ${sheets === 1 ? "sheet lies" : "sheets lie"} in the cover, fold in fold; the thread goes through all folds. The pages are ${words.size(textWidth)} wide from the back of the fold, the book ${words.size(finished.width)} wide and ${words.thickness(finished.thickness)} thick.`,
    items,
  };
}
