// The finished book standing a little open, pictorial and in true proportions: for the cover and for naming its parts.
import type { StubAlbumGeometry } from "../../2-model/stub-album/geometry.ts";
import { bandAlong } from "../../geometry/band.ts";
import { convexHull } from "../../geometry/hull.ts";
import { circle, curve, line, pathPoints, polygon, transformPath } from "../../geometry/path.ts";
import { addPoints, point, scalePoint, subtractPoints, unitVector } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { face, prism } from "../bench/solid.ts";
import type { FaceTones } from "../bench/solid.ts";
import { factorToFill } from "../views.ts";

/** How far each cover stands open, in degrees. */
const opening = 11;

const boardTones: FaceTones = { top: "paper", left: "face-middle", right: "face-dark" };
const clothTones: FaceTones = { top: "face-dark", left: "face-deep", right: "face-deep" };

/** The book in millimetres of paper. In plan, x runs from the spine's outer face to the fore-edge, y from the front cover to the back cover. */
interface Book {
  readonly height: number;
  readonly boardWidth: number;
  readonly boardThickness: number;
  readonly stripWidth: number;
  readonly stack: number;
  readonly rise: number;
  readonly inset: number;
  readonly stripThickness: number;
  readonly spine: number;
  readonly floor: number;
  readonly stubCentres: readonly number[];
  readonly stubDepth: number;
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly posts: readonly { readonly along: number; readonly across: number }[];
  readonly postRadius: number;
  readonly ribbon: { readonly width: number; readonly free: number } | null;
  /** Width of the bookmark. */
  readonly bookmark: number | null;
  readonly lining: { readonly height: number; readonly width: number; readonly inset: number } | null;
}

function bookAt(geometry: StubAlbumGeometry, factor: number): Book {
  const paper = (length: Parameters<typeof toMillimetres>[0]): number => toMillimetres(length) * factor;
  const spine = paper(geometry.spineStripWidth);
  const margin = (spine - paper(geometry.foldedFloor)) / 2;
  return {
    height: paper(geometry.boardHeight), boardWidth: paper(geometry.boardWidth), boardThickness: paper(geometry.boardThickness),
    stripWidth: paper(geometry.sideStripWidth), stack: paper(geometry.hingeStack), rise: paper(geometry.closedRise), inset: paper(geometry.stripInset),
    stripThickness: paper(geometry.stripThickness), spine, floor: paper(geometry.floorHeight),
    stubCentres: geometry.stubCentres.map((centre) => margin + paper(centre)), stubDepth: paper(geometry.closedStubDepth),
    pageWidth: paper(geometry.pages.width), pageHeight: paper(geometry.pages.height),
    posts: geometry.posts.along.map((along) => ({ along: paper(along), across: paper(geometry.posts.across) })),
    // Heads are drawn twice as wide as the barrel: the shops' own sizes differ.
    postRadius: paper(geometry.posts.barrel),
    ribbon: geometry.closureLength ? { width: paper(geometry.ribbonWidth), free: paper(geometry.closureLength) - paper(geometry.closureGlued) } : null,
    bookmark: geometry.bookmarkLength ? paper(geometry.ribbonWidth) : null,
    lining: geometry.lining ? { height: paper(geometry.lining.height), width: paper(geometry.lining.width), inset: paper(geometry.lining.inset) } : null,
  };
}

/** The drawing and what labels may point at, in millimetres of paper. */
export interface OpenBook {
  readonly items: readonly SceneItem[];
  readonly factor: number;
  readonly targets: Readonly<Record<"boards" | "hinge-cloth" | "side-strip" | "spine-strip" | "card" | "page-paper" | "post", Point>>
    & Readonly<Record<"lining-paper" | "closure-ribbon" | "bookmark", Point | null>>;
}

/** The finished book standing a little open, as large as the room allows. */
export function drawOpenBook(geometry: StubAlbumGeometry, room: { readonly width: number; readonly height: number }): OpenBook {
  // Drawn once at full size to see how much paper it needs, then at the factor that fills the room.
  const factor = factorToFill(bookItems(bookAt(geometry, 1)), room);
  const book = bookAt(geometry, factor);
  return { items: bookItems(book), factor, targets: targetsOf(book) };
}

