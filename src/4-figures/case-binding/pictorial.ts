// The finished book standing on its tail, seen from its spine and its back board: for the cover and for naming its parts.
import type { CaseBindingGeometry } from "../../2-model/case-binding/geometry.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, spacePoint } from "../../geometry/project.ts";
import { polygon, polyline } from "../../geometry/path.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { DrawingInput } from "../binding.ts";
import { placeAtScale } from "../figure.ts";
import type { FigureDraft } from "../figure.ts";
import { leaderAnywhere } from "../leaders.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { boxOutline, face, prism } from "../bench/solid.ts";
import { sectionWords } from "../bench/section-words.ts";
import { scaleWords } from "../scale.ts";
import { factorToFill } from "../views.ts";

type Input = DrawingInput<"case-binding">;

/** In millimetres of paper: x from the fore-edge to the spine, y from the near board to the far one, z up from the tail. */
interface Book {
  readonly height: number;
  readonly board: number;
  readonly width: number;
  readonly groove: number;
  readonly square: number;
  readonly depth: number;
  readonly rise: number;
  readonly strip: number;
  readonly clothOnBoards: number | null;
  readonly corner: number;
  readonly endband: boolean;
}

function bookAt(geometry: CaseBindingGeometry, factor: number): Book {
  const paper = (length: Length): number => toMillimetres(length) * factor;
  return {
    height: paper(geometry.boardHeight), board: paper(geometry.boardThickness), width: paper(geometry.boardWidth), groove: paper(geometry.groove), square: paper(geometry.square),
    depth: paper(geometry.backThickness) + 2 * paper(geometry.boardThickness), rise: geometry.round ? paper(geometry.round.rise) : 0, strip: Math.max(paper(geometry.stripThickness), 0.8),
    clothOnBoards: geometry.covering.clothOnBoards ? paper(geometry.covering.clothOnBoards) : null, corner: geometry.covering.corners ? paper(geometry.covering.corners.reach) : 0,
    endband: geometry.endband !== null,
  };
}

/** The outline of the spine in plan: a straight strip, or the arc of a rounded back. */
function spineOutline(book: Book): readonly Point[] {
  const { width, groove, depth, board, rise, strip } = book;
  const left = width + groove;
  if (rise === 0) return boxOutline(left, 0, strip, depth);
  const chord = depth - 2 * board;
  const radius = (chord * chord) / (8 * rise) + rise / 2;
  return Array.from({ length: 25 }, (_, index) => {
    const y = (chord * index) / 24;
    const away = y - chord / 2;
    return point(left + Math.sqrt(Math.max(0, radius * radius - away * away)) - (radius - rise) + strip, board + y);
  });
}

/** The spine: a strip with its edges, or an arc whose facets have none, so that it looks round. */
function spineItems({ rise, height }: Book, spine: readonly Point[]): readonly SceneItem[] {
  if (rise === 0) return prism(spine, 0, height, { top: "face-deep", left: "face-middle", right: "face-dark" }, "edge");
  const upright = ({ x, y }: Point): readonly [Point, Point] => [isometric(spacePoint(x, y, 0)), isometric(spacePoint(x, y, height))];
  const facets = spine.slice(1).flatMap((to, index): readonly SceneItem[] => {
    const from = spine[index]!;
    const tone = index < 4 ? "face-light" : index < 11 ? "face-middle" : "face-dark";
    const [a, b] = [upright(from), upright(to)];
    // Facets that look away from the reader, who stands at +x, −y, are left out.
    return to.y - from.y + (to.x - from.x) <= 0 ? [] : [area(polygon([a[0], b[0], b[1], a[1]]), tone, "none")];
  });
  const seen = spine.reduce((far, at) => (at.x + at.y > far.x + far.y ? at : far));
  return [
    ...facets, area(polygon(spine.map((at) => upright(at)[1])), "face-deep", "edge"),
    stroke(polyline(upright(seen)), "outline"), stroke(polyline(spine.filter(({ x, y }) => y <= seen.y || x + y >= seen.x + seen.y).map((at) => upright(at)[0])), "outline"),
  ];
}

function bookItems(book: Book): readonly SceneItem[] {
  const { height, board, width, groove, square, depth, clothOnBoards, corner, endband } = book;
  const at = spacePoint;
  const isCloth = clothOnBoards === null;
  const tones = { top: "face-dark", left: isCloth ? "face-middle" : "paper", right: "face-dark" } as const;
  const pages = { top: "paper", left: "paper", right: "face-light" } as const;
  const back = width + groove;
  const spine = spineOutline(book);
  const near = (points: readonly (readonly [number, number])[]) => points.map(([x, z]) => at(x, 0, z));
  return [
    ...prism(boxOutline(0, depth - board, width, board), 0, height, tones, "edge"),
    // Pages, and their edges as lines along the head.
    ...prism(boxOutline(square, board, back - square, depth - 2 * board), square, height - square, pages, "edge"),
    ...Array.from({ length: 7 }, (_, index) => {
      const y = board + ((depth - 2 * board) * (index + 1)) / 8;
      return stroke(polyline([isometric(at(square, y, height - square)), isometric(at(back, y, height - square))]), "edge");
    }),
    ...(endband ? [face([at(back - 1.6, board, height - square), at(back, board, height - square), at(back, depth - board, height - square), at(back - 1.6, depth - board, height - square)], "face-dark")] : []),
    ...spineItems(book, spine),
    // The groove: the cloth dips to the text block and comes up at the spine.
    face([at(width, 0, 0), at(width + groove * 0.35, board * 0.8, 0), at(width + groove * 0.35, board * 0.8, height), at(width, 0, height)], "face-deep"),
    face([at(width + groove * 0.35, board * 0.8, 0), at(spine[0]!.x, spine[0]!.y, 0), at(spine[0]!.x, spine[0]!.y, height), at(width + groove * 0.35, board * 0.8, height)], "face-dark"),
    ...prism(boxOutline(0, 0, width, board), 0, height, tones, "edge"),
    ...(clothOnBoards === null ? [] : [face(near([[width - clothOnBoards, 0], [width, 0], [width, height], [width - clothOnBoards, height]]), "face-middle")]),
    ...(corner === 0 ? [] : [face(near([[0, 0], [corner, 0], [0, corner]]), "face-middle"), face(near([[0, height], [corner, height], [0, height - corner]]), "face-middle")]),
    stroke(polyline(near([[0, 0], [width, 0], [width, height], [0, height]]).map(isometric), true), "outline"),
  ];
}

