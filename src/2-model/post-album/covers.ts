// The covers: hinge strip, joint gap and board, their covering and linings.
import type { Definition } from "../../1-definition/types.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { PostAlbumGeometry } from "./geometry.ts";

type CoverGeometry = Pick<PostAlbumGeometry,
  "hingeWidth" | "jointGap" | "leastJointGap" | "foldGap" | "jointLayers" | "boardWidth" | "boardThickness" | "coverHeight" | "square" | "turnIn" | "cornerDistance"
  | "clothThickness" | "clothHeight" | "clothWidth" | "clothLap" | "paper" | "inset" | "hingeLining" | "lining">;

/**
 * Computes one cover; the other is made alike.
 *
 * Board width: shut and full, hinge strip and board lie in one plane, the gap between them flat, and hinge strip and leaves are flush at the
 * spine. So hinge + gap + board = leaf + square, whatever the thicknesses; the covering on the edges only adds to the square.
 *
 * Joint gap, two conditions. Folded right back, the board lies on the post heads with its outside to the outside of the hinge strip. The cloth
 * of the joint then runs in half a circle: inside it the post heads' thickness p, its own layers s (covering, turn-in at head and tail,
 * lining), so that its middle needs π/2 · (p + s). And the lining must be pressed down to the covering between the two edges, which are as
 * deep as the board is thick: a channel narrower than it is deep is bridged instead, and a bridge on the inside stops the cover half way.
 * So the gap is the board's thickness and the lining's two layers at least. (Adam: as a rule one board's thickness.)
 *
 * Hinge lining: pressed into the joint, it goes down one edge and up the other, so it is two board thicknesses wider than what it covers.
 */
export function layOutCovers(definition: Definition<"post-album">, ledger: Ledger): CoverGeometry {
  const { book } = definition;
  ledger.give("post head", book.posts.head, originAt(definition, "book/posts/head"),
    { meaning: "thickness of a post's head", source: definition.defaulted.has("book/posts/head") ? "common practice, no source" : "", shownAs: "thickness" });
  ledger.compute("joint layers", "3 * cloth thickness + cover adhesive thickness + hinge adhesive thickness",
    { meaning: "the joint at head and tail, where it is thickest: covering, turn-in, lining and the adhesive between", source: "geometry", shownAs: "thickness" });
  ledger.compute("fold gap", "1.5708 * (post head + joint layers)",
    { meaning: "what the joint needs to fold right back round the post heads: half a circle (π ÷ 2 = 1.5708)", source: "geometry", shownAs: "thickness" });
  ledger.compute("channel gap", "board thickness + 2 * cloth thickness",
    { meaning: "what the lining needs to reach the bottom of the joint: as wide as deep, between two layers of it", source: "geometry; Adam 1903, ch. VI: as a rule one board's thickness", shownAs: "thickness" });
  ledger.compute("least joint gap", "max(fold gap, channel gap)", { meaning: "the narrowest joint in which a cover folds right back", source: "geometry", shownAs: "thickness" });
  if (book["joint gap"]) ledger.give("joint gap", book["joint gap"], "given", { meaning: "between hinge strip and board", source: "" });
  else ledger.compute("joint gap", "up(least joint gap + 1 mm)", { meaning: "between hinge strip and board", source: "geometry; 1 mm of ease: common practice, no source" });

  ledger.compute("cover height", "up(leaf height + 2 * square)", { meaning: "boards and hinge strips, along the spine", source: "geometry" });
  ledger.compute("board width", "up(leaf width - hinge width - joint gap + square)", { meaning: "board, across the spine", source: "geometry: hinge strip, gap and board are one square wider than the leaf" });
  ledger.compute("corner distance", "1.5 * board thickness", { meaning: "from a board's corner to the 45° cut, square to the cut", source: "common practice, no source", shownAs: "thickness" });
  const paper = enterCovering(definition, ledger);
  ledger.compute("hinge lining width", "down(hinge width - lining inset + joint gap + 2 * board thickness + cloth lap)",
    { meaning: "cloth inside the hinge, down into the joint and up again, onto the board", source: "geometry: two board thicknesses for the two sides of the joint" });
  ledger.compute("hinge lining height", "down(cover height - 2 * lining inset)", { meaning: "cloth inside the hinge, along the spine", source: "geometry" });
  if (book.lining) {
    ledger.compute("lining paper height", "down(cover height - 2 * lining inset)", { meaning: "lining inside a board, along the spine", source: "geometry" });
    ledger.compute("lining paper width", "down(board width - 2 * lining inset)", { meaning: "lining inside a board, across the spine; it never crosses the joint", source: "Bean & Brodhead 1918, Problem VIII A" });
  }
  const value = ledger.length;
  return {
    hingeWidth: value("hinge width"), jointGap: value("joint gap"), leastJointGap: value("least joint gap"), foldGap: value("fold gap"), jointLayers: value("joint layers"),
    boardWidth: value("board width"), boardThickness: value("board thickness"), coverHeight: value("cover height"), square: value("square"), turnIn: value("turn in"),
    cornerDistance: value("corner distance"), clothThickness: value("cloth thickness"), clothLap: value("cloth lap"), paper,
    clothHeight: value(paper ? "hinge cloth height" : "cover cloth height"), clothWidth: value(paper ? "hinge cloth width" : "cover cloth width"),
    inset: value("lining inset"), hingeLining: { height: value("hinge lining height"), width: value("hinge lining width") },
    lining: book.lining ? { height: value("lining paper height"), width: value("lining paper width") } : null,
  };
}

function enterCovering({ book }: Definition<"post-album">, ledger: Ledger): PostAlbumGeometry["paper"] {
  const height = "up(cover height + 2 * turn in)";
  if (book.covering === "cloth") {
    ledger.compute("cover cloth width", "up(hinge width + joint gap + board width + 2 * turn in)", { meaning: "cloth across one cover, turned in on both sides", source: "geometry" });
    ledger.compute("cover cloth height", height, { meaning: "cloth along one cover, turned in at head and tail", source: "geometry" });
    return null;
  }
  ledger.compute("hinge cloth width", "up(turn in + hinge width + joint gap + cloth lap)", { meaning: "cloth across one hinge, turned in at the spine, lapping onto the board", source: "geometry" });
  ledger.compute("hinge cloth height", height, { meaning: "cloth along one hinge, turned in at head and tail", source: "geometry" });
  ledger.compute("cover paper width", "up(board width - cloth lap + paper lap + turn in)", { meaning: "paper across one board, over the edge of the cloth, turned in at the fore-edge", source: "geometry" });
  ledger.compute("cover paper height", height, { meaning: "paper along one board, turned in at head and tail", source: "geometry" });
  return { height: ledger.length("cover paper height"), width: ledger.length("cover paper width"), thickness: ledger.length("cover paper thickness"), lap: ledger.length("paper lap") };
}
