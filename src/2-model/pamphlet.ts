// The pamphlet: one section of folded sheets, sewn through the fold into a soft cover.
import { addLengths } from "../units/length.ts";
import { openLedger } from "./ledger.ts";
import type { BuildBinding } from "./binding.ts";
import { findFaults } from "./pamphlet/findings.ts";
import type { PamphletGeometry } from "./pamphlet/geometry.ts";
import { sewPamphlet } from "./pamphlet/sewing.ts";
import { sizePamphlet } from "./pamphlet/sizes.ts";
import { enterThread } from "./sewing/thread.ts";
import type { Hole, Part, Score } from "./types.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    pamphlet: PamphletGeometry;
  }
}

export const build: BuildBinding<"pamphlet"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  const geometry = sizePamphlet(definition, ledger);
  const thread = sewPamphlet(definition, geometry);
  enterThread(ledger, thread);
  ledger.compute("thread by rule of thumb", "3 * page height", { meaning: "three times the page height: a check on the thread length, no more", source: "common practice, no source" });
  const parts = partsOf(geometry);
  const scores: readonly Score[] = [{
    name: "cover fold", part: "cover", at: geometry.coverFold, exactAt: geometry.coverFold, fromCentre: addLengths(), fold: "valley",
  }];
  const holes = holesOf(geometry);
  return {
    binding: "pamphlet",
    finished: { height: ledger.length("cover height"), width: ledger.length("finished width"), thickness: ledger.length("finished thickness") },
    values: ledger.values, parts, scores, holes, thread, geometry,
    findings: findFaults({ definition, ledger, geometry, parts, holes, thread }),
  };
};

function partsOf({ sheets, pageHeight, pageWidth, paperThickness, coverHeight, coverWidth, coverFold, coverThickness }: PamphletGeometry): readonly Part[] {
  return [
    {
      id: "text-sheet", name: "text sheets", material: "text paper", count: sheets, height: pageHeight, width: addLengths(pageWidth, pageWidth), thickness: paperThickness,
      grain: "height", readyMade: false, note: "folded once across the middle", features: [{ kind: "placement line", name: "fold", direction: "vertical", at: pageWidth }],
    },
    {
      id: "cover", name: "cover", material: "cover paper", count: 1, height: coverHeight, width: coverWidth, thickness: coverThickness,
      grain: "height", readyMade: false, note: "scored and folded in the middle", features: [{ kind: "placement line", name: "fold", direction: "vertical", at: coverFold }],
    },
  ];
}

/** The same holes in every sheet and in the cover; in the cover they lie a square further from the head. */
function holesOf({ stations, square, pageWidth, coverFold, holeDiameter }: PamphletGeometry): readonly Hole[] {
  return [
    ...stations.map((along, k): Hole => ({ id: `${k + 1}`, part: "text-sheet", along, across: pageWidth, diameter: holeDiameter })),
    ...stations.map((along, k): Hole => ({ id: `${k + 1}`, part: "cover", along: addLengths(along, square), across: coverFold, diameter: holeDiameter })),
  ];
}
