// The finished book lying front up, its spine with the chains of links towards the reader, pictorial and in true proportions.
import type { LinkStitchGeometry } from "../../2-model/link-stitch/geometry.ts";
import { circle, curve, line, transformPath } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { boxOutline, prism } from "../bench/solid.ts";
import type { FaceTones } from "../bench/solid.ts";
import { factorToFill } from "../views.ts";

const boardTones: FaceTones = { top: "face-light", left: "face-middle", right: "face-dark" };
const paperTones: FaceTones = { top: "paper", left: "paper", right: "face-light" };

/** The drawing and what labels may point at, in millimetres of paper. */
export interface BookView {
  readonly items: readonly SceneItem[];
  readonly factor: number;
  readonly targets: Readonly<Record<"board" | "covering" | "section" | "link" | "hole" | "thread", Point>>;
}

/** x runs from the head to the tail, y from the spine to the fore-edge, z up from the back board. */
interface Book {
  readonly height: number;
  readonly width: number;
  readonly cover: number;
  readonly pitch: number;
  readonly sections: number;
  readonly square: number;
  readonly pageHeight: number;
  readonly pageWidth: number;
  readonly stations: readonly number[];
  readonly hole: number;
  readonly bore: number;
}

/** The finished book, as large as the room allows. */
export function drawBook(geometry: LinkStitchGeometry, room: { readonly width: number; readonly height: number }): BookView {
  // Drawn once at full size to see how much paper it needs, then at the factor that fills the room.
  const factor = factorToFill(bookItems(bookAt(geometry, 1)), room);
  const book = bookAt(geometry, factor);
  return { items: bookItems(book), factor, targets: targetsOf(book) };
}

function bookAt(geometry: LinkStitchGeometry, factor: number): Book {
  const paper = (length: Length): number => toMillimetres(length) * factor;
  return {
    height: paper(geometry.boardHeight), width: paper(geometry.boardWidth), cover: paper(geometry.coverThickness), pitch: paper(geometry.sectionPitch),
    sections: geometry.text.sections, square: paper(geometry.square), pageHeight: paper(geometry.text.pageHeight), pageWidth: paper(geometry.text.blockWidth),
    stations: geometry.holesAlong.map(paper), hole: paper(geometry.holeDistance), bore: paper(geometry.holeDiameter),
  };
}

/** Height of the middle of a section, counted from the front, over the table. */
function sectionZ({ cover, pitch, sections }: Book, section: number): number {
  return cover + (sections - section + 0.5) * pitch;
}

function bookItems(book: Book): readonly SceneItem[] {
  const { height, width, cover, pitch, sections, square, pageHeight, pageWidth, stations } = book;
  const roof = cover + sections * pitch;
  const board = (bottom: number): readonly SceneItem[] => prism(boxOutline(0, 0, height, width), bottom, bottom + cover, boardTones);
  // The fore-edge is hidden behind the spine side in this view; the tail shows the edges of the leaves.
  const block = Array.from({ length: sections }, (_, k) => prism(boxOutline(square, 0, pageHeight, pageWidth), cover + k * pitch, cover + (k + 1) * pitch, paperTones)).flat();
  const onSpine = (path: Path): Path => transformPath(isometricPlane(spacePoint(0, 0, 0), spacePoint(1, 0, 0), spacePoint(0, 0, -1)), path);
  const chains = stations.flatMap((x) => [
    ...Array.from({ length: sections - 1 }, (_, k) => k + 2).flatMap((section) => link(x, -sectionZ(book, section), -sectionZ(book, section) + pitch * 1.3, pitch)).map((path) => stroke(onSpine(path), "edge")),
    stroke(onSpine(line(point(x, -sectionZ(book, sections)), point(x, 0))), "edge"),
    stroke(onSpine(line(point(x, -sectionZ(book, 1)), point(x, -roof - cover))), "edge"),
  ]);
  const top = roof + cover;
  const onTop = (path: Path): Path => transformPath(isometricPlane(spacePoint(0, 0, top), spacePoint(1, 0, 0), spacePoint(0, 1, 0)), path);
  const threads = stations.flatMap((x) => [
    stroke(onTop(line(point(x, 0), point(x, book.hole))), "edge"),
    area(onTop(circle(point(x, book.hole), Math.max(book.bore / 2, 0.45))), "arrow", "none"),
  ]);
  return [...shadow(height, width), ...board(0), ...block, ...board(roof), ...chains, ...threads];
}

/** A loop that hangs from its section and is caught behind the one before: towards the front, so it opens upwards here. */
function link(x: number, y: number, to: number, pitch: number): readonly Path[] {
  const up = y - (to - y);
  // A chain is drawn at least so wide that it is seen.
  const swing = Math.max(0.8, Math.min(pitch * 0.45, 1.6));
  return [-1, 1].map((side) => curve(point(x, y), point(x + side * swing, y - pitch * 0.3), point(x + side * swing, up + pitch * 0.3), point(x, up)));
}

function shadow(height: number, width: number): readonly SceneItem[] {
  const corners = [[3, -3, 0], [height + 3, -3, 0], [height + 3, width * 0.6, 0]].map(([x, y, z]) => isometric(spacePoint(x!, y!, z!)));
  return [area([{ kind: "move", to: corners[0]! }, { kind: "line", to: corners[1]! }, { kind: "line", to: corners[2]! }, { kind: "line", to: isometric(spacePoint(3, width * 0.6, 0)) }, { kind: "close" }], "face-light", "none")];
}

function targetsOf(book: Book): BookView["targets"] {
  const { height, width, cover, pitch, sections, stations, hole } = book;
  const top = cover * 2 + sections * pitch;
  const spine = (x: number, z: number): Point => isometric(spacePoint(x, 0, z));
  const tail = (y: number, z: number): Point => isometric(spacePoint(height, y, z));
  const last = stations.length - 1;
  const between = (stations[0]! + stations[1]!) / 2;
  return {
    board: tail(width * 0.4, cover / 2),
    covering: isometric(spacePoint(height * 0.5, width * 0.6, top)),
    section: spine(between, sectionZ(book, Math.max(1, Math.round(sections / 2)))),
    link: spine(stations[last]!, sectionZ(book, Math.max(2, Math.round(sections / 2)))),
    hole: isometric(spacePoint(stations[0]!, hole, top)),
    thread: isometric(spacePoint(stations[Math.min(1, last)]!, hole * 0.4, top)),
  };
}
