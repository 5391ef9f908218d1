// The case binding: a sewn or glued text block with a lined spine, hung in a hard case by mull, tapes and endpapers.
import { layOutBlock } from "./case-binding/block.ts";
import { layOutCase } from "./case-binding/cover.ts";
import { findFaults } from "./case-binding/findings.ts";
import type { CaseBindingGeometry } from "./case-binding/geometry.ts";
import { listHoles, listParts } from "./case-binding/parts.ts";
import { sewSections } from "./case-binding/sewing.ts";
import type { BuildBinding } from "./binding.ts";
import { openLedger } from "./ledger.ts";
import { giveSheetYield } from "./text-block/sheet-yield.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "case-binding": CaseBindingGeometry;
  }
}

export const build: BuildBinding<"case-binding"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  const block = layOutBlock(definition, ledger);
  const geometry: CaseBindingGeometry = { ...block, ...layOutCase(definition, block, ledger) };
  const thread = geometry.sewing ? sewSections(definition, geometry, ledger) : null;
  const parts = listParts(geometry, definition);
  giveSheetYield(parts[0]!, definition.materials["text paper"]!, ledger);
  const holes = listHoles(geometry);
  return {
    binding: "case-binding",
    finished: { height: ledger.length("finished height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values,
    parts,
    scores: [],
    holes,
    thread,
    geometry,
    findings: findFaults({ definition, ledger, geometry, parts, holes, thread }),
  };
};
