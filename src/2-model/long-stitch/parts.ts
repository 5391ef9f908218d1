// The parts of a long-stitch binding as they are bought and cut.
import { folioPart } from "../text-block/block.ts";
import type { Feature, Part, Score } from "../types.ts";
import { addLengths, divideLength, subtractLength } from "../../units/length.ts";
import type { LongStitchGeometry } from "./geometry.ts";

/** Every part in the order of the cut list; the reinforcement only where there is one. */
export function listParts(geometry: LongStitchGeometry): readonly Part[] {
  const { strip, coverHeight, coverWidth, coverThickness, flap } = geometry;
  const cut = { count: 1, grain: "height", readyMade: false } as const;
  return [
    folioPart(geometry.text),
    {
      ...cut, id: "cover", name: "cover", material: "cover", height: coverHeight, width: coverWidth, thickness: coverThickness,
      note: flap ? "front, spine, back and flap in one piece" : "front, spine and back in one piece", features: coverFeatures(geometry),
    },
    ...(strip ? [{ ...cut, id: "spine-strip", name: "spine strip", material: "spine strip", height: coverHeight, width: strip.width, thickness: strip.thickness, note: "reinforces the spine inside", features: [] }] : []),
  ];
}

/** Where the reinforcement will lie, and the slits. */
function coverFeatures({ strip, frontWidth, slits }: LongStitchGeometry): readonly Feature[] {
  const line = { kind: "placement line", direction: "vertical" } as const;
  return [
    ...(strip ? [
      { ...line, name: "spine strip, front edge", at: addLengths(frontWidth, strip.inset) },
      { ...line, name: "spine strip, back edge", at: addLengths(frontWidth, strip.inset, strip.width) },
    ] : []),
    ...slits.map(({ station, along, from, to }) => ({ kind: "slit", name: `slit ${station}`, at: along, from, to }) as const),
  ];
}

/** The folds of the cover as scores; all are valleys, seen from the inside. */
export function listScores({ folds, coverWidth }: LongStitchGeometry): readonly Score[] {
  return folds.map(({ name, at }) => ({ name, part: "cover", at, exactAt: at, fromCentre: subtractLength(at, divideLength(coverWidth, 2)), fold: "valley" }));
}