/** The book as large as the room allows, with what labels may point at. */
function drawStanding(geometry: CaseBindingGeometry, room: { readonly width: number; readonly height: number }) {
  const factor = factorToFill(bookItems(bookAt(geometry, 1)), room);
  const book = bookAt(geometry, factor);
  const { height, width, groove, square, depth, clothOnBoards, corner } = book;
  const spine = spineOutline(book);
  const middle = spine[Math.floor(spine.length / 2)]!;
  const place = (x: number, y: number, z: number): Point => isometric(spacePoint(x, y, z));
  const spineX = geometry.round ? middle.x : width + groove + book.strip;
  return {
    items: bookItems(book), factor,
    targets: {
      board: place((width - (clothOnBoards ?? 0)) * 0.5, 0, height * 0.45), cloth: place(clothOnBoards ? width - clothOnBoards / 2 : width * 0.85, 0, height * 0.72),
      spine: place(spineX, depth / 2, height * 0.5), groove: place(width + groove * 0.3, book.board * 0.7, height * 0.25),
      pages: place((width + groove) * 0.5, depth / 2, height - square), endband: place(width + groove - 0.8, depth / 2, height - square),
      corner: place(corner * 0.3, 0, corner * 0.3),
    },
  };
}

/** Figure `finished-book`: without labels, because it is the booklet's cover picture. */
export function drawFinishedBook(input: Input): FigureDraft {
  const { geometry, finished } = input.model;
  const words = sectionWords(input);
  const { items, factor } = drawStanding(geometry, { width: 116, height: 140 });
  const sizes = `${words.size(finished.height)} high along the spine × ${words.size(finished.width)} wide × ${words.size(finished.thickness)} thick`;
  const cover = { full: "full cloth", quarter: "cloth on the spine and paper sides", half: "cloth on spine and corners and paper sides" }[geometry.covering.kind];
  return {
    id: "finished-book",
    title: "The finished case binding",
    caption: `The finished book standing, seen from its spine and its back board, in true proportions (isometric view, ${scaleWords(factor)} along the edges). Shut, it is ${sizes}.`,
    alternative: `The finished book stands on its tail, in ${cover}, with a ${geometry.round ? "rounded" : "flat"} back and a groove along the board. At the head the pages lie a little lower than the boards${geometry.endband ? ", with an endband at the spine" : ""}. It is ${sizes}.`,
    items,
  };
}

/** Figure `named-parts`. */
export function drawNamedParts(input: Input): FigureDraft {
  const { geometry } = input.model;
  const { covering } = geometry;
  const { part } = sectionWords(input);
  const rooms = [{ width: 74, height: 88 }, { width: 90, height: 104 }, { width: 104, height: 130 }];
  const { items, scale } = placeAtScale(rooms.map((room) => drawStanding(geometry, room)), ({ items: fixed, targets }) => {
    const left = [180, 170, 190, 160, 200];
    const right = [0, 10, -10, 20, -20];
    const to = (name: string, text: string | readonly string[], target: Point, directions: readonly number[], reach: number) => leaderAnywhere({ name, text, target, directions, reach });
    return {
      fixed, labels: [
        to("endpaper and pages", [geometry.sewing ? part("folio") : part("leaf"), `between ${part("endpaper")}`], targets.pages, [110, 100, 120, 130, 90], 14),
        ...(geometry.endband ? [to("endband", part("endband"), targets.endband, [60, 50, 70, 45], 12)] : []),
        to("spine", [part("spine-strip"), "under the cloth"], targets.spine, right, 10),
        to("groove", "groove", targets.groove, [300, 310, 290, 320], 16),
        to("cloth", part("cloth"), targets.cloth, [100, 110, 90, 120, 130], 22),
        to("board", covering.sides ? [part("boards"), `under ${part("side-paper")}`] : [part("boards"), "under the cloth"], targets.board, left, 22),
        ...(covering.corners ? [to("corner", [`half a`, part("corner-square")], targets.corner, [200, 190, 210, 220], 10)] : []),
      ],
    };
  });
  const hidden = input.model.parts.filter(({ id }) => ["tape", "mull", "spine-lining"].includes(id)).map(({ id }) => part(id));
  return {
    id: "named-parts",
    title: "The parts of the book",
    caption: `The parts of the book with their letters in the cut list; isometric view, ${scaleWords(scale.factor)} along the edges. Hidden inside: ${hidden.join(", ")}.`,
    alternative: `The finished book standing on its tail, its parts named: ${input.model.parts.map(({ id }) => part(id)).join(", ")}.`,
    items,
  };
}
