// Figures of making a section: folded and nested, trimmed, pierced in a cradle; pictorial, not to scale.
import { line, polygon, polyline } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { TextBlock } from "../../2-model/text-block/block.ts";
import { toMillimetres } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { areaLabel, grainArrow, leaderAnywhere, leaderLabel } from "../leaders.ts";
import { firstOf } from "../place.ts";
import { movementArrow } from "../movement.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { viewsBeside, withHeading } from "../views.ts";
import { boneFolder } from "../bench/bench-tools.ts";
import { drawPunchingCradle } from "../bench/punching-cradle.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room for one folio lying open on paper. */
const room = { width: 44, height: 40 } as const;

/** Figure `fold-sections`: the open folio, the fold pressed, the folios nested. */
export function drawFoldSections(input: DrawingInput, text: TextBlock): FigureDraft {
  const words = sectionWords(input);
  const [wide, high] = [toMillimetres(text.folioWidth), toMillimetres(text.folioHeight)];
  const factor = Math.min(room.width / wide, room.height / high);
  const [width, height] = [wide * factor, high * factor];
  const flat = placeEvery([
    area(polygon([point(0, 0), point(width, 0), point(width, height), point(0, height)]), "face-light", "outline"),
    stroke(line(point(width / 2, 0), point(width / 2, height)), "valley"),
    ...movementArrow(point(width * 0.94, height * 0.74), point(width * 0.1, height * 0.72), Math.min(6, height / 4)),
  ], [
    dimension({ name: "folio width", from: point(0, height), to: point(width, height), side: "below", text: input.number(text.folioWidth), offset: 6 }),
    dimension({ name: "folio height", from: point(0, 0), to: point(0, height), side: "left", text: input.number(text.folioHeight), offset: 6 }),
    grainArrow("grain", "height", [...(height < 22 ? [] : [point(width * 0.76, height * 0.36), point(width * 0.24, height * 0.36)]), point(width + 6, height / 2)]),
    leaderAnywhere({ name: "fold", text: "fold", target: point(width / 2, height * 0.12), end: "arrow", directions: [60, 45, 75, 120], reach: 5 + height * 0.12 }),
    firstOf(areaLabel("folio", words.part("folio"), [point(width * 0.25, height * 0.3), point(width * 0.25, height * 0.15), point(width * 0.25, height * 0.45)]), leaderAnywhere({ name: "folio", text: words.part("folio"), target: point(width * 0.25, height * 0.3), directions: [120, 105, 135, 90], reach: 5 + height * 0.3 })),
  ]);
  const half = width / 2;
  const folded = [
    area(polygon([point(0, 0), point(half, 0), point(half, height), point(0, height)]), "face-light", "outline"),
    stroke(line(point(half - 0.8, 0.8), point(half - 0.8, height - 0.4)), "edge"),
    stroke(line(point(0, 0), point(0, height)), "outline"),
    ...boneFolder(point(0.4, height * 0.55), 125, 20),
    ...movementArrow(point(4, height * 0.5), point(4, height * 0.12), 0.6), ...movementArrow(point(4, height * 0.6), point(4, height * 0.94), -0.6),
  ];
  const pressed = placeEvery(folded, [leaderAnywhere({ name: "bone folder", text: "bone folder", target: point(-6, height * 0.55 - 9), directions: [100, 80, 115, 60, 140], reach: 9 })]);
  const perSection = text.foldedSheets === 1 ? "one folio is a section" : `${text.foldedSheets} folios make a section`;
  return {
    id: "fold-sections", title: "From folios to a section",
    caption: `Left: a folio, ${words.size(text.folioHeight)} high along the spine, folded across its width. Middle: press the fold from the middle outwards. Right: ${perSection}, seen from the head; not to scale. Make ${text.sections}. ${input.unitNote}`,
    alternative: `A folio, ${input.number(text.folioHeight)} high and ${input.number(text.folioWidth)} wide, grain along the height, is folded edge to edge along the middle of its width. A bone folder presses the fold from the middle to both ends. Seen from the head, ${text.foldedSheets === 1 ? "the folded sheet is one section" : `${text.foldedSheets} folded sheets lie in each other, folds together; the innermost leaf stands out up to ${words.thickness(text.creep)} beyond the outermost`}. ${text.sections} sections make the book.`,
    items: viewsBeside([withHeading("open", "1  Fold", flat), withHeading("pressed", "2  Press", pressed), withHeading("nested", text.foldedSheets === 1 ? "3  One section" : `3  Nest ${text.foldedSheets} sheets`, nested(text.foldedSheets))], 5),
  };
}

