// A text block of single leaves glued at the spine: the same keys, but no folds, no thread and no creep.
import type { TextBlockKeys } from "../../1-definition/text-block-keys.ts";
import type { Definition } from "../../1-definition/types.ts";
import { noLength } from "../../units/length.ts";
import { giveThicknesses, originAt } from "../given-values.ts";
import type { Ledger } from "../ledger.ts";
import type { Part, ValueOrigin } from "../types.ts";
import type { TextBlock } from "./block.ts";

/** As many leaves as the sections would have had; "folio height" and "folio width" are a leaf as cut, before trimming. */
export function layOutLeaves(definition: Pick<Definition, "materials" | "defaulted">, block: TextBlockKeys, ledger: Ledger): TextBlock {
  const origin = (key: string): ValueOrigin => originAt(definition, `book/text block/${key}`);
  const leaves = 2 * block.sections * block["folded sheets"];
  ledger.give("page height", block.page.height, "given", { meaning: "finished page, along the spine", source: "" });
  ledger.give("page width", block.page.width, "given", { meaning: "finished page, across the spine", source: "" });
  giveThicknesses([["text paper thickness", "text paper", "caliper of one leaf"]], definition.materials, ledger);
  ledger.give("leaves", leaves, "computed", { meaning: `single leaves: as many as ${block.sections} sections of ${block["folded sheets"]} folded sheets would have`, source: "geometry" });
  ledger.give("pages", 2 * leaves, "computed", { meaning: "two for each leaf", source: "geometry" });
  ledger.compute("text block thickness", "leaves * text paper thickness", { meaning: "all leaves, pressed", source: "geometry", shownAs: "thickness", measureYours: true });
  ledger.compute("spine thickness", "text block thickness", { meaning: "the glued text block at the spine: no thread, so no swell", source: "geometry", shownAs: "thickness", measureYours: true });
  if (block.trim !== "none") ledger.give("trim allowance", block["trim allowance"], origin("trim allowance"), { meaning: "cut off each edge that is trimmed", source: "common practice, no source" });
  ledger.compute("block width", "page width", { meaning: "spine to fore-edge", source: "geometry" });
  ledger.compute("leaf height", block.trim === "three edges" ? "page height + 2 * trim allowance" : "page height", { meaning: "a leaf as cut, along the spine", source: "geometry" });
  ledger.compute("leaf width", block.trim === "none" ? "page width" : "page width + trim allowance", { meaning: "a leaf as cut, across the spine", source: "geometry" });
  return {
    sections: block.sections, foldedSheets: block["folded sheets"], trim: block.trim, leaves, pages: 2 * leaves,
    pageHeight: ledger.length("page height"), pageWidth: ledger.length("page width"),
    leafThickness: ledger.length("text paper thickness"), threadThickness: noLength, sectionThickness: noLength,
    blockThickness: ledger.length("text block thickness"), swell: noLength, spineThickness: ledger.length("spine thickness"),
    creep: noLength, narrowestPage: ledger.length("page width"), blockWidth: ledger.length("block width"),
    folioHeight: ledger.length("leaf height"), folioWidth: ledger.length("leaf width"),
  };
}

/** The part "leaf": a single leaf, grain along the spine. */
export function leafPart(block: TextBlock): Part {
  return {
    id: "leaf", name: "leaf", material: "text paper", count: block.leaves, height: block.folioHeight, width: block.folioWidth,
    thickness: block.leafThickness, grain: "height", readyMade: false, note: "single leaves, not folded", features: [],
  };
}
