// The concertina: a strip of paper folded zigzag between two covered boards.
import { makeCovers } from "./concertina/covers.ts";
import { findFaults } from "./concertina/findings.ts";
import type { ConcertinaGeometry } from "./concertina/geometry.ts";
import { enterMaterials } from "./concertina/materials.ts";
import { listParts } from "./concertina/parts.ts";
import { foldStrip } from "./concertina/strip.ts";
import { openLedger } from "./ledger.ts";
import type { BuildBinding } from "./binding.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    readonly concertina: ConcertinaGeometry;
  }
}

export const build: BuildBinding<"concertina"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  enterMaterials(definition, ledger);
  const strip = foldStrip(definition, ledger);
  const covers = makeCovers(definition, ledger);
  const geometry: ConcertinaGeometry = { ...strip.geometry, ...covers.geometry };
  const parts = listParts(geometry, definition, ledger);
  return {
    binding: "concertina",
    finished: { height: ledger.length("finished height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values,
    parts,
    scores: [...strip.scores, ...covers.scores],
    holes: [],
    geometry,
    findings: findFaults({ definition, ledger, geometry, parts, planned: strip.planned }),
  };
};
