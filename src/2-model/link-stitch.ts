// The link stitch: sections linked to each other and to two boards by the sewing thread alone, the spine left open.
import { threadCutTo } from "../1-definition/thread-keys.ts";
import type { Definition } from "../1-definition/types.ts";
import { addLengths, divideLength, subtractLength } from "../units/length.ts";
import type { BuildBinding } from "./binding.ts";
import { openLedger } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { boardHoles, makeBoards } from "./link-stitch/boards.ts";
import { findFaults } from "./link-stitch/findings.ts";
import type { LinkStitchGeometry } from "./link-stitch/geometry.ts";
import { listParts } from "./link-stitch/parts.ts";
import { sewBook } from "./link-stitch/sewing.ts";
import type { Sewn } from "./link-stitch/sewing.ts";
import { enterThread, threadOf } from "./sewing/thread.ts";
import type { Thread } from "./sewing/types.ts";
import { folioPart, layOutTextBlock } from "./text-block/block.ts";
import { giveSheetYield } from "./text-block/sheet-yield.ts";
import { placeStations } from "./text-block/stations.ts";
import type { Hole } from "./types.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "link-stitch": LinkStitchGeometry;
  }
}

export const build: BuildBinding<"link-stitch"> = (definition) => {
  const { book, units } = definition;
  const ledger = openLedger(units.step, definition.measured);
  const text = layOutTextBlock(definition, book["text block"], ledger);
  giveSheetYield(folioPart(text), definition.materials["text paper"]!, ledger);
  const stations = placeStations(definition, book.sewing, "book/sewing", "common practice, no source: 10 to 20 mm", ledger);
  const boards = makeBoards(definition, stations, ledger);
  const sectionPitch = ledger.compute("section pitch", "spine thickness / sections", { meaning: "one section in the sewn spine, with what its thread adds", source: "geometry", shownAs: "thickness" });
  const sewn = { text, sectionPitch, stations, needles: book.sewing.needle === "two" ? 2 : 1, ...boards } as const;
  const thread = sew(sewn, definition, ledger);
  const geometry: LinkStitchGeometry = {
    ...sewn,
    stationEnds: { head: ledger.length("station from head"), tail: subtractLength(text.pageHeight, stations.at(-1)!.at) },
  };
  const parts = listParts(geometry, definition);
  const holes = [...boardHoles(boards), ...foldHoles(geometry, ledger)];
  return {
    binding: "link-stitch",
    finished: { height: ledger.length("finished height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values,
    parts,
    scores: [],
    holes,
    thread,
    geometry,
    findings: findFaults({ definition, ledger, geometry, thread, parts, holes }),
  };
};

/** The way of the thread, its length, and beside it the trade's rule of thumb, which is no more than a check. */
function sew(sewn: Sewn, definition: Definition<"link-stitch">, ledger: Ledger): Thread {
  const { thread: keys } = definition.book;
  const thread = { ...threadOf(sewBook(sewn, keys.tail), { needleful: keys.needleful, joinEnd: keys["join end"], waste: keys.waste, cutTo: threadCutTo[definition.units.governing] }), twoNeedles: sewn.needles === 2 };
  enterThread(ledger, thread);
  ledger.compute("thread by rule of thumb", "(sections + 3) * page height",
    { meaning: "sections and two covers, each one page height, and one more: a check on the thread length, no more", source: "common practice, no source" });
  return thread;
}

/** The holes in the fold of every sheet, which lies in the middle of the folio, trimmed or not. */
function foldHoles({ text, stations }: LinkStitchGeometry, ledger: Ledger): readonly Hole[] {
  const trimmed = divideLength(subtractLength(text.folioHeight, text.pageHeight), 2);
  return stations.map(({ at }, k) => ({
    id: `station-${k + 1}`, part: "folio", along: addLengths(at, trimmed), across: divideLength(text.folioWidth, 2), diameter: ledger.length("thread thickness"),
  }));
}
