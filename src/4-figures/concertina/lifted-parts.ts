// Figure: boards, coverings, ribbon and the folded strip of the concertina, lifted off each other.
import { toMillimetres } from "../../units/length.ts";
import { drawLiftedParts } from "../bench/lifted-parts.ts";
import type { LiftedLayer } from "../bench/lifted-parts.ts";
import type { DrawingInput } from "../binding.ts";
import type { FigureDraft } from "../figure.ts";

/** Figure `lifted-parts`. */
export function drawConcertinaParts(input: DrawingInput<"concertina">): FigureDraft {
  const { panels, panelHeight, foldedWidth, foldedStack, square, boardHeight, boardWidth, coverHeight, coverWidth, turnIn, closure, strips } = input.model.geometry;
  const [high, wide, edge, page, across, stack] = [boardHeight, boardWidth, square, panelHeight, foldedWidth, foldedStack].map(toMillimetres) as [number, number, number, number, number, number];
  const covering = (remark: string): LiftedLayer => ({ part: "covering", remark, pieces: [{ x: -toMillimetres(turnIn), y: -toMillimetres(turnIn), height: toMillimetres(coverHeight), width: toMillimetres(coverWidth), stuff: "cloth" }] });
  const board = (remark: string): LiftedLayer => ({ part: "boards", remark, pieces: [{ x: 0, y: 0, height: high, width: wide, stuff: "board" }] });
  const ribbon = closure?.kind === "ribbon" ? [{ part: "closure-ribbon", pieces: [{ x: high / 2 - toMillimetres(closure.width) / 2, y: wide / 2 - toMillimetres(closure.length) / 2, height: toMillimetres(closure.width), width: toMillimetres(closure.length), stuff: "card" as const }] }] : [];
  return drawLiftedParts(input, [
    covering("back"), board("back"), ...ribbon,
    { part: strips[0]!.part, ...(strips.length > 1 ? { upTo: strips.at(-1)!.part } : {}), remark: `${strips.length > 1 ? "joined, " : ""}${panels} panels, folded`, pieces: [{ x: edge, y: edge, height: page, width: across, stuff: "paper", upwards: stack }] },
    board("front"), covering("front"),
  ], "the back of the book");
}
