// Figure `fold-sequence`: the card seen from its end in four frames, from flat and scored to folded and pressed shut.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { polyline } from "../../geometry/path.ts";
import { addPoints, point, polar } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import type { DrawFigure, DrawingInput } from "../binding.ts";
import { breakAcross } from "../breaks.ts";
import { dimension } from "../dimensions.ts";
import { placeEvery } from "../figure.ts";
import { preferredLeader } from "../leaders.ts";
import { movementArrow, pushArrow } from "../movement.ts";
import type { Placeable } from "../place.ts";
import { centredLabel, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { someStubsDrawn } from "./folded-card.ts";
import { viewsBelow, withHeading } from "../views.ts";
import { sectionWords } from "../bench/section-words.ts";

/** Schematic sizes in millimetres of paper: the same for every book, so that the folds stay readable. */
const leaf = 9.2;
const gap = 4;
const margin = 5;
const breakRoom = 6.5;

export const drawFoldSequence: DrawFigure<"stub-album"> = (input) => {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const { stubs } = geometry;
  const left = someStubsDrawn(geometry);
  const [width, floor, growth] = [words.size(geometry.cardWidth), words.thickness(geometry.foldedFloor), words.thickness(geometry.stubGrowth)];
  const several = stubs > 1;
  return {
    id: "fold-sequence",
    title: "Folding the card",
    caption: `Folding the card, seen from its end with the inside of the book up; not to scale.${left} Crests are mountain folds (peak), bases are valley folds (V). `
      + `With the crests pinched, ${several ? "the stubs stand" : "the stub stands"} upright and the floor is ${floor} wide.`,
    alternative: `Four end views of the card, inside of the book up.${left} 1: the card lies flat, ${width} wide; every stub has a valley fold at its left base, a mountain fold at its crest and a valley fold at its right base. `
      + `2: the card is folded down on both sides of a crest, so that the crest points up; one crest after another, each opened again. 3: the bases are folded as valleys, and ${several ? `all ${stubs} stubs stand up as roofs, with flat floor between` : "the stub stands up as a roof"}. `
      + `4: the two leaves of each stub are pressed together; the folded floor is ${floor} wide from edge to edge, each stub holding its base scores ${growth} apart.`,
    items: viewsBelow(frames(input), 3.5),
  };
};

function drawnStubs({ stubs }: StubAlbumGeometry): readonly number[] {
  return stubs <= 3 ? Array.from({ length: stubs }, (_, index) => index) : [0, 1, stubs - 1];
}

function frames(input: DrawingInput<"stub-album">): readonly (readonly SceneItem[])[] {
  const { geometry } = input.model;
  const words = sectionWords(input);
  const drawn = drawnStubs(geometry);
  const breakAfter = geometry.stubs > drawn.length ? 1 : -1;
  const lay = (angles: readonly number[]): Chain => chainOf(angles, breakAfter);
  const flat = lay(drawn.map(() => 0));
  const standing = lay(drawn.map(() => 70));
  const shut = lay(drawn.map(() => 90));
  const several = drawn.length > 1;
  const lastCrest = standing.crests.at(-1)!;
  return [
    withHeading("flat", "1  Scored and flat, inside of the book up", placeEvery([...flat.items, ...foldSigns(flat)], [
      dimension({ name: "card width", from: point(0, 0), to: point(flat.right, 0), side: "below", text: words.size(geometry.cardWidth), offset: 5.5 }),
      preferredLeader({ name: "valley", text: "valley fold: base", target: addPoints(flat.bases[0]!, point(0, -3.4)), end: "none", directions: [70, 80, 60], reach: 4 }),
      preferredLeader({ name: "mountain", text: "mountain fold: crest", target: addPoints(flat.crests.at(several ? 1 : 0)!, point(0, -3.4)), end: "none", directions: [60, 70, 45, 35], reach: several ? 4 : 8 }),
    ])),
    withHeading("crest", several ? "2  Crests first, one after another" : "2  The crest first", placeEvery(crestFold(), [
      preferredLeader({ name: "peak", text: "mountain fold", target: point(0.5, -0.6), end: "none", directions: [20, 30, 10], reach: 6 }),
    ])),
    withHeading("standing", several ? `3  Bases, until all ${geometry.stubs} stubs stand` : "3  Then the bases", placeEvery([...standing.items, pushArrow(point(standing.right + 2, -1), point(-1, 0), 6)], [
      ...stubNumbers(drawn, standing),
      preferredLeader({ name: "base", text: "valley fold", target: addPoints(standing.bases[0]!, point(-0.4, -0.5)), end: "none", directions: [135, 125, 150], reach: 5 }),
      preferredLeader({ name: "top", text: "crest", target: addPoints(lastCrest, point(0.4, 0.6)), end: "none", directions: [10, 20, 0], reach: 5 }),
    ])),
    withHeading("shut", "4  Pressed shut", placeEvery([...shut.items, ...pinches(shut)], [
      ...stubNumbers(drawn, shut),
      dimension({ name: "folded floor", from: point(0, 0), to: point(shut.right, 0), side: "below", text: words.thickness(geometry.foldedFloor), offset: 5.5 }),
      preferredLeader({ name: "floor", text: `floor of ${words.part("card")}`, target: point(shut.right, 0), end: "arrow", directions: [8, 0, 15, 350], reach: 6 }),
    ])),
  ];
}

/** The card bent down on both sides of one crest, the crest up at (0, 0); its left arm is margin and leaf, the right one goes on. */
function crestFold(): readonly SceneItem[] {
  const crest = point(0, 0);
  const left = polar(crest, margin + leaf, 235);
  const right = polar(crest, margin + leaf + 3, 305);
  return [
    stroke(polyline([left, crest, right]), "outline"),
    ...movementArrow(polar(crest, 9, 205), polar(crest, 12, 228), -1),
    ...movementArrow(polar(crest, 9, 335), polar(crest, 12, 312), 1),
  ];
}

interface Chain {
  readonly items: readonly SceneItem[];
  readonly bases: readonly Point[];
  readonly crests: readonly Point[];
  readonly right: number;
}

/** How far apart the leaves of a shut stub are drawn, so that two lines stay two lines. */
const shutApart = 1.2;

/** The card as one line: floor level at y = 0, stub i rising at its angle; the floor after stub `breakAfter` is broken (−1: nowhere). */
function chainOf(angles: readonly number[], breakAfter: number): Chain {
  let at = point(0, 0);
  const points: Point[] = [at];
  const go = (to: Point): Point => {
    points.push(to);
    return (at = to);
  };
  const bases: Point[] = [];
  const crests: Point[] = [];
  const breaks: SceneItem[] = [];
  go(point(margin, 0));
  angles.forEach((angle, index) => {
    bases.push(at);
    if (angle === 90) {
      go(point(at.x, -leaf + 0.5));
      const half = shutApart / 2;
      crests.push(point(at.x + half, -leaf));
      go(point(at.x + half * 0.5, -leaf));
      go(point(at.x + half, -leaf));
      go(point(at.x + half * 0.5, -leaf + 0.5));
      go(point(at.x, 0));
    } else {
      crests.push(go(polar(at, leaf, angle)));
      go(polar(at, leaf, -angle));
    }
    bases.push(at);
    const isLast = index === angles.length - 1;
    const next = at.x + (isLast ? margin : index === breakAfter ? breakRoom : gap);
    if (!isLast && index === breakAfter) breaks.push(...breakAcross(at.x + breakRoom / 2, -1.6, 1.6));
    go(point(next, 0));
  });
  return { items: [stroke(polyline(points), "outline"), ...breaks], bases, crests, right: at.x };
}

/** A small V over each valley, a small peak over each mountain. */
function foldSigns({ bases, crests }: Chain): readonly SceneItem[] {
  const sign = (at: Point, rise: 1 | -1): SceneItem =>
    stroke(polyline([point(at.x - 1.1, at.y - 1.9 - rise * 0.8), point(at.x, at.y - 1.9 + rise * 0.8), point(at.x + 1.1, at.y - 1.9 - rise * 0.8)]), "edge");
  return [...bases.map((at) => sign(at, 1)), ...crests.map((at) => sign(at, -1))];
}

function pinches({ crests, bases }: Chain): readonly SceneItem[] {
  const y = -leaf * 0.6;
  const last = crests.length - 1;
  return [pushArrow(point(bases[0]!.x - 1, y), point(1, 0), 5.5), pushArrow(point(bases[last * 2 + 1]!.x + 1, y), point(-1, 0), 5.5)];
}

/** The stubs' numbers above their crests. */
function stubNumbers(drawn: readonly number[], { crests }: Chain): readonly Placeable[] {
  return drawn.map((index, position) => {
    const name = `stub ${index + 1} at ${Math.round(crests[position]!.y * 10)}`;
    return { name, candidates: [3, 5, 7].map((up) => [centredLabel(name, String(index + 1), addPoints(crests[position]!, point(0, -up)))]) };
  });
}
