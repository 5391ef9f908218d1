// The hard case: boards, spine strip, joints, and the cloth and paper that cover them.
import type { Definition } from "../../1-definition/types.ts";
import { compareLengths } from "../../units/length.ts";
import { giveAdhesiveLayers, giveThicknesses } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { BlockGeometry } from "./block.ts";
import { originIn } from "./block.ts";
import type { CaseBindingGeometry, CoveringGeometry } from "./geometry.ts";

/** The part of the geometry that is the case's. */
export type CaseGeometry = Omit<CaseBindingGeometry, keyof BlockGeometry>;

type Given = Definition<"case-binding">;

/**
 * Computes the case.
 *
 * Joint: in the flat case the cloth between strip and board is J long. Shut, it goes from the strip's edge into the groove of width r beside a
 * board of thickness b and up to the board's outer corner. A strip that covers the boards too ends level with their outer faces: the cloth
 * dives b to the text block and comes up b again, straight down and up in a V of 2·√((r/2)² + b²) at the least, along the walls and the floor
 * of the groove in a U of r + 2b at the most. A strip as wide as the text block ends on the floor of the groove: the cloth rises b only,
 * √(r² + b²) at the least and r + b at the most. The usual J = r + b suits both; with boards that touch the shoulder (r = 0) it is Adam's
 * one board thickness.
 */
export function layOutCase(definition: Given, block: BlockGeometry, ledger: Ledger): CaseGeometry {
  const { book, materials, adhesives } = definition;
  const origin = originIn(definition);
  const isFull = book.covering === "full";
  ledger.give("board thickness", book.boards.thickness, origin("boards/thickness"), { meaning: "caliper of the boards", source: "", shownAs: "thickness" });
  giveThicknesses([
    ["spine strip thickness", "spine strip", "caliper of the strip in the spine"], ["cloth thickness", "cloth", "caliper of the cloth"],
    ...(isFull ? [] : [["side paper thickness", "side paper", "caliper of the paper sides"] as const]),
  ], materials, ledger);
  giveAdhesiveLayers([["case adhesive thickness", "case"], ["pastedown adhesive thickness", "pastedowns"]], adhesives, ledger);
  const size = squareWords[compareLengths(book.square, book.boards.thickness) + 1]!;
  ledger.give("square", book.square, origin("square"), { meaning: `how far the boards reach beyond the pages: ${size}`, source: "Vaughn 1912 and Bean & Brodhead 1918: 1/8 in; Language of Bindings: medium is the board's thickness" });
  ledger.give("groove", book.groove, origin("groove"), { meaning: "shoulder of the text block to the board", source: "common practice, no source; Bean & Brodhead 1918: about 1/4 in, Cockerell 1901: about 1/8 in" });
  ledger.give("turn in", book["turn in"], origin("turn in"), { meaning: "turned over the edges of the boards", source: "Roberts & Etherington, \"cover turned-in\": 5/8 in in library binding" });
  ledger.compute("board height", "nearest(page height + 2 * square)", { meaning: "board, along the spine", source: "geometry" });
  ledger.compute("board width", "nearest(block width - groove + square)", { meaning: "board, across the spine", source: "geometry" });

  const coversBoards = !block.round && book["strip covers"] === "block and boards";
  ledger.compute("spine strip width", coversBoards ? "up(back thickness + 2 * mull thickness + 2 * board thickness)" : "up(back width)", {
    meaning: coversBoards ? "strip in the spine: text block, mull and both boards" : "strip in the spine: the back of the text block",
    source: coversBoards ? "common practice, no source" : "Adam 1903, ch. VI, and Bean & Brodhead 1918, Problem XIV: the width of the back",
  });
  ledger.compute("tightest joint", coversBoards ? "2 * root(groove * groove / 4 + board thickness * board thickness)" : "root(groove * groove + board thickness * board thickness)",
    { meaning: "straight way of the cloth through the groove", source: "geometry", shownAs: "thickness" });
  ledger.compute("loosest joint", coversBoards ? "groove + 2 * board thickness" : "groove + board thickness",
    { meaning: "way of the cloth along the walls and the floor of the groove", source: "geometry", shownAs: "thickness" });
  if (book.joint) ledger.give("joint", book.joint, "given", { meaning: "spine strip to board in the flat case", source: "" });
  else ledger.compute("joint", "nearest(groove + board thickness)", { meaning: "spine strip to board in the flat case", source: "common practice, no source; Adam 1903, ch. VI: one board thickness when the boards touch the shoulder" });
  ledger.compute("joint rod", "down(min(groove - 2 * cloth thickness, board thickness + 1 mm))",
    { meaning: "diameter of the rod pressed into each joint: it fits between the cloth and stands a little over the board", source: "common practice, no source" });
  const covering = layOutCovering(definition, ledger);

  ledger.compute("spine linings", `mull thickness + lining adhesive thickness${block.lining ? " + spine lining thickness + lining adhesive thickness" : ""}`,
    { meaning: "all that is glued to the back", source: "geometry", shownAs: "thickness" });
  ledger.compute("finished height", "nearest(board height + 2 * (cloth thickness + case adhesive thickness))", { meaning: "the shut book, along the spine", source: "geometry" });
  ledger.compute("finished width", `nearest(board width + groove + ${block.round ? "back rise + " : ""}spine linings + spine strip thickness + cloth thickness + ${isFull ? "cloth" : "side paper"} thickness + 2 * case adhesive thickness)`,
    { meaning: "the shut book, spine to fore-edge", source: "geometry" });
  ledger.compute("finished thickness", "nearest(back thickness + 2 * (mull thickness + pastedown adhesive thickness + board thickness + case adhesive thickness + cloth thickness))",
    { meaning: "the shut book at the spine", source: "geometry" });
  return {
    boardHeight: ledger.length("board height"), boardWidth: ledger.length("board width"), boardThickness: ledger.length("board thickness"),
    square: ledger.length("square"), groove: ledger.length("groove"), joint: ledger.length("joint"),
    tightestJoint: ledger.length("tightest joint"), loosestJoint: ledger.length("loosest joint"),
    stripWidth: ledger.length("spine strip width"), stripThickness: ledger.length("spine strip thickness"), stripCovers: coversBoards ? "block and boards" : "block",
    rod: ledger.length("joint rod"), clothThickness: ledger.length("cloth thickness"), covering,
  };
}

