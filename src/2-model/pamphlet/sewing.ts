// The way of the thread through a pamphlet's fold: from the middle to one end, in one long stitch to the other end, and back to the middle.
import type { Definition } from "../../1-definition/types.ts";
import { threadCutTo } from "../../1-definition/thread-keys.ts";
import { divideLength, noLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { openPath } from "../sewing/path.ts";
import { threadOf } from "../sewing/thread.ts";
import type { Place, Run, Side, Thread, ThreadPath } from "../sewing/types.ts";
import type { PamphletGeometry } from "./geometry.ts";

/** The thread of a pamphlet. */
export function sewPamphlet(definition: Definition<"pamphlet">, geometry: PamphletGeometry): Thread {
  const { thread } = definition.book;
  return threadOf([pathOf(geometry, thread.tail)], {
    needleful: thread.needleful, joinEnd: thread["join end"], waste: thread.waste, cutTo: threadCutTo[definition.units.governing],
  });
}

/**
 * With three holes: out at 2, along the outside to 3, in, along the inside past 2 to 1, out, along the outside to 2, in. With five the
 * thread goes on to the end in running stitches and fills the gaps on its way back, so that every gap is sewn on both sides; only the
 * middle hole is passed on the tied side, by the long stitch that both ends are tied over. Tied outside, inside and outside change places.
 */
function pathOf({ stations, foldThickness, tiedInside, sectionThickness }: PamphletGeometry, tail: Length): ThreadPath {
  const places = stations.map((along, k): Place => ({
    id: `${k + 1}`, name: `${k + 1}`, kind: "hole", part: "text-sheet", hole: `${k + 1}`, along, across: noLength, depth: divideLength(sectionThickness, 2),
  }));
  const tied: Side = tiedInside ? "inside" : "outside";
  const other: Side = tiedInside ? "outside" : "inside";
  const middle = (stations.length + 1) / 2;
  const runs = new Map<string, Run>();
  const sew = openPath({ places, at: { place: `${middle}`, side: tied }, tail, pass: "from the middle to the tail" });
  const through = (): number => sew.through(sew.here.side === tied ? other : tied, foldThickness);
  const to = (station: number): void => {
    const from = Number(sew.here.place);
    const id = `${sew.here.side} ${Math.min(from, station)}-${Math.max(from, station)}`;
    runs.set(id, { id, times: 1 });
    sew.along(`${station}`, { run: id });
    through();
  };
  const last = stations.length;
  through();
  for (let station = middle + 1; station <= last; station += 1) to(station);
  for (let station = last - 1; station > middle; station -= 1) to(station);
  sew.pass("the long stitch, past the middle");
  to(middle - 1);
  sew.pass("to the head and back to the middle");
  for (let station = middle - 2; station >= 1; station -= 1) to(station);
  for (let station = 2; station <= middle; station += 1) to(station);
  return sew.finish(tail, [...runs.values()]);
}
