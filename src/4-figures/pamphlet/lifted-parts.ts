// Figure: cover and sheets of the pamphlet laid open, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. */
export function drawPamphletParts(input: DrawingInput<"pamphlet">): FigureDraft {
  const { sheets, pageHeight, pageWidth, coverHeight, coverWidth, coverFold, square } = input.model.geometry;
  const [high, wide, cover, across, fold, edge] = [pageHeight, pageWidth, coverHeight, coverWidth, coverFold, square].map(toMillimetres) as [number, number, number, number, number, number];
  const shown = Math.min(sheets, 3);
  return drawLiftedParts(input, [
    { part: "cover", remark: "inside up", pieces: [{ x: 0, y: -fold, height: cover, width: across, stuff: "card", folds: [0] }] },
    ...Array.from({ length: shown }, (_, index) => ({
      part: "text-sheet", isClose: index > 0, remark: index === 0 ? `the outermost${sheets > 1 ? ` of ${sheets}` : ""}` : index === shown - 1 ? "the innermost" : "and so on",
      pieces: [{ x: edge, y: -wide, height: high, width: 2 * wide, stuff: "paper" as const, folds: [0] }],
    })),
  ], "the outside of the cover");
}