/** Language of Bindings, "squares (boards)": less than the board's thickness is narrow, as much is medium, more is wide. */
const squareWords = ["a narrow square, less than the board's thickness", "a medium square, the board's thickness", "a wide square, more than the board's thickness"] as const;

function layOutCovering(definition: Given, ledger: Ledger): CoveringGeometry {
  const { book } = definition;
  const origin = originIn(definition);
  const factor = book["corner cut"] === "one board" ? "board thickness" : "1.5 * board thickness";
  ledger.compute("corner distance", factor, {
    meaning: "from a board's corner to the 45° cut, square to it", shownAs: "thickness",
    source: book["corner cut"] === "one board" ? "Vaughn 1912, \"Mitres\": about one board thickness" : "common practice, no source",
  });
  const shared = { kind: book.covering, turnIn: ledger.length("turn in"), cornerDistance: ledger.length("corner distance") };
  if (book.covering === "full") {
    ledger.compute("case cloth width", "up(2 * board width + 2 * joint + spine strip width + 2 * turn in)", { meaning: "cloth of the case, across the spine", source: "Vaughn 1912, \"Turn-in; Size of Cover Cloth\"" });
    ledger.compute("case cloth height", "up(board height + 2 * turn in)", { meaning: "cloth of the case, along the spine", source: "Vaughn 1912, \"Turn-in; Size of Cover Cloth\"" });
    return { ...shared, clothHeight: ledger.length("case cloth height"), clothWidth: ledger.length("case cloth width"), clothOnBoards: null, sides: null, corners: null };
  }
  if (book["cloth on boards"]) ledger.give("cloth on boards", book["cloth on boards"], "given", { meaning: "spine cloth on each board", source: "" });
  else ledger.compute("cloth on boards", "nearest(board width / 5)", { meaning: "spine cloth on each board", source: "common practice, no source" });
  ledger.compute("spine cloth width", "up(spine strip width + 2 * joint + 2 * cloth on boards)", { meaning: "spine cloth, across the spine", source: "geometry" });
  ledger.compute("spine cloth height", "up(board height + 2 * turn in)", { meaning: "spine cloth, along the spine", source: "geometry" });
  ledger.give("side lap", book["side lap"], origin("side lap"), { meaning: "how far the paper lies over the cloth", source: "Vaughn 1912: 1/8 in" });
  ledger.compute("side paper height", "up(board height + 2 * turn in)", { meaning: "paper side, along the spine", source: "Vaughn 1912: the board's height and two turn-ins" });
  ledger.compute("side paper width", "up(board width - cloth on boards + side lap + turn in)", { meaning: "paper side, across the spine", source: "Vaughn 1912: cloth to fore-edge, a turn-in and a lap" });
  return {
    ...shared, clothHeight: ledger.length("spine cloth height"), clothWidth: ledger.length("spine cloth width"), clothOnBoards: ledger.length("cloth on boards"),
    sides: { height: ledger.length("side paper height"), width: ledger.length("side paper width"), lap: ledger.length("side lap") },
    corners: book.covering === "half" ? layOutCorners(book["corner reach"], ledger) : null,
  };
}

/**
 * A cloth corner covers the triangle that its slanting edge cuts off the board, `reach` along either edge, and is turned in on both. Its slanting edge,
 * carried on over the turn-ins, is that of a right triangle with sides of reach + 2 turn-ins: half a square cut from corner to corner. The paper's cut
 * lies parallel, a lap nearer to the board's corner: √2 laps less along either edge.
 */
function layOutCorners(given: Given["book"]["corner reach"], ledger: Ledger): NonNullable<CoveringGeometry["corners"]> {
  if (given) ledger.give("corner reach", given, "given", { meaning: "board's corner to the slanting edge of the cloth, along the board's edges", source: "" });
  else ledger.compute("corner reach", "cloth on boards", { meaning: "board's corner to the slanting edge of the cloth, along the board's edges", source: "common practice, no source: as much as the spine cloth on the board" });
  ledger.compute("corner square", "up(corner reach + 2 * turn in)", { meaning: "side of a square of cloth that gives two corners", source: "geometry" });
  ledger.compute("side paper corner", "down(corner reach + 2 * turn in - 1.4142 * side lap)", { meaning: "cut off the paper's fore-edge corners, along both edges", source: "geometry: 1.4142 is √2" });
  return { reach: ledger.length("corner reach"), square: ledger.length("corner square"), paperCut: ledger.length("side paper corner") };
}
