// The stab binding: leaves and soft covers sewn through the side in one of four traditional patterns.
import type { Length } from "../units/length.ts";
import { divideLength, subtractLength } from "../units/length.ts";
import { openLedger } from "./ledger.ts";
import type { BuildBinding } from "./binding.ts";
import { enterThread } from "./sewing/thread.ts";
import { findFaults } from "./stab-binding/findings.ts";
import type { StabBindingGeometry } from "./stab-binding/geometry.ts";
import { sewStabBinding } from "./stab-binding/sewing.ts";
import { sheetWidth, sizeStabBinding } from "./stab-binding/sizes.ts";
import type { Hole, Part, Score } from "./types.ts";

declare module "./types.ts" {
  interface BindingGeometries {
    "stab-binding": StabBindingGeometry;
  }
}

export const build: BuildBinding<"stab-binding"> = (definition) => {
  const ledger = openLedger(definition.units.step, definition.measured);
  const geometry = sizeStabBinding(definition, ledger);
  const thread = sewStabBinding(definition, geometry);
  enterThread(ledger, thread);
  const parts = partsOf(geometry);
  const holes = holesOf(geometry);
  return {
    binding: "stab-binding",
    finished: { height: geometry.height, width: geometry.width, thickness: geometry.thickness },
    values: ledger.values, parts, scores: scoresOf(geometry), holes, thread, geometry,
    findings: findFaults({ definition, ledger, geometry, parts, holes, thread }),
  };
};

function partsOf(geometry: StabBindingGeometry): readonly Part[] {
  const { leaves, isFolded, height, width, paperThickness, coverWidth, coverThickness, flap } = geometry;
  const hasFlap = flap.n > 0n;
  return [
    {
      id: "leaf", name: isFolded ? "folded leaves" : "leaves", material: "text paper", count: leaves, height, width: sheetWidth(geometry), thickness: paperThickness, grain: "height", readyMade: false,
      note: isFolded ? "folded once; the fold is the fore-edge" : "", features: isFolded ? [{ kind: "placement line", name: "fold", direction: "vertical", at: width }] : [],
    },
    {
      id: "cover", name: "covers", material: "cover paper", count: 2, height, width: coverWidth, thickness: coverThickness, grain: "height", readyMade: false,
      note: hasFlap ? "flap folded in at the fore-edge" : "", features: hasFlap ? [{ kind: "placement line", name: "fold of the flap", direction: "vertical", at: width }] : [],
    },
  ];
}

/** The fold of the flap, from the spine edge of a cover. */
function scoresOf({ width, coverWidth, flap }: StabBindingGeometry): readonly Score[] {
  if (flap.n === 0n) return [];
  const fromCentre: Length = subtractLength(width, divideLength(coverWidth, 2));
  return [{ name: "fold of the flap", part: "cover", at: width, exactAt: width, fromCentre, fold: "valley" }];
}

/** The pattern's holes go through covers and leaves, those of the inner binding through the leaves alone. */
function holesOf({ holes, innerHoles, holeDiameter }: StabBindingGeometry): readonly Hole[] {
  const in_ = (part: string) => ({ id, along, across }: { readonly id: string; readonly along: Length; readonly across: Length }): Hole => ({ id, part, along, across, diameter: holeDiameter });
  return [...[...holes, ...innerHoles].map(in_("leaf")), ...holes.map(in_("cover"))];
}
