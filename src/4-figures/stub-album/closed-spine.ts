// Figure `closed-spine`: the shut and full book cut across its spine, to scale: stubs, pages, joints and boards.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { line, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import { isLess, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { breakAcross, raggedTop } from "../breaks.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { dimension } from "../dimensions.ts";
import { placeAtScale } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import type { Placeable } from "../place.ts";
import { scales } from "../scale.ts";
import type { Scale } from "../scale.ts";
import { area, moveItems, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawCovers } from "./closed-covers.ts";
import { halfStub, layOutFloor, ribbonPath, ribbonSizes } from "./folded-card.ts";
import type { FloorLayout, RibbonSizes } from "./folded-card.ts";
import { paperLines } from "./mounted-papers.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Room on paper for the spine with both covers, and for the height that is drawn. */
const room = { width: 98, height: 88 } as const;
/** Drawn beyond the stubs, in millimetres of paper. */
const beyond = 17;
/** Smaller than this, stubs are rather left out with a break. */
const smallest = 1 / 2;
/** Stubs next to each other are drawn at least this far apart. */
const leastPitch = 2.2;

export const drawClosedSpine: DrawFigure<"stub-album"> = (input) => {
  const { model } = input;
  const { geometry } = model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const view = chooseView(geometry);
  const { scale, thicken, floor } = view;
  const drawn = floor.stubs.length;
  const some = drawn < geometry.stubs ? ` Of ${geometry.stubs} stubs, ${drawn} are drawn.` : "";
  const thick = thicken > 1 ? ` The card is drawn ${thicken} times too thick, papers` : " Papers";
  const [strip, finished, joint, opening, end] = [words.size(geometry.spineStripWidth), words.size(model.finished.thickness), words.size(geometry.jointGap), words.thickness(pages.roomPerOpening), words.thickness(pages.roomAtEachEnd)];
  const stubs = geometry.stubs === 1 ? "one stub" : `${geometry.stubs} stubs`;
  const rooms = `${geometry.stubs === 1 ? "" : `${opening} in each opening, `}${end} at each end, ${words.thickness(pages.roomInAll)} in all`;
  const planned = pages.decoration && geometry.stubs > 1
    ? decorationFits(geometry) ? ` Hatched: what is planned in each opening, ${words.thickness(pages.decoration)}.` : ` More is planned than an opening holds: ${words.thickness(pages.decoration)}; it is not drawn.`
    : "";
  return {
    id: "closed-spine",
    title: "The closed spine",
    caption: `Section through the closed spine, ${scale.name}, as the book stands when it is full, ${finished} thick at the spine.${some}${thick}, cloth and tape as single lines. Room for decoration: ${rooms}.${planned}`,
    alternative: `Section across the spine of the shut book, at ${scale.name}, spine down. ${words.part("spine-strip")}, ${strip} wide, lies at the bottom with the floor of ${words.part("card")} on it; ${stubs} stand on the floor with ${pages.backToBack ? "two papers" : "one paper"} on each.${some} `
      + `At both sides a cover stands beside the spine strip: board inside, ${words.part("side-strip")} outside, joined to the spine strip by the cloth of the joint, ${joint} wide, which runs slanting. `
      + `The book is ${finished} thick at the spine. Room for decoration: ${rooms}.${planned}`,
    items: drawSpine(input, view),
  };
};

interface View {
  readonly scale: Scale;
  readonly thicken: number;
  readonly floor: FloorLayout;
  /** Whether a break leaves stubs out. */
  readonly broken: boolean;
}

