// The way of the thread through the sections: along the inside of each fold, over the tapes, and up by kettle stitches at its ends.
import type { Definition } from "../../1-definition/types.ts";
import { threadCutTo } from "../../1-definition/thread-keys.ts";
import { addLengths, divideLength, multiplyLength, noLength } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import type { Ledger } from "../ledger.ts";
import { kettleClimb, overTape } from "../sewing/lengths.ts";
import { openPath } from "../sewing/path.ts";
import { enterThread, threadOf } from "../sewing/thread.ts";
import type { Place, Run, Thread } from "../sewing/types.ts";
import type { CaseBindingGeometry } from "./geometry.ts";
import { stationId } from "./parts.ts";

/**
 * Sews the last section of the book first, from head to tail, then the one before it back from tail to head, and so on to the first section.
 * The two first sections are joined by stepping up and by tying the thread to its own tail; every later end by a kettle stitch, caught under
 * the step between the two sections below. Sections stand one pitch apart, the spine's thickness shared among them.
 */
export function sewSections(definition: Definition<"case-binding">, geometry: CaseBindingGeometry, ledger: Ledger): Thread {
  const { block } = geometry;
  const { stations, tapes } = geometry.sewing!;
  const { thread: keys } = definition.book;
  const tapeThickness = definition.materials["tape"]!.thickness!;
  const pitch = divideLength(block.spineThickness, block.sections);
  const fold = multiplyLength(block.leafThickness, block.foldedSheets);
  const sections = Array.from({ length: block.sections }, (_, index) => block.sections - index);
  const depthOf = (section: number): Length => multiplyLength(pitch, { n: BigInt(2 * section - 1), d: 2n });
  const idOf = (section: number, station: number): string => `section-${section}/${station + 1}`;
  const places: readonly Place[] = [
    ...sections.flatMap((section) => stations.map((station, index): Place => ({
      id: idOf(section, index), name: String(index + 1), kind: "hole", part: "folio", hole: stationId(station), along: station.at, across: noLength, depth: depthOf(section),
    }))),
    ...tapes.map(({ name, headSide, tailSide }, index): Place => ({
      id: name, name: String(index + 1), kind: "tape", part: "tape", hole: null, along: divideLength(addLengths(headSide, tailSide), 2), across: noLength, depth: noLength,
    })),
  ];
  const placeOf = new Map(places.map((place) => [place.id, place]));
  const last = stations.length - 1;
  const wanted: Run[] = [];
  const want = (id: string): string => {
    wanted.push({ id, times: 1 });
    return id;
  };

  const sew = openPath({ places, at: { place: idOf(sections[0]!, 0), side: "outside" }, tail: keys.tail, pass: `section ${sections[0]}` });
  /** Number of the move that steps up from the section sewn as the n-th to the next one. */
  const steps: number[] = [];
  sections.forEach((section, order) => {
    const way = order % 2 === 0 ? stations.map((_, index) => index) : stations.map((_, index) => last - index);
    if (order > 0) sew.pass(`section ${section}`);
    sew.through("inside", fold);
    for (let at = 1; at <= last; at += 1) {
      const [from, to] = [way[at - 1]!, way[at]!];
      const tape = stations[from]!.tape !== null && stations[from]!.tape === stations[to]!.tape ? tapes[stations[from]!.tape! - 1]! : null;
      if (tape) {
        sew.through("outside", fold);
        sew.pastTape(tape.name, idOf(section, to), overTape(placeOf.get(idOf(section, from))!, placeOf.get(idOf(section, to))!, tapeThickness), want(`section ${section} over ${tape.name}`));
        sew.through("inside", fold);
      } else sew.along(idOf(section, to), { run: want(`section ${section} inside ${Math.min(from, to) + 1}-${Math.max(from, to) + 1}`) });
    }
    sew.through("outside", fold);
    const under = steps[order - 2];
    if (order === 1) sew.knot(multiplyLength(pitch, 2));
    const next = sections[order + 1];
    if (next === undefined) {
      if (under !== undefined) sew.link(under, kettleClimb(pitch, noLength, block.threadThickness));
      sew.knot(multiplyLength(block.threadThickness, 4), under ?? null);
    } else {
      const to = idOf(next, way[last]!);
      steps.push(under === undefined
        ? sew.along(to, { run: want(`step from section ${section} to ${next}`), length: pitch })
        : sew.kettle(under, to, kettleClimb(pitch, pitch, block.threadThickness)));
    }
  });
  const thread = threadOf([sew.finish(keys.tail, wanted)], {
    needleful: keys.needleful, joinEnd: keys["join end"], waste: keys.waste, cutTo: threadCutTo[definition.units.governing],
  });
  enterThread(ledger, thread);
  ledger.compute("thread by rule of thumb", "(sections + 1) * page height",
    { meaning: "each section one page height, and one more: a check on the thread length, no more", source: "common practice, no source" });
  return thread;
}
