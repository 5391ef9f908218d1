// The pages on their stubs, the room they leave for decoration, lining, bookmark and closure.
import type { Definition } from "../../1-definition/types.ts";
import { inches, mm, noLength } from "../../units/length.ts";
import { originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { StubAlbumGeometry } from "./geometry.ts";

type PageGeometry = Pick<StubAlbumGeometry, "pages" | "lining" | "ribbonWidth" | "bookmarkLength" | "closureLength" | "closureGlued">;

/**
 * Fits the pages.
 *
 * Width: a page stands on the floor and may reach the boards' fore-edge less the square. The boards' spine edges stand the closed rise beyond
 * the spine strip's outer face, the floor lies the floor height inside it; so the reach is closed rise + board width − square − floor
 * height. (Without thickness this is joint gap + board width − square.) The full book is the narrow case: with fewer things mounted the boards lean in and rise.
 * Room: page planes stand one pitch apart. Added up over all openings and both ends it is the folded floor less the pages themselves.
 */
export function fitPages(definition: Definition<"stub-album">, ledger: Ledger): PageGeometry {
  const { book } = definition;
  const backToBack = book.pages.mounting === "back to back";
  ledger.give("page papers", backToBack ? 2 * book.stubs : book.stubs, "computed",
    { meaning: backToBack ? "two papers back to back for each stub" : "one paper for each stub", source: "geometry" });
  ledger.compute("page reach", "closed rise + board width - square - floor height",
    { meaning: "widest page that leaves the square when the book is shut and full", source: "geometry", shownAs: "thickness" });
  if (book.pages.width) ledger.give("page paper width", book.pages.width, "given", { meaning: "page paper, across the spine", source: "" });
  else ledger.compute("page paper width", "down(page reach)", { meaning: "page paper, across the spine", source: "geometry" });
  if (book.pages.height) ledger.give("page paper height", book.pages.height, "given", { meaning: "page paper, along the spine", source: "" });
  else ledger.compute("page paper height", "down(min(strip height, board height - 2 * square))", { meaning: "page paper, along the spine", source: "geometry" });

  ledger.compute("adhesive zone", "down(stub depth - adhesive clearance)",
    { meaning: "depth of the adhesive on each face of a stub, from its base", source: "common practice, no source: 1 to 2 mm less than the stub" });
  ledger.compute("page thickness", backToBack ? "2 * page paper thickness + page adhesive thickness" : "page paper thickness",
    { meaning: backToBack ? "two papers and the adhesive between them, beyond the stub" : "one paper, beyond the stub", source: "geometry", shownAs: "thickness" });
  ledger.compute("room in stub zone", `floor gap - card thickness - ${backToBack ? 2 : 1} * (page paper thickness + page adhesive thickness)`,
    { meaning: "air between two neighbouring stubs with their papers on", source: "geometry", shownAs: "thickness" });
  ledger.compute("room per opening", "pitch - page thickness",
    { meaning: "thickness of decoration that one opening between two pages can take", source: "geometry", shownAs: "thickness" });
  ledger.compute("room at each end", "margin + (stub growth - page thickness) / 2",
    { meaning: "the same between the outermost page and a board", source: "geometry", shownAs: "thickness" });
  ledger.compute("room in all", "folded floor - stubs * page thickness",
    { meaning: "decoration that the whole spine can carry: all openings and both ends", source: "geometry", shownAs: "thickness" });

  if (book.lining) {
    ledger.give("lining inset", definition.units.governing === "in" ? inches(1, 8) : mm(3), "default",
      { meaning: "how far the lining stops short of the board's edges", source: "Bean & Brodhead 1918, Problem VIII A: 1/8 in" });
    ledger.compute("lining paper height", "down(board height - 2 * lining inset)", { meaning: "lining inside a board, along the spine", source: "geometry" });
    ledger.compute("lining paper width", "down(board width - 2 * lining inset)", { meaning: "lining inside a board, across the spine", source: "geometry" });
  }
  const hasRibbon = book.bookmark || book.closure === "ribbon";
  if (hasRibbon) ledger.give("ribbon width", definition.units.governing === "in" ? inches(3, 8) : mm(10), "default", { meaning: "width of the ribbon", source: "common practice, no source" });
  if (book.bookmark) {
    ledger.compute("bookmark length", "up(root(page paper height * page paper height + page paper width * page paper width) + 50 mm)",
      { meaning: "page diagonal and a tail", source: "common practice, no source" });
  }
  if (book.closure === "ribbon") {
    ledger.give("closure glued length", definition.units.governing === "in" ? inches(13, 8) : mm(40), "default",
      { meaning: "ribbon glued to the inside of a board", source: "common practice, no source: at least 40 mm" });
    ledger.give("ribbon tie", book["ribbon tie"], originAt(definition, "book/ribbon tie"), { meaning: "free ribbon to tie a bow", source: "common practice, no source" });
    ledger.compute("closure ribbon length", "up(closure glued length + finished thickness / 2 + ribbon tie)",
      { meaning: "one of two ribbons: glued end, half the thickness, free end", source: "geometry" });
  }
  return {
    pages: {
      backToBack,
      papers: backToBack ? 2 * book.stubs : book.stubs,
      height: ledger.length("page paper height"),
      width: ledger.length("page paper width"),
      paperThickness: ledger.length("page paper thickness"),
      adhesiveZone: ledger.length("adhesive zone"),
      adhesiveClearance: ledger.length("adhesive clearance"),
      square: ledger.length("square"),
      roomPerOpening: ledger.length("room per opening"),
      roomAtEachEnd: ledger.length("room at each end"),
      roomInAll: ledger.length("room in all"),
      decoration: book.pages.decoration,
    },
    lining: book.lining
      ? { height: ledger.length("lining paper height"), width: ledger.length("lining paper width"), inset: ledger.length("lining inset") }
      : null,
    ribbonWidth: hasRibbon ? ledger.length("ribbon width") : noLength,
    bookmarkLength: book.bookmark ? ledger.length("bookmark length") : null,
    closureLength: book.closure === "ribbon" ? ledger.length("closure ribbon length") : null,
    closureGlued: book.closure === "ribbon" ? ledger.length("closure glued length") : noLength,
  };
}
