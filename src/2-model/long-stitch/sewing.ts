// The way of the thread through folds and cover: short stitches inside, long stitches outside, and climbs with links at the ends.
import { addLengths, divideLength, multiplyLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { kettleClimb, knotLength, linkUnder } from "../sewing/lengths.ts";
import { openPath } from "../sewing/path.ts";
import type { Place, Run, ThreadPath } from "../sewing/types.ts";
import type { LongStitchGeometry } from "./geometry.ts";
import { holeId } from "./openings.ts";

/** What the way of the thread depends on. */
export type Sewn = Pick<LongStitchGeometry, "text" | "sectionPitch" | "stations" | "openings" | "rows" | "columns" | "throughSpine" | "coverThickness">;

/** The id of the place where a section comes to a station. */
export function placeId(section: number, station: number): string {
  return `section-${section}/${station}`;
}

function placesOf(sewn: Sewn): readonly Place[] {
  const { text, stations, rows, columns, sectionPitch, coverThickness } = sewn;
  return Array.from({ length: text.sections }, (_, i) => stations.map((__, k): Place => ({
    id: placeId(i + 1, k + 1), name: `${k + 1}`, kind: "hole", part: "cover", hole: holeId(i + 1, k + 1, sewn), along: rows[k]!, across: columns[i]!,
    depth: addLengths(coverThickness, multiplyLength(sectionPitch, { n: BigInt(2 * i + 1), d: 2n })),
  }))).flat();
}

/**
 * Section 1 is sewn from the head to the tail, section 2 back, and so on. In at an end station, along the inside to the next, out, along the
 * outside, in: inside and outside take turns, and the thread comes out at the other end station. There it climbs: from section 1 straight up.
 * At the head of section 2 it goes down to its own tail, which hangs out of section 1, is tied to it, and goes up to section 3. From section 3
 * on it first goes under the stitch between the two sections before. The last section links there too, but goes in again where it came
 * out, and is tied inside.
 */
export function sewBook(sewn: Sewn, tail: Length): ThreadPath {
  const { text: { sections, threadThickness: thread }, sectionPitch: pitch, stations } = sewn;
  const last = stations.length;
  const path = openPath({ places: placesOf(sewn), at: { place: placeId(1, 1), side: "outside" }, tail, pass: "section 1" });
  const wanted: Run[] = [];
  const along = (to: string, run: string, length?: Length): number => {
    wanted.push({ id: run, times: 1 });
    return path.along(to, { run, ...(length ? { length } : {}) });
  };
  const through = (side: "inside" | "outside"): number => path.through(side, sewn.throughSpine);
  // The last stitch between two sections at each end: what the next but one section links under.
  const climbed = new Map<"head" | "tail", number>();
  const toStitch = addLengths(pitch, divideLength(pitch, 2));

  for (let section = 1; section <= sections; section += 1) {
    if (section > 1) path.pass(`section ${section}`);
    const fromHead = section % 2 === 1;
    const way = Array.from({ length: last }, (_, k) => (fromHead ? k + 1 : last - k));
    through("inside");
    way.slice(1).forEach((station, k) => {
      const isInside = k % 2 === 0;
      const [near, far] = [Math.min(station, way[k]!), Math.max(station, way[k]!)];
      along(placeId(section, station), `${isInside ? "inside" : "outside"} ${section} ${near}-${far}`);
      through(isInside ? "outside" : "inside");
    });
    const end = fromHead ? "tail" : "head";
    const here = way.at(-1)!;
    if (section === sections) {
      path.link(climbed.get(end)!, linkUnder(toStitch, thread));
      through("inside");
      path.knot(knotLength(thread));
    } else if (section === 1) {
      climbed.set(end, along(placeId(2, here), "climb tail 1-2", pitch));
    } else if (section === 2) {
      along(placeId(1, here), "climb head 1-2", pitch);
      path.knot(knotLength(thread));
      climbed.set(end, along(placeId(3, here), "climb head 1-3", multiplyLength(pitch, 2)));
    } else {
      climbed.set(end, path.kettle(climbed.get(end)!, placeId(section + 1, here), kettleClimb(toStitch, pitch, thread)));
    }
  }
  return path.finish(tail, wanted);
}
