// Figure: covers and leaves of the stab binding, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedLayer } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. */
export function drawStabParts(input: DrawingInput<"stab-binding">): FigureDraft {
  const { height, width, coverWidth, flap, blockThickness, leaves } = input.model.geometry;
  const [high, wide, across, thick] = [height, width, coverWidth, blockThickness].map(toMillimetres) as [number, number, number, number];
  const cover = (remark: string): LiftedLayer => ({ part: "cover", remark, pieces: [{ x: 0, y: 0, height: high, width: across, stuff: "card", folds: flap.n > 0n ? [wide] : [] }] });
  return drawLiftedParts(input, [
    cover("back, inside up"),
    { part: "leaf", remark: `${leaves} in one pile`, pieces: [{ x: 0, y: 0, height: high, width: wide, stuff: "paper", upwards: thick }] },
    cover("front, outside up"),
  ], "the back of the book");
}
