// The way of the thread through sections and boards, followed hole by hole as the hand does it.
import { addLengths, divideLength, multiplyLength, noLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { kettleClimb, knotLength, linkUnder } from "../sewing/lengths.ts";
import { openPath } from "../sewing/path.ts";
import type { OpenPath } from "../sewing/path.ts";
import type { Place, Run, ThreadPath } from "../sewing/types.ts";
import type { LinkStitchGeometry } from "./geometry.ts";

/** What the way of the thread depends on. */
export type Sewn = Pick<LinkStitchGeometry, "text" | "sectionPitch" | "stations" | "needles" | "coverThickness" | "holesAlong" | "holeDistance">;

/** Lengths that every station has alike. Folds and boards lie on each other, so a way along the spine is counted from middle to middle. */
interface Ways {
  /** Through all sheets of a section at the fold. */
  readonly fold: Length;
  /** Middle of a section to the middle of the next. */
  readonly pitch: Length;
  /** Down to the stitch between the two sections before: one section and a half. */
  readonly toStitch: Length;
  /** From a section's hole down or up to the inner face of the board beside it, round the edge and along the outer face to the board's hole. */
  readonly overBoard: Length;
  readonly cover: Length;
  /** Back between board and section to the spine, and up or down to the section's hole. */
  readonly underBoard: Length;
  readonly thread: Length;
}

/** Which board a section lies beside. */
type Board = "front" | "back";

/** The names of the passes: each is one small drawing, and one kind of step. */
export function passName(section: number, sections: number): string {
  if (section === 1) return "front board and section 1";
  return section === sections ? `section ${section} and back board` : `section ${section}`;
}

/** The thread's paths: one for a curved needle; for two needles each half of a pair's thread is a path of its own, begun in the fold of section 1. */
export function sewBook(sewn: Sewn, tail: Length): readonly ThreadPath[] {
  const ways = waysOf(sewn);
  const places = placesOf(sewn);
  if (sewn.needles === 1) return [sewWithOne(sewn, places, ways, tail)];
  const pairs = Array.from({ length: Math.floor(sewn.stations.length / 2) }, (_, k) => [2 * k + 1, 2 * k + 2] as const);
  return pairs.flatMap(([near, far]) => [sewHalf(sewn, places, ways, tail, near, far), sewHalf(sewn, places, ways, tail, far, near)]);
}

function waysOf({ text, sectionPitch, coverThickness, holeDistance }: Sewn): Ways {
  const half = divideLength(sectionPitch, 2);
  return {
    fold: divideLength(text.sectionThickness, 2),
    pitch: sectionPitch,
    toStitch: addLengths(sectionPitch, half),
    overBoard: addLengths(half, coverThickness, holeDistance),
    cover: coverThickness,
    underBoard: addLengths(holeDistance, half),
    thread: text.threadThickness,
  };
}

function placesOf({ text, sectionPitch, stations, coverThickness, holesAlong, holeDistance }: Sewn): readonly Place[] {
  const board = (side: Board, depth: Length): readonly Place[] => stations.map((_, k) => ({
    id: hole(side, k + 1), name: `hole ${k + 1}`, kind: "hole", part: "boards", hole: `${side}-${k + 1}`, along: holesAlong[k]!, across: holeDistance, depth,
  }));
  const block = multiplyLength(sectionPitch, text.sections);
  const sections = Array.from({ length: text.sections }, (_, i) => stations.map((station, k): Place => ({
    id: hole(i + 1, k + 1), name: `${k + 1}`, kind: "hole", part: "folio", hole: `station-${k + 1}`, along: station.at, across: noLength,
    depth: addLengths(coverThickness, multiplyLength(sectionPitch, { n: BigInt(2 * i + 1), d: 2n })),
  })));
  return [...board("front", divideLength(coverThickness, 2)), ...sections.flat(), ...board("back", addLengths(coverThickness, block, divideLength(coverThickness, 2)))];
}

function hole(of: Board | number, station: number): string {
  return `${typeof of === "number" ? `section-${of}` : `${of}-board`}/${station}`;
}

/** What an inside stretch of thread is called among the wanted runs, from the head downwards. */
function insideRun(section: number, a: number, b: number): string {
  return `section ${section} ${Math.min(a, b)}-${Math.max(a, b)}`;
}

/**
 * From a section's hole, outside: round the board's spine edge, along its outer face, through its hole, back between board and section,
 * and once round the thread just laid where it comes out there; then into the hole where it began, or up to the next section.
 * The number of the move over the board's edge is given back.
 */
function sewOnBoard(path: OpenPath, board: Board, section: number, station: number, ways: Ways, climb = false): number {
  const run = `${board} board ${station}`;
  const over = path.around("board", { place: hole(board, station), side: "outside" }, ways.overBoard, run);
  path.through("inside", ways.cover);
  path.around("board", { place: hole(section, station), side: "outside" }, ways.underBoard, run);
  const hook = linkUnder(noLength, ways.thread);
  if (climb) path.link(over, addLengths(hook, ways.pitch), { to: hole(section + 1, station) });
  else path.link(over, hook);
  return over;
}

function boardRuns(stations: readonly number[]): readonly Run[] {
  return (["front", "back"] as const).flatMap((board) => stations.map((station) => ({ id: `${board} board ${station}`, times: 2 })));
}

/**
 * One curved needle. Section 1 is sewn to the front board station by station, from the head. Each later section goes the other way: in at its end
 * station, along, out, under the stitch between the two sections before, in again; at its other end under the stitch there and up to the next section.
 * The last section takes the back board with it.
 */
function sewWithOne({ text, stations }: Sewn, places: readonly Place[], ways: Ways, tail: Length): ThreadPath {
  const { sections } = text;
  const fromHead = stations.map((_, k) => k + 1);
  const path = openPath({ places, at: { place: hole(1, 1), side: "inside" }, tail, pass: passName(1, sections) });
  // The stitch that spans from the section before at each station: what the next but one section links under.
  const stitch = new Map<number, number>();
  const wanted: Run[] = [];
  const inside = (section: number, from: number, to: number): void => {
    path.along(hole(section, to), { run: insideRun(section, from, to) });
    wanted.push({ id: insideRun(section, from, to), times: 1 });
  };

  for (const station of fromHead) {
    path.through("outside", ways.fold);
    const isLast = station === stations.length;
    stitch.set(station, sewOnBoard(path, "front", 1, station, ways, isLast));
    if (isLast) break;
    path.through("inside", ways.fold);
    if (station === 1) path.knot(knotLength(ways.thread));
    inside(1, station, station + 1);
  }
  let arrived = path.last;

  for (let section = 2; section <= sections; section += 1) {
    const isLast = section === sections;
    path.pass(passName(section, sections));
    const way = section % 2 === 0 ? [...fromHead].reverse() : fromHead;
    const climbs = new Map<number, number>([[way[0]!, arrived]]);
    if (isLast) sewOnBoard(path, "back", section, way[0]!, ways);
    path.through("inside", ways.fold);
    way.slice(1).forEach((station, index) => {
      inside(section, way[index]!, station);
      path.through("outside", ways.fold);
      const under = stitch.get(station)!;
      const isEnd = index === way.length - 2;
      if (isEnd && !isLast) {
        arrived = path.kettle(under, hole(section + 1, station), kettleClimb(ways.toStitch, ways.pitch, ways.thread));
        return;
      }
      climbs.set(station, path.link(under, linkUnder(ways.toStitch, ways.thread)));
      if (isLast) sewOnBoard(path, "back", section, station, ways);
      path.through("inside", ways.fold);
    });
    for (const [station, move] of climbs) stitch.set(station, move);
  }
  path.knot(knotLength(ways.thread));
  return path.finish(tail, [...wanted, ...boardRuns(fromHead)]);
}

/**
 * Half of the thread of a pair of stations, from `first`: both halves sew their board hole, cross inside the fold, come out at the other's station,
 * and climb under the stitch between the two sections before to the next section.
 */
function sewHalf({ text }: Sewn, places: readonly Place[], ways: Ways, tail: Length, first: number, other: number): ThreadPath {
  const { sections } = text;
  const path = openPath({ places, at: { place: hole(1, first), side: "inside" }, tail: noLength, pass: passName(1, sections) });
  const wanted: Run[] = [];
  let [at, next] = [first, other];
  path.through("outside", ways.fold);
  sewOnBoard(path, "front", 1, first, ways);
  for (let section = 1; section < sections; section += 1) {
    if (section > 1) path.pass(passName(section, sections));
    path.through("inside", ways.fold);
    path.along(hole(section, next), { run: insideRun(section, at, next) });
    wanted.push({ id: insideRun(section, at, next), times: 1 });
    [at, next] = [next, at];
    path.through("outside", ways.fold);
    // The stitch below was sewn by the other needle; in section 1 there is only the one over the board.
    path.kettle(null, hole(section + 1, at), section === 1 ? addLengths(ways.pitch, linkUnder(divideLength(ways.pitch, 2), ways.thread)) : kettleClimb(ways.toStitch, ways.pitch, ways.thread));
  }
  path.pass(passName(sections, sections));
  sewOnBoard(path, "back", sections, at, ways);
  path.through("inside", ways.fold);
  path.knot(knotLength(ways.thread));
  return path.finish(tail, [...wanted, { id: `front board ${first}`, times: 2 }, { id: `back board ${at}`, times: 2 }]);
}