function bookItems(book: Book): readonly SceneItem[] {
  return [...shadow(book), ...coverItems(book, "back"), ...spineItems(book), ...pageItems(book), ...coverItems(book, "front")];
}

function targetsOf(book: Book): OpenBook["targets"] {
  const { rise, stack, boardWidth, boardThickness, stripWidth, stripThickness, spine, floor, height, inset, stubCentres, stubDepth, posts } = book;
  const [front, back] = [coverPlan(book, "front"), coverPlan(book, "back")];
  const onFront = (x: number, y: number, z: number): Point => isometric(spacePoint(front(x, y).x, front(x, y).y, z));
  const onBack = (x: number, z: number): Point => isometric(spacePoint(back(x, 0).x, back(x, 0).y, z));
  const last = pageCurve(book, stubCentres.length - 1).at(-1)!;
  const middlePage = pageCurve(book, Math.floor(stubCentres.length / 2)).at(-1)!;
  const stub = Math.floor((stubCentres.length - 1) / 2);
  const tail = isometric(spacePoint(middlePage.x, middlePage.y, (height - book.pageHeight) / 2));
  return {
    boards: onFront(rise + boardWidth * 0.6, -boardThickness, height * 0.4),
    "hinge-cloth": onFront(rise + stripWidth * 0.5, -stack, height * 0.62),
    "side-strip": onFront(rise + stripWidth * 0.5, -stack, height * 0.4),
    "spine-strip": isometric(spacePoint(stripThickness / 2, spine * 0.6, height - inset)),
    card: isometric(spacePoint(floor + stubDepth * 0.6, stubCentres[stub]!, height - inset)),
    "page-paper": isometric(spacePoint(last.x - book.pageWidth * 0.03, last.y, height * 0.72)),
    post: onFront(rise + posts[0]!.across, -stack, height - inset - posts[0]!.along),
    "lining-paper": book.lining ? onBack(rise + boardWidth * 0.93, height * 0.88) : null,
    "closure-ribbon": book.ribbon ? hangingPlaces(book, "back", book.ribbon)[1] : null,
    bookmark: book.bookmark === null ? null : point(tail.x + book.bookmark * 1.4, tail.y + book.bookmark * 1.1),
  };
}

