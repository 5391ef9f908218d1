// Figure `decoration-room`: one opening between two pages, enlarged and true to scale in every layer.
import { rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { isLess, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { breakAlong, raggedEnd, raggedTop } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { fittingScale } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { halfStub, ribbonPath, ribbonSizes, slotPaths } from "./folded-card.ts";
import { mountedPapers } from "./mounted-papers.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room on paper from one page plane to the next. */
const roomAcross = 34;
/** Stub and page as drawn: shortened by a break where the stub is deeper than this. */
const longestStub = 30;
const beyond = 20;
const thickestBoard = 14;
/** Decoration that does not fit is drawn this far into the next page or board. */
const tooThickBy = 5;

export const drawDecorationRoom: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const alone = geometry.stubs === 1;
  const across = alone ? geometry.stubCentres[0]! : geometry.pitch;
  const scale = fittingScale(toMillimetres(across), 0, roomAcross, 1, 10);
  const [opening, atEnd, all, page] = [pages.roomPerOpening, pages.roomAtEachEnd, pages.roomInAll, words.value("page thickness")].map(words.thickness) as [string, string, string, string];
  const tooThick = pages.decoration !== null && isLess(alone ? pages.roomAtEachEnd : pages.roomPerOpening, pages.decoration);
  const planned = pages.decoration ? ` Planned ${alone ? "beside the page" : "in each opening"}: ${words.thickness(pages.decoration)}${tooThick ? ", more than there is room for" : ""}.` : "";
  return {
    id: "decoration-room",
    title: "Room for decoration",
    caption: alone
      ? `Room beside the page, section ${scale.name}, thickness true, height shortened. Each side of the page takes ${atEnd}; both together ${all}.${planned}`
      : `Room in one opening, section ${scale.name}, thickness true, height shortened. Each opening between two pages takes ${opening} of decoration, each end ${atEnd}, the whole book ${all}.${planned}`,
    alternative: alone
      ? `Section through the stub beside the board, ${scale.name}. The page is ${page} thick. Between the page and the end of the floor ${atEnd} are left on each side, ${all} in all.${planned}`
      : `Section through two neighbouring stubs with their pages, ${scale.name}. The middles of the pages stand ${words.thickness(geometry.pitch)} apart, each page is ${page} thick, which leaves ${opening} of room between two pages. `
        + `At each end there are ${atEnd}; in all ${all}.${planned}`,
    items: alone ? drawEnd(input, scale) : drawOpening(input, scale),
  };
};

/** Two stubs; the inside of the floor lies at y = 0, the first stub's middle at x = 0. */
function drawOpening(input: DrawingInput<"stub-album">, scale: Scale): readonly SceneItem[] {
  const { geometry } = input.model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const mm = (length: Length): number => toMillimetres(length) * scale.factor;
  const pitch = mm(geometry.pitch);
  const half = mm(words.value("page thickness")) / 2;
  const { items, top, crest } = drawStubs(input, scale, [0, pitch], [-8, pitch + 8]);
  const planned = pages.decoration ? mm(pages.decoration) : 0;
  const decoration = drawDecoration(half, 1, planned, pitch - half + tooThickBy, top + 5);
  const floorBottom = mm(geometry.cardThickness);
  return placeEvery([...items, ...decoration], [
    dimension({ name: "room per opening", from: point(half, top), to: point(pitch - half, top), side: "above", text: words.thickness(pages.roomPerOpening), offset: 4 }),
    dimension({ name: "pitch", from: point(0, floorBottom), to: point(pitch, floorBottom), side: "below", text: words.thickness(geometry.pitch), offset: 6 }),
    ...(pages.decoration ? [preferredLeader({ name: "decoration", text: `decoration, ${words.thickness(pages.decoration)}`, target: point(half + Math.min(planned, pitch - 2 * half) / 2, top + beyond - 9.5), directions: [10, 0, 20], reach: pitch + 4 })] : []),
    preferredLeader({ name: "page", text: pageWords(input), target: point(pitch + half * 0.5, top + 3), directions: [10, 0, 20, 350], reach: 8 }),
    preferredLeader({ name: "stub", text: "stub", target: point(pitch, crest + 6), directions: [10, 0, 20, 350], reach: 10 }),
    preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(pitch + 6, floorBottom / 2), directions: [40, 30, 50, 300], reach: 7 }),
  ]);
}

/** What is planned, from a page's face at `from` to one side; where there is more than `most`, it goes on beyond the drawing. */
function drawDecoration(from: number, side: 1 | -1, planned: number, most: number, top: number): readonly SceneItem[] {
  if (planned === 0) return [];
  const drawn = Math.min(planned, most);
  const height = beyond - 12;
  const end = from + side * drawn;
  return [
    area(rectangle(Math.min(from, end), top, drawn, height), "tape", "edge"),
    ...(planned > most ? raggedEnd(end - side * 0.8, top - 0.4, top + height + 0.4, side) : []),
  ];
}

