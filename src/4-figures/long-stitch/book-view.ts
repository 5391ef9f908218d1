// The finished book lying front up, its spine with the long stitches towards the reader, pictorial and in true proportions.
import type { LongStitchGeometry } from "../../2-model/long-stitch/geometry.ts";
import type { Move, Thread } from "../../2-model/sewing/types.ts";
import { curve, line, transformPath } from "../../geometry/path.ts";
import type { Path } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { isometric, isometricPlane, spacePoint } from "../../geometry/project.ts";
import { addLengths, subtractLength, toMillimetres } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { boxOutline, prism } from "../bench/solid.ts";
import type { FaceTones } from "../bench/solid.ts";
import { area, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { factorToFill } from "../views.ts";

const coverTones: FaceTones = { top: "face-light", left: "face-middle", right: "face-dark" };
const paperTones: FaceTones = { top: "paper", left: "paper", right: "paper" };

/** The drawing and what labels may point at, in millimetres of paper. */
export interface BookView {
  readonly items: readonly SceneItem[];
  readonly factor: number;
  readonly targets: Readonly<Record<"front" | "spine" | "sections" | "stitch" | "climb" | "flap" | "head" | "tail", Point>>;
}

/** x runs from the head to the tail, y from the spine to the fore-edge, z up from the back cover. */
interface Book {
  readonly height: number;
  readonly width: number;
  readonly c: number;
  readonly inside: number;
  readonly square: number;
  readonly pageHeight: number;
  readonly pages: number;
  readonly flap: number | null;
  readonly x: (along: Length) => number;
  readonly z: (section: number) => number;
}

/** The finished book, as large as the room allows. */
export function drawBook(geometry: LongStitchGeometry, thread: Thread, finishedWidth: Length, room: { readonly width: number; readonly height: number }): BookView {
  // Drawn once at full size to see how much paper it needs, then at the factor that fills the room.
  const factor = factorToFill(bookItems(bookAt(geometry, finishedWidth, 1), thread), room);
  const book = bookAt(geometry, finishedWidth, factor);
  return { items: bookItems(book, thread), factor, targets: targetsOf(book, geometry) };
}

function bookAt(geometry: LongStitchGeometry, finishedWidth: Length, factor: number): Book {
  const paper = (length: Length): number => toMillimetres(length) * factor;
  const { text, coverThickness, ease, flap, square, coverHeight, sectionPitch } = geometry;
  const [c, inside, pitch] = [paper(coverThickness), paper(addLengths(text.spineThickness, ease)), paper(sectionPitch)];
  return {
    height: paper(coverHeight), width: paper(flap ? subtractLength(finishedWidth, coverThickness) : finishedWidth), c, inside,
    square: paper(square), pageHeight: paper(text.pageHeight), pages: paper(text.blockWidth), flap: flap ? paper(flap.width) : null,
    x: paper, z: (section) => c + inside - paper(ease) / 2 - (section - 0.5) * pitch,
  };
}

function bookItems(book: Book, thread: Thread): readonly SceneItem[] {
  const { height, width, c, inside, square, pageHeight, pages, flap } = book;
  const roof = c + inside;
  const leaves = Array.from({ length: 6 }, (_, k) => prism(boxOutline(square, c, pageHeight, pages), c + (k * inside) / 6, c + ((k + 1) * inside) / 6, paperTones)).flat();
  return [
    ...shadow(height, width),
    ...prism(boxOutline(0, 0, height, width), 0, c, coverTones),
    ...leaves,
    ...(flap === null ? [] : prism(boxOutline(0, width, height, c), 0, roof + 2 * c, coverTones)),
    ...prism(boxOutline(0, c, height, width - c), roof, roof + c, coverTones),
    // The spine is one face with both covers, so it is drawn over them.
    ...prism(boxOutline(0, 0, height, c), 0, roof + c, coverTones),
    ...(flap === null ? [] : prism(boxOutline(0, width - flap, height, flap), roof + c, roof + 2 * c, coverTones)),
    ...stitches(book, thread),
  ];
}

/** Everything that lies outside: long stitches along the spine, climbs across it, links as narrow loops. */
function stitches(book: Book, thread: Thread): readonly SceneItem[] {
  const plane = isometricPlane(spacePoint(0, 0, 0), spacePoint(1, 0, 0), spacePoint(0, 0, -1));
  const { places, moves } = thread.paths[0]!;
  const at = (id: string): Point => point(book.x(places.get(id)!.along), -book.z(Number(/-(\d+)\//.exec(id)![1])));
  const pathOf = (move: Move): Path | null => {
    const [from, to] = [at(move.from.place), at(move.to.place)];
    if (move.kind === "run" && move.to.side === "outside") return line(from, to);
    if (move.kind !== "kettle" && move.kind !== "link") return null;
    const pitch = book.z(1) - book.z(2);
    const caught = point(from.x, from.y - pitch * 1.5);
    const swing = Math.min(1.2, pitch * 0.4);
    return [...curve(from, point(from.x - swing, from.y - pitch * 0.5), point(from.x - swing, from.y - pitch), caught), ...curve(caught, point(from.x + swing, from.y - pitch), point(from.x + swing, from.y - pitch * 0.5), to)];
  };
  return moves.flatMap((move) => {
    const path = pathOf(move);
    return path ? [stroke(transformPath(plane, path), "edge")] : [];
  });
}

function shadow(height: number, width: number): readonly SceneItem[] {
  const corners = [[3, -3], [height + 3, -3], [height + 3, width * 0.6], [3, width * 0.6]].map(([x, y]) => isometric(spacePoint(x!, y!, 0)));
  return [area([{ kind: "move", to: corners[0]! }, ...corners.slice(1).map((to) => ({ kind: "line" as const, to })), { kind: "close" }], "face-light", "none")];
}

function targetsOf(book: Book, { rows, columns }: LongStitchGeometry): BookView["targets"] {
  const { height, width, c, inside, square, pageHeight, flap, x, z } = book;
  const roof = c + inside;
  const top = (share: number, y: number): Point => isometric(spacePoint(height * share, y, roof + c));
  const free = flap === null ? width : width - flap;
  const middle = Math.max(1, Math.round(columns.length / 2));
  return {
    front: top(0.5, free * 0.5),
    spine: isometric(spacePoint((height + x(rows.at(-1)!)) / 2, 0, roof * 0.5)),
    sections: isometric(spacePoint(square + pageHeight, width * 0.45, c + inside * 0.5)),
    stitch: isometric(spacePoint((x(rows[1]!) + x(rows[2]!)) / 2, 0, z(middle))),
    climb: isometric(spacePoint(x(rows.at(-1)!), 0, z(columns.length - 1))),
    flap: isometric(spacePoint(height * 0.3, width - (flap ?? 0) / 2, roof + 2 * c)),
    head: isometric(spacePoint(0, width * 0.3, roof + c)),
    tail: isometric(spacePoint(height, width * 0.7, roof + c)),
  };
}