/** The sheets seen from the head: one V in the other, their fold at the left. */
function nested(sheets: number): readonly SceneItem[] {
  const drawn = Math.min(sheets, 6);
  const vees = Array.from({ length: drawn }, (_, k) => {
    const x = k * 3.2;
    return stroke(polyline([point(x + 26, 6 + k * 1.9), point(x + 2, 16), point(x, 17), point(x + 2, 18), point(x + 26, 28 - k * 1.9)]), k === 0 ? "outline" : "edge");
  });
  return placeEvery([...vees], [
    leaderLabel({ name: "spine", text: "fold", target: point(0.2, 17), end: "arrow", directions: [265, 275, 255, 285], reach: 10 }),
    ...(sheets > drawn ? [areaLabel("more", `${sheets} in all`, [point(22, 38)])] : []),
  ]);
}

/** Figure `trim-sections`; none for untrimmed pages. */
export function drawTrimSections(input: DrawingInput, text: TextBlock): FigureDraft | null {
  if (text.trim === "none") return null;
  const all = text.trim === "three edges";
  const [pageHeight, pageWidth] = [toMillimetres(text.pageHeight), toMillimetres(text.pageWidth)];
  const [fullHeight, fullWidth] = [toMillimetres(text.folioHeight), toMillimetres(text.folioWidth) / 2];
  const factor = Math.min(60 / fullWidth, 62 / fullHeight);
  const [width, height] = [fullWidth * factor, fullHeight * factor];
  const cutX = pageWidth * factor;
  const top = ((fullHeight - pageHeight) / 2) * factor;
  const past = 3;
  const items = placeEvery([
    area(polygon([point(0, 0), point(width, 0), point(width, height), point(0, height)]), "face-light", "edge"),
    stroke(line(point(0, 0), point(0, height)), "outline"),
    stroke(line(point(cutX, -past), point(cutX, height + past)), "cut"),
    ...(all ? [top, height - top].map((y) => stroke(line(point(-past, y), point(width + past, y)), "cut")) : []),
    area(polygon([point(cutX - 15, -past + 1), point(cutX - 0.6, -past + 1), point(cutX - 0.6, height + past - 1), point(cutX - 15, height + past - 1)]), "metal", "edge"),
  ], [
    dimension({ name: "page width", from: point(0, height), to: point(cutX, height), side: "below", text: input.number(text.pageWidth), offset: 8 }),
    ...(all ? [dimension({ name: "page height", from: point(0, top), to: point(0, height - top), side: "left", text: input.number(text.pageHeight), offset: 8 })] : []),
    leaderAnywhere({ name: "fold", text: "fold", target: point(0, height * 0.3), end: "arrow", directions: [150, 165, 135, 180], reach: all ? 12 : 6 }),
    leaderAnywhere({ name: "ruler", text: ["steel ruler, on the", "part that is kept"], target: point(cutX - 4, height * 0.35), directions: [15, 25, 5, 35], reach: 12 }),
    leaderAnywhere({ name: "cut", text: "cut", target: point(cutX, height * 0.7), end: "arrow", directions: [340, 350, 330, 0], reach: 10 }),
  ]);
  return {
    id: "trim-sections", title: "Trimming a section",
    caption: `A section lying flat, fold to the left, not to scale across the cut; measure from the fold. The ruler covers what is kept, so that a slip of the knife goes into the waste. ${input.unitNote}`,
    alternative: `A section lies with its fold to the left. A heavy line ${input.number(text.pageWidth)} from the fold shows the cut at the fore-edge${all ? `, two more show the cuts at head and tail, ${input.number(text.pageHeight)} apart` : ""}. A steel ruler lies along the cut on the part that is kept.`,
    items,
  };
}

/** Figure `pierce-sections`: the cradle from its end, a section open in it, the awl upright in the corner. */
export function drawPierceSections(stations: number): FigureDraft {
  return {
    id: "pierce-sections", title: "Piercing a section in the cradle",
    caption: `The cradle seen from its end, head of the section away from you, not to scale. The awl goes through all sheets into the corner; your other hand holds a flap, never the underside of the fold.`,
    alternative: `A cradle with an open corner holds a section that is open in its middle; the folded guide lies in the fold. An awl stands upright over one of the ${stations} stations; a hollow arrow shows that it is pushed straight down, through guide and fold into the gap of the cradle.`,
    items: drawPunchingCradle({ section: "section, open in its middle", guide: "piercing guide in the fold" }),
  };
}