/** The largest scale at which all stubs fit; where that gets too small, the first three and the last three at a larger one. */
function chooseView(geometry: StubAlbumGeometry): View {
  const covers = 2 * (toMillimetres(geometry.hingeStack) + toMillimetres(geometry.clothThickness));
  const rest = toMillimetres(geometry.spineStripWidth) - toMillimetres(geometry.foldedFloor);
  const pitch = toMillimetres(geometry.pitch);
  const height = Math.max(toMillimetres(geometry.floorHeight) + toMillimetres(geometry.closedStubDepth), toMillimetres(geometry.closedRise) + toMillimetres(geometry.sideStripWidth));
  const fits = (factor: number, floor: FloorLayout): boolean => floor.width + (covers + rest) * factor <= room.width && height * factor + beyond <= room.height;
  for (const scale of scales.filter(({ factor }) => factor <= 1 && factor >= smallest)) {
    const floor = layOutFloor(geometry, scale.factor, geometry.stubs, 0);
    const isOpen = geometry.stubs === 1 || pitch * scale.factor >= leastPitch;
    if (isOpen && fits(scale.factor, floor)) return { scale, floor, thicken: thickening(geometry, scale.factor), broken: false };
  }
  for (const scale of scales.filter(({ factor }) => factor <= 1)) {
    const floor = layOutFloor(geometry, scale.factor, 3, 3);
    if (fits(scale.factor, floor)) return { scale, floor, thicken: thickening(geometry, scale.factor), broken: floor.breakAt !== null };
  }
  const last = scales.at(-1)!;
  return { scale: last, floor: layOutFloor(geometry, last.factor, 3, 3), thicken: 1, broken: geometry.stubs > 6 };
}

/** How many times the card must be thickened to be seen (0.3 mm on paper) without filling more than half of an opening. */
function thickening(geometry: StubAlbumGeometry, factor: number): number {
  const card = toMillimetres(geometry.cardThickness) * factor;
  const filled = (toMillimetres(geometry.stubGrowth) + toMillimetres(geometry.cardThickness) + 2 * toMillimetres(geometry.pages.paperThickness)) * factor;
  const opening = geometry.stubs === 1 ? Infinity : toMillimetres(geometry.pitch) * factor;
  const possible = [1, 2, 3, 4, 5].filter((times) => times === 1 || filled * times <= opening / 2);
  return possible.find((times) => card * times >= 0.3) ?? possible.at(-1)!;
}

/** x from the front end of the spine strip, y up from its outer face (negative on paper). */
function drawSpine(input: DrawingInput<"stub-album">, { scale, thicken, floor }: View): readonly SceneItem[] {
  const { geometry, finished } = input.model;
  const { pages } = geometry;
  const words = sectionWords(input);
  const mm = (length: Length): number => toMillimetres(length) * scale.factor;
  const rest = (mm(geometry.spineStripWidth) - mm(geometry.foldedFloor)) / 2;
  const width = floor.width + 2 * rest;
  const inside = -mm(geometry.floorHeight);
  const sizes = ribbonSizes(geometry, scale.factor, thicken);
  const crest = inside - sizes.depth;
  const top = Math.min(crest - beyond, -(mm(geometry.closedRise) + mm(geometry.sideStripWidth)) - 6);
  const xs = floor.stubs.map(({ x }) => rest + x);
  const covers = drawCovers(geometry, scale.factor, width, top);
  const breakX = floor.breakAt === null ? null : rest + floor.breakAt;
  const fixed: SceneItem[] = [
    area(rectangle(0, -mm(geometry.stripThickness), width, mm(geometry.stripThickness)), "strip", "edge"),
    ...covers.items,
    ...moveItems([area(ribbonPath(xs, rest, rest + floor.width, sizes), "solid", "none"), ...papers(xs, sizes, input, scale.factor, top - inside)], 0, inside),
    ...decorations(xs, input, scale.factor, { top: top + 5, bottom: crest - 5 }),
    ...(breakX === null ? [] : breakAcross(breakX, top - 1, covers.bottom + 1.2)),
  ];
  const half = mm(words.value("page thickness")) / 2;
  // On a narrow spine the two dimensions below would stand in each other's way: then the name carries the width.
  const widthFits = width >= 24;
  const names = (): readonly Placeable[] => [
    ...(pages.roomAtEachEnd.n > 0n ? [dimension({ name: "room at each end", from: point(xs.at(-1)! + half, top), to: point(width - rest, top), side: "above", text: words.thickness(pages.roomAtEachEnd), offset: 5 })] : []),
    ...(xs.length > 1 && pages.roomPerOpening.n > 0n ? [dimension({ name: "room per opening", from: point(xs[0]! + half, top), to: point(xs[1]! - half, top), side: "above", text: words.thickness(pages.roomPerOpening), offset: 5 })] : []),
    ...(widthFits ? [dimension({ name: "spine strip width", from: point(0, covers.bottom), to: point(width, covers.bottom), side: "below", text: words.size(geometry.spineStripWidth), offset: 6 })] : []),
    preferredLeader({ name: "board", text: words.part("boards"), target: point(-mm(geometry.boardThickness) / 2, top + 4), directions: [170, 180, 160], reach: 10 }),
    preferredLeader({ name: "side strip", text: words.part("side-strip"), target: covers.sideStrip, directions: [170, 180, 160], reach: 8 }),
    preferredLeader({ name: "cloth", text: words.part("hinge-cloth"), target: covers.cloth, end: "arrow", directions: [180, 190, 170], reach: 8 }),
    preferredLeader({ name: "joint", text: `joint gap, ${words.size(geometry.jointGap)}`, target: covers.joint, end: "arrow", directions: [190, 185, 195, 200], reach: covers.joint.x - covers.left + 8 }),
    preferredLeader({ name: "page", text: words.part("page-paper"), target: point(xs.at(-1)! + half * 0.5, top + 6), directions: [10, 15, 5], reach: width - xs.at(-1)! + covers.right - width + 6 }),
    preferredLeader({ name: "stub", text: "stub", target: point(xs.at(-1)!, crest + Math.min(6, sizes.depth / 2)), directions: [10, 5, 15], reach: covers.right - xs.at(-1)! + 6 }),
    preferredLeader({ name: "tape", text: words.part("hinge-tape"), target: covers.tape, end: "arrow", directions: [15, 22, 30, 8], reach: covers.right - covers.tape.x + 6 }),
    preferredLeader({ name: "card", text: `${words.part("card")}, floor`, target: point(width - rest - Math.min(2, rest + mm(geometry.margin) / 2), inside + sizes.card / 2), directions: [10, 15, 5], reach: covers.right - width + 10 }),
    preferredLeader({ name: "strip", text: widthFits ? words.part("spine-strip") : [`${words.part("spine-strip")},`, `${words.size(geometry.spineStripWidth)} wide`], target: point(width - 2, -mm(geometry.stripThickness) / 2), directions: [340, 330, 350], reach: covers.right - width + 8 }),
  ];
  const thickness = (): Placeable => dimension({ name: "finished thickness", from: point(covers.left, -mm(geometry.closedRise)), to: point(covers.right, -mm(geometry.closedRise)), side: "below", text: words.size(finished.thickness), offset: mm(geometry.closedRise) + covers.bottom + 12 });
  // At best it comes last, so that names may cross its extension lines; on a small spine it goes first, or is left to the caption.
  const orders = [() => [...names(), thickness()], () => [thickness(), ...names()], names];
  return placeAtScale(orders, (order) => ({ fixed, labels: order() })).items;
}

