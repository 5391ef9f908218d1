// The text block of a book sewn from sections: leaves, thickness, swell, creep and the size of a sheet before folding.
import type { Definition } from "../../1-definition/types.ts";
import type { TextBlockKeys } from "../../1-definition/text-block-keys.ts";
import type { Length } from "../../units/length.ts";
import { giveThicknesses, originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Part, ValueOrigin } from "../types.ts";

/** A text block as geometry; every length is in the ledger too, under the name in quotation marks. */
export interface TextBlock {
  readonly sections: number;
  /** Folded sheets in each section. */
  readonly foldedSheets: number;
  readonly leaves: number;
  readonly pages: number;
  readonly trim: TextBlockKeys["trim"];
  /** "page height", "page width": one page of the finished book. */
  readonly pageHeight: Length;
  readonly pageWidth: Length;
  /** "text paper thickness": one leaf. */
  readonly leafThickness: Length;
  readonly threadThickness: Length;
  /** "section thickness": two leaves for each folded sheet. */
  readonly sectionThickness: Length;
  /** "text block thickness": all sections, at the fore-edge. */
  readonly blockThickness: Length;
  /** "swell": what the thread adds at the spine. */
  readonly swell: Length;
  /** "spine thickness": block and swell. */
  readonly spineThickness: Length;
  /** "creep": how far the innermost leaf of a section stands out beyond the outermost. */
  readonly creep: Length;
  /** "narrowest page": the innermost page, flat, once the fore-edge is trimmed flush. */
  readonly narrowestPage: Length;
  /** "block width": back of the fold to the leaf that reaches furthest. */
  readonly blockWidth: Length;
  /** "folio height", "folio width": one sheet as cut, before it is folded once. */
  readonly folioHeight: Length;
  readonly folioWidth: Length;
}

type Known = Pick<Definition, "materials" | "defaulted">;

/**
 * Computes the text block and enters it into the ledger.
 *
 * Creep: n nested sheets bend around one centre in half circles. Sheet i, counted from the inside, bends in its mid-plane at the radius
 * (i + 1/2)·t, and each of its leaves gives a quarter circle, (π/2)·(i + 1/2)·t, to the bend. So the innermost leaf stands out
 * (π/2)·(n − 1)·t beyond the outermost. A sharp, well-pressed fold creeps less: this is the most that can happen.
 * Block width: the back of the fold lies n·t from the centre and the innermost leaf ends w − (π/4)·t on the other side, together w + (n − π/4)·t.
 */
export function layOutTextBlock(definition: Known, block: TextBlockKeys, ledger: Ledger): TextBlock {
  const origin = (key: string): ValueOrigin => originAt(definition, `book/text block/${key}`);
  const isTrimmed = block.trim !== "none";
  const many = block.sections > 1;
  ledger.give("page height", block.page.height, "given", { meaning: "finished page, along the spine", source: "" });
  ledger.give("page width", block.page.width, "given", { meaning: "finished page, across the spine", source: "" });
  ledger.give("sections", block.sections, many ? "given" : "computed", { meaning: many ? "sections of the book" : "this binding has one section", source: "" });
  ledger.give("folded sheets", block["folded sheets"], origin("folded sheets"), { meaning: "sheets folded once in each section", source: "common practice, no source" });
  giveThicknesses([["text paper thickness", "text paper", "caliper of one leaf"], ["thread thickness", "thread", "diameter of the thread"]], definition.materials, ledger);
  ledger.give("leaves", 2 * block.sections * block["folded sheets"], "computed", { meaning: "two for each folded sheet", source: "geometry" });
  ledger.give("pages", 4 * block.sections * block["folded sheets"], "computed", { meaning: "two for each leaf", source: "geometry" });

  ledger.compute("section thickness", "2 * folded sheets * text paper thickness",
    { meaning: "one section: two leaves for each folded sheet", source: "geometry", shownAs: "thickness" });
  ledger.compute("text block thickness", "sections * section thickness",
    { meaning: many ? "all sections, pressed, at the fore-edge" : "the section, pressed, at the fore-edge", source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.give("swell percent", block["swell percent"], origin("swell percent"),
    { meaning: "what the thread in each section adds to the spine, in percent of its diameter", source: "common practice, no source: 50 to 100; D. W. Jones 1995 finds 50 for compressed thread" });
  ledger.compute("swell", "sections * thread thickness * swell percent / 100",
    { meaning: "what the thread adds to the thickness at the spine", source: "common practice, no source", shownAs: "thickness" });
  ledger.compute("spine thickness", "text block thickness + swell",
    { meaning: "the sewn text block at the spine", source: "geometry", shownAs: "thickness", measureYours: true });

  ledger.compute("creep", "1.5708 * (folded sheets - 1) * text paper thickness",
    { meaning: "how far the innermost leaf of a section can stand out beyond the outermost", source: "geometry: nested half circles, 1.5708 is π ÷ 2; a sharp fold creeps less", shownAs: "thickness" });
  if (isTrimmed) ledger.give("trim allowance", block["trim allowance"], origin("trim allowance"), { meaning: "cut off each edge that is trimmed", source: "common practice, no source" });
  ledger.compute("block width", isTrimmed ? "page width" : "page width + (folded sheets - 0.7854) * text paper thickness",
    { meaning: "back of the fold to the leaf that reaches furthest", source: isTrimmed ? "the fore-edge is trimmed to the page width" : "geometry: 0.7854 is π ÷ 4", shownAs: "thickness" });
  ledger.compute("narrowest page", isTrimmed ? "page width - (folded sheets - 0.7854) * text paper thickness" : "page width - creep",
    { meaning: isTrimmed ? "innermost page of a section, laid flat, after trimming" : "innermost page of a section if the fore-edge is trimmed flush with the outermost leaf", source: "geometry", shownAs: "thickness" });
  ledger.compute("folio height", block.trim === "three edges" ? "page height + 2 * trim allowance" : "page height",
    { meaning: "a sheet before folding, along the spine", source: "geometry" });
  ledger.compute("folio width", isTrimmed ? "2 * (page width + trim allowance)" : "2 * page width",
    { meaning: "a sheet before folding, across the spine: two leaves", source: "geometry" });

  return {
    sections: block.sections, foldedSheets: block["folded sheets"], trim: block.trim,
    leaves: 2 * block.sections * block["folded sheets"], pages: 4 * block.sections * block["folded sheets"],
    pageHeight: ledger.length("page height"), pageWidth: ledger.length("page width"),
    leafThickness: ledger.length("text paper thickness"), threadThickness: ledger.length("thread thickness"),
    sectionThickness: ledger.length("section thickness"), blockThickness: ledger.length("text block thickness"),
    swell: ledger.length("swell"), spineThickness: ledger.length("spine thickness"),
    creep: ledger.length("creep"), narrowestPage: ledger.length("narrowest page"), blockWidth: ledger.length("block width"),
    folioHeight: ledger.length("folio height"), folioWidth: ledger.length("folio width"),
  };
}

/** The part "folio": a sheet as cut, folded once, with the grain along the fold. */
export function folioPart(block: TextBlock): Part {
  const perSection = block.foldedSheets === 1 ? "1 folded sheet makes a section" : `${block.foldedSheets} folded sheets make a section`;
  return {
    id: "folio", name: "folio", material: "text paper", count: block.sections * block.foldedSheets, height: block.folioHeight, width: block.folioWidth,
    thickness: block.leafThickness, grain: "height", readyMade: false, note: `folded once across the width; ${perSection}`, features: [],
  };
}
