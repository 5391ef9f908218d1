// The two boards: size from the page and the squares, covering with turn-ins, lining, and how thick a finished cover is.
import type { Definition } from "../../1-definition/types.ts";
import { addLengths, inches, mm } from "../../units/length.ts";
import type { Length } from "../../units/length.ts";
import { giveAdhesiveLayers, giveThicknesses, originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Station } from "../text-block/stations.ts";
import type { Hole, ValueOrigin } from "../types.ts";
import type { LinkStitchGeometry } from "./geometry.ts";

type BoardGeometry = Pick<LinkStitchGeometry,
  "covered" | "square" | "boardHeight" | "boardWidth" | "boardThickness" | "coverThickness" | "holesAlong" | "holeDistance" | "holeDiameter" | "turnIn" | "cornerDistance" | "covering" | "lining">;

/**
 * Computes the boards. Their spine edges lie level with the folds of the sections, so a board has a square at head, tail and fore-edge
 * and none at the spine. Rounded up, because a board that is too small lets the pages stick out.
 * A covering wraps all four edges and makes a board that much larger. Holes are set from its head and its spine edge, so that the head square is
 * the one asked for and the tail has what wrapping and rounding add (Cockerell 1901: the tail square may be slightly larger).
 */
export function makeBoards(definition: Definition<"link-stitch">, stations: readonly Station[], ledger: Ledger): BoardGeometry {
  const { book } = definition;
  const { covered } = book.boards;
  const lined = covered && book.lining;
  giveSizes(definition, ledger);
  giveLayers(definition, { covered, lined }, ledger);
  ledger.compute("board height", "up(page height + 2 * square)", { meaning: "board, along the spine: a square at head and tail", source: "geometry" });
  ledger.compute("board width", "up(block width + square)", { meaning: "board, across the spine: level with the folds, a square at the fore-edge", source: "geometry" });
  if (covered) coverBoards(lined, definition, ledger);
  const layers = `board thickness${covered ? " + covering thickness + covering adhesive thickness" : ""}${lined ? " + lining paper thickness + lining adhesive thickness" : ""}`;
  ledger.compute("cover thickness", layers,
    { meaning: covered ? "one finished board: board, covering outside, lining inside" : "one board", source: "geometry", shownAs: "thickness", measureYours: covered });
  const wrap = covered ? " + 2 * (covering thickness + covering adhesive thickness)" : "";
  ledger.compute("finished height", `nearest(board height${wrap})`, { meaning: "the shut book, head to tail", source: "geometry" });
  ledger.compute("finished width", `nearest(board width${wrap})`, { meaning: "the shut book, spine to fore-edge", source: "geometry" });
  ledger.compute("finished thickness", "nearest(spine thickness + 2 * cover thickness)", { meaning: "the shut book at the spine", source: "geometry" });
  return {
    covered,
    square: ledger.length("square"),
    boardHeight: ledger.length("board height"),
    boardWidth: ledger.length("board width"),
    boardThickness: ledger.length("board thickness"),
    coverThickness: ledger.length("cover thickness"),
    holesAlong: stations.map(({ at }) => addLengths(at, ledger.length("square"))),
    holeDistance: ledger.length("hole distance"),
    holeDiameter: ledger.length("hole diameter"),
    turnIn: ledger.length("turn in"),
    cornerDistance: ledger.compute("corner distance", "1.5 * board thickness", { meaning: "from a board's corner to the 45° cut, square to the cut", source: "common practice, no source", shownAs: "thickness" }),
    covering: covered ? { height: ledger.length("covering height"), width: ledger.length("covering width"), thickness: ledger.length("covering thickness") } : null,
    lining: lined ? { height: ledger.length("lining paper height"), width: ledger.length("lining paper width"), inset: ledger.length("lining inset") } : null,
  };
}

function giveSizes(definition: Definition<"link-stitch">, ledger: Ledger): void {
  const { boards, "turn in": turnIn } = definition.book;
  const origin = (path: string): ValueOrigin => originAt(definition, path);
  const give = (name: string, quantity: Length, path: string, meaning: string, source: string, shownAs: "size" | "thickness" = "size"): void =>
    ledger.give(name, quantity, origin(path), { meaning, source, shownAs });
  give("square", boards.square, "book/boards/square", "how far the boards reach beyond the pages", "Bean & Brodhead 1918, Problem VIII A: about 1/8 in");
  give("board thickness", boards.thickness, "book/boards/thickness", "caliper of the board", "", "thickness");
  give("hole distance", boards["hole distance"], "book/boards/hole distance", "spine edge of a board to the middle of its holes", "common practice, no source: 8 to 10 mm");
  give("hole diameter", boards["hole diameter"], "book/boards/hole diameter", "hole in a board", "common practice, no source", "thickness");
  give("turn in", turnIn, "book/turn in", "covering turned over the edges of a board", "Roberts & Etherington, \"cover turned-in\": 5/8 in in library binding");
}

function giveLayers({ materials, adhesives }: Definition<"link-stitch">, { covered, lined }: { readonly covered: boolean; readonly lined: boolean }, ledger: Ledger): void {
  if (!covered) return;
  giveThicknesses([["covering thickness", "covering", "caliper of the covering"]], materials, ledger);
  giveAdhesiveLayers([["covering adhesive thickness", "covering"]], adhesives, ledger);
  if (!lined) return;
  giveThicknesses([["lining paper thickness", "lining paper", "caliper of the lining paper"]], materials, ledger);
  giveAdhesiveLayers([["lining adhesive thickness", "lining"]], adhesives, ledger);
}

function coverBoards(lined: boolean, definition: Definition<"link-stitch">, ledger: Ledger): void {
  ledger.compute("covering height", "up(board height + 2 * turn in)", { meaning: "covering of one board, along the spine, turned in at head and tail", source: "geometry" });
  ledger.compute("covering width", "up(board width + 2 * turn in)", { meaning: "covering of one board, across the spine, turned in at both sides", source: "geometry" });
  if (!lined) return;
  ledger.give("lining inset", definition.units.governing === "in" ? inches(1, 8) : mm(3), "default",
    { meaning: "how far the lining stops short of the board's edges", source: "Bean & Brodhead 1918, Problem VIII A: 1/8 in" });
  ledger.compute("lining paper height", "down(board height - 2 * lining inset)", { meaning: "lining inside a board, along the spine", source: "geometry" });
  ledger.compute("lining paper width", "down(board width - 2 * lining inset)", { meaning: "lining inside a board, across the spine", source: "geometry" });
}

/** The holes of both boards, named by board and station: "front-1" is nearest to the head of the front board. */
export function boardHoles({ holesAlong, holeDistance, holeDiameter }: BoardGeometry): readonly Hole[] {
  return ["front", "back"].flatMap((side) => holesAlong.map((along, k): Hole => ({ id: `${side}-${k + 1}`, part: "boards", along, across: holeDistance, diameter: holeDiameter })));
}
