// The long-stitch binding: sections sewn through the spine of a soft cover that wraps them.
import { threadCutTo } from "../1-definition/thread-keys.ts";
import type { BuildBinding } from "./binding.ts";
import { openLedger } from "./ledger.ts";
import { giveFinished, makeCover } from "./long-stitch/cover.ts";
import { findFaults } from "./long-stitch/findings.ts";
import type { LongStitchGeometry } from "./long-stitch/geometry.ts";
import { holesOf, placeOpenings, placeRows } from "./long-stitch/openings.ts";
import { listParts, listScores } from "./long-stitch/parts.ts";
import { sewBook } from "./long-stitch/sewing.ts";
import { enterThread, threadOf } from "./sewing/thread.ts";
import { folioPart, layOutTextBlock } from "./text-block/block.ts";
import { giveSheetYield } from "./text-block/sheet-yield.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "long-stitch": LongStitchGeometry;
  }
}

export const build: BuildBinding<"long-stitch"> = (definition) => {
  const { book, units } = definition;
  const ledger = openLedger(units.step, definition.measured);
  const text = layOutTextBlock(definition, book["text block"], ledger);
  giveSheetYield(folioPart(text), definition.materials["text paper"]!, ledger);
  const rows = placeRows(definition, ledger);
  const cover = makeCover(definition, ledger);
  giveFinished(cover.flap !== null, ledger);
  const sectionPitch = ledger.compute("section pitch", "spine thickness / sections", { meaning: "one section in the sewn spine, with what its thread adds", source: "geometry", shownAs: "thickness" });
  ledger.compute("through the spine", `section thickness / 2 + cover thickness${cover.strip ? " + spine strip thickness + spine strip adhesive thickness" : ""}`,
    { meaning: "what the needle goes through at a station: half a section, reinforcement and cover", source: "geometry", shownAs: "thickness" });
  const laid = { text, sectionPitch, ...rows, ...cover };
  const geometry: LongStitchGeometry = { ...laid, ...placeOpenings(book.sewing.openings, laid, ledger), throughSpine: ledger.length("through the spine") };

  const keys = book.thread;
  const thread = threadOf([sewBook(geometry, keys.tail)], { needleful: keys.needleful, joinEnd: keys["join end"], waste: keys.waste, cutTo: threadCutTo[units.governing] });
  enterThread(ledger, thread);
  ledger.compute("thread by rule of thumb", "(sections + 2) * page height", { meaning: "one page height for each section, and two more: a check on the thread length, no more", source: "common practice, no source" });
  const parts = listParts(geometry);
  const holes = holesOf(geometry, ledger);
  return {
    binding: "long-stitch",
    finished: { height: ledger.length("cover height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values, parts, scores: listScores(geometry), holes, thread, geometry,
    findings: findFaults({ definition, ledger, geometry, thread, parts, holes }),
  };
};