/** A cover turns about the spine strip's outer corner; `x` and `y` are its place when the book is shut, seen for the front cover. */
function coverPlan(book: Book, side: "front" | "back"): (x: number, y: number) => Point {
  const angle = (opening * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (x, y) => {
    const turned = { x: x * cos + y * sin, y: -x * sin + y * cos };
    return side === "front" ? turned : { x: turned.x, y: book.spine - turned.y };
  };
}

function coverItems(book: Book, side: "front" | "back"): readonly SceneItem[] {
  const { height, boardWidth, boardThickness, stripWidth, stack, rise, inset } = book;
  const at = coverPlan(book, side);
  const board = [at(rise, -boardThickness), at(rise + boardWidth, -boardThickness), at(rise + boardWidth, 0), at(rise, 0)];
  const strip = [at(rise, -stack), at(rise + stripWidth, -stack), at(rise + stripWidth, -boardThickness), at(rise, -boardThickness)];
  const joint = face([[0, 0], [rise, -stack]].flatMap(([x, y], end) => {
    const { x: px, y: py } = at(x!, y!);
    const pair = [spacePoint(px, py, inset), spacePoint(px, py, height - inset)];
    return end === 0 ? pair : pair.reverse();
  }), "face-deep");
  const boardBody = prism(board, 0, height, boardTones, "outline");
  const stripBody = prism(strip, inset, height - inset, clothTones, "outline");
  if (side === "back") return [joint, ...stripBody, ...boardBody, ...liningItems(book), ...hangingRibbon(book, side)];
  return [joint, ...hangingRibbon(book, side), ...boardBody, ...stripBody, ...postItems(book)];
}

/** The lining paper on the inside of the back board. */
function liningItems({ lining, ...book }: Book): readonly SceneItem[] {
  if (!lining) return [];
  const at = coverPlan({ lining, ...book }, "back");
  const [near, far] = [at(book.rise + lining.inset, 0), at(book.rise + lining.inset + lining.width, 0)];
  const [bottom, top] = [(book.height - lining.height) / 2, (book.height + lining.height) / 2];
  return [face([spacePoint(near.x, near.y, bottom), spacePoint(far.x, far.y, bottom), spacePoint(far.x, far.y, top), spacePoint(near.x, near.y, top)], "face-light")];
}

/** Spine strip with its cloth and the card's floor; only the head end and the inside can be seen. */
function spineItems({ spine, stripThickness, floor, inset, height }: Book): readonly SceneItem[] {
  const body = (from: number, to: number, tones: FaceTones): readonly SceneItem[] =>
    prism([point(from, 0), point(to, 0), point(to, spine), point(from, spine)], inset, height - inset, tones);
  return [...body(0, stripThickness, clothTones), ...body(stripThickness, Math.max(floor, stripThickness + 0.1), { top: "paper", left: "face-light", right: "face-light" })];
}

/** Where a page runs in plan: up its stub, then bending over to its place in the fan. */
function pageCurve(book: Book, index: number): readonly Point[] {
  const { stubCentres, floor, stubDepth, pageWidth } = book;
  const count = stubCentres.length;
  const y = stubCentres[index]!;
  const share = count === 1 ? 0 : (2 * (index + 0.5)) / count - 1;
  const angle = ((share * opening * 0.72) * Math.PI) / 180;
  const stub = Math.min(stubDepth, pageWidth * 0.4);
  const crest = point(floor + stub, y);
  const bend = (pageWidth - stub) / 3;
  const end = point(crest.x + (pageWidth - stub) * Math.cos(angle), crest.y + (pageWidth - stub) * Math.sin(angle));
  const arc = pathPoints(curve(crest, point(crest.x + bend, crest.y), point(end.x - bend * Math.cos(angle), end.y - bend * Math.sin(angle)), end), 0.05)[0]!;
  return [point(floor, y), ...arc];
}

function pageItems(book: Book): readonly SceneItem[] {
  const { height, pageHeight, stubCentres, floor, stubDepth, pageWidth, inset } = book;
  const [bottom, top] = [(height - pageHeight) / 2, (height + pageHeight) / 2];
  // From the back cover forwards, so that nearer pages cover farther ones.
  return stubCentres.map((_, index) => stubCentres.length - 1 - index).flatMap((index) => {
    const plan = pageCurve(book, index);
    const up = (z: number): readonly Point[] => plan.map(({ x, y }) => isometric(spacePoint(x, y, z)));
    const y = stubCentres[index]!;
    const crest = Math.min(stubDepth, pageWidth * 0.4);
    const stubTop = height - inset;
    return [
      ...(index === Math.floor(stubCentres.length / 2) ? bookmarkEnd(book, isometric(spacePoint(plan.at(-1)!.x, plan.at(-1)!.y, bottom))) : []),
      area(polygon([...up(bottom), ...[...up(top)].reverse()]), "paper", "edge"),
      stroke(line(isometric(spacePoint(floor, y, stubTop)), isometric(spacePoint(floor + crest, y, stubTop))), "outline"),
    ];
  });
}

/** The bookmark's end, out between two pages at the tail of their fore-edge and down on the bench. */
function bookmarkEnd({ bookmark }: Book, corner: Point): readonly SceneItem[] {
  if (bookmark === null) return [];
  const from = point(corner.x - bookmark, corner.y - bookmark * 1.5);
  const to = point(corner.x + bookmark * 2.2, corner.y + bookmark * 1.6);
  return [ribbonBand(pathPoints(curve(from, point(corner.x, corner.y - bookmark * 0.9), point(corner.x + bookmark, corner.y + bookmark), to), 0.05)[0]!, bookmark * 0.8)];
}

/** Post heads on the front cover's strip, a little proud of it. */
function postItems(book: Book): readonly SceneItem[] {
  const at = coverPlan(book, "front");
  const angle = (opening * Math.PI) / 180;
  const along = spacePoint(Math.cos(angle), -Math.sin(angle), 0);
  return book.posts.flatMap((post) => {
    const z = book.height - book.inset - post.along;
    const head = (out: number) => {
      const { x, y } = at(book.rise + post.across, -book.stack - out);
      return isometricPlane(spacePoint(x, y, z), along, spacePoint(0, 0, -1));
    };
    const radius = book.postRadius;
    const round = circle(point(0, 0), radius);
    const proud = radius * 0.3;
    return [
      area(polygon(convexHull([head(0), head(proud)].flatMap((plane) => pathPoints(transformPath(plane, round))[0]!))), "metal", "edge"),
      area(transformPath(head(proud), round), "face-light", "edge"),
      stroke(transformPath(head(proud), line(point(-radius * 0.55, radius * 0.3), point(radius * 0.55, -radius * 0.3))), "edge"),
    ];
  });
}

/** A closure ribbon: out of the fore-edge, then hanging down in a slack curve. */
function hangingRibbon(book: Book, side: "front" | "back"): readonly SceneItem[] {
  if (!book.ribbon) return [];
  const { width } = book.ribbon;
  const edge = foreEdge(book, side);
  const [from, mid, to, out] = hangingPlaces(book, side, book.ribbon);
  const drop = to.y - from.y;
  const bend = (a: Point, c1: Point, c2: Point, b: Point): readonly Point[] => pathPoints(curve(a, c1, c2, b), 0.05)[0]!.slice(1);
  return [ribbonBand([
    // It comes out from under the lining, or from its glued end, just before the fore-edge.
    edge(width * 0.35), from,
    ...bend(from, point(from.x + out * 1.1, from.y + out * 0.6), point(from.x + out * 1.5, from.y + drop * 0.25), mid),
    ...bend(mid, point(from.x + out * 0.5, from.y + drop * 0.75), point(from.x + out * 1.2, from.y + drop * 0.85), to),
  ], width * 0.9)];
}

/** The middle of a board's fore-edge, inside; `back` counts from the edge towards the spine. */
function foreEdge(book: Book, side: "front" | "back"): (back: number) => Point {
  return (back) => {
    const { x, y } = coverPlan(book, side)(book.rise + book.boardWidth - back, 0);
    return isometric(spacePoint(x, y, book.height / 2));
  };
}

/** Where a ribbon starts, where it bends, where it ends, and how far it swings out. */
function hangingPlaces(book: Book, side: "front" | "back", { width, free }: NonNullable<Book["ribbon"]>): readonly [from: Point, mid: Point, to: Point, out: number] {
  const from = foreEdge(book, side)(0);
  const drop = Math.min(free * 0.8, Math.max(book.height * 0.42, width * 3.6));
  const out = width * (side === "front" ? 1.2 : 1);
  return [from, point(from.x + out, from.y + drop * 0.5), point(from.x + out * 1.5, from.y + drop), out];
}

/** A ribbon with its end cut to a notch. */
function ribbonBand(centreLine: readonly Point[], width: number): SceneItem {
  const end = centreLine.at(-1)!;
  const notch = addPoints(end, scalePoint(unitVector(subtractPoints(centreLine.at(-2)!, end)), width * 0.55));
  const sides = bandAlong(centreLine, width);
  // The band runs out along its left side and back along its right: the notch stands between the two ends.
  return area([...sides.slice(0, centreLine.length), { kind: "line", to: notch }, ...sides.slice(centreLine.length)], "face-deep", "edge");
}

/** The shadow on the bench: the open book's outline in plan, moved away from the light. */
function shadow(book: Book): readonly SceneItem[] {
  const { rise, boardWidth, stack, spine } = book;
  const [front, back] = [coverPlan(book, "front"), coverPlan(book, "back")];
  const away = { x: boardWidth * 0.1, y: boardWidth * 0.1 };
  const outline = [front(0, 0), front(rise + boardWidth, -stack), back(rise + boardWidth, -stack), point(0, spine)];
  return [area(polygon(outline.map(({ x, y }) => isometric(spacePoint(x + away.x, y + away.y, 0)))), "face-light", "none")];
}
