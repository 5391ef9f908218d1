// The spine as it lies before the sewer: sections above each other on the front board, whose outside is drawn folded down towards the reader.
import type { Move, Place, ThreadPath } from "../../2-model/sewing/types.ts";
import type { LinkStitchGeometry } from "../../2-model/link-stitch/geometry.ts";
import { line, polyline, rectangle } from "../../geometry/path.ts";
import { point } from "../../geometry/point.ts";
import type { Point } from "../../geometry/point.ts";
import { spreadPositions } from "../../geometry/spread.ts";
import { toMillimetres } from "../../units/length.ts";
import { wavyLine } from "../breaks.ts";
import { area, centredLabel, label, stroke } from "../scene.ts";
import type { SceneItem } from "../scene.ts";
import { drawPass } from "../sewing/pass-view.ts";

/** On paper, not to scale: one section, a board's edge, what is shown of its outside, and where its holes lie on that. */
const paper = { section: 7.5, edge: 3.6, face: 12, hole: 8 } as const;

/** What of the book is on the table. */
export interface SpineStage {
  /** Sections shown, counted from the front; those between the first shown and the front board are left out. */
  readonly from: number;
  readonly to: number;
  readonly frontBoard: boolean;
  readonly backBoard: boolean;
  /** The pass that is heavy; 0 draws all thread thin. */
  readonly pass: number;
}

/** Draws a stage of the sewing: head to the right, as the front board lies with its outside down and its spine edge towards the sewer; `factor` millimetres of paper for one along the spine. */
export function drawSpineStage(geometry: LinkStitchGeometry, paths: readonly ThreadPath[], stage: SpineStage, factor: number): readonly SceneItem[] {
  const view = layOut(geometry, stage, factor);
  return [
    ...bodies(view, stage),
    ...paths.flatMap((path, index) => threadItems(path, index, view, stage)),
    ...stationNames(view),
  ];
}

interface View {
  readonly width: number;
  /** From the tail, station 1 first. */
  readonly stations: readonly number[];
  /** Middle of a section; the spine edge of a board where thread crosses it; its holes. */
  sectionY(section: number): number;
  readonly frontEdge: number;
  readonly backEdge: number;
  readonly top: number;
}

/** y grows downwards: the front board is at the bottom, its inner face at 0. */
function layOut({ text, stations }: LinkStitchGeometry, { from, to, frontBoard, backBoard }: SpineStage, factor: number): View {
  const below = frontBoard ? 0 : 1;
  const sectionY = (section: number): number => -(section - from + below + 0.5) * paper.section;
  const roof = sectionY(to) - paper.section / 2;
  const width = toMillimetres(text.pageHeight) * factor;
  return {
    width, stations: stations.map(({ at }) => width - toMillimetres(at) * factor),
    sectionY, frontEdge: paper.edge / 2, backEdge: roof - paper.edge / 2,
    top: backBoard ? roof - paper.edge - paper.face : roof,
  };
}

function bodies(view: View, { from, to, frontBoard, backBoard }: SpineStage): readonly SceneItem[] {
  const { width } = view;
  const sections = Array.from({ length: to - from + 1 }, (_, k) => from + k);
  const board = (side: "front" | "back", inner: number, way: 1 | -1): readonly SceneItem[] => {
    const edgeTop = way === 1 ? inner : inner - paper.edge;
    const faceFrom = inner + way * paper.edge;
    const faceTo = faceFrom + way * paper.face;
    return [
      area(rectangle(-2, Math.min(faceFrom, faceTo), width + 4, paper.face), "face-light", "none"),
      stroke(polyline([point(-2, faceFrom), point(-2, faceTo)]), "edge"), stroke(polyline([point(width + 2, faceFrom), point(width + 2, faceTo)]), "edge"),
      stroke(wavyLine(point(-2, faceTo), point(width + 2, faceTo)), "edge"),
      area(rectangle(-2, edgeTop, width + 4, paper.edge), "face-dark", "edge"),
      label(`${side} board`, `${side} board`, point(-4, faceFrom + way * paper.face * 0.5), { anchor: "end" }),
      label(`${side} board outside`, "outside", point(-4, faceFrom + way * paper.face * 0.5 + 3.4), { anchor: "end" }),
    ];
  };
  return [
    ...(frontBoard ? board("front", 0, 1) : [stroke(wavyLine(point(0, 0), point(width, 0)), "edge"), stroke(line(point(0, 0), point(0, -paper.section)), "edge"), stroke(line(point(width, 0), point(width, -paper.section)), "edge")]),
    ...sections.flatMap((section) => [
      area(rectangle(0, view.sectionY(section) - paper.section / 2, width, paper.section), "paper", "edge"),
      label(`section ${section}`, `section ${section}`, point(-4, view.sectionY(section) + 1), { anchor: "end" }),
    ]),
    ...(backBoard ? board("back", view.sectionY(to) - paper.section / 2, -1) : []),
    label("tail", "tail", point(0, view.top - 8.5), { weight: 600 }),
    label("head", "head", point(width, view.top - 8.5), { anchor: "end", weight: 600 }),
  ];
}

