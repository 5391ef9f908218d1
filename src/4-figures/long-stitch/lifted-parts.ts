// Figure: the wrap cover laid open, its spine strip, and the sections standing on the spine, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. y runs across the spine, 0 at the middle of it. */
export function drawLongStitchParts(input: DrawingInput<"long-stitch">): FigureDraft {
  const { text, square, coverHeight, coverWidth, frontWidth, spineWidth, folds, strip } = input.model.geometry;
  const [edge, high, across, spine, page, wide, thick] = [square, coverHeight, coverWidth, spineWidth, text.pageHeight, text.pageWidth, text.spineThickness].map(toMillimetres) as [number, number, number, number, number, number, number];
  const left = -toMillimetres(frontWidth) - spine / 2;
  return drawLiftedParts(input, [
    { part: "cover", remark: "inside up", pieces: [{ x: 0, y: left, height: high, width: across, stuff: "card", folds: folds.map(({ at }) => left + toMillimetres(at)) }] },
    ...(strip ? [{ part: "spine-strip", pieces: [{ x: 0, y: -spine / 2 + toMillimetres(strip.inset), height: high, width: toMillimetres(strip.width), stuff: "card" as const }] }] : []),
    { part: "folio", remark: `${text.sections} sections on their folds`, pieces: [{ x: edge, y: -thick / 2, height: page, width: thick, stuff: "paper", upwards: wide }] },
  ], "the outside of the cover");
}
