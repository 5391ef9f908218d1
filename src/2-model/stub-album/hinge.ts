// The covered hinge: side strip, joint gap, spine strip, joint gap, side strip, covered with one piece of cloth.
import type { Definition } from "../../1-definition/types.ts";
import { divideLength, subtractLength } from "../../units/length.ts";
import type { Ledger } from "../ledger.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

type HingeGeometry = Pick<StubAlbumGeometry,
  "sideStripWidth" | "stripThickness" | "jointGap" | "turnIn" | "clothThickness" | "clothHeight" | "clothWidth" | "hingeTapeWidth" | "cornerDistance" | "stripInset"
  | "boardHeight" | "boardWidth" | "boardThickness" | "hingeStack" | "closedRise" | "floorHeight">;

/**
 * Computes the hinge.
 *
 * Joint: shut and full, strip and board together stand beside the end of the spine strip, so the joint must span their thickness
 * u (the hinge stack) sideways. The cloth of the joint, of length g, then runs straight from the spine strip's outer corner to the side
 * strip's, so the boards' spine edges stand √(g² − u²) beyond the spine strip's outer face. A joint shorter than u cannot close; the cloth's two
 * bends take about one cloth thickness each.
 */
export function layOutHinge(definition: Definition<"stub-album">, ledger: Ledger): HingeGeometry {
  const { book } = definition;
  ledger.compute("hinge stack", "strip board thickness + board adhesive thickness + board thickness",
    { meaning: "strip, adhesive and board: what stands beside the spine strip when the book is shut", source: "geometry", shownAs: "thickness" });
  ledger.compute("least joint gap", "hinge stack + 2 * cloth thickness",
    { meaning: "the narrowest joint in which the boards can stand beside the spine strip", source: "geometry", shownAs: "thickness" });
  if (book["joint gap"]) {
    ledger.give("joint gap", book["joint gap"], "given", { meaning: "between spine strip and side strip", source: "" });
  } else {
    ledger.compute("joint gap", "up(least joint gap + 1 mm)", { meaning: "between spine strip and side strip", source: "geometry; 1 mm of ease: common practice, no source" });
  }
  ledger.compute("hinge cloth width", "up(2 * side strip width + 2 * joint gap + spine strip width + 2 * turn in)",
    { meaning: "cloth across the hinge, turned in on both sides", source: "geometry" });
  ledger.compute("hinge cloth height", "up(strip height + 2 * turn in)", { meaning: "cloth along the hinge, turned in at head and tail", source: "geometry" });
  ledger.compute("corner distance", "1.5 * strip board thickness",
    { meaning: "from a strip's corner to the 45° cut, square to the cut", source: "common practice, no source", shownAs: "thickness" });
  if (book["hinge tape"]) {
    ledger.give("hinge tape width", book["hinge tape"], "given", { meaning: "reinforcing tape over each joint", source: "" });
  } else {
    ledger.compute("hinge tape width", "up(2 * joint gap + 10 mm)", { meaning: "reinforcing tape over each joint", source: "common practice, no source" });
  }
  const canStand = subtractLength(ledger.length("joint gap"), ledger.length("hinge stack")).n > 0n;
  ledger.compute("closed rise", canStand ? "root(joint gap * joint gap - hinge stack * hinge stack)" : "0 mm",
    { meaning: "shut and full: how far the boards' spine edges stand beyond the outer face of the spine strip", source: "geometry", shownAs: "thickness" });
  ledger.compute("floor height", "strip board thickness + floor adhesive thickness + card thickness",
    { meaning: "outer face of the spine strip to the inside of the floor", source: "geometry", shownAs: "thickness" });
  ledger.compute("finished width", "nearest(closed rise + board width + hinge adhesive thickness + cloth thickness)",
    { meaning: "the shut book, spine to fore-edge", source: "geometry" });
  ledger.compute("finished thickness", "nearest(spine strip width + 2 * (hinge stack + hinge adhesive thickness + cloth thickness))",
    { meaning: "the shut book at the spine when it is full", source: "geometry" });

  return {
    sideStripWidth: ledger.length("side strip width"),
    stripThickness: ledger.length("strip board thickness"),
    jointGap: ledger.length("joint gap"),
    turnIn: ledger.length("turn in"),
    clothThickness: ledger.length("cloth thickness"),
    clothHeight: ledger.length("hinge cloth height"),
    clothWidth: ledger.length("hinge cloth width"),
    hingeTapeWidth: ledger.length("hinge tape width"),
    cornerDistance: ledger.length("corner distance"),
    stripInset: divideLength(subtractLength(ledger.length("board height"), ledger.length("strip height")), 2),
    boardHeight: ledger.length("board height"),
    boardWidth: ledger.length("board width"),
    boardThickness: ledger.length("board thickness"),
    hingeStack: ledger.length("hinge stack"),
    closedRise: ledger.length("closed rise"),
    floorHeight: ledger.length("floor height"),
  };
}