/** The thread of one path, as far as its places are shown. */
function threadItems(path: ThreadPath, index: number, view: View, { from, to, frontBoard, backBoard, pass }: SpineStage): readonly SceneItem[] {
  const shown = new Map([...path.places].filter(([id]) => {
    const section = /^section-(\d+)\//.exec(id);
    return section ? Number(section[1]) >= from && Number(section[1]) <= to : id.startsWith("front") ? frontBoard : backBoard;
  }));
  const used = new Set(path.moves.flatMap((move) => [move.from.place, move.to.place]));
  // The turn round the thread on a board's edge is shown from near by, in a drawing of its own.
  const moves = path.moves.filter((move) => shown.has(move.from.place) && shown.has(move.to.place) && (pass === 0 || move.pass <= pass) && !isTurn(move, path));
  const at = (place: Place): Point => {
    const [owner, station] = place.id.split("/") as [string, string];
    const x = view.stations[Number(station) - 1]!;
    if (owner === "front-board") return point(x, view.frontEdge + paper.edge / 2 + paper.hole);
    if (owner === "back-board") return point(x, view.backEdge - paper.edge / 2 - paper.hole);
    return point(x, view.sectionY(Number(owner.slice("section-".length))));
  };
  const edgeY = (move: Move): number => (`${move.from.place} ${move.to.place}`.includes("front") ? view.frontEdge : view.backEdge);
  const drawing = drawPass({
    path: { ...path, places: new Map([...shown].filter(([id]) => used.has(id))), moves }, pass, at, facing: "outside", hasArrow: ({ kind }) => kind === "run",
    aside: index % 2 === 0 ? point(1.4, 1.4) : point(-1.4, -1.4),
    edgeOf: (move, hole) => point(hole.x + (move.from.side === "inside" ? 2 : -1), edgeY(move)),
    catchOf: (move) => caught(move, path, at, view),
  });
  return drawing.items;
}

/** Whether a move goes round the thread that this very pass laid over a board's edge, and stays where it is. */
function isTurn(move: Move, path: ThreadPath): boolean {
  const under = move.kind === "link" && move.under !== null ? path.moves[move.under - 1]! : null;
  return under?.kind === "edge" && under.pass === move.pass && move.from.place === move.to.place;
}

/** Between the two sections before, or at the edge of the board where there is none. */
function caught(move: Move, path: ThreadPath, at: (place: Place) => Point, view: View): Point {
  const from = at(path.places.get(move.from.place)!);
  const own = "under" in move && move.under !== null ? path.moves[move.under - 1]! : null;
  if (own?.kind === "edge" && own.pass === move.pass) return point(from.x - 0.7, own.to.place.startsWith("front") ? view.frontEdge : view.backEdge);
  return point(from.x, Math.min(from.y + paper.section * 1.5, view.frontEdge));
}

/** The stations' numbers in a row above, with a line down where they are set aside. */
function stationNames({ stations, top }: View): readonly SceneItem[] {
  const places = spreadPositions(stations.toReversed(), 4.6)!.toReversed();
  return stations.flatMap((x, k) => {
    const name = `station ${k + 1}`;
    return [
      stroke(polyline([point(x, top - 0.8), point(places[k]!, top - 2.6)]), "dimension", name),
      centredLabel(name, `${k + 1}`, point(places[k]!, top - 4.6), { weight: 600 }),
    ];
  });
}
