// Figure: boards, their coverings and linings, and the sections of the link stitch binding, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedLayer } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. */
export function drawLinkStitchParts(input: DrawingInput<"link-stitch">): FigureDraft {
  const { text, square, boardHeight, boardWidth, turnIn, covering, lining } = input.model.geometry;
  const [edge, high, wide, page, across, thick] = [square, boardHeight, boardWidth, text.pageHeight, text.pageWidth, text.blockThickness].map(toMillimetres) as [number, number, number, number, number, number];
  const cover = (side: string, isFront: boolean): readonly LiftedLayer[] => {
    const layers: readonly LiftedLayer[] = [
      ...(covering ? [{ part: "covering", remark: side, pieces: [{ x: -toMillimetres(turnIn), y: -toMillimetres(turnIn), height: toMillimetres(covering.height), width: toMillimetres(covering.width), stuff: "cloth" as const }] }] : []),
      { part: "boards", remark: side, pieces: [{ x: 0, y: 0, height: high, width: wide, stuff: "board" }] },
      ...(lining ? [{ part: "lining-paper", remark: side, pieces: [{ x: toMillimetres(lining.inset), y: toMillimetres(lining.inset), height: toMillimetres(lining.height), width: toMillimetres(lining.width), stuff: "paper" as const }] }] : []),
    ];
    return isFront ? layers.toReversed() : layers;
  };
  return drawLiftedParts(input, [
    ...cover("back", false),
    { part: "folio", remark: `${text.sections} sections`, pieces: [{ x: edge, y: 0, height: page, width: across, stuff: "paper", upwards: thick }] },
    ...cover("front", true),
  ], "the back of the book");
}
