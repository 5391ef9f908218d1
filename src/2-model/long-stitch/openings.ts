// Stations along the fold, and the openings of the spine that belong to them: a row for each station, a column for each section.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, multiplyLength, subtractLength } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { TextBlock } from "../text-block/block.ts";
import type { Station } from "../text-block/stations.ts";
import type { Hole } from "../types.ts";
import type { LongStitchGeometry, Slit } from "./geometry.ts";

type Rows = Pick<LongStitchGeometry, "stations" | "stationEnds" | "longStitches" | "longStitch" | "insideStitch">;

/**
 * The stations: inside stitches 1–2, 3–4, 5–6 … and long stitches 2–3, 4–5 … take turns, so that every section begins and ends with an
 * inside stitch and its thread comes out at the end station to climb. Their number is even: two for each long stitch and two more.
 */
export function placeRows(definition: Definition<"long-stitch">, ledger: Ledger): Rows {
  const { sewing } = definition.book;
  const give = (name: "long stitches" | "inside stitch" | "station from head" | "station from tail", meaning: string, source: string): void =>
    ledger.give(name, sewing[name], originAt(definition, `book/sewing/${name}`), { meaning, source });
  give("long stitches", "stitches outside on the spine, for each section", "common practice, no source");
  give("inside stitch", "length of a short stitch inside the fold", "common practice, no source");
  give("station from head", "head of the page to the first station", "common practice, no source: 10 to 20 mm");
  give("station from tail", "tail of the page to the last station", "common practice, no source: 10 to 20 mm");
  ledger.give("stations", 2 * sewing["long stitches"] + 2, "computed", { meaning: "holes in the fold of each section: two for each long stitch, and one at either end", source: "geometry" });
  ledger.compute("long stitch", "(page height - station from head - station from tail - (long stitches + 1) * inside stitch) / long stitches",
    { meaning: "length of a long stitch: what the ends and the inside stitches leave, shared", source: "geometry" });
  const [first, inside, long] = [ledger.length("station from head"), ledger.length("inside stitch"), ledger.length("long stitch")];
  const exact = Array.from({ length: sewing["long stitches"] + 1 }, (_, k) => {
    const near = addLengths(first, multiplyLength(addLengths(inside, long), k));
    return [near, addLengths(near, inside)];
  }).flat();
  const stations = runningMarks(exact, definition.units.step).map((at, index): Station => ({ name: `station ${index + 1}`, kind: "plain", tape: null, at, exactAt: exact[index]! }));
  return {
    stations, stationEnds: { head: stations[0]!.at, tail: subtractLength(ledger.length("page height"), stations.at(-1)!.at) },
    longStitches: sewing["long stitches"], longStitch: long, insideStitch: inside,
  };
}

type Openings = Pick<LongStitchGeometry, "openings" | "rows" | "columns" | "holeDiameter" | "slits">;

/**
 * Columns lie one section pitch apart, the middle of them on the middle of the spine, so that the ease is shared by both sides. They are not
 * rounded: a section of 1.9 mm on marks of 0.5 mm would make the sections lean. Slits take the place of the holes at all stations but the
 * first and the last, where the thread climbs from section to section along the row and would slip into a slit; each is cut between the
 * holes of the first and the last section, which keep it from tearing further.
 */
export function placeOpenings(openings: "holes" | "slits", { stations, frontWidth, spineWidth, square, sectionPitch, text }: Pick<LongStitchGeometry, "stations" | "frontWidth" | "spineWidth" | "square" | "sectionPitch"> & { readonly text: TextBlock }, ledger: Ledger): Openings {
  ledger.compute("hole diameter", "1.5 * thread thickness", { meaning: "hole in the spine", source: "common practice, no source: the needle's eye is wider than its thread", shownAs: "thickness" });
  const middle = addLengths(frontWidth, divideLength(spineWidth, 2));
  const columns = Array.from({ length: text.sections }, (_, k) => addLengths(middle, multiplyLength(sectionPitch, { n: BigInt(2 * k + 1 - text.sections), d: 2n })));
  const rows = stations.map(({ at }) => addLengths(at, square));
  const slits = openings === "holes" ? [] : rows.map((along, k): Slit => ({ station: k + 1, along, from: columns[0]!, to: columns.at(-1)! })).slice(1, -1);
  return { openings, rows, columns, holeDiameter: ledger.length("hole diameter"), slits };
}

/** The id of the cover's hole of a section at a station, both counted from 1; null where a slit takes its place. */
export function holeId(section: number, station: number, { openings, columns, rows }: Pick<LongStitchGeometry, "openings" | "columns" | "rows">): string | null {
  const atEnd = station === 1 || station === rows.length || section === 1 || section === columns.length;
  return openings === "holes" || atEnd ? `${section}/${station}` : null;
}

/** The holes of the cover's spine by section and station, and those in the fold of every folio, trimmed or not. */
export function holesOf(geometry: LongStitchGeometry, ledger: Ledger): readonly Hole[] {
  const { text, columns, rows, stations, holeDiameter } = geometry;
  const trimmed = divideLength(subtractLength(text.folioHeight, text.pageHeight), 2);
  return [
    ...columns.flatMap((across, i) => rows.flatMap((along, k): readonly Hole[] => {
      const id = holeId(i + 1, k + 1, geometry);
      return id ? [{ id, part: "cover", along, across, diameter: holeDiameter }] : [];
    })),
    ...stations.map(({ at }, k): Hole => ({ id: `station-${k + 1}`, part: "folio", along: addLengths(at, trimmed), across: divideLength(text.folioWidth, 2), diameter: ledger.length("thread thickness") })),
  ];
}