/** Whether what is planned goes into an opening; the model has a finding where it does not. */
function decorationFits({ pages }: StubAlbumGeometry): boolean {
  return pages.decoration !== null && !isLess(pages.roomPerOpening, pages.decoration);
}

/** What is planned in each opening, on the right-hand side of every page but the last. */
function decorations(xs: readonly number[], input: DrawingInput<"stub-album">, factor: number, { top, bottom }: { readonly top: number; readonly bottom: number }): readonly SceneItem[] {
  const { decoration } = input.model.geometry.pages;
  if (!decoration || !decorationFits(input.model.geometry)) return [];
  const half = (toMillimetres(sectionWords(input).value("page thickness")) * factor) / 2;
  return xs.slice(0, -1).map((x) => area(rectangle(x + half, top, toMillimetres(decoration) * factor, bottom - top), "tape", "edge"));
}

/** Each paper as one line in its middle. */
function papers(xs: readonly number[], sizes: RibbonSizes, input: DrawingInput<"stub-album">, factor: number, top: number): readonly SceneItem[] {
  const { pages } = input.model.geometry;
  const adhesive = toMillimetres(sectionWords(input).value("page adhesive thickness")) * factor;
  const half = (toMillimetres(pages.paperThickness) * factor) / 2;
  const mounting = { ...sizes, adhesive: adhesive + half, paper: 0, zone: 0, top, backToBack: pages.backToBack };
  const sides: readonly (1 | -1)[] = pages.backToBack ? [-1, 1] : [1];
  const lines = xs.flatMap((x) => sides.flatMap((side) => {
    const { inner } = paperLines(x, side, mounting);
    return inner.slice(1).map((to, index) => stroke(line(inner[index]!, to), "edge"));
  }));
  const reach = halfStub(sizes) + adhesive + 2 * half + 0.5;
  return [...lines, ...xs.flatMap((x) => raggedTop(top, x - reach, x + reach, -1).slice(0, 1))];
}