function pageWords(input: DrawingInput<"stub-album">): readonly string[] {
  const words = sectionWords(input);
  const thick = words.thickness(words.value("page thickness"));
  return [input.model.geometry.pages.backToBack ? `two of ${words.part("page-paper")},` : `${words.part("page-paper")},`, `page thickness ${thick}`];
}

/** A single stub and the end of the floor beside it, where the board stands. */
function drawEnd(input: DrawingInput<"stub-album">, scale: Scale): readonly SceneItem[] {
  const { geometry } = input.model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const mm = (length: Length): number => toMillimetres(length) * scale.factor;
  const end = -mm(geometry.stubCentres[0]!);
  const half = mm(words.value("page thickness")) / 2;
  const { items, top, crest } = drawStubs(input, scale, [0], [end, 8]);
  const planned = pages.decoration ? mm(pages.decoration) : 0;
  // A board that is thick at this scale goes on beyond the drawing.
  const whole = mm(geometry.boardThickness);
  const board = Math.min(whole, thickestBoard);
  return placeEvery([
    ...items,
    area(rectangle(end - board, top, board, -top), "board", "outline"), ...(whole > board ? raggedEnd(end - board + 0.5, top, 0.5, -1) : []), ...raggedTop(top + 1, end - board - 0.5, end + 0.5, -1), ...breakAlong(crest * 0.45, end - board - 0.5, end + 0.5),
    ...drawDecoration(-half, -1, planned, -end - half + tooThickBy, top + 5),
  ], [
    dimension({ name: "room at each end", from: point(end, top), to: point(-half, top), side: "above", text: words.thickness(pages.roomAtEachEnd), offset: 4 }),
    ...(pages.decoration ? [preferredLeader({ name: "decoration", text: `decoration, ${words.thickness(pages.decoration)}`, target: point(-half - Math.min(planned, -end - half) / 2, top + beyond - 9.5), directions: [10, 0, 20], reach: 14 })] : []),
    preferredLeader({ name: "board", text: words.part("boards"), target: point(end - board / 2, top * 0.65), directions: [170, 180, 160], reach: 8 }),
    preferredLeader({ name: "page", text: pageWords(input), target: point(half * 0.5, top + 3), directions: [10, 0, 20], reach: 8 }),
    preferredLeader({ name: "stub", text: "stub", target: point(0, crest + 6), directions: [10, 0, 20], reach: 10 }),
    preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(5, mm(geometry.cardThickness) / 2), directions: [40, 30, 300], reach: 7 }),
  ]);
}

/** The card with its stubs and papers, every layer true; what is too long is broken. */
function drawStubs(input: DrawingInput<"stub-album">, { factor }: Scale, xs: readonly number[], ends: readonly [number, number]): { readonly items: readonly SceneItem[]; readonly top: number; readonly crest: number } {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const full = ribbonSizes(geometry, factor);
  const sizes = { ...full, depth: Math.min(full.depth, longestStub) };
  const shortened = full.depth > longestStub;
  const adhesive = toMillimetres(words.value("page adhesive thickness")) * factor;
  const paper = toMillimetres(geometry.pages.paperThickness) * factor;
  const clear = (toMillimetres(geometry.closedStubDepth) - toMillimetres(geometry.pages.adhesiveZone)) * factor;
  const top = -sizes.depth - beyond;
  const outer = halfStub(sizes) + adhesive + paper;
  const [left, right] = ends;
  const leftIsEnd = xs.length === 1;
  const items: SceneItem[] = [
    ...slotPaths(xs, sizes).map((path) => area(path, "adhesive", "none")),
    area(ribbonPath(xs, leftIsEnd ? left : left - 1, right + 1, sizes), "card", "edge"),
    ...(leftIsEnd ? [] : raggedEnd(left, -0.6, sizes.card + 0.6, -1)), ...raggedEnd(right, -0.6, sizes.card + 0.6, 1),
    ...mountedPapers(xs, { ...sizes, adhesive, paper, zone: sizes.depth - clear, top: top - 1, backToBack: geometry.pages.backToBack }),
    ...xs.flatMap((x) => raggedTop(top, x - outer, x + outer, -1)),
    ...(shortened ? xs.flatMap((x) => breakAlong(-sizes.depth * 0.45, x - outer - 1, x + outer + 1)) : []),
  ];
  return { items, top, crest: -sizes.depth };
}
