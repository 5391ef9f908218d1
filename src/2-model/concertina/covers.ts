// The two covers of a concertina, the thickness of the shut book and its closure.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, divideLength, multiplyLength } from "../../units/length.ts";
import { runningMarks } from "../../units/rounding.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Score } from "../types.ts";
import type { BandClosure, ConcertinaGeometry, RibbonClosure } from "./geometry.ts";
import { coveringRole } from "./materials.ts";

type CoverGeometry = Pick<ConcertinaGeometry,
  "square" | "boardHeight" | "boardWidth" | "boardThickness" | "covering" | "coverThickness" | "coverHeight" | "coverWidth" | "turnIn" | "cornerDistance" | "coverStack" | "shutThickness" | "endAdhesiveThickness" | "closure">;

/**
 * Computes covers and closure. A cover is a board with covering outside and turn-in inside: two layers of covering and of adhesive. The end panel is
 * part of the folded strip and is counted there.
 */
export function makeCovers(definition: Definition<"concertina">, ledger: Ledger): { readonly geometry: CoverGeometry; readonly scores: readonly Score[] } {
  const covering = coveringRole(definition);
  ledger.compute("board height", "nearest(panel height + 2 * square)", { meaning: "board, along the folds", source: "geometry" });
  ledger.compute("board width", "nearest(folded width + 2 * square)", { meaning: "board, across the folds: the strip as it is once folded, and two squares", source: "geometry" });
  ledger.compute("covering height", "up(board height + 2 * turn in)", { meaning: "covering of one board, along the folds", source: "geometry" });
  ledger.compute("covering width", "up(board width + 2 * turn in)", { meaning: "covering of one board, across the folds", source: "geometry" });
  ledger.compute("corner distance", "1.5 * boards thickness", { meaning: "from a board's corner to the 45° cut, square to the cut", source: "common practice, no source", shownAs: "thickness" });
  ledger.compute("cover stack", `boards thickness + 2 * (${covering} thickness + covering adhesive thickness)`,
    { meaning: "board, covering outside, turn-in inside", source: "geometry", shownAs: "thickness" });
  ledger.compute("finished height", `nearest(board height + 2 * (${covering} thickness + covering adhesive thickness))`, { meaning: "the shut book, along the folds", source: "geometry" });
  ledger.compute("finished width", `nearest(board width + 2 * (${covering} thickness + covering adhesive thickness))`, { meaning: "the shut book, across the folds", source: "geometry" });
  ledger.compute("shut thickness", "folded stack + 2 * (cover stack + end adhesive thickness)", { meaning: "the shut book at its spine side, pressed", source: "geometry", shownAs: "thickness" });
  ledger.compute("finished thickness", "nearest(shut thickness)", { meaning: "the same on a mark of the ruler", source: "geometry" });
  const closure = makeClosure(definition, ledger, covering);
  return {
    geometry: {
      square: ledger.length("square"),
      boardHeight: ledger.length("board height"),
      boardWidth: ledger.length("board width"),
      boardThickness: ledger.length("boards thickness"),
      covering,
      coverThickness: ledger.length(`${covering} thickness`),
      coverHeight: ledger.length("covering height"),
      coverWidth: ledger.length("covering width"),
      turnIn: ledger.length("turn in"),
      cornerDistance: ledger.length("corner distance"),
      coverStack: ledger.length("cover stack"),
      shutThickness: ledger.length("shut thickness"),
      endAdhesiveThickness: ledger.length("end adhesive thickness"),
      closure,
    },
    scores: closure?.kind === "band" ? bandScores(closure) : [],
  };
}

function makeClosure(definition: Definition<"concertina">, ledger: Ledger, covering: string): ConcertinaGeometry["closure"] {
  const { book } = definition;
  const origin = (path: string) => originAt(definition, `book/${path}`);
  if (book.closure === "none") return null;
  if (book.closure === "ribbon") return ribbonAround(definition, ledger);
  ledger.give("band height", book.band.height, origin("band/height"), { meaning: "band, along the folds", source: "common practice, no source" });
  ledger.give("band lap", book.band.lap, origin("band/lap"), { meaning: "where the ends of the band overlap", source: "common practice, no source" });
  ledger.give("band ease", book.band.ease, origin("band/ease"), { meaning: "so that the band slips over the book", source: "common practice, no source" });
  ledger.compute("band face", `board width + 2 * (${covering} thickness + covering adhesive thickness) + ${covering} thickness + band ease / 2`, { meaning: "band from fold to fold over a cover", source: "geometry: the band's mid-plane", shownAs: "thickness" });
  ledger.compute("band side", `shut thickness + ${covering} thickness`, { meaning: "band from fold to fold over the thickness", source: "geometry: the band's mid-plane", shownAs: "thickness" });
  ledger.compute("band length", "up(2 * band face + 2 * band side + band lap)", { meaning: "band, flat, across the folds of the book", source: "geometry" });
  const [face, side] = [ledger.length("band face"), ledger.length("band side")];
  return {
    kind: "band", height: book.band.height, length: ledger.length("band length"), lap: book.band.lap, ease: book.band.ease,
    folds: runningMarks([face, addLengths(face, side), addLengths(face, side, face), multiplyLength(addLengths(face, side), 2)], definition.units.step),
  };
}

/** The ribbon lies across the inside of the back board, under the last panel: it leaves at the spine edge and at the fore-edge and meets at the front's fore-edge. */
function ribbonAround(definition: Definition<"concertina">, ledger: Ledger): RibbonClosure {
  const { ribbon } = definition.book;
  ledger.give("ribbon width", ribbon.width, originAt(definition, "book/ribbon/width"), { meaning: "width of the ribbon", source: "common practice, no source" });
  ledger.give("ribbon tie", ribbon.tie, originAt(definition, "book/ribbon/tie"), { meaning: "free ribbon at each end, to tie a bow", source: "common practice, no source" });
  ledger.compute("ribbon long end", "up(shut thickness + board width + ribbon tie)", { meaning: "beyond the spine edge: over the thickness, across the front, and to tie", source: "geometry" });
  ledger.compute("ribbon short end", "up(shut thickness + ribbon tie)", { meaning: "beyond the fore-edge: over the thickness, and to tie", source: "geometry" });
  ledger.compute("ribbon length", "up(board width + ribbon long end + ribbon short end)", { meaning: "the ribbon: glued across a board, and two ends", source: "geometry" });
  return { kind: "ribbon", width: ribbon.width, length: ledger.length("ribbon length"), longEnd: ledger.length("ribbon long end"), shortEnd: ledger.length("ribbon short end") };
}

function bandScores(band: BandClosure): readonly Score[] {
  const centre = divideLength(band.length, 2);
  return band.folds.map((at, index) => ({
    name: `band fold ${index + 1}`, part: "band", at, exactAt: at, fromCentre: addLengths(at, multiplyLength(centre, -1)), fold: "valley",
  }));
}
